"""Neck screws, read from their solids: how deep, how near to glue line, edge and rod."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from .columns import highest
from .context import Context
from .facets import Facets
from .failures import NotFound
from .measured import Measured
from .sections import section, signed_room
from .sides import NUDGE, full_section, heel_upright
from .surfaces import height_on
from .wood import distance_between

CLOSER = 5
"""So often a point square to the heel is sought: each time it is met a hundred times closer."""


@dataclass(frozen=True)
class Screw:
    """One screw: axis point at its tip and at the heel's bottom [mm], radius of its shank [mm]."""

    tip: FloatArray
    entry: FloatArray
    radius: float


def screw_penetration(context: Context) -> Measured:
    """Least depth [mm] of a screw's tip in the heel, along the screw."""
    screws = _screws(context)
    if not screws:
        return _none()
    deep = np.array([s.tip[2] - s.entry[2] for s in screws])
    return _least(deep, [s.tip for s in screws])


def screw_tip(context: Context) -> Measured:
    """Least wood [mm] from a tip up to the glue line; in one piece, to the fret slots over it."""
    screws, frame = _screws(context), context.frame
    if not screws:
        return _none()
    tips = np.array([s.tip for s in screws])
    if context.values["neck.make"] == "glued":
        line = np.array(frame.to_neck(context.facets("heel").points)[:, :, 2].max())
    else:
        board = context.near("fretboard", context.neck_bounds).facing(axis=2, sign=1, least=0.5)
        line = _over(board, context, tips) - float(context.values["limits.fret_slot_depth"])
    return _least(line - frame.to_neck(tips)[:, 2], list(tips))


def _over(board: Facets, context: Context, tips: FloatArray) -> FloatArray:
    """(k,) neck-frame height [mm] of the fretboard's top over each tip, square to the heel.

    Over a tip beside the fretboard, or past its end, its top is carried on.
    """
    frame = context.frame
    in_neck = Facets(frame.to_neck(board.points), board.normal, board.face)
    found = highest(in_neck, frame.to_neck(tips)[:, :2])
    beside = ~np.isfinite(found)
    if beside.any():
        found[beside] = _carried_on(board, context, tips[beside])
    return found


def _carried_on(board: Facets, context: Context, tips: FloatArray) -> FloatArray:
    """As ``_over``, on the surface of the largest face of the fretboard's top."""
    if not len(board):
        raise NotFound("the fretboard has no top near the heel")
    edges = board.points[:, 1:] - board.points[:, :1]
    size = np.linalg.norm(np.cross(edges[:, 0], edges[:, 1]), axis=1)
    face = context.faces("fretboard")[int(np.bincount(board.face, weights=size).argmax())]
    up, points = context.frame.up, tips.copy()
    for _ in range(CLOSER):
        points += np.outer(height_on(face, points[:, :2]) - points[:, 2], up / up[2])
    return context.frame.to_neck(points)[:, 2]


def screw_edge(context: Context) -> Measured:
    """Least distance of a screw's axis to the heel's edge, in shank diameters.

    At the heel's bottom (over a chamfer) and at the tip, whichever is nearer to the edge.
    """
    screws, frame = _screws(context), context.frame
    if not screws:
        return _none()
    upright = heel_upright(context)
    in_neck = Facets(frame.to_neck(upright.points), _turned(frame, upright.normal), upright.face)
    outline = section(in_neck, full_section(context) + NUDGE)
    room = np.array([
        -signed_room(frame.to_neck(np.array([s.entry, s.tip]))[:, :2], *outline)[0].max()
        for s in screws
    ])  # fmt: skip
    shank = np.array([2 * s.radius for s in screws])
    found = _least(room / shank, [s.entry for s in screws])
    found.detail["of each screw [mm]"] = [float(r) for r in room]
    return found


def _turned(frame: Any, normal: FloatArray) -> FloatArray:
    return np.stack([normal @ frame.along, normal[:, 1], normal @ frame.up], axis=-1)


def screw_rod(context: Context) -> Measured:
    """Least distance [mm] from a screw's shank to the truss-rod channel; negative inside it.

    Its head, which may lie close under a thin body, is not what threatens the rod.
    """
    screws = _screws(context)
    if not context.has("rod"):
        return Measured.absent("the neck has no truss rod")
    if not screws:
        return _none()
    rod = context.shape("rod")
    apart = np.array([
        _to_rod(context, s, context.shape(name), rod)
        for s, name in zip(screws, _names(context), strict=True)
    ])  # fmt: skip
    return _least(apart, [s.tip for s in screws])


def _to_rod(context: Context, screw: Screw, solid: Any, rod: Any) -> float:
    distance = distance_between(_shank(screw, solid), rod)[0]
    if distance > NUDGE:
        return distance
    points = context.frame.to_neck(context.facets("rod").points.reshape(-1, 3))
    low, high = points.min(axis=0), points.max(axis=0)
    tip, entry = (context.frame.to_neck(p) for p in (screw.tip, screw.entry))
    aside = max(low[1] - tip[1], tip[1] - high[1])
    before = min(entry[0], tip[0]) - high[0]
    under = low[2] - tip[2]
    return float(max(max(aside, before) - screw.radius, under))


def _shank(screw: Screw, solid: Any) -> Any:
    """The screw without its head's rim: a cylinder from its lowest point to its tip."""
    from FreeCAD import Vector
    from Part import makeCylinder

    low = min(v.Z for v in solid.Vertexes)
    x, y, z = (float(a) for a in screw.tip)
    return makeCylinder(screw.radius, z - low, Vector(x, y, low))


def _names(context: Context) -> list[str]:
    found = [n for n in context.parts if n.startswith("screw_") and n[6:].isdigit()]
    return sorted(found, key=lambda n: int(n[6:]))


def _screws(context: Context) -> list[Screw]:
    return [_read(context, name) for name in _names(context)]


def _read(context: Context, name: str) -> Screw:
    """The shank is the cylinder that reaches highest; screws run along Z."""
    shanks = [f for f in context.faces(name) if type(f.Surface).__name__ == "Cylinder"]
    if not shanks:
        raise NotFound(f"{name} has no cylinder to be its shank")
    shank = max(shanks, key=lambda f: f.BoundBox.ZMax)
    axis, centre = shank.Surface.Axis, shank.Surface.Center
    if abs(axis.z) < 1 - 1e-9:
        raise NotFound(f"{name} does not run along Z")
    top = max(v.Z for v in shank.Vertexes)
    entry = float(context.frame.bottom_height(np.array([[centre.x, centre.y]]))[0])
    return Screw(
        np.array([centre.x, centre.y, top]), np.array([centre.x, centre.y, entry]),
        float(shank.Surface.Radius),
    )  # fmt: skip


def _least(values: FloatArray, places: list[FloatArray]) -> Measured:
    index = int(np.argmin(values))
    x, y, z = (float(a) for a in places[index])
    return Measured(float(values[index]), (x, y, z),
                    detail={"of each screw": [float(v) for v in values]})  # fmt: skip


def _none() -> Measured:
    return Measured.absent("no neck screws are stated")

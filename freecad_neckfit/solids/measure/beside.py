"""Room beside fretboard, heel and the rod's tool: in pocket, plate cut-out, at the pickup."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .facets import EMPTY, Facets, joined
from .measured import Measured
from .overlay import overlay
from .sections import section, signed_room
from .sides import NUDGE, top_edge

BOARD = ("fretboard", "binding_treble", "binding_bass")


def overhang_side(context: Context) -> Measured:
    """Least plan room [mm] from a sunk fretboard to the pocket's edge and the plate's cut-out.

    Only where the fretboard, binding included, lies below the finished top (or plate's top).
    """
    finish = float(context.values["finish.top"])
    around = _sunk_room(context, finish, *top_edge(context))
    if context.has("plate"):
        around = _smaller(around, board_in_cutout(context))
    return around or Measured.absent("the fretboard does not sink below the top or the plate")


def board_in_cutout(context: Context) -> Measured | None:
    """Plan room [mm] from a fretboard that sinks below the plate's top to its cut-out."""
    rise = float(context.values["finish.top"]) + float(context.values["plate.thickness"])
    return _sunk_room(context, rise, *_plate_edge(context))


def plate_heel(context: Context) -> Measured:
    """Least plan room [mm] from the plate's cut-out to the heel, and to a sunk fretboard."""
    if not context.has("plate"):
        return Measured.absent("no cover plate is fitted")
    best = board_in_cutout(context)
    heel, plate = context.facets("heel"), _plate_sides(context)
    z = plate.points[:, :, 2]
    reach = float(heel.points[:, :, 2].max())
    low, high = float(z.min()) + NUDGE, min(float(z.max()), reach) - NUDGE
    for level in (low, high) if low < high else ():
        inner, outer = section(heel, level), section(plate, level)
        best = _smaller(best, _room(inner[0].reshape(-1, 2), outer, level))
        best = _smaller(best, _room(outer[0].reshape(-1, 2), inner, level))
    return best or Measured.absent("neither heel nor fretboard reaches down to the plate")


def overhang_pickup(context: Context) -> Measured:
    """Room [mm] between fretboard and neck pickup: along X or in height, whichever is larger.

    Parts that are apart in either direction are free. Along X it is counted from the furthest
    point of the fretboard's end, in height from the lowest of the overhang.
    """
    if not context.has("pickup_neck"):
        return Measured.absent("no neck pickup is fitted")
    pickup = context.facets("pickup_neck").points.reshape(-1, 3)
    front, top = float(pickup[:, 0].min()), float(pickup[:, 2].max())
    board = _board(context)
    behind = context.frame.to_neck(board.points)[:, :, 0].min(axis=1) > -1e-6
    overhang = board.where(behind) if behind.any() else board
    under = overhang.facing(axis=2, sign=-1, least=0.5).points.reshape(-1, 3)
    points = overhang.points.reshape(-1, 3)
    under = under if len(under) else points
    lowest, end = under[under[:, 2].argmin()], points[points[:, 0].argmax()]
    upright, along = float(lowest[2]) - top, front - float(end[0])
    if upright > along:
        return Measured(upright, _point(lowest), detail={"room": "in height"})
    return Measured(along, _point(end), detail={"room": "along X"})


def rod_access(context: Context) -> Measured:
    """Least height [mm] of the rod tool over finished top, plate and neck pickup."""
    if not context.has("rod_tool"):
        return Measured.absent("no truss rod is adjusted at the heel")
    tool = context.facets("rod_tool").facing(axis=2, sign=-1)
    under = _under_tool(context)
    if context.has("pickup_neck"):
        under.append(("pickup", context.facets("pickup_neck").facing(axis=2, sign=1), 0.0))
    best: Measured | None = None
    for name, facets, finish in under:
        found = overlay(tool, facets).least() if len(facets) else None
        if found:
            best = _smaller(best, Measured(found[0] - finish, found[1], detail={"over": name}))
    return best or Measured.absent("nothing lies under the tool's path")


def _under_tool(context: Context) -> list[tuple[str, Facets, float]]:
    """Top and plate as far as the rod's tool reaches, as in ``rooms.supports``."""
    points = context.facets("rod_tool").points.reshape(-1, 3)
    low, high = points.min(axis=0), points.max(axis=0)
    bounds = (float(low[0]), float(high[0]), float(low[1]), float(high[1]))
    top = context.near("body", bounds, sign=1).without_faces(context.body_faces.below_top)
    plate = context.near("plate", bounds, sign=1)
    return [("top", top, float(context.values["finish.top"])), ("plate", plate, 0.0)]


def _board(context: Context) -> Facets:
    found = [context.near(n, context.neck_bounds) for n in BOARD if context.has(n)]
    return joined(found)


def _sunk_room(
    context: Context, rise: float, segments: FloatArray, normal: FloatArray
) -> Measured | None:
    """Least signed room of the fretboard where it lies lower than ``rise`` over the bare top."""
    board = _board(context)
    corners = board.points.reshape(-1, 3)
    depth = context.top_height(corners[:, :2]) + rise - corners[:, 2]
    sunk = board.cut(depth.reshape(-1, 3)) if depth.max() > 1e-6 else EMPTY
    mouth = float(context.boxes("body")[sorted(context.body_faces.floor), 0].min())
    points = sunk.clipped(axis=0, at=mouth, above=True).points.reshape(-1, 3)
    if not len(points):
        return None
    room, _ = signed_room(points[:, :2], segments, normal)
    index = int(room.argmin())
    return Measured(float(room[index]), _point(points[index]))


def _plate_sides(context: Context) -> Facets:
    plate = context.near("plate", context.neck_bounds)
    return plate.where(np.abs(plate.normal[:, 2]) < 0.3)


def _plate_edge(context: Context) -> tuple[FloatArray, FloatArray]:
    plate = _plate_sides(context)
    z = plate.points[:, :, 2]
    return section(plate, float(z.min() + z.max()) / 2)


def _room(points: FloatArray, wall: tuple[FloatArray, FloatArray], level: float) -> Measured | None:
    if not len(points) or not len(wall[0]):
        return None
    room, _ = signed_room(points, *wall)
    index = int(room.argmin())
    return Measured(float(room[index]), (float(points[index, 0]), float(points[index, 1]), level))


def _smaller(best: Measured | None, other: Measured | None) -> Measured | None:
    if best is None or (other is not None and other.value < best.value):
        return other
    return best


def _point(p: FloatArray) -> tuple[float, float, float]:
    return float(p[0]), float(p[1]), float(p[2])

"""Room in the plan between heel and pocket, at sides and end; finish on the walls taken off."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .context import Context
from .facets import EMPTY, Facets
from .failures import NotFound
from .measured import Measured
from .overlay import overlay, seen

UNDER = 0.01
"""So far [mm] under a wall's corner more of the wall is looked for."""
UPRIGHT = 1e-7
"""Walls lean no more than this (Z of their normal) and are taken as vertical."""
NUDGE = 1e-6
"""A section is taken this far [mm] within the height that it stands for."""
SQUARE = 1e-3
"""An end that strays no farther [mm] from square to the centreline is straight."""


def side_treble(context: Context) -> Measured:
    """Least room [mm] between the heel's treble side and the pocket's."""
    return _side(context, sign=treble_sign(context))


def side_bass(context: Context) -> Measured:
    """Least room [mm] between the heel's bass side and the pocket's."""
    return _side(context, sign=-treble_sign(context))


def treble_sign(context: Context) -> int:
    """+1 where the treble side lies at +Y."""
    return -1 if context.values["strings.left_handed"] else 1


def _side(context: Context, *, sign: int) -> Measured:
    """Over the length and height that both straight sides share; square to the pocket's side.

    The pocket's side is carried on down below a fillet, as its end is, and its finish begins and
    ends square to it.
    """
    bare = _to_floor(context, plane_walls(context).facing(axis=1, sign=-sign, least=0.7))
    walls = replace(bare, points=bare.points + finish(context) * bare.normal[:, None])
    heel = plane_heel(context).facing(axis=1, sign=sign, least=0.7)
    upper, lower = (walls, heel) if sign > 0 else (heel, walls)
    found = overlay(upper, lower, axis=1).least() if len(upper) and len(lower) else None
    if found is None:
        return Measured.unknown("no straight side of the heel lies beside one of the pocket")
    normal = walls.normal[0]
    square = abs(normal[1]) / np.hypot(normal[0], normal[1])
    return Measured(found[0] * float(square), found[1])


def end_clearance(context: Context) -> Measured:
    """Least room [mm] between heel end and end wall.

    Before a straight end wall along X, carried on down below a fillet or a gap's floor. In a round
    end to the arc, in any direction of the plan, from the heel's end and its corners' roundings.
    """
    if not len(wall_on_centreline(context)):
        return no_wall()
    walls = plane_walls(context).facing(axis=0, sign=-1, least=0.7)
    if not len(walls):
        return _round_end(context)
    heel = context.facets("heel").facing(axis=0, sign=1, least=0.5)
    found = overlay(_to_floor(context, walls), heel, axis=0).least() if len(heel) else None
    if found is None:
        return Measured.unknown("the heel's end does not stand before the end wall")
    return Measured(found[0] - finish(context), found[1])


def wall_on_centreline(context: Context) -> Facets:
    """Triangles of the end wall that lie on the centreline; none where a cavity took it away.

    What is left of it below the heel's full section is no wall before the heel.
    """
    walls = context.facets("body", context.body_faces.walls).facing(axis=0, sign=-1, least=0.5)
    y = walls.points[:, :, 1]
    found = walls.where((y.min(axis=1) <= 0) & (y.max(axis=1) >= 0))
    if not len(found):
        return found
    nothing = np.zeros(1)
    low = context.frame.to_body(x=nothing, y=nothing, z=nothing + full_section(context))[0, 2]
    return found if found.points[:, :, 2].max() > low else EMPTY


def no_wall() -> Measured:
    """What is told where a cavity took the end wall away."""
    return Measured.absent("no end wall is left on the centreline: a cavity takes it away")


def _to_floor(context: Context, walls: Facets) -> Facets:
    """Straight walls, their lower edge carried on in their plane to the floor's lowest level.

    What stands over more of the wall, as beside a cavity that opens it, stays.
    """
    if not len(walls):
        return walls
    floor = float(context.boxes("body")[sorted(context.body_faces.floor), 2].min())
    points = walls.points.copy()
    z = points[:, :, 2]
    low = (z < (z.min() + z.max()) / 2) & ~_over_more(walls)
    fall = np.where(low, np.minimum(floor - z, 0.0), 0.0)
    points[:, :, 2] += fall
    points[:, :, 0] += fall * lean(walls)
    return Facets(points, walls.normal, walls.face)


def _over_more(walls: Facets) -> NDArray[np.bool_]:
    """(n, 3) which corners of upright triangles have more of the wall right under them."""
    along = 0 if np.abs(walls.normal[:, 1]).mean() > 0.7 else 1
    view = walls.points[:, :, [along, 2, 1 - along]]
    under = view.reshape(-1, 3)[:, :2] - (0.0, UNDER)
    inside, _ = seen(np.broadcast_to(under, (len(view), *under.shape)), view)
    return np.asarray(inside.any(axis=0).reshape(view.shape[:2]))


def _round_end(context: Context) -> Measured:
    """To the arc alone, carried on past its ends: what lies beside it is the sides' room."""
    faces = [f for f in context.body_faces.walls if _is_round(context, "body", f)]
    if not faces:
        return Measured.unknown("the pocket's end is neither straight nor an arc")
    surface = context.faces("body")[faces[0]].Surface
    end = heel_end(context)
    corners = end.points.reshape(-1, 3)
    under_top = context.top_height(corners[:, :2]) - corners[:, 2]
    points = end.cut(under_top.reshape(-1, 3)).points.reshape(-1, 3)
    if not len(points):
        return Measured.unknown("the heel's end does not stand within the pocket")
    room = room_in_cylinder(points, surface)
    index = int(room.argmin())
    x, y, z = (float(a) for a in points[index])
    return Measured(float(room[index]) - finish(context), (x, y, z))


def room_in_cylinder(points: FloatArray, surface: Any) -> FloatArray:
    """(k,) plan distance [mm] from points inside a cylinder, upright or nearly, to its wall."""
    axis = np.array(surface.Axis)
    off = points - np.array(surface.Center)
    out = off - (off @ axis)[:, None] * axis
    away = np.linalg.norm(out, axis=1)
    # A wall that leans is farther off in the plan than square to itself; no way leads off its axis.
    flat = np.where(away > 0, np.hypot(out[:, 0], out[:, 1]) / np.where(away > 0, away, 1.0), 1.0)
    return np.asarray((surface.Radius - away) / flat)


def heel_end(context: Context) -> Facets:
    """The heel's end with the roundings of its corners, upright faces only."""
    upright = heel_upright(context)
    in_neck = Facets(context.frame.to_neck(upright.points), upright.normal, upright.face)
    flat = np.isin(upright.face, [f for f in set(upright.face.tolist())
                                  if is_plane(context, "heel", f)])  # fmt: skip
    return upright.where(~flat | upright_end(in_neck))


def full_section(context: Context) -> float:
    """Neck-frame height [mm] from which on the heel's sides are upright: over a chamfer."""
    upright = heel_upright(context)
    sides = upright.where(np.abs(upright.normal[:, 1]) > 0.7)
    if not len(sides):
        raise NotFound("the heel has no upright sides")
    return float(context.frame.to_neck(sides.points)[:, :, 2].min())


def upright_end(flat: Facets) -> NDArray[np.bool_]:
    """Which of the heel's plane faces, in neck-frame points, are its end rather than its sides."""
    reach = flat.points[:, :, 0].max(axis=1) - flat.points[:, :, 0].min(axis=1)
    ahead = flat.points[:, :, 0].min(axis=1) > -SQUARE
    return np.asarray((reach < SQUARE) & ahead)


def heel_upright(context: Context) -> Facets:
    """The heel's sides, end and corners, without its bottom, top, holes and chamfered edges."""
    return context.heel_walls


def plane_walls(context: Context) -> Facets:
    """Straight walls of the pocket."""
    faces = [f for f in context.body_faces.walls if is_plane(context, "body", f)]
    return context.facets("body", faces)


def plane_heel(context: Context) -> Facets:
    """Straight sides and end of the heel."""
    upright = heel_upright(context)
    return upright.of_faces(f for f in set(upright.face.tolist()) if is_plane(context, "heel", f))


def lean(facets: Facets) -> float:
    """X that a wall gains per Z: 0 for a vertical one."""
    normal = facets.normal[np.abs(facets.normal[:, 0]).argmax()]
    is_upright = np.abs(facets.normal[:, 2]).max() <= UPRIGHT
    return 0.0 if is_upright else float(-normal[2] / normal[0])


def is_plane(context: Context, part: str, face: int) -> bool:
    """Whether a face of a part is a plane."""
    return not np.isnan(context.planes(part)[face, 2])


def _is_round(context: Context, part: str, face: int) -> bool:
    return type(context.faces(part)[face].Surface).__name__ == "Cylinder"


def finish(context: Context) -> float:
    """Thickness [mm] of the finish on the walls."""
    return float(context.values["finish.wall"])

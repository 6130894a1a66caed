"""Room in the plan between the heel and the cover plate's cut-out."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .board_sides import board_in_cutout
from .context import Context
from .cutout import cutout_walls, first_ahead, plan_lines, plate_side
from .facets import EMPTY, STRAIGHT, Facets, accuracy, facets_of, joined
from .measured import Measured, least
from .overlay import SAME, overlay
from .sections import signed_room
from .sides import heel_end, plane_heel, room_in_cylinder

CROSSED = 2e-5
"""Accuracy [mm] to triangulate a wall with whose bent edge is crossed at a flat angle."""

INTO = 1.0
"""A heel that leans forward may go so far [mm] into the cut-out's end."""


def plate_heel(context: Context) -> Measured:
    """Least plan room [mm] from the plate's cut-out to the heel, and to a sunk fretboard's sides.

    To the cut-out's straight sides over the height of the plate; unless it is kept clear of the
    overhang, which opens it there, to its end and corners too, if all of the heel's end and
    corners reach up to the plate.
    """
    if not context.has("plate"):
        return Measured.absent("no cover plate is fitted")
    found = [board_in_cutout(context), *(_beside(context, sign) for sign in (-1, 1))]
    if context.values["plate.under_overhang"]:
        end = _end_at_plate(context)
        past = _past(end.points.reshape(-1, 3)) if len(end) else 0.0
        if first_ahead(context, past=past) is None:
            end = EMPTY  # a pickup's opening took the cut-out's end away
        found += [_corners(context, end), _end(context, end)]
    return least(found) or Measured.absent("neither heel nor fretboard reaches down to the plate")


def _beside(context: Context, sign: int) -> Measured | None:
    """Over the length and height that straight sides of heel and cut-out share."""
    heel = plane_heel(context).facing(axis=1, sign=sign, least=0.7)
    found: list[Measured | None] = []
    for coarse in plate_side(context, sign=sign):
        wall = _finely(context, coarse)
        upper, lower = (wall, heel) if sign > 0 else (heel, wall)
        room = overlay(upper, lower, axis=1).farthest_least() if len(heel) else None
        if room is not None:
            across = wall.normal[0]
            square = float(abs(across[1]) / np.hypot(across[0], across[1]))
            found.append(Measured(room[0] * square, room[1]))
    return least(found)


def _finely(context: Context, wall: Facets) -> Facets:
    """A straight side of the cut-out, in fine triangles where it ends at a bent top.

    The heel's glue line may cross such an edge at a very flat angle.
    """
    index = int(wall.face[0])
    face = context.faces("plate")[index]
    if accuracy(face) == STRAIGHT:
        return wall
    return facets_of(face, index, fine=CROSSED)


def _end_at_plate(context: Context) -> Facets:
    """Heel end and roundings between the plate's underside and top; none if not all reach up."""
    low = float(context.values["finish.top"])
    high = low + float(context.values["plate.thickness"])
    end = heel_end(context)
    # A bent top is highest on the centreline: cut there too, not from corner to corner alone.
    end = joined([end.clipped(axis=1, at=0.0, above=above) for above in (True, False)])
    corners = end.points.reshape(-1, 3)
    z = context.frame.to_neck(corners)[:, 2]
    rim = corners[z > z.max() - 1e-6]
    if np.any(rim[:, 2] - context.top_height(rim[:, :2]) <= low):
        return EMPTY
    over = end.cut(_over_top(context, end) - low)
    return over.cut(high - _over_top(context, over)) if len(over) else over


def _over_top(context: Context, facets: Facets) -> FloatArray:
    corners = facets.points.reshape(-1, 3)
    return np.asarray((corners[:, 2] - context.top_height(corners[:, :2])).reshape(-1, 3))


def _corners(context: Context, end: Facets) -> Measured | None:
    """From the heel's end and the roundings of its corners to the cut-out's walls."""
    points = end.points.reshape(-1, 3)
    if not len(points):
        return None
    walls = cutout_walls(context, past=_past(points))
    if not len(walls):
        return None
    # Triangles share their corners, and upright ones stand over each other.
    points = points[np.sort(np.unique(points[:, :2], axis=0, return_index=True)[1])]
    return _nearest(signed_room(points[:, :2], *plan_lines(walls))[0], points)


def _end(context: Context, end: Facets) -> Measured | None:
    """To the end's arc, carried on past its ends, if the cut-out's end is round."""
    points = end.points.reshape(-1, 3)
    found = first_ahead(context, past=_past(points)) if len(points) else None
    if found is None:
        return None
    face = context.faces("plate")[found[0]]
    if type(face.Surface).__name__ != "Cylinder":
        return None
    return _nearest(room_in_cylinder(points, face.Surface), points)


def _past(end: FloatArray) -> float:
    """X [mm] past which the cut-out's end lies: the heel's own end may lean into it."""
    return float(end[:, 0].max()) - INTO


def _nearest(room: FloatArray, points: FloatArray) -> Measured:
    """The least room; beside upright walls, where it is the same all the way up, at the top."""
    nearest = np.flatnonzero(room <= room.min() + SAME)
    k = int(nearest[points[nearest, 2].argmax()])
    return Measured(float(room[k]), (float(points[k, 0]), float(points[k, 1]), float(points[k, 2])))

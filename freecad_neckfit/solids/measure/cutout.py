"""The walls of a cover plate's cut-out, and those of the pocket, as lines in the plan."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .context import Context
from .facets import Facets
from .sections import section, signed_room

ROLES = ("neck", "middle", "bridge")
AROUND = 3.0
"""An opening is no more than this [mm] longer than its pickup, at either end."""
BESIDE = 12.0
"""How far [mm] beside the pocket, and past its end, the cut-out's walls may stand."""
SAME = 1e-9
"""Segments whose ends and normals differ by less than this [mm, radians] are one."""
FACING = 0.02
"""A wall faces where its normal's part that way is more than this."""
JOINED = 0.01
"""Walls whose ends lie nearer to each other than this [mm] join."""
ALONG = 1e-9
"""X of the normal of a wall that runs along the centreline, as beside the overhang."""
STEEPEST = 0.1
"""An end leans by less than this for a quarter of the pocket's depth, in shares of that depth."""
UPRIGHT = 0.3
"""Walls lean less than this (Z of their normal)."""


def plate_walls(context: Context) -> Facets:
    """Upright triangles of the cover plate near the joint: cut-out, openings and rim.

    A heel too large for its pocket may end far before the cut-out does: that is looked at whole.
    """
    x0, x1, y0, y1 = context.neck_bounds
    floor = context.boxes("body")[sorted(context.body_faces.floor)]
    low, high = floor[:, 1].min() - BESIDE, floor[:, 4].max() + BESIDE
    ahead = max(x1, float(floor[:, 3].max()) + BESIDE)
    plate = context.near("plate", (x0, ahead, min(y0, float(low)), max(y1, float(high))))
    return plate.where(np.abs(plate.normal[:, 2]) < UPRIGHT)


def cutout_walls(context: Context, *, past: float) -> Facets:
    """Walls of the cut-out about the heel: beside it, and past X = ``past`` ahead of it.

    The plate's rim faces away, and openings for pickups stand apart: a heel that is much too
    wide may lie nearer to those.
    """
    walls = plate_walls(context)
    half = float(context.facets("heel").points[:, :, 1].max()) / 4
    y = walls.points[:, :, 1].mean(axis=1)
    inward = -np.sign(y) * walls.normal[:, 1]
    beside = (inward > FACING) & (np.abs(y) > half)
    ahead = (walls.normal[:, 0] < -FACING) & (inward > -FACING)
    facing = walls.where(beside | (ahead & (walls.points[:, :, 0].max(axis=1) > past)))
    return _joining(facing, np.array([past, 0.0]))


def _joining(walls: Facets, start: FloatArray) -> Facets:
    """The face nearest to a point of the plan, and all that join on to it."""
    if not len(walls):
        return walls
    plan = {int(f): walls.of_faces([f]).points[:, :, :2].reshape(-1, 2) for f in set(walls.face)}
    nearest = min(plan, key=lambda f: _away(walls.of_faces([f]), start))
    found, new = {nearest}, [nearest]
    while new:
        here = plan[new.pop()]
        new += [f for f in plan if f not in found and _meets(plan[f], here)]
        found.update(new)
    return walls.of_faces(found)


def _away(face: Facets, point: FloatArray) -> float:
    return abs(float(signed_room(point[None], *plan_lines(face))[0][0]))


def _meets(one: FloatArray, other: FloatArray) -> bool:
    apart = one[:, None] - other[None]
    return bool(np.hypot(apart[..., 0], apart[..., 1]).min() < JOINED)


@dataclass(frozen=True)
class Line:
    """A straight wall in the plan: a point on it and its normal (2,), X from and to [mm]."""

    point: FloatArray
    normal: FloatArray
    first: float
    last: float

    def room(self, plan: FloatArray) -> FloatArray:
        """(k,) signed distance [mm] of plan points (k, 2), positive before the wall."""
        return np.asarray((plan - self.point) @ self.normal)


def cutout_lines(context: Context, *, sign: int) -> list[Line]:
    """The straight sides of the cover plate's cut-out on the side ``sign`` of the centreline.

    Beside an overhang that is kept clear one that runs into a pickup's opening is carried on.
    """
    lines = [_line(facets, reach=None) for facets in plate_side(context, sign=sign)]
    if context.values["plate.under_overhang"]:
        return lines
    return [line if abs(line.normal[0]) > ALONG else _past_pickups(context, line) for line in lines]


def _past_pickups(context: Context, line: Line) -> Line:
    for role in ROLES:
        if context.has(f"pickup_{role}"):
            box = context.boxes(f"pickup_{role}")
            front, back = float(box[:, 0].min()), float(box[:, 3].max())
            if front - AROUND <= line.last <= back:
                return replace(line, last=back)
    return line


def over_opening(context: Context, x: FloatArray) -> NDArray[np.bool_]:
    """(k,) whether the plate may be open for a pickup at each X [mm], about its middle."""
    found = np.zeros(len(x), dtype=bool)
    for role in ROLES:
        if context.has(f"pickup_{role}"):
            box = context.boxes(f"pickup_{role}")
            found |= (x >= box[:, 0].min() - AROUND) & (x <= box[:, 3].max() + AROUND)
    return found


def pocket_lines(context: Context, *, sign: int) -> list[Line]:
    """The straight sides of the pocket on the side ``sign``, as far as they go at Z = 0."""
    walls = context.facets("body", context.body_faces.walls)
    floor = context.facets("body", context.body_faces.floor)
    deep = float(floor.points[:, :, 2].max())
    return [_line(facets, reach=deep) for facets in _plane_sides(context, "body", walls, sign)]


def plate_side(context: Context, *, sign: int) -> list[Facets]:
    """Triangles of each straight side of the cut-out on the side ``sign``, face by face.

    The sides of a pickup's opening are none of them.
    """
    sides = _plane_sides(context, "plate", plate_walls(context), sign)
    return [s for s in sides if not _of_opening(context, s.points.reshape(-1, 3))]


def _of_opening(context: Context, points: FloatArray) -> bool:
    """Whether a wall that runs along X lies just beside a pickup, and no farther than it."""
    (x0, _, _), (x1, _, _) = points.min(axis=0), points.max(axis=0)
    y = np.abs(points[:, 1])
    for role in ROLES:
        if context.has(f"pickup_{role}"):
            box = context.boxes(f"pickup_{role}")
            front, back, half = box[:, 0].min(), box[:, 3].max(), box[:, 4].max()
            along = front - AROUND <= x0 and x1 <= back + AROUND
            if along and half <= y.min() and y.max() <= half + AROUND:
                return True
    return False


def _plane_sides(context: Context, part: str, walls: Facets, sign: int) -> list[Facets]:
    """A plate kept on one side ends at the centreline: that edge is no wall of its cut-out."""
    floor = context.boxes("body")[sorted(context.body_faces.floor)]
    half = float(floor[:, 4].max() - floor[:, 1].min()) / 4
    off = (sign * walls.points[:, :, 1]).min(axis=1)
    beside = walls.where((sign * walls.normal[:, 1] < -0.7) & (off > half))
    flat = context.planes(part)
    faces = [int(f) for f in np.unique(beside.face) if not np.isnan(flat[f, 2])]
    return [beside.of_faces([f]) for f in faces]


def _line(facets: Facets, *, reach: float | None) -> Line:
    """``reach``: Z that the whole wall reaches down to, if its end may lean."""
    normal = facets.normal[0, :2] / np.linalg.norm(facets.normal[0, :2])
    x = facets.points[:, :, 0]
    last = float(x.max()) if reach is None else _end_at_zero(facets, reach)
    return Line(facets.points[0, 0, :2], normal, float(x.min()), last)


def _end_at_zero(facets: Facets, deep: float) -> float:
    """X [mm] to which a side goes at Z = 0; where the end wall leans, its end leans with it."""
    low, high = (section(facets, deep * share)[0] for share in (0.5, 0.25))
    if not len(low) or not len(high):
        return float(facets.points[:, :, 0].max())
    lower, upper = float(low[:, :, 0].max()), float(high[:, :, 0].max())
    if abs(upper - lower) > STEEPEST * abs(deep):  # a cavity cuts it off above its floor
        return upper
    return upper + (upper - lower)


def plan_lines(facets: Facets) -> tuple[FloatArray, FloatArray]:
    """(m, 2, 2) segments that upright triangles cover in the plan, and (m, 2) their normals.

    Each segment once, though the two halves of a wall's strip cover it both.
    """
    flat = facets.points[:, :, :2]
    ends = np.stack([flat, np.roll(flat, -1, axis=1)], axis=2)
    longest = np.linalg.norm(ends[:, :, 0] - ends[:, :, 1], axis=2).argmax(axis=1)
    segments = ends[np.arange(len(flat)), longest]
    normal = facets.normal[:, :2] / np.linalg.norm(facets.normal[:, :2], axis=1)[:, None]
    back = segments[:, 0, 0] + segments[:, 0, 1] > segments[:, 1, 0] + segments[:, 1, 1]
    either_way = np.where(back[:, None, None], segments[:, ::-1], segments).reshape(-1, 4)
    keys = np.round(np.concatenate([either_way, normal], axis=1) / SAME)
    _, one = np.unique(keys, axis=0, return_index=True)
    return segments[one], normal[one]


def first_ahead(context: Context, *, past: float) -> tuple[int, float] | None:
    """The plate's first face before X = ``past`` that faces it near the centreline, and its X.

    None where that is the far wall of a pickup's opening: it took the cut-out's end away.
    """
    walls = plate_walls(context).facing(axis=0, sign=-1, least=0.7)
    y, x = walls.points[:, :, 1], walls.points[:, :, 0].max(axis=1)
    across = np.zeros(len(walls), dtype=bool)
    for at in (1.0, -1.0):  # a plate on one side ends at the centreline itself
        across |= (y.min(axis=1) <= at) & (y.max(axis=1) >= at)
    ahead = np.flatnonzero(across & (x > past))
    if not len(ahead):
        return None
    nearest = ahead[x[ahead].argmin()]
    for role in ROLES:
        if context.has(f"pickup_{role}"):
            back = float(context.boxes(f"pickup_{role}")[:, 3].max())
            if back <= x[nearest] <= back + AROUND:
                return None
    return int(walls.face[nearest]), float(x[nearest])

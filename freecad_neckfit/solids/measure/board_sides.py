"""The fretboard's long lower edges, and the room beside them where they sink into something."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .cutout import Line, cutout_lines, pocket_lines
from .facets import joined
from .measured import Measured

BINDINGS = ("binding_treble", "binding_bass")
FLUSH = 0.0075
"""How deep [mm] an edge must lie below the top to count as sunk; touching it is not."""
STEP = 2.0
"""How far apart [mm] an edge's depth under a curved top is looked up."""
SAME = 1e-6
"""Corners nearer to each other than this [mm] are one."""


def overhang_side(context: Context) -> Measured:
    """Least plan room [mm] from the fretboard's sides to the pocket's and the plate's cut-out's.

    Square to those sides, finish on the pocket's walls taken off. Counted where the fretboard's
    lower edge, binding included, lies more than ``FLUSH`` below the finished top, or below the
    plate's top. Its end and the pocket's corners are told by the rooms in height.
    """
    rise, wall = (float(context.values[f"finish.{key}"]) for key in ("top", "wall"))
    best = _least(
        _sunk_beside(context, sign, pocket_lines(context, sign=sign), rise) for sign in (1, -1)
    )
    if best is not None:
        best = Measured(best.value - wall, best.place)
    if context.has("plate"):
        best = _least(m for m in (best, board_in_cutout(context)))
    return best or Measured.absent("the fretboard does not sink below the top or the plate")


def board_in_cutout(context: Context) -> Measured | None:
    """Plan room [mm] from the sides of a fretboard that sinks below the plate's top to its own."""
    rise = float(context.values["finish.top"]) + float(context.values["plate.thickness"])
    return _least(
        _sunk_beside(context, sign, cutout_lines(context, sign=sign), rise) for sign in (1, -1)
    )


def _sunk_beside(context: Context, sign: int, walls: list[Line], rise: float) -> Measured | None:
    found = [
        _room(context, edge, wall, rise)
        for edge in (lower_edges(context, sign=sign) if walls else ())
        for wall in walls
    ]
    return _least(found)


def lower_edges(context: Context, *, sign: int) -> FloatArray:
    """(m, 2, 3) outer lower edges on the side ``sign`` of the centreline, binding included."""
    names = [n for n in BINDINGS if context.has(n)] or ["fretboard"]
    down = joined([context.near(n, context.neck_bounds, sign=-1) for n in names])
    points = down.facing(axis=2, sign=-1, least=0.5).points
    corners = np.concatenate([np.roll(points, -k, axis=1) for k in range(3)])
    ends, third = corners[:, :2], corners[:, 2]
    keys = np.sort(np.round(ends / SAME).astype(np.int64).view("i8,i8,i8")[..., 0], axis=1)
    _, index, count = np.unique(keys, axis=0, return_index=True, return_counts=True)
    rim = index[count == 1]
    ends, third = ends[rim], third[rim]
    along = ends[:, 1] - ends[:, 0]
    lengthwise = np.abs(along[:, 1]) < 0.7 * np.abs(along[:, 0])
    ends, third, along = ends[lengthwise], third[lengthwise], along[lengthwise]
    beside = ends[:, 0, 1] + (third[:, 0] - ends[:, 0, 0]) * along[:, 1] / along[:, 0]
    outer = (sign * beside > sign * third[:, 1]) & (sign * ends[:, :, 1].mean(axis=1) > 0)
    return np.asarray(ends[outer])


def _room(context: Context, edge: FloatArray, wall: Line, rise: float) -> Measured | None:
    """Least room of the part of an edge that runs beside the wall and lies below ``rise``."""
    start, end = edge[edge[:, 0].argsort()]
    low, high = max(start[0], wall.first), min(end[0], wall.last)
    if high - low < SAME:
        return None
    straight = not np.isnan(context.planes("body")[context.top_face, 2])
    count = 2 if straight else int(np.ceil((high - low) / STEP)) + 1
    points = _at(start, end, np.linspace(low, high, count))
    depth = _depth(context, points, rise)
    turns = np.flatnonzero((depth[:-1] > 0) != (depth[1:] > 0))
    crossings = [_crossing(context, points[k : k + 2], depth[k : k + 2], rise) for k in turns]
    sunk = np.concatenate([points[depth > 0], *(c[None] for c in crossings)])
    if not len(sunk):
        return None
    room = wall.room(sunk[:, :2])
    k = int(room.argmin())
    return Measured(float(room[k]), (float(sunk[k, 0]), float(sunk[k, 1]), float(sunk[k, 2])))


def _at(start: FloatArray, end: FloatArray, x: FloatArray) -> FloatArray:
    """(k, 3) points of a straight edge at X (k,) [mm]."""
    share = (x - start[0]) / (end[0] - start[0])
    return np.asarray(start + share[:, None] * (end - start))


def _depth(context: Context, points: FloatArray, rise: float) -> FloatArray:
    return context.top_height(points[:, :2]) + rise - FLUSH - points[:, 2]


def _crossing(context: Context, ends: FloatArray, depth: FloatArray, rise: float) -> FloatArray:
    """The point between two where the edge passes through the surface, by two secant steps."""
    found = ends[0]
    for _ in range(2):
        share = depth[0] / (depth[0] - depth[1])
        found = ends[0] + share * (ends[1] - ends[0])
        there = float(_depth(context, found[None], rise)[0])
        side = 0 if (there > 0) == (depth[0] > 0) else 1
        ends, depth = ends.copy(), depth.copy()
        ends[side], depth[side] = found, there
        if there == 0:
            break
    return np.asarray(found)


def _least(found: Iterable[Measured | None]) -> Measured | None:
    return min((m for m in found if m is not None), key=lambda m: m.value, default=None)

"""Triangles of a face that is a whole rectangle of a round surface's parameters."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ..job.arrays import FloatArray
from .ways import Way

ROUND = ("Cylinder", "Cone", "Toroid")
"""Kinds of surfaces of which a rectangle of parameters is laid out without a look at its bends."""
TURN = 0.5
"""Most [radians] that such a surface may turn from one step to the next."""
SAME = 1e-6
"""Share by which an edge may leave a straight way, and a count of steps the next lower one."""
MOST = 60_000
"""Most cells of a grid: more are not worth the while."""
KEPT = 400
"""Grids of no more cells are alike for many faces: how their corners belong together is kept."""


def round_grid(face: Any, sag: float) -> FloatArray | None:
    """(n, 3, 3) triangles turned as the face is, within ``sag`` [mm]; None for any other face.

    Such a one needs no look at its bending or its area. In plain numbers, since a neck's frets have
    hundreds that take but a few triangles each.
    """
    if type(face.Surface).__name__ not in ROUND or not _is_rectangle(face):
        return None
    u0, u1, v0, v1 = face.ParameterRange
    surface = face.Surface
    around, along = _round_steps(surface, (u0, u1, v0, v1), sag)
    if around * along > MOST:
        return None
    us = [u0 + (u1 - u0) * k / around for k in range(around + 1)]
    vs = [v0 + (v1 - v0) * k / along for k in range(along + 1)]
    points = [surface.value(u, v) for u in us for v in vs]
    middle = face.normalAt((us[0] + us[1]) / 2, (vs[0] + vs[1]) / 2)
    across = (points[along + 1] - points[0]).cross(points[1] - points[0])
    corners = np.array([(p.x, p.y, p.z) for p in points])
    return np.asarray(corners[triples(around, along, across.dot(middle) > 0)])


def _is_rectangle(face: Any) -> bool:
    """Whether four edges, two along U and two along V, bound the face."""
    edges = face.Edges
    if len(edges) != 4 or len(face.Wires) != 1 or any(e.Degenerated for e in edges):
        return False
    kinds = [type(edge.Curve).__name__ for edge in edges]
    if kinds.count("Line") == 2:  # on a cylinder or cone these run along, and circles around
        return kinds.count("Circle") == 2
    if type(face.Surface).__name__ != "Toroid":
        return False
    ways = [Way.of(face, edge) for edge in edges]
    return sorted(_axis(way) for way in ways if way is not None) == [0, 0, 1, 1]


def _axis(way: Way) -> int:
    """0 or 1 where a way runs straight along U or V, else -1."""
    start, end = way.ends()
    across = np.abs(end - start)
    if not way.is_line or across.min() > SAME * across.max():
        return -1
    return int(np.argmax(across))


def _round_steps(
    surface: Any, reach: tuple[float, float, float, float], sag: float
) -> tuple[int, int]:
    u0, u1, v0, v1 = reach
    if type(surface).__name__ == "Toroid":
        radius = float(surface.MajorRadius + surface.MinorRadius)
        across = float(surface.MinorRadius)
        return _around(u1 - u0, radius, sag / 2), _around(v1 - v0, across, sag / 2)
    lean = math.sin(surface.SemiAngle) if type(surface).__name__ == "Cone" else 0.0
    radius = max(abs(float(surface.Radius) + v * lean) for v in (v0, v1))
    return _around(u1 - u0, radius, sag), 1


def _around(angle: float, radius: float, sag: float) -> int:
    most = 2 * math.acos(1 - sag / radius) if sag < radius else TURN
    return max(1, math.ceil(angle / min(most, TURN) - SAME))


def triples(first: int, second: int, is_outward: bool) -> NDArray[np.int64]:
    """(n, 3) corners of triangles among those of a grid, row by row."""
    tell = _kept if first * second <= KEPT else _told
    return tell(first, second, is_outward)


def _told(first: int, second: int, is_outward: bool) -> NDArray[np.int64]:
    index = np.arange((first + 1) * (second + 1)).reshape(first + 1, second + 1)
    a, b, c, d = index[:-1, :-1], index[1:, :-1], index[1:, 1:], index[:-1, 1:]
    found = np.stack([np.stack([a, b, c], axis=2), np.stack([a, c, d], axis=2)]).reshape(-1, 3)
    return np.asarray(found if is_outward else found[:, ::-1])


_kept = lru_cache(maxsize=256)(_told)

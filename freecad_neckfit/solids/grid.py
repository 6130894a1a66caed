"""Triangles of a face with four edges, laid out as a grid between them.

The kernel takes up to fifty times as many triangles for a narrow fillet along an arc, and far
longer for each of the many small round faces of a neck's frets.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np

from ..job.arrays import FloatArray
from .round_grid import MOST, round_grid, triples
from .ways import Way

SAG = 0.001
"""Most [mm] by which the triangles may leave the surface, unless told."""
FIRST, SPANS = 8, 64
"""Steps each way by which a free-form surface's bending is told: two to each of its spans, of which
so many are followed."""
NEARLY = 0.9
"""Share of the sag that steps are chosen for: a net tells the bending only about."""
TRIES = 3
"""So many times a grid is made finer where its middles tell that it leaves the surface too far."""
LOOKED_AT = 32
"""Of about so many of its cells each way it is asked how far their middles leave the surface."""
LEAST = 12
"""Fewest steps each way that is bent: fewer leave the area in doubt."""
STRAIGHT = 1e-6
"""A free-form surface that bends by less than this [mm] one way is straight that way."""
SAME = 1e-6
"""Ends of edges closer than this share of the face's parameters are one corner."""
FILLS = 3e-3
"""Share by which the grid's area may differ from the face's, which the kernel itself tells up to a
five-hundredth too large where a narrow face is tightly bent."""
ROUGH, ROUGH_FILLS = 0.02, 0.012
"""The same of a grid that may leave the surface by so much [mm] or more."""


def grid_of(face: Any, *, sag: float = SAG) -> FloatArray | None:
    """(n, 3, 3) corners [mm] of triangles turned as the face is; None where a grid does not suit.

    ``sag``: most [mm] by which it may leave the surface. It does not suit a plane, which takes few
    triangles anyway, nor where the face has not just four edges, where the grid between them does
    not cover the face, and where it needs too many steps.
    """
    if type(face.Surface).__name__ == "Plane":
        return None
    found = round_grid(face, sag)
    if found is not None:
        return found
    border = _border(face)
    if border is None:
        return None
    steps = _steps(_net(face, border, *_first(face)), sag)
    for _ in range(TRIES):
        if steps[0] * steps[1] > MOST:
            return None
        net = _net(face, border, *steps)
        off = _off(face, border, net)
        if off <= sag:
            break
        steps = _finer(steps, off / sag)
    else:
        return None
    triangles = net.reshape(-1, 3)[triples(*steps, _looks_out(face, border, net))]
    return np.asarray(triangles) if _fills(face, triangles, sag) else None


def _border(face: Any) -> list[Way] | None:
    """The four edges, each from the last one's end.

    None where there are not four, or one has shrunk to a point.
    """
    edges = face.Edges
    if len(edges) != 4 or len(face.Wires) != 1:
        return None
    ways = [way for edge in edges if (way := Way.of(face, edge)) is not None]
    u0, u1, v0, v1 = face.ParameterRange
    return _in_order(ways, SAME * np.array([u1 - u0, v1 - v0])) if len(ways) == 4 else None


def _in_order(ways: list[Way], near: FloatArray) -> list[Way] | None:
    """The ways round the face, each turned so that it begins where the one before it ends."""
    found, rest = [ways[0]], ways[1:]
    start, at = ways[0].ends()
    while rest:
        for k, way in enumerate(rest):
            first, last = way.ends()
            if (np.abs(first - at) <= near).all():
                found.append(rest.pop(k))
                at = last
                break
            if (np.abs(last - at) <= near).all():
                found.append(rest.pop(k).turned())
                at = first
                break
        else:
            return None
    return found if (np.abs(at - start) <= near).all() else None


def _net(face: Any, border: list[Way], first: int, second: int) -> FloatArray:
    """(first + 1, second + 1, 3) points of the surface, evenly between the edges."""
    surface = face.Surface
    spots = _between(border, np.linspace(0, 1, first + 1), np.linspace(0, 1, second + 1))
    points = [surface.value(u, v) for u, v in spots.reshape(-1, 2).tolist()]
    return np.array([(p.x, p.y, p.z) for p in points]).reshape(first + 1, second + 1, 3)


def _between(border: list[Way], s: FloatArray, t: FloatArray) -> FloatArray:
    """(len(s), len(t), 2) parameters: the edges' own at the border, blended within it."""
    near, right = border[0].at(s)[:, None], border[1].at(t)[None]
    far, left = border[2].at(1 - s)[:, None], border[3].at(1 - t)[None]
    (p, q), (r, o) = border[0].ends(), border[2].ends()
    a, b = s[:, None, None], t[None, :, None]
    corners = (1 - a) * ((1 - b) * p + b * o) + a * ((1 - b) * q + b * r)
    return np.asarray((1 - b) * near + b * far + (1 - a) * left + a * right - corners)


def _first(face: Any) -> tuple[int, int]:
    """Steps each way of a first net: a bow between two knots may be told by none beside it."""
    surface = face.Surface
    name = type(surface).__name__
    u0, u1, v0, v1 = face.ParameterRange
    if name == "BSplineSurface":
        knots = [(surface.getUKnots(), u0, u1), (surface.getVKnots(), v0, v1)]
    elif name == "SurfaceOfExtrusion" and type(surface.BasisCurve).__name__ == "BSplineCurve":
        knots = [(surface.BasisCurve.getKnots(), u0, u1), ([], v0, v1)]
    else:
        return FIRST, FIRST
    spans = [1 + sum(low < knot < high for knot in every) for every, low, high in knots]
    first, second = (max(FIRST, 2 * min(count, SPANS)) for count in spans)
    return first, second


def _steps(net: FloatArray, sag: float) -> tuple[int, int]:
    """Steps each way that together keep to most of ``sag``, which falls with their square."""
    found = []
    for axis in (0, 1):
        bend = np.linalg.norm(np.diff(net, n=2, axis=axis), axis=-1).max() / 8
        least = LEAST if bend > STRAIGHT else 1
        found.append(
            max(least, math.ceil((net.shape[axis] - 1) * math.sqrt(2 * bend / (NEARLY * sag))))
        )
    return found[0], found[1]


def _finer(steps: tuple[int, int], times: float) -> tuple[int, int]:
    """Steps for a sag that is too great by so many times; along what is straight it stays one."""
    first, second = (
        step if step == 1 else math.ceil(step * min(4.0, 1.1 * math.sqrt(times))) for step in steps
    )
    return (first, second) if max(steps) > 1 else (LEAST, LEAST)


def _off(face: Any, border: list[Way], net: FloatArray) -> float:
    """How far [mm] the cells' middles leave the surface at most, square to the cells."""
    surface = face.Surface
    near = [np.arange(0, n - 1, max(1, n // LOOKED_AT)) for n in net.shape[:2]]
    shares = [(k + 0.5) / (n - 1) for k, n in zip(near, net.shape, strict=False)]
    spots = _between(border, *shares).reshape(-1, 2).tolist()
    middles = np.array([(p.x, p.y, p.z) for p in (surface.value(u, v) for u, v in spots)])
    (i, j), (far_i, far_j) = np.ix_(*near), np.ix_(*(k + 1 for k in near))
    one, other = net[far_i, far_j] - net[i, j], net[i, far_j] - net[far_i, j]
    square = np.cross(one.reshape(-1, 3), other.reshape(-1, 3))
    size = np.linalg.norm(square, axis=1)
    apart = middles - ((net[i, j] + net[far_i, far_j]) / 2).reshape(-1, 3)
    return float((np.abs((apart * square).sum(axis=1)) / np.maximum(size, 1e-30)).max())


def _fills(face: Any, triangles: FloatArray, sag: float) -> bool:
    across = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    area = float(np.linalg.norm(across, axis=1).sum()) / 2
    share = FILLS if sag < ROUGH else ROUGH_FILLS
    return bool(abs(area - face.Area) <= share * face.Area)


def _looks_out(face: Any, border: list[Way], net: FloatArray) -> bool:
    """Whether normals from the first way of the net to the second point out of the material."""
    i, j = ((n - 1) // 2 for n in net.shape[:2])
    s, t = ((k + 0.5) / (n - 1) for k, n in zip((i, j), net.shape, strict=False))
    across = np.cross(net[i + 1, j] - net[i, j], net[i, j + 1] - net[i, j])
    u, v = _between(border, np.array([s]), np.array([t]))[0, 0].tolist()
    out = face.normalAt(u, v)
    return bool(np.dot(across, (out.x, out.y, out.z)) > 0)

"""Triangles of a free-form face with four edges, laid out as a grid between them.

The kernel takes up to fifty times as many triangles for a narrow fillet along an arc.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from ...job.arrays import FloatArray

SAG = 0.0005
"""Most [mm] by which a triangle's edge along the grid may leave the surface."""
FIRST = 8
"""Steps each way by which the surface's bending is told."""
LEAST, MOST = 12, 400
"""Steps each way: fewer leave the area in doubt, more are not worth the while."""
ON_EDGE = 24
"""Steps by which an edge is followed over the surface."""
SAME = 1e-4
"""Ends of edges closer than this [mm] are one corner."""
FILLS = 3e-3
"""Share by which the grid's area may differ from the face's, which the kernel itself tells up to a
five-hundredth too large where a narrow face is tightly bent."""


def grid_of(face: Any) -> FloatArray | None:
    """(n, 3, 3) corners [mm] of triangles turned as the face is; None where a grid does not suit.

    That is so where the face has not just four edges, where the grid between them folds or does
    not cover the face, and where it needs too many steps.
    """
    border = _border(face)
    if border is None:
        return None
    steps = _steps(_net(face, border, FIRST, FIRST))
    if max(steps) > MOST:
        return None
    net = _net(face, border, *steps)
    a, b, c, d = net[:-1, :-1], net[1:, :-1], net[1:, 1:], net[:-1, 1:]
    triangles = np.stack([np.stack([a, b, c], axis=2), np.stack([a, c, d], axis=2)])
    triangles = triangles.reshape(-1, 3, 3)
    across = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    area = float(np.linalg.norm(across, axis=1).sum()) / 2
    if abs(area - face.Area) > FILLS * face.Area:
        return None
    return np.asarray(triangles if _looks_out(face, border, net) else triangles[:, ::-1])


def _border(face: Any) -> list[FloatArray] | None:
    """The four edges as (ON_EDGE + 1, 2) parameters of the surface, each from the last one's end.

    None where there are not four, or one has shrunk to a point: the kernel cannot follow it.
    """
    if len(face.Wires) != 1 or len(face.Edges) != 4 or any(e.Degenerated for e in face.Edges):
        return None
    edges = [
        np.array([(p.x, p.y, p.z) for p in e.discretize(Number=ON_EDGE + 1)])
        for e in face.OuterWire.OrderedEdges
    ]
    after = edges[1][[0, -1]]
    if np.linalg.norm(after - edges[0][0], axis=1).min() < SAME:
        edges[0] = edges[0][::-1]
    for k in range(1, 4):
        if np.linalg.norm(edges[k][0] - edges[k - 1][-1]) > SAME:
            edges[k] = edges[k][::-1]
        if np.linalg.norm(edges[k][0] - edges[k - 1][-1]) > SAME:
            return None
    return [_on_surface(face.Surface, points) for points in edges]


def _on_surface(surface: Any, points: FloatArray) -> FloatArray:
    from FreeCAD import Vector

    return np.array([surface.parameter(Vector(*(float(a) for a in p))) for p in points])


def _net(face: Any, border: list[FloatArray], first: int, second: int) -> FloatArray:
    """(first + 1, second + 1, 3) points of the surface, evenly between the edges."""
    surface = face.Surface
    spots = _between(border, np.linspace(0, 1, first + 1), np.linspace(0, 1, second + 1))
    points = [surface.value(u, v) for u, v in spots.reshape(-1, 2).tolist()]
    return np.array([(p.x, p.y, p.z) for p in points]).reshape(first + 1, second + 1, 3)


def _between(border: list[FloatArray], s: FloatArray, t: FloatArray) -> FloatArray:
    """(len(s), len(t), 2) parameters: the edges' own at the border, blended within it."""
    near, right = _along(border[0], s)[:, None], _along(border[1], t)[None]
    far, left = _along(border[2][::-1], s)[:, None], _along(border[3][::-1], t)[None]
    a, b = s[:, None, None], t[None, :, None]
    corners = (1 - a) * ((1 - b) * near[0, 0] + b * far[0, 0])
    corners = corners + a * ((1 - b) * near[-1, 0] + b * far[-1, 0])
    return np.asarray((1 - b) * near + b * far + (1 - a) * left + a * right - corners)


def _along(edge: FloatArray, at: FloatArray) -> FloatArray:
    known = np.linspace(0, 1, len(edge))
    return np.column_stack([np.interp(at, known, edge[:, k]) for k in (0, 1)])


def _steps(net: FloatArray) -> tuple[int, int]:
    """Steps each way that keep the sag below ``SAG``: it falls with the square of their number."""
    found = []
    for axis in (0, 1):
        bend = np.linalg.norm(np.diff(net, n=2, axis=axis), axis=-1).max() / 8
        found.append(max(LEAST, int(np.ceil(FIRST * np.sqrt(bend / SAG)))))
    return found[0], found[1]


def _looks_out(face: Any, border: list[FloatArray], net: FloatArray) -> bool:
    """Whether normals from the first way of the net to the second point out of the material."""
    i, j = ((n - 1) // 2 for n in net.shape[:2])
    s, t = ((k + 0.5) / (n - 1) for k, n in zip((i, j), net.shape, strict=False))
    across = np.cross(net[i + 1, j] - net[i, j], net[i, j + 1] - net[i, j])
    u, v = _between(border, np.array([s]), np.array([t]))[0, 0].tolist()
    out = face.normalAt(u, v)
    return bool(np.dot(across, (out.x, out.y, out.z)) > 0)

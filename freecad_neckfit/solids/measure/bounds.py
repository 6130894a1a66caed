"""How far a face can reach, and which way it can look, told from its surface alone."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np

from .poles import Net

UPRIGHT = 1e-6
"""A direction off the vertical by less than this [radians] counts as upright."""
EDGE = 1e-9
"""A face that ends within this [radians] of a turning point does not pass it."""

FREE = ("BSplineSurface", "BezierSurface", "SurfaceOfExtrusion")
"""Kinds of surfaces that may be planes in truth: other programs write every face so."""
FAR = 5.0
"""Bounds that reach farther [mm] past a free-form face's edges are taken for loose."""
SPARE = 0.01
"""How much wider [mm] than what the kernel finds by looking at places of a surface."""

Box = tuple[float, float, float, float, float, float]


def box_of(face: Any) -> Box:
    """X, Y, Z from, then to [mm] of what holds the face; may be loose for a curved one.

    The kernel's own bounds of a ring's piece hold much of the ring. A piece of an upright one that
    neither turns over nor back reaches no farther than its edges. Its bounds of a piece of a
    free-form surface hold the whole surface's poles: where they reach far past the piece's edges,
    only the poles that it hangs on are looked at; where those do too, the tight bounds are asked
    for, which cost far more, but less than triangulating what lies elsewhere.
    """
    loose, surface = _numbers(face.BoundBox), face.Surface
    if type(surface).__name__ in FREE:
        low, high = _of_edges(face)
        far = max(*(a - b for a, b in zip(low, loose[:3], strict=True)),
                  *(b - a for a, b in zip(high, loose[3:], strict=True)))  # fmt: skip
        return _tighter(face, low, high) if far > FAR else loose
    if not (_is_ring(surface) and _turns(face, math.pi / 2) == 0):
        return loose
    low, high = _of_edges(face)
    return (low[0], low[1], low[2], high[0], high[1], high[2])


def _tighter(face: Any, low: Sequence[float], high: Sequence[float]) -> Box:
    """Bounds of a free-form face whose edges lie from ``low`` to ``high`` [mm]."""
    net = Net.of(face)
    if net is not None:
        least, most = net.bounds
        if np.all(low - least <= FAR) and np.all(most - high <= FAR):
            x, y, z = (float(a) for a in least)
            return (x, y, z, float(most[0]), float(most[1]), float(most[2]))
    return _spared(face.optimalBoundingBox())


def _of_edges(face: Any) -> tuple[list[float], list[float]]:
    """Least and greatest X, Y, Z [mm] of what holds the face's edges."""
    boxes = [_numbers(edge.BoundBox) for edge in face.Edges]
    low, high = ([side(b[k] for b in boxes) for k in range(6)] for side in (min, max))
    return low[:3], high[3:]


def _spared(box: Any) -> Box:
    tight = _numbers(box)
    low, high = [a - SPARE for a in tight[:3]], [a + SPARE for a in tight[3:]]
    return (low[0], low[1], low[2], high[0], high[1], high[2])


def looks(face: Any) -> tuple[float, float] | None:
    """Least and most that the Z of the face's outward normals can be; None where not told.

    Told of planes, cylinders, cones, pieces of rings about an upright axis, and upright walls.
    """
    surface = face.Surface
    kind = type(surface).__name__
    if kind == "Plane":
        z = float(face.normalAt(0, 0).z)
        return z, z
    if kind == "Cylinder" and _is_upright(surface.Axis):
        return 0.0, 0.0
    if kind in ("Cylinder", "Cone"):
        return _around_axis(face)
    if kind == "SurfaceOfExtrusion" and _is_upright(surface.Direction):
        return 0.0, 0.0
    if _is_ring(surface) and _turns(face, math.pi, start=math.pi / 2) == 0:
        u, _, first, last = face.ParameterRange
        ends = [float(face.normalAt(u, v).z) for v in (first, last)]
        return min(ends), max(ends)
    return None


def _around_axis(face: Any) -> tuple[float, float]:
    """Along its lines a normal stays the same, and from line to line it turns about the axis."""
    first, last, low, high = face.ParameterRange
    start, quarter, half = (
        float(face.normalAt(u, (low + high) / 2).z) for u in (0.0, math.pi / 2, math.pi)
    )
    middle, along = (start + half) / 2, (start - half) / 2
    across = quarter - middle
    found = [middle + along * math.cos(u) + across * math.sin(u) for u in (first, last)]
    for sign in (1, -1):
        turning = math.atan2(sign * across, sign * along)
        turning += math.ceil((first - turning) / (2 * math.pi)) * 2 * math.pi
        if turning <= last:
            found.append(middle + sign * math.hypot(along, across))
    return min(found), max(found)


def _is_ring(surface: Any) -> bool:
    return type(surface).__name__ == "Toroid" and _is_upright(surface.Axis)


def _is_upright(direction: Any) -> bool:
    return math.hypot(direction.x, direction.y) < UPRIGHT


def _turns(face: Any, every: float, *, start: float = 0.0) -> int:
    """How many of the angles start, start ± every … the face passes round the ring's own circle."""
    first, last = (float(a) for a in face.ParameterRange[2:])
    return math.floor((last - EDGE - start) / every) - math.floor((first + EDGE - start) / every)


def _numbers(box: Any) -> Box:
    return (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax)

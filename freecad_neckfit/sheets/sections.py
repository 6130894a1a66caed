"""Cuts through the placed solids, as closed loops of points that read the same on every kernel."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Mapping
from typing import Any

from FreeCAD import Vector

from .ink import Spot
from .view import Loop

NUDGE = 0.013
"""How far [mm] a cut keeps off the plane asked for: a plane along a face cuts nothing."""
SAME = 1e-5
STEP = math.radians(4)
"""Turn between neighbouring points of a curve."""


CURVED = 24
"""Pieces that any other curve is drawn in."""


def along_centreline(parts: Mapping[str, Any], names: Iterable[str]) -> dict[str, list[Loop]]:
    """Cuts at Y = 0 in (X, Z) [mm], by part."""
    return _cuts(parts, names, Vector(0, 1, 0), NUDGE, lambda p: (p.x, p.z))


def across(
    parts: Mapping[str, Any], names: Iterable[str], *, at: float, mirrored: bool
) -> dict[str, list[Loop]]:
    """Cuts at X = ``at`` [mm] in (Y, Z), or in (-Y, Z) if ``mirrored``, by part."""
    side = -1.0 if mirrored else 1.0
    return _cuts(parts, names, Vector(1, 0, 0), at + NUDGE, lambda p: (side * p.y, p.z))


def _cuts(
    parts: Mapping[str, Any],
    names: Iterable[str],
    normal: Any,
    level: float,
    flat: Callable[[Any], Spot],
) -> dict[str, list[Loop]]:
    found = {}
    for name in names:
        loops: list[Loop] = []
        for solid in parts[name].Solids if name in parts else ():
            wires = solid.copy().slice(normal, level)
            loops += [_tidy([flat(p) for p in _points(wire)]) for wire in wires]
        loops = sorted(loop for loop in loops if len(loop) > 2)
        if loops:
            found[name] = loops
    return found


def _points(wire: Any) -> list[Any]:
    """Points round a wire, whichever way each of its edges happens to run."""
    runs = [_sampled(edge) for edge in wire.OrderedEdges]
    if len(runs) > 1 and _apart(runs[0][0], runs[1]) < _apart(runs[0][-1], runs[1]):
        runs[0].reverse()
    points = list(runs[0])
    for run in runs[1:]:
        if points[-1].distanceToPoint(run[-1]) < points[-1].distanceToPoint(run[0]):
            run.reverse()
        points += run[1:]
    return points


def _apart(point: Any, run: list[Any]) -> float:
    return float(min(point.distanceToPoint(run[0]), point.distanceToPoint(run[-1])))


def _sampled(edge: Any) -> list[Any]:
    first, last = edge.ParameterRange
    count: int = 1 if type(edge.Curve).__name__ in ("Line", "LineSegment") else _steps(edge)
    return [edge.valueAt(first + (last - first) * i / count) for i in range(count + 1)]


def _steps(edge: Any) -> int:
    if type(edge.Curve).__name__ in ("Circle", "ArcOfCircle"):
        first, last = edge.ParameterRange
        return max(2, math.ceil(abs(float(last) - float(first)) / STEP - 1e-6))
    return CURVED


def _tidy(points: list[Spot]) -> Loop:
    """A closed loop without repeats and needless corners, turned left, from its lowest point."""
    kept: list[Spot] = []
    for x, y in points:
        if not kept or math.dist(kept[-1], (x, y)) > SAME:
            kept.append((x, y))
    while len(kept) > 1 and math.dist(kept[0], kept[-1]) <= SAME:
        kept.pop()
    corners = [p for i, p in enumerate(kept) if _bends(kept[i - 1], p, kept[(i + 1) % len(kept)])]
    if len(corners) < 3:
        return ()
    if _area(corners) < 0:
        corners.reverse()
    start = min(
        range(len(corners)), key=lambda i: (round(corners[i][0], 4), round(corners[i][1], 4))
    )
    return (*corners[start:], *corners[:start])


def _bends(a: Spot, b: Spot, c: Spot) -> bool:
    turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0])
    return abs(turn) > 1e-6 * (math.dist(a, b) + math.dist(b, c))


def _area(loop: list[Spot]) -> float:
    turned = zip(loop, [*loop[1:], loop[0]], strict=True)
    return sum(a[0] * b[1] - a[1] * b[0] for a, b in turned) / 2

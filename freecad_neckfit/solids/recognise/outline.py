"""A body's outline as corners, cut at half its thickness."""

from __future__ import annotations

from typing import Any

import numpy as np
from FreeCAD import Vector

from .reading import NotRead

Point = tuple[float, float]
CHORD = 0.02
"""How far [mm] a curve of the outline may stray from its corners."""
SHORTEST = 0.05
"""Corners nearer to one another than this [mm] are one."""
NUDGE = 0.0137
"""The cut keeps off levels where faces are likely to lie [mm]."""


def outline_at(solid: Any, z: float) -> list[Point]:
    """Corners (X, Y) [mm] of the solid's outer outline at the level Z, in order.

    Raises NotRead where nothing is cut there.
    """
    wires = solid.copy().slice(Vector(0, 0, 1), z + NUDGE)
    closed = [w for w in wires if w.isClosed()]
    if not closed:
        raise NotRead(f"The body has no outline at Z = {z:.1f} mm; turn the frame upright.")
    outer = max(closed, key=lambda w: float(w.BoundBox.DiagonalLength))
    corners = np.array([(p.x, p.y) for p in _corners(outer)])
    return [(float(x), float(y)) for x, y in _thinned(corners)]


def _corners(wire: Any) -> list[Any]:
    """Points along a wire. An edge may run either way along it: each is turned to its neighbour."""
    runs = [_points(edge) for edge in wire.OrderedEdges]
    if len(runs) > 1 and _apart(runs[0][0], runs[1]) < _apart(runs[0][-1], runs[1]):
        runs[0].reverse()
    found = runs[0]
    for run in runs[1:]:
        here = found[-1]
        found += run if here.distanceToPoint(run[0]) <= here.distanceToPoint(run[-1]) else run[::-1]
    return found


def _points(edge: Any) -> list[Any]:
    if type(edge.Curve).__name__ in ("Line", "LineSegment"):
        return [v.Point for v in edge.Vertexes]
    return list(edge.discretize(Deflection=CHORD))


def _apart(point: Any, run: list[Any]) -> float:
    """How far [mm] a point is from the nearer end of a run of points."""
    return float(min(point.distanceToPoint(end) for end in (run[0], run[-1])))


def _thinned(corners: Any) -> Any:
    kept = [corners[0]]
    for corner in corners[1:]:
        if np.hypot(*(corner - kept[-1])) > SHORTEST:
            kept.append(corner)
    if len(kept) > 1 and np.hypot(*(kept[-1] - kept[0])) <= SHORTEST:
        kept.pop()
    return kept


def front_at(corners: list[Point]) -> float:
    """X [mm] where the outline crosses the centreline at its front, the smallest; the mouth.

    Raises NotRead where the centreline does not run through the outline.
    """
    x, y = np.array(corners).T
    x1, y1 = np.roll(x, -1), np.roll(y, -1)
    crosses = (y > 0) != (y1 > 0)
    if not crosses.any():
        raise NotRead("The centreline does not run through the body; pick another.")
    at = x[crosses] - y[crosses] * (x1[crosses] - x[crosses]) / (y1[crosses] - y[crosses])
    return float(at.min())

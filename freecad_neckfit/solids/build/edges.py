"""The body's blank with its outer edges rounded, but for those of its front."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import numpy as np

from ...job.errors import CannotBuild
from ...job.outline import Outline
from .outline import Segments, front_edge
from .plan import Segment
from .rounds import rounded_slab
from .shapes import SAME, Point, Solid, box, cut, one_solid, proven

AHEAD = 20.0
"""How far [mm] before the front a body is rounded that the kernel cannot round up to it."""
CORNER = 12.0
"""Radius [mm] in the plan of that body's front corners: wider than any round of its edges."""
CLEAR = 2.0
"""Room [mm] that must be beside that body before its front, as horns reach past it."""
HIGH = 1e3
"""Half the height [mm] of what is cut off again."""


def rounded(
    blank_of: Callable[[Segments], Solid], outline: Segments, radius: float, *, slab: Point | None
) -> Solid:
    """What ``blank_of`` raises over the outline, its edges rounded with ``radius`` [mm].

    The edges of the front, which the pocket's mouth opens through, stay sharp. ``slab``: the
    heights [mm] of a blank that is level above and below. Raises CannotBuild where the round does
    not fit.
    """
    front = front_edge(outline)
    if slab is not None and (made := rounded_slab(outline, slab, radius, front)) is not None:
        return made
    longer = _lengthened(outline, front) if front is not None else None
    try:
        return _round(blank_of(outline), radius, front)
    except CannotBuild:
        if front is None or longer is None:
            raise
    return _cut_off(_round(blank_of(longer), radius, None), front)


def _round(blank: Solid, radius: float, front: Segment | None) -> Solid:
    edges = [e for e in blank.Edges if not _is_upright(e) and not _is_front(e, front)]
    try:
        result = blank.makeFillet(radius, edges)
        fits = len(result.Solids) == 1 and result.isValid()
    except Exception as failure:  # the kernel raises many kinds; all mean the same here
        raise _no_round(radius) from failure
    if not fits:
        raise _no_round(radius)
    return result.Solids[0]


def _no_round(radius: float) -> CannotBuild:
    return CannotBuild(
        f"body.edge_round: a round of {radius:.2f} mm does not fit this outline's edges; make it "
        "smaller, or the outline's own curves wider."
    )


def _cut_off(longer: Solid, front: Segment) -> Solid:
    """What a lengthened body is behind its front, and beside what was added before that."""
    (x, first), _, (_, last) = front
    low, high = sorted((first, last))
    ahead = box((x - AHEAD - CLEAR / 2, x), (low - CLEAR / 2, high + CLEAR / 2), (-HIGH, HIGH))
    return proven(one_solid(cut(longer, [ahead]), name="body"), name="body")


def _lengthened(outline: Segments, front: Segment) -> Segments | None:
    """The outline carried on before its front, with round corners.

    Rounds that run all around it have no ends: under a top that is nearly level the kernel is lost
    where they end at the front. None where the front is aslant or short, or no room before it.
    """
    (x, first), _, (other, last) = front
    if abs(x - other) > SAME or abs(last - first) <= 2 * CORNER:
        return None
    if not _is_clear(outline, front):
        return None
    way = math.copysign(CORNER, last - first)
    aside, ahead = way * (1 - math.sqrt(0.5)), CORNER * (1 - math.sqrt(0.5))
    far = x - AHEAD
    before, after = (far + CORNER, first), (far + CORNER, last)
    start, end = (far, first + way), (far, last - way)
    at = outline.index(front)
    return [
        *outline[:at],
        ((x, first), None, before),
        (before, (far + ahead, first + aside), start),
        (start, None, end),
        (end, (far + ahead, last - aside), after),
        (after, None, (x, last)),
        *outline[at + 1 :],
    ]


def _is_clear(outline: Segments, front: Segment) -> bool:
    """Whether nothing of the body is near what is added before its front."""
    (x, first), _, (_, last) = front
    xs = np.arange(x - CLEAR, x - AHEAD - CLEAR, -CLEAR / 2)
    ys = np.arange(min(first, last), max(first, last), CLEAR / 2)
    sides = [np.column_stack([xs, np.full_like(xs, y)]) for y in (first, last)]
    points = np.concatenate([*sides, np.column_stack([np.full_like(ys, xs[-1]), ys])])
    near = Outline.of_triples(outline).distance(points)
    return bool(near.min() > CLEAR * 0.99)


def _is_upright(edge: Any) -> bool:
    ends = [p.Point for p in edge.Vertexes]
    return (
        len(ends) == 2 and abs(ends[0].x - ends[1].x) < 1e-6 and abs(ends[0].y - ends[1].y) < 1e-6
    )


def _is_front(edge: Any, front: Segment | None) -> bool:
    if front is None:
        return False
    return all(
        any(abs(p.X - x) < 1e-6 and abs(p.Y - y) < 1e-6 for x, y in (front[0], front[2]))
        for p in edge.Vertexes
    )

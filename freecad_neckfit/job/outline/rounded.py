"""A chain of straight lines with rounded corners, tangent throughout."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from .chain import Point, Segment


@dataclass(frozen=True)
class Corner:
    """A corner of the chain; ``touch`` is how far from it [mm] the rounding begins and ends."""

    at: Point
    touch: float = 0.0


def rounded(corners: Sequence[Corner]) -> list[Segment]:
    """Return lines and arcs from the first corner to the last, which both stay sharp.

    Each rounding touches both its lines. Two roundings may take up a line between them whole, but
    not more: that is the caller's care.
    """
    found: list[Segment] = []
    here = corners[0].at
    for before, corner, after in zip(corners, corners[1:], corners[2:], strict=False):
        arc = _arc(before.at, corner, after.at)
        if math.dist(here, arc.start) > 1e-9:
            found.append(Segment(here, arc.start))
        found.append(arc)
        here = arc.end
    found.append(Segment(here, corners[-1].at))
    return found


def _turn(before: Point, at: Point, after: Point) -> float:
    """Angle [radians] by which the direction changes, without its sign."""
    into, out = _direction(before, at), _direction(at, after)
    return abs(math.atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]))


def _arc(before: Point, corner: Corner, after: Point) -> Segment:
    into, out = _direction(before, corner.at), _direction(corner.at, after)
    (x, y), t = corner.at, corner.touch
    start, end = (x - into[0] * t, y - into[1] * t), (x + out[0] * t, y + out[1] * t)
    half = _turn(before, corner.at, after) / 2
    radius = t / math.tan(half)
    # Corner, middle of the arc and centre lie on the corner's bisector.
    inward = (out[0] - into[0], out[1] - into[1])
    size = math.hypot(*inward)
    away = radius / math.cos(half) - radius
    through = (x + inward[0] / size * away, y + inward[1] / size * away)
    return Segment(start, end, through)


def _direction(a: Point, b: Point) -> Point:
    length = math.dist(a, b)
    return (b[0] - a[0]) / length, (b[1] - a[1]) / length

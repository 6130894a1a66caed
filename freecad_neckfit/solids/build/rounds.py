"""A level slab with rounded edges, put together from exact faces.

Along an outline without corners, but for those of its front, the kernel's rounds are quarter
cylinders and quarter rings. Made directly they are the same and cost a fifth of the time.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

import Part
from FreeCAD import Vector

from ...job.outline import Outline, Segment
from ...job.outline.sound import first_crossing
from . import plan
from .shapes import SAME, UP, Point, Solid

SMOOTH = 1e-8
"""Segments that meet at less than this angle [radians] go on into each other."""
SPARE = 0.5
"""The slab must be this much [mm] wider than its rounds everywhere."""
CHORD = 0.2
"""How far [mm] the polygon may stray that is searched for places that are too narrow."""


def rounded_slab(
    outline: Sequence[plan.Segment], z: Point, radius: float, front: plan.Segment | None
) -> Solid | None:
    """The closed ``outline`` from z to z [mm], upper and lower edges rounded with ``radius``.

    The edges of ``front``, a straight segment of the outline, stay sharp. None where that is work
    for the kernel's own rounds: at a corner elsewhere, a front that is not square to its
    neighbours, a bulge or a neck of the outline about as narrow as the rounds.
    """
    sides = [
        _Side.of(Segment(a, b, m))
        for a, m, b in _from_front(outline, front)
        if m is not None or math.dist(a, b) > SAME
    ]
    if not _can_be_inset(sides, radius, is_open=front is not None):
        return None
    inset = [side.inset(radius) for side in sides]
    faces = [side.wall(z, radius) for side in sides]
    if front is not None:
        inset.append((inset[-1][2], None, inset[0][0]))
        faces.append(_front_face(sides, z, radius))
    shell = Part.Compound([*faces, *(plan.face(inset, level) for level in z)])
    shell.sewShape()
    if shell.ShapeType != "Shell" or not shell.isClosed():
        return None
    return Part.makeSolid(shell)


def _from_front(
    outline: Sequence[plan.Segment], front: plan.Segment | None
) -> Sequence[plan.Segment]:
    """All segments but the front, in order, from behind it on."""
    if front is None:
        return outline
    at = list(outline).index(front)
    return [*outline[at + 1 :], *outline[:at]]


@dataclass(frozen=True)
class _Side:
    """A segment of the outline, the body on its left, with its directions at start and end."""

    segment: Segment
    first: Point
    last: Point

    @classmethod
    def of(cls, segment: Segment) -> _Side:
        (x0, y0), (x1, y1) = segment.start, segment.end
        if segment.through is None:
            size = math.hypot(x1 - x0, y1 - y0)
            along = (x1 - x0) / size, (y1 - y0) / size
            return cls(segment, along, along)
        (x, y), radius = segment.circle
        size = math.copysign(radius, segment.span[1])
        return cls(segment, ((y - y0) / size, (x0 - x) / size), ((y - y1) / size, (x1 - x) / size))

    @property
    def bulge(self) -> float:
        """Radius [mm] of an arc that bulges out of the body; infinite for others."""
        if self.segment.through is None or self.segment.span[1] < 0:
            return math.inf
        return self.segment.circle[1]

    def inset(self, distance: float) -> plan.Segment:
        """The segment ``distance`` [mm] farther inside."""
        start = _inside(self.segment.start, self.first, distance)
        end = _inside(self.segment.end, self.last, distance)
        if self.segment.through is None:
            return start, None, end
        (x, y), radius = self.segment.circle
        first, turn = self.segment.span
        size, middle = radius - math.copysign(distance, turn), first + turn / 2
        return start, (x + size * math.cos(middle), y + size * math.sin(middle)), end

    def wall(self, z: Point, radius: float) -> Any:
        """The faces over the segment: round, upright, round."""
        out = 1.0 if self.segment.through is None else math.copysign(1.0, self.segment.span[1])
        section = Part.Wire(_section(self.segment.start, self.first, z, radius, out=out))
        if self.segment.through is None:
            (x0, y0), (x1, y1) = self.segment.start, self.segment.end
            return section.extrude(Vector(x1 - x0, y1 - y0, 0))
        (x, y), _ = self.segment.circle
        turn = self.segment.span[1]
        axis = UP if turn > 0 else -UP
        return section.revolve(Vector(x, y, 0), axis, math.degrees(abs(turn)))


def _can_be_inset(sides: Sequence[_Side], radius: float, *, is_open: bool) -> bool:
    pairs = list(pairwise(sides))
    if is_open:
        if not _is_front_square(sides[-1], sides[0]):
            return False
    else:
        pairs.append((sides[-1], sides[0]))
    if not all(_goes_on(one.last, other.first) for one, other in pairs):
        return False
    deep = radius + SPARE
    # A ring must leave a hole: else the kernel takes it for any surface turned about an axis.
    if min(side.bulge for side in sides) <= max(deep, 2 * radius + SMOOTH):
        return False
    corners = Outline.of_triples([side.inset(deep) for side in sides]).polyline(CHORD)
    return first_crossing(corners) is None


def _goes_on(one: Point, other: Point) -> bool:
    aside = one[0] * other[1] - one[1] * other[0]
    return abs(aside) < SMOOTH and one[0] * other[0] + one[1] * other[1] > 0


def _is_front_square(before: _Side, after: _Side) -> bool:
    """Whether straight neighbours run square into the front and out of it."""
    if before.segment.through is not None or after.segment.through is not None:
        return False
    (x0, y0), (x1, y1) = before.segment.end, after.segment.start
    size = math.hypot(x1 - x0, y1 - y0)
    into = before.last[0] * (x1 - x0) + before.last[1] * (y1 - y0)
    out = after.first[0] * (x1 - x0) + after.first[1] * (y1 - y0)
    return abs(into) < SMOOTH * size and abs(out) < SMOOTH * size


def _inside(p: Point, along: Point, distance: float) -> Point:
    return p[0] - along[1] * distance, p[1] + along[0] * distance


def _section(p: Point, along: Point, z: Point, radius: float, *, out: float = 1.0) -> list[Any]:
    """Edges from the inset upper edge down to the inset lower one, square to the outline.

    ``out``: -1 where the outline turns about a centre outside. The circles' own zero must point
    away from that centre, or the kernel does not know a ring when it turns them about it.
    """
    low, high = z
    inner = _inside(p, along, radius)
    zero = Vector(along[1], -along[0], 0) * out
    upper, lower = Vector(*p, high - radius), Vector(*p, low + radius)
    quarter = math.pi / 2
    first, last = (0.0, quarter) if out > 0 else (quarter, math.pi)
    rounds = []
    for level, up in ((high - radius, 1.0), (low + radius, -1.0)):
        circle = Part.Circle(Vector(*inner, level), zero.cross(UP * up), radius)
        circle.XAxis = zero
        rounds.append(Part.ArcOfCircle(circle, first, last).toShape())
    return [rounds[0], Part.makeLine(upper, lower), rounds[1]]


def _front_face(sides: Sequence[_Side], z: Point, radius: float) -> Any:
    before, after = sides[-1], sides[0]
    down = _section(before.segment.end, before.last, z, radius)
    up = _section(after.segment.start, after.first, z, radius)
    ends = [_inside(before.segment.end, before.last, radius),
            _inside(after.segment.start, after.first, radius)]  # fmt: skip
    across = [Part.makeLine(*(Vector(*p, level) for p in ends)) for level in z]
    return Part.Face(Part.Wire([*down, across[0], *reversed(up), across[1]]))

"""A closed chain of straight lines and circular arcs in the plan."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from ..arrays import FloatArray

Point = tuple[float, float]
"""(X, Y) in the body frame [mm]."""
SAME = 1e-6
"""Points closer than this [mm] are one point."""


@dataclass(frozen=True)
class Segment:
    """A line from ``start`` to ``end``, or the arc between them that passes ``through``."""

    start: Point
    end: Point
    through: Point | None = None

    @cached_property
    def circle(self) -> tuple[Point, float]:
        """Centre and radius [mm] of an arc. Raises ValueError for a line."""
        if self.through is None:
            raise ValueError("a line has no centre")
        (ax, ay), (bx, by), (cx, cy) = self.start, self.through, self.end
        bx, by, cx, cy = bx - ax, by - ay, cx - ax, cy - ay
        twice = 2 * (bx * cy - by * cx)
        b, c = bx * bx + by * by, cx * cx + cy * cy
        x, y = (cy * b - by * c) / twice, (bx * c - cx * b) / twice
        return (ax + x, ay + y), math.hypot(x, y)

    @cached_property
    def span(self) -> tuple[float, float]:
        """Angle of an arc's start and the signed turn to its end [radians]."""
        (x, y), _ = self.circle
        first, on_way, last = (
            math.atan2(p[1] - y, p[0] - x) for p in (self.start, self.through or self.end, self.end)
        )
        turn = (last - first) % math.tau
        return first, turn if (on_way - first) % math.tau < turn else turn - math.tau

    @property
    def length(self) -> float:
        """Length [mm]."""
        if self.through is None:
            return math.dist(self.start, self.end)
        return abs(self.span[1]) * self.circle[1]

    def points(self, chord: float) -> list[Point]:
        """Return points from the start to just before the end, off the arc by at most ``chord``."""
        if self.through is None:
            return [self.start]
        (x, y), radius = self.circle
        first, turn = self.span
        step = 2 * math.acos(max(1 - chord / radius, 0.0))
        count = max(math.ceil(abs(turn) / step), 2)
        angles = [first + turn * i / count for i in range(1, count)]
        return [self.start, *((x + radius * math.cos(a), y + radius * math.sin(a)) for a in angles)]

    def mirrored(self) -> Segment:
        """Return the segment mirrored in Y = 0 and run the other way."""
        through = None if self.through is None else _mirrored(self.through)
        return Segment(_mirrored(self.end), _mirrored(self.start), through)

    def reversed(self) -> Segment:
        """Return the segment run the other way."""
        return Segment(self.end, self.start, self.through)

    def distance(self, points: FloatArray) -> FloatArray:
        """Distance [mm] of points (n, 2) to the segment; shape (n,)."""
        ends = np.minimum(*(np.hypot(*(points - p).T) for p in (self.start, self.end)))
        if self.through is not None:
            centre, radius = self.circle
            first, turn = self.span
            away = points - centre
            angle = (np.arctan2(away[:, 1], away[:, 0]) - first) * np.sign(turn) % math.tau
            near = np.abs(np.hypot(*away.T) - radius)
            return np.asarray(np.where(angle <= abs(turn), near, ends))
        start = np.array(self.start)
        along = np.array(self.end) - start
        size = float(along @ along)
        share = ((points - start) @ along) / size
        across = along[0] * (points[:, 1] - start[1]) - along[1] * (points[:, 0] - start[0])
        near = np.abs(across) / math.sqrt(size)
        return np.asarray(np.where((share >= 0) & (share <= 1), near, ends))


@dataclass(frozen=True)
class Outline:
    """Segments in order, counter-clockwise; each begins where the one before ends."""

    segments: tuple[Segment, ...]

    @classmethod
    def of_segments(cls, segments: Iterable[Segment]) -> Outline:
        """Return the outline of a closed chain, turned so that it runs counter-clockwise.

        Segments without length are left out.
        """
        chain = [s for s in segments if s.through is not None or math.dist(s.start, s.end) > SAME]
        made = cls(tuple(chain))
        return made if made.area > 0 else cls(tuple(s.reversed() for s in reversed(chain)))

    @classmethod
    def of_points(cls, points: Sequence[Point]) -> Outline:
        """Return the outline of straight lines between points, closed if they are not."""
        return cls.of_segments(
            Segment(a, b) for a, b in zip(points, [*points[1:], points[0]], strict=True)
        )

    @classmethod
    def of_triples(cls, triples: Iterable[tuple[Point, Point | None, Point]]) -> Outline:
        """Return the outline of (start, point on the way or None, end)."""
        return cls.of_segments(Segment(start, end, through) for start, through, end in triples)

    def polyline(self, chord: float = 0.01) -> FloatArray:
        """Corners (n, 2) [mm] of a polygon that strays from the arcs by at most ``chord`` [mm].

        The last corner is not the first one again.
        """
        return np.array([p for s in self.segments for p in s.points(chord)]).reshape(-1, 2)

    @cached_property
    def area(self) -> float:
        """Signed area of a fine polygon [mm²]; positive counter-clockwise."""
        x, y = self.polyline(0.01).T if self.segments else (np.zeros(1), np.zeros(1))
        return float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y) / 2)

    def distance(self, points: FloatArray) -> FloatArray:
        """Distance [mm] of points (n, 2) to the outline, inside or outside; shape (n,)."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        best = np.full(len(points), np.inf)
        for segment in self.segments:
            best = np.minimum(best, segment.distance(points))
        return best

    def contains(self, points: FloatArray) -> NDArray[np.bool_]:
        """Whether points (n, 2) lie inside; on the outline itself either answer may come."""
        points = np.asarray(points, dtype=float).reshape(-1, 2)
        corners = self.polyline(0.001)
        x0, y0 = corners.T
        x1, y1 = np.roll(corners, -1, axis=0).T
        inside = np.zeros(len(points), dtype=bool)
        for i, (x, y) in enumerate(points):
            spans = (y0 > y) != (y1 > y)
            cross = x0[spans] + (y - y0[spans]) * (x1[spans] - x0[spans]) / (y1[spans] - y0[spans])
            inside[i] = np.count_nonzero(cross > x) % 2 == 1
        return inside

    def depth(self, points: FloatArray) -> FloatArray:
        """Distance [mm] to the outline, negative for points outside."""
        return np.where(self.contains(points), 1.0, -1.0) * self.distance(points)


def _mirrored(p: Point) -> Point:
    return p[0], -p[1]

"""The plan of a pocket, a heel or a plate's cut-out: two straight sides and a square or round end.

The plan lies along X and is symmetric about Y = 0; its end is at ``end`` toward the bridge, and
it is open toward the mouth. A side is y = ±(half + slope·x).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import Part
from FreeCAD import Vector

from ...job.errors import CannotBuild
from .shapes import SAME, Point, Solid

Segment = tuple[Point, Point | None, Point]
"""Start, a point on the way if it is an arc, and end."""


@dataclass(frozen=True, kw_only=True)
class Plan:
    """A plan outline; lengths in mm.

    ``end``: x of the end (of its apex if round). ``half``: half the width at x = 0. ``slope``: how
    much the half-width grows per mm toward the bridge. ``corner``: radius of the corners of a
    square end. ``radius``: radius of a round end, None for a square one. ``name``: what a
    refusal calls it.
    """

    name: str
    half: float
    slope: float
    end: float = 0.0
    corner: float = 0.0
    radius: float | None = None

    def half_width(self, x: float) -> float:
        """Half the width [mm] between the straight sides at x."""
        return self.half + self.slope * x

    def outward(self, distance: float) -> Plan:
        """The plan offset outward by ``distance`` [mm]; corner and end radius grow by as much."""
        return replace(
            self,
            end=self.end + distance,
            half=self.half + distance * math.hypot(1, self.slope),
            corner=self.corner + distance,
            radius=None if self.radius is None else self.radius + distance,
        )

    def segments(self, far: float) -> list[Segment]:
        """The closed outline, cut off square at x = ``far`` toward the mouth.

        Raises CannotBuild where end and sides do not meet.
        """
        corner = (far, self.half_width(far))
        if corner[1] <= 0:
            raise CannotBuild(
                f"{self.name}: its sides cross {-far:.2f} mm from the end; bring the widths at "
                "mouth and end closer together."
            )
        if self.radius is not None:
            top, end = self._round_end()
        else:
            top, end = self._square_end(far)
        below = (top[0], -top[1])
        start = (far, -corner[1])
        return [(start, None, below), *end, (top, None, corner), (corner, None, start)]

    def side_angle(self) -> float:
        """Angle [radians] between a side and the centreline; positive widens toward the bridge."""
        return math.atan(self.slope)

    def touching_radius(self) -> float:
        """Radius [mm] of a round end with the same axis that only touches the sides."""
        axis = self.end - float(self.radius or 0.0)
        return self.half_width(axis) / math.hypot(1, self.slope)

    def round_meets_at(self) -> Point:
        """(x, y) where a round end meets the side at positive y."""
        return self._round_end()[0]

    def corner_arc(self) -> tuple[Point, Point, Point]:
        """On the end wall, halfway and on the side: the arc of the corner at positive y."""
        # Between wall and side lies a quarter turn less the taper; the arc touches both.
        angle = self.side_angle()
        touch = self.corner / math.tan((math.pi / 2 - angle) / 2)
        y = self.half_width(self.end)
        on_wall = (self.end, y - touch)
        on_side = (self.end - touch * math.cos(angle), y - touch * math.sin(angle))
        toward = (math.pi / 2 + angle) / 2
        middle = (
            self.end - self.corner * (1 - math.cos(toward)),
            on_wall[1] + self.corner * math.sin(toward),
        )
        return on_wall, middle, on_side

    def _square_end(self, far: float) -> tuple[Point, list[Segment]]:
        sharp = (self.end, self.half_width(self.end))
        if self.corner <= SAME:
            return sharp, [((sharp[0], -sharp[1]), None, sharp)]
        on_wall, middle, on_side = self.corner_arc()
        if on_wall[1] < 0 or on_side[0] < far:
            raise CannotBuild(
                f"{self.name}: corners of radius {self.corner:.2f} mm do not fit an end "
                f"{2 * sharp[1]:.2f} mm wide; make the radius smaller."
            )
        mirrored = [(x, -y) for x, y in (on_side, middle, on_wall)]
        return on_side, [
            (mirrored[0], mirrored[1], mirrored[2]),
            (mirrored[2], None, on_wall),
            (on_wall, middle, on_side),
        ]

    def _round_end(self) -> tuple[Point, list[Segment]]:
        radius = float(self.radius or 0.0)
        centre = self.end - radius
        # (x - centre)² + (half + slope·x)² = radius², the solution nearest to the end.
        a = 1 + self.slope**2
        b = -centre + self.half * self.slope
        c = centre**2 + self.half**2 - radius**2
        root = b**2 - a * c
        if root < -1e-9 * radius**2:
            raise CannotBuild(
                f"{self.name}: a round end of radius {radius:.2f} mm does not meet sides "
                f"{2 * self.half:.2f} mm apart; make the radius larger, or the mouth narrower."
            )
        x = (-b + math.sqrt(max(root, 0.0))) / a
        top = (x, self.half_width(x))
        return top, [((x, -top[1]), (self.end, 0.0), top)]


def prism(segments: Sequence[Segment], low: float, high: float) -> Solid:
    """The closed outline ``segments`` raised from z = ``low`` to z = ``high`` [mm]."""
    return face(segments, low).extrude(Vector(0, 0, high - low))


def face(segments: Sequence[Segment], z: float) -> Any:
    """The plane face inside the closed outline ``segments`` at height ``z`` [mm]."""
    return Part.Face(Part.Wire([_edge(s, z) for s in segments if not _is_point(s)]))


def rounded_rectangle(x: Point, y: Point, *, corner: float) -> list[Segment]:
    """A rectangle with rounded corners; ``corner`` at most half the shorter side [mm]."""
    (x0, x1), (y0, y1), r = x, y, corner
    if r <= SAME:
        loop = [(x0, y0), (x1, y0), (x1, y1), (x0, y1)]
        return [(a, None, b) for a, b in zip(loop, [*loop[1:], loop[0]], strict=True)]
    k = r * (1 - math.sqrt(0.5))
    return [
        ((x0 + r, y0), None, (x1 - r, y0)),
        ((x1 - r, y0), (x1 - k, y0 + k), (x1, y0 + r)),
        ((x1, y0 + r), None, (x1, y1 - r)),
        ((x1, y1 - r), (x1 - k, y1 - k), (x1 - r, y1)),
        ((x1 - r, y1), None, (x0 + r, y1)),
        ((x0 + r, y1), (x0 + k, y1 - k), (x0, y1 - r)),
        ((x0, y1 - r), None, (x0, y0 + r)),
        ((x0, y0 + r), (x0 + k, y0 + k), (x0 + r, y0)),
    ]


def _edge(segment: Segment, z: float) -> Any:
    start, through, end = segment
    a, b = Vector(*start, z), Vector(*end, z)
    if through is None:
        return Part.makeLine(a, b)
    return Part.Arc(a, Vector(*through, z), b).toShape()


def _is_point(segment: Segment) -> bool:
    start, through, end = segment
    return through is None and math.dist(start, end) <= SAME

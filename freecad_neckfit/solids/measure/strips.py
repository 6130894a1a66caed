"""A free-form face between two of its surface's own lines: a drawn outline's wall, a rounded edge.

Where it can be near something is told by the poles of its surface, since each span lies within the
hull of its own poles; such a length of it is bounded anew instead of being cut by the kernel.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ..ways import Way
from .facets import Bounds
from .poles import Net, is_extruded, length_of_curve, piece_of_surface

ALONG = np.linspace(0, 1, 9)
"""Shares of an edge at which it is looked where it runs over the surface."""
SAME = 1e-9
"""Share of the parameters' range within which an edge follows one of the surface's lines."""


@dataclass(frozen=True)
class Strip:
    """``axis``: 0 where it runs along the surface's U, 1 where along its V.

    ``ends``: the edges across, the one at the lower parameter first; ``reach``: (2, 2) least and
    most parameter along at each; ``sides``: the parameter across at both sides.
    """

    face: Any
    net: Net
    axis: int
    ends: tuple[Way, Way]
    reach: FloatArray
    sides: tuple[float, float]

    @classmethod
    def of(cls, face: Any, net: Net | None) -> Strip | None:
        """None where the face, of which ``net`` tells the poles, is none."""
        if net is None or len(face.Edges) != 4 or len(face.Wires) != 1:
            return None
        ways = [way for edge in face.Edges if (way := Way.of(face, edge)) is not None]
        range_ = np.array(face.ParameterRange).reshape(2, 2)
        return cls._between(face, net, range_, ways) if len(ways) == 4 else None

    @classmethod
    def _between(cls, face: Any, net: Net, range_: FloatArray, ways: list[Way]) -> Strip | None:
        axis = net.longer
        across = [way.at(ALONG)[:, 1 - axis] for way in ways]
        near = SAME * float(np.ptp(range_[1 - axis]))
        low, high = (
            [k for k in range(4) if np.all(np.abs(across[k] - side) <= near)]
            for side in range_[1 - axis]
        )
        if len(low) != 1 or len(high) != 1:
            return None
        ends = [ways[k] for k in range(4) if k not in low + high]
        reach = [(float(p.min()), float(p.max())) for p in (e.at(ALONG)[:, axis] for e in ends)]
        if reach[0] > reach[1]:
            ends, reach = ends[::-1], reach[::-1]
        sides = (float(range_[1 - axis, 0]), float(range_[1 - axis, 1]))
        return cls(face, net, axis, (ends[0], ends[1]), np.array(reach), sides)

    def within(self, bounds: Bounds) -> list[Any]:
        """Lengths of it that hold all of it within a rectangle of the plan [mm], as faces."""
        return [self._length(first, last) for first, last in self._runs(bounds)]

    def _runs(self, bounds: Bounds) -> list[tuple[float, float]]:
        """From and to along it, of the runs of spans whose poles reach into the rectangle."""
        reach = (float(self.reach.min()), float(self.reach.max()))
        return self.net.near(self.face, self.axis, reach, bounds)

    def _surface(self, near: float, far: float) -> Any:
        """The surface from ``near`` to ``far`` along, which the kernel is quicker with."""
        import Part

        whole = self.face.Surface
        if is_extruded(whole):
            curve = length_of_curve(whole.BasisCurve, (near, far))
            return Part.SurfaceOfExtrusion(curve, whole.Direction)
        reach = ((near, far), self.sides)
        return piece_of_surface(whole, reach[self.axis], reach[1 - self.axis])

    def _length(self, first: float, last: float) -> Any:
        """The face from ``first`` to ``last``; up to its own end where that is near."""
        import Part

        lower = self.ends[0] if first <= self.reach[0, 1] else self._across(first)
        upper = self.ends[1] if last >= self.reach[1, 0] else self._across(last)
        rims = [self._side(k, lower, upper) for k in (0, 1)]
        near = min(first, self.reach[0, 0]) if lower is self.ends[0] else first
        far = max(last, self.reach[1, 1]) if upper is self.ends[1] else last
        surface = self._surface(near, far)
        around = (lower, rims[1], upper, rims[0])
        edges = [way.curve.toShape(surface, way.first, way.last) for way in around]
        found = Part.Face(surface, Part.Wire(edges))
        if self.face.Orientation == "Reversed":
            found.reverse()
        return found

    def _across(self, along: float) -> Way:
        return _line(*(self._spot(along, side) for side in self.sides))

    def _side(self, k: int, lower: Way, upper: Way) -> Way:
        ways = [end.ends() for end in (lower, upper)]
        nearest = [int(np.argmin(np.abs(w[:, 1 - self.axis] - self.sides[k]))) for w in ways]
        return _line(*(tuple(w[n]) for w, n in zip(ways, nearest, strict=True)))

    def _spot(self, along: float, across: float) -> tuple[float, float]:
        return (along, across) if self.axis == 0 else (across, along)


def _line(start: tuple[float, ...], end: tuple[float, ...]) -> Way:
    import Part
    from FreeCAD import Base

    ends = (Base.Vector2d(*map(float, spot)) for spot in (start, end))
    line = Part.Geom2d.Line2dSegment(*ends)
    return Way(line, line.FirstParameter, line.LastParameter)

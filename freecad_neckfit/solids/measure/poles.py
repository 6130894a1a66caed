"""Poles of a free-form surface: each span of it lies within the hull of its own poles."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray


@dataclass(frozen=True)
class Net:
    """Of the surface as far as the face's parameters reach.

    ``poles``: (n along U, n along V, 3) [mm]; ``knots``, ``degrees``: along U, along V. A knot
    stands as often as it counts. Of an extruded curve the poles along V are where the face ends,
    and the knots are those ends.
    """

    poles: FloatArray
    knots: tuple[FloatArray, FloatArray]
    degrees: tuple[int, int]

    @classmethod
    def of(cls, face: Any) -> Net | None:
        """None where the face's surface has no poles, or runs into itself."""
        surface = face.Surface
        if is_extruded(surface):
            return None if surface.BasisCurve.isPeriodic() else cls._of_extruded(face)
        if type(surface).__name__ != "BSplineSurface":
            return None
        if surface.isUPeriodic() or surface.isVPeriodic():
            return None
        surface = surface.copy()
        # Where a face ends within a span, that span's own poles would reach far past it.
        surface.segment(*held(face.ParameterRange[:2], surface.bounds()[:2]),
                        *held(face.ParameterRange[2:], surface.bounds()[2:]))  # fmt: skip
        along = np.repeat(surface.getUKnots(), surface.getUMultiplicities())
        across = np.repeat(surface.getVKnots(), surface.getVMultiplicities())
        poles = np.array([[(p.x, p.y, p.z) for p in row] for row in surface.getPoles()])
        return cls(poles, (along, across), (int(surface.UDegree), int(surface.VDegree)))

    @classmethod
    def _of_extruded(cls, face: Any) -> Net:
        surface, ends = face.Surface, np.array(face.ParameterRange[2:])
        curve, way = surface.BasisCurve.copy(), surface.Direction
        curve.segment(*held(face.ParameterRange[:2], (curve.FirstParameter, curve.LastParameter)))
        row = np.array([(p.x, p.y, p.z) for p in curve.getPoles()])
        poles = row[:, None] + ends[None, :, None] * np.array((way.x, way.y, way.z))
        knots = np.repeat(curve.getKnots(), curve.getMultiplicities())
        return cls(poles, (knots, np.repeat(ends, 2)), (int(curve.Degree), 1))

    def spans(self, axis: int, first: float, last: float) -> list[tuple[float, float, slice]]:
        """Spans along U (0) or V (1) that reach into a range: from, to, and their own poles."""
        knots, degree = self.knots[axis], self.degrees[axis]
        found = []
        for k in range(degree, self.poles.shape[axis]):
            start, end = float(max(knots[k], first)), float(min(knots[k + 1], last))
            if start < end:
                found.append((start, end, slice(k - degree, k + 1)))
        return found

    @property
    def bounds(self) -> tuple[FloatArray, FloatArray]:
        """Least and greatest X, Y, Z [mm] of the poles: no point of the face lies outside."""
        every = self.poles.reshape(-1, 3)
        return every.min(axis=0), every.max(axis=0)


def held(range_: Sequence[float], whole: Sequence[float]) -> tuple[float, float]:
    """As much of a range of parameters as there is: the kernel's reach past it by rounding."""
    return max(range_[0], whole[0]), min(range_[1], whole[1])


def is_extruded(surface: Any) -> bool:
    """Whether a surface is a free-form curve, extruded."""
    return (
        type(surface).__name__ == "SurfaceOfExtrusion"
        and type(surface.BasisCurve).__name__ == "BSplineCurve"
    )

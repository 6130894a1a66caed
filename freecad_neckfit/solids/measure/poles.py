"""Poles of a free-form surface: each span of it lies within the hull of its own poles."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from .facets import Bounds

FINE = 5.0
"""Where a face can be near something is told to within about so much [mm]."""
FINEST = 32
"""Most pieces that one span is told in."""


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
        # Where a face ends within a span, that span's own poles would reach far past it.
        u0, u1, v0, v1 = face.ParameterRange
        return cls._of_spline(piece_of_surface(surface, (u0, u1), (v0, v1)))

    @classmethod
    def _of_spline(cls, surface: Any) -> Net:
        along = np.repeat(surface.getUKnots(), surface.getUMultiplicities())
        across = np.repeat(surface.getVKnots(), surface.getVMultiplicities())
        poles = np.array([[(p.x, p.y, p.z) for p in row] for row in surface.getPoles()])
        return cls(poles, (along, across), (int(surface.UDegree), int(surface.VDegree)))

    @classmethod
    def _of_extruded(cls, face: Any, *, also: Sequence[float] = ()) -> Net:
        surface, ends = face.Surface, np.array(face.ParameterRange[2:])
        curve, way = length_of_curve(surface.BasisCurve, face.ParameterRange[:2]), surface.Direction
        if also:
            curve.insertKnots(list(also), [curve.Degree] * len(also))
        row = np.array([(p.x, p.y, p.z) for p in curve.getPoles()])
        poles = row[:, None] + ends[None, :, None] * np.array((way.x, way.y, way.z))
        knots = np.repeat(curve.getKnots(), curve.getMultiplicities())
        return cls(poles, (knots, np.repeat(ends, 2)), (int(curve.Degree), 1))

    def near(
        self, face: Any, axis: int, reach: tuple[float, float], bounds: Bounds
    ) -> list[tuple[float, float]]:
        """From and to along an axis, of all within ``reach`` that a rectangle of the plan can hold.

        No point of the face beside these runs lies within the rectangle [mm].
        """
        runs = self.meeting(axis, reach, bounds)
        return [f for r in runs for f in self._finer(face, axis, r).meeting(axis, r, bounds)]

    def meeting(
        self, axis: int, reach: tuple[float, float], bounds: Bounds
    ) -> list[tuple[float, float]]:
        """From and to, of the runs of spans whose poles reach into the rectangle."""
        spans = self.spans(axis, *reach)
        if not spans:
            return []
        poles = self.poles if axis == 0 else self.poles.swapaxes(0, 1)
        own = np.array([range(span.start, span.stop) for _, _, span in spans])
        low, high = poles.min(axis=1)[own].min(axis=1), poles.max(axis=1)[own].max(axis=1)
        meets = (low[:, 0] <= bounds[1]) & (high[:, 0] >= bounds[0])
        meets &= (low[:, 1] <= bounds[3]) & (high[:, 1] >= bounds[2])
        runs: list[tuple[float, float]] = []
        for k in np.flatnonzero(meets):
            start, end, _ = spans[k]
            goes_on = bool(runs) and runs[-1][1] == start
            runs.append((runs.pop()[0] if goes_on else start, end))
        return runs

    def _finer(self, face: Any, axis: int, run: tuple[float, float]) -> Net:
        """Of as much of the face as ``run`` tells along an axis, in shorter spans.

        Each has poles that it shares with no other span but at its ends.
        """
        also: list[float] = []
        for start, end, own in self.spans(axis, *run):
            poles = np.take(self.poles, range(own.start, own.stop), axis=axis).reshape(-1, 3)
            count = min(FINEST, int(np.ceil(np.linalg.norm(np.ptp(poles, axis=0)) / FINE)))
            also += np.linspace(start, end, count + 1)[:-1].tolist()
        also = also[1:]
        if is_extruded(face.Surface):
            return self._of_extruded(face, also=also)
        reach = [tuple(face.ParameterRange[:2]), tuple(face.ParameterRange[2:])]
        reach[axis] = run
        surface = piece_of_surface(face.Surface, *reach)
        insert, degree = (
            (surface.insertUKnots, surface.UDegree), (surface.insertVKnots, surface.VDegree)
        )[axis]  # fmt: skip
        if also:
            insert(also, [degree] * len(also), 0.0)
        return self._of_spline(surface)

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
    def longer(self) -> int:
        """The axis with more poles."""
        return int(self.poles.shape[1] > self.poles.shape[0])

    @property
    def bounds(self) -> tuple[FloatArray, FloatArray]:
        """Least and greatest X, Y, Z [mm] of the poles: no point of the face lies outside."""
        every = self.poles.reshape(-1, 3)
        return every.min(axis=0), every.max(axis=0)


def _held(range_: Sequence[float], whole: Sequence[float]) -> tuple[float, float]:
    """As much of a range of parameters as there is: the kernel's reach past it by rounding."""
    return max(range_[0], whole[0]), min(range_[1], whole[1])


def piece_of_surface(surface: Any, along: Sequence[float], across: Sequence[float]) -> Any:
    """A copy from and to these parameters along U, then along V."""
    part, bounds = surface.copy(), surface.bounds()
    part.segment(*_held(along, bounds[:2]), *_held(across, bounds[2:]))
    return part


def length_of_curve(curve: Any, along: Sequence[float]) -> Any:
    """A copy from and to these parameters."""
    part = curve.copy()
    part.segment(*_held(along, (part.FirstParameter, part.LastParameter)))
    return part


def is_extruded(surface: Any) -> bool:
    """Whether a surface is a free-form curve, extruded."""
    return (
        type(surface).__name__ == "SurfaceOfExtrusion"
        and type(surface.BasisCurve).__name__ == "BSplineCurve"
    )

"""An edge of a face as a curve over the parameters of the face's surface."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ..job.arrays import FloatArray

ENDS = np.array([0.0, 1.0])


@dataclass(frozen=True)
class Way:
    """The kernel's ``curve``, from one of its own parameters to another."""

    curve: Any
    first: float
    last: float

    @classmethod
    def of(cls, face: Any, edge: Any) -> Way | None:
        """None where the kernel knows none, or the edge has shrunk to a point."""
        found = None if edge.Degenerated else face.curveOnSurface(edge)
        return None if found is None else cls(*found[:3])

    @property
    def is_line(self) -> bool:
        """Whether it is straight over the parameters."""
        return type(self.curve).__name__ in ("Line2d", "Line2dSegment")

    def at(self, shares: FloatArray) -> FloatArray:
        """(k, 2) parameters of the surface at shares (k,) of the way."""
        along = self.first + (self.last - self.first) * shares
        spots = [self.curve.value(t) for t in along.tolist()]
        return np.array([(spot.x, spot.y) for spot in spots])

    def ends(self) -> FloatArray:
        """(2, 2) parameters of the surface where it begins and ends."""
        return self.at(ENDS)

    def turned(self) -> Way:
        """The same way backward."""
        return Way(self.curve, self.last, self.first)

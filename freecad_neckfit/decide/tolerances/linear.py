"""Sensitivities, worst case and root sum square of every demand about the middle."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from ...job.arrays import FloatArray
from .dimension import Dimension

Margins = Callable[[FloatArray, list[int] | None], FloatArray]
"""Margins of values (dimensions, draws): shape (demands, draws), all demands or those listed."""

STEP = 0.02
"""Step of the differences, in half widths of the limits."""


@dataclass(frozen=True)
class Linear:
    """Each demand as a plane about the middle of all limits; arrays over demands first.

    ``middle``: margins there. ``slopes``: (demands, dimensions), change of margin per change of
    dimension. ``worst``: exact margin at the corner of the limits that the slopes point to.
    """

    dims: tuple[Dimension, ...]
    middle: FloatArray
    slopes: FloatArray
    worst: FloatArray

    @property
    def worst_linear(self) -> FloatArray:
        """Worst case by the slopes: every dimension at its worse limit."""
        return np.asarray(self.middle - np.abs(self.slopes) @ [d.half for d in self.dims])

    @property
    def root_sum_square(self) -> FloatArray:
        """What the limits take off by root sum square: shifts of all, squared, added, rooted."""
        return np.asarray(np.sqrt(np.square(self.slopes * [d.half for d in self.dims]).sum(axis=1)))

    @property
    def deviation(self) -> FloatArray:
        """Standard deviation of each margin by the slopes."""
        return np.asarray(
            np.sqrt(np.square(self.slopes * [d.deviation for d in self.dims]).sum(axis=1))
        )

    @property
    def shares(self) -> FloatArray:
        """Share that each dimension has in each demand's variance; 0 where nothing varies."""
        parts = np.square(self.slopes * [d.deviation for d in self.dims])
        total = parts.sum(axis=1, keepdims=True)
        shares: FloatArray = np.divide(parts, total, out=np.zeros_like(parts), where=total > 0)
        return shares


def linearise(dims: Sequence[Dimension], margins: Margins) -> Linear:
    """Central differences of a fiftieth of the limits' half widths, and the exact worst corners."""
    middle = np.array([d.middle for d in dims])
    half = np.array([d.half for d in dims])
    count = len(dims)
    steps = np.hstack([np.zeros((count, 1)), np.diag(half * STEP), -np.diag(half * STEP)])
    found = margins(middle[:, None] + steps, None)
    finite = np.isfinite(found).all(axis=1)
    up, down = found[:, 1 : count + 1], found[:, count + 1 :]
    slopes = np.zeros((len(found), count))
    slopes[finite] = (up[finite] - down[finite]) / (2 * half * STEP)
    corners = middle[:, None] - half[:, None] * np.sign(slopes.T)
    at_corners = margins(corners, None)
    return Linear(tuple(dims), found[:, 0], slopes, np.diagonal(at_corners).copy())

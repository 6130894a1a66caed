"""Moves the corners of clipped pieces to true roots."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray

Values = Callable[[FloatArray, NDArray[np.int64]], FloatArray]
"""Value of function ``rows[k]`` at point k of (points, 2)."""

CLOSE = 1e-10
MOST_STEPS = 60
PARALLEL = 1e-6
"""Gradients that differ by less of their length count as parallel."""
BEYOND = 1.0
"""What stands for a demand that does not apply: any value above 0."""


@dataclass
class Edges:
    """Roots of one function each between two points where it has different signs."""

    first: FloatArray
    last: FloatArray
    at_first: FloatArray
    at_last: FloatArray
    rows: NDArray[np.int64]

    def solve(self, values: Values) -> FloatArray:
        """The roots, shape (roots, 2), by the Illinois rule with halvings between."""
        a, b = np.zeros(len(self.rows)), np.ones(len(self.rows))
        fa, fb = self.at_first.copy(), self.at_last.copy()
        kept = np.zeros(len(a), dtype=int)
        t = np.clip(fa / np.where(fa == fb, 1.0, fa - fb), 0.0, 1.0)
        left = np.flatnonzero(fa * fb < 0)
        for step in range(MOST_STEPS):
            if not left.size:
                break
            f = finite(values(self._at(t, left), self.rows[left]))
            onward = f * fa[left] > 0
            up, down = left[onward], left[~onward]
            a[up], fa[up] = t[up], f[onward]
            b[down], fb[down] = t[down], f[~onward]
            # An end that stays a second time counts half: then both ends close in.
            fb[up] *= np.where(kept[up] > 0, 0.5, 1.0)
            fa[down] *= np.where(kept[down] < 0, 0.5, 1.0)
            kept[up], kept[down] = 1, -1
            left = left[(np.abs(f) >= CLOSE) & ((b - a)[left] > 1e-13)]
            secant = a[left] + (b - a)[left] * fa[left] / (fa[left] - fb[left])
            t[left] = (a[left] + b[left]) / 2 if step % 6 == 5 else secant
        return self._at(t, np.arange(len(t)))

    def _at(self, t: FloatArray, which: NDArray[np.int64]) -> FloatArray:
        first, last = self.first[which], self.last[which]
        points: FloatArray = first + (last - first) * t[which, None]
        return points


@dataclass
class Crossings:
    """Points where two functions are 0 at once.

    ``start``: (points, 2); ``rows``: (points, 2); ``slopes``: (points, 2, 2), gradient of each.
    ``reach``: no point moves farther from its start than this, along either axis.
    """

    start: FloatArray
    rows: NDArray[np.int64]
    slopes: FloatArray
    reach: FloatArray

    def solve(self, values: Values) -> FloatArray:
        """The crossings by Broyden's rule; a point that finds none stays at its start.

        Where both run along each other (one demand says what the other says) every point of both
        is a crossing: the nearest to the start.
        """
        points, slopes = self.start.copy(), self.slopes.copy()
        open_ = np.arange(len(points))
        f = self._both(values, points, open_)
        for _ in range(MOST_STEPS // 3):
            keep = np.abs(f).max(axis=1) > CLOSE if len(f) else np.zeros(0, dtype=bool)
            open_, f = open_[keep], f[keep]
            if not open_.size:
                break
            step = -(np.linalg.pinv(slopes[open_], rcond=PARALLEL) @ f[..., None])[..., 0]
            low, high = (self.start[open_] + s * self.reach[open_, None] for s in (-1, 1))
            step = np.clip(points[open_] + step, low, high) - points[open_]
            points[open_] += step
            after = self._both(values, points, open_)
            slopes[open_] += _broyden(slopes[open_], step, after - f)
            f = after
        missed = open_[np.abs(f).max(axis=1) > 1e-6] if len(f) else open_
        points[missed] = self.start[missed]
        return points

    def _both(self, values: Values, points: FloatArray, which: NDArray[np.int64]) -> FloatArray:
        if not which.size:
            return np.zeros((0, 2))
        twice = np.repeat(points[which], 2, axis=0)
        return finite(values(twice, self.rows[which].ravel())).reshape(-1, 2)


def _broyden(slopes: FloatArray, step: FloatArray, change: FloatArray) -> FloatArray:
    missed = change - np.einsum("nij,nj->ni", slopes, step)
    length = np.maximum(np.einsum("ni,ni->n", step, step), 1e-300)
    update: FloatArray = missed[:, :, None] * step[:, None, :] / length[:, None, None]
    return update


def finite(values: FloatArray) -> FloatArray:
    """Values with what is infinite, a demand that does not apply, at a value above 0."""
    return np.where(np.isfinite(values), values, BEYOND)

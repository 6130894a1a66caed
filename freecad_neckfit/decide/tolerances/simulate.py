"""A million joints at random within their limits: how often they fail, and why."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from ...fit.verdict import ROUNDING
from ...job.arrays import FloatArray
from ..progress import Progress, tell
from .dimension import Dimension
from .linear import Margins

DRAWS = 1_000_000
FEWEST_DRAWS = 100_000
"""What the window begins with and the report draws: the same joints, the same share."""
SEED = 1
CHUNK = 16_384
"""Draws worked through at a time: their arrays stay in the processor's cache."""
BINS = 100
CONFIDENCE = 1.959964
"""Two-sided 95 % of a normal spread."""
SAFETY = 4.0
"""How many times what a plane misses of the first chunk's margins is left as doubt."""


@dataclass(frozen=True)
class Simulation:
    """What came of the draws.

    ``failed``: draws in which each demand was not met; ``failed_joint``: in which any was not.
    ``mean``, ``deviation``, ``least``: of each margin; of those in ``settled``, over the first
    chunk. ``settled``: demands that no draw within the limits can fail, so they were not worked
    out again and again. ``rates``: by dimension and bin, the share of its draws with a failure.
    """

    dims: tuple[Dimension, ...]
    draws: int
    seed: int
    failed: NDArray[np.int64]
    failed_joint: int
    mean: FloatArray
    deviation: FloatArray
    least: FloatArray
    settled: NDArray[np.bool_]
    rates: FloatArray = field(repr=False)

    @property
    def share(self) -> float:
        """Failure share of the whole joint."""
        return self.failed_joint / self.draws

    def interval(self, failed: int | None = None) -> tuple[float, float]:
        """95 % confidence interval of a failure share, by Wilson's score."""
        return wilson(self.failed_joint if failed is None else failed, self.draws)

    @property
    def influence(self) -> FloatArray:
        """How much of the failures each dimension explains alone, 0 … 1.

        Variance of the failure rate over the dimension's bins, over that of a failure itself.
        """
        total = self.share * (1 - self.share)
        if total == 0:
            return np.zeros(len(self.dims))
        found = np.empty(len(self.dims))
        for n, dim in enumerate(self.dims):
            weight = bin_shares(dim, 1.0)
            noise = total / self.draws * BINS
            spread = float(weight @ np.square(self.rates[n] - self.share))
            found[n] = max(spread - noise, 0.0) / total
        return found

    def share_if(self, dimension: int, factor: float) -> float:
        """Failure share if one dimension's limits are drawn in to ``factor`` of their width.

        From the same draws: its bins count as often as the narrower spread would meet them.
        """
        return float(bin_shares(self.dims[dimension], factor) @ self.rates[dimension])


def bin_shares(dim: Dimension, factor: float) -> FloatArray:
    """Share of the spread in each bin, its limits drawn in to ``factor`` of their width."""
    reach = dim.shape.reach
    edges = np.linspace(-reach, reach, BINS + 1)
    below = dim.shape.below(edges / max(factor, 1e-9))
    below[0], below[-1] = 0.0, 1.0
    return np.diff(below)


def wilson(failed: int, draws: int) -> tuple[float, float]:
    """Wilson's score interval, 95 %."""
    p, z2 = failed / draws, CONFIDENCE**2
    middle = (p + z2 / (2 * draws)) / (1 + z2 / draws)
    half = CONFIDENCE * math.sqrt(p * (1 - p) / draws + z2 / (4 * draws**2)) / (1 + z2 / draws)
    return max(middle - half, 0.0), min(middle + half, 1.0)


def draw(dims: Sequence[Dimension], count: int, rng: np.random.Generator) -> FloatArray:
    """Draws of every dimension about its middle, -1 … 1 between the limits: (dims, count)."""
    return np.stack([d.shape.draw(rng, count) for d in dims])


def values_of(dims: Sequence[Dimension], draws: FloatArray) -> FloatArray:
    """The dimensions' values of ``draws``."""
    middle = np.array([[d.middle] for d in dims])
    half = np.array([[d.half] for d in dims])
    return np.asarray(middle + half * draws)


def simulate(
    dims: Sequence[Dimension],
    margins: Margins,
    *,
    draws: int = DRAWS,
    seed: int = SEED,
    costly: Sequence[int] = (),
    progress: Progress | None = None,
) -> Simulation:
    """Draw ``draws`` joints and judge each; the same seed gives the same draws.

    One draw of a dimension holds for all demands that read it. The first chunk is worked out in
    full. A demand that its plane through the first chunk, less four times what that plane misses
    there, keeps within its limits at every corner of all limits counts as settled. ``costly``
    demands are worked out afterwards only in the draws where their plane leaves that doubt.
    Raises Stopped where ``progress`` says so.
    """
    rng = np.random.default_rng(seed)
    count = _Count(tuple(dims), costly)
    done = 0
    while done < draws:
        size = min(CHUNK, draws - done)
        drawn = draw(dims, size, rng)
        count.add(drawn, values_of(dims, drawn), margins)
        done += size
        tell(progress, done / draws, f"{done:,} of {draws:,} joints drawn")
    return count.result(draws, seed)


class _Count:
    """Adds up chunks."""

    def __init__(self, dims: tuple[Dimension, ...], costly: Sequence[int]) -> None:
        self.dims, self.costly = dims, set(costly)
        self.first = True
        self.failed_joint = 0
        self.all_bins = np.zeros((len(dims), BINS), dtype=np.int64)
        self.bad_bins = np.zeros((len(dims), BINS), dtype=np.int64)

    def add(self, drawn: FloatArray, values: FloatArray, margins: Margins) -> None:
        failed = self._begin(drawn, values, margins) if self.first else self._go_on(
            drawn, values, margins
        )  # fmt: skip
        self.first = False
        self.failed_joint += int(failed.sum())
        for n, dim in enumerate(self.dims):
            reach = dim.shape.reach
            bins = ((drawn[n] + reach) * (BINS / (2 * reach))).astype(np.int64)
            np.clip(bins, 0, BINS - 1, out=bins)
            self.all_bins[n] += np.bincount(bins, minlength=BINS)
            self.bad_bins[n] += np.bincount(bins[failed], minlength=BINS)

    def _begin(self, drawn: FloatArray, values: FloatArray, margins: Margins) -> NDArray[np.bool_]:
        found = margins(values, None)
        rows = len(found)
        self.planes = _Planes(self.dims, drawn, found)
        self.settled = self.planes.settled
        self.rows = [r for r in range(rows) if not self.settled[r] and r not in self.costly]
        self.doubted = [r for r in range(rows) if not self.settled[r] and r in self.costly]
        self.failed = np.zeros(rows, dtype=np.int64)
        self.total, self.square = np.zeros(rows), np.zeros(rows)
        self.seen = np.zeros(rows, dtype=np.int64)
        self.least = np.full(rows, np.inf)
        return self._tally(found, list(range(rows)))

    def _go_on(self, drawn: FloatArray, values: FloatArray, margins: Margins) -> NDArray[np.bool_]:
        failed = np.zeros(drawn.shape[1], dtype=bool)
        if self.rows:
            failed |= self._tally(margins(values, self.rows), self.rows)
        for row in self.doubted:
            doubt = np.flatnonzero(self.planes.in_doubt(row, drawn))
            if doubt.size:
                found = margins(values[:, doubt], [row])[0]
                bad = doubt[found < -ROUNDING]
                failed[bad] = True
                self.failed[row] += len(bad)
                self.least[row] = min(self.least[row], float(found.min()))
        return failed

    def _tally(self, found: FloatArray, rows: list[int]) -> NDArray[np.bool_]:
        bad = found < -ROUNDING
        self.failed[rows] += bad.sum(axis=1)
        finite = np.where(np.isfinite(found), found, 0.0)
        self.total[rows] += finite.sum(axis=1)
        self.square[rows] += np.einsum("ij,ij->i", finite, finite)
        self.seen[rows] += found.shape[1]
        self.least[rows] = np.minimum(self.least[rows], found.min(axis=1))
        return np.asarray(bad.any(axis=0))

    def result(self, draws: int, seed: int) -> Simulation:
        mean = self.total / self.seen
        variance = np.maximum(self.square / self.seen - np.square(mean), 0.0)
        absent = ~np.isfinite(self.least)
        rates = self.bad_bins / np.maximum(self.all_bins, 1)
        return Simulation(
            self.dims, draws, seed, self.failed, self.failed_joint,
            np.where(absent, np.nan, mean), np.where(absent, np.nan, np.sqrt(variance)),
            self.least, self.settled, rates,
        )  # fmt: skip


class _Planes:
    """Planes through the first chunk, and what they miss of it."""

    def __init__(self, dims: tuple[Dimension, ...], drawn: FloatArray, found: FloatArray) -> None:
        rows = len(found)
        self.known = np.isfinite(found).all(axis=1)
        absent = np.isinf(found).all(axis=1)
        base = np.vstack([np.ones(drawn.shape[1]), drawn])
        self.weights = np.zeros((rows, len(base)))
        self.missed = np.full(rows, np.inf)
        if self.known.any():
            fit = np.linalg.lstsq(base.T, found[self.known].T, rcond=None)[0].T
            self.weights[self.known] = fit
            self.missed[self.known] = np.abs(fit @ base - found[self.known]).max(axis=1)
        reach = np.array([d.shape.reach for d in dims])
        lowest = self.weights[:, 0] - np.abs(self.weights[:, 1:]) @ reach
        with np.errstate(invalid="ignore"):
            safe = lowest - SAFETY * self.missed > 0
        self.settled = np.asarray((self.known & safe) | absent)

    def in_doubt(self, row: int, drawn: FloatArray) -> NDArray[np.bool_]:
        """Draws in which the plane does not keep the demand met beyond doubt."""
        if not self.known[row]:
            return np.ones(drawn.shape[1], dtype=bool)
        plane = self.weights[row, 0] + self.weights[row, 1:] @ drawn
        return np.asarray(plane < SAFETY * self.missed[row])

"""Heights of a triangulation in columns along Z."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .facets import Facets
from .overlay import INSIDE, seen

PAIRS = 4_000_000
"""About so many pairs of a column and a triangle are compared in one go."""


def crossings(facets: Facets, plan: FloatArray) -> tuple[NDArray[np.int64], FloatArray]:
    """(m,) column indices and (m,) Z [mm] where columns at plan points (k, 2) meet triangles.

    Triangles on edge must have been left out.
    """
    flat = facets.points[:, :, :2]
    low, high = flat.min(axis=1) - INSIDE, flat.max(axis=1) + INSIDE
    columns, heights = [np.zeros(0, np.int64)], [np.zeros(0)]
    for beside, of in _beside(plan, low, high):
        within = np.all((plan[beside] >= low[of]) & (plan[beside] <= high[of]), axis=1)
        i, j = beside[within], of[within]
        inside, z = seen(plan[i, None], facets.points[j])
        columns.append(i[inside[:, 0]])
        heights.append(z[inside])
    return np.concatenate(columns), np.concatenate(heights)


def _beside(
    plan: FloatArray, low: FloatArray, high: FloatArray
) -> Iterator[tuple[NDArray[np.int64], NDArray[np.int64]]]:
    """Columns and rectangles that may hold them: those that share a strip of the plan.

    For each rectangle it is the strip along X or along Y, whichever holds fewer columns.
    """
    turns = [np.argsort(plan[:, axis]) for axis in (0, 1)]
    ends = [
        (np.searchsorted(plan[turn, axis], low[:, axis], side="left"),
         np.searchsorted(plan[turn, axis], high[:, axis], side="right"))
        for axis, turn in enumerate(turns)
    ]  # fmt: skip
    counts = [last - first for first, last in ends]
    by_x = counts[0] <= counts[1]
    for turn, (first, _), count, use in zip(turns, ends, counts, (by_x, ~by_x), strict=True):
        mine = np.flatnonzero(use & (count > 0))
        total = np.cumsum(count[mine])
        cuts = np.searchsorted(total, np.arange(PAIRS, int(total[-1]) if len(mine) else 0, PAIRS))
        for part in np.split(mine, cuts):
            many = count[part]
            rank = np.arange(int(many.sum())) - np.repeat(np.cumsum(many) - many, many)
            yield turn[np.repeat(first[part], many) + rank], np.repeat(part, many)


def highest(facets: Facets, plan: FloatArray) -> FloatArray:
    """(k,) highest Z [mm] at each plan point; -inf where no triangle lies there."""
    return next_below(facets, plan, np.full(len(plan), np.inf))


def next_above(facets: Facets, plan: FloatArray, z: FloatArray) -> FloatArray:
    """(k,) lowest Z [mm] above ``z`` at each plan point; inf where there is none."""
    column, height = crossings(facets, plan)
    best = np.full(len(plan), np.inf)
    beyond = height > z[column]
    np.minimum.at(best, column[beyond], height[beyond])
    return best


def next_below(facets: Facets, plan: FloatArray, z: FloatArray) -> FloatArray:
    """(k,) highest Z [mm] below ``z`` at each plan point; -inf where there is none."""
    column, height = crossings(facets, plan)
    best = np.full(len(plan), -np.inf)
    beyond = height < z[column]
    np.maximum.at(best, column[beyond], height[beyond])
    return best

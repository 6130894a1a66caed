"""Heights of a triangulation in columns along Z."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .facets import Facets
from .overlay import INSIDE, seen

PAIRS = 4_000_000
"""So many pairs of a column and a triangle are compared in one go."""


def crossings(facets: Facets, plan: FloatArray) -> tuple[NDArray[np.int64], FloatArray]:
    """(m,) column indices and (m,) Z [mm] where columns at plan points (k, 2) meet triangles.

    Triangles on edge must have been left out.
    """
    flat = facets.points[:, :, :2]
    low, high = flat.min(axis=1) - INSIDE, flat.max(axis=1) + INSIDE
    columns, heights = [np.zeros(0, np.int64)], [np.zeros(0)]
    step = max(1, PAIRS // max(len(facets), 1))
    for start in range(0, len(plan), step):
        part = plan[start : start + step, None]
        i, j = np.nonzero(np.all((part >= low) & (part <= high), axis=2))
        inside, z = seen(part[i], facets.points[j])
        columns.append(i[inside[:, 0]] + start)
        heights.append(z[inside])
    return np.concatenate(columns), np.concatenate(heights)


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

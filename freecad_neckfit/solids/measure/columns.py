"""Heights of a triangulation in columns along Z."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .facets import Facets
from .overlay import seen


def heights(facets: Facets, plan: FloatArray) -> FloatArray:
    """(k, n) Z [mm] of each of n triangles at k plan points; NaN where a triangle is not there.

    ``plan``: (k, 2) X and Y [mm]. Triangles on edge must have been left out.
    """
    k, n = len(plan), len(facets)
    points = np.broadcast_to(plan[:, None], (k, n, 2)).reshape(k * n, 1, 2)
    triangles = np.broadcast_to(facets.points[None], (k, n, 3, 3)).reshape(k * n, 3, 3)
    inside, height = seen(points, triangles)
    return np.where(inside, height, np.nan).reshape(k, n)


def highest(facets: Facets, plan: FloatArray) -> FloatArray:
    """(k,) highest Z [mm] at each plan point; -inf where no triangle lies there."""
    found = heights(facets, plan)
    there = np.where(np.isnan(found), -np.inf, found)
    return np.asarray(np.max(there, axis=1, initial=-np.inf))


def next_above(facets: Facets, plan: FloatArray, z: FloatArray) -> FloatArray:
    """(k,) lowest Z [mm] above ``z`` at each plan point; inf where there is none."""
    found = heights(facets, plan)
    beyond = np.where(found > z[:, None], found, np.inf)
    return np.asarray(np.min(beyond, axis=1, initial=np.inf))


def next_below(facets: Facets, plan: FloatArray, z: FloatArray) -> FloatArray:
    """(k,) highest Z [mm] below ``z`` at each plan point; -inf where there is none."""
    found = heights(facets, plan)
    beyond = np.where(found < z[:, None], found, -np.inf)
    return np.asarray(np.max(beyond, axis=1, initial=-np.inf))

"""Distances in the plan to a part's level sections, for many points that lie at many levels."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .facets import Facets
from .sections import cut_level

BUNDLE = 16
"""Least number of triangles that lie near each other and are looked at together."""
CELL = 4.0
"""Side [mm] of the cells of the plan by which a face's triangles are told near or far."""


class Bundles:
    """A part's triangles in bundles of near ones, each with its bounds.

    A bundle whose bounds are farther off than a section found already is not looked into.
    """

    def __init__(self, facets: Facets) -> None:
        """``facets``: all triangles of the part where sections are asked for."""
        cell = np.floor(facets.points.min(axis=1) / CELL)
        order = np.lexsort((*cell.T, facets.face))
        size = max(BUNDLE, int(np.sqrt(len(order)) / 2))  # bundles cost as well as triangles
        count = -(-len(order) // size)
        filled = np.concatenate([order, np.full(count * size - len(order), order[-1])])
        self.points = facets.points[filled.reshape(count, size)]
        self.low, self.high = self.points.min(axis=(1, 2)), self.points.max(axis=(1, 2))

    def distance(self, points: FloatArray, *, enough: float = 0.0) -> FloatArray:
        """(k,) plan distance [mm] of points (k, 3) to the part's section at each point's level.

        Infinite where nothing is cut at that level. What is not above ``enough`` may be read too
        large, as long as it stays no larger than ``enough``.
        """
        least = self._least(points)
        best = np.full(len(points), np.inf)
        todo = np.arange(len(points))
        while len(todo):
            nearest = least[todo].argmin(axis=1)
            open_ = (least[todo, nearest] < best[todo]) & (best[todo] > enough)
            todo, nearest = todo[open_], nearest[open_]
            least[todo, nearest] = np.inf
            best[todo] = np.minimum(best[todo], _to_section(self.points[nearest], points[todo]))
        return best

    def _least(self, points: FloatArray) -> FloatArray:
        """(k, bundles) least that a distance can be; infinite where no triangle has that level."""
        plan, z = points[:, None, :2], points[:, None, 2]
        off = np.maximum(np.maximum(self.low[:, :2] - plan, plan - self.high[:, :2]), 0.0)
        there = (self.low[:, 2] <= z) & (self.high[:, 2] > z)
        return np.where(there, np.hypot(off[..., 0], off[..., 1]), np.inf)


def _to_section(triangles: FloatArray, points: FloatArray) -> FloatArray:
    """(k,) distance of points (k, 3) to what triangles (k, n, 3, 3) cut at their levels."""
    above = triangles[..., 2] > points[:, None, None, 2]
    i, j = np.nonzero(above.any(axis=2) & ~above.all(axis=2))
    segments = cut_level(triangles[i, j], points[i, 2])
    start, along = segments[:, 0], segments[:, 1] - segments[:, 0]
    off = points[i, :2] - start
    square = np.maximum((along**2).sum(axis=1), 1e-300)
    share = np.clip((off * along).sum(axis=1) / square, 0.0, 1.0)
    best = np.full(len(points), np.inf)
    np.minimum.at(best, i, np.hypot(*(off - share[:, None] * along).T))
    return best

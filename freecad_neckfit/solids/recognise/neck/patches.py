"""A neck as triangles in patches: one patch a face, or one smooth region of a mesh.

Vertices lie on the surfaces themselves, so planes and circles laid through them are exact; it
does not matter what kind of surface the kernel keeps for a face.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ....job.arrays import FloatArray

Indices = NDArray[np.int64]
Mask = NDArray[np.bool_]

TRACE = 0.004
"""Share of a patch's area that may face anywhere."""


@dataclass(frozen=True)
class Patches:
    """Triangles and the patch each belongs to.

    ``corners``: (n, 3, 3) [mm]; ``owner``: (n,) patch; ``solid``: (p,) the solid or lump of each
    patch; ``exact``: whether the corners lie on true surfaces (else a mesh's).
    """

    corners: FloatArray
    owner: Indices
    solid: Indices
    exact: bool = True

    @cached_property
    def _cross(self) -> FloatArray:
        c = self.corners
        return np.asarray(np.cross(c[:, 1] - c[:, 0], c[:, 2] - c[:, 0]))

    @cached_property
    def triangle_area(self) -> FloatArray:
        """(n,) [mm²]."""
        return np.asarray(np.linalg.norm(self._cross, axis=1) / 2)

    @cached_property
    def triangle_normal(self) -> FloatArray:
        """(n, 3) unit vectors out of the material; zero for slivers without area."""
        size = 2 * self.triangle_area[:, None]
        return np.asarray(np.divide(self._cross, size, out=np.zeros_like(self._cross),
                                    where=size > 1e-12))  # fmt: skip

    def __len__(self) -> int:
        return len(self.solid)

    @cached_property
    def _order(self) -> tuple[Indices, Indices]:
        """Triangles patch by patch, and where each patch's begin."""
        order = np.argsort(self.owner, kind="stable")
        return order, np.searchsorted(self.owner[order], np.arange(len(self) + 1))

    def _by_patch(self, how: Any, values: FloatArray) -> FloatArray:
        """(p, …) values (n, …) of triangles, brought together over each patch by a ufunc."""
        order, start = self._order
        return np.asarray(how.reduceat(values[order], start[:-1], axis=0))

    def _summed(self, values: FloatArray) -> FloatArray:
        return self._by_patch(np.add, values)

    @cached_property
    def area(self) -> FloatArray:
        """(p,) area of each patch [mm²]."""
        return self._summed(self.triangle_area)

    @cached_property
    def normal(self) -> FloatArray:
        """(p, 3) mean unit normal; zero where the patch goes all round."""
        total = self._summed(self._cross / 2)
        size = np.linalg.norm(total, axis=1)
        keep = size > 0.02 * np.maximum(self.area, 1e-12)
        return np.asarray(np.where(keep[:, None], total / np.maximum(size, 1e-12)[:, None], 0.0))

    @cached_property
    def spread(self) -> FloatArray:
        """(p,) cosine from a patch's mean normal that all but a trace of its area stays within."""
        cos = (self.triangle_normal * self.normal[self.owner]).sum(axis=1)
        order = np.lexsort((cos, self.owner))
        area = self.triangle_area[order]
        start = np.searchsorted(self.owner[order], np.arange(len(self)))
        before = np.cumsum(area) - area
        gone = before - before[start][self.owner[order]] + area
        # Slivers have normals that mean nothing: what they amount to is passed over.
        counts = gone > TRACE * self.area[self.owner[order]]
        least = np.ones(len(self))
        np.minimum.at(least, self.owner[order][counts], cos[order][counts])
        return least

    @cached_property
    def centre(self) -> FloatArray:
        """(p, 3) centre of area [mm]."""
        total = self._summed(self.corners.mean(axis=1) * self.triangle_area[:, None])
        return np.asarray(total / np.maximum(self.area, 1e-12)[:, None])

    @cached_property
    def low(self) -> FloatArray:
        """(p, 3) least coordinates [mm]."""
        return self._by_patch(np.minimum, self.corners.min(axis=1))

    @cached_property
    def high(self) -> FloatArray:
        """(p, 3) greatest coordinates [mm]."""
        return self._by_patch(np.maximum, self.corners.max(axis=1))

    @cached_property
    def leaning(self) -> FloatArray:
        """(p,) largest part along z of any triangle's normal."""
        # Slivers have normals that mean nothing.
        real = self.triangle_area > np.maximum(1e-4, TRACE * self.area[self.owner])
        return self._by_patch(np.maximum, np.where(real, np.abs(self.triangle_normal[:, 2]), 0.0))

    @cached_property
    def _different(self) -> tuple[Indices, Indices]:
        """Corners patch by patch, each place once a patch, and where each patch's begin."""
        order, _ = self._order
        corner = (3 * order[:, None] + np.arange(3)).ravel()
        patch = np.repeat(self.owner[order], 3)
        places = np.rint(self.corners.reshape(-1, 3)[corner] * 1e7)
        by_place = np.lexsort((*places.T, patch))
        step = np.diff(places[by_place], axis=0).any(axis=1) | (np.diff(patch[by_place]) != 0)
        # The sort is stable: the first of a place's corners stands for it, as they come.
        kept = np.sort(by_place[np.concatenate([[True], step])])
        return corner[kept], np.searchsorted(patch[kept], np.arange(len(self) + 1))

    @cached_property
    def vertices(self) -> tuple[FloatArray, Indices]:
        """(k, 3) vertices patch by patch [mm], each once a patch, and (p + 1,) where they begin."""
        corner, start = self._different
        return self.corners.reshape(-1, 3)[corner], start

    def triangles_of(self, patches: Iterable[int]) -> FloatArray:
        """(m, 3, 3) triangles of some patches."""
        order, start = self._order
        pieces = [order[start[i] : start[i + 1]] for i in sorted(set(patches))]
        return self.corners[np.concatenate(pieces)] if pieces else np.zeros((0, 3, 3))

    def points_of(self, patches: Iterable[int]) -> FloatArray:
        """(k, 3) vertices of some patches [mm], each once a patch."""
        points, start = self.vertices
        pieces = [points[start[i] : start[i + 1]] for i in sorted(set(patches))]
        return np.concatenate(pieces) if pieces else np.zeros((0, 3))

    def each_point_of(self, patches: Indices) -> tuple[FloatArray, Indices]:
        """(k, 3) vertices of some patches, and (m,) where those of each begin."""
        points, start = self.vertices
        count = start[patches + 1] - start[patches]
        first = np.cumsum(count) - count
        return points[np.repeat(start[patches] - first, count) + np.arange(count.sum())], first

    def moved(self, rows: FloatArray, origin: FloatArray) -> Patches:
        """Seen from a frame with axes ``rows`` (3, 3) at ``origin``."""
        found = replace(self, corners=(self.corners - origin) @ rows.T)
        # What no motion changes is not worked out anew.
        for kept in ("_order", "_different", "triangle_area", "area", "spread"):
            found.__dict__[kept] = getattr(self, kept)
        for turned in ("_cross", "triangle_normal", "normal"):
            found.__dict__[turned] = getattr(self, turned) @ rows.T
        return found


def different(points: FloatArray) -> FloatArray:
    """Points (k, 3) without repetitions (to a tenth of a micrometre)."""
    _, first = np.unique(np.round(points, 7), axis=0, return_index=True)
    return points[np.sort(first)]


def slice_at(corners: FloatArray, *, y: float, lean: float = 0.0) -> FloatArray:
    """(m, 2, 3) where triangles (n, 3, 3) cross the plane of that y, square to the frame.

    A triangle that lies in the plane or touches it with a corner gives nothing.
    """
    side = corners[:, :, 1] - y - lean * corners[:, :, 0]
    # A corner in the plane counts as beside it: the crossing is the same to a nanometre.
    side = np.where(np.abs(side) < 1e-9, 1e-9, side)
    crossed = (side.min(axis=1) < 0) & (side.max(axis=1) > 0)
    found = []
    for a, b in ((0, 1), (1, 2), (2, 0)):
        p, q = corners[crossed, a], corners[crossed, b]
        s, t = side[crossed, a], side[crossed, b]
        cut = (s * t) < 0
        share = np.where(cut, s / np.where(cut, s - t, 1.0), np.nan)
        found.append(p + (q - p) * share[:, None])
    stack = np.stack(found, axis=1)
    if not len(stack):
        return np.zeros((0, 2, 3))
    order = np.argsort(np.isnan(stack[:, :, 0]), axis=1, kind="stable")[:, :2]
    return np.asarray(np.take_along_axis(stack, order[:, :, None], axis=1))

"""A recognised neck's patches as they are drawn and hit: triangles, rims, and rays through them."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from ...solids.recognise.neck.patches import Patches

PARALLEL = 1e-12


def rims(p: Patches) -> FloatArray:
    """(m, 2, 3) edges between two patches, or at an open end: what the eye reads a shape by."""
    flat = np.round(p.corners.reshape(-1, 3), 4)
    _, first, inverse = np.unique(flat, axis=0, return_index=True, return_inverse=True)
    index = inverse.reshape(-1, 3)
    edges = np.concatenate([index[:, [0, 1]], index[:, [1, 2]], index[:, [2, 0]]])
    ends = np.sort(edges, axis=1)
    owner = np.tile(p.owner, 3)
    order = np.lexsort((owner, ends[:, 1], ends[:, 0]))
    ends, owner = ends[order], owner[order]
    same = (ends[1:] == ends[:-1]).all(axis=1) & (owner[1:] == owner[:-1])
    # What one patch has twice lies within it.
    inside = np.zeros(len(ends), dtype=bool)
    inside[1:] |= same
    inside[:-1] |= same
    kept = np.unique(ends[~inside], axis=0)
    kept = kept[kept[:, 0] != kept[:, 1]]
    return np.asarray(p.corners.reshape(-1, 3)[first][kept])


def hit(p: Patches, start: FloatArray, end: FloatArray) -> int | None:
    """The first patch on the way from ``start`` to ``end`` (3,) [mm]; None where there is none."""
    way = end - start
    a = p.corners[:, 0]
    one, other = p.corners[:, 1] - a, p.corners[:, 2] - a
    square = np.cross(way, other)
    size = (one * square).sum(axis=1)
    crosses = np.abs(size) > PARALLEL
    size = np.where(crosses, size, 1.0)
    off = start - a
    turn = np.cross(off, one)
    u, v = (off * square).sum(axis=1) / size, (turn @ way) / size
    far = (other * turn).sum(axis=1) / size
    met = crosses & (u >= 0) & (v >= 0) & (u + v <= 1) & (far >= 0) & (far <= 1)
    if not met.any():
        return None
    return int(p.owner[np.argmin(np.where(met, far, np.inf))])


def span(p: Patches, patches: Iterable[int]) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Middle, size and mean normal, (3,) each, of some patches."""
    points = p.points_of(patches)
    low, high = points.min(axis=0), points.max(axis=0)
    mask: NDArray[np.int64] = np.array(sorted(set(patches)))
    normal = (p.normal[mask] * p.area[mask, None]).sum(axis=0)
    size = float(np.linalg.norm(normal))
    if size < 0.2 * p.area[mask].sum():  # sides that face each other: look at the first
        normal = p.normal[mask[0]]
        size = float(np.linalg.norm(normal)) or 1.0
    return (low + high) / 2, high - low, normal / size

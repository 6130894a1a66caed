"""Level sections of a triangulation, and signed distances in the plan."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .facets import Facets

MEETING = 1e-5
"""Segments that meet at a corner may do so loosely by this much [mm]."""


def section(facets: Facets, z: float) -> tuple[FloatArray, FloatArray]:
    """Segments (m, 2, 2) [mm] where triangles cross the level ``z``, and their outward normals.

    Normals (m, 2) are unit vectors in the plan. Triangles that only touch the level give none.
    """
    above = facets.points[:, :, 2] > z
    cut = above.any(axis=1) & ~above.all(axis=1)
    segments = cut_level(facets.points[cut], np.full(int(cut.sum()), z))
    normal = facets.normal[cut][:, :2]
    size = np.linalg.norm(normal, axis=1)
    flat = size > 0
    return segments[flat], normal[flat] / size[flat, None]


def cut_level(points: FloatArray, z: FloatArray) -> FloatArray:
    """(m, 2, 2) segments of triangles (m, 3, 3), each cut at its own level."""
    height = points[:, :, 2] - z[:, None]
    above = height > 0
    lone = np.where((above.sum(axis=1) == 1)[:, None], above, ~above).argmax(axis=1)
    row = np.arange(len(points))
    ends = []
    for step in (1, 2):
        other = (lone + step) % 3
        h, g = height[row, lone], height[row, other]
        share = (h / (h - g))[:, None]
        ends.append(points[row, lone, :2] * (1 - share) + points[row, other, :2] * share)
    return np.stack(ends, axis=1)


def signed_room(
    points: FloatArray, segments: FloatArray, normal: FloatArray
) -> tuple[FloatArray, FloatArray]:
    """(k,) signed distance [mm] from points to a wall, positive on the side its normals point to.

    The sign is that of the nearest segment; among equally near ones (at a corner of the wall)
    the one that faces the point most squarely decides. Also returns (k, 2) the feet.
    """
    if not len(segments):
        return np.full(len(points), np.inf), points.copy()
    start, along = segments[None, :, 0], (segments[:, 1] - segments[:, 0])[None]
    square = np.maximum((along**2).sum(axis=-1), 1e-300)
    share = np.clip(((points[:, None] - start) * along).sum(axis=-1) / square, 0.0, 1.0)
    foot = start + share[..., None] * along
    off = points[:, None] - foot
    distance = np.linalg.norm(off, axis=-1)
    lean = (off * normal[None]).sum(axis=-1)
    least = distance.min(axis=1, keepdims=True)
    rank = np.where(distance <= least + MEETING, np.abs(lean), -1.0)
    nearest = rank.argmax(axis=1)
    row = np.arange(len(points))
    sign = np.where(lean[row, nearest] < 0, -1.0, 1.0)
    return sign * least[:, 0], foot[row, nearest]

"""The heel's outside: its sides, end and corners, without holes, slots and broken edges."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .facets import Facets
from .sections import section

UPRIGHT = 0.3
"""A wall's normals lean less than this out of the heel's level."""
AWAY = 1e-6
"""What a wall sees nearer than this [mm] is its own edge."""


def outer_walls(heel: Facets, up: FloatArray) -> Facets:
    """The upright walls of the heel that see nothing of the heel before them.

    ``up``: (3,) from its bottom to the fretboard. Walls of screw holes and of the truss rod's
    channel face other walls of the heel; chamfers, bottom and top are not upright.
    """
    lean = np.abs(heel.normal @ up)
    size = areas(heel)
    # A chamfered corner's cone has slivers at its apex that lean any way: its face as a whole
    # decides.
    whole = np.bincount(heel.face, lean * size) / np.maximum(np.bincount(heel.face, size), 1e-300)
    upright = heel.where((lean < UPRIGHT) & (whole[heel.face] < UPRIGHT))
    faces = np.unique(upright.face)
    return upright.without_faces(int(f) for f in faces if _faces_another(upright, int(f)))


def areas(facets: Facets) -> FloatArray:
    """(n,) area [mm2] of each triangle."""
    edges = facets.points[:, 1:] - facets.points[:, :1]
    return np.asarray(np.linalg.norm(np.cross(edges[:, 0], edges[:, 1]), axis=1) / 2)


def _faces_another(walls: Facets, face: int) -> bool:
    """Whether a wall, looked out of from the middle of its largest triangle, sees another one."""
    own = walls.of_faces([face])
    largest = int(areas(own).argmax())
    eye = own.points[largest].mean(axis=0)
    ahead = own.normal[largest, :2] / np.linalg.norm(own.normal[largest, :2])
    segments, _ = section(walls, float(eye[2]))
    return bool(_seen(segments - eye[:2], ahead).any())


def _seen(segments: FloatArray, ahead: FloatArray) -> NDArray[np.bool_]:
    """Which segments (m, 2, 2) a ray from the plan's origin along ``ahead`` meets."""
    along = segments @ ahead
    beside = segments @ np.array([-ahead[1], ahead[0]])
    crossed = (beside[:, 0] > 0) != (beside[:, 1] > 0)
    rise = np.where(crossed, beside[:, 0] - beside[:, 1], 1.0)
    at = along[:, 0] + (along[:, 1] - along[:, 0]) * beside[:, 0] / rise
    return np.asarray(crossed & (at > AWAY))

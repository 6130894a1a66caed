"""From a file's triangles to closed meshes that face outward."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from ...job.errors import BadInput
from .part import Part3D

WELD = 2e-6
"""Corners closer than this share of the whole's size are one."""


def healed(triangles: FloatArray, *, name: str, notes: tuple[str, ...] = ()) -> Part3D:
    """A closed mesh facing outward. Raises BadInput where edges are open or sides contradict."""
    said = list(notes)
    index, points = welded(triangles)
    whole = (
        (index[:, 0] != index[:, 1]) & (index[:, 1] != index[:, 2]) & (index[:, 2] != index[:, 0])
    )
    index = index[whole]
    _refuse_open(index, name)
    mesh = points[index]
    lumps = components(index)
    for lump in range(int(lumps.max()) + 1):
        mine = lumps == lump
        if volume(mesh[mine]) < 0:
            mesh[mine] = mesh[mine][:, ::-1]
            said.append("a mesh was inside out and was turned right side out")
    said.append("the file holds triangles only: figures are as good as its facets")
    return Part3D(name, (), mesh, tuple(dict.fromkeys(said)), (), points)


def welded(triangles: FloatArray) -> tuple[NDArray[np.int64], FloatArray]:
    """Indices (n, 3) into points (k, 3): corners that coincide are one point."""
    flat = triangles.reshape(-1, 3)
    size = float(np.ptp(flat, axis=0).max()) or 1.0
    step = size * WELD
    _, first, inverse = np.unique(
        np.round(flat / step).astype(np.int64), axis=0, return_index=True, return_inverse=True
    )
    return inverse.reshape(-1, 3), flat[first]


def edges_of(index: NDArray[np.int64]) -> NDArray[np.int64]:
    """(3n, 2) directed edges; edge k belongs to triangle k % n."""
    return np.concatenate([index[:, [0, 1]], index[:, [1, 2]], index[:, [2, 0]]])


def _refuse_open(index: NDArray[np.int64], name: str) -> None:
    edges = edges_of(index)
    big = int(index.max()) + 1
    there = edges[:, 0] * big + edges[:, 1]
    back = edges[:, 1] * big + edges[:, 0]
    missing = np.setdiff1d(there, back)
    if len(missing):
        raise BadInput(
            f"{name}: its mesh is open or its sides contradict each other along {len(missing)} "
            "edges; close it in the program it comes from."
        )


def components(index: NDArray[np.int64]) -> NDArray[np.int64]:
    """For each triangle the number of the connected lump it belongs to."""
    label = np.arange(int(index.max()) + 1)
    while True:
        low = label[index].min(axis=1)
        before = label.copy()
        for k in range(3):
            np.minimum.at(label, index[:, k], low)
        label = label[label]
        if (label == before).all():
            break
    return np.asarray(np.unique(label[index[:, 0]], return_inverse=True)[1])


def volume(mesh: FloatArray) -> float:
    """Signed volume [mm³] of a closed mesh."""
    return float(np.einsum("ij,ij->i", mesh[:, 0], np.cross(mesh[:, 1], mesh[:, 2])).sum() / 6)

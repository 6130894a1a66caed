"""Patches of a part that was read: of its faces, or of the smooth regions of its mesh."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ....job.arrays import FloatArray
from ...grid import grid_of
from ...read.part import Part3D
from .patches import Patches

CHORD = 0.1
"""How far triangles may stray from the surface [mm]; their corners do not."""
ROUGH_CHORD = 0.5
"""The same of free-form surfaces that no grid suits: a shaft's takes most of the time otherwise."""
FREE = ("BSplineSurface", "BezierSurface", "SurfaceOfExtrusion", "SurfaceOfRevolution",
        "OffsetSurface")  # fmt: skip
PIECES = 64
"""Straight pieces that an edge of a section is cut into: a crown's height is right to 0.3 µm."""
SMOOTH = np.cos(np.radians(4.0))
"""Facets that meet at less than this lie on one surface of a mesh."""

FLAT = np.cos(np.radians(0.1))
"""Facets that meet at less than this lie in one plane."""
LARGER = 5.0
"""A true plane in a mesh is so many times larger than the facets it passes into smoothly."""


_last: list[tuple[Part3D, Patches, list[Any]]] = []
"""What was triangulated last: faces are picked and recognised anew on one part many times."""


def patches_of(part: Part3D) -> tuple[Patches, list[Any]]:
    """Patches of a part, and the kernel's face of each, in the same order; no faces of a mesh."""
    if not _last or _last[0][0] is not part:
        found = (
            (from_mesh(part.mesh), []) if part.mesh is not None else from_solids(part.solids)
        )  # fmt: skip
        _last[:] = [(part, *found)]
    return _last[0][1:]


def from_solids(solids: Sequence[Any]) -> tuple[Patches, list[Any]]:
    """Patches of solids, and the kernel's face of each patch, in the same order."""
    corners: list[FloatArray] = []
    owner: list[NDArray[np.int64]] = []
    of_solid: list[int] = []
    faces: list[Any] = []
    for number, solid in enumerate(solids):
        own = solid.Faces
        for face, triangles in zip(own, _triangulated(own), strict=True):
            if not len(triangles):
                continue
            corners.append(triangles)
            owner.append(np.full(len(triangles), len(faces)))
            of_solid.append(number)
            faces.append(face)
    return Patches(np.concatenate(corners), np.concatenate(owner), np.array(of_solid)), faces


def _triangulated(faces: Sequence[Any]) -> list[FloatArray]:
    """(n, 3, 3) triangles of each face."""
    import Part

    found = [grid_of(face, sag=CHORD) for face in faces]
    left = [face for face, triangles in zip(faces, found, strict=True) if triangles is None]
    # Triangulating leaves its traces in a shape; of one shape, neighbours share the points between.
    copies = iter(Part.Compound(left).copy().Faces)
    return [
        triangles_of(next(copies), chord_of(face)) if triangles is None else triangles
        for face, triangles in zip(faces, found, strict=True)
    ]


def chord_of(face: Any) -> float:
    """How far [mm] a face's triangles may stray from it."""
    return ROUGH_CHORD if type(face.Surface).__name__ in FREE else CHORD


def triangles_of(face: Any, chord: float) -> FloatArray:
    """(n, 3, 3) triangles of one face, facing out of the material."""
    points, triples = face.tessellate(chord)
    if not triples:
        return np.zeros((0, 3, 3))
    return np.asarray(np.array([(p.x, p.y, p.z) for p in points])[np.array(triples)])


def from_mesh(mesh: FloatArray) -> Patches:
    """Patches of a closed mesh (n, 3, 3): facets that meet nearly flat belong together."""
    from ...read.mesh_heal import components, welded

    index, _ = welded(mesh)
    lump = components(index)
    cross = np.cross(mesh[:, 1] - mesh[:, 0], mesh[:, 2] - mesh[:, 0])
    size = np.linalg.norm(cross, axis=1)
    normal = cross / np.maximum(size, 1e-12)[:, None]
    pairs = _neighbours(index)
    cos = (normal[pairs[:, 0]] * normal[pairs[:, 1]]).sum(axis=1)
    smooth = pairs[cos > SMOOTH]
    plane = _grouped(len(mesh), pairs[cos > FLAT])
    label = _grouped(len(mesh), smooth[~_leaves_plane(smooth, plane, size / 2)])
    names, owner = np.unique(label, return_inverse=True)
    solid = np.zeros(len(names), dtype=np.int64)
    solid[owner] = lump
    return Patches(mesh, owner, solid, exact=False)


def _leaves_plane(
    pairs: NDArray[np.int64], plane: NDArray[np.int64], area: FloatArray
) -> NDArray[np.bool_]:
    """Whether a pair of facets leads out of a true plane into the curve beside it.

    A true plane is far larger than any facet of the curve; the strips of a rounded top are alike.
    """
    size = np.bincount(plane, area, minlength=len(area))
    a, b = plane[pairs[:, 0]], plane[pairs[:, 1]]
    apart = a != b
    beside = np.zeros(len(area))
    np.maximum.at(beside, a[apart], size[b[apart]])
    np.maximum.at(beside, b[apart], size[a[apart]])
    is_plane = size > LARGER * beside
    return np.asarray(apart & (is_plane[a] | is_plane[b]))


def _neighbours(index: NDArray[np.int64]) -> NDArray[np.int64]:
    """(m, 2) pairs of triangles that share an edge."""
    edges = np.sort(np.concatenate([index[:, [0, 1]], index[:, [1, 2]], index[:, [2, 0]]]), axis=1)
    keys = edges[:, 0] * (int(index.max()) + 1) + edges[:, 1]
    order = np.argsort(keys, kind="stable")
    same = keys[order][1:] == keys[order][:-1]
    triangle = order % len(index)
    return np.column_stack([triangle[:-1][same], triangle[1:][same]])


def _grouped(count: int, pairs: NDArray[np.int64]) -> NDArray[np.int64]:
    """A label for each of ``count`` things: the same for all that pairs connect."""
    label = np.arange(count)
    while len(pairs):
        low = np.minimum(label[pairs[:, 0]], label[pairs[:, 1]])
        before = label.copy()
        np.minimum.at(label, pairs[:, 0], low)
        np.minimum.at(label, pairs[:, 1], low)
        label = label[label]
        if (label == before).all():
            break
    return label


def section_of(faces: Sequence[Any], normal: FloatArray, distance: float) -> FloatArray:
    """(m, 2, 3) short straight pieces of where faces cross a plane, in the faces' space."""
    import Part
    from FreeCAD import Vector

    cut = Part.Compound([f.copy() for f in faces]).slice(Vector(*normal), distance)
    pieces = [np.zeros((0, 2, 3))]
    for wire in cut:
        for edge in wire.Edges:
            points = np.array([(p.x, p.y, p.z) for p in edge.discretize(PIECES + 1)])
            pieces.append(np.stack([points[:-1], points[1:]], axis=1))
    return np.concatenate(pieces)

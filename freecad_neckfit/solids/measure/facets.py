"""Flat triangles of a part's faces, and the ways to choose among them.

A plane face with straight edges becomes exact triangles. A curved one, or a curved edge, lies
within about 0.001 mm of its triangles, wide arcs (radius above 15 mm) within 0.002 mm.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from ..grid import SAG, grid_of
from .failures import NotFound

ARCS = ((4.0, 0.02), (8.0, 0.01), (20.0, 0.006), (100.0, 0.003))
"""Accuracy to ask FreeCAD for, by radius [mm] up to which it leaves arcs within about 0.001 mm.

FreeCAD turns the accuracy into a largest angle as well, so small arcs come out finer than asked.
"""
FREE_FORM = 0.002
"""Accuracy to ask for on wider arcs and on surfaces that are not round."""
FILLET = 0.006
"""Accuracy to ask for on a free-form surface as tightly bent as a fillet along an arc.

It leaves such a fillet within 0.002 mm; FREE_FORM takes five times as many triangles.
"""
TIGHT = 20.0
"""Free-form surfaces bent to this radius [mm] or less are taken as fillets."""
FLAT_ARC = 0.001
"""Accuracy to ask for on a bent top's section: a level edge cuts it so aslant that all counts."""
LEVEL = 0.5
"""Z of a level arc's axis is more than this."""
STRAIGHT = 0.1
"""Accuracy to ask for where nothing is curved, or its edges do not matter."""
STRAIGHT_ONE_WAY = 0.0003
"""Most [mm] by which a grid may leave a cylinder or cone, which takes few triangles: along those of
their corners heel and pocket touch."""
SLIVERS = (1, 2, 4, 16, 64)
"""How many times finer to ask again where a face is a sliver for which nothing came."""
NOTHING = 1e-6
"""A face smaller than this [mm2], which a boolean may leave behind, shows nothing."""
SAME = 1e-6
"""Places closer than this [mm] are one."""
FLAT = 1e-4
"""A triangle that leans less than this out of the direction of view shows only its edge."""

Bounds = tuple[float, float, float, float]
"""X from and to, Y from and to [mm]."""


@dataclass(frozen=True)
class Facets:
    """Triangles, outward normals and the face each belongs to.

    ``points``: (n, 3, 3) corners [mm]; ``normal``: (n, 3) unit vectors out of the material;
    ``face``: (n,) index of the face within its part.
    """

    points: FloatArray
    normal: FloatArray
    face: NDArray[np.int64]

    def __len__(self) -> int:
        return len(self.face)

    def where(self, mask: NDArray[np.bool_]) -> Facets:
        """The triangles where ``mask`` is true."""
        return Facets(self.points[mask], self.normal[mask], self.face[mask])

    def facing(self, *, axis: int, sign: int, least: float = FLAT) -> Facets:
        """Triangles whose normal's part along ``sign`` times the axis exceeds ``least``."""
        return self.where(sign * self.normal[:, axis] > least)

    def of_faces(self, faces: Iterable[int]) -> Facets:
        """Triangles of the faces with these indices."""
        return self.where(np.isin(self.face, np.array(sorted(faces), dtype=np.int64)))

    def without_faces(self, faces: Iterable[int]) -> Facets:
        """Triangles of all other faces."""
        return self.where(~np.isin(self.face, np.array(sorted(faces), dtype=np.int64)))

    def over(self, bounds: Bounds) -> Facets:
        """The triangles that reach into a rectangle of the plan: X from and to, Y from and to."""
        plan = self.points[:, :, :2]
        low, high = plan.min(axis=1), plan.max(axis=1)
        hit = (low[:, 0] <= bounds[1]) & (high[:, 0] >= bounds[0])
        hit &= (low[:, 1] <= bounds[3]) & (high[:, 1] >= bounds[2])
        # A long triangle passes by where all of the rectangle lies beyond one of its edges.
        corners = np.array([(x, y) for x in bounds[:2] for y in bounds[2:]])
        for k in range(3):
            edge = plan[hit, k - 1] - plan[hit, k]
            across = np.stack([-edge[:, 1], edge[:, 0]], axis=1)
            own = (plan[hit] * across[:, None]).sum(axis=2)
            there = across @ corners.T
            spare = SAME * np.abs(across).sum(axis=1)
            clear = there.min(axis=1) > own.max(axis=1) + spare
            clear |= there.max(axis=1) < own.min(axis=1) - spare
            hit[np.flatnonzero(hit)[clear]] = False
        return self.where(hit)

    def clipped(self, *, axis: int, at: float, above: bool) -> Facets:
        """The part of the triangles on one side of a plane square to an axis at ``at`` [mm]."""
        sign = 1.0 if above else -1.0
        return self.cut(sign * (self.points[:, :, axis] - at))

    def cut(self, side: FloatArray) -> Facets:
        """The part of the triangles where ``side``, given (n, 3) at their corners, is positive."""
        whole, none = np.all(side >= 0, axis=1), np.all(side <= 0, axis=1)
        kept = self.where(whole & ~none)
        pieces: list[FloatArray] = []
        origin: list[int] = []
        for index in np.flatnonzero(~whole & ~none):
            found = _cut_triangle(self.points[index], side[index])
            pieces += found
            origin += [int(index)] * len(found)
        if not pieces:
            return kept
        own = Facets(np.array(pieces), self.normal[origin], self.face[origin])
        return joined([kept, own])


EMPTY = Facets(np.zeros((0, 3, 3)), np.zeros((0, 3)), np.zeros(0, dtype=np.int64))


def joined(parts: Sequence[Facets]) -> Facets:
    """All triangles of several parts; face indices are kept as they are."""
    parts = [p for p in parts if len(p)] or [EMPTY]
    return Facets(
        np.concatenate([p.points for p in parts]),
        np.concatenate([p.normal for p in parts]),
        np.concatenate([p.face for p in parts]),
    )


def accuracy(face: Any) -> float:
    """Accuracy to triangulate a face with, by the radii of its surface and edges."""
    kind = type(face.Surface).__name__
    if kind == "Plane":
        found = [_edge_accuracy(e.Curve) for e in face.Edges]
        return min(found, default=STRAIGHT)
    if kind in ("Cylinder", "Cone", "Sphere"):
        return _for_radius(float(face.Surface.Radius))
    if kind == "Toroid":
        return _for_radius(float(face.Surface.MinorRadius))
    return FILLET if _is_tight(face) else FREE_FORM


def _is_tight(face: Any) -> bool:
    u0, u1, v0, v1 = face.ParameterRange
    bends = face.curvatureAt((u0 + u1) / 2, (v0 + v1) / 2)
    return bool(max(abs(b) for b in bends) * TIGHT >= 1)


def _edge_accuracy(curve: Any) -> float:
    kind = type(curve).__name__
    if kind in ("Line", "LineSegment"):
        return STRAIGHT
    radius = getattr(curve, "Radius", None) or getattr(curve, "MajorRadius", None)
    if radius is None:
        middle = (curve.FirstParameter + curve.LastParameter) / 2
        return FILLET if curve.curvature(middle) * ARCS[-1][0] >= 1 else FREE_FORM
    if radius <= ARCS[-1][0]:
        return _for_radius(float(radius))
    # The outline's wide arcs lie far from any contact; those of a bent top's section do not.
    return ARCS[0][1] if abs(curve.Axis.z) > LEVEL else FLAT_ARC


def _for_radius(radius: float) -> float:
    return next((fine for most, fine in ARCS if radius <= most), FREE_FORM)


def facets_of(face: Any, index: int, *, fine: float) -> Facets:
    """Triangulate one face; normals point out of the material.

    As a grid where one suits, which leaves the face by 0.001 mm at most, one that is straight one
    way by 0.0003 mm; else by the kernel, asked for ``fine`` [mm]. Raises NotFound where the kernel
    gives no triangles.
    """
    kind = type(face.Surface).__name__
    sag = STRAIGHT_ONE_WAY if kind in ("Cylinder", "Cone") else SAG
    points = grid_of(face, sag=sag)
    if points is None:
        points = _tessellated(face, index, fine)
    across = np.cross(points[:, 1] - points[:, 0], points[:, 2] - points[:, 0])
    size = np.linalg.norm(across, axis=1)
    keep = size > 0
    normal = across[keep] / size[keep, None]
    return Facets(points[keep], normal, np.full(int(keep.sum()), index))


def _tessellated(face: Any, index: int, fine: float) -> FloatArray:
    # Of a sliver thinner than the accuracy asked for, the kernel gives triangles once it is finer.
    for finer in SLIVERS:
        corners, triples = face.tessellate(fine / finer)
        if triples:
            break
    else:
        if abs(face.Area) < NOTHING:
            return EMPTY.points
        raise NotFound(f"the kernel gave no triangles for face {index + 1}")
    return np.asarray(np.array([(p.x, p.y, p.z) for p in corners])[np.array(triples)])


def _cut_triangle(corners: FloatArray, side: FloatArray) -> list[FloatArray]:
    """Triangles of the part of one triangle where ``side`` is not negative."""
    ring: list[FloatArray] = []
    for k in range(3):
        here, there = corners[k], corners[(k + 1) % 3]
        s, t = side[k], side[(k + 1) % 3]
        if s >= 0:
            ring.append(here)
        if s * t < 0:
            ring.append(here + (there - here) * (s / (s - t)))
    return [np.array([ring[0], ring[k], ring[k + 1]]) for k in range(1, len(ring) - 1)]

"""A solid told apart by a prism into what lies in it and what lies beside it.

A boolean costs by the number of faces, and all but a few of a neck with its frets lie clear of the
prism. So the kernel splits those few faces by the prism's own, and each half is the solid with the
pieces in their place: they share their edges with the faces that stay as they are.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import Part
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from ...job.errors import KernelFailure
from .shapes import Point, Solid, common, cut, proven, tapered

FEW = 20
"""A solid of no more faces is cut by the kernel's booleans: that costs as little."""
NEAR = 1e-3
"""Faces whose bounds come so near [mm] to the prism's are split."""
ON = 1e-4
"""What lies within this [mm] of the prism's faces lies in them."""
INWARD = 0.01
"""So deep [mm] under a face that lies in the prism's, its material is looked for."""


class _Unclear(Exception):
    """The pieces do not tell which half they belong to: the kernel's booleans must."""


def halves(whole: Solid, profile: Sequence[Point], y: Point) -> tuple[Solid, Solid]:
    """The part of ``whole`` within ``profile`` (x, z) [mm] and the rest, each the largest solid.

    The profile's edges are parallel to X and Z; ``y`` reaches beyond the solid on both sides.
    Raises KernelFailure where a half is empty or not sound.
    """
    if len(whole.Faces) > FEW:
        try:
            return split(whole, profile, y)
        except (_Unclear, Part.OCCError):
            pass
    tool = prism(profile, y)
    inside, outside = largest(common(whole, tool)), largest(cut(whole, [tool]))
    return proven(inside, name="inner half"), proven(outside, name="outer half")


def prism(profile: Sequence[Point], y: Point) -> Solid:
    """The solid over a profile in XZ between two y [mm]."""
    return tapered(profile, lambda _: y[0], lambda _: y[1])


def largest(shape: Any) -> Solid:
    """The solid of most volume: slivers where planes coincide are left."""
    if not shape.Solids:
        raise KernelFailure("a part of it is empty")
    return max(shape.Solids, key=lambda s: float(s.Volume))


def split(whole: Solid, profile: Sequence[Point], y: Point) -> tuple[Solid, Solid]:
    """Both halves by way of faces. ``whole`` is sound; raises ``_Unclear`` where in doubt."""
    corners = np.asarray(profile, dtype=float)
    faces = whole.Faces
    sides = _clear_sides(faces, corners)
    met = [f for f, side in zip(faces, sides, strict=True) if side == 0]
    clear = {
        within: [f for f, side in zip(faces, sides, strict=True) if side == (1 if within else -1)]
        for within in (True, False)
    }
    if not met or not clear[True] or not clear[False]:
        raise _Unclear
    neck, walls = _split(met, prism(profile, y).Faces)
    new: dict[bool, list[Any]] = {True: [], False: []}
    for piece in neck:
        new[_side(piece, corners)].append(piece)
    caps = _caps(neck, walls, y)
    if not all(piece.isValid() for piece in [*new[True], *new[False], *caps]):
        raise _Unclear
    outward = {True: caps, False: [cap.reversed() for cap in caps]}
    for within in (True, False):
        _turned_alike(met, [*new[within], *outward[within]])
    inside, outside = (_rebuilt(whole, clear[s], [*new[s], *outward[s]]) for s in (True, False))
    return inside, outside


def _split(met: list[Any], walls: list[Any]) -> tuple[list[Any], list[Any]]:
    """Pieces of the solid's faces and of the prism's, which share their edges and faces.

    Each lot is one argument: between faces of one argument the kernel looks for no crossings. It
    changes neither.
    """
    found, _ = Part.Compound(met).generalFuse([Part.Compound(walls)])
    lots = found.childShapes()
    if len(lots) != 2 or any(lot.ShapeType != "Compound" for lot in lots):
        raise _Unclear
    neck, around = (list(lot.Faces) for lot in lots)
    return neck, around


def _clear_sides(faces: Sequence[Any], corners: FloatArray) -> NDArray[np.int64]:
    """(n,) 1 for faces within the profile, -1 beside it, 0 where they may meet its edges."""
    bounds = [face.BoundBox for face in faces]
    low = np.array([(b.XMin, b.ZMin) for b in bounds])
    high = np.array([(b.XMax, b.ZMax) for b in bounds])
    after = np.roll(corners, -1, axis=0)
    least, most = np.minimum(corners, after) - NEAR, np.maximum(corners, after) + NEAR
    meets = ((least <= high[:, None]) & (most >= low[:, None])).all(axis=2).any(axis=1)
    return np.where(meets, 0, np.where(_depth(low, corners) > 0, 1, -1))


def _depth(points: FloatArray, corners: FloatArray) -> FloatArray:
    """How deep [mm] points (k, 2) lie within the profile; negative beside it."""
    after = np.roll(corners, -1, axis=0)
    low, high = np.minimum(corners, after), np.maximum(corners, after)
    off = points[:, None] - np.clip(points[:, None], low, high)
    distance = np.hypot(off[..., 0], off[..., 1]).min(axis=1)
    x, z = points[:, :1], points[:, 1:]
    upright = low[:, 0] == high[:, 0]
    beyond = (low[:, 0] > x) & (low[:, 1] <= z) & (z < high[:, 1]) & upright
    return np.asarray(np.where(beyond.sum(axis=1) % 2 == 1, distance, -distance))


def _side(piece: Any, corners: FloatArray) -> bool:
    """Whether a piece of a face of the solid belongs to the half within the profile."""
    spots = [v.Point for v in piece.Vertexes]
    spots += [e.valueAt((e.FirstParameter + e.LastParameter) / 2) for e in piece.Edges]
    points = np.array([(p.x, p.z) for p in spots])
    depth = _depth(points, corners)
    if depth.max() > ON and depth.min() < -ON:
        raise _Unclear
    if np.abs(depth).max() > ON:
        return bool(depth[np.abs(depth).argmax()] > 0)
    if type(piece.Surface).__name__ != "Plane":
        raise _Unclear
    normal, middle = piece.normalAt(0, 0), piece.CenterOfMass
    under = middle - normal * INWARD
    return bool(_depth(np.array([[under.x, under.z]]), corners)[0] > 0)


def _caps(neck: list[Any], around: list[Any], y: Point) -> list[Any]:
    """Of the pieces of the prism's faces those within the solid.

    The ones that reach ``y`` lie outside; from one to the next, the solid's own edges are crossed.
    """
    taken = {p.hashCode() for p in neck}
    own_edges = {e.hashCode() for p in neck for e in p.Edges}
    free = [p for p in around if p.hashCode() not in taken]
    beside: dict[int, list[int]] = {}
    for k, piece in enumerate(free):
        for edge in piece.Edges:
            beside.setdefault(edge.hashCode(), []).append(k)
    within = {
        k: False for k, p in enumerate(free)
        if p.BoundBox.YMin < y[0] + NEAR or p.BoundBox.YMax > y[1] - NEAR
    }  # fmt: skip
    todo = list(within)
    while todo:
        k = todo.pop()
        for edge in free[k].Edges:
            name = edge.hashCode()
            is_in = within[k] != (name in own_edges)
            for other in beside[name]:
                if other == k:
                    continue
                if other not in within:
                    within[other] = is_in
                    todo.append(other)
                elif within[other] != is_in:
                    raise _Unclear
    if len(within) != len(free):
        raise _Unclear
    return [p for k, p in enumerate(free) if within[k]]


def _turned_alike(met: list[Any], new: list[Any]) -> None:
    """Raises ``_Unclear`` where new faces are not turned as the faces about them are.

    Two faces pass along the edge between them in opposite ways.
    """
    before: dict[int, list[str]] = {}
    after: dict[int, list[str]] = {}
    for faces, ways in ((met, before), (new, after)):
        for face in faces:
            for edge in face.Edges:
                if not edge.isSeam(face):
                    ways.setdefault(edge.hashCode(), []).append(edge.Orientation)
    for name, ways_now in after.items():
        if len(ways_now) == 1 and ways_now != before.get(name):
            raise _Unclear
        if len(ways_now) > 1 and sorted(ways_now) != ["Forward", "Reversed"]:
            raise _Unclear


def _rebuilt(whole: Solid, kept: list[Any], pieces: list[Any]) -> Solid:
    """The solid of those of its faces that are ``kept``, and of new ones in the others' place."""
    names = {face.hashCode() for face in [*kept, *pieces]}  # what met nothing is a piece, whole
    gone = [face for face in whole.Faces if face.hashCode() not in names]
    had = {face.hashCode() for face in whole.Faces}
    new, nothing = Part.Compound([p for p in pieces if p.hashCode() not in had]), Part.Compound([])
    if not gone:
        raise _Unclear
    solid = whole.replaceShape([(gone[0], new), *((face, nothing) for face in gone[1:])])
    if (
        solid.ShapeType != "Solid" or len(solid.Shells) != 1 or not solid.Shells[0].isClosed()
        or len(solid.Faces) != len(kept) + len(pieces)
    ):  # fmt: skip
        raise _Unclear
    return solid

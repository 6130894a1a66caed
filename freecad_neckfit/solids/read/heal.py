"""From whatever the kernel read to sound solids: what is certain is mended, the rest refused."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ...job.errors import BadInput
from ..build.shapes import moved
from .part import Part3D
from .storable import storable

SEW = (1e-6, 1e-3, 1e-2)
"""Gaps [mm] that sewing closes, tried in turn."""
SAME = 1e-6
"""Solids whose volume, centre and bounds agree to this share are one and the same twice."""
BURIED = 0.5
"""A solid that has more than this share of itself within another is no part of the same thing."""
THIN = 1.0
"""A common volume [mm³] below this is contact."""
MINOR = 0.05
"""Solids smaller than this share of the largest (frets, inlays) may be set into others."""


def healed(shape: Any, *, name: str) -> Part3D:
    """Sound solids of everything in ``shape``; ``name`` is the file's.

    Raises BadInput in one sentence where a shell is open, a solid invalid, or solids lie within
    each other.
    """
    notes: list[str] = []
    shape = storable(shape)
    found = [s for s in _pieces(shape) if s.ShapeType == "Solid"]
    loose = _loose(shape, found)
    if loose:
        found += _sewn(loose, name=name, notes=notes, beside=bool(found))
    if not found:
        raise BadInput(f"{name}: holds no solid, only curves or points; save the neck as a solid.")
    found = [_right_hand(solid, notes) for solid in found]
    for solid in found:
        _refuse_open(solid, name)
    found = [_right_side_out(solid, notes) for solid in found]
    found = _once(found, notes)
    doubts = list(_overlaps(found, name))
    return Part3D(
        name, tuple(found), None, tuple(dict.fromkeys(notes)), tuple(doubts), _points(found)
    )


def _pieces(shape: Any) -> list[Any]:
    """Solids in a shape; a solid of several lumps, each closed by itself, counts as several."""
    import Part

    found: list[Any] = []
    for solid in shape.Solids:
        shells = solid.Shells
        if len(shells) > 1 and all(s.isClosed() for s in shells):
            lumps = [Part.Solid(s) for s in shells]
            if all(lump.Volume > 0 for lump in lumps):
                found += lumps
                continue
        found.append(solid)
    return found


def _loose(shape: Any, solids: list[Any]) -> list[Any]:
    """Faces that belong to no solid."""
    if not solids:
        return list(shape.Faces)
    owned = {f.hashCode() for s in shape.Solids for f in s.Faces}
    return [f for f in shape.Faces if f.hashCode() not in owned]


def _sewn(faces: list[Any], *, name: str, notes: list[str], beside: bool) -> list[Any]:
    """Solids of loose faces that fit together; others are refused, or left out beside solids."""
    import Part

    for gap in SEW:
        together = Part.Compound([f.copy() for f in faces])
        together.sewShape(gap)
        shells = together.Shells
        if shells and all(s.isClosed() for s in shells) and len(together.Faces) == len(faces):
            notes.append(f"{len(faces)} loose faces were sewn into {len(shells)} solid(s)")
            return [_as_solid(shell) for shell in shells]
    if beside:
        notes.append(f"{len(faces)} faces that belong to no solid were left out")
        return []
    raise BadInput(f"{name}: {_where_open(together)}; close it in the program it comes from.")


def _as_solid(shell: Any) -> Any:
    import Part

    solid = Part.Solid(shell)
    if solid.Volume < 0:  # loose faces had no side yet, so none was wrong
        solid.reverse()
    return solid


def _where_open(shape: Any) -> str:
    ends = [e for e in shape.Edges if len(shape.ancestorsOfType(e, _face_type())) < 2]
    return f"its faces do not close: the shell is open along {len(ends)} edges"


def _face_type() -> Any:
    import Part

    return Part.Face


def _right_hand(solid: Any, notes: list[str]) -> Any:
    """A solid whose place in the file mirrors it, with the mirror written into its geometry."""
    from FreeCAD import Placement, Vector

    plain = solid.copy()
    plain.Placement = Placement()
    place = _place(plain, solid)
    if np.linalg.det(place[:, :3]) > -0.5:  # -1 where mirrored, 0 where its few edges lie flat
        return solid
    # What is left of the place once the mirror is taken out of it is a motion.
    place[:, 1] *= -1.0
    mirrored = plain.mirror(Vector(), Vector(0, 1, 0)).Solids[0]
    notes.append("its place in the file mirrors it: the mirror was written into the solid")
    return moved(mirrored, np.vstack([place, [0.0, 0.0, 0.0, 1.0]]))


def _place(plain: Any, placed: Any) -> FloatArray:
    """Turn and shift (3, 4) from a solid as modelled to where it lies.

    Read off the points: FreeCAD 1.1 tells a place that mirrors as one that turns.
    """
    here, there = (
        np.array([list(e.valueAt((e.FirstParameter + e.LastParameter) / 2)) for e in s.Edges])
        for s in (plain, placed)
    )
    turn = np.linalg.lstsq(here - here.mean(axis=0), there - there.mean(axis=0), rcond=None)[0].T
    return np.column_stack([turn, there.mean(axis=0) - turn @ here.mean(axis=0)])


def _refuse_open(solid: Any, name: str) -> None:
    if not all(shell.isClosed() for shell in solid.Shells):
        raise BadInput(f"{name}: {_where_open(solid)}; close it in the program it comes from.")
    if not solid.isValid():
        solid.fix(1e-6, 1e-6, 1e-3)
        if not solid.isValid():
            raise BadInput(
                f"{name}: a solid is not valid; let Part's Check Geometry show where, and mend it."
            )


def _right_side_out(solid: Any, notes: list[str]) -> Any:
    if solid.Volume > 0:
        return solid
    turned = solid.copy()
    turned.reverse()
    notes.append("a solid was inside out and was turned right side out")
    return turned


def _once(solids: list[Any], notes: list[str]) -> list[Any]:
    kept: list[Any] = []
    for solid in solids:
        if any(_is_same(solid, other) for other in kept):
            notes.append("a solid that is in the file twice was taken once")
        else:
            kept.append(solid)
    return kept


def _is_same(a: Any, b: Any) -> bool:
    size = max(abs(a.Volume), 1.0)
    if abs(a.Volume - b.Volume) > SAME * size or len(a.Faces) != len(b.Faces):
        return False
    if (a.CenterOfMass - b.CenterOfMass).Length > SAME * size ** (1 / 3):
        return False
    one, two = (s.BoundBox for s in (a, b))
    return bool(abs(one.DiagonalLength - two.DiagonalLength) < 1e-4)


def _overlaps(solids: list[Any], name: str) -> Iterator[str]:
    """A sentence for each pair that overlaps. Raises BadInput where one lies within another."""
    largest = max(s.Volume for s in solids)
    major = [s for s in solids if s.Volume > MINOR * largest]
    for a, b in combinations(major, 2):
        if not a.BoundBox.intersect(b.BoundBox):
            continue
        shared = a.copy().common(b.copy())
        volume = sum(s.Volume for s in shared.Solids)
        if volume > BURIED * min(a.Volume, b.Volume):
            raise BadInput(
                f"{name}: two of its solids overlap by {volume / 1000:.1f} cm³, so they are no "
                "parts of one neck; leave one of them in the file."
            )
        if volume > THIN:
            thick = 2 * volume / max(shared.Area, 1e-9)
            yield (
                f"two of its solids overlap by {volume / 1000:.2f} cm³, about {thick:.2f} mm deep; "
                "measures across both may be off by as much"
            )


def _points(solids: list[Any]) -> FloatArray:
    """Vertices [mm], enough of them to tell size."""
    found = [(v.X, v.Y, v.Z) for s in solids for v in s.Vertexes]
    return np.array(found)

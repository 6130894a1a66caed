"""What each face of the body is, found by normals and neighbours, never by names."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np

from ...job.arrays import FloatArray
from .columns import crossings
from .failures import NotFound
from .surfaces import height_on

if TYPE_CHECKING:
    from .context import Context

Faces = frozenset[int]

LEVEL = 0.85
"""A face whose normal's Z exceeds this (30 degrees of lean) is a floor, a top or a bottom."""
UPRIGHT = 0.3
"""A face whose normals' Z stay within this is a wall."""
SLACK = 0.3
"""The kernel's bounds of a curved face may be loose by a little [mm]."""
SAME = 0.02
"""A wall reaches no lower than this [mm] below its floor: imported faces may meet loosely."""


@dataclass(frozen=True)
class BodyFaces:
    """Indices of the body's faces by what they are.

    ``floor``: of the pocket. ``fillets``: curved, between floor and walls. ``walls``: of the
    pocket. ``cavity_walls``, ``cavity_floors``. ``outer``: upright faces of the outline.
    ``bottoms``: faces that look down. ``normals``: a few normals of each face, (k, 3).
    """

    floor: Faces
    fillets: Faces
    walls: Faces
    cavity_floors: Faces
    cavity_walls: Faces
    outer: Faces
    bottoms: Faces
    normals: tuple[FloatArray, ...]

    @property
    def pocket(self) -> Faces:
        """All faces of the pocket."""
        return self.floor | self.fillets | self.walls

    @property
    def below_top(self) -> Faces:
        """Faces that may look up without being the top."""
        return self.pocket | self.cavity_floors | self.cavity_walls

    @classmethod
    def read(cls, context: Context) -> BodyFaces:
        """Sort the body's faces.

        Raises NotFound where no level plane face of the body lies under the heel's bottom.
        """
        faces = context.faces("body")
        normals = tuple(normals_of(f) for f in faces)
        beside = neighbours(faces.untouched)
        box = context.boxes("body")
        looks_up = [i for i, n in enumerate(normals) if n[:, 2].min() > LEVEL]
        upright = {i for i, n in enumerate(normals) if np.abs(n[:, 2]).max() < UPRIGHT}
        floor = _floor(context, looks_up)
        fillets, walls = around(faces, floor, beside, box, normals, upright)
        cavity_floors: set[int] = set()
        cavity_walls: set[int] = set()
        for other in looks_up:
            if other in floor:
                continue
            foot, sides = around(faces, {other}, beside, box, normals, upright)
            if sides:
                cavity_floors |= {other} | foot
                cavity_walls |= sides
        bottoms = {i for i, n in enumerate(normals) if n[:, 2].max() < -0.5}
        reaches_down = min((box[i, 2] for i in bottoms), default=-np.inf)
        outer = {
            i for i in upright - walls - cavity_walls
            if not _is_hole(faces[i]) and box[i, 5] > reaches_down + SLACK
        }  # fmt: skip
        return cls(frozenset(floor), frozenset(fillets), frozenset(walls),
                   frozenset(cavity_floors), frozenset(cavity_walls), frozenset(outer),
                   frozenset(bottoms), normals)  # fmt: skip


def normals_of(face: Any, *, steps: Sequence[float] = (0.01, 0.5, 0.99)) -> FloatArray:
    """Normals out of the material at these shares of a face's parameter ranges; one of a plane."""
    u0, u1, v0, v1 = face.ParameterRange
    if type(face.Surface).__name__ == "Plane":
        spots = [(u0, v0)]
    else:
        # Along its lines a cylinder's or cone's normal stays the same.
        straight = type(face.Surface).__name__ in ("Cylinder", "Cone")
        spots = [(u0 + (u1 - u0) * a, v0 + (v1 - v0) * b)
                 for a in steps for b in ((0.5,) if straight else steps)]  # fmt: skip
    found = [face.normalAt(u, v) for u, v in spots]
    return np.array([(n.x, n.y, n.z) for n in found])


def neighbours(faces: Sequence[Any]) -> list[set[int]]:
    """For each face the indices of those that share an edge with it."""
    by_edge: dict[int, list[int]] = {}
    for index, face in enumerate(faces):
        for edge in face.Edges:
            by_edge.setdefault(edge.hashCode(), []).append(index)
    beside: list[set[int]] = [set() for _ in faces]
    for group in by_edge.values():
        for index in group:
            beside[index] |= set(group) - {index}
    return beside


def _floor(context: Context, looks_up: list[int]) -> set[int]:
    heel, frame = context.facets("heel"), context.frame
    bottom = heel.of_faces(frame.bottom)
    spots = bottom.points.mean(axis=1)
    box = context.boxes("body")
    low, high = spots[:, :2].min(axis=0), spots[:, :2].max(axis=0)
    under = [i for i in looks_up if np.all(box[i, :2] <= high) and np.all(box[i, 3:5] >= low)]
    # The nearest plane that really lies under the heel: triangulating every face would cost more.
    planes = [i for i in under if type(context.faces("body")[i].Surface).__name__ == "Plane"]
    off = {
        i: float(np.abs(height_on(context.faces("body")[i], spots[:, :2]) - spots[:, 2]).min())
        for i in planes
    }
    for index in sorted(planes, key=lambda i: off[i]):
        if len(crossings(context.facets("body", [index]), spots[:, :2])[0]):
            return {index}
    raise NotFound("no level face of the body lies under the heel's bottom")


def around(
    faces: Sequence[Any],
    floor: set[int],
    beside: list[set[int]],
    box: FloatArray,
    normals: tuple[FloatArray, ...],
    upright: set[int],
) -> tuple[set[int], set[int]]:
    """Fillets and walls that rise from a floor."""
    low = min(box[i, 2] for i in floor)
    # Walls rise above all of their floor: what stands in a bowl's rim is no wall of the top.
    high = max(box[i, 5] for i in floor)
    fillets: set[int] = set()
    walls: set[int] = set()
    todo = set().union(*(beside[i] for i in floor)) - floor
    seen = set(floor)
    while todo:
        index = todo.pop()
        if index in seen:
            continue
        seen.add(index)
        # A fillet at the deep end of a tilted floor may end lower than the floor's high end.
        least = high if index in upright else low
        if box[index, 5] < least + 1e-3:
            continue
        # The kernel's bounds of a leaning ring's piece hold much of the ring: its corners decide.
        if box[index, 2] < low - SLACK and _lowest_corner(faces[index]) < low - SLACK:
            continue
        if index in upright and _highest_corner(faces[index]) < high + 1e-3:
            continue  # the wall of a recess in a bent top: its bounds may be looser than the top's
        if index in upright and _lowest_corner(faces[index]) < low - SAME:
            continue  # the body's front, which goes down from the mouth
        if index in upright:
            walls.add(index)
        elif normals[index][:, 2].max() > UPRIGHT and len(normals[index]) > 1:
            fillets.add(index)
            todo |= beside[index]
    return _of_walls(fillets, walls, beside)


def _lowest_corner(face: Any) -> float:
    return float(min(v.Point.z for v in face.Vertexes))


def _highest_corner(face: Any) -> float:
    return float(max(v.Point.z for v in face.Vertexes))


def _of_walls(
    fillets: set[int], walls: set[int], beside: list[set[int]]
) -> tuple[set[int], set[int]]:
    """Without walls there is no floor: a top with rounded edges is none."""
    if not walls:
        return set(), set()
    return {f for f in fillets if beside[f] & walls}, walls


def _is_hole(face: Any) -> bool:
    """Whether a face is the inside of a drilled hole: a full cylinder."""
    surface = face.Surface
    if type(surface).__name__ != "Cylinder":
        return False
    u0, u1, _, _ = face.ParameterRange
    return bool(u1 - u0 > 6.0)

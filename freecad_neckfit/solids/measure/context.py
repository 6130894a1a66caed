"""What many measurements share, worked out once: triangles of the parts, and what each face is."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ..recognise.kinds import Flat, kind_of
from .body_faces import BodyFaces, normals_of
from .bounds import FREE, box_of, looks
from .crowns import Strings, read_strings
from .facets import EMPTY, STRAIGHT, Bounds, Facets, accuracy, facets_of, joined
from .failures import NotFound
from .heel_walls import outer_walls
from .lift import read_lift
from .measured import Measured
from .neck_frame import NeckFrame
from .own_faces import MANY, OwnFaces
from .surfaces import height_on
from .window import Reach, is_free

NECK = ("heel", "fretboard", "binding_treble", "binding_bass")
"""Parts of the neck that can touch body, cover plate or pickup."""
NECK_WOOD = (*NECK, "shaft")
REACH = 3.0
"""How far [mm] beyond the neck's plan faces of other parts are looked at for contact."""


class Context:
    """The parts as placed, in the body frame, with what was worked out about them.

    What is triangulated or cut is copied first: that changes a shape of FreeCAD 0.20. A neck's
    parts of many faces are bounded as they are, and the kernel would bound a mesh in them instead:
    they have none, as every build places them anew. ``values`` gives only what shapes cannot show:
    the finish, the set-up of the strings, and the travel of hardware.
    """

    def __init__(
        self,
        parts: Mapping[str, Any],
        values: Mapping[str, Any],
        *,
        missing: Mapping[str, str] | None = None,
    ) -> None:
        """``parts`` by name; a part that is not fitted is left out or None.

        ``missing``: parts that are there and could not be told apart, each with the reason.
        """
        self.missing = missing or {}
        self.parts = {name: shape for name, shape in parts.items() if shape is not None}
        self.values = values
        self._copies: dict[str, Any] = {}
        self._faces: dict[str, OwnFaces] = {}
        self._facets: dict[tuple[str, int, Bounds | None], Facets] = {}
        self._planes: dict[str, FloatArray] = {}
        self._boxes: dict[str, FloatArray] = {}
        self._near: dict[tuple[Any, ...], Facets] = {}
        self._rises: dict[tuple[str, int], tuple[float, float]] = {}
        self._reaches: dict[tuple[str, int], Reach] = {}

    def has(self, name: str) -> bool:
        """Whether the part is fitted. Raises NotFound for one that was not told apart."""
        self._refuse_missing(name)
        return name in self.parts

    def _refuse_missing(self, name: str) -> None:
        if name in self.missing:
            raise NotFound(self.missing[name])

    def shape(self, name: str) -> Any:
        """The context's own copy of a part."""
        if name not in self._copies:
            self._refuse_missing(name)
            self._copies[name] = self.parts[name].copy()
        return self._copies[name]

    def faces(self, name: str) -> OwnFaces:
        """The context's own copies of a part's faces, in the kernel's order."""
        if name not in self._faces:
            self._refuse_missing(name)
            whole = self.parts[name].Faces
            are_copies = name not in NECK_WOOD or len(whole) <= MANY
            self._faces[name] = OwnFaces(
                self.shape(name).Faces if are_copies else whole, are_copies=are_copies
            )
        return self._faces[name]

    def boxes(self, name: str) -> FloatArray:
        """(n, 6) bounds of the part's faces: X, Y, Z from, then to [mm]; may be loose."""
        if name not in self._boxes:
            bounds = [box_of(f) for f in self.faces(name).untouched]
            self._boxes[name] = np.array(bounds, dtype=float).reshape(-1, 6)
        return self._boxes[name]

    def facets(self, name: str, faces: Any = None) -> Facets:
        """Triangles of a part, or of those of its faces whose indices are given."""
        wanted = range(len(self.faces(name))) if faces is None else sorted(faces)
        self.faces(name).copy(wanted)
        return joined([self._face(name, index, None) for index in wanted])

    def _face(self, name: str, index: int, window: Bounds | None) -> Facets:
        key = (name, index, window)
        if key not in self._facets:
            face = self.faces(name)[index]
            pieces = [face] if window is None else self._pieces(name, index, window)
            self._facets[key] = joined([facets_of(p, index, fine=accuracy(p)) for p in pieces])
        return self._facets[key]

    def _pieces(self, name: str, index: int, window: Bounds) -> list[Any]:
        """A face within a rectangle of the plan and a little beyond, or whole if it is straight."""
        face = self.faces(name)[index]
        if accuracy(face) == STRAIGHT:
            return [face]
        return self.reach(name, index).within(window)

    def reach(self, name: str, index: int) -> Reach:
        """Where a face is; told once, however many rectangles it is cut to."""
        key = (name, index)
        if key not in self._reaches:
            self._reaches[key] = Reach.of(self.faces(name).untouched[index])
        return self._reaches[key]

    def planes(self, name: str) -> FloatArray:
        """(n, 3) normals of a part's plane faces, free-form ones too; NaN for curved ones."""
        if name not in self._planes:
            self._planes[name] = np.array([_plane_normal(f) for f in self.faces(name).untouched])
        return self._planes[name]

    def near_faces(self, name: str, bounds: Bounds, *, sign: int = 0) -> list[int]:
        """Indices of faces whose bounds reach into a rectangle of the plan.

        With a ``sign`` only those that may look up (1) or down (-1).
        """
        box = self.boxes(name)
        hit = (box[:, 0] <= bounds[1]) & (box[:, 3] >= bounds[0])
        hit &= (box[:, 1] <= bounds[3]) & (box[:, 4] >= bounds[2])
        if sign:
            hit &= ~(sign * self.planes(name)[:, 2] < 1e-12)
        near = [int(i) for i in np.flatnonzero(hit)]
        return [i for i in near if not sign or self._may_look(name, i, sign)]

    def _may_look(self, name: str, index: int, sign: int) -> bool:
        """Whether a face may look up (1) or down (-1): the tops of frets need no triangles below.

        A curved face of which no normal looked at comes near to level looks one way only.
        """
        least, most = self._rise(name, index)
        return most > 0 if sign > 0 else least < 0

    def _rise(self, name: str, index: int) -> tuple[float, float]:
        """Least and most that the Z of a face's normals can be, and a little more where unsure."""
        key = (name, index)
        if key not in self._rises:
            face = self.faces(name).untouched[index]
            flat = not np.isnan(self.planes(name)[index, 2])
            self._rises[key] = looks(face) or _looked_at(
                self.planes(name)[[index]] if flat else normals_of(face, steps=LOOKS)
            )
        return self._rises[key]

    def near(
        self,
        name: str,
        bounds: Bounds,
        *,
        sign: int = 0,
        tops: bool = True,
        but: frozenset[int] = frozenset(),
    ) -> Facets:
        """Triangles of a part that reach into a rectangle of the plan; none if it is not fitted.

        With a ``sign`` only those that look up (1) or down (-1); without ``tops`` none of faces
        that look up; none of the faces ``but``. Faces that are much wider than the rectangle and
        not simple are cut to it first: triangulating them as a whole costs more.
        """
        if not self.has(name):
            return EMPTY
        key = (name, bounds, sign, tops, but)
        if key not in self._near:
            self._near[key] = self._looked_up(name, bounds, sign=sign, tops=tops, but=but)
        return self._near[key]

    def _looked_up(
        self, name: str, bounds: Bounds, *, sign: int, tops: bool, but: frozenset[int]
    ) -> Facets:
        joint = self.has("heel") and self.has("body")
        shared = joint and _within(bounds, self.neck_bounds)
        window = self.neck_bounds if shared else bounds
        wanted = [
            i for i in self.near_faces(name, bounds, sign=sign)
            if i not in but and (tops or self._rise(name, i)[0] < LEANS)
        ]  # fmt: skip
        self.faces(name).copy(wanted)
        found = joined([
            self._face(name, i, window if self.is_cut(name, i, bounds) else None) for i in wanted
        ])  # fmt: skip
        found = found.over(bounds)
        return found.facing(axis=2, sign=sign) if sign else found

    def is_cut(self, name: str, index: int, bounds: Bounds) -> bool:
        """Whether a face is cut to a rectangle of the plan before it is triangulated."""
        if not _is_wide(self.boxes(name)[index], bounds):
            return False
        face = self.faces(name).untouched[index]
        if type(face.Surface).__name__ != "Plane" or len(face.Edges) > SIMPLE:
            return True
        # A drawn outline is a curve of its own: along all of it triangles are dear.
        return is_free(face)

    @cached_property
    def frame(self) -> NeckFrame:
        """The neck frame as the heel lies in the body frame."""
        return NeckFrame.read(self.facets("heel"))

    @cached_property
    def heel_walls(self) -> Facets:
        """The heel's sides, end and corners, without holes, slots and broken edges."""
        return outer_walls(self.facets("heel"), self.frame.up)

    @cached_property
    def body_faces(self) -> BodyFaces:
        """What each face of the body is: floor, pocket wall, cavity or outline."""
        return BodyFaces.read(self)

    @cached_property
    def neck_bounds(self) -> Bounds:
        """Plan of the neck's parts over the body, a little enlarged [mm]."""
        box = np.concatenate([self.boxes(n) for n in NECK if self.has(n)])
        low, high = box[:, :3].min(axis=0), box[:, 3:].max(axis=0)
        return (
            max(float(low[0]), float(self.boxes("body")[:, 0].min())) - REACH,
            float(high[0]) + REACH,
            float(low[1]) - REACH,
            float(high[1]) + REACH,
        )

    @cached_property
    def top(self) -> Facets:
        """Upward triangles of the body beside pocket and cavities, near the neck."""
        return self.near("body", self.neck_bounds, sign=1, but=self.body_faces.below_top)

    @cached_property
    def lift(self) -> Measured:
        """How high fillets hold the heel off the floor."""
        return read_lift(self)

    @cached_property
    def strings(self) -> Strings:
        """Crowns under the strings, and the open strings laid over them, in the neck frame."""
        return read_strings(self)

    @cached_property
    def top_face(self) -> int:
        """Index of the body's top: of the faces beside pocket and cavities the largest in plan."""
        box, normals = self.boxes("body"), self.body_faces.normals
        level = [
            i for i, n in enumerate(normals)
            if n[:, 2].min() > 0.5 and i not in self.body_faces.below_top
        ]  # fmt: skip
        if not level:
            raise NotFound("the body has no face that looks up")
        return max(level, key=lambda i: np.prod(box[i, 3:5] - box[i, :2]))

    @cached_property
    def plate_face(self) -> int:
        """Index of the cover plate's top: of the faces that look up the largest in plan."""
        box, faces = self.boxes("plate"), self.faces("plate")
        up = [i for i, f in enumerate(faces) if f.normalAt(*_middle(f)).z > 0.5]
        if not up:
            raise NotFound("the cover plate has no face that looks up")
        return max(up, key=lambda i: np.prod(box[i, 3:5] - box[i, :2]))

    def top_height(self, plan: FloatArray) -> FloatArray:
        """(k,) Z [mm] of the bare top at points (k, 2), carried on over pocket and cavities."""
        return height_on(self.faces("body")[self.top_face], plan)

    @cached_property
    def plate_top(self) -> Facets:
        """Upward triangles of the cover plate near the neck; none if there is no plate."""
        return self.near("plate", self.neck_bounds, sign=1)


LOOKS = (0.01, 0.25, 0.5, 0.75, 0.99)
"""Shares of a curved face's parameters at which its normals are looked at."""
LEANS = 0.1
"""Z of a normal that is still near to level."""
SIMPLE = 30
"""A plane face of no more edges is triangulated once as a whole: cutting it costs as much."""
WIDE = 30.0
"""A face that reaches farther than this [mm] beyond a rectangle is cut to it."""


def _is_wide(box: FloatArray, bounds: Bounds) -> bool:
    return bool(
        box[0] < bounds[0] - WIDE or box[3] > bounds[1] + WIDE
        or box[1] < bounds[2] - WIDE or box[4] > bounds[3] + WIDE
    )  # fmt: skip


def _within(inner: Bounds, outer: Bounds) -> bool:
    return (
        outer[0] <= inner[0] and inner[1] <= outer[1]
        and outer[2] <= inner[2] and inner[3] <= outer[3]
    )  # fmt: skip


def _looked_at(normals: FloatArray) -> tuple[float, float]:
    return float(normals[:, 2].min()) - LEANS, float(normals[:, 2].max()) + LEANS


def _plane_normal(face: Any) -> tuple[float, float, float]:
    name = type(face.Surface).__name__
    if name == "Plane":
        n = face.normalAt(0, 0)
        return float(n.x), float(n.y), float(n.z)
    kind = kind_of(face) if name in FREE else None
    if not isinstance(kind, Flat):
        return np.nan, np.nan, np.nan
    x, y, z = kind.normal.tolist()
    return x, y, z


def _middle(face: Any) -> tuple[float, float]:
    u0, u1, v0, v1 = face.ParameterRange
    return (u0 + u1) / 2, (v0 + v1) / 2

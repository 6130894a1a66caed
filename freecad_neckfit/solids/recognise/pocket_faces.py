"""Which faces of a body are its pocket: floor, side walls, end wall, corners and fillets."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from ..measure.body_faces import LEVEL, UPRIGHT, around, neighbours, normals_of
from .kinds import Flat, Kind, Round, kind_of
from .reading import NotRead

ASK = "pick the pocket's floor face"
LEAST_FLOOR = 500.0
"""A pocket's floor is larger than this [mm2]."""
FACES = 0.7
"""A wall faces along an axis where its normal's part along it exceeds this."""


@dataclass(frozen=True)
class PocketFaces:
    """Indices of a pocket's faces, and what each of them is.

    ``left``: walls at +Y; ``right``: walls at -Y. Of each group the largest face comes first.
    """

    kinds: dict[int, Kind]
    floor: int
    left: tuple[int, ...]
    right: tuple[int, ...]
    end: tuple[int, ...]
    corners: tuple[int, ...]
    fillets: tuple[int, ...]

    def flats(self, indices: Iterable[int]) -> list[Flat]:
        """Those of the faces that are planes."""
        return [kind for i in indices if isinstance(kind := self.kinds[i], Flat)]

    def rounds(self, indices: Iterable[int]) -> list[Round]:
        """Those of the faces that are hollow cylinders."""
        found = [kind for i in indices if isinstance(kind := self.kinds[i], Round)]
        return [kind for kind in found if kind.hollow]

    @property
    def ground(self) -> Flat:
        """The floor's plane."""
        return self.flats([self.floor])[0]


class Body:
    """A body's faces with what is needed to sort them, read once."""

    def __init__(self, solid: Any) -> None:
        """``solid``: in a frame whose Z points out of the top and whose X to the bridge."""
        self.solid = solid.copy()
        self.faces: list[Any] = self.solid.Faces
        self.normals = tuple(normals_of(f) for f in self.faces)
        self.beside = neighbours(self.faces)
        self.box = np.array([_bounds(f) for f in self.faces]).reshape(-1, 6)
        self.upright = {
            i for i, n in enumerate(self.normals) if np.abs(n[:, 2]).max() < UPRIGHT
        }  # fmt: skip
        self._kinds: dict[int, Kind] = {}

    def kind(self, index: int) -> Kind:
        """What one face is."""
        if index not in self._kinds:
            self._kinds[index] = kind_of(self.faces[index])
        return self._kinds[index]

    def looks_up(self) -> list[int]:
        """Faces that look up all over."""
        return [i for i, n in enumerate(self.normals) if n[:, 2].min() > LEVEL]


def pocket_faces(body: Body, *, floor: int | None = None) -> PocketFaces:
    """Find the pocket: a plane floor with a wall on either side and one toward the bridge.

    It is open toward -X, and the centreline runs over it. ``floor``: index of the face that the
    designer picked. Raises NotRead where no face, or more than one, can be its floor.
    """
    if floor is not None:
        if not isinstance(body.kind(floor), Flat):
            raise NotRead(f"The picked floor is no plane face; {ASK}.")
        found = _around(body, floor)
        if found is None:
            raise NotRead(
                "The picked face has no wall on either side and toward the bridge, so it is no "
                f"pocket's floor; {ASK}."
            )
        return found
    pockets = [p for i in body.looks_up() if (p := _candidate(body, i)) is not None]
    if not pockets:
        raise NotRead(
            f"No pocket was found that is open toward the headstock; {ASK}, or turn the frame "
            "so that X points to the bridge."
        )
    if len(pockets) > 1:
        raise NotRead(f"{len(pockets)} faces could be the pocket's floor; {ASK}.")
    return pockets[0]


def _candidate(body: Body, index: int) -> PocketFaces | None:
    box, face = body.box[index], body.faces[index]
    if not box[1] < 0 < box[4] or face.Area < LEAST_FLOOR:
        return None
    if not isinstance(body.kind(index), Flat):
        return None
    found = _around(body, index)
    if found is None or _is_shut(body, found):
        return None
    return found


def _around(body: Body, floor: int) -> PocketFaces | None:
    fillets, walls = around(body.faces, {floor}, body.beside, body.box, body.normals, body.upright)
    kinds = {i: body.kind(i) for i in (*walls, *fillets, floor)}
    flat = [i for i in walls if isinstance(kinds[i], Flat)]
    left, right = (_facing(flat, kinds, axis=1, sign=s) for s in (-1, 1))
    end = _facing(flat, kinds, axis=0, sign=-1)
    hollow = [i for i in walls if isinstance(k := kinds[i], Round) and k.hollow]
    if not end:
        end = [i for i in hollow if body.box[i, 1] < 0 < body.box[i, 4]]
    corners = [i for i in hollow if i not in end]
    if not (left and right and end):
        return None
    order = [tuple(sorted(group, key=lambda i: -body.faces[i].Area)) for group in (left, right)]
    ends = tuple(sorted(end, key=lambda i: -body.faces[i].Area))
    return PocketFaces(kinds, floor, order[0], order[1], ends, tuple(corners), tuple(fillets))


def _facing(faces: Sequence[int], kinds: dict[int, Kind], *, axis: int, sign: int) -> list[int]:
    return [i for i in faces if isinstance(k := kinds[i], Flat) and sign * k.normal[axis] > FACES]


def _is_shut(body: Body, found: PocketFaces) -> bool:
    """Whether a wall closes the mouth, as in a cavity."""
    walls = around(body.faces, {found.floor}, body.beside, body.box, body.normals, body.upright)[1]
    toward = [i for i in walls if body.normals[i][:, 0].min() > FACES]
    return any(body.box[i, 1] < 0 < body.box[i, 4] for i in toward)


def _bounds(face: Any) -> tuple[float, ...]:
    b = face.BoundBox
    return (b.XMin, b.YMin, b.ZMin, b.XMax, b.YMax, b.ZMax)

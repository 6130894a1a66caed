"""What the import panel works on: the neck that was read, and what the designer said about it."""

from __future__ import annotations

from collections.abc import Mapping
from types import SimpleNamespace
from typing import Any

import numpy as np

from ...features.gather import joint_stated
from ...features.neck_import import patches_of, recognise_in
from ...job.arrays import FloatArray
from ...job.bounds import in_bounds
from ...job.parameters import ALL
from ...job.quantity import Units, read_value
from ...run.neck_judged import NeckRead
from ...solids.read import Part3D
from ...solids.recognise.neck import PickWanted
from ...solids.recognise.neck.rough import top_around
from ..figures import plain
from ..views.check import units_of
from .neck_names import BINDING, SIDES, TOP, UNDER, name_of
from .neck_rows import Answers, Row, open_questions, rows_of, rows_of_wanted


class NeckSession:
    """One neck beside one joint (or beside none yet).

    ``read``: what was recognised; None while an item must be picked first, which ``wanted`` names.
    Raises BadInput where it is no neck.
    """

    def __init__(self, document: Any, joint: Any, file: str, part: Part3D) -> None:
        self.joint, self.file, self.part = joint, file, part
        self.patches = patches_of(part)
        self.picks: dict[str, tuple[int, ...]] = {}
        self.accepted: dict[str, str] = {}
        self.typed: dict[str, Any] = {}
        self.beside = joint_stated(joint) if joint is not None else {}
        self.units: Units = units_of(joint or SimpleNamespace(Document=document))
        self.read: NeckRead | None = None
        self.wanted: PickWanted | None = None
        self._recognise({})

    @property
    def said(self) -> Answers:
        """What the designer said so far."""
        return Answers(self.picks, self.accepted, self.typed)

    def rows(self) -> dict[str, list[Row]]:
        """Heading to rows, in order."""
        if self.read is None:
            return {} if self.wanted is None else rows_of_wanted(self.wanted, self.said)
        return rows_of(self.read, self.said, self.beside, units=self.units)

    def open(self) -> list[str]:
        """Keys of the questions that are still to be answered, or the row of the item wanted."""
        if self.read is None:
            return [] if self.wanted is None else [f"item {self.wanted.item}"]
        return open_questions(self.read, self.said)

    def faces(self, item: str) -> tuple[int, ...]:
        """The faces that an item is told by at the moment."""
        found = self.read.found.items if self.read is not None else {}
        return self.picks.get(item) or found.get(item, ())

    def place(self, item: str) -> FloatArray | None:
        """Where an item is seen, in the file's space; None for the middle of its faces.

        A fretboard's own bottom lies on the wood, and shows past the heel's end only.
        """
        if self.read is None or item not in (UNDER, BINDING):
            return None
        stated, frame = self.read.found.stated, self.read.found.frame
        if "neck.underside" not in stated:
            return None
        seen = (stated["neck.overhang"] / 2, 0.0, stated["neck.underside"])
        rows, shift = frame[:3, :3], frame[:3, 3]
        return np.asarray(rows.T @ (np.array(seen) - shift))

    def pick(self, item: str, patch: int, *, more: bool) -> None:
        """Tell an item by another face; with ``more`` by one more, or one less.

        One of the heel's sides takes the place of the one that faces the same way; a piece of a
        top between frets stands for all of them. Raises BadInput where no neck can be recognised by
        it; all stays as it was then.
        """
        present = self.faces(item)
        if more:
            chosen = tuple(i for i in present if i != patch) or present
            chosen = chosen if patch in present else (*present, patch)
        elif item == SIDES:
            normal = self.patches.normal
            others = tuple(i for i in present if normal[i] @ normal[patch] < 0)
            chosen = (*others, patch)
        elif item == TOP:
            chosen = present if patch in present else top_around(self.patches, patch)
        else:
            chosen = (patch,)
        self._recognise(self.picks | {item: chosen})

    def give_back(self, item: str) -> None:
        """Tell an item by the faces that are found without a hand."""
        self._recognise({key: faces for key, faces in self.picks.items() if key != item})

    def accept(self, key: str) -> None:
        """What was recognised answers the questions about a key."""
        self.typed.pop(key, None)
        self.accepted[key] = self._asked(key)

    def type(self, key: str, text: str) -> None:
        """A typed value answers the questions about a key. Raises BadInput for what is none."""
        p, name = ALL[key], name_of(key)
        value = read_value(plain(text), kind=p.kind, bare=self.units, name=name)
        in_bounds(p, value, raw=text, name=name, units=self.units)
        self.accepted.pop(key, None)
        self.typed[key] = value

    def arguments(self) -> dict[str, Any]:
        """What was said, as ``features.neck_import.import_neck`` takes it."""
        found: Mapping[str, Any] = {
            "picks": {item: list(faces) for item, faces in self.picks.items()},
            "accepted": list(self.accepted),
            "answers": dict(self.typed),
        }
        return {name: value for name, value in found.items() if value}

    def _recognise(self, picks: dict[str, tuple[int, ...]]) -> None:
        before = {key: self._asked(key) for key in self.accepted}
        try:
            self.read, self.wanted = recognise_in(self.joint, self.part, picks=picks), None
        except PickWanted as wanted:
            if self.read is not None:
                raise  # what was recognised stands
            self.picks, self.wanted = picks, wanted
            return
        self.picks = picks
        # What stood as recognised was said of other figures.
        self.accepted = {key: text for key, text in before.items() if self._asked(key) == text}
        known = self.read.found.stated
        asked = {q.key for q in self.read.found.questions}
        self.typed = {k: v for k, v in self.typed.items() if k in asked or k not in known}

    def _asked(self, key: str) -> str:
        """All that decides whether an answer still stands: questions and value; or nothing."""
        if self.read is None:
            return ""
        texts = [q.text for q in self.read.found.questions if q.key == key]
        values = [f"{d.value}" for d in self.read.found.dimensions if d.key == key]
        return " ".join(texts + values)

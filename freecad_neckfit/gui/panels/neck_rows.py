"""The rows of the import panel: faces, questions, measures, and what the file does not show."""

from __future__ import annotations

import enum
import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ...features.neck_import import not_shown
from ...job.parameters import ALL
from ...job.quantity import Kind, Units
from ...job.resolve import complete
from ...run.neck_judged import NeckRead
from ...solids.recognise.neck import PICKABLE, Confidence, PickWanted, Recognised
from ..figures import compact_length, show_value
from ..sentences import say
from ..translate import tr
from .neck_names import ITEM_OF, groups, item_names, name_of

SEEN = 5e-4
"""A residual below this [mm] is shown as none."""


class Standing(enum.Enum):
    """How far a row can be relied on."""

    ASKED = "?"
    DOUBTFUL = "!"
    ABSENT = "–"
    LIKELY = "~"
    HAND = "*"
    SURE = "+"

    @property
    def word(self) -> str:
        """In the designer's language."""
        return {
            Standing.ASKED: tr("answer this"),
            Standing.DOUBTFUL: tr("doubtful"),
            Standing.ABSENT: tr("not in the file"),
            Standing.LIKELY: tr("likely"),
            Standing.HAND: tr("by hand"),
            Standing.SURE: tr("sure"),
        }[self]


@dataclass(frozen=True)
class Row:
    """One row: what it is called, its value as shown, its residual, how it stands and why.

    ``item``: whose faces are lit up; ``question``: what must be answered, or was; ``can_accept``
    and ``can_type``: the ways to answer it. ``choices``: what there is to choose from, each as it
    is shown and as a job states it, where nothing is typed.
    """

    id: str
    title: str
    value: str
    off: str
    standing: Standing
    how: str
    item: str = ""
    question: str = ""
    can_accept: bool = False
    can_type: bool = False
    choices: tuple[tuple[str, str], ...] = ()

    @property
    def can_pick(self) -> bool:
        """Whether faces that tell it can be picked by hand."""
        return self.item in PICKABLE


@dataclass(frozen=True)
class Answers:
    """What the designer said: faces, what stands as recognised, and values typed."""

    picks: Mapping[str, tuple[int, ...]]
    accepted: Mapping[str, str]
    typed: Mapping[str, Any]

    def settles(self, key: str) -> bool:
        """Whether a question about a key is answered."""
        return key in self.accepted or key in self.typed


def open_questions(read: NeckRead, said: Answers) -> list[str]:
    """Keys of the questions that are still to be answered, in order."""
    keys = dict.fromkeys(q.key for q in read.found.questions)
    return [key for key in keys if not said.settles(key)]


def rows_of(
    read: NeckRead, said: Answers, beside: Mapping[str, Any], *, units: Units
) -> dict[str, list[Row]]:
    """Heading to rows. ``beside``: what the joint states, for what the file does not show."""
    found = {
        tr("Questions of this file"): list(_asked(read, said, units)),
        tr("Faces that tell the neck"): list(_faces(read, said)),
    }
    asked = {q.key for q in read.found.questions}
    measures = {d.key: d for d in read.found.dimensions}
    for heading, names in groups().items():
        found[heading] = [
            _measure(measures[key], title, said, units)
            for key, title in names.items()
            if key in measures and key not in asked
        ]
    holes = tr("Holes in the heel")
    found[holes] = [
        Row(f"hole {i}", f"{tr('Hole')} {i}", compact_length(hole.diameter, units=units), "",
            Standing.SURE, _hole(hole, units))
        for i, hole in enumerate(read.found.holes, 1)
    ]  # fmt: skip
    found[tr("Not in the file")] = list(_absent(read, said, beside, units))
    return {heading: rows for heading, rows in found.items() if rows}


def rows_of_wanted(wanted: PickWanted, said: Answers) -> dict[str, list[Row]]:
    """The rows of a neck that is not recognised before an item is picked by hand."""
    found = []
    for item, title in item_names().items():
        faces = said.picks.get(item, ())
        asks = item == wanted.item
        found.append(Row(
            f"item {item}", title, _count(faces), "",
            Standing.ASKED if asks else Standing.HAND if faces else Standing.ABSENT,
            "", item, say(str(wanted)) if asks else "",
        ))  # fmt: skip
    return {tr("Faces that tell the neck"): found}


def _asked(read: NeckRead, said: Answers, units: Units) -> Iterator[Row]:
    measures = {d.key: d for d in read.found.dimensions}
    for key in dict.fromkeys(q.key for q in read.found.questions):
        texts = " ".join(say(q.text) for q in read.found.questions if q.key == key)
        known = measures.get(key)
        shown = ""
        if known is not None:
            shown = shown_value(known.value, known.kind, units)
        if key in said.typed:
            shown = shown_value(said.typed[key], ALL[key].kind, units)
        yield Row(
            key, name_of(key), shown, _off(known, units),
            Standing.HAND if said.settles(key) else Standing.ASKED,
            say(known.how) if known is not None else "", ITEM_OF.get(key, ""), texts,
            can_accept=known is not None or key not in ALL, can_type=_is_typed(key),
        )  # fmt: skip


def _faces(read: NeckRead, said: Answers) -> Iterator[Row]:
    for item, title in item_names().items():
        told = read.found.items.get(item, ())
        yield Row(
            f"item {item}", title, _count(told), "",
            Standing.HAND if item in said.picks else Standing.SURE if told else Standing.ABSENT,
            tr("Picked by hand.") if item in said.picks else tr("Found by itself."), item,
        )  # fmt: skip


def _count(faces: Sequence[int]) -> str:
    if not faces:
        return tr("none")
    return tr("1 face") if len(faces) == 1 else tr("{} faces").format(len(faces))


def _measure(d: Recognised, title: str, said: Answers, units: Units) -> Row:
    item = ITEM_OF.get(d.key, "")
    standing = {
        Confidence.SURE: Standing.SURE,
        Confidence.LIKELY: Standing.LIKELY,
        Confidence.DOUBTFUL: Standing.DOUBTFUL,
    }[d.confidence]
    if item in said.picks and standing is Standing.SURE:
        standing = Standing.HAND
    return Row(d.key, title, shown_value(d.value, d.kind, units), _off(d, units), standing,
               say(d.how), item)  # fmt: skip


def _absent(
    read: NeckRead, said: Answers, beside: Mapping[str, Any], units: Units
) -> Iterator[Row]:
    values = complete(beside)
    for key in not_shown(read):
        value = said.typed.get(key, values[key])
        shown, choices = shown_value(value, ALL[key].kind, units), _choices(key)
        if key in said.typed:
            standing = Standing.HAND
            how = tr("Chosen by hand.") if choices else tr("Typed by hand.")
        else:
            standing, how = Standing.ABSENT, _how_absent(choices)
        yield Row(key, name_of(key), shown, "", standing, how,
                  can_type=_is_typed(key), choices=choices)  # fmt: skip


def _how_absent(choices: Sequence[Any]) -> str:
    if choices:
        return tr(
            "The file does not show it: the joint's value stands, unless you choose another below."
        )
    return tr("The file does not show it: the joint's value stands, unless you type another.")


def _choices(key: str) -> tuple[tuple[str, str], ...]:
    """What there is to choose from, as shown and as stated; nothing for what is typed."""
    if ALL[key].kind is Kind.FLAG:
        return (tr("yes"), "true"), (tr("no"), "false")
    return tuple((tr(choice), choice) for choice in ALL[key].choices)


def shown_value(value: Any, kind: Kind, units: Units) -> str:
    """A value as it is listed; words in the designer's language."""
    if isinstance(value, float) and not math.isfinite(value):
        return "∞"
    if kind is Kind.FLAG:
        return tr("yes") if value else tr("no")
    if kind is Kind.LENGTH:
        return compact_length(float(value), units=units)
    shown = show_value(value, kind=kind, units=units)
    return tr(shown) if isinstance(value, str) else shown


def _off(d: Recognised | None, units: Units) -> str:
    if d is None or d.kind is not Kind.LENGTH:
        return ""
    return compact_length(d.residual if d.residual > SEEN else 0.0, units=units)


def _hole(hole: Any, units: Units) -> str:
    x, y, deep = (compact_length(v, units=units) for v in (hole.x, hole.y, hole.depth))
    return tr("{} deep, at x {} and y {} from the middle of the heel's end.").format(deep, x, y)


def _is_typed(key: str) -> bool:
    """Whether a value can be typed for it: lengths and counts that a job states."""
    return key in ALL and ALL[key].kind in (Kind.LENGTH, Kind.COUNT, Kind.NUMBER)

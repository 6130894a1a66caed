"""Findings as rows of the Fit panel's list, and the kinds by which it is filtered."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Any

from ...fit.checks import ALL as CHECKS
from ...job.quantity import Units
from ...run.finding import State
from ...run.overlap import is_overlap
from ..annotations.notes import SHOWN_AT_FIRST, Note, figure, note_of
from ..sentences import say
from ..translate import tr

UNMET = (State.INTERFERES, State.TOO_LITTLE, State.TOO_MUCH)
DOUBTFUL = (State.DISAGREES, State.UNKNOWN)


@dataclass(frozen=True)
class Row:
    """One finding of the list.

    ``record``: the finding as the JSON record holds it. ``spare``: margin in words, empty without
    limits. ``waits``: only solids can tell, and they have not been asked since the last change.
    """

    record: Mapping[str, Any]
    note: Note
    spare: str
    waits: bool = False

    @property
    def id(self) -> str:
        """The check's id."""
        return self.note.id

    @property
    def head(self) -> str:
        """Sign and word of the state."""
        return tr("waits for the solids") if self.waits else self.note.head

    @property
    def title(self) -> str:
        """What the finding is about."""
        return self.note.title

    @property
    def figures(self) -> str:
        """Value and what is to spare, in one line."""
        if self.waits:
            return tr("not told by calculation")
        said = [text for text in (self.note.value, self.spare) if text]
        return " · ".join(said) or say(self.record["reason"])

    @property
    def short(self) -> str:
        """The same without the nearest 64ths, where a row is too narrow for them."""
        value = self.note.value.partition(" (")[0]
        return f"{value} · {self.spare}" if value and self.spare else self.figures

    @property
    def text(self) -> str:
        """All of it in one line, for screen readers and tests."""
        return " | ".join(text for text in (self.head, self.title, self.figures) if text)


def rows_of(records: Sequence[Mapping[str, Any]], *, units: Units) -> list[Row]:
    """Rows of findings, in their order."""
    return [_row(record, units) for record in records]


def _row(record: Mapping[str, Any], units: Units) -> Row:
    note = note_of(record, units=units)
    return Row(record, note, _spare(record, note.state, units))


def waiting_rows(records: Sequence[Mapping[str, Any]], *, units: Units) -> list[Row]:
    """Rows of those of the findings on solids that no closed form can tell."""
    return [
        Row(record, note_of(record, units=units), "", waits=True)
        for record in records
        if record["id"] in only_solids() and State(record["state"]) is not State.ABSENT
    ]


@cache
def only_solids() -> frozenset[str]:
    """Ids of the checks that have no closed form."""
    return frozenset(check.id for check in CHECKS if check.read is None)


def _spare(record: Mapping[str, Any], state: State, units: Units) -> str:
    margin = record["margin"]
    if margin is None or state in (*DOUBTFUL, State.TELLS, State.ABSENT):
        return ""
    if is_overlap(record["id"]):
        return ""  # the value says it already, and of none there is nothing to spare
    shown = figure(abs(margin), record["unit"], units)
    if margin >= 0:
        return tr("{} to spare").format(shown)
    too_much = tr("too much by {}") if state is State.TOO_MUCH else tr("{} short")
    return too_much.format(shown)


CLOSEST = 8
"""So many demands are listed where all fit: the ones that a change would break first."""


def closest_first(rows: Sequence[Row]) -> list[Row]:
    """Of rows worst first: those with the least to spare, where nothing is unmet or doubtful.

    Nothing where something is. What still waits for the solids stays in the list.
    """
    judged = [row for row in rows if not row.waits]
    if any(row.note.state in (*UNMET, *DOUBTFUL) for row in judged):
        return []
    met = [row for row in judged if row.note.met and row.record["margin"] is not None]
    return met[:CLOSEST] + [row for row in rows if row.waits]


@dataclass(frozen=True)
class Filter:
    """One kind of findings: words for it, and which rows belong to it."""

    words: str
    holds: Callable[[Row], bool]


def _of(*states: State) -> Callable[[Row], bool]:
    return lambda row: row.note.state in states and not row.waits


def filters() -> tuple[Filter, ...]:
    """The kinds that the list can be narrowed to; the first is the one to begin with."""
    return (
        Filter(tr("what matters"), lambda row: row.note.state in SHOWN_AT_FIRST or row.waits),
        Filter(tr("everything"), lambda _: True),
        Filter(tr("interferes"), _of(State.INTERFERES)),
        Filter(tr("too little, too much"), _of(State.TOO_LITTLE, State.TOO_MUCH)),
        Filter(tr("touches, worth a look"), _of(State.TOUCHES, State.WATCH)),
        Filter(tr("not decided"), _of(*DOUBTFUL)),
        Filter(tr("fits"), _of(State.FITS)),
        Filter(tr("for information"), _of(State.TELLS)),
        Filter(tr("not applicable"), _of(State.ABSENT)),
    )

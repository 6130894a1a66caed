"""A finding as it is written on the screen, and which of them are shown."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from ...job.quantity import Kind, Units
from ...job.show import compact_length, show_length, show_value
from ...run.finding import Finding, State
from ...run.overlap import NONE, is_overlap
from ..figures import local
from ..translate import tr

Place = tuple[float, float, float]

NOTHING = 1e-6
"""A room [mm] of a float's last digits is none."""
DOUBTFUL = (State.UNKNOWN, State.DISAGREES)
SHOWN_AT_FIRST = frozenset(State) - {State.FITS, State.TELLS, State.ABSENT}
"""States that matter: unmet, doubtful, touching, worth a look."""

_KINDS = {kind.unit: kind for kind in (Kind.LENGTH, Kind.ANGLE, Kind.FORCE, Kind.MOISTURE)}


@dataclass(frozen=True)
class Note:
    """One finding in the designer's words.

    ``place``: (X, Y, Z) in the body frame [mm], None where the finding has no place. ``room``: the
    value where it is a length [mm]. ``value`` and ``wanted`` are texts with their unit, empty where
    there is none.
    """

    id: str
    title: str
    state: State
    met: bool | None
    value: str
    wanted: str
    place: Place | None
    room: float | None = None

    @property
    def word(self) -> str:
        """The state's word."""
        return tr(self.state.value)

    @property
    def head(self) -> str:
        """Sign and word of the state."""
        return f"{self.state.mark} {self.word}"

    def lines(self, *, stale: bool = False) -> tuple[str, ...]:
        """All that the label says, line by line."""
        first = f"{self.head} {self.value}".rstrip()
        tail = (self.wanted,) if self.wanted and self.state is not State.FITS else ()
        return (first, self.title, *tail, *((tr("out of date"),) if stale else ()))


def note_of(finding: Finding | Mapping[str, Any], *, units: Units) -> Note:
    """The note on a finding, or on one as the JSON record holds it.

    Raises KeyError or ValueError where a record lacks what every record has.
    """
    if isinstance(finding, Finding):
        return _note(vars(finding) | {"kind": finding.unit}, finding.state, units)
    return _note(finding, State(finding["state"]), units)


def _note(raw: Mapping[str, Any], state: State, units: Units) -> Note:
    kind = raw["kind"] if "kind" in raw else _KINDS.get(raw["unit"], Kind.NUMBER)
    value, place = raw["value"], raw["place"]
    is_none = is_overlap(raw["id"]) and value == 0
    if place is not None:
        place = float(place[0]), float(place[1]), float(place[2])
    return Note(
        id=raw["id"],
        title=tr(raw["title"]),
        state=state,
        met=raw["met"],
        value=tr(NONE) if is_none else local(_said(value, state, kind, units)),
        wanted=local(_wanted(raw, kind, units)) if state is not State.TELLS else "",
        place=place,
        room=value if kind is Kind.LENGTH else None,
    )


def figure(value: float, unit: str, units: Units) -> str:
    """A value in the record's unit as it is shown."""
    return local(_shown(value, _KINDS.get(unit, Kind.NUMBER), units))


def _said(value: float | None, state: State, kind: Kind, units: Units) -> str:
    if value is None:
        return ""
    # "Interferes by 1.55 mm" is read at once; a negative room has to be thought about.
    if state is State.INTERFERES and value < 0:
        return tr("by {}").format(_in_full(-value, kind, units))
    return _in_full(value, kind, units)


def _in_full(value: float, kind: Kind, units: Units) -> str:
    """With the nearest 64th where lengths are shown in inches."""
    if kind is Kind.LENGTH and units is Units.INCH:
        return show_length(0.0 if abs(value) < NOTHING else value, units=units)
    return _shown(value, kind, units)


def _shown(value: float, kind: Kind, units: Units) -> str:
    if kind is Kind.LENGTH:
        return compact_length(0.0 if abs(value) < NOTHING else value, units=units)
    if kind is Kind.NUMBER:
        return f"{value:.2f}"
    return show_value(value, kind=kind, units=units)


def _wanted(raw: Mapping[str, Any], kind: Kind, units: Units) -> str:
    low, high = raw["low"], raw["high"]
    if is_overlap(raw["id"]):
        return tr("wanted: none")
    if low is not None and high is not None:
        least = _shown(low, kind, units).removesuffix(f" {_symbol(kind, units)}")
        return tr("wanted: {} to {}").format(least, _shown(high, kind, units))
    if low is not None:
        return tr("wanted: at least {}").format(_shown(low, kind, units))
    return tr("wanted: at most {}").format(_shown(high, kind, units)) if high is not None else ""


def _symbol(kind: Kind, units: Units) -> str:
    return units.value if kind is Kind.LENGTH else kind.unit


def shown(
    notes: Iterable[Note],
    *,
    states: frozenset[State] = SHOWN_AT_FIRST,
    also: frozenset[str] = frozenset(),
) -> tuple[Note, ...]:
    """The notes whose state is among ``states`` or whose id is in ``also``, in the order given."""
    return tuple(note for note in notes if note.state in states or note.id in also)


def headline(notes: Iterable[Note]) -> tuple[str, ...]:
    """The answer in one line, and how many findings stand how."""
    notes = tuple(notes)
    counts = {state: sum(note.state is state for note in notes) for state in State}
    if any(note.met is False for note in notes):
        answer = tr("does not fit")
    elif any(counts[state] for state in DOUBTFUL):
        answer = tr("could not be decided")
    else:
        answer = tr("fits") if notes else tr("nothing was checked")
    told = [state for state in State if state not in (State.TELLS, State.ABSENT)]
    tally = ", ".join(f"{counts[s]} {_many(s)}" for s in told if counts[s])
    return (answer.upper(), tally) if tally else (answer.upper(),)


def _many(state: State) -> str:
    """A word that suits one finding and many."""
    return {
        State.INTERFERES: tr("interfering"),
        State.DISAGREES: tr("on which the tool disagrees"),
        State.TOUCHES: tr("touching"),
        State.FITS: tr("fitting"),
    }.get(state) or tr(state.value)


def element_of(finding_id: str) -> str:
    """The name by which FreeCAD's selection knows a finding: a dot there parts objects."""
    return finding_id.replace(".", "__")


def id_of(element: str) -> str:
    """The finding's id from the selection's name for it."""
    return element.replace("__", ".")


def is_finite(place: Place) -> bool:
    """Whether a place can be pointed at."""
    return all(map(math.isfinite, place))

"""A finding: what one check says of one joint, from both readings."""

from __future__ import annotations

import enum
from dataclasses import dataclass, field
from typing import Any

from ..fit.check import Gravity
from ..job.quantity import Kind


class State(enum.Enum):
    """How a demand stands."""

    INTERFERES = "interferes"
    TOO_LITTLE = "too little"
    TOO_MUCH = "too much"
    DISAGREES = "tool disagrees"
    UNKNOWN = "not checked"
    TOUCHES = "touches"
    WATCH = "worth a look"
    FITS = "fits"
    TELLS = "for information"
    ABSENT = "not applicable"

    @property
    def mark(self) -> str:
        """One sign that tells the state without colour."""
        return _MARKS[self]


_MARKS = {
    State.INTERFERES: "X",
    State.TOO_LITTLE: "<",
    State.TOO_MUCH: ">",
    State.DISAGREES: "?",
    State.UNKNOWN: "?",
    State.TOUCHES: "=",
    State.WATCH: "!",
    State.FITS: "+",
    State.TELLS: "i",
    State.ABSENT: "-",
}


@dataclass(frozen=True)
class Figure:
    """One reading as plain figures: value, place [mm, body frame] and where it comes from."""

    value: float
    origin: str
    place: tuple[float, float, float] | None = None
    detail: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True)
class Finding:
    """One demand, judged.

    ``met`` is None where the demand does not apply, only informs, or could not be judged.
    ``margin``: smaller distance to the limits, in ``unit``, negative where unmet; None without
    limits. ``weight``: the margin in mm-equivalents, which puts the worst first.
    """

    id: str
    title: str
    unit: Kind
    gravity: Gravity
    state: State
    met: bool | None
    value: float | None
    low: float | None
    high: float | None
    margin: float | None
    weight: float
    place: tuple[float, float, float] | None
    reason: str
    consequence: str
    mending: str
    closed_form: Figure | None
    solids: Figure | None

    @property
    def doubtful(self) -> bool:
        """Could not be checked, or the two readings disagree."""
        return self.state in (State.UNKNOWN, State.DISAGREES)

    @property
    def rank(self) -> tuple[int, int, float]:
        """Sorts findings worst first: unmet, doubtful, met by how narrowly, told, absent."""
        if self.met is False:
            return 0, int(self.gravity), self.weight
        if self.doubtful:
            return 1, int(self.gravity), self.weight
        if self.met is True:
            return 2, 0, self.weight
        return (3 if self.state is State.TELLS else 4), 0, self.weight


def worst_first(findings: list[Finding]) -> list[Finding]:
    """Unmet demands by gravity and shortfall, then doubts, then the narrowest of what fits."""
    return sorted(findings, key=lambda f: f.rank)

"""What one check is. Each file in ``checks`` declares one; the tuple there lists them all."""

from __future__ import annotations

import enum
from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from ..job.arrays import Array
from ..job.quantity import Kind
from .case import Case
from .reading import Reading


class Gravity(enum.IntEnum):
    """What an unmet demand costs, gravest first."""

    BREAKS = 0
    DOES_NOT_GO = 1
    PLAYS_BADLY = 2
    UGLY = 3
    TELLS = 4


@dataclass(frozen=True)
class Excess:
    """What too much of a thing costs, where that differs from too little of it."""

    gravity: Gravity
    consequence: str
    mending: str


@dataclass(frozen=True)
class Follows:
    """What is said where an unmet demand follows from another one, so that it is told once.

    ``rooms``: ids of the checks it may follow from. It does where one of those is unmet in the same
    direction with any figure, the ``same`` one, or a ``deeper`` interference. ``consequence``: the
    sentence in place of the demand's own; ``{room}`` in it becomes the other's title. ``mended``:
    what mends the other one mends this too, so that no second figure is advised.
    """

    rooms: tuple[str, ...]
    consequence: str
    figure: Literal["any", "same", "deeper"] = "any"
    mended: bool = False


@dataclass(frozen=True)
class Check:
    """One demand on the joint.

    ``low`` and ``high`` are keys of limits (``limits.*``) or plain numbers, in ``unit``;
    ``wish_low`` marks a value that passes but is worth a second look. ``contact`` says that the
    value is a room between two parts: below 0 they interfere, at 0 they touch. ``overlap``: that
    room is told only where it is negative, and 0 means that the parts share no place.
    ``span`` is the shortfall that hurts as much as 1 mm of lacking room, in ``unit``.
    ``measure`` is the key of the reading on solids that it is held against; ``exact`` says that
    both must agree within 0.005 (otherwise the closed form is a simple bound that solids refine).
    ``read`` is the closed form, or None where only solids can tell.
    ``consequence`` and ``mending`` are plain sentences, shown when the demand is not met;
    ``{short}`` in them becomes the shortfall with its unit. ``excess`` replaces gravity and words
    where the value is over ``high``. ``follows``: from what it may follow; the first that applies.
    """

    id: str
    title: str
    unit: Kind
    gravity: Gravity
    reads: tuple[str, ...]
    read: Callable[[Case], Reading] | None
    low: str | float | None = None
    high: str | float | None = None
    wish_low: str | float | None = None
    contact: bool = False
    overlap: bool = False
    span: float = 1.0
    measure: str = ""
    exact: bool = True
    consequence: str = ""
    mending: str = ""
    excess: Excess | None = None
    follows: tuple[Follows, ...] = ()

    def limit(self, case: Case, which: str) -> Array | None:
        """The limit ``low``, ``high`` or ``wish_low`` as a value, or None where there is none."""
        bound = getattr(self, which)
        return case[bound] if isinstance(bound, str) else bound

    def toll(self, case: Case, value: float | None) -> Check | Excess:
        """What tells the cost of this value where it is unmet: ``excess`` over the most."""
        high = self.limit(case, "high")
        over = value is not None and high is not None and value > float(high)
        return self.excess if self.excess is not None and over else self

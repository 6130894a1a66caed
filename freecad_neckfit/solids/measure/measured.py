"""What one measurement on solids says."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any

from ...job.arrays import FloatArray

Place = tuple[float, float, float]
"""A point in the body frame, (X, Y, Z) [mm]."""


@dataclass(frozen=True)
class Measured:
    """One figure read from the solids, or why there is none.

    ``value``: in mm unless the key says otherwise; a room is positive when free, negative when
    the parts interfere. ``place``: where it was found. ``known``: False where the demand exists
    but could not be measured; ``because`` then says why. ``applies``: False where the demand
    does not exist in this joint. ``detail``: further figures by plain name.
    """

    value: float
    place: Place | None = None
    known: bool = True
    because: str = ""
    applies: bool = True
    detail: dict[str, Any] = field(default_factory=dict)

    @classmethod
    def absent(cls, because: str) -> Measured:
        """The demand does not exist in this joint."""
        return cls(value=float("nan"), applies=False, because=because)

    @classmethod
    def unknown(cls, because: str) -> Measured:
        """The demand exists and could not be measured."""
        return cls(value=float("nan"), known=False, because=because)


def place_at(p: FloatArray) -> Place:
    """A point (3,) as a place."""
    return float(p[0]), float(p[1]), float(p[2])


DIGITS = 9
"""Values that are the same to so many digits are the same."""


def least(found: Iterable[Measured | None]) -> Measured | None:
    """The one with the least value, or None without any; of equal ones the first."""
    there = (m for m in found if m is not None)
    return min(there, key=lambda m: round(m.value, DIGITS), default=None)

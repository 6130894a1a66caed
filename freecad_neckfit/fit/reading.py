"""One reading of one demand: the value, where it was found, and whether it can be had at all."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import numpy as np

from ..job.arrays import Array


@dataclass(frozen=True)
class Reading:
    """What a closed form says, for one job or for an array of jobs.

    ``value``: in the check's unit; minimum over strings, screws or points already taken.
    ``applies``: False where the demand does not exist (no overhang, no plate), with ``because``.
    ``known``: False where it exists but cannot be answered, with ``unknown_because``.
    ``exact``: False where this joint's shape makes the closed form a simple bound only, which
    solids refine; ``applies``, ``known`` and ``value`` stand all the same.
    ``extremes``: least and largest value, where ``value`` is the worse of several moments.
    ``place``: body-frame (X, Y, Z) [mm] of the value; None where it has no one place, or where
    there are so many jobs that no report shows it.
    ``detail``: further figures for the report, by plain name.
    """

    value: Array
    applies: Array = True
    because: str = ""
    known: Array = True
    unknown_because: str = ""
    exact: bool = True
    extremes: tuple[Array, Array] | None = None
    place: tuple[Array, Array, Array] | None = None
    detail: dict[str, Any] = field(default_factory=dict)

    @classmethod
    def absent(cls, because: str) -> Reading:
        """The demand does not exist in this joint."""
        return cls(value=np.nan, applies=False, because=because)

    @classmethod
    def unknown(cls, because: str) -> Reading:
        """The demand exists and could not be checked."""
        return cls(value=np.nan, known=False, unknown_because=because)

"""The demands on a joint as margins: one for the least and one for the most of each check."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np

from ..fit.case import Case
from ..fit.check import Check, Gravity
from ..fit.checks import ALL
from ..fit.reading import Reading
from ..fit.verdict import ROUNDING, TOUCH
from ..job.arrays import Array, FloatArray

LOW, HIGH, KNOWN = "low", "high", "known"


@dataclass(frozen=True)
class Demand:
    """One side of a check: enough of a thing, not too much of it, or that it can be told at all."""

    check: Check
    side: str

    @property
    def key(self) -> str:
        """The check's id and the side, for files and tests."""
        return f"{self.check.id}:{self.side}"

    @property
    def gravity(self) -> Gravity:
        """What this side costs where it is not met."""
        excess = self.check.excess
        return excess.gravity if self.side == HIGH and excess else self.check.gravity

    @property
    def complaint(self) -> str:
        """What is wrong where it is not met, for labels."""
        title = self.check.title
        if self.side == KNOWN:
            return f"{title}: not checked"
        for good, bad in _TURNED:
            if good in title:
                return title.replace(good, bad)
        return f"{title}: {'too little' if self.side == LOW else 'too much'}"


_TURNED = (
    (" go low enough", " cannot go low enough"),
    (" goes low enough", " cannot go low enough"),
    (" rise high enough", " cannot rise high enough"),
    (" rises high enough", " cannot rise high enough"),
    (" within their travel", " beyond their travel"),
)
"""Titles that say what is good, and how they say what is bad."""

CHECKS: tuple[Check, ...] = tuple(
    check for check in ALL if check.read is not None and check.gravity is not Gravity.TELLS
)
"""The checks that closed forms can judge."""


def _sides(check: Check) -> list[str]:
    sides = [side for side in (LOW, HIGH) if getattr(check, side) is not None]
    return [*sides, KNOWN]


DEMANDS: tuple[Demand, ...] = tuple(Demand(c, side) for c in CHECKS for side in _sides(c))
"""Every demand, in the order of the checks."""


def of_checks(checks: Sequence[Check]) -> tuple[int, ...]:
    """Indices into ``DEMANDS`` of what these checks demand."""
    wanted = {check.id for check in checks}
    return tuple(i for i, demand in enumerate(DEMANDS) if demand.check.id in wanted)


def margins(
    stated: Mapping[str, Any],
    *,
    count: int,
    which: Sequence[int] | None = None,
    told: bool = False,
) -> FloatArray:
    """Margins of the demands on ``count`` joints, shape (demands, count); negative where unmet.

    Each in mm-equivalents: in the check's unit, divided by its ``span``. Infinite where a demand
    does not apply or has no limit. Their least is below -1e-9 just where the joint does not fit.
    ``stated`` holds inner values, single or of shape (count,). ``which``: indices into ``DEMANDS``.
    ``told``: as findings tell them. Where parts may touch, that is from the limit itself, and
    parts that do have nothing to spare; otherwise it is from where they no longer just touch.
    """
    indices = range(len(DEMANDS)) if which is None else which
    case = Case(stated)
    found = np.empty((len(indices), count))
    read: dict[str, Reading] = {}
    for row, index in enumerate(indices):
        demand = DEMANDS[index]
        check = demand.check
        if check.id not in read:
            assert check.read is not None  # noqa: S101  (CHECKS hold readers only)
            reading = check.read(case)
            read[check.id] = reading
        found[row] = _margin(demand, case, read[check.id], told=told)
    return found


def _margin(demand: Demand, case: Case, reading: Reading, *, told: bool) -> Array:
    check, applies, known = demand.check, reading.applies, reading.known
    low, high = reading.extremes or (reading.value, reading.value)
    if demand.side == KNOWN:
        return np.where(np.asarray(applies) & ~np.asarray(known), -1.0, np.inf)
    limit = np.asarray(check.limit(case, demand.side), dtype=float)
    if demand.side == HIGH:
        room = limit - high
    else:
        room = _over(np.asarray(low, dtype=float), limit, contact=check.contact, told=told)
    counts = np.asarray(applies) & np.asarray(known) & ~np.isnan(limit)
    if counts.ndim == 0 and counts:
        return room / check.span
    return np.where(counts, room / check.span, np.inf)


def _over(low: Array, limit: Array, *, contact: bool, told: bool) -> Array:
    """How far a least room is over its limit; parts that touch meet one of 0 or less.

    See fit.verdict.margin.
    """
    if not contact:
        return low - limit
    if told:
        touching = (np.abs(low) <= TOUCH) & (limit <= 0)
        return np.where(touching, np.maximum(low - limit, 0.0), low - limit)
    return low - np.where(limit <= 0, np.minimum(limit, -TOUCH), limit)


def met(found: FloatArray) -> Array:
    """Whether all margins of each joint hold, shape (count,)."""
    return np.min(found, axis=0) >= -ROUNDING

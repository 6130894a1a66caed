"""What a change costs elsewhere: every figure that gets worse, before and after."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from ..fit.case import Case
from ..fit.check import Check, Gravity
from ..fit.checks import ALL
from ..fit.verdict import margin

CHANGED = 0.005
"""A figure that moves by less, in its unit, does not count as changed."""
TIGHT = 2.0
"""A margin [mm-equivalents] that stays larger than this is not worth telling."""
TOLD = ("strings.top", "wood.floor", "bridge.break_angle")
"""Figures that a player or a builder notices however much is left: the less, the worse."""


@dataclass(frozen=True)
class Cost:
    """One figure before and after a change, and what is left to its limits (None: no limit)."""

    check: Check
    before: float
    after: float
    margin_before: float | None
    margin_after: float | None

    @property
    def left(self) -> float:
        """What is left to the limits after the change, in mm-equivalents; infinite without one."""
        return np.inf if self.margin_after is None else self.margin_after / self.check.span

    @property
    def loss(self) -> float:
        """How much of the margin is lost, in mm-equivalents; 0 where nothing limits it."""
        if self.margin_before is None or self.margin_after is None:
            return 0.0
        return (self.margin_before - self.margin_after) / self.check.span


def toll(before: Mapping[str, Any], after: Mapping[str, Any]) -> tuple[Cost, ...]:
    """Figures that get worse with a change: by how little is left of them, then those of ``TOLD``.

    ``before`` and ``after`` are the statements of two joints. What gets better is left out, and
    what keeps more than 2 mm, or as much as that in its unit, to spare.
    """
    cases = Case(before), Case(after)
    costs = [cost for check in ALL if (cost := _cost(check, *cases)) is not None]
    worse = [c for c in costs if c.loss > CHANGED / c.check.span and c.left < TIGHT]
    told = [c for c in costs if c.check.id in TOLD and c.after < c.before and c not in worse]
    return (*sorted(worse, key=lambda c: c.left), *told)


def _cost(check: Check, before: Case, after: Case) -> Cost | None:
    values = _value(check, before), _value(check, after)
    if values[0] is None or values[1] is None or abs(values[1] - values[0]) < CHANGED:
        return None
    first, second = values[0], values[1]
    return Cost(check, first, second, _left(check, before, first), _left(check, after, second))


def _value(check: Check, case: Case) -> float | None:
    if check.read is None:
        return None
    reading = check.read(case)
    if not (bool(reading.applies) and bool(reading.known)):
        return None
    value = float(reading.value)
    return value if np.isfinite(value) else None


def _left(check: Check, case: Case, value: float) -> float | None:
    if check.gravity is Gravity.TELLS:
        return None
    left = float(margin(check, case, value=value))
    return left if np.isfinite(left) else None

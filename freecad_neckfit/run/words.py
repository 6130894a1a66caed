"""A check's sentences with their figures."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..fit.check import Check
from ..fit.checks import ALL
from ..job.quantity import Kind, Units
from ..job.show import show_value


class Words:
    """Fills a shortfall with its unit into a check's sentence."""

    def __init__(self, check: Check, room: float | None, units: Units) -> None:
        self.kind, self.units = check.unit, units
        self.room = abs(room) if room is not None else 0.0

    def fill(self, sentence: str) -> str:
        """The sentence with its figure in place of ``{short}``."""
        if self.kind is Kind.NUMBER:
            return sentence.replace("{short}", f"{self.room:.2f}")
        return sentence.replace("{short}", show_value(self.room, kind=self.kind, units=self.units))


def mending_in(record: Mapping[str, Any], units: Units) -> str:
    """How a finding is mended, with figures in other units than it was found or kept in.

    ``record``: the finding's fields by name, as the JSON record holds them.

    As kept where this version knows no such check.
    """
    check = next((c for c in ALL if c.id == record["id"]), None)
    if not record["mending"] or check is None:
        return str(record["mending"])
    value, high = record["value"], record["high"]
    is_over = value is not None and high is not None and value > high
    toll = check.excess if check.excess is not None and is_over else check
    return Words(check, record["margin"], units).fill(toll.mending)

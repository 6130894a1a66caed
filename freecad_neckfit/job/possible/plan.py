"""Plan of a pocket or a heel: straight sides and an end, square with round corners or round."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from ..resolve import Values
from .words import mm

SPARE = 0.1
"""Straight length [mm] that must be left beside a rounding."""


@dataclass(frozen=True)
class Plan:
    """Half the width is ``half`` + ``slope``·x, with x = 0 at the end; lengths in mm.

    ``corner``: radius of a square end's corners. ``radius``: that of a round end, or None.
    ``length``: end to mouth. ``name``: the group of parameters that state it.
    """

    name: str
    half: float
    slope: float
    length: float
    corner: float
    radius: float | None

    def half_width(self, x: float) -> float:
        """Half the width [mm] at x."""
        return self.half + self.slope * x

    def complaints(self, v: Values) -> Iterator[str]:
        """Say why end and sides do not meet, if they do not."""
        if self.half_width(-self.length) < 1.0:
            yield (
                f"{self.name}: its sides close before {mm(v, self.length)} from the end; bring its "
                "widths at end and mouth closer together."
            )
        elif self.radius is None:
            yield from self._square(v)
        else:
            yield from self._round(v)

    def _square(self, v: Values) -> Iterator[str]:
        angle = math.atan(self.slope)
        touch = self.corner / math.tan((math.pi / 2 - angle) / 2)
        if touch > self.half - SPARE or touch * math.cos(angle) > self.length - SPARE:
            key = "pocket.corner_radius" if self.name == "pocket" else "neck.heel_corner_radius"
            yield (
                f"{key}: corners of {mm(v, self.corner)} do not fit an end {mm(v, 2 * self.half)} "
                "wide; make the radius smaller."
            )

    def _round(self, v: Values) -> Iterator[str]:
        radius = float(self.radius or 0.0)
        key = "pocket.end_radius" if self.name == "pocket" else "neck.heel_radius"
        stretch = math.hypot(1.0, self.slope)
        reach = abs(self.half_width(-radius)) / stretch
        if radius < self.half - 1e-9 or reach > radius + 1e-9:
            yield (
                f"{key}: a round end of {mm(v, radius)} does not meet sides {mm(v, 2 * self.half)} "
                "apart; make it larger than half the width."
            )
            return
        # From the foot of the square on the side, forward along the side to the arc.
        along = math.sqrt(max(radius**2 - reach**2, 0.0))
        foot = -radius - self.slope * self.half_width(-radius) / stretch**2
        if foot + along / stretch < -self.length + SPARE:
            yield (
                f"{key}: a round end of {mm(v, radius)} is deeper than the {mm(v, self.length)} to "
                "the mouth; make it larger."
            )


def pocket_plan(v: Values) -> Plan:
    """The pocket's plan."""
    end, mouth = float(v["pocket.width_end"]) / 2, float(v["pocket.width_mouth"]) / 2
    is_round = v["pocket.end_shape"] == "round"
    return Plan(
        name="pocket",
        half=end,
        slope=(end - mouth) / float(v["pocket.length"]),
        length=float(v["pocket.length"]),
        corner=0.0 if is_round else float(v["pocket.corner_radius"]),
        radius=float(v["pocket.end_radius"]) if is_round else None,
    )


def heel_plan(v: Values) -> Plan:
    """The heel's plan."""
    end, mouth = float(v["neck.heel_width_end"]) / 2, float(v["neck.heel_width_mouth"]) / 2
    is_round = v["neck.heel_end"] == "round"
    return Plan(
        name="heel",
        half=end,
        slope=(end - mouth) / float(v["pocket.length"]),
        length=float(v["neck.heel_length"]),
        corner=0.0 if is_round else float(v["neck.heel_corner_radius"]),
        radius=float(v["neck.heel_radius"]) if is_round else None,
    )

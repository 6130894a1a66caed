"""The cutter, and how it is led: a bearing or a guide bush."""

from __future__ import annotations

from dataclasses import dataclass

from ..job.errors import BadInput
from ..job.quantity import Units
from ..job.show import compact_length
from ..solids.build.plan import Plan
from ..solids.build.shapes import SAME

USUAL_BITS = (3.0, 3.175, 4.0, 5.0, 6.0, 6.35, 8.0, 9.525, 10.0, 12.0, 12.7, 16.0, 19.05)
"""Diameters [mm] that shops have, from memory."""


@dataclass(frozen=True)
class Cutter:
    """A bit and its guide, by diameter [mm].

    ``bush``: outer diameter of the guide bush, None for a bearing as wide as the bit.
    """

    bit: float
    bush: float | None = None

    @property
    def outward(self) -> float:
        """How much larger [mm, on each side] than the pocket the template's opening must be."""
        return 0.0 if self.bush is None else (self.bush - self.bit) / 2

    def led_by(self, units: Units) -> str:
        """Bit and guide in words."""
        bit = f"bit {compact_length(self.bit, units=units)}"
        if self.bush is None:
            return f"{bit} with a bearing of the same diameter"
        return f"{bit} in a guide bush {compact_length(self.bush, units=units)}"


def largest_bit(plan: Plan) -> float:
    """Diameter [mm] of the largest bit that cuts the pocket's corners; 0 where they are sharp.

    A round end that meets the sides at an angle leaves two sharp corners, which every bit rounds:
    there its own radius is the bound, and ``left_in_corners`` tells the rest.
    """
    return 2 * float(plan.corner if plan.radius is None else plan.radius)


def left_in_corners(plan: Plan, cutter: Cutter) -> float:
    """Radius [mm] that the bit leaves where a round end meets the sides at an angle, or 0."""
    if plan.radius is None:
        return 0.0
    x, _ = plan.round_meets_at()
    touches = abs(x - (plan.end - plan.radius)) < 1e-3 * plan.radius and abs(plan.slope) < 1e-3
    return 0.0 if touches else cutter.bit / 2


def chosen(plan: Plan, *, bit: float | None, bush: float | None, units: Units) -> Cutter | None:
    """The cutter asked for, or the largest usual one that fits; None where no bit can.

    Raises BadInput for a bit too large for the corners (it names the largest that works), and for
    a bush no larger than its bit.
    """
    most = largest_bit(plan)
    if bit is None:
        fitting = [usual for usual in USUAL_BITS if usual <= most + SAME]
        if bush is not None:
            fitting = [usual for usual in fitting if usual < bush]
        if not fitting:
            return None
        bit = max(fitting)
    shown = compact_length(bit, units=units)
    if bit <= 0:
        raise BadInput(f"bit: a diameter of {shown} cuts nothing; state one above zero.")
    if bit > most + SAME:
        raise BadInput(_too_large(shown, most, units))
    if bush is not None and bush <= bit:
        raise BadInput(
            f"bush: {compact_length(bush, units=units)} is no larger than the bit of {shown}; "
            "state the bush's outer diameter."
        )
    return Cutter(bit, bush)


def _too_large(shown: str, most: float, units: Units) -> str:
    if most <= 0:
        return (
            f"bit: {shown} is too large for the pocket's sharp corners, which no round bit cuts; "
            "state pocket.corner_radius, or leave the bit out and square the corners by hand."
        )
    return (
        f"bit: {shown} is too large for the pocket's corners; the largest that works is "
        f"{compact_length(most, units=units)}."
    )

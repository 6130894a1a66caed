"""Clearance between heel and pocket: the one check of which each side has its own."""

from __future__ import annotations

from ..job.quantity import Kind
from .case import Case
from .check import Check, Excess, Gravity
from .outline import heel_outline
from .reading import Reading
from .reads import TOP, together
from .reads_joint import CAVITIES, PLANS
from .sides import place, sides_left


def side_check(side: str, *, sign: float) -> Check:
    """Give the check of one ``side``; ``sign`` is 1 toward the treble, -1 toward the bass."""

    def read(case: Case) -> Reading:
        """Least plan room [mm] between heel side and pocket side, the neck centred.

        Over their common length and from floor to top, finish on the wall taken off. Pocket and
        heel are symmetric, so both sides have the same room.
        """
        found = case.once(sides_left)
        if found.x is None:
            return Reading(value=found.value)
        half = case.once(heel_outline).side(found.x)
        y = sign * case.treble_sign * half
        return Reading(value=found.value, place=place(case, found, y=y))

    return Check(
        id=f"side.{side}",
        title=f"side clearance, {side}",
        unit=Kind.LENGTH,
        gravity=Gravity.DOES_NOT_GO,
        reads=together(PLANS, TOP, CAVITIES),
        read=read,
        low="limits.side_min",
        high="limits.side_max",
        contact=True,
        measure=f"side_{side}",
        consequence="The neck does not go into its pocket, or cracks finish and wood beside it.",
        mending="Rout the pocket wider by {short} on this side.",
        excess=Excess(
            gravity=Gravity.PLAYS_BADLY,
            consequence="The neck shifts sideways in its pocket.",
            mending="Rout the pocket narrower by {short} on this side, or veneer it.",
        ),
    )

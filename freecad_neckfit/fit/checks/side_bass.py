"""Clearance between heel and pocket on the bass side."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Excess, Gravity
from ..outline import heel_outline
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import PLANS
from ..sides import place, pocket_sides


def read(case: Case) -> Reading:
    """Least plan room [mm] between heel side and pocket side, the neck centred.

    Over their common length and from floor to top, finish on the wall taken off. Pocket and heel
    are symmetric, so both sides have the same room.
    """
    found = case.once(pocket_sides)
    half = case.once(heel_outline).side(found.x)
    return Reading(value=found.value, place=place(case, found, y=-case.treble_sign * half))


CHECK = Check(
    id="side.bass",
    title="side clearance, bass",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(PLANS, TOP),
    read=read,
    low="limits.side_min",
    high="limits.side_max",
    contact=True,
    span=1.0,
    measure="side_bass",
    consequence="The neck does not go into its pocket, or cracks finish and wood beside it.",
    mending="Rout the pocket wider by {short} on this side.",
    excess=Excess(
        gravity=Gravity.PLAYS_BADLY,
        consequence="The neck shifts sideways in its pocket.",
        mending="Rout the pocket narrower by {short} on this side, or veneer it.",
    ),
)

"""Clearance between the heel's end and the end wall."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Excess, Gravity
from ..opened import end_wall_there
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import CAVITIES, PLANS
from ..sides import place, pocket_end


def read(case: Case) -> Reading:
    """Least plan room [mm] between heel end and end wall from floor to top, finish taken off.

    Not applicable where the cavity of a pickup that stands too near takes the end wall away.
    """
    found = case.once(pocket_end)
    return Reading(
        value=found.value,
        applies=end_wall_there(case),
        because="no end wall is left on the centreline: a cavity takes it away",
        place=place(case, found, y=0.0),
    )


CHECK = Check(
    id="end.clearance",
    title="end clearance",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(PLANS, TOP, CAVITIES),
    read=read,
    low="limits.end_min",
    high="limits.end_max",
    contact=True,
    measure="end_clearance",
    consequence="The heel stands off its seat, or the wall splits.",
    mending="Lengthen the pocket by {short}.",
    excess=Excess(
        gravity=Gravity.PLAYS_BADLY,
        consequence="The neck does not reach its end wall: strings and scale are off.",
        mending="Shorten the pocket by {short}.",
    ),
)

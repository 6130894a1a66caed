"""Clearance between the heel's end and the end wall."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import PLANS
from ..sides import place, pocket_end


def read(case: Case) -> Reading:
    """Least plan room [mm] between heel end and end wall from floor to top, finish taken off."""
    found = case.once(pocket_end)
    return Reading(value=found.value, place=place(case, found, y=0.0))


CHECK = Check(
    id="end.clearance",
    title="end clearance",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(PLANS, TOP),
    read=read,
    low="limits.end_min",
    high="limits.end_max",
    contact=True,
    measure="end_clearance",
    consequence="Too little and the heel jams before it seats; too much and the scale shifts and "
    "the joint looks open.",
    mending="Change the pocket's length toward the bridge, or the end gap, by {short}.",
)

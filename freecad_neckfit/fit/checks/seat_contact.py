"""Share of the heel's bottom that bears on the floor or the shim."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..floor_seat import ON_TWO_LINES, exact, share
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import PLANS


def read(case: Case) -> Reading:
    """Share (0 … 1) of the heel's bottom within the pocket that bears.

    Not applicable to a strip shim, which leaves the heel bearing on two lines only.
    """
    if case["shim.make"] == "strip":
        return Reading.absent(ON_TWO_LINES)
    value, how = share(case)
    return Reading(value=value, exact=exact(case), detail={"bears": how})


CHECK = Check(
    id="seat.contact",
    title="heel bearing on the floor",
    unit=Kind.NUMBER,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(PLANS, TOP, ("pocket.floor_fillet",)),
    read=read,
    low="limits.contact_min",
    span=0.25,
    measure="contact_share",
    consequence="The joint bends under the strings' pull, and the neck creeps.",
    mending="Clear fillets and high spots from under the heel.",
)

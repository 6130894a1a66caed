"""Share of the heel's bottom that bears on the floor or the shim."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..floor_seat import share
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import PLANS


def read(case: Case) -> Reading:
    """Share (0 … 1) of the heel's bottom within the pocket that bears.

    A strip shim leaves the heel bearing on two lines only.
    """
    value, how = share(case)
    return Reading(value=value, detail={"bears": how})


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
    consequence="The joint bends under the strings' pull, and a neck on a strip bears on two "
    "lines only and creeps.",
    mending="Use a full wedge instead of a strip, and clear fillets from under the heel.",
)

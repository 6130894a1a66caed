"""Whether the heel is flat as far as the pocket is long."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading


def read(case: Case) -> Reading:
    """Flat length of the heel beyond the pocket's length [mm]."""
    return Reading(value=case["neck.heel_length"] - case["pocket.length"])


CHECK = Check(
    id="seat.flat_length",
    title="flat heel length beyond the pocket",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=("neck.heel_length", "pocket.length"),
    read=read,
    low=0.0,
    measure="",
    consequence="The floor reaches beyond the heel's flat bottom: the neck rests on a curve and "
    "tips.",
    mending="Shorten the pocket by {short}, or choose a neck with a longer heel.",
)

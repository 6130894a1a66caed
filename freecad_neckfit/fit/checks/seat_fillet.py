"""Whether the fillet round the floor holds the heel off."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..floor_seat import exact, lift
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import PLANS


def read(case: Case) -> Reading:
    """Height [mm] by which the fillet round the floor holds the heel off; 0 where it seats."""
    return Reading(
        value=case.once(lift),
        exact=exact(case),
        applies=np.asarray(case["pocket.floor_fillet"]) > 0,
        because="the pocket's floor has no fillet",
    )


CHECK = Check(
    id="seat.fillet",
    title="heel held off by the floor's fillet",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(PLANS, TOP, ("pocket.floor_fillet",)),
    read=read,
    high=0.0,
    measure="floor_lift",
    consequence="The heel rides on the fillet: it rocks, and every height of this report is too "
    "low by as much.",
    mending="Chamfer the heel's bottom edges by the fillet's radius, or clean the fillet out; "
    "{short} too high.",
)

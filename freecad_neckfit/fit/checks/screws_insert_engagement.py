"""How far the machine screws engage their inserts."""

from __future__ import annotations

import numpy as np

from ...job.arrays import along
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from ..reads_joint import SCREW_SEATS
from ..screw_seat import screw_seat


def read(case: Case) -> Reading:
    """Least engagement in an insert flush with the heel's bottom, in screw diameters."""
    if case["screws.fixing"] != "insert":
        return Reading.absent("the neck is held by wood screws")
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    engaged = np.clip(screws.penetration, 0.0, along(case["screws.insert_length"]))
    turns = engaged / along(case["screws.shank"])
    return Reading(value=np.min(turns, axis=-1), detail={"of each screw": turns})


CHECK = Check(
    id="screws.insert_engagement",
    title="engagement in inserts in screw diameters",
    unit=Kind.NUMBER,
    gravity=Gravity.BREAKS,
    reads=together(
        SCREW_SEATS, ("screws.fixing", "screws.insert_length", "screws.shank", "limits.insert_min")
    ),
    read=read,
    low="limits.insert_min",
    span=0.25,
    measure="",
    consequence="The thread strips.",
    mending="Use a longer screw: {short} diameters are missing.",
)

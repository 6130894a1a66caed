"""Threaded length that holds in the heel."""

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
    """Least threaded length of a wood screw within the heel, in shank diameters."""
    if case["screws.fixing"] != "wood screw":
        return Reading.absent("machine screws in inserts: see their engagement")
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    grip = screws.grip / along(case["screws.shank"])
    return Reading(value=np.min(grip, axis=-1), detail={"of each screw": grip})


CHECK = Check(
    id="screws.grip",
    title="screws' grip in shank diameters",
    unit=Kind.NUMBER,
    gravity=Gravity.BREAKS,
    reads=together(
        SCREW_SEATS, ("screws.threaded", "screws.shank", "screws.fixing", "limits.grip_min")
    ),
    read=read,
    low="limits.grip_min",
    span=0.25,
    measure="",
    consequence="The threads strip out of the heel.",
    mending="Use a longer screw: {short} shank diameters are missing.",
)

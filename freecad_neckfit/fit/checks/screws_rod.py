"""Screws to the truss rod's channel."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from ..reads_joint import SCREW_SEATS
from ..screw_seat import screw_seat


def read(case: Case) -> Reading:
    """Least distance [mm] from a screw's surface to the truss rod's channel."""
    if case["neck.rod"] == "none":
        return Reading.absent("the neck has no truss rod")
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    room = screws.rod
    return Reading(value=np.min(room, axis=-1), detail={"of each screw": room})


CHECK = Check(
    id="screws.rod",
    title="screws to the truss rod's channel",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(
        SCREW_SEATS,
        (
            "screws.shank",
            "neck.rod",
            "neck.rod_width",
            "neck.rod_depth",
            "neck.rod_end",
            "limits.rod_distance_min",
        ),
    ),
    read=read,
    low="limits.rod_distance_min",
    contact=True,
    measure="screw_rod",
    consequence="A screw runs into the truss rod and locks or breaks it.",
    mending="Move the screw away from the centreline by {short}.",
)

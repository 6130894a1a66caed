"""Whether a machine screw bottoms in its hole."""

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
    """Least room [mm] past the tip; the hole passes the insert by ``limits.pilot_extra``."""
    if case["screws.fixing"] != "insert":
        return Reading.absent("the neck is held by wood screws")
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    bottom = along(case["screws.insert_length"]) + along(case["limits.pilot_extra"])
    room = bottom - screws.penetration
    return Reading(value=np.min(room, axis=-1), detail={"of each screw": room})


CHECK = Check(
    id="screws.insert_bottom",
    title="machine screw to the bottom of its hole",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(SCREW_SEATS, ("screws.fixing", "screws.insert_length", "limits.pilot_extra")),
    read=read,
    low=0.0,
    contact=True,
    measure="",
    consequence="The screw bottoms: it feels tight while the neck is loose, or pushes the insert "
    "out.",
    mending="Use a screw shorter by {short}, or a longer insert.",
)

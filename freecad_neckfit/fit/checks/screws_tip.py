"""Wood between a screw's tip and the fretboard."""

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
    """Least distance [mm] of a tip under the glue line; one piece: under the fret slots there."""
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    room = screws.tip_room
    return Reading(value=np.min(room, axis=-1), detail={"of each screw": room})


CHECK = Check(
    id="screws.tip",
    title="screw tips under the fretboard",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(
        SCREW_SEATS,
        (
            "neck.make",
            "neck.glue_line",
            "neck.height",
            "neck.radius_nut",
            "neck.radius_end",
            "neck.nut_to_heel",
            "neck.overhang",
            "limits.fret_slot_depth",
            "limits.tip_min",
            "limits.tip_wish",
        ),
    ),
    read=read,
    low="limits.tip_min",
    wish_low="limits.tip_wish",
    measure="screw_tip",
    consequence="A screw tip lifts the fretboard, a fret, or comes through it.",
    mending="Use a screw shorter by {short}: see the longest safe one.",
)

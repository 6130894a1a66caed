"""Fretboard end to the neck pickup."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..pickup_box import board_to_pickup
from ..reading import Reading
from ..reads import SEAT, TOP, together
from ..reads_joint import BINDING, BOARD, COVER, PICKUP


def read(case: Case) -> Reading:
    """Room [mm] between fretboard and neck pickup or its ring, along X or in height.

    The larger of the two counts: apart in either direction they are free. The pickup's poles are
    taken in the middle of their travel.
    """
    if not case["pickup_neck.fitted"]:
        return Reading.absent("no neck pickup is fitted")
    found = case.once(board_to_pickup)
    return Reading(
        value=found.value,
        place=(found.x, 0.0, found.z),
        detail={"measured upright": found.upright},
    )


CHECK = Check(
    id="overhang.pickup",
    title="fretboard end to neck pickup",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(SEAT, BOARD, BINDING, COVER, TOP, PICKUP),
    read=read,
    low="limits.pickup_gap_min",
    contact=True,
    measure="overhang_pickup",
    consequence="The pickup or its ring stands in the fretboard's way, or rubs on it when set "
    "higher.",
    mending="Move the pickup toward the bridge by {short}, or shorten the overhang.",
)

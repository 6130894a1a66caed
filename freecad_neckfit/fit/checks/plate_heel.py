"""Room between the cover plate's cut-out and the heel."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..plate_room import plate_room
from ..reading import Reading
from ..reads import together
from ..reads_joint import BINDING, CAVITIES, COVER, OVER_TOP


def read(case: Case) -> Reading:
    """Least plan distance [mm] from the cut-out to the heel, or to a fretboard sunk into it."""
    if not case.plate_there:
        return Reading.absent("no cover plate is fitted")
    value = plate_room(case)
    return Reading(
        value=value,
        applies=np.isfinite(value),
        because="neither heel nor fretboard reaches down to the plate",
    )


CHECK = Check(
    id="plate.heel",
    title="cover plate to heel",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(OVER_TOP, COVER, BINDING, CAVITIES),
    read=read,
    low="limits.plate_heel_min",
    contact=True,
    measure="plate_heel",
    consequence="The plate presses on the heel or the fretboard, and buckles or holds the neck "
    "off.",
    mending="Widen the plate's cut-out by {short}.",
)

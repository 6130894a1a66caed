"""How far a neck of one piece rocks on its overhang."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from .overhang_gap import CHECK as OVERHANG_GAP
from .overhang_gap import read as overhang_gap


def read(case: Case) -> Reading:
    """Angle [degrees] by which a neck of one piece tips: atan(interference/(L_p + L_o)).

    Where the fretboard is glued on, it is pried off instead; see the overhang's room.
    """
    if case["neck.make"] != "one piece":
        return Reading.absent("the fretboard is glued on: it would be pried off, not rock")
    gap = overhang_gap(case)
    over = np.maximum(-gap.value, 0.0)
    reach = case["pocket.length"] + case["neck.overhang"]
    return Reading(
        value=np.degrees(np.arctan(over / reach)),
        applies=np.asarray(gap.applies) & (over > 0),
        because="the overhang does not interfere",
        place=gap.place,
    )


CHECK = Check(
    id="overhang.rock",
    title="neck rocking on its overhang",
    unit=Kind.ANGLE,
    gravity=Gravity.TELLS,
    reads=together(OVERHANG_GAP.reads, ("neck.make", "pocket.length")),
    read=read,
    measure="",
    consequence="The heel leaves the floor at the end wall.",
)

"""Room under the fretboard beside the pocket, before the end wall."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..board_low import beside_pocket
from ..case import Case
from ..check import Check, Gravity
from ..lesser import place_of
from ..reading import Reading
from ..reads import together
from ..reads_joint import CAVITIES, COVER, OVER_TOP


def read(case: Case) -> Reading:
    """Least vertical room [mm] where the fretboard stands over top or plate before the end wall.

    At the pocket's corners, at a round end, and along the sides where it is wider than the pocket.
    A bound where the end wall leans under a curved top, whose edge is no straight line there.
    """
    found = case.once(beside_pocket)
    bent = case["body.top"] != "flat" and case["pocket.wall"] == "floor"
    return Reading(
        value=found.room,
        applies=np.isfinite(found.room),
        because="the fretboard stands nowhere over the top before the end wall",
        place=place_of(case, found),
        exact=not (bent and np.any(case.seat.floor != 0)),
    )


CHECK = Check(
    id="overhang.corner_gap",
    title="room under the fretboard beside the pocket",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(OVER_TOP, COVER, CAVITIES, ("neck.binding_width",)),
    read=read,
    low="limits.gap_min",
    contact=True,
    measure="corner_gap",
    consequence="The fretboard lands on the top or the plate beside the pocket before the heel "
    "reaches the floor: screwed down, it is pried off.",
    mending="Make the pocket shallower by {short}, clear the plate around the fretboard, or use a "
    "shim.",
)

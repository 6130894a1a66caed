"""Room between the overhang's underside and what lies under it."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..board_low import overhang_room
from ..case import Case
from ..check import Check, Excess, Gravity
from ..lesser import place_of
from ..reading import Reading
from ..reads import together
from ..reads_joint import CAVITIES, COVER, OVER_TOP


def read(case: Case) -> Reading:
    """Least vertical room [mm] under the overhang where X >= 0, over the top and over the plate.

    Over a cavity the top counts as unbroken, and the plate over its openings for pickups: what is
    routed away there may be filled, and its rim is near.
    """
    found = case.once(overhang_room)
    return Reading(
        value=found.room,
        # A fretboard that ends on a leaning heel can pass X = 0 with its end face alone.
        # What is glued to a leaning heel hangs over nothing, though it may pass X = 0 too.
        applies=(case.overhang_end[0] > 0)
        & (np.asarray(case["neck.overhang"]) > 0)
        & np.isfinite(found.room),
        because="the fretboard does not reach past the pocket's end wall",
        place=place_of(case, found),
    )


CHECK = Check(
    id="overhang.gap",
    title="room under the overhang",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(OVER_TOP, COVER, CAVITIES, ("neck.binding_width",)),
    read=read,
    low="limits.gap_min",
    high="limits.gap_max",
    contact=True,
    measure="overhang_gap",
    consequence="Tightened screws pry a glued fretboard off; a neck of one piece rocks off.",
    mending="Rout {short} shallower, cut or thin the plate, or add a shim.",
    excess=Excess(
        gravity=Gravity.UGLY,
        consequence="A gap shows under the fretboard, and gathers dirt.",
        mending="Rout {short} deeper, or run a plate under the overhang.",
    ),
)

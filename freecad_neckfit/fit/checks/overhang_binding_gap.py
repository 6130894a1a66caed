"""Room under the fretboard's binding."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..board_low import binding_room
from ..case import Case
from ..check import Check, Gravity
from ..lesser import place_of
from ..reading import Reading
from ..reads import together
from ..reads_joint import BINDING, CAVITIES, COVER, OVER_TOP


def read(case: Case) -> Reading:
    """Least vertical room [mm] of the binding over top or plate, anywhere.

    A binding hangs below the overhang's underside along its edges; over the heel it ends at the
    glue line. Cavities and openings past the end wall count as unbroken, as under the overhang.
    """
    bound = case["neck.binding_width"] > 0
    if not np.any(bound):
        return Reading.absent("the fretboard has no binding")
    found = case.once(binding_room)
    return Reading(
        value=found.room,
        applies=bound & np.isfinite(found.room),
        because="the fretboard has no binding over top or plate",
        place=place_of(case, found),
    )


CHECK = Check(
    id="overhang.binding_gap",
    title="room under the binding",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(OVER_TOP, COVER, BINDING, CAVITIES),
    read=read,
    low="limits.gap_min",
    contact=True,
    measure="binding_gap",
    consequence="The binding lands before the overhang does: it cracks off, or pries the "
    "fretboard.",
    mending="Make the pocket shallower by {short}, or trim the binding flush with the underside.",
)

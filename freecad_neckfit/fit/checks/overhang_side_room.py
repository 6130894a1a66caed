"""Room beside a fretboard that sinks below the top or the plate."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..lesser import place_of
from ..reading import Reading
from ..reads import together
from ..reads_joint import BINDING, CAVITIES, COVER, OVER_TOP
from ..sunk import around_board


def read(case: Case) -> Reading:
    """Least plan room [mm] from the fretboard's sides to those of the pocket and the cut-out.

    Only where its lower edge lies below the finished top or the plate's top; neck centred. Its
    end, and what stands over the pocket's corners, is told by the rooms in height.
    """
    found = case.once(around_board)
    return Reading(
        value=found.value,
        applies=np.isfinite(found.value),
        because="the fretboard nowhere sinks below the top or the plate",
        place=place_of(case, found),
    )


CHECK = Check(
    id="overhang.side_room",
    title="room around a sunk fretboard",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(OVER_TOP, COVER, BINDING, CAVITIES),
    read=read,
    low=0.0,
    contact=True,
    measure="overhang_side",
    consequence="The fretboard does not go down between the edges beside it: it bears on them "
    "instead of the heel on the floor.",
    mending="Widen the pocket or the plate's cut-out by {short}, or keep the fretboard above them.",
)

"""Whether the screws pass freely through the body."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading


def read(case: Case) -> Reading:
    """Body hole less shank [mm], less what the position error needs beyond the least clearance.

    So it meets its limit if the hole is wide enough over the shank, and half of what is over
    takes up the position error.
    """
    over = case["screws.body_hole"] - case["screws.shank"]
    needed = 2 * case["screws.position_error"] - case["limits.hole_clearance_min"]
    return Reading(value=over - np.maximum(needed, 0.0), detail={"hole over shank": over})


CHECK = Check(
    id="screws.hole",
    title="body holes over the screws' shanks",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=(
        "screws.body_hole",
        "screws.shank",
        "screws.position_error",
        "limits.hole_clearance_min",
    ),
    read=read,
    low="limits.hole_clearance_min",
    measure="",
    consequence="The screws bite in the body and jack the neck off its floor instead of pulling "
    "it down.",
    mending="Drill the body's holes wider by {short}.",
)

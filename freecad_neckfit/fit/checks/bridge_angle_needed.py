"""The pocket angle that this bridge needs at this depth."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..angle_window import height_window
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, TRAVEL, together


def read(case: Case) -> Reading:
    """Distance [degrees] of the pocket's angle to those that suit the saddles' height travel.

    0 where the angle suits. Where the least suitable angle lies over the largest, no angle
    does: the saddles' travel is too short for how far apart the strings lie.
    """
    least, largest = height_window(case)
    angle = case["pocket.angle"]
    return Reading(
        value=np.maximum(np.maximum(least - angle, angle - largest), 0.0),
        known=np.isfinite(least) & np.isfinite(largest),
        unknown_because="no pocket angle within 30° brings the strings to the end of the travel",
        detail={
            "least angle at this depth": least,
            "largest angle at this depth": largest,
            "some angle does": least <= largest,
        },
    )


CHECK = Check(
    id="bridge.angle_needed",
    title="pocket angle short of what the bridge needs at this depth",
    unit=Kind.ANGLE,
    gravity=Gravity.TELLS,
    reads=together(SADDLES, TRAVEL),
    read=read,
    measure="",
    consequence="At this depth the bridge suits only a pocket that is tipped otherwise.",
    mending="Tip the pocket's floor, or put in a wedge, by {short}; or change the depth.",
)

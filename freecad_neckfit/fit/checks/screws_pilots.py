"""Old pilot holes in the heel that the new ones cut into."""

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
    """Least wood [mm] between an old pilot hole and a new one, both as wide as the shank.

    An old hole within the position error of a new one is used again.
    """
    if np.shape(case["old_pilot.x"])[-1] == 0:
        return Reading.absent("the heel has no old pilot holes")
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    least = np.min(screws.old_pilots, axis=-1)
    return Reading(
        value=least,
        applies=np.isfinite(least),
        because="every old pilot hole is used again",
        detail={"of each old pilot hole": screws.old_pilots},
    )


CHECK = Check(
    id="screws.pilots",
    title="wood between old and new pilot holes",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(
        SCREW_SEATS, ("old_pilot.x", "old_pilot.y", "screws.shank", "screws.position_error")
    ),
    read=read,
    low=0.0,
    measure="",
    consequence="The drill wanders into the old hole and the screw does not hold.",
    mending="Plug the old holes first.",
)

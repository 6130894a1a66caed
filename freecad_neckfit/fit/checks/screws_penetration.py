"""How deep the screws reach into the heel."""

from __future__ import annotations

import numpy as np

from ...job.arrays import along
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads_joint import SCREW_SEATS
from ..screw_seat import screw_seat


def read(case: Case) -> Reading:
    """Least depth [mm] of a screw in the heel: length - (heel bottom - head seat), along Z.

    The neck's pilot holes are deeper by ``limits.pilot_extra``.
    """
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    deep = screws.penetration
    pilots = deep + along(case["limits.pilot_extra"])
    return Reading(
        value=np.min(deep, axis=-1),
        detail={"of each screw": deep, "depth of the neck's pilot holes": pilots},
    )


CHECK = Check(
    id="screws.penetration",
    title="screws into the heel",
    unit=Kind.LENGTH,
    gravity=Gravity.TELLS,
    reads=SCREW_SEATS,
    read=read,
    measure="screw_penetration",
    consequence="Set the depth stop of the neck's pilot holes by this.",
)

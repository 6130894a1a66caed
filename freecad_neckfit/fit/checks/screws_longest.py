"""The longest stocked screw that is safe."""

from __future__ import annotations

import numpy as np

from ...job.arrays import along
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from ..reads_joint import SCREW_SEATS
from ..screw_seat import screw_seat
from ..strings import is_few


def read(case: Case) -> Reading:
    """Longest stocked length [mm] whose tip stays ``limits.tip_min`` under the fretboard."""
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    stock, most = case["screws.lengths_stocked"], screws.longest
    safe = stock <= along(most) + 1e-9
    detail = {}
    if is_few((most,)):
        longer = np.min(np.where(safe, np.inf, stock), axis=-1)
        detail = {"longest length that is safe": most, "next stocked length, too long": longer}
    return Reading(
        value=np.max(np.where(safe, stock, 0.0), axis=-1),
        applies=safe.any(axis=-1),
        because="every stocked length is too long",
        detail=detail,
    )


CHECK = Check(
    id="screws.longest",
    title="longest safe screw in stock",
    unit=Kind.LENGTH,
    gravity=Gravity.TELLS,
    reads=together(
        SCREW_SEATS,
        (
            "screws.lengths_stocked",
            "neck.make",
            "neck.glue_line",
            "neck.height",
            "neck.radius_nut",
            "neck.radius_end",
            "neck.nut_to_heel",
            "neck.overhang",
            "limits.tip_min",
        ),
    ),
    read=read,
    measure="",
    consequence="A deeper pocket pushes the same screw deeper.",
)

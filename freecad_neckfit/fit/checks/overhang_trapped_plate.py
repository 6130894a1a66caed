"""A cover plate that the overhang holds down."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SEAT, together
from ..reads_joint import BOARD, COVER


def read(case: Case) -> Reading:
    """How far [mm] the overhang reaches over the plate: it then comes off only after the neck."""
    if not case.plate_under_overhang:
        return Reading.absent("no cover plate lies under the overhang")
    x, z = case.overhang_end
    over = x - case["plate.clearance"]
    return Reading(
        value=over,
        applies=over > 0,
        because="the overhang does not reach the plate",
        place=(x, 0.0, z),
    )


CHECK = Check(
    id="overhang.trapped_plate",
    title="cover plate under the overhang",
    unit=Kind.LENGTH,
    gravity=Gravity.TELLS,
    reads=together(SEAT, BOARD, COVER),
    read=read,
    measure="",
    consequence="The plate cannot come off before the neck does.",
)

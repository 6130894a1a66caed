"""Room between the overhang's underside and what lies under it."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..overhang import room_over_wood_and_plate
from ..reading import Reading


def read(case: Case) -> Reading:
    """Least vertical room [mm] under the overhang where X >= 0, on the centreline.

    Every top is highest on the centreline, so the least room lies there.
    """
    height = case["neck.underside"]
    gap, x = room_over_wood_and_plate(case, y=0.0, z=height)
    big_x, big_z = case.seat.to_body(x=x, z=height)
    return Reading(
        value=gap,
        applies=case.overhang_end[0] > 0,
        because="the fretboard does not reach past the pocket's end wall",
        place=(big_x, 0.0, big_z),
    )


CHECK = Check(
    id="overhang.gap",
    title="room under the overhang",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=(
        "pocket.depth", "pocket.angle", "pocket.wall", "neck.underside", "neck.overhang",
        "seat.end_gap", "plate.cover", "plate.under_overhang", "plate.thickness",
        "plate.clearance", "finish.top", "finish.floor", "finish.wall", "body.top",
    ),
    read=read,
    low="limits.gap_min",
    high="limits.gap_max",
    contact=True,
    measure="overhang_gap",
    consequence="Tightening the screws pries a glued fretboard off the neck; a neck of one piece "
    "rocks off the floor instead. A wide gap is merely ugly.",
    mending="Change the pocket's depth by {short}, take the plate from under the overhang, use a "
    "thinner plate or a shim, or shorten the overhang.",
)

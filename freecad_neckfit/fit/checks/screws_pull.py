"""Whether the screws hold the strings' pull (an engineering estimate)."""

from __future__ import annotations

import numpy as np

from ...job.arrays import along
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SCALE, together
from ..reads_joint import SCREW_SEATS
from ..screw_seat import screw_seat
from ..withdrawal import capacity, pull


def read(case: Case) -> Reading:
    """Least capacity / (safety · pull) of a screw: an engineering estimate.

    Pull M·x/Σx² with M the strings' pull times its lever, x from the heel end; capacity of wood
    screws in side grain per the Wood Handbook.
    """
    if case["screws.fixing"] != "wood screw":
        return Reading.absent("no published figure for threaded inserts")
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    needed, holds = pull(case), capacity(case)
    spare = holds / np.maximum(needed * along(case["limits.pull_safety"]), 1e-9)
    return Reading(
        value=np.min(spare, axis=-1),
        known=np.isfinite(spare).all(axis=-1),
        unknown_because=f"no specific gravity is known for {case['wood.neck']}",
        detail={
            "engineering estimate": True,
            "pull on each screw in N": needed,
            "withdrawal capacity of each in N": holds,
        },
    )


CHECK = Check(
    id="screws.pull",
    title="withdrawal capacity over need, screws",
    unit=Kind.NUMBER,
    gravity=Gravity.BREAKS,
    reads=together(
        SCREW_SEATS,
        SCALE,
        (
            "screws.threaded",
            "screws.shank",
            "screws.fixing",
            "wood.neck",
            "strings.pitch",
            "strings.mass",
            "neck.height",
            "neck.fret_height",
            "strings.action_treble",
            "strings.action_bass",
            "limits.pull_safety",
        ),
    ),
    read=read,
    low=1.0,
    span=0.25,
    measure="",
    consequence="By an engineering estimate the screws near the mouth may pull out.",
    mending="Use longer or thicker screws, or set them farther from the heel end.",
)

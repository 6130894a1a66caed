"""Whether a tool reaches a truss rod adjusted at the heel."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from ..reads_joint import BINDING, CAVITIES, COVER, OVER_TOP, PICKUP
from ..rod_tool import tool_room
from ..sides import place


def read(case: Case) -> Reading:
    """Least height [mm] of the tool's path over top, plate and neck pickup past the wall."""
    if case["neck.rod"] != "heel":
        return Reading.absent("no truss rod is adjusted at the heel")
    found = case.once(tool_room)
    return Reading(
        value=found.room,
        applies=np.isfinite(found.room),
        because="the tool's path ends before the end wall",
        place=place(case, found, y=0.0),
    )


CHECK = Check(
    id="rod.access",
    title="tool to the truss rod",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(
        OVER_TOP,
        COVER,
        BINDING,
        PICKUP,
        CAVITIES,
        ("neck.rod", "neck.rod_tool", "neck.rod_tool_height", "neck.rod_tool_length"),
    ),
    read=read,
    low=0.0,
    contact=True,
    measure="rod_access",
    consequence="The rod can be adjusted only with the neck taken off.",
    mending="Cut a channel {short} deep for the tool, or raise its path.",
)

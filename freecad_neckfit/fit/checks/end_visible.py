"""The gap seen at the top between heel end and end wall."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..opened import end_wall_there
from ..reading import Reading
from ..reads import SEAT, TOP, together
from ..reads_joint import CAVITIES

SAME = 1e-6
"""An end that reaches so near to the top [mm] is seen."""


def read(case: Case) -> Reading:
    """Plan distance [mm] on the centreline at the top (Z = 0): heel end to finished end wall.

    Not applicable where the cavity of a pickup that stands too near takes the end wall away.
    """
    seated = case.seated
    z = -seated.z0 / seated.cos
    big_x = seated.x0 - z * seated.sin
    reaches, wall = z <= case["neck.glue_line"] + SAME, end_wall_there(case)
    return Reading(
        value=-case["finish.wall"] - big_x,
        applies=reaches & wall,
        because="the heel ends below the top: the fretboard covers its end"
        if np.all(wall)
        else "no end wall is left on the centreline: a cavity takes it away",
        place=(big_x, 0.0, 0.0),
    )


CHECK = Check(
    id="end.visible",
    title="gap seen at the end wall",
    unit=Kind.LENGTH,
    gravity=Gravity.UGLY,
    reads=together(SEAT, TOP, CAVITIES, ("neck.glue_line", "neck.heel_edge")),
    read=read,
    high="limits.end_visible_max",
    measure="end_visible",
    consequence="An open gap behind the heel.",
    mending="Route the end wall square to the floor, or use less angle or end gap; {short} too "
    "much.",
)

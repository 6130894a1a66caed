"""Whether the heel's corners enter the pocket's."""

from __future__ import annotations

import numpy as np

from ...job.arrays import Array
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..opened import end_wall_there
from ..outline import heel_outline
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import CAVITIES, PLANS
from ..sides import pocket_corner
from ..strings import is_few


def read(case: Case) -> Reading:
    """Least room [mm] between the heel's corner and the pocket's corner, end and side around it.

    For both corners rounded (r_p, r_h), with room e at the end and c at the side, and no taper:
    r_p - r_h - hypot(r_p - r_h - e, r_p - r_h - c), as long as both terms are positive.
    """
    if case["pocket.end_shape"] == "round":
        return Reading.absent("a round pocket has no corners: see the end clearance")
    room = case.once(pocket_corner)
    return Reading(
        value=room,
        applies=end_wall_there(case),
        because="no end wall is left on the centreline: a cavity takes it away",
        place=_place(case) if is_few((room,)) else None,
    )


def _place(case: Case) -> tuple[Array, Array, Array]:
    heel = case.once(heel_outline)
    x = np.minimum(heel.arc_x, heel.meet) if case["neck.heel_end"] == "square" else heel.meet
    big_x, big_z = case.seated.to_body(x=x, z=case["neck.heel_edge"])
    return big_x, case.treble_sign * heel.side(x), big_z


CHECK = Check(
    id="corner.entry",
    title="heel corners in the pocket's corners",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(PLANS, TOP, CAVITIES),
    read=read,
    low=0.0,
    contact=True,
    measure="corner_entry",
    consequence="The heel rides on the pocket's rounded corners and neither reaches the end wall "
    "nor the floor.",
    mending="Round the heel's corners more, square the pocket's out, or leave more clearance; "
    "{short} are missing.",
)

"""Wood between the pocket and the cutaway, bass side."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..outline import pocket_side
from ..reading import Reading
from ..wood_left import wall


def read(case: Case) -> Reading:
    """Least wood [mm] beside the pocket, square to its side, in an outline of known walls."""
    if case["body.outline"] not in ("own", "section"):
        return Reading.absent("only solids can tell the wall of an outline that is given")
    wood, x = wall(case, side="bass")
    half, taper = pocket_side(case)
    return Reading(
        value=wood,
        applies=np.isfinite(wood),
        because="the cutaway does not reach beside the pocket",
        place=(x, -case.treble_sign * (half + taper * x), 0.0),
    )


CHECK = Check(
    id="wood.wall_bass",
    title="wood between pocket and cutaway, bass",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=(
        "body.outline",
        "body.block_bass",
        "body.cutaway_bass",
        "pocket.width_end",
        "pocket.width_mouth",
        "pocket.length",
        "limits.wall_min",
    ),
    read=read,
    low="limits.wall_min",
    measure="wall_bass",
    exact=False,
    consequence="The thin wall beside the pocket breaks out when the neck is knocked.",
    mending="Move the cutaway's wall out by {short}.",
)

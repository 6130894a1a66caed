"""Wood between the pocket and a cutaway: each side has its own."""

from __future__ import annotations

import numpy as np

from ..job.quantity import Kind
from .case import Case
from .check import Check, Gravity
from .outline import pocket_side
from .reading import Reading
from .wood_left import wall


def wall_check(side: str, *, sign: float) -> Check:
    """Give the check of one ``side``; ``sign`` is 1 toward the treble, -1 toward the bass."""

    def read(case: Case) -> Reading:
        """Least wood [mm] beside the pocket, square to its side, in an outline of known walls."""
        if case["body.outline"] not in ("own", "section"):
            return Reading.absent("only solids can tell the wall of an outline that is given")
        wood, x = wall(case, side=side)
        half, taper = pocket_side(case)
        return Reading(
            value=wood,
            applies=np.isfinite(wood),
            because="the cutaway does not reach beside the pocket",
            place=(x, sign * case.treble_sign * (half + taper * x), 0.0),
        )

    return Check(
        id=f"wood.wall_{side}",
        title=f"wood between pocket and cutaway, {side}",
        unit=Kind.LENGTH,
        gravity=Gravity.BREAKS,
        reads=(
            "body.outline",
            f"body.block_{side}",
            f"body.cutaway_{side}",
            "pocket.width_end",
            "pocket.width_mouth",
            "pocket.length",
            "limits.wall_min",
        ),
        read=read,
        low="limits.wall_min",
        measure=f"wall_{side}",
        exact=False,
        consequence="The thin wall beside the pocket breaks out when the neck is knocked.",
        mending="Move the cutaway's wall out by {short}.",
    )

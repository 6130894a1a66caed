"""Wood between the pocket and the nearest cavity."""

from __future__ import annotations

import numpy as np

from ...job.parameters import ROLES
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from ..wood_left import pickup_webs, webs


def read(case: Case) -> Reading:
    """Least plan distance [mm] from the pocket to a cavity or to a pickup set into the body.

    Negative where they overlap.
    """
    apart = webs(case)
    least = np.min(apart, axis=-1, initial=np.inf)
    for front in pickup_webs(case):
        least = np.minimum(least, front)
    return Reading(
        value=least,
        applies=np.isfinite(least),
        because="the body has no cavity",
        detail={"of each cavity": apart},
    )


CHECK = Check(
    id="wood.web",
    title="wood between pocket and cavity",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=together(
        ("cavity.x", "cavity.y", "cavity.length", "cavity.width", "limits.web_min"),
        ("pocket.width_end", "pocket.width_mouth", "pocket.length"),
        tuple(
            f"pickup_{role}.{name}"
            for role in ROLES
            for name in ("fitted", "x", "length", "cavity_depth")
        ),
    ),
    read=read,
    low="limits.web_min",
    measure="web",
    exact=False,
    consequence="The web breaks out, and the end wall with it.",
    mending="Move the cavity away from the pocket by {short}.",
)

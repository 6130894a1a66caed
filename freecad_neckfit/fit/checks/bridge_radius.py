"""Fixed radius: the strings between the outer ones against the radius of the saddles."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, together
from ..strings import is_few, least, per_string, place_of_least


def read(case: Case) -> Reading:
    """Largest action error [mm] at fret 12: half the height that a middle string misses.

    Both posts are solved from the outer strings, which are then right; fret 12 lies midway.
    """
    if case["bridge.make"] != "fixed radius":
        return Reading.absent("the saddles are set one by one")
    nearness = tuple(-np.abs(residual) for residual in case.bridge.residuals)
    detail = {}
    if is_few(nearness):
        # Positive where the string asks for more height than the radius gives.
        detail = {"action too low by": per_string(case.bridge.residuals) / 2}
    return Reading(
        value=-least(nearness) / 2,
        place=place_of_least(nearness, case.saddles.places),
        detail=detail,
    )


CHECK = Check(
    id="bridge.radius",
    title="action error of the middle strings on a fixed radius",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(SADDLES, ("bridge.make", "bridge.saddle_radius")),
    read=read,
    high="limits.radius_error_max",
    span=0.2,
    measure="",
    consequence="The middle strings lie off the action of the outer ones by more than is liked.",
    mending="Choose saddles whose radius lies nearer to that of the crowns at the bridge; the "
    "error is too large by {short}.",
)

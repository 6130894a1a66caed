"""Screw axis to the heel's edge."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import together
from ..reads_joint import PLANS, SCREW_SEATS
from ..screw_seat import screw_seat


def read(case: Case) -> Reading:
    """Least distance of a screw's axis to the heel's edge all round, in shank diameters."""
    screws = case.once(screw_seat)
    if screws.count == 0:
        return Reading.absent("no neck screws are stated")
    edge = screws.edge
    return Reading(
        value=np.min(edge, axis=-1) / case["screws.shank"],
        detail={"of each screw in mm": edge},
    )


CHECK = Check(
    id="screws.edge",
    title="screws to the heel's edge in shank diameters",
    unit=Kind.NUMBER,
    gravity=Gravity.BREAKS,
    reads=together(
        SCREW_SEATS, PLANS, ("screws.shank", "neck.heel_length", "limits.edge_distance_min")
    ),
    read=read,
    low="limits.edge_distance_min",
    span=0.25,
    measure="screw_edge",
    consequence="The heel splits at its edge.",
    mending="Move the screws inward by {short} shank diameters.",
)

"""How the heel's bottom lies on the pocket's floor, or on the shim."""

from __future__ import annotations

import numpy as np

from .context import Context
from .facets import Facets
from .measured import Measured
from .overlay import overlay

ON_TWO_LINES = "a strip shim bears on two lines only, at its edge and at the pocket's mouth"
BEARS = 0.01
"""Faces closer than this [mm] all over bear on each other."""


def contact_share(context: Context) -> Measured:
    """Share (0 to 1) of the heel's bottom within the pocket that bears on floor or shim.

    The finish on the floor carries. Two plane faces bear where they lie within ``BEARS`` all over
    their common part; faces that meet in a line bear on nothing. Not applicable to a strip shim.
    """
    if context.has("shim") and context.values["shim.make"] == "strip":
        return Measured.absent(ON_TWO_LINES)
    bottom = _bottom(context)
    floor = context.facets("body", context.body_faces.floor)
    within = overlay(bottom, floor)
    whole = float(within.area.sum())
    if whole <= 0:
        return Measured.unknown("the heel's bottom does not lie over the pocket's floor")
    if context.has("shim"):
        support = context.facets("shim").facing(axis=2, sign=1, least=0.5)
        found, finish = overlay(bottom, support), 0.0
    else:
        found, finish = within, _floor_finish(context)
    off = np.where(found.valid, np.abs(found.gap - finish), 0.0).max(axis=1)
    share = float(found.area[off <= BEARS].sum()) / whole
    lift = context.lift
    if lift.applies and lift.value > BEARS:
        return Measured(0.0, lift.place, detail={"held off by": lift.value})
    return Measured(min(share, 1.0), detail={"area of the heel in the pocket": whole})


def floor_lift(context: Context) -> Measured:
    """Height [mm, along Z] by which a fillet holds the heel off; 0 where it seats."""
    return context.lift


def _bottom(context: Context) -> Facets:
    return context.facets("heel").of_faces(context.frame.bottom)


def _floor_finish(context: Context) -> float:
    """Thickness of the floor's finish along Z [mm]: it lies square to the floor."""
    floor = context.facets("body", context.body_faces.floor)
    return float(context.values["finish.floor"]) / float(floor.normal[0, 2])

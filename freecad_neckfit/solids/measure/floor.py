"""How the heel's bottom lies on the pocket's floor, or on the shim."""

from __future__ import annotations

from typing import Any

import numpy as np

from .context import Context
from .facets import Facets, joined
from .fillet_rise import highest, rise_of
from .measured import Measured, Place
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
    lift = floor_lift(context)
    if lift.applies and lift.value > BEARS:
        return Measured(0.0, lift.place, detail={"held off by": lift.value})
    return Measured(min(share, 1.0), detail={"area of the heel in the pocket": whole})


def floor_lift(context: Context) -> Measured:
    """Height [mm, along Z] by which a fillet or a high spot holds the heel off; 0 where it seats.

    As placed, the heel lies on the floor; where a fillet stands higher than the heel it would
    have to be lifted by as much.
    """
    faces = sorted(context.body_faces.fillets)
    if not faces:
        return Measured.absent("the pocket's floor has no fillet")
    rises = {f: rise_of(context.faces("body")[f]) for f in faces}
    found = [_over_others(context, [f for f in faces if rises[f] is None])]
    found.append(highest([r for r in rises.values() if r], _lower_edges(context)))
    most = max((f for f in found if f is not None), key=lambda f: f[0], default=None)
    if most is None or most[0] <= 0:
        return Measured(0.0)
    return Measured(*most)


def _over_others(context: Context, faces: list[int]) -> tuple[float, Place] | None:
    """Most that fillets on a tilted floor stand over heel and shim, by their triangles."""
    lower = joined([context.facets(n).facing(axis=2, sign=-1) for n in _lower_parts(context)])
    spots = context.facets("body", faces).facing(axis=2, sign=1)
    found = overlay(lower, spots).least() if len(spots) else None
    return None if found is None else (-found[0], found[1])


def _lower_parts(context: Context) -> list[str]:
    return ["heel", "shim"] if context.has("shim") else ["heel"]


def _lower_edges(context: Context) -> list[Any]:
    """Edges of the faces of heel and shim that look down."""
    found: list[Any] = []
    for name in _lower_parts(context):
        facets = context.facets(name).facing(axis=2, sign=-1)
        for face in sorted(set(facets.face.tolist())):
            found += context.faces(name)[face].Edges
    return found


def _bottom(context: Context) -> Facets:
    return context.facets("heel").of_faces(context.frame.bottom)


def _floor_finish(context: Context) -> float:
    """Thickness of the floor's finish along Z [mm]: it lies square to the floor."""
    floor = context.facets("body", context.body_faces.floor)
    return float(context.values["finish.floor"]) / float(floor.normal[0, 2])

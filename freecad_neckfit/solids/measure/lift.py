"""How high the fillets round the pocket's floor hold the heel off."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from .facets import joined
from .fillet_rise import highest, rise_of
from .measured import Measured, Place
from .overlay import overlay

if TYPE_CHECKING:
    from .context import Context


def read_lift(context: Context) -> Measured:
    """Height [mm, along Z] by which a fillet holds the heel off; 0 where it seats.

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

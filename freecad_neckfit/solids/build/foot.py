"""The fillet along the foot of the pocket's walls, on the cutter that is rounded there."""

from __future__ import annotations

from typing import Any

from ...job.errors import CannotBuild, KernelFailure
from ...job.resolve import Values
from .floor import floor_height
from .shapes import Solid

FOOT = "floor fillet"
"""What a refusal calls it."""


def with_foot(v: Values, cutter: Solid, *, far: float) -> Solid:
    """``cutter`` with all edges of its floor rounded, but for the one at x = ``far``."""
    edges = [e for e in foot_of(v, cutter) if not all(abs(p.X - far) < 1e-6 for p in e.Vertexes)]
    return filleted(cutter, float(v["pocket.floor_fillet"]), edges, what=FOOT)


def foot_of(v: Values, solid: Solid) -> list[Any]:
    """Edges that lie in the floor."""
    return [
        edge
        for edge in solid.Edges
        if all(abs(p.Z - floor_height(v, p.X)) < 1e-6 for p in edge.Vertexes)
    ]


def filleted(solid: Solid, radius: float, edges: list[Any], *, what: str) -> Solid:
    """``solid`` with a round of ``radius`` [mm] along ``edges``; ``what`` names it in a refusal."""
    try:
        result = solid.makeFillet(radius, edges)
    except Exception as failure:
        raise CannotBuild(
            f"pocket: its {what} of radius {radius:.2f} mm does not fit; make the radius smaller."
        ) from failure
    if len(result.Solids) != 1 or not result.isValid():
        raise not_valid(what)
    return result.Solids[0]


def not_valid(what: str) -> KernelFailure:
    """The failure of the kernel to round the pocket's ``what``."""
    return KernelFailure(f"pocket: the kernel gave no valid solid with its {what}.")

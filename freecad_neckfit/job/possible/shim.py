"""The shim between floor and heel."""

from __future__ import annotations

from collections.abc import Iterator

from ..frames import seat
from ..resolve import Values
from .plan import heel_plan
from .words import mm

THINNEST = 0.02
"""Thinnest shim [mm]: thinner ones are paper's coating."""


def complaints(v: Values) -> Iterator[str]:
    """Say why the shim cannot lie under the heel."""
    if v["shim.make"] == "wedge":
        thick = max(float(v["shim.wall"]), float(v["shim.mouth"]))
        yield from _thin(v, "shim.wall", thick)
    elif v["shim.make"] == "strip":
        thick = float(v["shim.strip"])
        yield from _thin(v, "shim.strip", thick)
        yield from _strip(v)
    else:
        return
    plan = heel_plan(v)
    if plan.half_width(-plan.length - float(v["pocket.length"])) <= 0:
        yield (
            "neck.heel_width_mouth: the heel closes too fast toward the mouth for a shim under it; "
            "bring it closer to neck.heel_width_end."
        )


def _thin(v: Values, key: str, thick: float) -> Iterator[str]:
    if thick < THINNEST:
        yield (
            f"{key}: {thick:.4f} mm is no shim; make it at least {mm(v, THINNEST)}, or state "
            'shim.make = "none".'
        )


def _strip(v: Values) -> Iterator[str]:
    edge, length = float(v["shim.strip_edge"]), float(v["pocket.length"])
    if edge > length - 1.0:
        yield (
            f"shim.strip_edge: {mm(v, edge)} reaches to the pocket's mouth at {mm(v, length)} or "
            "past "
            "it; make it smaller."
        )
        return
    found, plan = seat(v), heel_plan(v)
    # The strip needs some straight heel over it: a corner's round or a round end lies before.
    before = -float(found.x0) + (
        plan.corner if plan.radius is None else _bulge(plan.half, plan.radius)
    )
    if edge < before + 1.0:
        yield (
            f"shim.strip_edge: a strip up to {mm(v, edge)} from the end wall hardly lies under the "
            f"heel, which is straight from {mm(v, before)} on; make it wider."
        )


def _bulge(half: float, radius: float) -> float:
    """Depth [mm] of a round end."""
    return float(radius - (radius**2 - half**2) ** 0.5) if radius > half else half

"""The fretboard's low faces over wood and plate: beside the pocket, and its binding."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, pick, within
from ..job.top import x_of_slope
from .board_edge import (
    Level,
    Spot,
    cutout_outline,
    least_over_edge,
    level,
    over,
    top_outline,
)
from .lesser import lesser

if TYPE_CHECKING:
    from .case import Case


def levels(case: Case) -> tuple[Level, ...]:
    """The fretboard's downward faces: the glue line over the heel, then the underside."""
    return _levels(case, drop=0.0)


def bound_levels(case: Case) -> tuple[Level, ...]:
    """The lowest faces with the binding, which hangs below the underside past the heel."""
    bound = case["neck.binding_width"] > 0
    return _levels(case, drop=np.where(bound, case["neck.binding"], 0.0) if np.any(bound) else 0.0)


def _levels(case: Case, *, drop: Array) -> tuple[Level, ...]:
    end = case["neck.overhang"]
    glue, under = case["neck.glue_line"], case["neck.underside"] - drop
    if np.array_equal(glue, under):
        return (level(case, z=glue, first=-case["neck.nut_to_heel"], last=end),)
    return case.once(_over_heel), level(case, z=under, first=np.zeros(()), last=end)


def _over_heel(case: Case) -> Level:
    nut = -case["neck.nut_to_heel"]
    return level(case, z=case["neck.glue_line"], first=nut, last=np.zeros(()))


def _overhang(case: Case) -> Level:
    """The overhang's underside, without its binding."""
    return case.once(levels)[-1]


def overhang_room(case: Case) -> Spot:
    """Least room [mm] under the overhang past the end wall (X >= 0).

    Every top is highest on the centreline, so the least room lies there, but for a plate that
    reaches over X = 0 beside its cut-out, under the fretboard's corners.
    """
    past = case.once(_overhang)
    found = _along(case, past, start=0.0, y=0.0, plate=0.0)
    if not case.plate_under_overhang:
        return found
    thickness, clearance = case["plate.thickness"], case["plate.clearance"]
    found = lesser(found, _along(case, past, start=clearance, y=0.0, plate=thickness))
    corners = least_over_edge(
        case, level=past._replace(low=np.maximum(past.low, 0.0)),
        outline=case.once(cutout_outline), until=clearance, plate=thickness,
    )  # fmt: skip
    return lesser(found, corners)


def beside_pocket(case: Case) -> Spot:
    """Least room [mm] before the end wall (X < 0) where the fretboard is wider than the pocket."""
    best: Spot | None = None
    for low in case.once(levels):
        wood = least_over_edge(
            case, level=low, outline=case.once(top_outline), until=0.0, plate=0.0
        )
        best = lesser(best, wood)
        if case.plate_under_overhang:
            best = lesser(best, least_over_edge(
                case, level=low, outline=case.once(cutout_outline), until=0.0,
                plate=case["plate.thickness"],
            ))  # fmt: skip
    assert best is not None  # noqa: S101  (a fretboard has a level)
    return best


def binding_room(case: Case) -> Spot:
    """Least room [mm] of the binding's strips over wood and plate."""
    width = case["neck.binding_width"]
    best: Spot | None = None
    for low in case.once(bound_levels):
        best = lesser(best, least_over_edge(
            case, level=low, outline=case.once(top_outline), until=0.0, plate=0.0, inner=width
        ))  # fmt: skip
        best = lesser(best, _strip_past(case, low, start=0.0, plate=0.0))
        if case.plate_under_overhang:
            thickness, clearance = case["plate.thickness"], case["plate.clearance"]
            best = lesser(best, least_over_edge(
                case, level=low, outline=case.once(cutout_outline), until=clearance,
                plate=thickness, inner=width,
            ))  # fmt: skip
            best = lesser(best, _strip_past(case, low, start=clearance, plate=thickness))
    assert best is not None  # noqa: S101  (a fretboard has a level)
    return best


def _strip_past(case: Case, low: Level, *, start: Array, plate: Array) -> Spot:
    """Least room of the strip's inner edge for X from ``start`` on."""
    y = low.edge.at(start) - case["neck.binding_width"]
    return _along(case, low, start=start, y=y, plate=plate)


def _along(case: Case, low: Level, *, start: Array, y: Array, plate: Array) -> Spot:
    """Least room along a line at ``y`` for X from ``start`` on; infinite if the level ends before.

    Every top is concave along X, so the height over it is convex: over a flat top it is least at
    an end, over a curved one where the top runs parallel to the neck, or at the end nearest.
    """
    first = np.maximum(low.low, start)
    last = np.maximum(first, low.high)
    if case["body.top"] == "flat":
        x = pick(case.seat.tilt >= 0, first, last)
    else:
        x = within(x_of_slope(case.values, slope=case.seated.tan, y=y), first, last)
    return over(case, low, x, y, plate, there=first < low.high)

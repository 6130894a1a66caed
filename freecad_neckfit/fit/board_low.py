"""The fretboard's low faces over wood and plate: beside the pocket, and its binding."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, pick, within
from ..job.top import x_of_slope
from .board_edge import (
    Edge,
    Level,
    Spot,
    cutout_outline,
    least_over_edge,
    level,
    over,
    top_outline,
)
from .cutout import clear_half
from .lesser import lesser
from .mount import bare_top
from .opened import cut_out_ends, into_cut_out, uncut

if TYPE_CHECKING:
    from .case import Case

CENTRE = Edge(0.0, 0.0)
"""The centreline."""


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
    """The overhang's underside past the heel's end, without its binding.

    What is glued to the heel hangs over nothing, though it may be level with the overhang.
    """
    return level(case, z=case["neck.underside"], first=np.zeros(()), last=case["neck.overhang"])


def overhang_room(case: Case) -> Spot:
    """Least room [mm] under the overhang past the end wall (X >= 0).

    Every top is highest on the centreline, so the least room lies there, but for a plate that
    reaches over X = 0 beside its cut-out, under the fretboard's corners.
    """
    past = case.once(_overhang)
    found = _along(case, past, start=0.0, line=CENTRE, plate=0.0)
    if not case.plate_there:
        return found
    if case.plate_under_overhang:
        thickness, start = case["plate.thickness"], plate_from(case)
        over_end = _along(case, past, start=start, line=CENTRE, plate=thickness)
        found = lesser(found, over_end)
    corners = past._replace(low=np.maximum(past.low, 0.0))
    return lesser(found, _over_plate(case, corners))


def beside_pocket(case: Case) -> Spot:
    """Least room [mm] before the end wall (X < 0) where the fretboard is wider than the pocket."""
    best: Spot | None = None
    for low in case.once(levels):
        until = uncut(case, low.edge, wood=True)
        wood = least_over_edge(
            case, level=low, outline=case.once(top_outline), until=until, plate=0.0
        )
        best = lesser(best, wood)
        if case.plate_there:
            until = uncut(case, low.edge, wood=False)
            best = lesser(best, _over_plate(case, low, before=until))
    assert best is not None  # noqa: S101  (a fretboard has a level)
    return best


def binding_room(case: Case) -> Spot:
    """Least room [mm] of the binding's strips over wood and plate."""
    width = case["neck.binding_width"]
    best: Spot | None = None
    for low in case.once(bound_levels):
        until = uncut(case, low.edge, wood=True)
        best = lesser(best, least_over_edge(
            case, level=low, outline=case.once(top_outline), until=until, plate=0.0, inner=width
        ))  # fmt: skip
        best = lesser(best, _strip_past(case, low, start=0.0, plate=0.0))
        if case.plate_there:
            best = lesser(best, _over_plate(case, low, inner=width))
        if case.plate_under_overhang:
            thickness, start = case["plate.thickness"], plate_from(case)
            best = lesser(best, _strip_past(case, low, start=start, plate=thickness))
    assert best is not None  # noqa: S101  (a fretboard has a level)
    return best


def plate_from(case: Case) -> Array:
    """X from which the plate counts as whole: a pickup's opening may take its cut-out's end."""
    clearance = case["plate.clearance"]
    return np.where(cut_out_ends(case), clearance, 0.0) if case.once(into_cut_out) else clearance


def _strip_past(case: Case, low: Level, *, start: Array, plate: Array) -> Spot:
    """Least room of the strip's inner edge for X from ``start`` on."""
    inner = Edge(low.edge.half - case["neck.binding_width"], low.edge.taper)
    return _along(case, low, start=start, line=inner, plate=plate)


def _over_plate(
    case: Case, low: Level, *, before: Array = np.inf, inner: Array | None = None
) -> Spot:
    """Least room over the plate beside its cut-out, up to the cut-out's end and ``before``.

    A cut-out that is kept clear of the overhang is as wide as the fretboard's end: over the plate
    beside it lies a fretboard only where it is wider toward the nut.
    """
    edge, beyond = low.edge, None
    until = np.minimum(case["plate.clearance"], before)
    if not case.plate_under_overhang:
        if not np.any(edge.taper < 0):
            return Spot(np.inf, 0.0, 0.0, 0.0)
        half = edge.half if inner is not None else edge.half - case["neck.binding_width"]
        beyond = clear_half(case)
        same = (beyond - half) / np.where(edge.taper < 0, edge.taper, -1.0)
        until = np.where(edge.taper < 0, np.minimum(same, before), -np.inf)
    return least_over_edge(
        case,
        level=low,
        outline=case.once(cutout_outline),
        until=until,
        plate=case["plate.thickness"],
        inner=inner,
        beyond=beyond,
    )


def _along(case: Case, low: Level, *, start: Array, line: Edge, plate: Array) -> Spot:
    """Least room along a line in the plan for X from ``start`` on; infinite if it ends before.

    Every top is concave along X, so the height over it is convex: over a flat top it is least at
    an end, over a curved one where the top runs parallel to the neck, or at the end nearest.
    """
    first = np.maximum(low.low, start)
    last = np.maximum(first, low.high)
    if case["body.top"] == "flat":
        x = pick(case.seat.tilt >= 0, first, last)
    else:
        x = within(_parallel(case, line, guess=first), first, last)
    return over(case, low, x, line.at(x), plate, there=first < low.high)


def _parallel(case: Case, line: Edge, *, guess: Array) -> Array:
    """X where a bent top, looked at along a line of the plan, climbs as fast as the neck."""
    slope, v = case.seated.tan, case.values
    x = x_of_slope(v, slope=slope, y=line.at(guess))
    if not np.any(line.taper):
        return x
    y = line.at(x)
    across = bare_top(case, x=x, y=y + 0.5) - bare_top(case, x=x, y=y - 0.5)
    return x_of_slope(v, slope=slope - line.taper * across, y=y)

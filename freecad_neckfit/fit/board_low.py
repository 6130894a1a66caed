"""The fretboard's low faces over wood and plate: beside the pocket, and its binding."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array
from .board_edge import Level, Spot, board_edge, cutout_outline, least_over_edge, lower, top_outline
from .overhang import least_room, room_over_wood_and_plate

if TYPE_CHECKING:
    from .case import Case


def levels(case: Case, *, drop: Array = 0.0) -> tuple[Level, ...]:
    """The glue line over the heel, then the overhang's underside lowered by ``drop`` [mm]."""
    end = case["neck.overhang"]
    glue, under = case["neck.glue_line"], case["neck.underside"] - drop
    nut = -case["neck.nut_to_heel"]
    if np.array_equal(glue, under):
        return (Level(glue, nut, end),)
    return Level(glue, nut, np.zeros(())), Level(under, np.zeros(()), end)


def overhang_room(case: Case) -> Spot:
    """Least room [mm] under the overhang past the end wall (X >= 0).

    Every top is highest on the centreline, so the least room lies there, but for a plate that
    reaches over X = 0 beside its cut-out, under the fretboard's corners.
    """
    under, end = case["neck.underside"], case["neck.overhang"]
    room, x = room_over_wood_and_plate(case, y=0.0, z=under)
    big_x, big_z = case.seated.to_body(x=x, z=under)
    found = Spot(room, big_x, np.zeros(()), big_z)
    if not case.plate_under_overhang:
        return found
    first = np.clip(case.seat.x_to_neck(big_x=0.0, z=under), 0.0, end)
    corners = least_over_edge(
        case, level=Level(under, first, end), outline=case.once(cutout_outline),
        until=case["plate.clearance"], plate=case["plate.thickness"],
    )  # fmt: skip
    return lower(found, corners)


def beside_pocket(case: Case) -> Spot:
    """Least room [mm] before the end wall (X < 0) where the fretboard is wider than the pocket."""
    best: Spot | None = None
    for level in levels(case):
        wood = least_over_edge(
            case, level=level, outline=case.once(top_outline), until=0.0, plate=0.0
        )
        best = lower(best, wood)
        if case.plate_under_overhang:
            best = lower(best, least_over_edge(
                case, level=level, outline=case.once(cutout_outline), until=0.0,
                plate=case["plate.thickness"],
            ))  # fmt: skip
    assert best is not None  # noqa: S101  (a fretboard has a level)
    return best


def binding_room(case: Case) -> Spot:
    """Least room [mm] of the binding's strips over wood and plate."""
    width = case["neck.binding_width"]
    best: Spot | None = None
    for level in levels(case, drop=case["neck.binding"]):
        best = lower(best, least_over_edge(
            case, level=level, outline=case.once(top_outline), until=0.0, plate=0.0, inner=width
        ))  # fmt: skip
        best = lower(best, _strip_past(case, level, start=0.0, plate=0.0))
        if case.plate_under_overhang:
            thickness, clearance = case["plate.thickness"], case["plate.clearance"]
            best = lower(best, least_over_edge(
                case, level=level, outline=case.once(cutout_outline), until=clearance,
                plate=thickness, inner=width,
            ))  # fmt: skip
            best = lower(best, _strip_past(case, level, start=clearance, plate=thickness))
    assert best is not None  # noqa: S101  (a fretboard has a level)
    return best


def _strip_past(case: Case, level: Level, *, start: Array, plate: Array) -> Spot:
    """Least room of the strip's inner edge for X from ``start`` on; infinite if it ends before."""
    first = np.maximum(case.seat.x_to_neck(big_x=start, z=level.z), level.first)
    last = np.maximum(first, level.last)
    edge = board_edge(case, z=level.z)
    y = edge.at(start) - case["neck.binding_width"]
    room, x = least_room(case, first=first, last=last, y=y, z=level.z, plate=plate)
    big_x, big_z = case.seated.to_body(x=x, z=level.z)
    return Spot(np.where(first < level.last, room, np.inf), big_x, y, big_z)

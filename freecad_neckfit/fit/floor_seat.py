"""How the heel's bottom lies on the pocket's floor."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array
from .sides import pocket_corner, pocket_end, pocket_sides

if TYPE_CHECKING:
    from .case import Case


def lift(case: Case) -> Array:
    """Height [mm, along Z] by which the floor's fillet holds the heel off; 0 where it seats.

    At the distance s from a bare wall a fillet of radius f stands f - √(f² - (f - s)²) high. The
    heel's edge, chamfered or not, meets it at one of the chamfer's two edges. Where the end wall
    leans away from the floor's square, so does the fillet's centre. A shim has the heel's plan
    and square edges, and lies on the floor: it meets the fillet first.
    """
    fillet = case["pocket.floor_fillet"]
    if not np.any(fillet > 0):
        return np.zeros(np.shape(fillet))
    edge = case["neck.heel_edge"] if case["shim.make"] == "none" else 0.0
    side = np.minimum(case.once(pocket_sides).value, case.once(pocket_corner))
    at_side = _held(fillet, fillet, np.maximum(side + case["finish.wall"], 0.0), edge)
    lean = case.seat.floor if case["pocket.wall"] == "top" else np.zeros(())
    centre = fillet * (1 - np.sin(lean)) / np.cos(lean)
    at_end = _held(fillet, centre, np.maximum(_gap_on_floor(case), 0.0), edge)
    held = np.maximum(at_side, at_end) - case["finish.floor"]
    return np.maximum(held, 0.0) / np.cos(case.seat.floor)


def _held(fillet: Array, centre: Array, gap: Array, edge: Array) -> Array:
    at_wall = _fillet_height(fillet, centre - gap) - edge
    return np.maximum(at_wall, _fillet_height(fillet, centre - gap - edge))


def _fillet_height(fillet: Array, inward: Array) -> Array:
    """Height of a fillet ``inward`` [mm] of its centre toward the wall."""
    reach = np.clip(inward, 0.0, fillet)
    return fillet - np.sqrt(np.square(fillet) - np.square(reach))


def _gap_on_floor(case: Case) -> Array:
    """Bare wall's foot to heel end along the floor [mm]; round ends as near as they come."""
    if case["pocket.end_shape"] == "round":
        return case.once(pocket_end).value + case["finish.wall"]
    floor = case.seat.floor
    leans = case["pocket.wall"] == "floor"
    foot = case["pocket.depth"] * np.sin(floor) * np.cos(floor) if leans else 0.0
    return (foot - case.seated.x0) / np.cos(floor)


def share(case: Case) -> tuple[Array, str]:
    """Share of the heel's bottom within the pocket that bears, and how it bears.

    Parallel flat faces bear everywhere unless a fillet holds the heel off; a strip leaves the
    heel on two lines only.
    """
    if case["shim.make"] == "strip":
        return np.zeros(()), "on two lines: the strip's edge and the floor's edge at the mouth"
    return np.where(case.once(lift) > 0, 0.0, 1.0), "flat, unless a fillet holds it off"

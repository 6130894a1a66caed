"""How the heel's bottom lies on the pocket's floor."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, within
from .sides import bottom_corner, pocket_corner, pocket_end, pocket_sides

if TYPE_CHECKING:
    from .case import Case


def lift(case: Case) -> Array:
    """Height [mm, along Z] by which the floor's fillet holds the heel off; 0 where it seats.

    At the distance s from a bare wall a fillet of radius f stands f - √(f² - (f - s)²) high. The
    heel's edge, chamfered or not, meets it at one of the chamfer's two edges. Where the end wall
    leans away from the floor's square, so does the fillet's centre. A shim has the heel's plan
    and square edges, ends as the heel does, and lies on the floor: it meets the fillet first.
    Round a corner narrower than itself the fillet ends in a mitre, no nearer to the heel than
    along the walls. For what is said of corners only as a bound see ``exact``.
    """
    fillet = case["pocket.floor_fillet"]
    if not np.any(fillet > 0):
        return np.zeros(np.shape(fillet))
    edge = case["neck.heel_edge"] if case["shim.make"] == "none" else 0.0
    side = case.once(pocket_sides).value + case["finish.wall"]
    at_side = _held(fillet, fillet, np.maximum(side, 0.0), edge)
    at_side = np.maximum(at_side, _held_in_corner(case, fillet, edge))
    lean = case.seat.floor if case["pocket.wall"] == "top" else np.zeros(())
    centre = fillet * (1 - np.sin(lean)) / np.cos(lean)
    at_end = _held_at_end(case, fillet, centre, edge)
    held = np.maximum(at_side, at_end) - case["finish.floor"]
    return np.maximum(held, 0.0) / np.cos(case.seat.floor)


def exact(case: Case) -> bool:
    """Whether ``lift`` is more than a bound.

    It is one where the heel's corner rides on the fillet of a tilted floor, whose height there
    follows no circle, where a corner leans on a shim, and where the heel runs into the pocket's
    corner.
    """
    fillet = case["pocket.floor_fillet"]
    if not np.any(fillet > 0):
        return True
    edge = case["neck.heel_edge"] if case["shim.make"] == "none" else 0.0
    near = _held_in_corner(case, fillet, edge) > 0
    through = case.once(pocket_corner) + case["finish.wall"] < 0
    leans = (case.seat.floor != 0) | (case.seat.tilt != case.seat.floor)
    return not np.any((fillet > 0) & ((near & leans) | through))


def _held_in_corner(case: Case, fillet: Array, edge: Array) -> Array:
    """As ``_held``, in a corner: at the chamfer's foot a corner's arc is narrower, or a mitre."""
    full = np.maximum(case.once(pocket_corner) + case["finish.wall"], 0.0)
    foot = np.where(edge > 0, case.once(bottom_corner), full)
    held = np.maximum(
        _fillet_height(fillet, fillet - full) - edge, _fillet_height(fillet, fillet - foot)
    )
    mitred = (case["pocket.end_shape"] == "square") & (case["pocket.corner_radius"] < fillet)
    return np.where(mitred, 0.0, held)


def _held(fillet: Array, centre: Array, gap: Array, edge: Array) -> Array:
    at_wall = _fillet_height(fillet, centre - gap) - edge
    return np.maximum(at_wall, _fillet_height(fillet, centre - gap - edge))


def _held_at_end(case: Case, fillet: Array, centre: Array, edge: Array) -> Array:
    """As ``_held``, at the end wall; a shim's end leans with the heel's, from its foot up."""
    gap = _gap_on_floor(case)
    if case["shim.make"] == "none":
        return _held(fillet, centre, np.maximum(gap, 0.0), edge)
    thick = _shim_at_end(case)
    on_floor = gap - thick * np.sin(case.seat.tilt - case.seat.floor)
    at_foot = _fillet_height(fillet, centre - np.maximum(on_floor, 0.0))
    at_heel = _fillet_height(fillet, centre - np.maximum(gap, 0.0))
    return np.maximum(at_foot, at_heel - thick)


def _shim_at_end(case: Case) -> Array:
    """Height [mm] of the shim's end below the heel's bottom, square to it, down to the floor."""
    seated, floor = case.seated, case.seat.floor
    level = -case["pocket.depth"] + case["finish.floor"] / np.cos(floor)
    over = seated.z0 - level - seated.x0 * np.tan(floor)
    return over / (seated.cos + seated.sin * np.tan(floor))


def _fillet_height(fillet: Array, inward: Array) -> Array:
    """Height of a fillet ``inward`` [mm] of its centre toward the wall."""
    reach = within(inward, 0.0, fillet)
    return fillet - np.sqrt(np.square(fillet) - np.square(reach))


def _gap_on_floor(case: Case) -> Array:
    """Bare wall's foot to heel end along the floor [mm]; round ends as near as they come."""
    if case["pocket.end_shape"] == "round":
        return case.once(pocket_end).value + case["finish.wall"]
    floor = case.seat.floor
    leans = case["pocket.wall"] == "floor"
    foot = case["pocket.depth"] * np.sin(floor) * np.cos(floor) if leans else 0.0
    return (foot - case.seated.x0) / np.cos(floor)


ON_TWO_LINES = "a strip shim bears on two lines only, at its edge and at the pocket's mouth"
"""Why there is no share of the heel's bottom to tell."""


def share(case: Case) -> tuple[Array, str]:
    """Share of the heel's bottom within the pocket that bears, and how it bears.

    Parallel flat faces bear everywhere unless a fillet holds the heel off. Not for a strip.
    """
    return np.where(case.once(lift) > 0, 0.0, 1.0), "flat, unless a fillet holds it off"

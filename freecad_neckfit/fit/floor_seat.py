"""How the heel's bottom lies on the pocket's floor."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, within
from .sides import bottom_corner, corners_nearer, pocket_corner, pocket_sides

if TYPE_CHECKING:
    from .case import Case


def lift(case: Case) -> Array:
    """Height [mm, along Z] by which the floor's fillet holds the heel off; 0 where it seats.

    At the distance s from a bare wall a fillet of radius f stands f - √(f² - (f - s)²) high. The
    heel's edge, chamfered or not, meets it at one of the chamfer's two edges. A shim has the
    heel's plan and square edges, ends as the heel does, and lies on the floor: it meets the
    fillet first. Round a corner narrower than itself the fillet ends in a mitre, no nearer to the
    heel than along the walls. For what is said of corners only as a bound see ``exact``.
    """
    fillet = case["pocket.floor_fillet"]
    if not np.any(fillet > 0):
        return np.zeros(np.shape(fillet))
    edge = case["neck.heel_edge"] if case["shim.make"] == "none" else 0.0
    side = case.once(pocket_sides).value + case["finish.wall"]
    at_side = np.maximum(_held(fillet, side, edge), _held_in_corner(case, fillet, edge))
    beside = (at_side - case["finish.floor"]) / np.cos(case.seat.floor)
    held = np.maximum(np.maximum(beside, _held_at_end(case, fillet)), 0.0)
    return np.where(fillet > 0, held, 0.0)


def exact(case: Case) -> bool:
    """Whether ``lift`` is more than a bound.

    It is one where the heel's corner rides on the fillet of a tilted floor, whose height there
    follows no circle, where a corner leans on a shim, in a round end too, and where the heel runs
    into the pocket's corner.
    """
    fillet = case["pocket.floor_fillet"]
    if not np.any(fillet > 0):
        return True
    edge = case["neck.heel_edge"] if case["shim.make"] == "none" else 0.0
    near = _held_in_corner(case, fillet, edge) > 0
    through = case.once(pocket_corner) + case["finish.wall"] < 0
    leans = (case.seat.floor != 0) | (case.seat.tilt != case.seat.floor)
    return not np.any((fillet > 0) & ((near & leans) | through | _leans_in_round_end(case, fillet)))


def _leans_in_round_end(case: Case, fillet: Array) -> Array:
    """Whether a corner rides on a round end's fillet where heel or wall is not square to the floor.

    The angle between wall and floor then differs along the arc.
    """
    square = (case["pocket.wall"] == "floor") | (case.seat.floor == 0)
    aslant = np.logical_not(square) | (case.seat.tilt != case.seat.floor)
    if case["pocket.end_shape"] == "square" or not np.any(aslant):
        return np.zeros(np.shape(fillet), dtype=bool)
    return aslant & (case.once(corners_nearer) > 0) & (_held_at_end(case, fillet) > 0)


def _held_in_corner(case: Case, fillet: Array, edge: Array) -> Array:
    """As ``_held``, in a corner: at the chamfer's foot a corner's arc is narrower, or a mitre."""
    full = case.once(pocket_corner) + case["finish.wall"]
    foot = np.where(edge > 0, case.once(bottom_corner), full)
    held = np.maximum(
        _fillet_height(fillet, fillet - full) - edge, _fillet_height(fillet, fillet - foot)
    )
    mitred = (case["pocket.end_shape"] == "square") & (case["pocket.corner_radius"] < fillet)
    return np.where(mitred, 0.0, held)


def _held(fillet: Array, gap: Array, edge: Array) -> Array:
    at_wall = _fillet_height(fillet, fillet - gap) - edge
    return np.maximum(at_wall, _fillet_height(fillet, fillet - gap - edge))


def _held_at_end(case: Case, fillet: Array) -> Array:
    """Height [mm, along Z] by which the fillet before the end wall holds heel or shim off.

    Lifting is along Z, so all is looked at in the plane of X and Z: a heel on a tilted floor
    comes nearer to a wall square to the floor, or farther from it, as it is lifted. A shim's end
    leans with the heel's, from its foot up. Round ends as near as they come, along the floor.
    """
    edge, seated = case["neck.heel_edge"], case.seated
    points = [(-edge, np.zeros(())), (np.zeros(()), edge)]
    if case["shim.make"] != "none":
        points.append((np.zeros(()), -_shim_at_end(case)))
    if case["shim.make"] == "wedge":
        points.append((np.zeros(()), np.zeros(())))
    nearer = case.once(corners_nearer) if case["pocket.end_shape"] == "round" else 0.0
    rises = nearer * np.tan(case.seat.floor)
    held: Array = -np.inf
    for x, z in points:
        big_x, big_z = seated.to_body(x=x, z=z)
        over = _end_fillet_height(case, fillet, x=big_x + nearer) - rises
        held = np.maximum(held, over - big_z)
    return held


def _end_fillet_height(case: Case, fillet: Array, *, x: Array) -> Array:
    """Z [mm] of the fillet between floor and end wall at X; beyond the wall as at the wall.

    Minus infinite before its foot.
    """
    sin, cos = np.sin(case.seat.floor), np.cos(case.seat.floor)
    depth = case["pocket.depth"]
    if case["pocket.wall"] == "floor":
        foot = depth * sin * cos
        centre_x = foot - fillet * (cos + sin)
        centre_z = -depth * cos * cos + fillet * (cos - sin)
        farthest = fillet * np.where(sin < 0, cos, 1.0)  # a wall that leans over it ends past it
    else:
        centre_x = -fillet
        centre_z = -depth + fillet * (1 - sin) / cos
        farthest = fillet
    out = np.minimum(x - centre_x, farthest)
    height = centre_z - np.sqrt(np.maximum(np.square(fillet) - np.square(out), 0.0))
    return np.where(out >= fillet * sin, height, -np.inf)


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


BEARS = 0.01
"""A heel that is held off by no more than this [mm] bears."""
ON_TWO_LINES = "a strip shim bears on two lines only, at its edge and at the pocket's mouth"
"""Why there is no share of the heel's bottom to tell."""


def share(case: Case) -> tuple[Array, str]:
    """Share of the heel's bottom within the pocket that bears, and how it bears.

    Parallel flat faces bear everywhere unless a fillet holds the heel off by more than
    ``BEARS``. Not for a strip.
    """
    return np.where(case.once(lift) > BEARS, 0.0, 1.0), "flat, unless a fillet holds it off"

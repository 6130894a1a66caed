"""What cavities and the openings for pickups take away where they reach into the pocket."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from ..job.parameters import ROLES
from .board_edge import Edge
from .mount import cavity_floor
from .wood_left import PICKUP_ROOM

if TYPE_CHECKING:
    from .case import Case


class Opened(NamedTuple):
    """Body-frame X of an opening's front and back, half its width, Z of its floor [mm]."""

    front: Array
    back: Array
    half: Array
    floor: Array


def into_pocket(case: Case) -> tuple[Opened, ...]:
    """Openings for fitted pickups that begin before the end wall, in any job; mostly none."""
    found = []
    for role in ROLES:
        key = f"pickup_{role}"
        if not case[f"{key}.fitted"]:
            continue
        half = case[f"{key}.length"] / 2 + PICKUP_ROOM
        front = case[f"{key}.x"] - half
        if np.any(front < 0):
            wide, depth = case[f"{key}.width"] / 2 + PICKUP_ROOM, case[f"{key}.cavity_depth"]
            floor = np.where(depth > 0, cavity_floor(case, role=role), np.inf)
            found.append(Opened(front, case[f"{key}.x"] + half, wide, floor))
    return tuple(found)


def end_wall_there(case: Case) -> Array:
    """Whether anything of the end wall is left on the centreline above the floor's fillet."""
    foot, there = case["pocket.floor_fillet"] - case["pocket.depth"], np.True_
    leans = case["pocket.wall"] == "floor"
    low = case["pocket.depth"] * np.tan(case.seat.floor) if leans else 0.0
    for opened in case.once(into_pocket):
        gone = (opened.front < np.minimum(low, 0.0)) & (opened.back > np.maximum(low, 0.0))
        there = there & ~(gone & (opened.floor <= foot))
    return there


def uncut(case: Case, edge: Edge, *, wood: bool) -> Array:
    """Body-frame X [mm], at most 0, up to which the top (else the plate) lies beside the pocket.

    An opening that is narrower than the fretboard, or ends before the wall, counts as unbroken.
    """
    until: Array = 0.0
    for opened in case.once(into_pocket):
        cut = (opened.half >= edge.at(opened.front)) & (opened.back > 0)
        if wood:
            cut = cut & np.isfinite(opened.floor)
        until = np.where(cut, np.minimum(until, opened.front), until)
    return until

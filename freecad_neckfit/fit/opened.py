"""What cavities and the openings for pickups take away where they reach into the pocket."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from ..job.parameters import ROLES
from .board_edge import Edge
from .mount import cavity_floor
from .outline import Outline
from .wood_left import PICKUP_ROOM

if TYPE_CHECKING:
    from .case import Case

HalfAt = Callable[[Array], Array]

WHOLE = (None, None)
"""A side that nothing cuts off."""


class Opened(NamedTuple):
    """Body-frame X of an opening's front and back, half its width, Z of its floor [mm]."""

    front: Array
    back: Array
    half: Array
    floor: Array


def into_pocket(case: Case) -> tuple[Opened, ...]:
    """Openings for fitted pickups that begin before the end wall, in any job; mostly none."""
    return _before(case, 0.0)


def into_cut_out(case: Case) -> tuple[Opened, ...]:
    """Those that begin before the end of the cover plate's cut-out round the pocket."""
    return _before(case, case["plate.clearance"])


def _before(case: Case, end: Array) -> tuple[Opened, ...]:
    found = []
    for role in ROLES:
        key = f"pickup_{role}"
        if not case[f"{key}.fitted"]:
            continue
        half = case[f"{key}.length"] / 2 + PICKUP_ROOM
        front = case[f"{key}.x"] - half
        if np.any(front < end):
            wide, depth = case[f"{key}.width"] / 2 + PICKUP_ROOM, case[f"{key}.cavity_depth"]
            floor = np.where(depth > 0, cavity_floor(case, role=role), np.inf)
            found.append(Opened(front, case[f"{key}.x"] + half, wide, floor))
    return tuple(found)


def end_wall_there(case: Case) -> Array:
    """Whether anything of the end wall is left on the centreline before the heel's full section.

    That is over the heel's edge, and above the floor's fillet.
    """
    there = np.True_
    heel = case.seated.body_z(x=0.0, z=case["neck.heel_edge"])
    foot = np.maximum(case["pocket.floor_fillet"] - case["pocket.depth"], heel)
    leans = case["pocket.wall"] == "floor"
    low = case["pocket.depth"] * np.tan(case.seat.floor) if leans else 0.0
    for opened in case.once(into_pocket):
        gone = (opened.front < np.minimum(low, 0.0)) & (opened.back > np.maximum(low, 0.0))
        there = there & np.logical_not(gone & (opened.floor <= foot))
    return there


def side_cuts(case: Case, around: Outline) -> list[tuple[Array | None, Array | None]]:
    """Parts of the pocket's side: X [mm] that a cavity cuts it off at, and Z of the part's top.

    None: nothing cuts it off, and it goes up to the top. Mostly that is all of it.
    """
    parts: list[tuple[Array | None, Array | None]] = []
    for opened in case.once(into_pocket):
        cut = _cuts(opened, around.side, wood=True)
        parts.append((np.where(cut, opened.front, np.inf), None))
        parts.append((None, np.where(cut, opened.floor, -np.inf)))
    return parts or [WHOLE]


def side_end(case: Case, around: Outline, *, wood: bool) -> Array:
    """X [mm] where the straight side of the pocket, or of the plate's cut-out, ends at its top.

    Where it meets the corner, or where a pickup's opening cuts it off before.
    """
    return np.minimum(around.meet, cut_at(case, around, wood=wood))


def cut_at(case: Case, around: Outline, *, wood: bool) -> Array:
    """X [mm] at which a pickup's cavity, or its opening in the plate, cuts off what is beside."""
    openings = case.once(into_pocket if wood else into_cut_out)
    return _first_cut(openings, around.side, wood=wood, until=np.inf)


def cut_out_ends(case: Case) -> Array:
    """Whether the plate's cut-out ends before the bridge: no pickup's opening joins it there."""
    ends: Array = np.True_
    for opened in case.once(into_cut_out):
        gone = (opened.front < case["plate.clearance"]) & (opened.back > 0)
        ends = ends & np.logical_not(gone)
    return ends


def uncut(case: Case, edge: Edge, *, wood: bool) -> Array:
    """Body-frame X [mm], at most 0, up to which the top (else the plate) lies beside the pocket.

    An opening that is narrower than the fretboard, or ends before the wall, counts as unbroken.
    """
    return _first_cut(case.once(into_pocket), edge.at, wood=wood, until=0.0)


def _first_cut(openings: tuple[Opened, ...], half_at: HalfAt, *, wood: bool, until: Array) -> Array:
    """X [mm] of the front of the first opening that cuts off a line in the plan, else ``until``."""
    for opened in openings:
        cut = _cuts(opened, half_at, wood=wood)
        until = np.where(cut, np.minimum(until, opened.front), until)
    return until


def _cuts(opened: Opened, half_at: HalfAt, *, wood: bool) -> Array:
    """Whether an opening takes a line in the plan away from its front to past the end wall.

    ``half_at``: the line's |Y| [mm] at X. ``wood``: in the body, where it may have no cavity.
    """
    cut = (opened.half >= half_at(opened.front)) & (opened.back > 0)
    return cut & np.isfinite(opened.floor) if wood else cut

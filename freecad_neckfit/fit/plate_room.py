"""Room in the plan between the heel and the cover plate's cut-out."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, pick, within
from .board_edge import Edge, Stretch, cutout_outline
from .cutout import Wall, straight_sides
from .dips import dip
from .mount import bare_top
from .opened import cut_at, cut_out_ends, into_cut_out
from .outline import heel_outline
from .sides import corner_room, height_at, level_end_room
from .sunk import board_in_cutout

if TYPE_CHECKING:
    from .case import Case


def plate_room(case: Case) -> Array:
    """Least signed room [mm] from the plate's cut-out to the heel, and to a fretboard sunk into it.

    To the cut-out's straight sides, and unless it is kept clear of the overhang, which opens it
    there, to its end and corners, if all of the heel's end and corners reach up to the plate. A
    plate kept on one side is as near as a whole one. Infinite where neither heel nor fretboard
    reaches down to the plate.
    """
    found = np.minimum(case.once(board_in_cutout).value, _heel_beside(case))
    return np.minimum(found, _heel_end(case)) if case.plate_under_overhang else found


def _heel_beside(case: Case) -> Array:
    """Room beside the heel's straight sides, as far as they reach up to the plate."""
    glue, seated = case["neck.glue_line"], case.seated
    foot = seated.z0 - seated.x0 * seated.tan + glue / seated.cos
    best: Array = np.inf
    for wall in case.once(straight_sides):
        # The plate begins at its wall: what a heel that is too wide meets farther out is lower.
        edge = Edge(wall.half, wall.taper)
        under = dip(case, foot=foot, edge=edge, rise=case["finish.top"])
        first, last = _common(case, wall)
        for part in (Stretch(first, np.minimum(last, under.first)),
                     Stretch(np.maximum(first, under.last), last)):  # fmt: skip
            there = part.first < part.last
            if np.any(there):
                shown = Stretch(*(pick(there, x, 0.0) for x in part))
                best = np.minimum(best, pick(there, _least(case, wall, shown), np.inf))
    return best


def _common(case: Case, wall: Wall) -> Stretch:
    """Body-frame X along which the heel's straight side runs beside the wall, at any height of it.

    A heel that leans back reaches farthest toward the bridge at the plate's underside, and
    farthest toward the nut at its top.
    """
    leans = case.seated.sin > 0
    meet = _reach(case, wall, x=case.once(heel_outline).meet, high=np.logical_not(leans))
    mouth = _reach(case, wall, x=-case["neck.heel_length"], high=leans)
    last = np.minimum(wall.there.last, meet)
    if case.once(into_cut_out):  # no box is carried on beside a heel
        last = np.minimum(last, cut_at(case, case.once(cutout_outline), wood=False))
    return Stretch(np.maximum(wall.there.first, mouth), last)


def _reach(case: Case, wall: Wall, *, x: Array, high: Array) -> Array:
    """Body-frame X of the heel at neck x, at the plate's top where ``high``, or its underside."""
    seated = case.seated
    about = seated.x0 - case["neck.glue_line"] * seated.sin + x * seated.cos
    rise = case["finish.top"] + pick(high, case["plate.thickness"], 0.0)
    return seated.x0 + x * seated.cos - seated.sin * _height(case, x=about, y=wall.half, rise=rise)


def _least(case: Case, wall: Wall, part: Stretch) -> Array:
    """Room changes evenly along the side and up it: least at an end, at the plate's face there.

    Where the heel leans away from the end at that face, it is least at one of two points: as far
    as the side goes at any height, or as it goes at that face.
    """
    heel, seated = case.once(heel_outline), case.seated
    narrows = wall.taper * seated.cos < heel.taper
    # Higher up the heel it is wider where it leans toward the bridge and widens that way.
    high = heel.taper * seated.sin > 0
    there = pick(
        narrows,
        np.minimum(part.last, _reach(case, wall, x=heel.meet, high=high)),
        np.maximum(part.first, _reach(case, wall, x=-case["neck.heel_length"], high=high)),
    )
    rise = case["finish.top"] + pick(high, case["plate.thickness"], 0.0)
    room = np.minimum(*(
        _room_at(case, wall, x=x, rise=rise)
        for x in (pick(narrows, part.last, part.first), there)
    ))  # fmt: skip
    return room / np.sqrt(1 + np.square(wall.taper))


def _room_at(case: Case, wall: Wall, *, x: Array, rise: Array) -> Array:
    """Half the cut-out's width less the heel's at X, ``rise`` over the top; at its end past it."""
    heel, seated = case.once(heel_outline), case.seated
    z = _height(case, x=x, y=wall.half, rise=rise)
    in_neck = (x - seated.x0 + z * seated.sin) / seated.cos
    at = within(in_neck, -case["neck.heel_length"], heel.meet)
    return wall.half + wall.taper * x - heel.side(at)


def _height(case: Case, *, x: Array, y: Array, rise: Array) -> Array:
    """Neck-frame z [mm] of the heel where it is ``rise`` over the top at body-frame (X, Y)."""
    seated = case.seated
    big_z = bare_top(case, x=x, y=y) + rise
    z = (big_z - seated.z0) * seated.cos - (x - seated.x0) * seated.sin
    return within(z, case["neck.heel_edge"], case["neck.glue_line"])


def _heel_end(case: Case) -> Array:
    """Room before the heel's end and about its corners, if all of them reach up to the plate.

    A curved top is lower at the corners than on the centreline: there the plate begins lowest
    before a straight end. A round one comes nearest on the centreline.
    """
    around, heel = case.once(cutout_outline), case.once(heel_outline)
    low, high = case["finish.top"], case["finish.top"] + case["plate.thickness"]
    wide = np.minimum(heel.side(heel.meet), around.side(around.meet))
    lowest = 0.0 if case["neck.heel_end"] == "round" else wide
    end = np.minimum(*(
        level_end_room(case, around=around, z=_end_height(case, y=y, rise=rise), rise=rise)
        for y, rise in ((lowest, low), (0.0, high))
    ))  # fmt: skip
    corner = np.minimum(*(
        corner_room(
            case, around=around, z=_end_height(case, y=wide, rise=rise), leaning=False, level=True
        )
        for rise in (low, high)
    ))  # fmt: skip
    there = _end_reaches(case) & cut_out_ends(case)
    return pick(there, np.minimum(end, corner), np.inf)


def _end_reaches(case: Case) -> Array:
    """Whether the heel's end, and its sides where its corners begin, are higher than the top."""
    heel, glue = case.once(heel_outline), case["neck.glue_line"]
    reaches: Array = True
    for x, y in ((0.0, 0.0), (heel.meet, heel.side(heel.meet))):
        big_x, big_z = case.seated.to_body(x=x, z=glue)
        reaches = reaches & (big_z > bare_top(case, x=big_x, y=y) + case["finish.top"])
    return reaches


def _end_height(case: Case, *, y: Array, rise: Array) -> Array:
    """Neck-frame z [mm] of the heel's end where it is ``rise`` over the top, ``y`` from the middle.

    Taken where the end's bottom stands: the top hardly climbs on the way up from there.
    """
    if case["body.top"] == "flat":
        return height_at(case, x=0.0, rise=rise)
    big_x = case.seated.x0 - case["neck.glue_line"] * case.seated.sin
    bare = bare_top(case, x=big_x, y=y)
    z = (bare + rise - case.seated.z0) / case.seated.cos
    return within(z, case["neck.heel_edge"], case["neck.glue_line"])

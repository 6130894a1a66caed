"""Room in the plan between the heel and the pocket, or the cover plate's cut-out, around it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array, distance, pick, within
from .lesser import lesser
from .mount import bare_top
from .opened import WHOLE, into_pocket, side_cuts
from .outline import Outline, heel_outline, pocket_outline

if TYPE_CHECKING:
    from .case import Case


class Room(NamedTuple):
    """A signed room [mm] and the neck-frame x and z [mm] where it is least; None for many jobs."""

    value: Array
    x: Array
    z: Array


def walls(case: Case) -> Outline:
    """The pocket's plan with the finish on its walls."""
    return pocket_outline(case, offset=-case["finish.wall"])


def height_at(case: Case, *, x: Array, rise: Array) -> Array:
    """Neck-frame z [mm] over x where the neck passes ``rise`` [mm] above the bare top.

    No lower than the heel's full section (over its edge's chamfer), no higher than the glue line.
    """
    seated = case.seated
    z: Array = 0.0
    for _ in range(1 if case["body.top"] == "flat" else 3):  # a leaning end meets the top aside
        bare = bare_top(case, x=seated.body_x(x=x, z=z), y=0.0)
        z = (bare + rise - seated.z0 - x * seated.sin) / seated.cos
    return within(z, case["neck.heel_edge"], case["neck.glue_line"])


def side_room(case: Case, *, around: Outline, whole: bool) -> Room:
    """Least room [mm] between the heel's straight side and the pocket's, neck centred.

    Over the length that both have, from the heel's bottom to the top. Room is square to the
    pocket's side. Over the length and over the height it changes evenly, so it is least at one of
    four points. Above the floor of a cavity that opens the side it ends at that one's front,
    unless sides count as ``whole``.
    """
    heel, seated = case.once(heel_outline), case.seated
    k, low = 1 / around.stretch, case["neck.heel_edge"]
    best: Room | None = None
    for front, floor in [WHOLE] if whole else side_cuts(case, around):
        for mouth in (False, True):
            guess = -case["pocket.length"] if mouth else heel.meet
            high = height_at(case, x=guess, rise=0.0)
            if floor is not None:
                high = np.minimum(high, (floor - seated.z0 - guess * seated.sin) / seated.cos)
            for z in (low, high):
                x = _last_common(case, around, heel, z=z, mouth=mouth, front=front)
                big_x = seated.x0 + x * seated.cos - z * seated.sin
                room = (around.side(big_x) - heel.side(x)) * k
                if floor is not None:
                    room = np.where(high > low, room, np.inf)
                best = lesser(best, Room(room, x, z))
    assert best is not None  # noqa: S101  (the loops above run)
    return best


def _last_common(
    case: Case, around: Outline, heel: Outline, *, z: Array, mouth: bool, front: Array | None
) -> Array:
    """Neck-frame x where both straight sides still run, toward the mouth or toward the end.

    Where the end wall leans, the side's end leans with it; ``front``: where a cavity cuts it off.
    The finish begins at the mouth square to the side that it lies on.
    """
    seated = case.seated
    begin = case["finish.wall"] * around.taper / around.stretch - case["pocket.length"]
    edge = begin if mouth else around.meet + wall_shift(case, z=z)
    if front is not None and not mouth:
        edge = np.minimum(edge, front)
    x = (edge - seated.x0 + z * seated.sin) / seated.cos
    return np.maximum(x, -case["neck.heel_length"]) if mouth else np.minimum(x, heel.meet)


def wall_shift(case: Case, *, z: Array) -> Array:
    """How far [mm] the end wall stands toward the bridge of its top, at the heel end's height z."""
    if case["pocket.wall"] == "top":
        return 0.0
    return -(case.seated.z0 + z * case.seated.cos) * np.tan(case.seat.floor)


def end_room(case: Case, *, around: Outline, levels: tuple[Array, Array]) -> Room:
    """Least room [mm] between the heel's end and the end of ``around``, at neck heights ``levels``.

    The end wall may lean with the floor. A straight face against a straight wall
    comes closest at one of the two levels: the first square to the heel, as its bottom is, the
    second level in the body, as its top is. In a round end the heel's corners may come closer
    than its apex; the room is to the end's arc, carried on past its ends, for beside them lie
    the sides.
    """
    best: Room | None = None
    for z, level in zip(levels, (False, True), strict=True):
        found = _end_room_at(case, around, z=z, level=level, leaning=True)
        best = lesser(best, Room(found, np.zeros(()), z))
    assert best is not None  # noqa: S101  (there are two levels)
    return best


def level_end_room(case: Case, *, around: Outline, z: Array, rise: Array) -> Array:
    """As ``end_room`` at one height: z of the end, ``rise`` over the top; an upright end wall."""
    return _end_room_at(case, around, z=z, level=True, leaning=False, rise=rise)


def _end_room_at(
    case: Case, around: Outline, *, z: Array, level: bool, leaning: bool, rise: Array = 0.0
) -> Array:
    seated = case.seated
    apex = around.end - _off_wall(case, x=0.0, z=z, leaning=leaning)
    if case["pocket.end_shape"] == "square":
        return apex
    heel = case.once(heel_outline)
    is_round = case["neck.heel_end"] == "round"
    x, y = (heel.meet, heel.side(heel.meet)) if is_round else (heel.arc_x, heel.arc_y)
    # Seen along its axis a leaning round wall is a circle, and lengths along X are shorter.
    floor = case.seat.floor if leaning and case["pocket.wall"] == "floor" else 0.0
    lean = np.cos(floor)
    # An upright corner cut level looks longer along X, one cut square to itself shorter.
    squeeze = np.cos(case.seat.tilt - floor)
    if level:
        glue, cut = case["neck.glue_line"], z - x * seated.sin / seated.cos
        level_there = z < glue
        if case["body.top"] != "flat":
            radius = 0.0 if is_round else heel.radius
            cut = _cut_by_top(case, around, x=x, y=y, z=z, radius=radius, rise=rise)
            level_there = cut < glue
        z = np.where(level_there, within(cut, case["neck.heel_edge"], glue), glue)
        squeeze = np.where(level_there, lean / seated.cos, squeeze)
    right = _off_wall(case, x=x, z=z, leaning=leaning) - around.end
    right = right * lean + around.end - around.arc_x
    px, py = (right, y) if is_round else _farthest_on_arc(right, y, heel.radius, squeeze)
    away = distance(px, py)
    corner = (around.radius - away) * away / distance(px * lean, py)
    return np.minimum(apex, corner)


def _cut_by_top(
    case: Case, around: Outline, *, x: Array, y: Array, z: Array, radius: Array, rise: Array
) -> Array:
    """Neck height [mm] at (x, y) of the level ``rise`` over a bent top beside the heel's corner.

    The top is taken over the corner's point nearest to the round end, ``radius`` ahead of (x, y).
    """
    seated = case.seated
    right = seated.body_x(x=x, z=z) - around.arc_x
    share = radius / distance(right, y)
    at = seated.body_x(x=x + share * right, z=z)
    big_z = bare_top(case, x=at, y=y + share * y) + rise
    return (big_z - seated.z0 - x * seated.sin) / seated.cos


def _off_wall(case: Case, *, x: Array, z: Array, leaning: bool) -> Array:
    """X [mm] of a neck-frame point, counted from where the end wall leans to at its height."""
    big_x, big_z = case.seated.to_body(x=x, z=z)
    if not leaning or case["pocket.wall"] == "top":
        return big_x
    return big_x + big_z * np.tan(case.seat.floor)


def _farthest_on_arc(x: Array, y: Array, radius: Array, squeeze: Array) -> tuple[Array, Array]:
    """Farthest point from the origin of an arc about (x, y) seen shorter along X by ``squeeze``.

    Two steps toward the farthest point: what is left is below 1e-4 for slants below 10°.
    """
    away = distance(squeeze * x, y)
    nx, ny = squeeze * x / away, y / away
    px, py = x + radius * squeeze * nx, y + radius * ny
    away = distance(squeeze * px, py)
    return x + radius * squeeze * squeeze * px / away, y + radius * py / away


def corner_room(
    case: Case,
    *,
    around: Outline,
    z: Array,
    leaning: bool,
    heel: Outline | None = None,
    level: bool = False,
) -> Array:
    """Least room [mm] between the heel's corner and end, corner and side of ``around``.

    The heel's corner is an arc, or where a round end meets the side a point. ``heel``: another
    outline than that of the heel's full section. ``level``: the heel is cut level with the body
    at its end's height z, otherwise square to itself.
    """
    heel, seated = heel or case.once(heel_outline), case.seated
    shift, shrunk = wall_shift(case, z=z) if leaning else 0.0, 1.0
    # Cut level an upright corner looks longer along X, but for what is as high as the glue line.
    upright = level & (z - heel.meet * seated.tan < case["neck.glue_line"])
    slant = pick(upright, 1 / seated.cos, seated.cos) if level else seated.cos
    if leaning and case["pocket.wall"] == "floor" and case["pocket.end_shape"] == "square":
        # Seen along the wall a heel that stands square to it is seen whole.
        shrunk, slant = np.cos(case.seat.floor), np.cos(case.seat.tilt - case.seat.floor)
        around = _along_wall(around, shift=shift, shrunk=shrunk)
    origin = (seated.x0 - z * seated.sin - shift) * shrunk
    x, y = origin + heel.meet * slant, heel.side(heel.meet)
    at_side = around.farthest(x=x, y=y, shrunk=shrunk)
    if case["neck.heel_end"] == "round":
        return -at_side
    on_arc = around.farthest(
        x=origin + heel.arc_x * slant,
        y=heel.arc_y,
        radius=heel.radius,
        squeeze=slant,
        until=heel.taper / slant,
        shrunk=shrunk,
    )
    return -np.maximum(on_arc, at_side)


def _along_wall(around: Outline, *, shift: Array, shrunk: Array) -> Outline:
    """A square end that leans, seen along it: its corners are arcs there, X looks ``shrunk``.

    The sides stand still while the end leans by ``shift``: from it they are wider or narrower.
    """
    half, taper = around.half + around.taper * shift, around.taper / shrunk
    arc_y = half + taper * around.arc_x - around.radius * np.sqrt(1 + np.square(taper))
    return replace(around, half=half, taper=taper, arc_y=arc_y, lean=taper)


def pocket_sides(case: Case) -> Room:
    """Side room [mm] in the pocket, from the floor to the top, finish on the walls taken off."""
    return side_room(case, around=case.once(walls), whole=True)


def sides_left(case: Case) -> Room:
    """As ``pocket_sides``, to what pickups' cavities leave of the sides."""
    return side_room(case, around=case.once(walls), whole=False)


def pocket_end(case: Case) -> Room:
    """End room [mm] in the pocket, from the floor to the top, finish on the wall taken off."""
    around, top = case.once(walls), height_at(case, x=0.0, rise=0.0)
    if case["pocket.end_shape"] == "square":  # a round wall is carried on up past a cavity
        top = np.minimum(top, _under_cavities(case, around))
    return end_room(case, around=around, levels=(case["neck.heel_edge"], top))


def _under_cavities(case: Case, around: Outline) -> Array:
    """Neck height [mm] of the floor of a cavity that opens all of the end wall; mostly none."""
    found: Array = np.inf
    for opened in case.once(into_pocket):
        all_of_it = (opened.front < 0) & (opened.back > 0) & (opened.half >= around.arc_y)
        z = (opened.floor - case.seated.z0) / case.seated.cos
        z = np.maximum(z, case["neck.heel_edge"])
        found = np.where(all_of_it, np.minimum(found, z), found)
    return found


def corners_nearer(case: Case) -> Array:
    """How much nearer to a round end the heel's corners come than its apex, at its bottom [mm]."""
    around, z = case.once(walls), case["neck.heel_edge"]
    apex = around.end - _off_wall(case, x=0.0, z=z, leaning=True)
    return apex - _end_room_at(case, around, z=z, level=False, leaning=True)


def pocket_corner(case: Case) -> Array:
    """Corner room [mm] at the bottom of the heel (over its chamfer), finish taken off."""
    return corner_room(case, around=case.once(walls), z=case["neck.heel_edge"], leaning=True)


def bottom_corner(case: Case) -> Array:
    """Corner room [mm] of the heel's bottom face, inside its chamfer, to the bare pocket."""
    bottom = heel_outline(case, offset=-case["neck.heel_edge"])
    return corner_room(case, around=pocket_outline(case), z=0.0, leaning=True, heel=bottom)


def place(
    case: Case, found: tuple[Array, Array, Array], *, y: Array
) -> tuple[Array, Array, Array] | None:
    """Body-frame point of a room found in the neck frame; None for many jobs, see ``lesser``."""
    _, x, z = found
    if x is None:
        return None
    big_x, big_z = case.seated.to_body(x=x, z=z)
    return big_x, y, big_z

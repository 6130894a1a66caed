"""Room in the plan between the heel and the pocket, or the cover plate's cut-out, around it."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from .mount import bare_top
from .outline import Outline, heel_outline, pocket_outline

if TYPE_CHECKING:
    from .case import Case


class Room(NamedTuple):
    """A signed room [mm] and the neck-frame x and z [mm] where it is least."""

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
    big_x = seated.x0 + x * seated.cos
    z = (bare_top(case, x=big_x, y=0.0) + rise - seated.z0 - x * seated.sin) / seated.cos
    return np.clip(z, case["neck.heel_edge"], case["neck.glue_line"])


def side_room(case: Case, *, around: Outline, low: Array | None, high: Array) -> Room:
    """Least room [mm] between the heel's straight side and that of ``around``, neck centred.

    Over the length that both have, and from ``low`` to ``high`` [mm] above the bare top (None:
    from the heel's bottom). Room is square to the outline's side. Over the length and over the
    height it changes evenly, so it is least at one of four points.
    """
    heel, seated = case.once(heel_outline), case.seated
    k = 1 / around.stretch
    best: Room | None = None
    for mouth in (False, True):
        guess = -case["pocket.length"] if mouth else heel.meet
        bottom = case["neck.heel_edge"] if low is None else height_at(case, x=guess, rise=low)
        for z in (bottom, height_at(case, x=guess, rise=high)):
            x = _last_common(case, around, heel, z=z, mouth=mouth)
            big_x = seated.x0 + x * seated.cos - z * seated.sin
            best = _smaller(best, Room((around.side(big_x) - heel.side(x)) * k, x, z))
    assert best is not None  # noqa: S101  (the loops above run)
    return best


def _last_common(case: Case, around: Outline, heel: Outline, *, z: Array, mouth: bool) -> Array:
    """Neck-frame x where both straight sides still run, toward the mouth or toward the end."""
    seated = case.seated
    edge = -case["pocket.length"] if mouth else around.meet
    x = (edge - seated.x0 + z * seated.sin) / seated.cos
    return np.maximum(x, -case["neck.heel_length"]) if mouth else np.minimum(x, heel.meet)


def _smaller(best: Room | None, other: Room) -> Room:
    if best is None:
        return other
    less = other.value < best.value
    return Room(*(np.where(less, b, a) for a, b in zip(best, other, strict=True)))


def wall_shift(case: Case, *, z: Array) -> Array:
    """How far [mm] the end wall stands toward the bridge of its top, at the heel end's height z."""
    if case["pocket.wall"] == "top":
        return 0.0
    return -(case.seated.z0 + z * case.seated.cos) * np.tan(case.seat.floor)


def end_room(case: Case, *, around: Outline, levels: tuple[Array, Array], leaning: bool) -> Room:
    """Least room [mm] between the heel's end and the end of ``around``, at neck heights ``levels``.

    ``leaning``: the end wall may lean with the floor. A straight face against a straight wall
    comes closest at one of the two levels. In a round end the heel's corners may come closer
    than its apex.
    """
    best: Room | None = None
    for z in levels:
        shift = wall_shift(case, z=z) if leaning else 0.0
        best = _smaller(best, Room(_end_room_at(case, around, z=z, shift=shift), np.zeros(()), z))
    assert best is not None  # noqa: S101  (there are two levels)
    return best


def _end_room_at(case: Case, around: Outline, *, z: Array, shift: Array) -> Array:
    seated = case.seated
    apex_x = seated.x0 - z * seated.sin - shift
    apex = around.end - apex_x
    if case["pocket.end_shape"] == "square":
        return apex
    heel = case.once(heel_outline)
    if case["neck.heel_end"] == "round":
        right = apex_x + heel.meet * seated.cos - around.arc_x
        corner = around.radius - np.hypot(right, heel.side(heel.meet))
    else:
        right = apex_x + heel.arc_x * seated.cos - around.arc_x
        corner = around.radius - _farthest_on_arc(right, heel.arc_y, heel.radius, seated.cos)
    return np.minimum(apex, corner)


def _farthest_on_arc(x: Array, y: Array, radius: Array, squeeze: Array) -> Array:
    """Largest distance from the origin to an arc about (x, y) seen shorter along X by ``squeeze``.

    Two steps toward the farthest point: what is left is below 1e-4 for slants below 10°.
    """
    away = np.hypot(squeeze * x, y)
    nx, ny = squeeze * x / away, y / away
    px, py = x + radius * squeeze * nx, y + radius * ny
    away = np.hypot(squeeze * px, py)
    return np.hypot(x + radius * squeeze * squeeze * px / away, y + radius * py / away)


def corner_room(case: Case, *, around: Outline, z: Array, leaning: bool) -> Array:
    """Least room [mm] between the heel's corner and end, corner and side of ``around``.

    The heel's corner is an arc, or where a round end meets the side a point.
    """
    heel, seated = case.once(heel_outline), case.seated
    shift = wall_shift(case, z=z) if leaning else 0.0
    origin = seated.x0 - z * seated.sin - shift
    if case["neck.heel_end"] == "round":
        return -around.farthest(x=origin + heel.meet * seated.cos, y=heel.side(heel.meet))
    return -around.farthest(
        x=origin + heel.arc_x * seated.cos, y=heel.arc_y, radius=heel.radius, squeeze=seated.cos
    )


def pocket_sides(case: Case) -> Room:
    """Side room [mm] in the pocket, from the floor to the top, finish on the walls taken off."""
    return side_room(case, around=case.once(walls), low=None, high=0.0)


def pocket_end(case: Case) -> Room:
    """End room [mm] in the pocket, from the floor to the top, finish on the wall taken off."""
    levels = case["neck.heel_edge"], height_at(case, x=0.0, rise=0.0)
    return end_room(case, around=case.once(walls), levels=levels, leaning=True)


def pocket_corner(case: Case) -> Array:
    """Corner room [mm] at the bottom of the heel (over its chamfer), finish taken off."""
    return corner_room(case, around=case.once(walls), z=case["neck.heel_edge"], leaning=True)


def place(case: Case, found: Room, *, y: Array) -> tuple[Array, Array, Array]:
    """Body-frame point of a room found in the neck frame."""
    big_x, big_z = case.seated.to_body(x=found.x, z=found.z)
    return big_x, y, big_z

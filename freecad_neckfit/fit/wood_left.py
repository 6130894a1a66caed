"""Wood left under and beside the pocket, by its simple thicknesses; solids refine them."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, along, difference, distance, within
from ..job.parameters import ROLES
from .outline import pocket_side

if TYPE_CHECKING:
    from .case import Case

PICKUP_ROOM = 1.0
"""A pickup's cavity is larger than the pickup by this all round [mm], from memory."""


def floor_height(case: Case, *, x: Array) -> Array:
    """Z [mm] of the bare pocket floor at body-frame X; axes as broadcast by the caller."""
    return -case["pocket.depth"] + x * np.tan(np.radians(case["pocket.angle"]))


def back_height(case: Case, *, x: Array) -> Array:
    """Z [mm] of the body's back at body-frame X, heel contour included."""
    share = 1 - (x + case["pocket.length"]) / case["body.contour_length"]
    return case["body.contour_depth"] * within(share, 0.0, 1.0) - case["body.thickness"]


def under_floor(case: Case) -> tuple[Array, Array]:
    """Least height [mm] of wood under the floor, and the X where it is found.

    Floor and back are straight between mouth, contour's end and end wall, so it is least at one
    of these, or over a ferrule's seat at its edge toward the mouth.
    """
    mouth = -case["pocket.length"]
    runout = np.minimum(mouth + case["body.contour_length"], 0.0)
    least: Array = np.inf
    where: Array = mouth
    for x in (mouth, runout, np.zeros(())):
        wood = floor_height(case, x=x) - back_height(case, x=x)
        less = wood < least
        least, where = np.where(less, wood, least), np.where(less, x, where)
    if case["neck_plate.make"] != "ferrules":
        return least, where
    wood, x = _over_ferrules(case)
    less = wood < least
    return np.where(less, wood, least), np.where(less, x, where)


def _over_ferrules(case: Case) -> tuple[Array, Array]:
    """Least wood [mm] over the ferrules' seats, and the X of the seat's edge there."""
    x = case["screw.x"]
    half = along(case["neck_plate.ferrule_diameter"]) / 2
    rate = np.tan(np.radians(along(case["pocket.angle"])))
    low = np.where(rate >= 0, x - half, x + half)
    floor = along(-np.asarray(case["pocket.depth"])) + low * rate
    wood = floor - seats_on_back(case) - along(case["neck_plate.ferrule_depth"])
    index = np.argmin(wood, axis=-1)[..., None]
    low = np.broadcast_to(low, wood.shape)
    return (np.take_along_axis(wood, index, -1)[..., 0], np.take_along_axis(low, index, -1)[..., 0])


def seats_on_back(case: Case) -> Array:
    """Z [mm] of the back at each screw, heel contour included; screws on the last axis."""
    length = along(case["body.contour_length"])
    share = 1 - (case["screw.x"] + along(case["pocket.length"])) / length
    contour = along(case["body.contour_depth"]) * within(share, 0.0, 1.0)
    return difference(contour, along(case["body.thickness"]))


def wall(case: Case, *, side: str) -> tuple[Array, Array]:
    """Pocket side to the cutaway's wall beside it [mm], square to the pocket's side, and its X.

    ``side``: "treble" or "bass". Infinite where the cutaway does not reach beside the pocket.
    Meant for the workbench's own outline: a cutaway's wall parallel to the centreline.
    """
    half, taper = pocket_side(case)
    last = np.minimum(-case[f"body.cutaway_{side}"], 0.0)
    mouth = -case["pocket.length"]
    x = np.where(taper >= 0, last, mouth)
    wood = (case[f"body.block_{side}"] - half - taper * x) / np.sqrt(1 + np.square(taper))
    return np.where(last > mouth, wood, np.inf), x


def pickup_webs(case: Case) -> list[Array]:
    """End wall to the cavity of each fitted pickup that stands in one [mm]."""
    fronts = []
    for role in ROLES:
        key = f"pickup_{role}"
        if case[f"{key}.fitted"]:
            front = case[f"{key}.x"] - case[f"{key}.length"] / 2 - PICKUP_ROOM
            fronts.append(np.where(case[f"{key}.cavity_depth"] > 0, front, np.inf))
    return fronts


def webs(case: Case) -> Array:
    """Plan distance [mm] from the pocket to each cavity; negative where they overlap.

    Cavities on the last axis, taken as boxes with sharp corners (on the safe side), the pocket
    as a box of its larger width.
    """
    x, y = case["cavity.x"], np.abs(case["cavity.y"])
    half_length, half_width = case["cavity.length"] / 2, case["cavity.width"] / 2
    wide = along(np.maximum(case["pocket.width_end"], case["pocket.width_mouth"])) / 2
    ahead = np.maximum(x - half_length, along(-np.asarray(case["pocket.length"])) - x - half_length)
    aside = y - half_width - wide
    apart = distance(np.maximum(ahead, 0.0), np.maximum(aside, 0.0))
    return np.where(apart > 0, apart, np.maximum(ahead, aside))

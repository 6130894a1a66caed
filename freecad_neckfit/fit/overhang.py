"""Room under the fretboard's overhang, in closed form."""

from __future__ import annotations

import numpy as np

from ..job.arrays import Array
from ..job.top import top_height, x_of_slope
from .case import Case


def room(case: Case, *, x: Array, y: Array, z: Array, plate: Array) -> Array:
    """Height [mm] of neck point (x, y, z) over the finished top, or over the plate on it."""
    big_x, big_z = case.seat.to_body(x=x, z=z)
    return big_z - top_height(case.values, x=big_x, y=y) - case["finish.top"] - plate


def least_room(
    case: Case, *, first: Array, last: Array, y: Array, z: Array, plate: Array
) -> tuple[Array, Array]:
    """Least height over top or plate for neck x in [first, last], and the x where it is found.

    Every top is concave along X, so the height over it is convex: over a flat top it is least at
    an end, over a curved one where the top runs parallel to the neck, or at the end nearest.
    """
    if case["body.top"] == "flat":
        where = np.where(case.seat.tilt >= 0, first, last)
    else:
        parallel = x_of_slope(case.values, slope=np.tan(case.seat.tilt), y=y)
        where = np.clip(case.seat.x_to_neck(big_x=parallel, z=z), first, last)
    return room(case, x=where, y=y, z=z, plate=plate), where


def room_over_wood_and_plate(case: Case, *, y: Array, z: Array) -> tuple[Array, Array]:
    """Least room [mm] for X >= 0 along a line at neck (y, z) up to the fretboard's end, and its x.

    Over the plate it is counted to the plate's top, before the plate's cut-out to the wood.
    """
    end = case["neck.overhang"]
    start = np.clip(case.seat.x_to_neck(big_x=0.0, z=z), 0.0, end)
    wood, wood_x = least_room(case, first=start, last=end, y=y, z=z, plate=0.0)
    if not case.plate_under_overhang:
        return wood, wood_x
    edge = case.seat.x_to_neck(big_x=case["plate.clearance"], z=z)
    first = np.clip(edge, start, end)
    plate, plate_x = least_room(
        case, first=first, last=end, y=y, z=z, plate=case["plate.thickness"]
    )
    reached = edge < end
    use = reached & (plate < wood)
    return np.where(use, plate, wood), np.where(use, plate_x, wood_x)

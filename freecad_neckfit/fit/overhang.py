"""Room under a straight line of the neck over top or plate, in closed form."""

from __future__ import annotations

import numpy as np

from ..job.arrays import Array
from ..job.top import top_height, x_of_slope
from .case import Case


def room(case: Case, *, x: Array, y: Array, z: Array, plate: Array) -> Array:
    """Height [mm] of neck point (x, y, z) over the finished top, or over the plate on it."""
    big_x, big_z = case.seated.to_body(x=x, z=z)
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

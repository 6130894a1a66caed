"""The straight path that a tool needs to a truss rod adjusted at the heel end."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from .board_low import plate_from
from .cutout import cutout
from .lesser import lesser
from .overhang import least_room
from .pickup_box import neck_pickup

if TYPE_CHECKING:
    from .case import Case


class Path(NamedTuple):
    """Least room [mm] under the tool, and the neck-frame x and z of it; no place for many jobs."""

    room: Array
    x: Array
    z: Array


def tool_room(case: Case) -> Path:
    """Least height [mm] of the tool's lowest line over the top, the plate and the neck pickup.

    Past the end wall, along the length that the tool needs. Negative: it would have to be lifted,
    or a channel cut, by as much.
    """
    z = case["neck.rod_tool_height"] - case["neck.rod_tool"] / 2
    found = _over(case, z=z, start=0.0, plate=0.0)
    if case.plate_there:
        start, box = plate_from(case), case.once(cutout).box
        if box is not None:
            start = np.maximum(start, box.end)
        found = lesser(found, _over(case, z=z, start=start, plate=case["plate.thickness"]))
    if case["pickup_neck.fitted"]:
        found = lesser(found, _over_pickup(case, z=z))
    return found


def _over(case: Case, *, z: Array, start: Array, plate: Array) -> Path:
    length = case["neck.rod_tool_length"]
    first = np.maximum(case.seat.x_to_neck(big_x=start, z=z), 0.0)
    last = np.maximum(first, length)
    room, x = least_room(case, first=first, last=last, y=0.0, z=z, plate=plate)
    return Path(np.where(first < length, room, np.inf), x, z)


def _over_pickup(case: Case, *, z: Array) -> Path:
    box, length = case.once(neck_pickup), case["neck.rod_tool_length"]
    first = np.maximum(case.seat.x_to_neck(big_x=box.front, z=z), 0.0)
    last = np.minimum(case.seat.x_to_neck(big_x=box.back, z=z), length)
    x = np.where(case.seated.sin >= 0, first, last)
    room = case.seated.body_z(x=x, z=z) - box.top
    return Path(np.where(first < last, room, np.inf), x, z)

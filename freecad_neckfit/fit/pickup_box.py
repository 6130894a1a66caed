"""The neck pickup as an obstacle: how near it stands to the fretboard's end."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from .board_edge import end_foot
from .mount import pickup_mount

if TYPE_CHECKING:
    from .case import Case


class Box(NamedTuple):
    """Body-frame X of the pickup's front and back, Z of its mount and of its top [mm]."""

    front: Array
    back: Array
    mount: Array
    top: Array


def neck_pickup(case: Case) -> Box:
    """The neck pickup with its ring, its poles in the middle of their travel."""
    half = case["pickup_neck.length"] / 2
    mount = pickup_mount(case, role="neck")
    poles = (case["pickup_neck.low"] + case["pickup_neck.high"]) / 2
    return Box(
        front=case["pickup_neck.x"] - half,
        back=case["pickup_neck.x"] + half,
        mount=mount,
        top=mount + np.maximum(poles, case["pickup_neck.ring"]),
    )


class Apart(NamedTuple):
    """Room [mm] between fretboard end and pickup, whether it is a height, and where: X, Z."""

    value: Array
    upright: Array
    x: Array
    z: Array


def board_to_pickup(case: Case) -> Apart:
    """Room between fretboard and neck pickup: along X or in height, whichever is larger.

    Parts that are apart in either direction are free. Along X it is counted from the furthest
    point of the fretboard's end face, in height from the lowest of the overhang, binding included.
    """
    box, end, seated = case.once(neck_pickup), case["neck.overhang"], case.seated
    low = case.once(end_foot)
    end_z = seated.body_z(x=end, z=low)
    heel_z = seated.body_z(x=0.0, z=low)
    upright = np.minimum(end_z, heel_z) - box.top
    furthest = np.where(seated.sin >= 0, low, case["neck.height"])
    end_x, z = seated.to_body(x=end, z=furthest)
    along_x = box.front - end_x
    over = upright > along_x
    return Apart(
        value=np.where(over, upright, along_x),
        upright=over,
        x=end_x,
        z=np.where(over, end_z, z),
    )

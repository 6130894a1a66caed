"""The neck pickup as an obstacle: how near it stands to the fretboard's end."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
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
    """Fretboard end to the front of the neck pickup or its ring, along X, where heights overlap.

    Where the pickup stays below the whole underside (binding included) the value is the height
    between them instead; where it stands above the fretboard's end altogether they do not meet,
    and the distance along X counts.
    """
    box, end, seated = case.once(neck_pickup), case["neck.overhang"], case.seated
    hang = np.where(case["neck.binding_width"] > 0, case["neck.binding"], 0.0)
    low = case["neck.underside"] - hang
    end_x, end_z = seated.to_body(x=end, z=low)
    heel_z = seated.to_body(x=0.0, z=low)[1]
    upright = np.minimum(end_z, heel_z) - box.top
    nearest = np.where(seated.sin >= 0, low, case["neck.height"])
    level = np.where(seated.sin >= 0, box.mount, box.top)
    at_level = (level - seated.z0 - end * seated.sin) / seated.cos
    z = np.where(seated.sin >= 0, np.maximum(nearest, at_level), np.minimum(nearest, at_level))
    along_x = box.front - (seated.x0 + end * seated.cos - z * seated.sin)
    over = upright >= 0
    return Apart(
        value=np.where(over, upright, along_x),
        upright=over,
        x=np.where(over, end_x, box.front),
        z=np.where(over, end_z, seated.z0 + end * seated.sin + z * seated.cos),
    )

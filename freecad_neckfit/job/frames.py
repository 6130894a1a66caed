"""The seat: how a neck lies in its pocket, and the way from neck frame to body frame.

Body frame: origin on the centreline at the top of the end wall, +X toward the bridge, +Z out of
the top, +Y = Z x X. Neck frame: origin at the heel end's bottom, +x toward the bridge, +z from
heel bottom to fretboard.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from .arrays import Array, FloatArray


@dataclass(frozen=True)
class Seat:
    """Where the neck frame lies in the body frame. Angles in radians, lengths in mm.

    ``floor``: tilt of the pocket floor. ``tilt``: tilt of the neck, shim included. ``lift``:
    finish and shim under the heel end, square to the floor. ``x0``, ``z0``: the heel end's bottom.
    """

    floor: Array
    tilt: Array
    lift: Array
    x0: Array
    z0: Array

    def to_body(self, *, x: Array, z: Array) -> tuple[Array, Array]:
        """Body-frame (X, Z) [mm] of neck-frame (x, z) [mm]; Y is the same in both."""
        sin, cos = np.sin(self.tilt), np.cos(self.tilt)
        return self.x0 + x * cos - z * sin, self.z0 + x * sin + z * cos

    def x_to_neck(self, *, big_x: Array, z: Array) -> Array:
        """Neck-frame x [mm] of the point at neck height z that lands at body-frame X."""
        return (big_x - self.x0 + z * np.sin(self.tilt)) / np.cos(self.tilt)

    def spread(self) -> Seat:
        """The same seat with one more axis, to broadcast against strings, frets or screws."""
        return Seat(
            *(
                np.asarray(a)[..., None]
                for a in (self.floor, self.tilt, self.lift, self.x0, self.z0)
            )
        )

    def matrix(self) -> FloatArray:
        """The 4 x 4 rigid motion from neck frame to body frame, for one job."""
        sin, cos = float(np.sin(self.tilt)), float(np.cos(self.tilt))
        return np.array(
            [
                [cos, 0.0, -sin, float(self.x0)],
                [0.0, 1.0, 0.0, 0.0],
                [sin, 0.0, cos, float(self.z0)],
                [0.0, 0.0, 0.0, 1.0],
            ]
        )


def shim(v: Mapping[str, Any]) -> tuple[Array, Array]:
    """Lift at the end wall [mm, square to the floor] and added tilt [radians] of the shim."""
    length = v["pocket.length"]
    if v["shim.make"] == "none":
        return np.float64(0.0), np.float64(0.0)
    if v["shim.make"] == "wedge":
        wall = v["shim.wall"]
        return wall, np.arctan((wall - v["shim.mouth"]) / length)
    free = length - v["shim.strip_edge"]
    return v["shim.strip"] * length / free, np.arctan(v["shim.strip"] / free)


def apex_gap(v: Mapping[str, Any], *, least: Array) -> Array:
    """Heel end's apex to the wall's apex in plan [mm] so that ``least`` [mm] is left anywhere.

    Equal to ``least`` unless the pocket's end is round and the heel's corners come closer to the
    wall than its apex does.
    """
    if v["pocket.end_shape"] == "square":
        return least
    half, wall = v["neck.heel_width_end"] / 2, v["pocket.end_radius"]
    if v["neck.heel_end"] == "square":
        corner = np.minimum(v["neck.heel_corner_radius"], half)
        behind = corner
    else:
        heel = np.maximum(v["neck.heel_radius"], half)
        corner = np.zeros_like(heel)
        behind = heel - np.sqrt(heel**2 - half**2)
    reach = (wall - least - corner) ** 2 - (half - corner) ** 2
    at_corners = wall - behind - np.sqrt(np.maximum(reach, 0.0))
    return np.maximum(least, at_corners)


def seat(v: Mapping[str, Any]) -> Seat:
    """Seat the neck of a job, or of many jobs at once.

    Reads pocket.depth, .angle, .length, .wall, the end shapes, seat.end_gap, the shim and the
    finish on floor and walls. All values broadcast.
    """
    floor = np.radians(v["pocket.angle"])
    shim_lift, shim_tilt = shim(v)
    tilt = floor + shim_tilt
    lift = v["finish.floor"] + shim_lift
    depth = v["pocket.depth"]
    gap = apex_gap(v, least=v["seat.end_gap"] + v["finish.wall"])
    if v["pocket.wall"] == "top":
        gap = gap + depth * np.tan(np.maximum(-tilt, 0.0))
        x0 = -gap
    else:
        gap = gap + depth * np.tan(np.maximum(-shim_tilt, 0.0))
        x0 = depth * np.sin(floor) * np.cos(floor) - gap * np.cos(floor) - lift * np.sin(floor)
    z0 = -depth + x0 * np.tan(floor) + lift / np.cos(floor)
    return Seat(floor=floor, tilt=tilt, lift=lift, x0=x0, z0=z0)

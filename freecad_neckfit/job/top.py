"""The height of the unrouted top, z_top(X, Y), with z_top(0, 0) = 0."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from .arrays import Array
from .sampled_top import sampled_height, sampled_touch


def top_height(v: Mapping[str, Any], *, x: Array, y: Array) -> Array:
    """Height of the bare top over the origin [mm] at body-frame points.

    ``x`` and ``y`` [mm] broadcast against each other and against the job's values. A domed top
    is a sphere with its highest point at X = ``body.dome_centre``; a carved one is
    X·tan(slope) - X²/2R_along - Y²/2R_across; a sampled one runs smoothly through its samples (see
    ``sampled_top``), and its carve_ values are the bowl nearest to it. Valid where the sphere has
    a top (|X|, |Y| well below ``body.dome_radius``).
    """
    shape = v["body.top"]
    if shape == "flat":
        return np.zeros(np.broadcast_shapes(np.shape(x), np.shape(y)))
    if shape == "domed":
        radius, centre = v["body.dome_radius"], v["body.dome_centre"]
        return np.sqrt(radius**2 - (x - centre) ** 2 - y**2) - np.sqrt(radius**2 - centre**2)
    if shape == "sampled":
        return sampled_height(v, x=x, y=y)
    climb = np.tan(np.radians(v["body.carve_slope"]))
    return (
        x * climb
        - x**2 / (2 * v["body.carve_radius_along"])
        - y**2 / (2 * v["body.carve_radius_across"])
    )


def top_tangent(v: Mapping[str, Any]) -> Array:
    """Angle of the top at the origin along X [degrees]; positive climbs toward the bridge."""
    shape = v["body.top"]
    if shape == "flat":
        return np.float64(0.0)
    if shape == "domed":
        radius, centre = v["body.dome_radius"], v["body.dome_centre"]
        return np.degrees(np.arctan(centre / np.sqrt(radius**2 - centre**2)))
    if shape == "sampled":
        rise = sampled_height(v, x=1.0, y=0.0) - sampled_height(v, x=-1.0, y=0.0)
        return np.degrees(np.arctan(rise / 2.0))
    return v["body.carve_slope"]


def x_of_slope(v: Mapping[str, Any], *, slope: Array, y: Array) -> Array:
    """X [mm] where a curved top climbs by ``slope`` (a tangent) along the line at ``y`` [mm].

    Over a sampled top: where a line of that slope touches it from above.
    """
    if v["body.top"] == "sampled":
        return sampled_touch(v, slope=slope, y=y)
    if v["body.top"] == "domed":
        chord = np.sqrt((v["body.dome_radius"] ** 2 - np.square(y)) / (1 + np.square(slope)))
        return v["body.dome_centre"] - slope * chord
    return (np.tan(np.radians(v["body.carve_slope"])) - slope) * v["body.carve_radius_along"]

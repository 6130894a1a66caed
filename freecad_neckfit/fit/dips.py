"""Where a straight line of the neck lies lower than something on the top."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, pick
from .board_edge import Edge, Stretch

if TYPE_CHECKING:
    from .case import Case

LEVEL = 1e-30
"""A slope of nothing, taken as this, so that a level line crosses a flat top far away."""


def dip(case: Case, *, foot: Array, edge: Edge, rise: Array) -> Stretch:
    """Body-frame X [mm] over which a line along the neck above ``edge`` is below the top.

    ``foot``: the line's Z at X = 0, ``rise``: over the bare top [mm]. Endless over a flat top,
    which a line crosses but once; tops are concave along any line, so it is one stretch, and
    empty where first > last.
    """
    slope, base = case.seated.tan, foot - rise
    shape = case["body.top"]
    if shape == "flat":
        cross = -base / pick(slope == 0, LEVEL, slope)
        return Stretch(pick(slope < 0, cross, -np.inf), pick(slope < 0, np.inf, cross))
    return _under_dome(case, base, slope, edge) if shape == "domed" else _under_carve(
        case, base, slope, edge
    )  # fmt: skip


def _under_dome(case: Case, base: Array, slope: Array, edge: Edge) -> Stretch:
    """Within the sphere that the top is a part of."""
    radius, centre = case["body.dome_radius"], case["body.dome_centre"]
    up = base + np.sqrt(np.square(radius) - np.square(centre))
    return _between(
        1 + np.square(slope) + np.square(edge.taper),
        up * slope - centre + edge.half * edge.taper,
        np.square(up) + np.square(centre) + np.square(edge.half) - np.square(radius),
    )


def _under_carve(case: Case, base: Array, slope: Array, edge: Edge) -> Stretch:
    along, across = case["body.carve_radius_along"], case["body.carve_radius_across"]
    climb = np.tan(np.radians(case["body.carve_slope"]))
    return _between(
        1 / along + np.square(edge.taper) / across,
        slope - climb + edge.half * edge.taper / across,
        2 * base + np.square(edge.half) / across,
    )


def _between(a: Array, b: Array, c: Array) -> Stretch:
    """Where a·X² + 2·b·X + c < 0, with a > 0."""
    free = np.square(b) - a * c
    root = np.sqrt(np.maximum(free, 0.0))
    real = free > 0
    return Stretch(np.where(real, (-b - root) / a, np.inf),
                   np.where(real, (-b + root) / a, -np.inf))  # fmt: skip

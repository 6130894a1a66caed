"""The gap that is seen at the top between heel end and end wall."""

from __future__ import annotations

import numpy as np

from .context import Context
from .facets import Facets
from .measured import Measured
from .sections import section
from .sides import no_wall, wall_on_centreline

STEPS = 40
"""Levels at which an end is looked at that is not whole up to the top on the centreline."""
SAME = 1e-6
"""Heights that differ by less than this [mm] are one."""


def end_visible(context: Context) -> Measured:
    """Plan distance [mm] at Z = 0 on the centreline: heel end to finished end wall.

    A truss rod's channel that opens in the heel's end is passed over: the end is carried on from
    under it. So is an end wall that a cavity opens into, from what is left of it on the centreline.
    """
    at = heel_end_at_top(context)
    if at is None:
        return Measured.absent("the heel's end does not reach up to the top")
    left = wall_on_centreline(context)
    if not len(left):
        return no_wall()
    wall = _carried_to_top(left)
    if wall is None:
        return Measured.unknown("the end wall does not reach up to the top")
    return Measured(wall - at - float(context.values["finish.wall"]), (at, 0.0, 0.0))


def heel_end_at_top(context: Context) -> float | None:
    """X [mm] of the heel's end on the centreline at Z = 0; None where it ends below."""
    end = context.heel_walls.facing(axis=0, sign=1, least=0.5)
    at = _on_centreline(end, z=0.0)
    if at is not None or not np.any(end.points[:, :, 2] > -SAME):
        return at
    # A channel, a flush end, or one that is higher at its corners as the neck leans forward.
    found = _carried_to_top(end)
    high = context.frame.to_neck(end.points)[:, :, 2].max()
    if found is None or context.frame.to_neck(np.array([found, 0.0, 0.0]))[2] > high + SAME:
        return None
    return found


def _carried_to_top(end: Facets) -> float | None:
    """X [mm] at Z = 0 of an end that is straight upward, from where it is seen below."""
    heights = end.points[:, :, 2]
    levels = np.linspace(min(0.0, float(heights.max())), float(heights.min()), STEPS)[1:-1]
    seen = [(float(z), x) for z in levels if (x := _on_centreline(end, z=float(z))) is not None]
    if len(seen) < 2:
        return None
    (z, x), (lower, back) = seen[0], seen[-1]
    return x - z * (x - back) / (z - lower)


def _on_centreline(facets: Facets, *, z: float) -> float | None:
    segments, _ = section(facets, z)
    low, high = segments[:, :, 1].min(axis=1), segments[:, :, 1].max(axis=1)
    for (start, end), a, b in zip(segments, low, high, strict=True):
        if a <= 0 <= b:
            rise = end[1] - start[1]
            share = 0.5 if rise == 0 else -start[1] / rise
            return float(start[0] + share * (end[0] - start[0]))
    return None

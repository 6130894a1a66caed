"""The gap that is seen at the top between heel end and end wall."""

from __future__ import annotations

import numpy as np

from .context import Context
from .facets import Facets
from .measured import Measured
from .sections import section

WALL_LEVELS = (-2.0, -1.0)
"""Levels [mm] under the top at which the end wall is looked at."""
STEPS = 40
"""Levels between the heel's bottom and the top at which an end with a channel is looked at."""


def end_visible(context: Context) -> Measured:
    """Plan distance [mm] at Z = 0 on the centreline: heel end to finished end wall.

    A truss rod's channel that opens in the heel's end is passed over: the end is carried on from
    under it.
    """
    at = heel_end_at_top(context)
    if at is None:
        return Measured.absent("the heel's end does not reach up to the top")
    walls = context.facets("body", context.body_faces.walls).facing(axis=0, sign=-1, least=0.5)
    # The wall is straight upward: from two levels on to the top, whose edge may be curved.
    low, high = (_on_centreline(walls, z=z) for z in WALL_LEVELS)
    if low is None or high is None:
        return Measured.unknown("the end wall does not reach up to the top")
    wall = high + (high - low)
    return Measured(wall - at - float(context.values["finish.wall"]), (at, 0.0, 0.0))


def heel_end_at_top(context: Context) -> float | None:
    """X [mm] of the heel's end on the centreline at Z = 0; None where it ends below."""
    end = context.heel_walls.facing(axis=0, sign=1, least=0.5)
    at = _on_centreline(end, z=0.0)
    if at is not None or not len(section(end, 0.0)[0]):
        return at
    levels = np.linspace(0.0, float(end.points[:, :, 2].min()), STEPS)[1:-1]
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

"""The pocket's floor: how high it lies, and what stands over it."""

from __future__ import annotations

import math
from collections.abc import Callable

from ...job.resolve import Values
from .shapes import Point, Solid, tapered


def floor_height(v: Values, x: float) -> float:
    """Height Z [mm] of the pocket's floor at body-frame X."""
    return float(-v["pocket.depth"] + x * math.tan(math.radians(v["pocket.angle"])))


def over_floor(v: Values, x: Point, *, above: float, half: float | None = None) -> Solid:
    """All from x to x [mm] between the floor and Z = ``above``, ``half`` [mm] to each side.

    Far wider than the pocket without a ``half``.
    """
    wide = v["pocket.width_end"] + v["pocket.width_mouth"] + 200.0 if half is None else half
    return trough(v, x, above=above, half=lambda _: wide)


def trough(v: Values, x: Point, *, above: float, half: Callable[[float], float]) -> Solid:
    """As ``over_floor``, ``half`` a function of x [mm] that is straight."""
    profile = [(a, floor_height(v, a)) for a in x]
    profile += [(x[1], above), (x[0], above)]
    return tapered(profile, lambda a: -half(a), half)

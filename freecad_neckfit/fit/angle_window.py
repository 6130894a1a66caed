"""Pocket angles that bring the saddles within the bridge's travel, at the depth as it is."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, FloatArray
from ..job.frames import seat
from .bridge import Bridge
from .saddles import Saddles
from .seated import Seated
from .strings import largest, least

if TYPE_CHECKING:
    from .case import Case

STEEPEST = 30.0
"""No angle beyond this [degrees] is looked for."""
STATED = 6.0
"""Largest pocket angle that a job can state [degrees]."""
CLOSE = 1e-9
"""A margin this near to 0 [mm] is a root: far below 1e-8 degrees at any bridge."""
MOST_STEPS = 60
STEPS = 120
"""Steps across ± 6 degrees; one ends at 0, where the end wall begins to hold the heel off."""


def height_window(case: Case) -> tuple[Array, Array]:
    """Least and largest pocket angle [degrees] at which every string lies within the travel.

    Found on the exact seat by the secant rule, to 1e-8 degrees. The least lies over the largest
    where no angle does it. A bound that would lie beyond 30 degrees is cut there, and NaN where
    nothing within 30 degrees reaches the travel's end.
    """
    return (
        _root(case, margin=lambda bridge: bridge.to_lower, sign=1.0),
        _root(case, margin=lambda bridge: bridge.to_raise, sign=-1.0),
    )


def landing_window(case: Case) -> tuple[float, float]:
    """Least and largest pocket angle [degrees] within ± 6 at which all saddles land lengthwise.

    For one job. Tipped back, a neck draws its saddles toward the nut by about their height over
    its heel per radian; tipped forward, it is the end wall that holds the heel off. So X is no
    steady function of the angle: given is the stretch that holds the job's own angle, or comes
    nearest to it, to 0.001 degrees. NaN where none lands.
    """
    angles = np.linspace(-STATED, STATED, STEPS + 1)
    rooms = landing_room(case, at_angle(case, angles))
    lands = np.flatnonzero(rooms >= 0)
    if not lands.size:
        return np.nan, np.nan
    first = last = int(lands[np.argmin(np.abs(angles[lands] - case["pocket.angle"]))])
    while first > 0 and rooms[first - 1] >= 0:
        first -= 1
    while last < STEPS and rooms[last + 1] >= 0:
        last += 1
    return (
        _between(angles, rooms, inside=first, outside=max(first - 1, 0)),
        _between(angles, rooms, inside=last, outside=min(last + 1, STEPS)),
    )


def landing_room(case: Case, saddles: Saddles) -> Array:
    """Least distance [mm] of any saddle's X to either end of the travel; negative beyond it."""
    front, travel = case["bridge.front"], case["bridge.travel"]
    return np.minimum(least(saddles.x) - front, front + travel - largest(saddles.x))


def at_angle(case: Case, angle: Array) -> Saddles:
    """The saddles of the same joint with another pocket angle [degrees]."""
    return Saddles(case, Seated.of(seat({**case.values, "pocket.angle": angle})))


def _root(case: Case, *, margin: Callable[[Bridge], Array], sign: float) -> Array:
    # A saddle rises with the angle by about its distance X from the end wall per radian.
    usual = sign * np.radians(1.0) * case.saddles.middle_x
    before = np.asarray(case["pocket.angle"], dtype=float)
    value_before = np.asarray(margin(case.bridge))
    angle = np.clip(before - value_before / usual, -STEEPEST, STEEPEST)
    for _ in range(MOST_STEPS):
        value = np.asarray(margin(Bridge(case, at_angle(case, angle))))
        if np.all(np.abs(value) < CLOSE):
            break
        rate = _rate(value - value_before, angle - before, usual=usual)
        before, value_before = angle, value
        angle = np.clip(angle - value / rate, -STEEPEST, STEEPEST)
    beyond = np.where(value > 0, -sign * STEEPEST, np.nan)
    return np.where(np.abs(value) < CLOSE * 100, angle, beyond)


def _rate(rise: Array, run: Array, *, usual: Array) -> Array:
    """Slope of the last step, or the usual one where that step says nothing sensible."""
    taken = np.abs(run) > 0
    rate = np.where(taken, rise / np.where(taken, run, 1.0), usual)
    sensible = (rate / usual > 1 / 3) & (rate / usual < 3)
    return np.where(sensible, rate, usual)


def _between(angles: FloatArray, rooms: FloatArray, *, inside: int, outside: int) -> float:
    if inside == outside:
        return float(angles[inside])
    share = rooms[inside] / (rooms[inside] - rooms[outside])
    return float(angles[inside] + (angles[outside] - angles[inside]) * share)

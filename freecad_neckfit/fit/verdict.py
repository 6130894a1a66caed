"""From a reading to a margin, and from many margins to a verdict; one joint or millions."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from ..job.arrays import Array, FloatArray, pick
from .case import Case
from .check import Check, Gravity
from .reading import Reading

TOUCH = 0.01
"""Parts closer than this [mm] count as touching: neither a room nor an interference."""
ROUNDING = 1e-9
"""A demand met to the last digits of a float counts as met."""


def margin(check: Check, case: Case, *, value: Array) -> Array:
    """Smaller distance of ``value`` to its limits, in the check's unit; negative where unmet.

    Infinite where the check states no limit. A contact demand whose least room is 0 or less is
    met by parts that touch.
    """
    value = np.asarray(value, dtype=float)
    room: Array = np.inf
    low, high = check.limit(case, "low"), check.limit(case, "high")
    if low is not None:
        under = value - np.asarray(low, dtype=float)
        if check.contact:
            touching = (np.abs(value) <= TOUCH) & (np.asarray(low, dtype=float) <= 0)
            under = pick(touching, np.maximum(under, 0.0), under)
        room = under
    if high is not None:
        room = np.minimum(room, np.asarray(high, dtype=float) - value)
    if np.ndim(room) >= value.ndim:
        return room
    return np.broadcast_to(room, value.shape)  # where only the value has an axis of jobs


@dataclass(frozen=True)
class Verdicts:
    """The verdict on N joints.

    ``fits``: every demand that applies is met and known. ``worst``: the smallest margin, each
    divided by its check's ``span`` (so in mm-equivalents), shape (N,). ``binding``: index into
    the checks of the demand with that margin, -1 where none applies. ``unknown``: some demand
    could not be checked.
    """

    fits: NDArray[np.bool_]
    worst: FloatArray
    binding: NDArray[np.int16]
    unknown: NDArray[np.bool_]


def judge_many(case: Case, *, checks: Sequence[Check], count: int) -> Verdicts:
    """Judge ``count`` joints by closed forms; ``case`` holds scalars and arrays of (count,)."""
    worst = np.full(count, np.inf)
    binding = np.zeros(count, dtype=np.int16)  # one more than the index: 0 for none
    unknown = np.zeros(count, dtype=bool)
    for index, check in enumerate(checks):
        if check.read is None or check.gravity is Gravity.TELLS:
            continue
        reading = check.read(case)
        unknown |= np.asarray(reading.applies) & ~np.asarray(reading.known)
        relative = _counted_margin(check, case, reading)
        smaller = relative < worst
        np.fmin(worst, relative, out=worst)
        # The later index is the larger one, and nothing is larger than nothing.
        np.maximum(binding, smaller * np.int16(index + 1), out=binding)
    return Verdicts(
        fits=(worst >= -ROUNDING) & ~unknown, worst=worst, binding=binding - 1, unknown=unknown
    )


def _counted_margin(check: Check, case: Case, reading: Reading) -> Array:
    """Margin over span where the demand applies and is known, infinite elsewhere."""
    room = margin(check, case, value=reading.value)
    relative = room if check.span == 1 else room / check.span
    counts = np.asarray(reading.applies) & np.asarray(reading.known)
    if counts.all():
        return relative
    return pick(counts, relative, np.inf)

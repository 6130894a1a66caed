"""How one value and a million values share the same formulas."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

Array = Any
"""A float, or an array whose leading axes are jobs."""

FloatArray = NDArray[np.float64]


def along(value: Array) -> FloatArray:
    """Give one-per-job values a last axis of length 1, to broadcast against strings or screws."""
    return np.asarray(value, dtype=float)[..., None]


def pick(mask: Array, yes: Array, no: Array) -> Array:
    """``np.where`` without a branch: four times as fast for many jobs that follow no order.

    ``mask`` holds booleans, ``yes`` and ``no`` floats [any unit]; all broadcast. What is returned
    may be one of these arrays itself: it is not to be written into.
    """
    mask, yes, no = np.asarray(mask), np.asarray(yes, dtype=float), np.asarray(no, dtype=float)
    if mask.ndim and {yes.shape, no.shape} <= {mask.shape, ()}:  # often all are picked alike
        if no.ndim and not mask.any():
            return no
        if yes.ndim and mask.all():
            return yes
    one, other = yes.view(np.int64), no.view(np.int64)
    bits = np.negative(mask.view(np.int8)).astype(np.int64)  # all set where true
    return np.asarray(((one ^ other) & bits) ^ other).view(float)[()]


def within(value: Array, low: Array, high: Array) -> Array:
    """``value``, or the limit that it passes; ``np.clip``, which older numpys do in a slow way."""
    return np.minimum(np.maximum(value, low), high)


def distance(x: Array, y: Array) -> Array:
    """Distance (x, y) [mm]; ``np.hypot``, but for its slow care for lengths that no joint has."""
    return np.sqrt(np.square(x) + np.square(y))


def difference(one: Array, other: Array) -> FloatArray:
    """``one`` less ``other``, jobs against strings or screws, each screw's jobs side by side.

    Of many jobs with few screws the kernel's loops then run over the jobs, and what is worked out
    from the result keeps that order.
    """
    return np.asarray(np.subtract(one, other, order="F", dtype=float))

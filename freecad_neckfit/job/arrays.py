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

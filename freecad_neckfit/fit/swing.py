"""How far the neck can swing sideways in the clearance that its heel has."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array

if TYPE_CHECKING:
    from .case import Case


def swing(case: Case) -> Array:
    """Largest turn [radians] of the neck to either side of the centreline.

    c/L_p with c the width of the pocket less that of the heel, both sides together, its mean over
    the pocket's length: the heel's end then touches one side wall and its mouth the other. 0 for
    a heel that does not go between the walls. Round ends and corners are left out.
    """
    finish = 2 * case["finish.wall"]
    end = case["pocket.width_end"] - case["neck.heel_width_end"] - finish
    mouth = case["pocket.width_mouth"] - case["neck.heel_width_mouth"] - finish
    clearance = (np.maximum(end, 0.0) + np.maximum(mouth, 0.0)) / 2
    return clearance / case["pocket.length"]


def sideways(case: Case, *, saddle_x: Array) -> Array:
    """How far [mm] the neck's centreline can miss the bridge's centre at X = ``saddle_x``.

    The neck turns about the middle of the pocket: (c/L_p)·(X_s + L_p/2).
    """
    return swing(case) * (saddle_x + case["pocket.length"] / 2)

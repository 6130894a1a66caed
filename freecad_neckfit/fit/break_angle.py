"""How sharply each string turns over its saddle."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array

if TYPE_CHECKING:
    from .case import Case


def slopes(case: Case) -> tuple[tuple[Array, Array], ...]:
    """(sine, cosine) of each open string's climb toward the bridge in the body frame."""
    sin, cos = case.seated.sin, case.seated.cos
    found = []
    for string in case.strings:
        run = 1 / np.sqrt(1 + np.square(string.climb))
        rise = string.climb * run
        found.append((sin * run + cos * rise, cos * run - sin * rise))
    return tuple(found)


def turns(case: Case) -> tuple[Array, ...]:
    """2·sin(β/2) of each string's break angle β, positive where the string presses down.

    β = slope of the open string + atan((Z_s - Z_a)/(X_a - X_s)), with the anchor a at
    ``bridge.anchor_back`` behind the saddle and ``bridge.anchor_height`` over the mount. The
    down force of a string is its tension times this figure, which grows with β from -180° to
    180°, so that the least one belongs to the least angle. Written without angles, because arcs
    are dear for many jobs. Saddles stand at the height the strings ask for.
    """
    back = case["bridge.anchor_back"]
    found = []
    for (sin, cos), above in zip(case.slopes, case.saddles.above, strict=True):
        drop = above - case["bridge.anchor_height"]
        behind = np.sqrt(np.square(back) + np.square(drop))
        sine = (sin * back + cos * drop) / behind
        cosine = (cos * back - sin * drop) / behind
        found.append(sine * np.sqrt(2 / (1 + cosine)))
    return tuple(found)


def angle_of(turn: Array) -> Array:
    """Break angle β [degrees] from 2·sin(β/2)."""
    return np.degrees(2 * np.arcsin(turn / 2))

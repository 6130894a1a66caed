"""What neck screws must hold, and what wood holds: an engineering estimate."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, along
from ..job.woods import wood
from .screw_seat import screw_seat

if TYPE_CHECKING:
    from .case import Case


def wood_screw_withdrawal(*, gravity: Array, diameter: Array, grip: Array) -> Array:
    """Ultimate withdrawal [N] from side grain: 108.25·G²·D·L (Wood Handbook, chapter 8).

    ``gravity``: specific gravity; shank ``diameter`` and threaded ``grip`` [mm].
    """
    return 108.25 * np.square(gravity) * diameter * grip


def lag_screw_withdrawal(*, gravity: Array, diameter: Array, grip: Array) -> Array:
    """Ultimate withdrawal [N] of a lag screw: 125.4·G^1.5·D^0.75·L (same chapter)."""
    return 125.4 * np.asarray(gravity) ** 1.5 * np.asarray(diameter) ** 0.75 * grip


def lag_screw_allowable(*, gravity: Array, diameter_in: Array) -> Array:
    """Allowable withdrawal [lb/in]: 1800·G^1.5·D^0.75 (National Design Specification)."""
    return 1800 * np.asarray(gravity) ** 1.5 * np.asarray(diameter_in) ** 0.75


def moment(case: Case) -> Array:
    """Strings' pull times its lever over the heel end's bottom edge [N mm].

    The lever, square to the strings, is taken as heel bottom to strings over the heel end: H,
    the crowns and the mean action.
    """
    tension = sum(string.tension for string in case.strings)
    action = (case["strings.action_treble"] + case["strings.action_bass"]) / 2
    return tension * (case["neck.height"] + case["neck.fret_height"] + action)


def pull(case: Case) -> Array:
    """Pull on each screw [N]: M·x_i/Σx², x_i from the heel end; no help from the end wall."""
    arm = np.maximum(-case.once(screw_seat).entry_x, 0.0)
    squares = np.sum(np.square(arm), axis=-1)
    return along(moment(case) / np.maximum(squares, 1e-9)) * arm


def capacity(case: Case) -> Array:
    """Ultimate withdrawal [N] of each screw from the neck's wood; NaN where no figure is known."""
    gravity = wood(case["wood.neck"], key="wood.neck").specific_gravity
    return wood_screw_withdrawal(
        gravity=gravity, diameter=along(case["screws.shank"]), grip=case.once(screw_seat).grip
    )

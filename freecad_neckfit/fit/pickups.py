"""Room to lower and to raise a pickup under the strings fretted at the last fret."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

import numpy as np

from ..job.arrays import Array
from .mount import cavity_floor, pickup_mount

if TYPE_CHECKING:
    from .case import Case


class Pickup:
    """The pickup of one role under the outer strings; the poles between follow their arch.

    Pairs are (treble, bass) outer string. All heights count over the pickup's mount [mm].
    """

    def __init__(self, case: Case, *, role: str) -> None:
        """``role`` is neck, middle or bridge."""
        self.case, self.role = case, role

    def __getitem__(self, key: str) -> Any:
        return self.case[f"pickup_{self.role}.{key}"]

    @cached_property
    def places(self) -> tuple[tuple[Array, Array, Array], ...]:
        """Body-frame points of the strings over the poles."""
        x = self["x"]
        outer = self.case.last_fretted[0], self.case.last_fretted[-1]
        return tuple((x, line.across(x), line.height(x)) for line in outer)

    @cached_property
    def mount(self) -> Array:
        """Height Z [mm] that the travel counts from."""
        return pickup_mount(self.case, role=self.role)

    @cached_property
    def strings(self) -> tuple[Array, Array]:
        """Heights [mm] of the strings at the poles."""
        (_, _, treble), (_, _, bass) = self.places
        return treble - self.mount, bass - self.mount

    @cached_property
    def lowest(self) -> Array:
        """Lowest pole tops [mm]: as the hardware lets them, or on compressed springs on the floor.

        The cavity's floor lies below the bare top, so finish and plate count as room.
        """
        floor = cavity_floor(self.case, role=self.role) - self.mount
        return np.maximum(self["low"], floor + self["body_height"] + self["spring"])

    @property
    def highest(self) -> Array:
        """Highest pole tops [mm]."""
        return self["high"]

    @property
    def to_lower(self) -> tuple[Array, Array]:
        """How far [mm] the poles can go below where they may come closest to the strings."""
        treble, bass = self.strings
        return (
            treble - self.case["limits.pole_treble_min"] - self.lowest,
            bass - self.case["limits.pole_bass_min"] - self.lowest,
        )

    @property
    def to_raise(self) -> tuple[Array, Array]:
        """How far [mm] the poles can go above where they may be farthest off the strings."""
        treble, bass = self.strings
        return (
            self.highest - (treble - self.case["limits.pole_treble_max"]),
            self.highest - (bass - self.case["limits.pole_bass_max"]),
        )

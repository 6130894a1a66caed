"""A joint (or many) with the figures that several checks share, each worked out once."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import Any

from ..job.arrays import Array
from ..job.frames import Seat, seat
from ..job.resolve import Values, complete


class Case:
    """All values of a joint, defaults filled in, and what follows from them.

    ``case["pocket.depth"]`` is a float or an array over jobs. Lists (strings, screws, cavities)
    lie along the last axis.
    """

    def __init__(self, stated: Mapping[str, Any]) -> None:
        """``stated`` maps declared keys to inner values (mm, degrees); the rest is filled in."""
        self.values: Values = complete(stated)

    def __getitem__(self, key: str) -> Any:
        return self.values[key]

    @cached_property
    def seat(self) -> Seat:
        """How the neck lies in the body frame."""
        return seat(self.values)

    @cached_property
    def plate_there(self) -> bool:
        """A cover plate is fitted."""
        return bool(self["plate.cover"] != "none")

    @cached_property
    def plate_under_overhang(self) -> bool:
        """A cover plate is fitted and runs under the overhang."""
        return self.plate_there and bool(self["plate.under_overhang"])

    @cached_property
    def treble_sign(self) -> float:
        """+1 where the treble strings lie at +Y, -1 for a left-handed instrument."""
        return -1.0 if self["strings.left_handed"] else 1.0

    @cached_property
    def overhang_end(self) -> tuple[Array, Array]:
        """Body-frame (X, Z) of the overhang's lower end edge."""
        return self.seat.to_body(x=self["neck.overhang"], z=self["neck.underside"])

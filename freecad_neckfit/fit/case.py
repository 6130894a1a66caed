"""A joint (or many) with the figures that several checks share, each worked out once."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cached_property
from typing import Any, TypeVar

from ..job.arrays import Array
from ..job.frames import Seat, seat
from ..job.resolve import Values, complete
from .break_angle import slopes, turns
from .bridge import Bridge
from .frets import Frets
from .last_fret import Line, lines
from .saddles import Saddles
from .seated import Seated
from .strings import String

T = TypeVar("T")


class Case:
    """All values of a joint, defaults filled in, and what follows from them.

    ``case["pocket.depth"]`` is a float or an array over jobs. Lists (strings, screws, cavities)
    lie along the last axis.
    """

    def __init__(self, stated: Mapping[str, Any]) -> None:
        """``stated`` maps declared keys to inner values (mm, degrees); the rest is filled in."""
        self.values: Values = complete(stated)
        self._found: dict[Callable[[Case], Any], Any] = {}

    def __getitem__(self, key: str) -> Any:
        return self.values[key]

    def once(self, work: Callable[[Case], T]) -> T:
        """What ``work`` finds for this case, worked out at the first call only."""
        if work not in self._found:
            self._found[work] = work(self)
        found: T = self._found[work]
        return found

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

    @cached_property
    def seated(self) -> Seated:
        """The seat with sine and cosine of its tilt."""
        return Seated.of(self.seat)

    @cached_property
    def frets(self) -> Frets:
        """The frets and the fretboard under them."""
        return Frets(self)

    @cached_property
    def strings(self) -> tuple[String, ...]:
        """The open strings, treble first, in the neck frame."""
        return tuple(String(self, i) for i in range(int(self["strings.count"])))

    @cached_property
    def saddles(self) -> Saddles:
        """Where the strings ask for their saddles, over the body."""
        return Saddles(self, self.seated)

    @cached_property
    def bridge(self) -> Bridge:
        """What the bridge can do for these saddles."""
        return Bridge(self, self.saddles)

    @cached_property
    def last_fretted(self) -> tuple[Line, ...]:
        """The strings fretted at the last fret, over the body."""
        return lines(self)

    @cached_property
    def slopes(self) -> tuple[tuple[Array, Array], ...]:
        """(sine, cosine) of each open string's climb toward the bridge in the body frame."""
        return slopes(self)

    @cached_property
    def turns(self) -> tuple[Array, ...]:
        """2·sin(β/2) of each string's break angle."""
        return turns(self)

"""Where the strings' rests on the saddles come to lie over the body."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from ..job.arrays import Array
from .mount import bridge_mount
from .seated import Seated
from .strings import String

if TYPE_CHECKING:
    from .case import Case


class Saddles:
    """The saddles that the strings of a seated neck ask for; one entry per string, treble first."""

    def __init__(self, case: Case, seated: Seated) -> None:
        """``seated`` is the case's own seat, or another one that is to be tried."""
        self.case, self.seated = case, seated

    @cached_property
    def strings(self) -> tuple[String, ...]:
        """The open strings."""
        return self.case.strings

    @cached_property
    def points(self) -> tuple[tuple[Array, Array], ...]:
        """Body-frame (X, Z) [mm] of every string's underside on its saddle."""
        heel = self.case["neck.nut_to_heel"]
        return tuple(
            self.seated.to_body(x=s.saddle - heel, z=s.saddle_height) for s in self.strings
        )

    @cached_property
    def x(self) -> tuple[Array, ...]:
        """Body-frame X [mm] of every saddle."""
        return tuple(x for x, _ in self.points)

    @cached_property
    def height(self) -> tuple[Array, ...]:
        """Saddle string heights Z [mm]."""
        return tuple(z for _, z in self.points)

    @cached_property
    def above(self) -> tuple[Array, ...]:
        """Saddle string heights [mm] over the mount at each saddle."""
        return tuple(
            z - bridge_mount(self.case, x=x, y=s.y_saddle)
            for s, (x, z) in zip(self.strings, self.points, strict=True)
        )

    @cached_property
    def middle_x(self) -> Array:
        """Mean X [mm] of the saddles."""
        return sum(self.x) / len(self.x)

    @cached_property
    def places(self) -> tuple[tuple[Array, Array, Array], ...]:
        """Body-frame (X, Y, Z) [mm] of every string's rest on its saddle."""
        return tuple(
            (x, s.y_saddle, z) for s, (x, z) in zip(self.strings, self.points, strict=True)
        )

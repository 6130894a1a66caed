"""The strings fretted at the last fret: the lowest they can run over plate and pickups."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from ..job.arrays import Array

if TYPE_CHECKING:
    from .case import Case


@dataclass(frozen=True)
class Line:
    """A string from the last crown at body-frame (x, z) [mm] to its saddle.

    ``climb`` is its tangent along X; ``y``, ``aside`` give Y = y + aside·(X - x).
    """

    x: Array
    z: Array
    climb: Array
    y: Array
    aside: Array

    def height(self, x: Array) -> Array:
        """Z [mm] of the string's underside at body-frame X [mm]."""
        return self.z + self.climb * (x - self.x)

    def across(self, x: Array) -> Array:
        """Y [mm] of the string at body-frame X [mm]."""
        return self.y + self.aside * (x - self.x)


def lines(case: Case) -> tuple[Line, ...]:
    """Each string fretted at the last fret, its saddle at the height the open string asks for."""
    found = []
    last, heel = float(case.frets.count), case["neck.nut_to_heel"]
    for string, (saddle_x, saddle_z) in zip(case.strings, case.saddles.points, strict=True):
        u = string.fret(last)
        x, z = case.seated.to_body(x=u - heel, z=string.crown(last))
        run, y = saddle_x - x, string.y(u)
        found.append(Line(x, z, (saddle_z - z) / run, y, (string.y_saddle - y) / run))
    return tuple(found)

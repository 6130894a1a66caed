"""Each string's line over the frets, in the neck frame; heights are the string's underside."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array
from ..job.resolve import string_share
from .frets import OCTAVE

if TYPE_CHECKING:
    from .case import Case

FEW = 1000
"""Up to so many jobs a reading also carries places and details, which only reports show."""


class String:
    """One open string as set up: straight from the nut to its saddle, u from the nut [mm].

    ``index`` counts from the treble outer string, ``share`` is 0 there and 1 at the bass outer
    string. Nut clearance and action are straight between the outer strings.
    """

    def __init__(self, case: Case, index: int) -> None:
        """``case`` states neck and strings; the seat is not read."""
        self.case, self.index, self.frets = case, index, case.frets
        self.share = float(string_share(int(case["strings.count"]))[index])

    def between(self, key: str) -> Array:
        """A value of the strings given for treble and bass, on this string."""
        treble, bass = self.case[f"strings.{key}_treble"], self.case[f"strings.{key}_bass"]
        return treble + (bass - treble) * self.share

    def across(self, spread: Array) -> Array:
        """Y [mm] where the outer strings lie ``spread`` [mm] apart."""
        return self.case.treble_sign * spread * (0.5 - self.share)

    @cached_property
    def scale(self) -> Array:
        """This string's own scale length [mm]."""
        treble, bass = self.case["neck.scale"], self.case["neck.scale_bass"]
        return treble + (bass - treble) * self.share

    @cached_property
    def nut(self) -> Array:
        """U [mm] where the open string leaves the nut (or crosses the zero fret)."""
        return self.fret(0.0)

    @cached_property
    def saddle(self) -> Array:
        """U [mm] of the string's rest on its saddle: nut + scale + compensation."""
        return self.nut + self.scale + self.case["strings.compensation"][..., self.index]

    @cached_property
    def y_saddle(self) -> Array:
        """Y [mm] at the saddle."""
        return self.across(self.case["strings.spread_bridge"])

    def fret(self, fret: Array) -> Array:
        """U [mm] where the string crosses a fret."""
        return self.frets.position(fret=fret, scale=self.scale)

    def y(self, u: Array) -> Array:
        """Y [mm] at ``u``: straight from nut to saddle."""
        y_nut = self.across(self.case["strings.spread_nut"])
        return y_nut + (self.y_saddle - y_nut) * (u - self.nut) / (self.saddle - self.nut)

    def rise(self, fret: Array) -> Array:
        """Height [mm] of a crown under this string against the crest of a straight neck."""
        u = self.fret(fret)
        return self.frets.rise(fret=fret, u=u, y=self.y(u))

    def crown(self, fret: Array) -> Array:
        """Height [mm] of a crown under this string over the heel's bottom."""
        return self.frets.crest + self.rise(fret)

    def crown_place(self, fret: int) -> tuple[Array, Array, Array]:
        """Body-frame (X, Y, Z) [mm] of a crown under this string."""
        u = self.fret(float(fret))
        x, z = self.case.seated.to_body(
            x=u - self.case["neck.nut_to_heel"], z=self.crown(float(fret))
        )
        return x, self.y(u), z

    @cached_property
    def _low_end(self) -> tuple[Array, Array]:
        """(u, z) [mm] of the open string at fret 1, or on the zero fret."""
        if self.case["strings.zero_fret"]:
            return self.nut, self.crown(0.0)
        return self.fret(1.0), self.crown(1.0) + self.between("nut")

    @cached_property
    def over_octave(self) -> Array:
        """Height [mm] of the open string at fret 12: the crown and the action."""
        return self.crown(float(OCTAVE)) + self.between("action")

    @cached_property
    def climb(self) -> Array:
        """Climb of the open string toward the saddle, as a tangent, in the neck frame."""
        u, z = self._low_end
        return (self.over_octave - z) / (self.fret(float(OCTAVE)) - u)

    def height(self, u: Array) -> Array:
        """Height [mm] of the open string's underside over the heel's bottom at ``u`` [mm]."""
        return self.over_octave + self.climb * (u - self.fret(float(OCTAVE)))

    @cached_property
    def saddle_height(self) -> Array:
        """Height [mm] over the heel's bottom at which the saddle must carry the string."""
        return self.height(self.saddle)

    @cached_property
    def tension(self) -> Array:
        """Pull [N] of the string, mass per length · (2·scale·frequency)²."""
        mass = self.case["strings.mass"][..., self.index] * 1e-3
        pitch = self.case["strings.pitch"][..., self.index]
        return mass * (2 * self.scale * 1e-3 * pitch) ** 2


def least(values: tuple[Array, ...]) -> Array:
    """Least of one value per string, for each job."""
    result = values[0]
    for value in values[1:]:
        result = np.minimum(result, value)
    return result


def largest(values: tuple[Array, ...]) -> Array:
    """Largest of one value per string, for each job."""
    result = values[0]
    for value in values[1:]:
        result = np.maximum(result, value)
    return result


def per_string(values: tuple[Array, ...]) -> Array:
    """One value per string as an array with strings along the last axis."""
    return np.stack(np.broadcast_arrays(*values), axis=-1)


def is_few(values: tuple[Array, ...]) -> bool:
    """Whether there are so few jobs that places and details are wanted."""
    return max(np.size(value) for value in values) <= FEW


def place_of_least(
    values: tuple[Array, ...], points: tuple[tuple[Array, Array, Array], ...]
) -> tuple[Array, Array, Array] | None:
    """The point that belongs to the least value, for few jobs; None for many."""
    flat = tuple(axis for point in points for axis in point)
    if not is_few(values + flat):
        return None
    table = np.broadcast_arrays(*values, *flat)
    count = len(values)
    worst = np.argmin(np.stack(table[:count]), axis=0)[None]
    axes = (np.stack(table[count + axis :: 3]) for axis in range(3))
    x, y, z = (np.take_along_axis(axis, worst, axis=0)[0] for axis in axes)
    return x, y, z

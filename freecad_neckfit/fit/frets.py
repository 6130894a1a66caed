"""Where the frets stand along a string, and how high their crowns lie."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

import numpy as np

from ..job.arrays import Array

if TYPE_CHECKING:
    from .case import Case

OCTAVE = 12


def fret_distance(*, scale: Array, fret: Array) -> Array:
    """Nut to fret [mm] in equal temperament, L·(1 - 2^(-n/12)), on a string of ``scale`` [mm]."""
    return scale * (1 - 2.0 ** (-np.asarray(fret) / OCTAVE))


class Frets:
    """The frets of a neck: positions u from the nut on the centreline [mm], crowns over u.

    ``fret`` is a number, 0 for the nut. Where ``one_neck`` is true every figure that depends on
    the neck alone is one number, whatever the number of jobs, and an array of fret numbers may
    be given; otherwise ``numbers`` has an axis of frets before the axis of jobs.
    """

    def __init__(self, case: Case) -> None:
        """``case`` states the neck; nothing of the seat is read but the pocket's length."""
        self.case = case

    def __getitem__(self, key: str) -> Any:
        return self.case[f"neck.{key}"]

    @cached_property
    def count(self) -> int:
        """How many frets there are: the number of the last one."""
        return int(self["frets"])

    @cached_property
    def one_neck(self) -> bool:
        """Whether all jobs share one neck as far as crowns and string lengths go."""
        keys = (
            "neck.scale", "neck.scale_bass", "neck.square_fret", "neck.nut_to_heel",
            "neck.overhang", "neck.radius_nut", "neck.radius_end", "neck.fall_away",
            "neck.relief", "pocket.length", "strings.spread_nut", "strings.spread_bridge",
        )  # fmt: skip
        shared = all(np.ndim(self.case[key]) == 0 for key in keys)
        return shared and np.ndim(self.case["strings.compensation"]) == 1

    @cached_property
    def numbers(self) -> Array:
        """Fret numbers 1 … N, ready to broadcast against one neck or against many."""
        numbers = np.arange(1.0, self.count + 1)
        return numbers if self.one_neck else numbers[:, None]

    @cached_property
    def middle_scale(self) -> Array:
        """Scale length on the centreline [mm]: the mean of treble and bass."""
        return (self["scale"] + self["scale_bass"]) / 2

    @cached_property
    def square_share(self) -> Array:
        """Share of a string's scale that lies behind the fret square to the centreline."""
        return 2.0 ** (-np.asarray(self["square_fret"]) / OCTAVE)

    def position(self, *, fret: Array, scale: Array) -> Array:
        """U [mm] of a fret on a string of ``scale``: U + L·(2^(-p/12) - 2^(-n/12)).

        All strings cross the square fret p at the same u; with one scale that is
        L·(1 - 2^(-n/12)) from the nut's front face.
        """
        behind = 2.0 ** (-np.asarray(fret) / OCTAVE)
        square = self.middle_scale * (1 - self.square_share)
        return square + scale * (self.square_share - behind)

    def on_centre(self, fret: Array) -> Array:
        """U [mm] of a fret on the centreline."""
        return self.position(fret=fret, scale=self.middle_scale)

    @cached_property
    def joint(self) -> Array:
        """u_j [mm] where the neck leaves the body: it is straight from there to the heel end."""
        return self["nut_to_heel"] - self.case["pocket.length"]

    @cached_property
    def bend(self) -> Array:
        """K [1/mm] of the relief curve k·(u_j - u)².

        The largest depth of the crowns under the chord from fret 1 to the last fret is then
        exactly the relief. Where the last fret lies before the body joint the curve runs as far
        as that fret. No relief where fret 1 lies beyond the joint.
        """
        first, last = self.on_centre(1), self.on_centre(self.count)
        chord = last - first
        bent = np.minimum(self.joint - first, chord)
        there = bent > 0
        arm = np.where(there, bent, 1.0)
        return np.where(there, self["relief"] / (arm * (1 - arm / (2 * chord))) ** 2, 0.0)

    def bow(self, u: Array) -> Array:
        """Rise [mm] of the neck's line at ``u`` [mm] through relief; 0 past the body joint."""
        return self.bend * np.maximum(self.joint - u, 0.0) ** 2

    @cached_property
    def board_end(self) -> Array:
        """U [mm] of the fretboard's end."""
        return self["nut_to_heel"] + self["overhang"]

    def radius(self, u: Array) -> Array:
        """Radius [mm] of the fretboard's top at ``u``: straight from the nut to the board's end."""
        return self["radius_nut"] + (self["radius_end"] - self["radius_nut"]) * u / self.board_end

    def sag(self, *, u: Array, y: Array) -> Array:
        """Depth [mm] of the fretboard's top under its crest at (u, y); needs |y| < radius."""
        radius = self.radius(u)
        return np.square(y) / (radius + np.sqrt(np.square(radius) - np.square(y)))

    def fall(self, fret: Array) -> Array:
        """How far [mm] a crown lies lower through fall-away: straight from fret 12 to the last."""
        if self.count <= OCTAVE:
            return np.zeros(np.shape(fret))
        octave = 2.0**-1
        share = (octave - 2.0 ** (-np.asarray(fret) / OCTAVE)) / (
            octave - 2.0 ** (-self.count / OCTAVE)
        )
        return np.maximum(share, 0.0) * self["fall_away"]

    def rise(self, *, fret: Array, u: Array, y: Array) -> Array:
        """Height [mm] of a crown at (u, y) against the crest of a straight neck.

        The relief is that of the fret's crossing of the centreline: a fret is straight and moves
        as a whole, also where it stands aslant.
        """
        return self.bow(self.on_centre(fret)) - self.sag(u=u, y=y) - self.fall(fret)

    @cached_property
    def crest(self) -> Array:
        """Heel bottom to the crowns' crest [mm] where the neck is straight."""
        return self["height"] + self["fret_height"]

    def half_width(self, u: Array) -> Array:
        """Centreline to fretboard edge [mm], binding included."""
        nut, end = self["width_nut"] / 2, self["width_end"] / 2
        return nut + (end - nut) * u / self.board_end

"""Half of a plan that is symmetric about the centreline: end, corner and side; pocket or heel."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, distance, pick

if TYPE_CHECKING:
    from .case import Case

NOTHING = 1e-300
"""A length [mm] to divide nothing by."""


@dataclass(frozen=True)
class Outline:
    """One side of a pocket's or heel's plan, in mm, X toward the bridge.

    ``end``: X of the end line or of the round end's apex. ``half`` + ``taper``·X: half width of
    the straight side. ``arc_x``, ``arc_y``, ``radius``: the corner's arc, or the round end itself.
    ``meet``: X where arc and side meet. ``lean``: tangent by which the arc's last radius there
    leans away from the end.
    """

    end: Array
    half: Array
    taper: Array
    arc_x: Array
    arc_y: Array
    radius: Array
    meet: Array
    lean: Array

    @cached_property
    def stretch(self) -> Array:
        """Length along the side per mm of X: one over the cosine of its taper."""
        return np.sqrt(1 + np.square(self.taper))

    def side(self, x: Array) -> Array:
        """Half width [mm] of the straight side's line at ``x``."""
        return self.half + self.taper * x

    def half_width(self, x: Array) -> Array:
        """Half width [mm] of the outline at ``x``, corner or round end included; 0 past the end."""
        reach = np.square(self.radius) - np.square(x - self.arc_x)
        rounded = self.arc_y + np.sqrt(np.maximum(reach, 0.0))
        inside = np.where(x > self.meet, rounded, self.side(x))
        return np.where(x > self.end, 0.0, inside)

    def farthest(
        self,
        *,
        x: Array,
        y: Array,
        radius: Array = 0.0,
        squeeze: Array = 1.0,
        until: Array = np.inf,
        shrunk: Array = 1.0,
    ) -> Array:
        """How far [mm] a point or arc lies outside the end, its corner and the side's line there.

        Negative: how deep inside it lies. The arc has its centre at (x, y) and looks shorter
        along X by ``squeeze`` (it lies aslant). It runs from straight ahead until it is square to
        a side whose half width grows by ``until`` per mm of X; where it ends before it faces this
        outline's side, its last point is for the caller to ask. Exact for a point; for an arc
        within 0.001 as long as the slant stays below 6°. All lengths along X may be ``shrunk`` by
        a share: how far is told in the plan before that, within 0.001 for points 2 mm outside.
        """
        right, up = x - self.arc_x, y - self.arc_y
        past_end = (right + radius * squeeze - self.radius) / shrunk
        past_side = (y - self.side(x)) / np.sqrt(1 + np.square(self.taper * shrunk)) + radius
        if np.any(ends_early := until < self.taper):
            past_side = pick(ends_early, -np.inf, past_side)
        far = np.maximum(past_end, past_side)
        cornered = (up > 0) & (right + np.minimum(self.lean, until) * up > 0)
        if not np.any(cornered):
            return far
        away = distance(right, up)
        corner = away - self.radius
        if np.ndim(radius) or radius:
            corner = corner + radius * distance(squeeze * right, up) / np.maximum(away, NOTHING)
        if np.ndim(shrunk) or shrunk != 1.0:
            corner = corner * away / np.maximum(distance(shrunk * right, up), NOTHING)
        return pick(cornered, np.maximum(far, corner), far)


def pocket_outline(case: Case, *, offset: Array = 0.0) -> Outline:
    """The pocket's plan in the body frame, ``offset`` [mm] outward (negative: finish)."""
    half, taper = pocket_side(case)
    if case["pocket.end_shape"] == "round":
        return round_end(half=half, taper=taper, radius=case["pocket.end_radius"], offset=offset)
    return square_end(half=half, taper=taper, radius=case["pocket.corner_radius"], offset=offset)


def pocket_side(case: Case) -> tuple[Array, Array]:
    """Half width [mm] of the pocket's straight side at X = 0, and its growth per mm of X."""
    end = case["pocket.width_end"]
    return end / 2, (end - case["pocket.width_mouth"]) / (2 * case["pocket.length"])


def heel_outline(case: Case, *, offset: Array = 0.0) -> Outline:
    """The heel's plan in the neck frame, its end at x = 0; ``offset`` [mm] outward."""
    length, end = case["pocket.length"], case["neck.heel_width_end"]
    half, taper = end / 2, (end - case["neck.heel_width_mouth"]) / (2 * length)
    if case["neck.heel_end"] == "round":
        return round_end(half=half, taper=taper, radius=case["neck.heel_radius"], offset=offset)
    return square_end(half=half, taper=taper, radius=case["neck.heel_corner_radius"], offset=offset)


def square_end(*, half: Array, taper: Array, radius: Array, offset: Array = 0.0) -> Outline:
    """An end line at X = 0 with arcs of ``radius`` tangent to it and to the sides, then offset."""
    stretch = np.sqrt(1 + np.square(taper))
    wide, left = half + offset * stretch, np.maximum(radius + offset, 0.0)
    arc_x = offset - left
    return Outline(
        end=offset,
        half=wide,
        taper=taper,
        arc_x=arc_x,
        arc_y=wide + taper * arc_x - left * stretch,
        radius=left,
        meet=arc_x - left * taper / stretch,
        lean=taper,
    )


def round_end(*, half: Array, taper: Array, radius: Array, offset: Array = 0.0) -> Outline:
    """A round end with its apex at X = 0; the sides begin where the arc crosses their lines."""
    slope = 1 + np.square(taper)
    wide, large = half + offset * np.sqrt(slope), radius + offset
    middle = radius + wide * taper
    root = np.square(middle) - slope * (np.square(radius) + np.square(wide) - np.square(large))
    meet = (np.sqrt(np.maximum(root, 0.0)) - middle) / slope
    return Outline(
        end=offset,
        half=wide,
        taper=taper,
        arc_x=-np.asarray(radius),
        arc_y=np.zeros(()),
        radius=large,
        meet=meet,
        lean=-(meet + radius) / (wide + taper * meet),
    )

"""What the bridge can do for the strings: room to lower and to raise, and where it stops."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

import numpy as np

from ..job.arrays import Array, within
from .mount import bridge_mount
from .saddles import Saddles
from .strings import largest, least

if TYPE_CHECKING:
    from .case import Case


class Bridge:
    """The bridge of a case under the saddles that its strings ask for.

    Separate saddles: each travels between ``bridge.low`` and ``bridge.high`` over the mount.
    Floating: these count from the base, and the base stands between ``bridge.base_low`` and
    ``bridge.base_high`` over the mount. Fixed radius: these bound, over each of the two posts,
    the straight line through the outer strings' undersides; the strings between follow the radius.
    """

    def __init__(self, case: Case, saddles: Saddles) -> None:
        """``saddles`` may belong to the case's own seat or to another one that is to be tried."""
        self.case, self.saddles = case, saddles

    def __getitem__(self, key: str) -> Any:
        return self.case[f"bridge.{key}"]

    @cached_property
    def to_lower(self) -> Array:
        """Least room [mm] that is left to lower the strings; negative: it does not go so low."""
        lowest = self["low"] + (self["base_low"] if self["make"] == "floating" else 0.0)
        return least(self._carried) - lowest

    @cached_property
    def to_raise(self) -> Array:
        """Least room [mm] that is left to raise the strings; negative: it does not go so high.

        On a floating bridge the base stands as high as the lowest string allows, so that saddles
        too far apart for their own travel are seen as well.
        """
        base = self.base if self["make"] == "floating" else 0.0
        return self["high"] + base - largest(self._carried)

    @cached_property
    def _carried(self) -> tuple[Array, ...]:
        """Heights [mm] over the mount which the travel must reach: at each saddle or post."""
        return self._posts if self["make"] == "fixed radius" else self.saddles.above

    @cached_property
    def base(self) -> Array:
        """Floating: highest base over the mount [mm], within its travel, that the strings allow."""
        free = least(self.saddles.above) - self["low"]
        return within(free, self["base_low"], self["base_high"])

    @cached_property
    def shifts(self) -> tuple[Array, ...]:
        """How far [mm, along Z] each string ends up over the height it needs; 0 within travel."""
        if self["make"] == "fixed radius":
            return self._radius_shifts
        base = self.base if self["make"] == "floating" else 0.0
        low, high = self["low"] + base, self["high"] + base
        return tuple(within(above, low, high) - above for above in self.saddles.above)

    @cached_property
    def post_share(self) -> Array:
        """Half the posts' distance over the outer strings' distance."""
        return self["post_spacing"] / (2 * self.case["strings.spread_bridge"])

    @cached_property
    def _posts(self) -> tuple[Array, Array]:
        """Heights [mm] of the outer strings' line over the mount at treble and bass post."""
        treble, bass = self.saddles.height[0], self.saddles.height[-1]
        middle, half = (treble + bass) / 2, (bass - treble) * self.post_share
        y = self.case.treble_sign * self["post_spacing"] / 2
        mount_treble = bridge_mount(self.case, x=self.saddles.x[0], y=y)
        mount_bass = bridge_mount(self.case, x=self.saddles.x[-1], y=-y)
        return middle - half - mount_treble, middle + half - mount_bass

    @cached_property
    def residuals(self) -> tuple[Array, ...]:
        """Fixed radius: height [mm] each string needs over what outer strings and radius give."""
        treble, bass = self.saddles.height[0], self.saddles.height[-1]
        return tuple(
            z - (treble + (bass - treble) * s.share + self._arch(s.y_saddle))
            for s, z in zip(self.saddles.strings, self.saddles.height, strict=True)
        )

    def _arch(self, y: Array) -> Array:
        """Height [mm] of the saddles' radius at ``y`` over the outer strings."""
        radius, half = self["saddle_radius"], self.case["strings.spread_bridge"] / 2
        at_string, outer = np.sqrt(radius**2 - np.square(y)), np.sqrt(radius**2 - np.square(half))
        return (np.square(half) - np.square(y)) / (at_string + outer)

    @cached_property
    def _radius_shifts(self) -> tuple[Array, ...]:
        treble, bass = (within(p, self["low"], self["high"]) - p for p in self._posts)
        middle, slope = (treble + bass) / 2, (bass - treble) / (2 * self.post_share)
        return tuple(
            middle + slope * (s.share - 0.5) - residual
            for s, residual in zip(self.saddles.strings, self.residuals, strict=True)
        )

    @cached_property
    def reached(self) -> tuple[Array, ...]:
        """Neck-frame height [mm] at which each saddle really carries its string.

        The saddle moves along Z while the string keeps its length u.
        """
        return tuple(
            s.saddle_height + shift / self.saddles.seated.cos
            for s, shift in zip(self.saddles.strings, self.shifts, strict=True)
        )

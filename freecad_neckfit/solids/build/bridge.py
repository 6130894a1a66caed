"""The bridge: its base, and a saddle under each string."""

from __future__ import annotations

from typing import Any

import Part

from ...job.resolve import Values, string_share
from .frets import fret_positions
from .shapes import Point, Solid, box
from .top import range_over

BASE = 2.0
"""Usual thickness of the base [mm], from memory; thinner under low saddles."""
SADDLE = 8.0
"""Length of a saddle along the strings [mm], from memory."""


def footprint(v: Values, around: float = 0.0) -> tuple[Point, Point]:
    """Bounds in X and Y [mm] of the base, ``around`` [mm] larger on every side.

    The base lies halfway between the middle of the saddles' travel and the strings' anchor.
    """
    middle = v["bridge.front"] + v["bridge.travel"] / 2 + v["bridge.anchor_back"] / 2
    half = v["bridge.length"] / 2 + around, v["bridge.width"] / 2 + around
    return (float(middle - half[0]), float(middle + half[0])), (float(-half[1]), float(half[1]))


def mount_height(v: Values) -> float:
    """Height Z [mm] of what the base stands on: the highest point under it."""
    x, y = footprint(v)
    top = range_over(v, x, y)[1] + v["finish.top"]
    if v["bridge.mount"] == "recess":
        return float(top - v["bridge.recess"])
    plated = v["bridge.mount"] == "plate" and v["plate.cover"] != "none"
    return float(top + v["plate.thickness"]) if plated else float(top)


def base(v: Values) -> Solid:
    """The base: a level plate under the saddles, a floating one at its lowest height."""
    bottom = mount_height(v) + _lift(v)
    return box(*footprint(v), (bottom, bottom + _base_thickness(v)))


def saddles(v: Values) -> Any:
    """One block for each string, as a compound, treble first.

    Each stands where its string needs it within its travel along X, and at its lowest: nothing but
    its string touches a saddle, and strings are no solids.
    """
    bottom = mount_height(v) + _lift(v) + _base_thickness(v)
    top = mount_height(v) + _lift(v) + float(v["bridge.low"])
    count = int(v["strings.count"])
    room = 0.9 * v["strings.spread_bridge"] / (count - 1) / 2
    sign = -1.0 if v["strings.left_handed"] else 1.0
    blocks = []
    for i, share in enumerate(string_share(count)):
        y, x = sign * v["strings.spread_bridge"] * (0.5 - share), _rest(v, i, float(share))
        across = float(y - room), float(y + room)
        blocks.append(box((x - SADDLE / 2, x + SADDLE / 2), across, (bottom, top)))
    return Part.Compound(blocks)


def _rest(v: Values, i: int, share: float) -> float:
    """X [mm] of the string's rest on a neck without tilt, kept within the saddles' travel."""
    scale = v["neck.scale"] + (v["neck.scale_bass"] - v["neck.scale"]) * share
    nut = fret_positions(v, scale)[0]
    x = nut + scale + v["strings.compensation"][i] - v["neck.nut_to_heel"] - v["seat.end_gap"]
    return float(min(max(x, v["bridge.front"]), v["bridge.front"] + v["bridge.travel"]))


def _lift(v: Values) -> float:
    return float(v["bridge.base_low"]) if v["bridge.make"] == "floating" else 0.0


def _base_thickness(v: Values) -> float:
    return float(min(BASE, v["bridge.low"] / 2))

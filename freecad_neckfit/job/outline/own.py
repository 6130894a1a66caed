"""The workbench's own invented body: two cutaways, a waist, and arcs that run into each other.

Each half is a chain of straight lines whose corners are rounded as far as their lines allow. The
walls beside the pocket stay straight and parallel to the centreline from the mouth to the cutaway's
bottom, and the front edge between them lies at the pocket's mouth.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..errors import CannotBuild
from .chain import Outline, Segment
from .rounded import Corner, rounded

LEAST_WALL = 5.0
"""Shortest straight wall [mm] between the pocket's mouth and a cutaway's bottom."""
LEAST_HORN = 30.0
"""Narrowest horn [mm]: two rounded edges and the round of its tip have room on it."""
LEAST_WAIST = 8.0
"""How much the waist lies inside the body's widest parts on each side [mm]."""
TOUCH = 15.0
"""How far from the horn tip's corners, and from those of the upper bout, roundings begin [mm]."""
HORN = {"treble": 62.0, "bass": 78.0}
"""Bottom of a cutaway to the tip of its horn [mm]."""


def own_outline(v: Mapping[str, Any]) -> Outline:
    """Return the outline of ``body.tail``, ``_width``, ``block_`` and ``cutaway_`` parameters.

    The treble side lies at +Y, and at -Y for a left-handed instrument. Raises CannotBuild where
    the widths leave no waist, no horn or no wall beside the pocket.
    """
    _check_widths(v)
    upper, lower = (_half(v, side) for side in _sides(v))
    back = [s.mirrored() for s in reversed(lower)]
    front = Segment(back[-1].end, upper[0].start)
    # Both halves end at the tail on the centreline, in one line square to it.
    tail = Segment(upper[-1].start, back[0].end)
    return Outline.of_segments([front, *upper[:-1], tail, *back[1:]])


def _sides(v: Mapping[str, Any]) -> tuple[str, str]:
    return ("bass", "treble") if v["strings.left_handed"] else ("treble", "bass")


def _half(v: Mapping[str, Any], side: str) -> list[Segment]:
    """Segments of one side at positive Y, from the mouth's corner to the tail's middle."""
    mouth, tail = -float(v["pocket.length"]), float(v["body.tail"])
    block, bottom = float(v[f"body.block_{side}"]), -float(v[f"body.cutaway_{side}"])
    upper, waist, lower = (
        float(v[f"body.{part}_width"]) / 2 for part in ("upper", "waist", "lower")
    )
    round_ = cutaway_radius(v, side)
    horn = upper - block - 2 * round_
    tip = bottom - HORN[side]
    tip_width = LEAST_HORN + 0.2 * (horn - LEAST_HORN)
    inner = block + 2 * round_ + 0.25 * (horn - tip_width)
    shoulder = bottom - 15.0
    corners = [
        Corner((mouth, block)),
        Corner((bottom + round_, block), round_),
        Corner((bottom + round_, block + 2 * round_), round_),
        Corner((tip, inner), TOUCH),
        Corner((tip, inner + tip_width), TOUCH),
        Corner((shoulder, upper), TOUCH),
        Corner((shoulder + 2 * TOUCH, upper), TOUCH),
        *_rear(tail, waist, lower),
    ]
    return rounded(corners)


def _rear(tail: float, waist: float, lower: float) -> list[Corner]:
    """Corners from the waist to the tail's middle; shares of the length, by eye."""
    return [
        Corner((0.34 * tail, waist), 0.05 * tail),
        Corner((0.44 * tail, waist), 0.05 * tail),
        Corner((0.62 * tail, lower), 0.10 * tail),
        Corner((0.82 * tail, lower), 0.10 * tail),
        Corner((tail, 0.55 * lower), min(0.5 * lower, 0.09 * tail)),
        Corner((tail, 0.0)),
    ]


def cutaway_radius(v: Mapping[str, Any], side: str) -> float:
    """Radius [mm] at the bottom of a cutaway: the more room the horn leaves, the wider."""
    room = float(v["body.upper_width"]) / 2 - float(v[f"body.block_{side}"])
    return min(max(0.2 * room, 10.0), 20.0)


def _check_widths(v: Mapping[str, Any]) -> None:
    waist = float(v["body.waist_width"])
    for part in ("upper", "lower"):
        width = float(v[f"body.{part}_width"])
        if waist > width - 2 * LEAST_WAIST:
            raise CannotBuild(
                f"body.waist_width: {waist:.2f} mm leaves no waist in a body whose {part} part is "
                f"{width:.2f} mm wide; make it at most {width - 2 * LEAST_WAIST:.2f} mm."
            )
    for side in ("treble", "bass"):
        _check_cutaway(v, side)


def _check_cutaway(v: Mapping[str, Any], side: str) -> None:
    block, upper = float(v[f"body.block_{side}"]), float(v["body.upper_width"]) / 2
    if upper - block - 2 * cutaway_radius(v, side) < LEAST_HORN:
        raise CannotBuild(
            f"body.block_{side}: {block:.2f} mm leaves no horn within body.upper_width of "
            f"{2 * upper:.2f} mm; make the block narrower or the body wider."
        )
    wall = float(v["pocket.length"]) - float(v[f"body.cutaway_{side}"])
    if wall < LEAST_WALL:
        raise CannotBuild(
            f"body.cutaway_{side}: its bottom lies {wall:.2f} mm behind the pocket's mouth, and "
            f"{LEAST_WALL:g} mm are the least; make it smaller or the pocket longer."
        )

"""How near a leaning screw comes to the truss rod's channel, in the neck frame."""

from __future__ import annotations

from typing import NamedTuple

import numpy as np

from ..job.arrays import Array, distance, pick, within

STEPS = 2
"""Turns about the tip's rim until its nearest point is met within 0.002 mm."""


class Shank(NamedTuple):
    """A screw's end: where its axis leaves the heel's bottom, where it ends, and how it leans."""

    entry_x: Array
    tip_x: Array
    tip_z: Array
    radius: Array
    sin: Array
    cos: Array


def rod_room(shank: Shank, *, aside: Array, depth: Array, end: Array) -> Array:
    """Least distance [mm] from the shank to the channel, a block that goes up without end.

    ``aside``: axis beside the block. The block begins at the height ``depth`` and reaches to
    neck x = -``end``. Negative where the screw cuts into it.
    """
    under, before = depth - shank.tip_z, shank.tip_x + end
    inside = _beside(shank, aside=aside, depth=depth, end=end)
    room = pick(under < 0, np.maximum(inside, under), np.maximum(inside, 0.0))
    # A screw that leans away from a block far before it is nearest below its tip.
    at_tip = (under >= 0) & (shank.cos * under >= shank.sin * np.maximum(before, 0.0))
    if not np.any(at_tip):
        return room
    return pick(at_tip, _from_rim(shank, aside, before, under), room)


def _beside(shank: Shank, *, aside: Array, depth: Array, end: Array) -> Array:
    """Of a tip within the block's height: square to the axis, or from its rim to the end face."""
    tan = shank.sin / shank.cos
    at_bottom = (shank.entry_x + depth * tan + end) * shank.cos
    at_tip = shank.tip_x + end + shank.radius * (1 - shank.cos)
    before = pick(shank.sin > 0, at_bottom, at_tip)
    out = distance(np.maximum(aside, 0.0), np.maximum(before, 0.0))
    return pick(out > 0, out, np.maximum(aside, before)) - shank.radius


def _from_rim(shank: Shank, aside: Array, before: Array, under: Array) -> Array:
    """From the flat tip, which leans with the screw, to the block above it."""
    sin, cos, r = shank.sin, shank.cos, shank.radius
    forward: Array = 0.0
    aside_at: Array = r
    for _ in range(STEPS):
        push = sin * (under - sin * forward)
        if np.any(before > 0):
            push = push + cos * np.maximum(before - cos * forward, 0.0)
        gap = np.maximum(aside - aside_at, 0.0)
        turn = r / np.maximum(np.sqrt(np.square(push) + np.square(gap)), 1e-12)
        forward, aside_at = push * turn, gap * turn
    over = aside < r
    if np.any(over):
        forward = pick(over, _under_block(shank, aside, before, under), forward)
    across = pick(over, 0.0, aside - aside_at)
    ahead, up = np.maximum(before - cos * forward, 0.0), np.maximum(under - sin * forward, 0.0)
    return np.sqrt(np.square(ahead) + np.square(across) + np.square(up))


def _under_block(shank: Shank, aside: Array, before: Array, under: Array) -> Array:
    """How far forward the tip's nearest point lies where some of the tip is under the block."""
    spread = np.sqrt(np.maximum(np.square(shank.radius) - np.square(np.maximum(aside, 0.0)), 0.0))
    balanced = within(shank.cos * before + shank.sin * under, -spread, spread)
    return pick(shank.sin > 0, spread, balanced)

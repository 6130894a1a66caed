"""What the saddles have to reach, and how high the strings lie on them within their travel."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .measured import Measured, place_at
from .mount import bridge_mount
from .sides import treble_sign


def saddle_low(context: Context) -> Measured:
    """Least room [mm] to lower the saddles; for a fixed radius at its posts."""
    v, carried = context.values, _carried(context)
    lowest = float(v["bridge.low"])
    if v["bridge.make"] == "floating":
        lowest += float(v["bridge.base_low"])
    index = int(np.argmin(carried))
    return Measured(float(carried[index]) - lowest, _at_saddle(context, index))


def saddle_high(context: Context) -> Measured:
    """Least room [mm] to raise the saddles; for a fixed radius at its posts."""
    carried = _carried(context)
    index = int(np.argmax(carried))
    highest_set = float(context.values["bridge.high"]) + _base(context)
    return Measured(highest_set - float(carried[index]), _at_saddle(context, index))


def rests(context: Context) -> FloatArray:
    """(s, 3) body-frame points of the strings' undersides on their saddles, as the set-up asks."""
    s = context.strings
    return context.frame.to_body(x=s.x_saddle, y=s.y_saddle, z=s.saddle)


def reached(context: Context) -> FloatArray:
    """(s,) neck-frame height [mm] of each string on its saddle, within the bridge's travel."""
    v, points = context.values, rests(context)
    low, high = (float(v[f"bridge.{k}"]) for k in ("low", "high"))
    if v["bridge.make"] == "fixed radius":
        posts = _posts(context)
        y = treble_sign(context) * float(v["bridge.post_spacing"]) / 2 * np.array([1.0, -1.0])
        mounts = bridge_mount(context, np.stack([points[[0, -1], 0], y], axis=1))
        set_at = np.clip(posts, low, high) + mounts
        line = set_at[0] + (set_at[1] - set_at[0]) * (points[:, 1] - y[0]) / (y[1] - y[0])
        shift = line + _arch(context, points[:, 1]) - points[:, 2]
    else:
        above, base = _above(context), _base(context)
        shift = np.clip(above, low + base, high + base) - above
    return np.asarray(context.strings.saddle + shift / context.frame.up[2])


def _above(context: Context) -> FloatArray:
    """(s,) height [mm] of each string over the mount at its saddle."""
    points = rests(context)
    return points[:, 2] - bridge_mount(context, points[:, :2])


def _carried(context: Context) -> FloatArray:
    return _posts(context) if context.values["bridge.make"] == "fixed radius" else _above(context)


def _posts(context: Context) -> FloatArray:
    """Height [mm] of the straight line through the outer strings over the mount at both posts."""
    points, spread = rests(context), float(context.values["bridge.post_spacing"])
    ends = points[[0, -1]]
    y = treble_sign(context) * np.array([spread / 2, -spread / 2])
    share = (y - ends[0, 1]) / (ends[1, 1] - ends[0, 1])
    z = ends[0, 2] + (ends[1, 2] - ends[0, 2]) * share
    return np.asarray(z - bridge_mount(context, np.stack([ends[:, 0], y], axis=1)))


def _base(context: Context) -> float:
    """Highest base of a floating bridge [mm] that the lowest string allows; 0 for others."""
    v = context.values
    if v["bridge.make"] != "floating":
        return 0.0
    free = float(_above(context).min()) - float(v["bridge.low"])
    return float(np.clip(free, v["bridge.base_low"], v["bridge.base_high"]))


def _arch(context: Context, y: FloatArray) -> FloatArray:
    """Height [mm] of the saddles' radius over the chord through the outer strings."""
    radius = float(context.values["bridge.saddle_radius"])
    outer = float(context.values["strings.spread_bridge"]) / 2
    return np.asarray(np.sqrt(radius**2 - y**2) - np.sqrt(radius**2 - outer**2))


def _at_saddle(context: Context, index: int) -> tuple[float, float, float]:
    """The string's rest; of two posts the second belongs to the last string."""
    is_last_post = context.values["bridge.make"] == "fixed radius" and index == 1
    return place_at(rests(context)[-1 if is_last_post else index])

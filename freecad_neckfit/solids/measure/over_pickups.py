"""Outer strings over the pickups, fretted at the last fret."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .measured import Measured
from .mount import cavity_floor, pickup_mount
from .strings import at_x, last_fretted, of_two


def pickup_low(context: Context, role: str) -> Measured:
    """Least room [mm] to lower the poles to the least distance from the outer strings."""
    v, key = context.values, f"pickup_{role}"
    over = _over_pickup(context, role)
    if over is None:
        return Measured.absent(f"no pickup is fitted in the {role} position")
    on_floor = float(v[f"{key}.body_height"]) + float(v[f"{key}.spring"])
    stop = on_floor + cavity_floor(context, role) - pickup_mount(context, role)
    lowest = max(float(v[f"{key}.low"]), stop)
    wish = np.array([float(v[f"limits.pole_{s}_min"]) for s in ("treble", "bass")])
    return of_two(over[0] - wish - lowest, over[1])


def pickup_high(context: Context, role: str) -> Measured:
    """Least room [mm] to raise the poles to the largest distance from the outer strings."""
    over = _over_pickup(context, role)
    if over is None:
        return Measured.absent(f"no pickup is fitted in the {role} position")
    v = context.values
    wish = np.array([float(v[f"limits.pole_{s}_max"]) for s in ("treble", "bass")])
    return of_two(float(v[f"pickup_{role}.high"]) - (over[0] - wish), over[1])


def _over_pickup(context: Context, role: str) -> tuple[FloatArray, FloatArray] | None:
    """Outer strings, fretted at the last fret, over the pickup's mount [mm], and their points."""
    if not context.has(f"pickup_{role}"):
        return None
    x = float(context.values[f"pickup_{role}.x"])
    start, end = last_fretted(context)
    points = at_x(start[[0, -1]], end[[0, -1]], x)
    return points[:, 2] - pickup_mount(context, role), points

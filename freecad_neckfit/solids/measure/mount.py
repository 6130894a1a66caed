"""Heights of what hardware stands on, read from the body's top."""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context


def bridge_mount(context: Context, plan: FloatArray) -> FloatArray:
    """(k,) Z [mm] of finished top, plate on it or recess in it at plan points (k, 2)."""
    v, top = context.values, finished_top(context, plan)
    if v["bridge.mount"] == "plate" and context.has("plate"):
        return top + float(v["plate.thickness"])
    return top - float(v["bridge.recess"]) if v["bridge.mount"] == "recess" else top


def finished_top(context: Context, plan: FloatArray) -> FloatArray:
    """(k,) Z [mm] of the top with its finish at plan points (k, 2)."""
    return context.top_height(np.asarray(plan, dtype=float)) + float(context.values["finish.top"])


def pickup_mount(context: Context, role: str) -> float:
    """Z [mm] that a pickup's travel counts from, on the centreline at its pole line."""
    v = context.values
    if v[f"pickup_{role}.mount"] == "cavity":
        return cavity_floor(context, role)
    top = float(finished_top(context, np.array([[float(v[f"pickup_{role}.x"]), 0.0]]))[0])
    plated = v[f"pickup_{role}.mount"] == "plate" and context.has("plate")
    return top + float(v["plate.thickness"]) if plated else top


def cavity_floor(context: Context, role: str) -> float:
    """Z [mm] of a pickup's cavity floor at its pole line."""
    v = context.values
    bare = context.top_height(np.array([[float(v[f"pickup_{role}.x"]), 0.0]]))[0]
    return float(bare) - float(v[f"pickup_{role}.cavity_depth"])

"""Height of the surface that hardware stands on."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ..job.arrays import Array
from ..job.top import top_height

if TYPE_CHECKING:
    from .case import Case


def bare_top(case: Case, *, x: Array, y: Array) -> Array:
    """Height Z [mm] of the bare top at (X, Y) [mm]; a plain 0 for a flat one."""
    return 0.0 if case["body.top"] == "flat" else top_height(case.values, x=x, y=y)


def plate_thickness(case: Case) -> Array:
    """Thickness [mm] of the cover plate, 0 where none is fitted."""
    return case["plate.thickness"] if case.plate_there else 0.0


def finished_top(case: Case, *, x: Array, y: Array) -> Array:
    """Height Z [mm] of the top with its finish."""
    return bare_top(case, x=x, y=y) + case["finish.top"]


def bridge_mount(case: Case, *, x: Array, y: Array) -> Array:
    """Height Z [mm] of what the bridge stands on: finished top, cover plate on it, or recess in it.

    A recess is as deep below the finished top. A bridge said to stand on the cover plate of a
    body without one stands on the top.
    """
    top = finished_top(case, x=x, y=y)
    if case["bridge.mount"] == "plate":
        return top + plate_thickness(case)
    return top - case["bridge.recess"] if case["bridge.mount"] == "recess" else top


def pickup_mount(case: Case, *, role: str) -> Array:
    """Height Z [mm] that a pickup's travel counts from, on the centreline at its pole line."""
    x = case[f"pickup_{role}.x"]
    if case[f"pickup_{role}.mount"] == "cavity":
        return cavity_floor(case, role=role)
    top = finished_top(case, x=x, y=0.0)
    return top + plate_thickness(case) if case[f"pickup_{role}.mount"] == "plate" else top


def cavity_floor(case: Case, *, role: str) -> Array:
    """Height Z [mm] of a pickup's cavity floor, measured from the bare top at its pole line."""
    x = case[f"pickup_{role}.x"]
    return bare_top(case, x=x, y=0.0) - case[f"pickup_{role}.cavity_depth"]

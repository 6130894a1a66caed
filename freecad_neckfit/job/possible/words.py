"""Lengths in the sentences of this room, in the units of the job."""

from __future__ import annotations

from ..quantity import Units
from ..resolve import Values
from ..show import show_length


def mm(v: Values, length: float) -> str:
    """Return a length [mm] as the job's units show it."""
    units = Units.INCH if v["job.units"] == "inch" else Units.MM
    return show_length(float(length), units=units)

"""Statements that contradict each other."""

from __future__ import annotations

from collections.abc import Iterator

from ..parameters import ALL
from ..quantity import Units
from ..resolve import Values
from ..show import show_value

# The first may not be above the second.
ORDERED = (
    ("bridge.low", "bridge.high"),
    ("bridge.base_low", "bridge.base_high"),
    ("pickup_neck.low", "pickup_neck.high"),
    ("pickup_middle.low", "pickup_middle.high"),
    ("pickup_bridge.low", "pickup_bridge.high"),
    ("screws.threaded", "screws.length"),
    ("climate.humidity_dry", "climate.humidity_damp"),
    ("limits.gap_min", "limits.gap_max"),
    ("limits.side_min", "limits.side_max"),
    ("limits.end_min", "limits.end_max"),
    ("limits.pole_treble_min", "limits.pole_treble_max"),
    ("limits.pole_bass_min", "limits.pole_bass_max"),
    ("limits.tip_min", "limits.tip_wish"),
)


def complaints(v: Values) -> Iterator[str]:
    """Say which least value lies above its largest."""
    for low, high in ORDERED:
        if float(v[low]) > float(v[high]):
            yield (
                f"{low}: {_shown(v, low)} is more than {high}, {_shown(v, high)}; make it "
                "smaller or "
                "the other larger."
            )


def _shown(v: Values, key: str) -> str:
    units = Units.INCH if v["job.units"] == "inch" else Units.MM
    return show_value(float(v[key]), kind=ALL[key].kind, units=units)

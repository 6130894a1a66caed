"""The bridge."""

from __future__ import annotations

from collections.abc import Iterator

from ..resolve import Values
from .words import mm


def complaints(v: Values) -> Iterator[str]:
    """Say why the bridge cannot carry these strings."""
    if v["bridge.make"] == "fixed radius":
        radius, half = float(v["bridge.saddle_radius"]), float(v["strings.spread_bridge"]) / 2
        if half > 0.9 * radius:
            yield (
                f"bridge.saddle_radius: {mm(v, radius)} cannot carry strings spread over "
                f"{mm(v, 2 * half)}; make it larger."
            )

"""The body frame as lines: what a joint shows of itself."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any


def frame_lines(values: Mapping[str, Any]) -> Any:
    """The centreline from the pocket's mouth to the bridge, and the end wall's line [mm]."""
    import FreeCAD  # noqa: F401 (Part crashes where it is imported first)
    import Part

    def line(a: tuple[float, float], b: tuple[float, float]) -> Any:
        return Part.makeLine((*a, 0.0), (*b, 0.0))

    half = float(values["pocket.width_end"]) / 2
    centre = line((-float(values["pocket.length"]), 0.0), (float(values["bridge.front"]), 0.0))
    return Part.Compound([centre, line((0.0, -half), (0.0, half))])

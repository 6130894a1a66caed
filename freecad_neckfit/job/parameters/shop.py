"""What the shop can set: its steps, the router's stops, and the tolerances it works to."""

from __future__ import annotations

from typing import Any

from ..parameter import DERIVED, MEMORY, declare
from ..quantity import Kind

L, A, C = Kind.LENGTH, Kind.ANGLE, Kind.CHOICE

SPREADS = ("uniform", "triangular", "normal")
"""How a dimension may spread between its limits."""
GENERAL = ("none", "f", "m", "c")
"""Classes of ISO 2768-1 that wood is worked to, or none."""


def _step(name: str, default: float, meaning: str) -> tuple[Any, ...]:
    return (f"step_{name}", L, default, meaning, dict(low=0.001, high=10.0))


SHOP = declare(
    "shop",
    _step("depth", 0.1, "smallest change of the pocket's depth"),
    ("step_angle", A, 0.1, "smallest change of the pocket's angle", dict(low=0.001, high=5.0)),
    _step("shim", 0.1, "smallest change of a shim's thickness"),
    _step("plate", 0.1, "smallest change of the cover plate's thickness"),
    _step("recess", 0.5, "smallest change of a recess under the bridge"),
    _step("fretboard", 0.5, "smallest change of the fretboard's length"),
    _step("binding", 0.1, "smallest change of how far the binding hangs"),
    (
        "stops",
        L,
        None,
        "depths at which the router's stops stand, where it has stops",
        dict(low=0.5, high=80.0, many="stop", origin=DERIVED),
    ),
    (
        "swap",
        Kind.NUMBER,
        10.0,
        "how many steps exchanging a whole part counts, when changes are ranked",
        dict(low=0.0, high=1000.0),
    ),
    (
        "general",
        C,
        "none",
        "general tolerance (ISO 2768-1) of dimensions that state no limits of their own",
        dict(choices=GENERAL),
    ),
    (
        "spread",
        C,
        "uniform",
        "how dimensions spread between their limits, unless one states it",
        dict(choices=SPREADS),
    ),
    origin=MEMORY,
)

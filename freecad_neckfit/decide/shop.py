"""What a shop can set: depths that it likes, and the smallest steps of everything else."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from ..job.parameters import ALL
from ..job.quantity import Units
from ..job.show import compact_length

INCH = 25.4
TINY = 1e-9
USUAL, DEEPER = 15.875, 18.288
"""Usual pocket 5/8 in and deeper pocket 0.720 in: common practice, no source."""


def _default(name: str) -> float:
    return float(ALL[f"shop.{name}"].default)


@dataclass(frozen=True)
class Steps:
    """Smallest change [mm, degrees] that the shop makes of each thing.

    ``stops``: depths [mm] of the router's turret, where it has one. ``swap``: what exchanging a
    part counts, in steps. The defaults are those of the job's shop.* parameters.
    """

    depth: float = _default("step_depth")
    angle: float = _default("step_angle")
    shim: float = _default("step_shim")
    plate: float = _default("step_plate")
    recess: float = _default("step_recess")
    fretboard: float = _default("step_fretboard")
    binding: float = _default("step_binding")
    stops: tuple[float, ...] = ()
    swap: float = _default("swap")

    @classmethod
    def of(cls, values: Mapping[str, Any]) -> Steps:
        """The steps that a joint's completed ``values`` state."""
        each = {name: float(values[f"shop.step_{name}"]) for name in STEPPED}
        stops = values["shop.stops"]
        return cls(
            **each,
            stops=() if stops is None else tuple(sorted(float(s) for s in stops)),
            swap=float(values["shop.swap"]),
        )

    def along(self, axis: str) -> float:
        """Smallest change along an axis of a window: depth, angle, shim or plate."""
        return float(getattr(self, axis))

    def nearest(self, axis: str, value: float) -> float:
        """What the shop can set nearest to ``value`` along an axis; a depth at its stops only."""
        if axis == "depth" and self.stops:
            return min(self.stops, key=lambda stop: abs(stop - value))
        step = self.along(axis)
        return min(whole_steps(value - step, value + step, step), key=lambda v: abs(v - value))


STEPPED = ("depth", "angle", "shim", "plate", "recess", "fretboard", "binding")
"""What has a smallest change."""


@dataclass(frozen=True)
class Mark:
    """A depth [mm] that the shop prefers, and why."""

    depth: float
    name: str


def named_marks(steps: Steps, units: Units = Units.MM) -> tuple[Mark, ...]:
    """The usual and the deeper pocket, and the router's stops."""
    marks = [Mark(USUAL, "usual pocket, 5/8 in"), Mark(DEEPER, "deeper pocket, 0.720 in")]
    for stop in steps.stops:
        said = f"{stop:g} mm" if units is Units.MM else compact_length(stop, units=units)
        marks.append(Mark(stop, f"router stop {said}"))
    return tuple(marks)


def sixty_fourths(low: float, high: float) -> tuple[Mark, ...]:
    """Every 64th of an inch from ``low`` to ``high`` [mm]."""
    first, last = math.ceil(low * 64 / INCH - TINY), math.floor(high * 64 / INCH + TINY)
    return tuple(Mark(n * INCH / 64, f"{_fraction(n)} in") for n in range(first, last + 1))


def whole_steps(low: float, high: float, step: float) -> tuple[float, ...]:
    """Every whole number of ``step`` from ``low`` to ``high`` [mm]."""
    first, last = math.ceil(low / step - TINY), math.floor(high / step + TINY)
    return tuple(round(n * step, 9) for n in range(first, last + 1))


def _fraction(sixty_fourth: int) -> str:
    whole, part = divmod(sixty_fourth, 64)
    below = 64
    while part and part % 2 == 0:
        part, below = part // 2, below // 2
    if not part:
        return str(whole)
    return f"{whole} {part}/{below}" if whole else f"{part}/{below}"

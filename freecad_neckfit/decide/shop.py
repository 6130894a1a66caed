"""What a shop can set: depths that it likes, and the smallest steps of everything else."""

from __future__ import annotations

import math
from dataclasses import dataclass

INCH = 25.4
TINY = 1e-9
USUAL, DEEPER = 15.875, 18.288
"""Usual pocket 5/8 in and deeper pocket 0.720 in: common practice, no source."""


@dataclass(frozen=True)
class Steps:
    """Smallest change [mm, degrees] that the shop makes of each thing.

    ``stops``: depths [mm] of the router's turret, where it has one. ``swap``: what exchanging a
    part counts, in steps. All from memory; set your own.
    """

    depth: float = 0.1
    angle: float = 0.1
    shim: float = 0.1
    plate: float = 0.1
    recess: float = 0.5
    fretboard: float = 0.5
    binding: float = 0.1
    stops: tuple[float, ...] = ()
    swap: float = 10.0


@dataclass(frozen=True)
class Mark:
    """A depth [mm] that the shop prefers, and why."""

    depth: float
    name: str


def named_marks(steps: Steps) -> tuple[Mark, ...]:
    """The usual and the deeper pocket, and the router's stops."""
    marks = [Mark(USUAL, "usual pocket, 5/8 in"), Mark(DEEPER, "deeper pocket, 0.720 in")]
    marks += [Mark(stop, f"router stop {stop:g} mm") for stop in steps.stops]
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

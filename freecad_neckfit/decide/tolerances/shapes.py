"""How a dimension spreads between its limits."""

from __future__ import annotations

import enum
import math

import numpy as np

from ...job.arrays import FloatArray

SIGMAS = 3.0
"""Limits of a normal spread lie so many standard deviations from its middle (chosen here)."""
ROOT_2 = math.sqrt(2.0)


class Shape(enum.Enum):
    """The spread of a dimension whose limits lie at -1 and 1.

    Uniform: nothing is known but the limits. Triangular: values near the middle are likelier.
    Normal: limits at three standard deviations; a few values lie beyond them.
    """

    UNIFORM = "uniform"
    TRIANGULAR = "triangular"
    NORMAL = "normal"

    @property
    def deviation(self) -> float:
        """Standard deviation."""
        return {
            Shape.UNIFORM: 1 / math.sqrt(3.0),
            Shape.TRIANGULAR: 1 / math.sqrt(6.0),
            Shape.NORMAL: 1 / SIGMAS,
        }[self]

    @property
    def reach(self) -> float:
        """No draw that counts lies farther out: of a normal spread five deviations."""
        return 5.0 / SIGMAS if self is Shape.NORMAL else 1.0

    def draw(self, rng: np.random.Generator, count: int) -> FloatArray:
        """``count`` draws."""
        if self is Shape.NORMAL:
            return rng.standard_normal(count) / SIGMAS
        draws = rng.random(count)
        if self is Shape.TRIANGULAR:
            return draws - rng.random(count)
        draws *= 2.0
        draws -= 1.0
        return draws

    def below(self, t: FloatArray) -> FloatArray:
        """Share of the spread that lies below ``t``."""
        t = np.asarray(t, dtype=float)
        if self is Shape.NORMAL:
            return np.array([0.5 * (1 + math.erf(v * SIGMAS / ROOT_2)) for v in t.ravel()]).reshape(
                t.shape
            )
        inside = np.clip(t, -1.0, 1.0)
        if self is Shape.UNIFORM:
            return np.asarray((1 + inside) / 2)
        half = (1 - np.abs(inside)) ** 2 / 2
        return np.where(inside < 0, half, 1 - half)

"""One whole study of a joint's limits."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ..progress import Progress
from .dimension import Dimension
from .joint import COSTLY, joint_margins
from .linear import Linear, linearise
from .simulate import DRAWS, SEED, Simulation, simulate
from .tighten import Step, alone, together

AGAIN = 50_000
"""Draws of each repetition with other limits: a share of 1 % is known to 0.1 % then."""


@dataclass(frozen=True)
class Study:
    """Everything about one joint's limits.

    ``alone``: what drawing in one dimension's limits would do; ``steps``: several, one after the
    other, where none alone reaches the wish.
    """

    linear: Linear
    simulation: Simulation
    alone: tuple[Step, ...]
    steps: tuple[Step, ...]


def study(
    stated: Mapping[str, Any],
    dims: Sequence[Dimension],
    *,
    wish: float,
    draws: int = DRAWS,
    seed: int = SEED,
    progress: Progress | None = None,
) -> Study:
    """Work out worst case, root sum square and failures of one joint, and how to reach ``wish``.

    ``wish``: failure share of the whole joint, 0 … 1. Raises Stopped where ``progress`` says so.
    """

    def again(narrower: Sequence[Dimension], count: int = min(AGAIN, draws)) -> Simulation:
        margins = joint_margins(stated, narrower)
        return simulate(narrower, margins, draws=count, seed=seed, costly=COSTLY, progress=progress)

    linear = linearise(dims, joint_margins(stated, dims))
    simulation = again(dims, draws)
    single = alone(simulation, wish=wish)
    enough = simulation.share <= wish or any(s.share <= wish for s in single)
    steps = () if enough else together(simulation, again, wish=wish)
    return Study(linear, simulation, single, steps)

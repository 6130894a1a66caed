"""Which limits to draw in first, and by how much, to reach a wished failure share."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from .dimension import Dimension
from .simulate import Simulation

HALVINGS = 8
"""Most limits that are drawn in one after the other."""
WORTH = 1e-3
"""A dimension that explains less of the failures than this is left alone."""
SURE = 0.95
"""Limits are drawn in for a share somewhat under the wish, so that new draws keep it as well."""
NARROWEST = 0.1
"""No limits are drawn in further than to a tenth: no shop would hold them."""


@dataclass(frozen=True)
class Step:
    """Limits of one dimension drawn in to ``factor`` of their width, and the share then failing."""

    dimension: Dimension
    factor: float
    share: float

    @property
    def half(self) -> float:
        """The new half width of the limits."""
        return self.dimension.half * self.factor


def alone(simulation: Simulation, *, wish: float) -> tuple[Step, ...]:
    """For each dimension that helps, how far its limits alone must be drawn in.

    First those that reach the ``wish``, widest first; then those that do not, drawn in to a
    tenth, by the failures that remain. Read off the simulation's own draws. Empty where the wish
    is met already.
    """
    if simulation.share <= wish:
        return ()
    steps = []
    for n in np.flatnonzero(simulation.influence > WORTH):
        dim = simulation.dims[n]
        best = simulation.share_if(n, NARROWEST)
        factor = _factor(simulation, n, wish) if best <= wish else NARROWEST
        steps.append(Step(dim, factor, simulation.share_if(n, factor)))
    return tuple(sorted(steps, key=lambda s: (s.share > wish, -s.factor, s.share)))


def _factor(simulation: Simulation, n: int, wish: float) -> float:
    low, high = NARROWEST, 1.0
    for _ in range(40):
        middle = (low + high) / 2
        if simulation.share_if(n, middle) <= wish:
            low = middle
        else:
            high = middle
    return low


def together(
    simulation: Simulation,
    again: Callable[[Sequence[Dimension]], Simulation],
    *,
    wish: float,
) -> tuple[Step, ...]:
    """Draw in one dimension's limits after the other, the most helpful first, until it is enough.

    One whose limits alone would do is drawn in as far as needed, others by half. ``again`` repeats
    the simulation with other limits. The last step's share may stay above the ``wish``: then no
    more than eight steps, or nothing at all, would reach it.
    """
    steps: list[Step] = []
    now = simulation
    while now.share > wish and len(steps) < HALVINGS:
        options = alone(now, wish=wish * SURE)
        if not options:
            break
        first = options[0]
        n = now.dims.index(first.dimension)
        if first.share > wish * SURE:
            helpful = [now.dims.index(option.dimension) for option in options]
            n = min(helpful, key=lambda k: now.share_if(k, 0.5))
        factor = first.factor if first.share <= wish * SURE else 0.5
        dim = now.dims[n]
        narrower = narrowed(dim, factor)
        now = again([*now.dims[:n], narrower, *now.dims[n + 1 :]])
        steps.append(Step(dim, factor, now.share))
    return tuple(steps)


def narrowed(dim: Dimension, factor: float) -> Dimension:
    """The same dimension, its limits drawn in about their middle."""
    middle = (dim.lower + dim.upper) / 2
    return replace(dim, lower=middle - dim.half * factor, upper=middle + dim.half * factor)

"""Interference between the parts of a joint, by pairs."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from ...job.errors import KernelFailure
from .clash import BAND, NONE, Clash, clash, volume
from .context import NECK, Context
from .facets import Bounds, Facets
from .measured import Measured

NECK_PARTS = (*NECK, "shaft")
ROLES = ("neck", "middle", "bridge")
AROUND = 0.1
"""How far [mm] beyond the bounds that two parts share their faces are looked at."""


def between(names: tuple[str, ...], other: str) -> Callable[[Context], Measured]:
    """The measurement of the clash between some parts and another one."""

    def measure(context: Context) -> Measured:
        """Room [mm]: 0 where the parts are free or touch, else minus the deepest penetration."""
        fitted = [n for n in names if context.has(n)]
        if not fitted or not context.has(other):
            return Measured.absent(f"there is no {' or '.join(names) if not fitted else other}")
        found = [(name, _clash(context, name, other)) for name in fitted]
        name, worst = max(found, key=lambda f: f[1].depth)
        if worst.depth <= BAND:
            return Measured(0.0, detail={"depth": worst.depth, "volume": 0.0})
        detail: dict[str, object] = {"depth": worst.depth, "part": name, "frees": worst.move}
        detail |= _volume(context, found, other)
        return Measured(-worst.depth, worst.place, detail=detail)

    return measure


def _volume(context: Context, found: list[tuple[str, Clash]], other: str) -> dict[str, object]:
    """The volume, or why there is none: the depth stands without it."""
    total = 0.0
    for name, one in found:
        if one.depth <= BAND:
            continue
        try:
            total += volume(context.shape(name), context.shape(other), one)
        except KernelFailure as error:
            return {"volume": None, "volume unknown because": str(error)}
    return {"volume": total}


def _clash(context: Context, one: str, other: str) -> Clash:
    a, b = (context.boxes(n) for n in (one, other))
    low_a, low_b = a[:, :3].min(axis=0), b[:, :3].min(axis=0)
    high_a, high_b = a[:, 3:].max(axis=0), b[:, 3:].max(axis=0)
    low, high = (f(p, q) for f, p, q in ((np.maximum, low_a, low_b), (np.minimum, high_a, high_b)))
    if (low > high).any():
        return NONE
    # Faces that only touch the common bounds count: without them a wall's thickness is misread.
    low, high = low - AROUND, high + AROUND
    bounds: Bounds = (float(low[0]), float(high[0]), float(low[1]), float(high[1]))
    return clash(_Near(context, one, bounds), _Near(context, other, bounds))


class _Near:
    """A part's triangles within a rectangle of the plan."""

    def __init__(self, context: Context, name: str, bounds: Bounds) -> None:
        self.context, self.name, self.bounds = context, name, bounds

    def up(self) -> Facets:
        return self.context.near(self.name, self.bounds, sign=1)

    def down(self) -> Facets:
        return self.context.near(self.name, self.bounds, sign=-1)

    def all(self) -> Facets:
        return self.context.near(self.name, self.bounds)

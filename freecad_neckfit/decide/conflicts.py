"""Which demands exclude one another where there is no window, and by how much."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from numpy.typing import NDArray

from ..fit.verdict import ROUNDING
from ..job.arrays import FloatArray
from ..job.quantity import Kind, Units
from ..job.show import show_value
from ..job.speech import say
from .demands import DEMANDS, Demand
from .progress import Progress, tell
from .window import Window, find_window

MOST = 3
"""Largest set that is looked for. In a plane of straight borders there is always one so small."""
ZOOMS, ZOOM_POINTS = 12, 9


@dataclass(frozen=True)
class Conflict:
    """Demands that nothing in the range meets together, while any fewer of them can be met.

    ``shortfalls``: how far each stays unmet, in its check's unit, at best where the others of the
    set are met. ``nearest``: (x, y) where they come closest to being met together.
    """

    demands: tuple[Demand, ...]
    shortfalls: tuple[float, ...]
    nearest: tuple[float, float]

    @property
    def rank(self) -> tuple[int, int, float]:
        """Smallest set first, then the gravest, then the one that the others lie within."""
        gravest = min(int(d.gravity) for d in self.demands)
        least = min(s / d.check.span for s, d in zip(self.shortfalls, self.demands, strict=True))
        return len(self.demands), gravest, -least


def find_conflicts(window: Window, *, progress: Progress | None = None) -> tuple[Conflict, ...]:
    """The smallest sets of demands, of one to three, that exclude one another over the window.

    Empty where there is a window. Sets of three are looked for where no smaller one is found.
    Raises Stopped where ``progress`` says so.
    """
    if not window.empty:
        return ()
    holds = window.region.values.reshape(len(window.field.rows), -1) >= -ROUNDING
    found: list[tuple[int, ...]] = []
    for size in range(1, MOST + 1):
        if size == MOST and found:
            break
        suspects = list(_suspects(holds, size, found))
        for n, rows in enumerate(suspects):
            tell(progress, n / len(suspects), f"looking at {_named(window, rows)}")
            if _part(window, rows).empty:
                found.append(rows)
    tell(progress, 1.0, "looked at what excludes what")
    return tuple(sorted((_conflict(window, rows) for rows in found), key=lambda c: c.rank))


def _named(window: Window, rows: Sequence[int]) -> str:
    return " and ".join(DEMANDS[window.field.rows[row]].check.title for row in rows)


def _suspects(
    holds: NDArray[np.bool_], size: int, smaller: Sequence[tuple[int, ...]]
) -> Iterator[tuple[int, ...]]:
    """Sets that hold together at no node of the first lattice, and contain no smaller conflict."""
    binding = [row for row in range(len(holds)) if not holds[row].all()]
    for rows in combinations(binding, size):
        if any(set(less) <= set(rows) for less in smaller):
            continue
        if not np.logical_and.reduce(holds[list(rows)]).any():
            yield rows


def _part(window: Window, rows: Sequence[int]) -> Window:
    """The window of some of the demands alone."""
    field = window.field
    return find_window(
        field.stated,
        second=field.y.name,
        x_range=(field.x.low, field.x.high),
        y_range=(field.y.low, field.y.high),
        rows=[field.rows[row] for row in rows],
    )


def _conflict(window: Window, rows: tuple[int, ...]) -> Conflict:
    demands = tuple(DEMANDS[window.field.rows[row]] for row in rows)
    best = [_best(window, row, [r for r in rows if r != row]) for row in rows]
    shortfalls = tuple(
        max(-value * demand.check.span, 0.0) for value, demand in zip(best, demands, strict=True)
    )
    return Conflict(demands, shortfalls, _zoom(window, rows)[1])


def _best(window: Window, row: int, others: Sequence[int]) -> float:
    """Largest margin of one demand where the others hold."""
    if not others:
        return _zoom(window, [row])[0]
    part = _part(window, others).region
    points = np.concatenate(part.polygons)
    return float(window.field.at(points[:, 0], points[:, 1], of=[row]).max())


def _zoom(window: Window, rows: Sequence[int]) -> tuple[float, tuple[float, float]]:
    """Largest of the least margin of some demands, and where: on ever finer lattices."""
    field = window.field
    x, y = window.region.lattice
    least = window.region.values[list(rows)].min(axis=0)
    i, j = np.unravel_index(int(np.argmax(least)), least.shape)
    best, at = float(least[i, j]), (float(x[i]), float(y[j]))
    reach = float(x[1] - x[0]), float(y[1] - y[0])
    for _ in range(ZOOMS):
        grid = [
            np.clip(np.linspace(at[k] - reach[k], at[k] + reach[k], ZOOM_POINTS), a.low, a.high)
            for k, a in enumerate((field.x, field.y))
        ]
        points: list[FloatArray] = [g.ravel() for g in np.meshgrid(*grid)]
        values = field.at(points[0], points[1], of=list(rows)).min(axis=0)
        n = int(np.argmax(values))
        if values[n] > best:
            best, at = float(values[n]), (float(points[0][n]), float(points[1][n]))
        reach = reach[0] / 2, reach[1] / 2
    return best, at


def shortfall(demand: Demand, short: float, units: Units) -> str:
    """How far a demand stays unmet, with its unit: "0.30 mm short" or "0.10 mm over"."""
    unit = demand.check.unit
    amount = f"{short:.2f}" if unit is Kind.NUMBER else show_value(short, kind=unit, units=units)
    return (say("{} short") if demand.side == "low" else say("{} over")).format(amount)

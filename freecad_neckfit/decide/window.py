"""Which depths and angles work: where every demand holds, and which one bounds it where."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ..fit.verdict import ROUNDING
from ..job.arrays import FloatArray
from ..job.resolve import complete
from .axes import ANGLE, DEPTH, Axis, axis
from .demands import DEMANDS, Demand, met
from .field import Field
from .region import Region, find_region


@dataclass(frozen=True)
class Edge:
    """A stretch of the window's border: the demand that binds (None: the range ends), points."""

    demand: Demand | None
    points: FloatArray


@dataclass(frozen=True)
class Window:
    """The window of one joint over two axes.

    ``chosen``: where the joint itself stands.
    """

    field: Field
    region: Region
    chosen: tuple[float, float]

    @property
    def x(self) -> Axis:
        """The first axis, depth."""
        return self.field.x

    @property
    def y(self) -> Axis:
        """The second axis."""
        return self.field.y

    @property
    def empty(self) -> bool:
        """No depth and angle in the range meets every demand."""
        return self.region.empty

    @cached_property
    def edges(self) -> tuple[Edge, ...]:
        """The window's borders."""
        return tuple(
            Edge(None if b.row < 0 else DEMANDS[self.field.rows[b.row]], b.points)
            for b in self.region.borders
        )

    @cached_property
    def chosen_margins(self) -> dict[Demand, float]:
        """Margin of every demand where the joint stands, in mm-equivalents."""
        return self.margins_at(*self.chosen)

    def margins_at(self, x: float, y: float) -> dict[Demand, float]:
        """Margin of every demand that applies at one point, as findings tell it, smallest first."""
        values = self.field.at(np.array([x]), np.array([y]), told=True)[:, 0]
        values[np.abs(values) < ROUNDING] = 0.0
        order = np.argsort(values, kind="stable")
        return {
            DEMANDS[self.field.rows[i]]: float(values[i]) for i in order if np.isfinite(values[i])
        }

    def holds(self, x: FloatArray, y: FloatArray) -> NDArray[np.bool_]:
        """Whether points lie in the window, by its polygons; exact to some 1e-5 mm."""
        return self.region.holds(x, y)

    def stretches(self, *, y: float) -> tuple[tuple[float, float], ...]:
        """Every stretch of the first axis that lies in the window at ``y`` of the second."""
        return _joined(_cut(polygon, y) for polygon in self.region.polygons)

    @cached_property
    def fits(self) -> bool:
        """Whether the joint itself meets every demand."""
        return bool(met(self.field.at(*(np.array([c]) for c in self.chosen)))[0])


def find_window(
    stated: Mapping[str, Any],
    *,
    second: str = ANGLE,
    x_range: tuple[float | None, float | None] = (None, None),
    y_range: tuple[float | None, float | None] = (None, None),
    rows: Sequence[int] | None = None,
) -> Window:
    """Find where every demand holds over pocket depth and a ``second`` axis.

    ``second``: "angle", "shim" or "plate". Ranges in mm or degrees; None leaves an end as it is
    (see ``axes.axis``). ``rows``: only these demands. Raises BadInput for an axis that the joint
    does not have or a range that is empty.
    """
    values = complete(stated)
    x = axis(DEPTH, values).between(*x_range)
    y = axis(second, values).between(*y_range)
    field = Field(stated, x, y, rows=rows)
    region = find_region(field.allowed, x=(x.low, x.high), y=(y.low, y.high))
    return Window(field, region, _chosen(values, x, y))


def _chosen(values: Mapping[str, Any], x: Axis, y: Axis) -> tuple[float, float]:
    """Where the joint stands; a joint without a shim stands at 0."""
    stands = tuple(0.0 if a.fixed else float(values[a.keys[0]]) for a in (x, y))
    return stands[0], stands[1]


def _cut(polygon: FloatArray, y: float) -> tuple[float, float] | None:
    """Where a level line lies in a convex polygon."""
    after = np.roll(polygon, -1, axis=0)
    (x0, y0), (x1, y1) = polygon.T, after.T
    crosses = (np.minimum(y0, y1) <= y) & (y <= np.maximum(y0, y1))
    if not crosses.any():
        return None
    run = np.where(y1 == y0, 1.0, y1 - y0)[crosses]
    x = x0[crosses] + (x1 - x0)[crosses] * (y - y0[crosses]) / run
    level = (y0 == y1)[crosses]
    ends = np.concatenate([x, x1[crosses][level]])
    return float(ends.min()), float(ends.max())


def _joined(
    pieces: Iterable[tuple[float, float] | None],
) -> tuple[tuple[float, float], ...]:
    """Stretches that touch become one."""
    joined: list[tuple[float, float]] = []
    for low, high in sorted(p for p in pieces if p is not None):
        if joined and low <= joined[-1][1] + 1e-7:
            joined[-1] = joined[-1][0], max(joined[-1][1], high)
        else:
            joined.append((low, high))
    return tuple(joined)

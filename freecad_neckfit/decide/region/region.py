"""From cells to a region: polygons with exact corners, and the borders between them."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .cells import START, refine
from .chain import chain
from .maker import INNER, Maker, Margins

TIED = 1e-8
"""Functions that differ by less along a side are 0 there together."""
BESIDE = 1e-3
"""So far [mm, degrees] beyond a side a function that is 0 along it must be below 0."""
SEAM = 1e-9
"""Polygons reach so far [mm, degrees] over their sides when points are asked for."""


@dataclass(frozen=True)
class Border:
    """A stretch of border: the function that is 0 along it (or ``RANGE``), and points on it."""

    row: int
    points: FloatArray


@dataclass(frozen=True)
class Region:
    """Where all functions are at least 0.

    ``polygons``: convex, not overlapping, each (points, 2). ``labels``: for each polygon's sides
    the function that is 0 there, ``RANGE`` or ``INNER``; side k runs from corner k on.
    ``lattice``: x and y of the first lattice; ``values``: all functions there, (functions, x, y).
    """

    polygons: tuple[FloatArray, ...]
    labels: tuple[tuple[int, ...], ...]
    borders: tuple[Border, ...]
    lattice: tuple[FloatArray, FloatArray] = field(repr=False)
    values: FloatArray = field(repr=False)

    @property
    def empty(self) -> bool:
        """Nothing of the plane is left."""
        return not self.polygons

    def holds(self, x: FloatArray, y: FloatArray) -> NDArray[np.bool_]:
        """Whether points lie in the region, by its polygons."""
        x, y = np.asarray(x, dtype=float), np.asarray(y, dtype=float)
        inside = np.zeros(x.shape, dtype=bool)
        for polygon in self.polygons:
            (left, low), (right, high) = polygon.min(axis=0), polygon.max(axis=0)
            near = (x >= left - SEAM) & (x <= right + SEAM) & (y >= low - SEAM)
            near &= (y <= high + SEAM) & ~inside
            if near.any():
                inside[near] = _in_convex(polygon, x[near], y[near])
        return inside

    @property
    def corners(self) -> FloatArray:
        """All corners of the polygons that lie on a border, (points, 2)."""
        if not self.borders:
            return np.zeros((0, 2))
        return np.concatenate([border.points for border in self.borders])


def _in_convex(polygon: FloatArray, x: FloatArray, y: FloatArray) -> NDArray[np.bool_]:
    after = np.roll(polygon, -1, axis=0)
    # Of corners that fall together rounding alone would say on which side a point lies.
    sides = np.hypot(*(after - polygon).T) > SEAM
    corner, (run, rise) = polygon[sides], (after - polygon)[sides].T
    turn = run[:, None] * (y - corner[:, 1:]) - rise[:, None] * (x - corner[:, :1])
    # A point on the seam of two polygons must not fall between both by rounding.
    seam = SEAM * np.hypot(run, rise)[:, None]
    return np.asarray(np.all(turn >= -seam, axis=0) | np.all(turn <= seam, axis=0))


def find_region(margins: Margins, *, x: tuple[float, float], y: tuple[float, float]) -> Region:
    """Find where all ``margins`` are at least 0 over the rectangle ``x`` times ``y``.

    Thinner than the first lattice's step is no obstacle: see this folder's note. A margin may be
    infinite where a demand does not apply.
    """
    low, size = np.array([x[0], y[0]]), np.array([x[1] - x[0], y[1] - y[0]])

    def scaled(u: FloatArray, v: FloatArray, rows: list[int] | None) -> FloatArray:
        return margins(low[0] + u * size[0], low[1] + v * size[1], rows)

    cells = refine(scaled)
    maker = Maker(margins, low, size)
    for at in cells.whole:
        maker.add_whole(*at)
    for piece in cells.pieces:
        maker.add_piece(piece)
    polygons, labels = maker.polygons()
    labels = _agreed(polygons, labels, margins)
    steps = np.linspace(0, 1, 2 * START + 1)
    return Region(
        polygons=tuple(polygons),
        labels=tuple(labels),
        borders=tuple(_borders(polygons, labels, size)),
        lattice=(low[0] + steps * size[0], low[1] + steps * size[1]),
        values=_on_lattice(cells.values),
    )


def _agreed(
    polygons: list[FloatArray], labels: list[tuple[int, ...]], margins: Margins
) -> list[tuple[int, ...]]:
    """The labels, where several functions are 0 along one side all with the first of them.

    Rounding would else name now one and now the other along the same border.
    """
    sides = [(n, k) for n, named in enumerate(labels) for k, row in enumerate(named) if row >= 0]
    if not sides:
        return labels
    first = np.array([polygons[n][k] for n, k in sides])
    last = np.array([polygons[n][(k + 1) % len(polygons[n])] for n, k in sides])
    inward = np.array([polygons[n].mean(axis=0) for n, _ in sides]) - first
    middle = (first + last) / 2
    points = np.concatenate(
        [first, middle, last, middle - BESIDE * _square_to(last - first, inward)]
    )
    rows, which = np.unique([labels[n][k] for n, k in sides], return_inverse=True)
    values = margins(points[:, 0], points[:, 1], rows.tolist()).reshape(-1, 4, len(sides))
    own = values[which.ravel(), :, np.arange(len(sides))].T
    # The middle of a bent side lies off its own border too. Beyond it both are below 0: one that
    # is 0 everywhere bounds nothing.
    tied = (np.abs(values[:, :3]) <= np.abs(own[:3]) + TIED).all(axis=1)
    tied &= (values[:, 3] < 0.1 * own[3]) | (values[:, 3] == own[3])
    found = [list(named) for named in labels]
    for (n, k), row in zip(sides, np.argmax(tied, axis=0), strict=True):
        found[n][k] = int(rows[row])
    return [tuple(named) for named in found]


def _square_to(run: FloatArray, inward: FloatArray) -> FloatArray:
    """Unit vectors square to ``run``, to the side of ``inward``; 0 where there is no side."""
    square = np.stack([-run[:, 1], run[:, 0]], axis=1)
    length = np.hypot(run[:, 0], run[:, 1])[:, None]
    turned = np.sign(np.einsum("ij,ij->i", square, inward))[:, None]
    found: FloatArray = np.where(length > SEAM, turned * square / np.maximum(length, SEAM), 0.0)
    return found


def _on_lattice(nine: FloatArray) -> FloatArray:
    """The nine nodes of each first cell as one lattice, (functions, x, y)."""
    rows, side = len(nine), 2 * START + 1
    lattice = np.empty((rows, side, side))
    cells = nine.reshape(rows, START, START, 3, 3)
    for a in range(3):
        for b in range(3):
            lattice[:, a : side - 2 + a : 2, b : side - 2 + b : 2] = cells[..., a, b]
    return lattice


def _borders(
    polygons: list[FloatArray], labels: list[tuple[int, ...]], size: FloatArray
) -> list[Border]:
    stretches: dict[int, list[tuple[FloatArray, FloatArray]]] = {}
    for polygon, sides in zip(polygons, labels, strict=True):
        for k, row in enumerate(sides):
            if row != INNER:
                after = polygon[(k + 1) % len(polygon)]
                stretches.setdefault(row, []).append((polygon[k], after))
    return [
        Border(row, points)
        for row, found in stretches.items()
        for points in chain(found, size=size)
    ]

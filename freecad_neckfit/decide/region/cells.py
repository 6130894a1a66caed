"""Cells of a lattice, refined until each is outside, inside, or plain enough to be clipped."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .clip import Point, clip_triangle

Functions = Callable[[FloatArray, FloatArray, list[int] | None], FloatArray]
"""Values at points (x, y) in 0 … 1, shape (functions, points), all or those listed."""

START = 12
"""Cells along each axis to begin with; each is looked at in quarters."""
DEEPEST = 16
FINEST = START << DEEPEST
PLAIN = 0.004
"""A function that bends by less than this within a cell counts as plane there."""
CERTAIN = 1e-8
"""Below this bend no doubt is left whether anything remains of a cell."""
COMMON_DEPTH = 6
"""Levels of refinement for bends; only doubt about a thin region goes deeper."""
MOST_IN_DOUBT = 600
FAR = 1e3
TRIANGLES = (((0, 0), (1, 0), (1, 1)), ((0, 0), (1, 1), (0, 1)))
"""Corners of the two halves of a cell, as steps along both axes."""


@dataclass(frozen=True)
class Piece:
    """A convex piece of the region within one triangle: shares of its corners, and its sides.

    ``corners``: lattice places of the triangle's corners. ``heights``: value of each function of
    ``rows`` at them. ``shape``: as ``clip_triangle`` gives it, labels counting in ``rows``.
    """

    corners: tuple[tuple[int, int], ...]
    rows: tuple[int, ...]
    heights: tuple[tuple[float, ...], ...]
    shape: tuple[tuple[Point, int], ...]


@dataclass
class Cells:
    """What the refinement found: whole cells as (i, j, size), and clipped pieces.

    ``nodes``, ``values``: the first lattice, shape (2·START + 1,)·2 and all functions on it.
    """

    whole: list[tuple[int, int, int]] = field(default_factory=list)
    pieces: list[Piece] = field(default_factory=list)
    values: FloatArray = field(default_factory=lambda: np.zeros(0))


def refine(functions: Functions) -> Cells:
    """Refine the unit square."""
    found = Cells()
    steps = np.arange(START) * (FINEST // START)
    i, j = (a.ravel() for a in np.meshgrid(steps, steps, indexing="ij"))
    size, rows, level = FINEST // START, None, 0
    while i.size and size >= 2:
        values, rows_now = _nodes(functions, i, j, size, rows)
        if level == 0:
            found.values = values
        todo, needed = _quarters(found, values, rows_now, i, j, size, level)
        i, j = todo[:, 0], todo[:, 1]
        size, rows, level = size // 2, needed, level + 1
    return found


def _nodes(
    functions: Functions, i: NDArray[np.int64], j: NDArray[np.int64], size: int,
    rows: list[int] | None,
) -> tuple[FloatArray, list[int]]:  # fmt: skip
    """Values at nine nodes of each cell, shape (functions, cells, 3, 3)."""
    step = np.arange(3) * (size // 2)
    ii, jj = np.broadcast_arrays(
        i[:, None, None] + step[None, :, None], j[:, None, None] + step[None, None, :]
    )
    keys, inverse = np.unique(ii * (FINEST + 1) + jj, return_inverse=True)
    x, y = keys // (FINEST + 1) / FINEST, keys % (FINEST + 1) / FINEST
    values = functions(x, y, rows)
    rows_now = list(range(len(values))) if rows is None else rows
    return values[:, inverse.reshape(ii.shape)], rows_now


def _quarters(
    found: Cells, values: FloatArray, rows: list[int], i: NDArray[np.int64],
    j: NDArray[np.int64], size: int, level: int,
) -> tuple[NDArray[np.int64], list[int]]:  # fmt: skip
    """Sort the quarters of each cell; returns those to look at closer, and the functions needed."""
    nodes = _without_gaps(values)
    bend = _bend(nodes)
    todo: list[_Doubt] = []
    needed: set[int] = set()
    half = size // 2
    for a in (0, 1):
        for b in (0, 1):
            corners = nodes[:, :, a : a + 2, b : b + 2]
            least, most = corners.min(axis=(2, 3)), corners.max(axis=(2, 3))
            alive = np.all(most + bend >= 0, axis=0)
            active = least - bend < 0
            for cell in np.flatnonzero(alive):
                at = int(i[cell]) + a * half, int(j[cell]) + b * half
                rows_here = np.flatnonzero(active[:, cell])
                if not rows_here.size:
                    found.whole.append((*at, half))
                    continue
                doubt = _look(
                    found, at, half, corners[rows_here, cell], bend[rows_here, cell],
                    [rows[r] for r in rows_here], level,
                )  # fmt: skip
                if doubt is not None:
                    todo.append(doubt)
                    needed.update(rows[r] for r in rows_here)
    # Along a jump doubt never ends: the most promising cells are followed, the others stay as
    # they are.
    todo.sort(key=lambda doubt: -doubt.promise)
    for doubt in todo[MOST_IN_DOUBT:]:
        found.pieces.extend(doubt.pieces)
    kept = np.array([d.at for d in todo[:MOST_IN_DOUBT]], dtype=np.int64).reshape(-1, 2)
    return kept, sorted(needed)


@dataclass(frozen=True)
class _Doubt:
    """A cell to look at closer: how promising it is, and what is left of it as it stands."""

    promise: float
    at: tuple[int, int]
    pieces: tuple[Piece, ...]


def _look(
    found: Cells, at: tuple[int, int], half: int, corners: FloatArray, bend: FloatArray,
    rows: list[int], level: int,
) -> _Doubt | None:  # fmt: skip
    """Clip a quarter; returns it if it must be looked at closer."""
    slack = bend.tolist()
    heights = corners.tolist()
    pieces: list[Piece] = []
    hope = False
    for triangle in TRIANGLES:
        there = tuple(tuple(h[p][q] for p, q in triangle) for h in heights)
        if not clip_triangle(there, slack=slack):
            continue
        hope = True
        shape = clip_triangle(there)
        if shape:
            places = tuple((at[0] + p * half, at[1] + q * half) for p, q in triangle)
            pieces.append(Piece(places, tuple(rows), there, tuple(shape)))
    if not hope:
        return None
    worst = max(slack)
    if half > 1 and ((worst > PLAIN and level < COMMON_DEPTH) or (not pieces and worst > CERTAIN)):
        return _Doubt(float(np.min(np.max(corners, axis=(1, 2)))), at, tuple(pieces))
    found.pieces.extend(pieces)
    return None


def _without_gaps(values: FloatArray) -> FloatArray:
    """Infinite values made finite without inventing a bend where a demand ceases to apply."""
    finite = np.isfinite(values)
    if finite.all():
        return values
    most = np.where(finite, values, -FAR).max(axis=(2, 3), keepdims=True)
    instead = np.where(most == -FAR, FAR, np.maximum(most, 0.05))
    return np.where(finite, values, instead)


def _bend(nodes: FloatArray) -> FloatArray:
    """How far each function may lie from its planes within a quarter, shape (functions, cells).

    Enough for one kink anywhere in the cell, and four times enough for an even bend.
    """
    along_x = np.abs(nodes[:, :, 0] - 2 * nodes[:, :, 1] + nodes[:, :, 2]).max(axis=2)
    along_y = np.abs(nodes[..., 0] - 2 * nodes[..., 1] + nodes[..., 2]).max(axis=2)
    twist = np.abs(nodes[..., 0, 0] + nodes[..., 2, 2] - nodes[..., 0, 2] - nodes[..., 2, 0])
    bend: FloatArray = (along_x + along_y + twist / 4) / 2
    return bend

"""Makes polygons with exact corners from whole cells and clipped triangles."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .cells import FINEST, Piece
from .polish import Crossings, Edges, finite

Margins = Callable[[FloatArray, FloatArray, list[int] | None], FloatArray]
"""Values at points (x, y), shape (functions, points), all functions or those listed."""

RANGE, INNER = -1, -2
"""Labels of a polygon's side that lies on the range's edge, or between two polygons."""
STRAIGHT = 1e-5
"""A chord whose middle lies farther from its border, in its function's unit, gets a point there."""


class Maker:
    """Gathers polygons, and solves for all their corners together."""

    def __init__(self, margins: Margins, low: FloatArray, size: FloatArray) -> None:
        self.margins, self.low, self.size = margins, low, size
        self.points: list[FloatArray] = []
        self.shapes: list[tuple[list[int], list[int]]] = []
        self.edges: list[tuple[int, FloatArray, FloatArray, float, float, int]] = []
        self.crossings: list[tuple[int, tuple[int, int], FloatArray, float]] = []

    def _place(self, at: tuple[int, int]) -> FloatArray:
        return self.low + np.array(at) / FINEST * self.size

    def _keep(self, point: FloatArray) -> int:
        self.points.append(point)
        return len(self.points) - 1

    def add_whole(self, i: int, j: int, size: int) -> None:
        """Add a cell that lies within the region as a whole."""
        corners = ((i, j), (i + size, j), (i + size, j + size), (i, j + size))
        sides = [_side(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)]
        self.shapes.append(([self._keep(self._place(c)) for c in corners], sides))

    def add_piece(self, piece: Piece) -> None:
        """Add a clipped triangle."""
        places = [self._place(c) for c in piece.corners]
        corners = np.array(places)
        members, sides = [], []
        before = piece.shape[-1][1]
        for shares, after in piece.shape:
            index = self._keep(np.array(shares) @ corners)
            self._note(index, before, after, piece, corners)
            members.append(index)
            sides.append(self._label(after, piece))
            before = after
        self.shapes.append((members, sides))

    def _label(self, label: int, piece: Piece) -> int:
        if label >= 0:
            return piece.rows[label]
        first = -label - 1
        return _side(piece.corners[first], piece.corners[(first + 1) % 3])

    def _note(self, index: int, before: int, after: int, piece: Piece, corners: FloatArray) -> None:
        """Note what decides where this corner lies; a triangle's own corner lies fast."""
        if before < 0 and after < 0:
            return
        if before >= 0 and after >= 0:
            slopes = np.array([_slope(corners, piece.heights[k]) for k in (before, after)])
            reach = 2 * float(np.ptp(corners, axis=0).max())
            rows = piece.rows[before], piece.rows[after]
            self.crossings.append((index, rows, slopes, reach))
            return
        function, side = (before, after) if before >= 0 else (after, before)
        first = -side - 1
        last = (first + 1) % 3
        heights = piece.heights[function]
        self.edges.append((
            index, corners[first], corners[last], heights[first], heights[last],
            piece.rows[function],
        ))  # fmt: skip

    def polygons(self) -> tuple[list[FloatArray], list[tuple[int, ...]]]:
        """All polygons and the labels of their sides, with every corner where it belongs."""
        points = np.array(self.points) if self.points else np.zeros((0, 2))
        self._solve_edges(points)
        self._solve_crossings(points)
        shapes = [(points[members], tuple(sides)) for members, sides in self.shapes]
        self._bow(shapes)
        return [shape for shape, _ in shapes], [sides for _, sides in shapes]

    def _solve_edges(self, points: FloatArray) -> None:
        if not self.edges:
            return
        index, first, last, at_first, at_last, rows = zip(*self.edges, strict=True)
        roots = Edges(
            np.array(first), np.array(last), np.array(at_first), np.array(at_last), np.array(rows)
        ).solve(self._values)
        points[list(index)] = roots

    def _solve_crossings(self, points: FloatArray) -> None:
        if not self.crossings:
            return
        index, rows, slopes, reach = zip(*self.crossings, strict=True)
        found = Crossings(
            points[list(index)], np.array(rows), np.array(slopes), np.array(reach)
        ).solve(self._values)
        points[list(index)] = found

    def _bow(self, shapes: list[tuple[FloatArray, tuple[int, ...]]]) -> None:
        """Give a border that bows from its chord one more point, on the border."""
        sides = [
            (which, k, row)
            for which, (_, labels) in enumerate(shapes)
            for k, row in enumerate(labels)
            if row >= 0
        ]
        if not sides:
            return
        ends = np.array([
            (shapes[w][0][k], shapes[w][0][(k + 1) % len(shapes[w][0])]) for w, k, _ in sides
        ])  # fmt: skip
        rows = np.array([row for *_, row in sides])
        middle = ends.mean(axis=1)
        off = self._values(middle, rows)
        bowed = np.flatnonzero(np.isfinite(off) & (np.abs(off) > STRAIGHT))
        if not bowed.size:
            return
        on_border, good = self._foot(middle[bowed], ends[bowed], off[bowed], rows[bowed])
        for n in sorted(range(len(bowed)), key=lambda n: -sides[bowed[n]][1]):
            if good[n]:
                which, k, row = sides[bowed[n]]
                shape, labels = shapes[which]
                shapes[which] = (
                    np.insert(shape, k + 1, on_border[n], axis=0),
                    (*labels[: k + 1], row, *labels[k + 1 :]),
                )

    def _foot(
        self, middle: FloatArray, ends: FloatArray, off: FloatArray, rows: NDArray[np.int64]
    ) -> tuple[FloatArray, NDArray[np.bool_]]:
        """From the chord's middle square across to the border, by the secant rule."""
        run = (ends[:, 1] - ends[:, 0]) / self.size
        across = np.stack([-run[:, 1], run[:, 0]], axis=1) * self.size
        t, t_next, f = np.zeros(len(rows)), np.full(len(rows), 1e-3), off
        for _ in range(6):
            f_next = finite(self._values(middle + across * t_next[:, None], rows))
            rate = f_next - f
            step = np.where(rate == 0, 0.0, -f_next * (t_next - t) / np.where(rate == 0, 1, rate))
            t, f, t_next = t_next, f_next, np.clip(t_next + step, -0.5, 0.5)
            if np.all(np.abs(f) < STRAIGHT / 100):
                break
        return middle + across * t[:, None], np.abs(f) < STRAIGHT

    def _values(self, points: FloatArray, rows: NDArray[np.int64]) -> FloatArray:
        needed, position = np.unique(rows, return_inverse=True)
        values = self.margins(points[:, 0], points[:, 1], needed.tolist())
        at_points: FloatArray = values[position.reshape(-1), np.arange(len(rows))]
        return at_points


def _side(a: tuple[int, int], b: tuple[int, int]) -> int:
    on_range = any(a[k] == b[k] and a[k] in (0, FINEST) for k in (0, 1))
    return RANGE if on_range else INNER


def _slope(corners: FloatArray, heights: tuple[float, ...]) -> FloatArray:
    run = corners[1:] - corners[0]
    rise = np.array(heights[1:]) - heights[0]
    slope: FloatArray = np.linalg.solve(run, rise)
    return slope

"""A triangle clipped by functions that are plane on it."""

from __future__ import annotations

from collections.abc import Sequence

Point = tuple[float, float, float]
"""Shares of the triangle's three corners; they sum to 1."""

SIDES = (-1, -2, -3)
"""Labels of the triangle's own sides: first to second corner, and so on."""
CORNERS: tuple[Point, ...] = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))


def clip_triangle(
    heights: Sequence[Sequence[float]], *, slack: Sequence[float] | None = None
) -> list[tuple[Point, int]]:
    """What of a triangle is left where every function is at least 0 (or ``-slack``).

    ``heights[k]`` are the values of function k at the three corners. Returns the corners of what is
    left in order, each with the label of the side that follows: a function's index, or one of
    ``SIDES``. Empty where nothing is left.
    """
    left = list(zip(CORNERS, SIDES, strict=True))
    for index, at_corners in enumerate(heights):
        more = slack[index] if slack is not None else 0.0
        left = _cut(left, [h + more for h in at_corners], index)
        if not left:
            return []
    return left


def _cut(
    shape: list[tuple[Point, int]], heights: Sequence[float], label: int
) -> list[tuple[Point, int]]:
    first, second, third = heights
    values = [first * p[0] + second * p[1] + third * p[2] for p, _ in shape]
    if min(values) >= 0:
        return shape
    left: list[tuple[Point, int]] = []
    for i, (point, side) in enumerate(shape):
        j = (i + 1) % len(shape)
        here, there = values[i], values[j]
        if here >= 0:
            left.append((point, side))
            if there < 0:
                left.append((_between(point, shape[j][0], here, there), label))
        elif there >= 0:
            left.append((_between(point, shape[j][0], here, there), side))
    return left


def _between(a: Point, b: Point, here: float, there: float) -> Point:
    t = here / (here - there)
    return (a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t)

"""Words in each part outside the window: what is worst there."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ...fit.verdict import ROUNDING
from ...job.arrays import FloatArray
from ...job.speech import say
from ..demands import DEMANDS
from ..window import Window
from .frame import Frame
from .svg import OUTSIDE, Sheet, wrapped

LETTER, LINE = 6.8, 14.0
"""Width of a letter, and height of a line, of the picture's words."""
Box = tuple[float, float, float, float]
"""Middle of a box, half its width and half its height."""
ZONES = (41, 31)
"""Points at which the picture asks what is wrong there."""


def tell_zones(sheet: Sheet, window: Window, frame: Frame, taken: list[Box]) -> None:
    """Say in each part outside the window what is worst there, clear of what is ``taken``."""
    x, y = (
        np.linspace(*span, n + 2)[1:-1] for span, n in zip((frame.x, frame.y), ZONES, strict=True)
    )
    grid_x, grid_y = (a.ravel() for a in np.meshgrid(x, y, indexing="ij"))
    values = window.field.at(grid_x, grid_y)
    worst = np.where(values.min(axis=0) < -ROUNDING, np.argmin(values, axis=0), -1)
    worst = worst.reshape(ZONES)
    for row in sorted(np.unique(worst[worst >= 0]), key=lambda row: -int((worst == row).sum())):
        words = say(DEMANDS[window.field.rows[row]].complaint)
        found = _place(worst == row, words, frame, (x, y), taken)
        if found is None:
            continue
        (at_x, at_y, wide, high), lines = found
        taken.append((at_x, at_y, wide, high))
        for n, line in enumerate(lines):
            place = at_x, at_y + LINE * (n - (len(lines) - 1) / 2) + 4
            sheet.words(place, line, anchor="middle", colour="#555555", size=12, halo=OUTSIDE)


def _place(
    zone: NDArray[np.bool_], words: str, frame: Frame, grid: tuple[FloatArray, FloatArray],
    taken: list[Box],
) -> tuple[Box, list[str]] | None:  # fmt: skip
    """Where the words lie within their zone and clear of others, deepest in it first."""
    depth = _inward(zone)
    for index in np.argsort(-depth, axis=None, kind="stable"):
        i, j = np.unravel_index(int(index), zone.shape)
        if depth[i, j] < 2:
            return None
        room = _room(zone, int(i), int(j)) * frame.width / ZONES[0]
        lines = wrapped(words, max(int(room / LETTER), 1))
        wide = max(map(len, lines)) * LETTER
        box = (*frame.place(float(grid[0][i]), float(grid[1][j])), wide / 2, LINE * len(lines) / 2)
        if len(lines) > 4 or wide > room or not _lies_within(box, frame):
            continue
        if not any(meet(box, other) for other in taken):
            return box, lines
    return None


def _lies_within(box: Box, frame: Frame) -> bool:
    x, y, wide, high = box
    return (
        frame.left <= x - wide
        and x + wide <= frame.left + frame.width
        and frame.top + 2 <= y - high
        and y + high <= frame.top + frame.height - 8
    )


def meet(a: Box, b: Box) -> bool:
    """Whether two boxes come closer than words should."""
    return abs(a[0] - b[0]) < a[2] + b[2] + 4 and abs(a[1] - b[1]) < a[3] + b[3] + 4


def _inward(zone: NDArray[np.bool_]) -> FloatArray:
    """How many steps each point of a zone lies from the zone's edge."""
    depth = np.zeros(zone.shape)
    left = np.pad(zone, 1, constant_values=False)
    while left.any():
        depth += left[1:-1, 1:-1]
        left[1:-1, 1:-1] &= (
            left[:-2, 1:-1] & left[2:, 1:-1] & left[1:-1, :-2] & left[1:-1, 2:]
        )  # fmt: skip
    return depth


def _room(zone: NDArray[np.bool_], i: int, j: int) -> float:
    """Steps along x that words around (i, j) may take, in the rows just around."""
    rows = range(max(j - 1, 0), min(j + 2, zone.shape[1]))
    half = 0
    while all(
        i - half >= 0 and i + half < zone.shape[0] and zone[i - half, r] and zone[i + half, r]
        for r in rows
    ):
        half += 1
    return 2.0 * half

"""Axes of a chart: from values to places on the sheet, ticks and titles."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from ...job.arrays import FloatArray
from .svg import FAINT, INK, Point, Sheet


@dataclass(frozen=True)
class Frame:
    """A chart's area on the sheet, and the values at its edges."""

    left: float
    top: float
    width: float
    height: float
    x: tuple[float, float]
    y: tuple[float, float]

    def place(self, x: float, y: float) -> Point:
        """Where values lie on the sheet."""
        return (
            self.left + (x - self.x[0]) / (self.x[1] - self.x[0]) * self.width,
            self.top + (self.y[1] - y) / (self.y[1] - self.y[0]) * self.height,
        )

    def values(self, at: Point) -> tuple[float, float]:
        """The values at a place on the sheet."""
        return (
            self.x[0] + (at[0] - self.left) / self.width * (self.x[1] - self.x[0]),
            self.y[1] - (at[1] - self.top) / self.height * (self.y[1] - self.y[0]),
        )

    def places(self, points: FloatArray) -> list[Point]:
        """Where points, shape (points, 2), lie on the sheet, kept within the chart."""
        x = np.clip(points[:, 0], *self.x)
        y = np.clip(points[:, 1], *self.y)
        return [self.place(*p) for p in zip(x.tolist(), y.tolist(), strict=True)]

    def holds(self, x: float, y: float) -> bool:
        """Whether values lie within the chart."""
        return self.x[0] <= x <= self.x[1] and self.y[0] <= y <= self.y[1]

    def draw_x(self, sheet: Sheet, title: str, *, unit: float = 1.0) -> None:
        """Ticks and title below; ``unit``: size of the unit that they count in."""
        bottom = self.top + self.height
        for value, text in ticks(self.x[0] / unit, self.x[1] / unit, most=9):
            at, _ = self.place(value * unit, self.y[0])
            sheet.line([(at, bottom), (at, bottom + 5)])
            sheet.words((at, bottom + 18), text, anchor="middle")
        middle = self.left + self.width / 2
        sheet.words((middle, bottom + 37), title, anchor="middle", size=13)

    def draw_y(self, sheet: Sheet, title: str, *, most: int = 8, unit: float = 1.0) -> None:
        """Ticks and title at the left; ``unit``: size of the unit that they count in."""
        for value, text in ticks(self.y[0] / unit, self.y[1] / unit, most=most):
            _, at = self.place(self.x[0], value * unit)
            sheet.line([(self.left - 5, at), (self.left, at)])
            sheet.line([(self.left, at), (self.left + self.width, at)], colour="#DDDDDD", width=0.6)
            sheet.words((self.left - 9, at + 4), text, anchor="end")
        middle = self.top + self.height / 2
        sheet.words((self.left - 52, middle), title, anchor="middle", size=13, turn=-90)

    def edge(self, sheet: Sheet) -> None:
        """The frame around."""
        corners = [(0, 0), (1, 0), (1, 1), (0, 1), (0, 0)]
        points = [(self.left + a * self.width, self.top + b * self.height) for a, b in corners]
        sheet.line(points, colour=INK, width=1.0)


def ticks(low: float, high: float, *, most: int) -> list[tuple[float, str]]:
    """Round values from ``low`` to ``high``, at most about ``most``, and how each is written."""
    rough = (high - low) / max(most, 1)
    size = 10.0 ** math.floor(math.log10(rough))
    step = next(size * m for m in (1, 2, 5, 10) if size * m >= rough * (1 - 1e-9))
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    first = math.ceil(low / step - 1e-9)
    last = math.floor(high / step + 1e-9)
    return [(k * step, f"{k * step + 0.0:.{decimals}f}") for k in range(first, last + 1)]


__all__ = ["FAINT", "Frame", "ticks"]

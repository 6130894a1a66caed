"""What is told beside a window's chart, or below it: what bounds it, what excludes what."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from ...job.quantity import Units
from ...job.speech import say
from ..conflicts import Conflict, shortfall
from ..demands import Demand
from .svg import DASHES, INK, LINES, Point, Sheet, wrapped

LINE = 15.0
"""Height of a line of words."""


@dataclass(frozen=True)
class Layout:
    """How a window's picture is set: its width, its chart and the legend.

    ``frame``: left, top, width and height of the chart. ``legend``: where it begins. ``letters``:
    how many of them a line about a border holds. ``beside``: where what is told of the joint
    begins, if not below the borders. ``height``: of the sheet, None where the legend decides.
    """

    width: float
    frame: tuple[float, float, float, float]
    legend: Point
    letters: int
    beside: Point | None = None
    height: float | None = None


def draw_number(sheet: Sheet, at: Point, n: int) -> None:
    """The number of a border, in a ring of its colour."""
    sheet.dot(at, 9, fill="#FFFFFF", line=LINES[n % 7], width=2)
    sheet.words((at[0], at[1] + 4.5), str(n + 1), anchor="middle", size=12, bold=True)


def draw_legend(
    sheet: Sheet, layout: Layout, bounds: Sequence[Demand], conflicts: Sequence[Conflict],
    stated: Sequence[str], units: Units,
) -> float:  # fmt: skip
    """Draw it; returns where it ends. ``stated``: what is told of the joint as it stands."""
    left, y = layout.legend
    low = y = _borders(sheet, layout, bounds)
    if layout.beside is not None:
        left, y = layout.beside
    if conflicts:
        y = _exclude(sheet, conflicts[0], left, y, units)
    y += 8 if layout.beside is None or conflicts else 0
    sheet.words((left, y), say("As stated"), size=14, bold=True)
    y += 20
    for line in stated:
        for part in wrapped(line, layout.letters + 10):
            sheet.words((left, y), part, size=12)
            y += LINE
        y += 3
    return max(low, y) + 4


def _borders(sheet: Sheet, layout: Layout, bounds: Sequence[Demand]) -> float:
    """What bounds the window, line by line; returns where the lines end."""
    left, y = layout.legend
    if bounds:
        sheet.words((left, y), say("What bounds it"), size=14, bold=True)
        y += 24
    for n, demand in enumerate(bounds):
        draw_number(sheet, (left + 9, y - 4), n)
        ends = [(left + 24, y - 4), (left + 56, y - 4)]
        sheet.line(ends, colour=LINES[n % 7], dash=DASHES[n % 7], width=3.0)
        for line in wrapped(say(demand.complaint), layout.letters):
            sheet.words((left + 64, y), line, size=12)
            y += LINE
        y += 9
    return y


def _exclude(sheet: Sheet, conflict: Conflict, left: float, y: float, units: Units) -> float:
    """What excludes what, in the column beside the chart."""
    single = len(conflict.demands) == 1
    heading = say("Not to be met anywhere") if single else say("These exclude one another")
    sheet.words((left, y), heading, size=14, bold=True)
    y += 22
    for demand, short in zip(conflict.demands, conflict.shortfalls, strict=True):
        lines = wrapped(f"{say(demand.complaint)}, {shortfall(demand, short, units)}", 36)
        sheet.dot((left + 4, y - 4), 3, fill=INK)
        for line in lines:
            sheet.words((left + 14, y), line, size=12)
            y += LINE
        y += 5
    return y + 8

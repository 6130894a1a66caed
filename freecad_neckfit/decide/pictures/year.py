"""A joint's year as curves, one chart below the other."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from ...job.quantity import Units
from ...job.speech import say
from ..climate import MONTHS
from ..shop import INCH
from ..year import Curve, Year
from .frame import Frame
from .svg import DASHES, FAINT, INK, LEAST_SIZE, LINES, PAPER_WIDE, SCREEN_WIDE, WITHIN, Sheet

LEFT, GAP = 84.0, 62.0
SIZES = {SCREEN_WIDE: (590.0, 130.0), PAPER_WIDE: (474.0, 100.0)}
"""Width and height of each chart by the sheet's width."""
LINE = 13.0
"""Words that stand closer would touch."""


def draw_year(year: Year, *, name: str, units: Units = Units.MM, wide: float = SCREEN_WIDE) -> str:
    """Draw moisture and every curve by month as SVG; the blue band is what the limits allow.

    ``wide``: ``SCREEN_WIDE`` or ``PAPER_WIDE``.
    """
    size = SIZES[wide]
    total = 92 + (len(year.curves) + 1) * (size[1] + GAP) + 14
    sheet = Sheet(wide, total, title=say("{} through the year").format(name))
    said = say("fits through the year") if year.met else say("does NOT fit through the year")
    if year.met is None:
        said = say("could not be checked in every month")
    sheet.words((22, 32), f"{name}: {said}", size=18, bold=True)
    cut = say("Cut at {} % moisture. Blue: what the limits allow.").format(f"{year.cut:.1f}")
    sheet.words((22, 54), cut, size=13)
    moisture = Curve("moisture of the wood", "moisture", "%", year.cut, year.moisture, 6.0, 14.0)
    for n, curve in enumerate((moisture, *(_in_units(c, units) for c in year.curves))):
        frame = Frame(LEFT, 96 + n * (size[1] + GAP), *size, (0.0, 11.0), _span(curve))
        _chart(sheet, curve, frame, LINES[n % 7], DASHES[n % 7])
    return sheet.text()


def _in_units(curve: Curve, units: Units) -> Curve:
    """The curve in the units that the reader has set."""
    if curve.unit != "mm" or units is Units.MM:
        return curve
    low, high = (None if limit is None else limit / INCH for limit in (curve.low, curve.high))
    return replace(
        curve, unit=units.value, now=curve.now / INCH, values=curve.values / INCH,
        low=low, high=high,
    )  # fmt: skip


def _chart(sheet: Sheet, curve: Curve, frame: Frame, colour: str, dash: str) -> None:
    bottom, right = frame.top + frame.height, LEFT + frame.width
    _band(sheet, frame, curve)
    frame.draw_y(sheet, f"[{curve.unit}]" if len(curve.unit) < 4 else say("[diameters]"), most=6)
    for n, month in enumerate(MONTHS):
        at, _ = frame.place(float(n), frame.y[0])
        sheet.words((at, bottom + 16), say(month), size=LEAST_SIZE, anchor="middle")
    for run in _runs(curve):
        points = np.column_stack([run, curve.values[run]])
        sheet.line(frame.places(points), colour=colour, width=2.5, dash=dash)
        for place in frame.places(points):
            sheet.dot(place, 3, fill=colour, line=colour)
    _, now = frame.place(0.0, curve.now)
    sheet.line([(LEFT, now), (right, now)], colour=FAINT, dash="2 4")
    beside = right + 8, _beside(frame, curve, now) + 4
    sheet.words(beside, say("when cut"), size=LEAST_SIZE, colour="#555555")
    frame.edge(sheet)
    sheet.words(
        (LEFT, frame.top - 8),
        f"{say(curve.title)} [{say(curve.unit)}]",
        size=13,
        bold=True,
        colour=INK,
    )


def _beside(frame: Frame, curve: Curve, now: float) -> float:
    """Where words stand that must not lie on those of the limits."""
    for limit in (curve.low, curve.high):
        if limit is not None:
            _, at = frame.place(0.0, limit)
            if abs(now - at) < LINE:
                return at + (LINE if now >= at else -LINE)
    return now


def _span(curve: Curve) -> tuple[float, float]:
    values = [*curve.values[np.isfinite(curve.values)], curve.now]
    values += [limit for limit in (curve.low, curve.high) if limit is not None]
    low, high = float(min(values)), float(max(values))
    grow = 0.12 * (high - low) or 0.1
    return low - grow, high + grow


def _band(sheet: Sheet, frame: Frame, curve: Curve) -> None:
    low = frame.y[0] if curve.low is None else curve.low
    high = frame.y[1] if curve.high is None else curve.high
    (left, bottom), (right, top) = frame.place(0.0, low), frame.place(11.0, high)
    sheet.box(left, top, right - left, bottom - top, fill=WITHIN)
    for limit, word in ((curve.low, say("least")), (curve.high, say("most"))):
        if limit is not None:
            _, y = frame.place(0.0, limit)
            sheet.line([(left, y), (right, y)], colour=INK, width=1.0, dash="6 3")
            places = 4 if curve.unit == Units.INCH.value else 2
            sheet.words((right + 8, y + 4), f"{word} {limit:.{places}f}", size=LEAST_SIZE)


def _runs(curve: Curve) -> list[list[int]]:
    """Months one after the other that could be checked."""
    runs: list[list[int]] = []
    for n in range(12):
        if not np.isfinite(curve.values[n]):
            continue
        if runs and runs[-1][-1] == n - 1:
            runs[-1].append(n)
        else:
            runs.append([n])
    return runs

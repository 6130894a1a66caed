"""Failures and what causes them, as bars."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from ...job.quantity import Units
from ...job.speech import say
from ..demands import DEMANDS
from ..tolerances.report import limits_text, percent, spoken
from ..tolerances.simulate import Simulation
from .svg import LINES, PAPER_WIDE, SCREEN_WIDE, Sheet, wrapped

STEP = 24.0
BARS = {SCREEN_WIDE: (390.0, 350.0), PAPER_WIDE: (376.0, 196.0)}
"""Where bars begin, and how long the longest is, by the sheet's width."""
TITLE_LETTER, TITLE_LINE = 10.5, 22.0
"""Width of a letter, and height of a line, of the head."""
MOST = 8
Bar = tuple[str, float, str]
"""What it is, its length as a share of 1, and how that is written."""


def draw_failures(
    simulation: Simulation, *, name: str, units: Units = Units.MM, wide: float = SCREEN_WIDE
) -> str:
    """Draw the failure share, each demand's own, and how much each dimension explains, as SVG.

    ``wide``: ``SCREEN_WIDE`` or ``PAPER_WIDE``.
    """
    causes = _causes(simulation, units)
    failures = _failures(simulation)
    fail = say("{} of joints fail").format(percent(simulation.share))
    head = wrapped(f"{name}: {fail}", int(wide / TITLE_LETTER))
    more = TITLE_LINE * (len(head) - 1)
    height = 150 + more + STEP * (max(len(failures), 1) + max(len(causes), 1)) + 24
    sheet = Sheet(wide, height, title=f"{name}: {say('failures within the limits')}")
    low, high = simulation.interval()
    for n, line in enumerate(head):
        sheet.words((22, 32 + TITLE_LINE * n), line, size=18, bold=True)
    drawn = say("95 % confidence {} to {}; {} joints drawn")
    drawn = drawn.format(percent(low), percent(high), f"{simulation.draws:,}")
    sheet.words((22, 54 + more), drawn, size=13)
    title = say("Share of joints in which a demand is not met [%]")
    y = _bars(sheet, 92.0 + more, title, failures, LINES[1])
    title = say("Share of the failures that a dimension explains alone [%]")
    _bars(sheet, y + 34, title, causes, LINES[0])
    return sheet.text()


def _failures(simulation: Simulation) -> list[Bar]:
    shares = simulation.failed / simulation.draws
    order = [n for n in np.argsort(-shares, kind="stable") if shares[n] > 0][:MOST]
    return [(say(DEMANDS[n].complaint), float(shares[n]), percent(float(shares[n]))) for n in order]


def _causes(simulation: Simulation, units: Units) -> list[Bar]:
    influence = simulation.influence
    order = [n for n in np.argsort(-influence) if influence[n] > 1e-3][:MOST]
    return [
        (
            f"{spoken(simulation.dims[n])}, {limits_text(simulation.dims[n], units)}",
            float(influence[n]),
            f"{influence[n] * 100:.1f} %",
        )
        for n in order
    ]


def _bars(sheet: Sheet, y: float, title: str, bars: Sequence[Bar], colour: str) -> float:
    sheet.words((22, y), title, size=14, bold=True)
    y += 10
    if not bars:
        sheet.words((40, y + 16), say("none"), size=12)
        return y + STEP
    longest = max(share for _, share, _ in bars)
    left, room = BARS[sheet.width]
    for what, share, written in bars:
        sheet.words((left - 10, y + 16), what[:60], size=12, anchor="end")
        width = room * share / longest
        sheet.box(left, y + 4, max(width, 1.0), STEP - 8, fill=colour)
        sheet.words((left + width + 8, y + 16), written, size=12)
        y += STEP
    return y

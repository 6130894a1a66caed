"""Failures and what causes them, as bars."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from ...job.quantity import Units
from ...job.speech import say
from ..demands import DEMANDS
from ..tolerances.report import limits_text, percent, spoken
from ..tolerances.simulate import Simulation
from .svg import LINES, Sheet

LEFT, LONGEST, STEP = 390.0, 350.0, 24.0
MOST = 8
Bar = tuple[str, float, str]
"""What it is, its length as a share of 1, and how that is written."""


def draw_failures(simulation: Simulation, *, name: str, units: Units = Units.MM) -> str:
    """Draw the failure share, each demand's own, and how much each dimension explains, as SVG."""
    causes = _causes(simulation, units)
    failures = _failures(simulation)
    height = 150 + STEP * (max(len(failures), 1) + max(len(causes), 1)) + 24
    sheet = Sheet(860.0, height, title=f"{name}: {say('failures within the limits')}")
    low, high = simulation.interval()
    fail = say("{} of joints fail").format(percent(simulation.share))
    sheet.words((22, 32), f"{name}: {fail}", size=18, bold=True)
    drawn = say("95 % confidence {} to {}; {} joints drawn")
    drawn = drawn.format(percent(low), percent(high), f"{simulation.draws:,}")
    sheet.words((22, 54), drawn, size=13)
    y = _bars(
        sheet, 92.0, say("Share of joints in which a demand is not met [%]"), failures, LINES[1]
    )
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
    for what, share, written in bars:
        sheet.words((LEFT - 10, y + 16), what[:60], size=12, anchor="end")
        width = LONGEST * share / longest
        sheet.box(LEFT, y + 4, max(width, 1.0), STEP - 8, fill=colour)
        sheet.words((LEFT + width + 8, y + 16), written, size=12)
        y += STEP
    return y

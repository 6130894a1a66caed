"""A joint's year in plain lines, and as plain values."""

from __future__ import annotations

from typing import Any

import numpy as np

from ..job.quantity import Units
from ..job.show import compact_length
from ..job.speech import say
from .climate import MONTHS
from .year import Curve, Year


def year_lines(year: Year, *, name: str, units: Units) -> list[str]:
    """Verdict, one line a curve with its ends, and a table of the months."""
    cut = say("cut at {} % moisture").format(f"{year.cut:.1f}")
    lines = [f"{name}: {_verdict(year)}", f"  {cut}", ""]
    lines += [f"  {_summary(curve, units)}" for curve in year.curves]
    head = f"  {say('month'):<7}{say('moisture'):>9}"
    head += "".join(f"{say(c.short):>14}" for c in year.curves)
    lines += ["", head]
    for n, month in enumerate(MONTHS):
        cells = "".join(f"{_cell(c, n, units):>14}" for c in year.curves)
        lines.append(f"  {say(month):<7}{year.moisture[n]:>7.1f} %{cells}")
    if not year.known.all():
        why = say("Outside 6 to 14 % moisture no coefficient of change holds: not checked.")
        lines += ["", f"  {why}"]
    return lines


def _verdict(year: Year) -> str:
    if year.met is False:
        return say("DOES NOT FIT through the year")
    return say("fits through the year") if year.met else say("NOT CHECKED in every month")


def _summary(curve: Curve, units: Units) -> str:
    known = np.isfinite(curve.values)
    if not known.any():
        return f"{say(curve.title)}: {say('could not be checked')}"
    low, high = int(np.nanargmin(curve.values)), int(np.nanargmax(curve.values))
    ends = (
        _show(curve, curve.values[low], units), say(MONTHS[low]),
        _show(curve, curve.values[high], units), say(MONTHS[high]),
    )  # fmt: skip
    said = f"{say(curve.title)}: {say('{} in {} to {} in {}').format(*ends)}"
    bounds = [
        f"{word} {_show(curve, limit, units)}"
        for word, limit in ((say("least"), curve.low), (say("most"), curve.high))
        if limit is not None
    ]
    return f"{said} ({', '.join(bounds)}){'' if curve.met else say(' - NOT MET')}"


def _cell(curve: Curve, month: int, units: Units) -> str:
    value = curve.values[month]
    if not np.isfinite(value):
        return say("not checked")
    outside = (curve.low is not None and value < curve.low) or (
        curve.high is not None and value > curve.high
    )
    return f"{'X ' if outside else ''}{_show(curve, value, units)}"


def _show(curve: Curve, value: float, units: Units) -> str:
    return compact_length(value, units=units) if curve.unit == "mm" else f"{value:.2f}"


def year_record(year: Year, *, name: str) -> dict[str, Any]:
    """The year as plain values for JSON."""
    return {
        "name": name,
        "met": year.met,
        "moisture_cut": year.cut,
        "months": list(MONTHS),
        "moisture": [round(float(m), 6) for m in year.moisture],
        "known": [bool(k) for k in year.known],
        "curves": [
            {
                "title": c.title, "unit": c.unit, "now": c.now, "low": c.low, "high": c.high,
                "met": c.met,
                "values": [float(v) if np.isfinite(v) else None for v in c.values],
            }
            for c in year.curves
        ],
    }  # fmt: skip

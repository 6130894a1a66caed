"""Tolerances in plain lines, and as plain values."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from ...fit.verdict import ROUNDING
from ...job.parameters import ALL
from ...job.quantity import Kind, Units
from ...job.show import show_value
from ...job.speech import say
from ...job.words import name_of
from ..demands import DEMANDS
from .dimension import Dimension
from .linear import Linear
from .simulate import Simulation
from .tighten import Step

MOST = 8
"""Lines of each list."""


EXPLAINED = (
    "fails:  share of the joints drawn in which the demand is not met",
    "middle: room left to the limit with every dimension in the middle of its limits;",
    "        negative where the demand is not met, in mm or inches unless a unit stands there",
    "RSS:    the same, less the root of the sum of the squares of what each dimension's",
    "        limits can shift it: what remains in most joints",
    "worst:  the same with every dimension at its worse limit at once",
)
"""What the columns mean."""


def report_lines(
    name: str, linear: Linear, simulation: Simulation, steps: Sequence[Step],
    alone: Sequence[Step], *, wish: float, units: Units,
) -> list[str]:  # fmt: skip
    """How often the joint fails, which demands do, what matters most and what to draw in first."""
    low, high = simulation.interval()
    fail = say("{} of joints fail (95 % confidence: {} to {}; {} draws, seed {})").format(
        percent(simulation.share), percent(low), percent(high),
        f"{simulation.draws:,}", simulation.seed,
    )  # fmt: skip
    heads = say("demand"), say("fails"), say("middle"), say("RSS"), say("worst")
    lines = [f"{name}: {fail}", "", "  {:<57}{:>9}{:>10}{:>10}{:>10}".format(*heads)]
    none = "  " + say("no demand fails within these limits")
    lines += _demands(linear, simulation, units) or [none]
    if len(lines) > 3 and (simulation.failed > 0).any():
        lines += ["", *(f"  {say(line)}" for line in EXPLAINED)]
    lines += ["", say("What matters most (share of the failures that it explains alone):")]
    lines += _influences(simulation, units)
    lines += ["", *_tighten(simulation, steps, alone, wish, units)]
    return lines


def percent(share: float) -> str:
    """A share in per cent with as many digits as say something."""
    if share == 0:
        return "0 %"
    if share < 1e-4:
        return f"{share * 100:.4f} %"
    return f"{share * 100:.2f} %" if share < 0.1 else f"{share * 100:.1f} %"


def _demands(linear: Linear, simulation: Simulation, units: Units) -> list[str]:
    lines = []
    order = np.argsort(-simulation.failed, kind="stable")
    at_risk = [n for n in order if simulation.failed[n] or linear.worst[n] < -ROUNDING]
    for n in at_risk[:MOST]:
        demand = DEMANDS[n]
        after = linear.middle[n] - linear.root_sum_square[n]
        cells = [
            percent(simulation.failed[n] / simulation.draws),
            *(
                _signed(v * demand.check.span, demand.check.unit, units)
                for v in (linear.middle[n], after, linear.worst[n])
            ),
        ]
        lines.append(f"  {say(demand.complaint)[:56]:<57}{cells[0]:>9}" + "".join(
            f"{c:>10}" for c in cells[1:]
        ))  # fmt: skip
    if len(at_risk) > MOST:
        lines.append("  " + say("and {} more").format(len(at_risk) - MOST))
    return lines


def _signed(value: float, kind: Kind, units: Units) -> str:
    if not np.isfinite(value):
        return "-"
    if kind is Kind.NUMBER:
        return f"{value:+.2f}"
    shown = show_value(value, kind=kind, units=units, signed=True).split(" (")[0]
    return shown.removesuffix(f" {units.value}")


def spoken(dim: Dimension) -> str:
    """A dimension's name in the words of whoever speaks."""
    words = say(name_of(dim.key))
    return words if dim.index is None else f"{words} {dim.index + 1}"


def limits_text(dim: Dimension, units: Units) -> str:
    """Limits as a shop writes them: ±0.10 mm or +0.20/-0.05 mm."""
    kind = ALL[dim.key].kind
    if abs(dim.lower + dim.upper) < 1e-12:
        return f"±{show_value(dim.upper, kind=kind, units=units).split(' (')[0]}"
    upper = show_value(dim.upper, kind=kind, units=units, signed=True).split(" ")[0]
    return f"{upper}/{show_value(dim.lower, kind=kind, units=units, signed=True).split(' (')[0]}"


def _influences(simulation: Simulation, units: Units) -> list[str]:
    influence = simulation.influence
    order = [n for n in np.argsort(-influence) if influence[n] > 1e-3][:MOST]
    if not order:
        return ["  " + say("nothing: there are no failures to explain")]
    return [
        f"  {spoken(simulation.dims[n]):<28}{limits_text(simulation.dims[n], units):>18}"
        f"{influence[n] * 100:>8.1f} %"
        for n in order
    ]


def _tighten(
    simulation: Simulation, steps: Sequence[Step], alone: Sequence[Step], wish: float, units: Units
) -> list[str]:
    if simulation.share <= wish:
        kept = say("The wished {} is kept; no limits need be drawn in.")
        return [kept.format(percent(wish))]
    lines = [say("To come down to {}:").format(percent(wish))]
    enough = [s for s in alone if s.share <= wish]
    if enough:
        lines.append("  " + say("one of these alone:"))
        lines += [f"    {_step(s, units)}" for s in enough[:3]]
    else:
        lines.append("  " + say("no limits alone reach it; one after the other:"))
        lines += [f"    {_step(s, units)}" for s in steps]
        if not steps or steps[-1].share > wish:
            lines.append("    " + say("and this is not enough: bring the middles nearer to their"))
            lines.append("    " + say("limits' middle, or allow more"))
    return lines


def _step(step: Step, units: Units) -> str:
    kind = ALL[step.dimension.key].kind
    half = show_value(step.half, kind=kind, units=units).split(" (")[0]
    before = limits_text(step.dimension, units)
    name = spoken(step.dimension)
    return say("{} from {} to ±{}: {} fail").format(name, before, half, percent(step.share))


def report_record(name: str, linear: Linear, simulation: Simulation) -> dict[str, Any]:
    """All results as plain values for JSON: shares, margins in mm-equivalents, limits in mm."""
    low, high = simulation.interval()
    influence = simulation.influence
    return {
        "name": name,
        "draws": simulation.draws,
        "seed": simulation.seed,
        "failure_share": simulation.share,
        "confidence_95": [low, high],
        "dimensions": [
            {
                "key": d.key, "index": d.index, "nominal": d.nominal, "lower": d.lower,
                "upper": d.upper, "shape": d.shape.value, "explains": float(influence[n]),
            }
            for n, d in enumerate(simulation.dims)
        ],
        "demands": [
            {
                "demand": DEMANDS[n].key,
                "failure_share": int(simulation.failed[n]) / simulation.draws,
                "middle": float(linear.middle[n]),
                "root_sum_square": float(linear.root_sum_square[n]),
                "worst_case": float(linear.worst[n]),
                "deviation": float(simulation.deviation[n]),
                "cannot_fail": bool(simulation.settled[n]),
            }
            for n in range(len(DEMANDS))
            if np.isfinite(linear.middle[n])
        ],
    }  # fmt: skip

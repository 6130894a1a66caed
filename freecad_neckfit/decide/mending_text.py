"""Conflicts and remedies in plain lines."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from ..job.parameters import ALL
from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value
from ..job.speech import say
from ..job.words import name_of
from .conflicts import Conflict, shortfall
from .mending import Remedy
from .toll import Cost, toll

COSTS = 4
"""Costs told of each remedy."""


def conflict_lines(conflicts: Sequence[Conflict], units: Units, *, most: int = 3) -> list[str]:
    """What excludes what: one block for each conflict."""
    lines: list[str] = []
    for conflict in conflicts[:most]:
        lines += [*_conflict(conflict, units), ""]
    return lines[:-1]


def _conflict(conflict: Conflict, units: Units) -> list[str]:
    count = len(conflict.demands)
    if count == 1:
        (demand,), (short,) = conflict.demands, conflict.shortfalls
        short_text = shortfall(demand, short, units)
        words = say("Not to be met anywhere in the range: {}, {} at best")
        return [words.format(say(demand.complaint), short_text)]
    lines = [say("These exclude one another:")]
    for demand, short in zip(conflict.demands, conflict.shortfalls, strict=True):
        others = say("the other is met") if count == 2 else say("the others are met")
        words = say("{} at best where {}").format(shortfall(demand, short, units), others)
        lines.append(f"  - {say(demand.complaint)}: {words}")
    return lines


def remedy_lines(remedies: Sequence[Remedy], stated: Mapping[str, Any], units: Units) -> list[str]:
    """The proved changes, smallest first, each with what it costs elsewhere."""
    if not remedies:
        return ["No change that is allowed mends it."]
    lines = ["What mends it, smallest change first (each proved on solids):"]
    for n, remedy in enumerate(remedies, start=1):
        lines.append(f"{n}. {headline(remedy, units)}")
        costs = toll(stated, remedy.stated)
        lines += [f"     {cost_line(cost, units)}" for cost in costs[:COSTS]]
    return lines


def headline(remedy: Remedy, units: Units) -> str:
    """A remedy in one line: what is changed, from what to what."""
    return "; ".join(_move(move, remedy, units) for move in remedy.moves)


def _move(move: Any, remedy: Remedy, units: Units) -> str:
    keys = dict.fromkeys(key for dial in move.dials for key in dial.keys)
    turned = [key for key in keys if key in remedy.changes]
    if not turned:
        return f"{say(move.part)}: {say(move.name)}"
    if move.stated:
        # What was not there before has no size before.
        amounts = (compact_length(float(remedy.changes[k][1]), units=units) for k in turned[:1])
        return f"{say(move.name)}, {', '.join(amounts)}"
    return ", ".join(_change(key, *remedy.changes[key], units) for key in turned)


def _change(key: str, before: Any, after: Any, units: Units) -> str:
    kind = ALL[key].kind
    name = say(name_of(key))
    change = float(after) - float(before)
    if kind is Kind.LENGTH:
        first, second = (compact_length(float(v), units=units) for v in (before, after))
        return f"{name} {first} -> {second} ({compact_length(change, units=units, signed=True)})"
    first, second = (show_value(float(v), kind=kind, units=units) for v in (before, after))
    return f"{name} {first} -> {second} ({show_value(change, kind=kind, units=units, signed=True)})"


def cost_line(cost: Cost, units: Units) -> str:
    """One cost: the figure before and after, and what is left."""
    kind = cost.check.unit
    first, second = (_figure(v, kind, units) for v in (cost.before, cost.after))
    line = say("costs: {} {} -> {}").format(say(cost.check.title), first, second)
    if cost.margin_after is not None and np.isfinite(cost.margin_after):
        line += ", " + say("{} to spare").format(_figure(cost.margin_after, kind, units))
    return line


def _figure(value: float, kind: Kind, units: Units) -> str:
    if kind is Kind.LENGTH:
        return compact_length(value, units=units)
    return f"{value:.2f}" if kind is Kind.NUMBER else show_value(value, kind=kind, units=units)

"""The table that a builder reads in five seconds: verdict first, worst first."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from dataclasses import dataclass

from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value
from .chain import Result, Verdict
from .finding import Finding, State
from .overlap import NONE, is_overlap
from .words import mending_in

NARROWEST, WIDEST = 40, 120
FULL_FROM, LIMITS_FROM = 92, 68
TONES = {
    State.INTERFERES: "1;31",
    State.TOO_LITTLE: "31",
    State.TOO_MUCH: "31",
    State.DISAGREES: "35",
    State.UNKNOWN: "35",
    State.TOUCHES: "33",
    State.WATCH: "33",
    State.FITS: "34",
    State.TELLS: "0",
    State.ABSENT: "2",
}


@dataclass(frozen=True)
class Look:
    """How to print: columns wide, unit system, colour or not."""

    width: int
    units: Units
    colour: bool = False

    def tint(self, text: str, state: State) -> str:
        """``text`` in the state's tone where colour is wanted."""
        return f"\x1b[{TONES[state]}m{text}\x1b[0m" if self.colour else text


def render(result: Result, look: Look) -> str:
    """The whole report on one joint as text, without a trailing newline."""
    look = Look(min(max(look.width, NARROWEST), WIDEST), look.units, look.colour)
    shown = [f for f in result.findings if f.state is not State.ABSENT]
    lines = [headline(result, look), ""]
    lines += _rows(shown, look)
    absent = [f.title for f in result.findings if f.state is State.ABSENT]
    if absent:
        lines += ["", *_wrapped(f"not applicable: {', '.join(absent)}", look.width, "  ")]
    return "\n".join(lines)


def headline(result: Result, look: Look) -> str:
    """Verdict and its one strongest reason."""
    verdict = f"{result.name}: {result.verdict.value.upper()}"
    state = {Verdict.FITS: State.FITS, Verdict.DOES_NOT_FIT: State.INTERFERES}.get(
        result.verdict, State.UNKNOWN
    )
    first = result.findings[0] if result.findings else None
    why = ""
    if first is not None and result.verdict is Verdict.DOES_NOT_FIT:
        others = sum(f.met is False for f in result.findings) - 1
        more = f" (and {others} more)" if others else ""
        why = f" - {first.title}: {_value(first, look)}, {complaint(first, units=look.units)}{more}"
    elif first is not None and result.verdict is Verdict.UNSURE:
        why = f" - {first.title}: {first.reason}"
    return "\n".join([look.tint(line, state) for line in _wrapped(verdict + why, look.width, "")])


def complaint(finding: Finding, *, units: Units) -> str:
    """By how much an unmet demand is missed, and which way."""
    missing = abs(finding.margin or 0.0)
    short = (
        f"{missing:.2f}"
        if finding.unit is Kind.NUMBER
        else show_value(missing, kind=finding.unit, units=units)
    )
    return (
        f"{finding.state.value}, {short} short"
        if finding.state is not State.TOO_MUCH
        else (f"too much by {short}")
    )


def _rows(findings: Sequence[Finding], look: Look) -> list[str]:
    columns = _columns(look.width)
    name_width = look.width - 19 - sum(width for _, width in columns)
    head = f"  {'state':<15} {'demand':<{name_width}} " + "".join(
        f"{title:>{width}}" for title, width in columns
    )
    lines = [head, "  " + "-" * (look.width - 2)]
    for finding in findings:
        lines += _row(finding, look, columns, name_width)
    return lines


def _columns(width: int) -> list[tuple[str, int]]:
    if width >= FULL_FROM:
        return [("value", 12), ("least", 9), ("most", 9), ("to spare", 10)]
    if width >= LIMITS_FROM:
        return [("value", 12), ("to spare", 10)]
    return [("value", 12)]


def _row(
    finding: Finding, look: Look, columns: list[tuple[str, int]], name_width: int
) -> list[str]:
    cells = _figures(finding, look)
    title = finding.title
    names = textwrap.wrap(title, max(name_width, 8)) or [""]
    state = look.tint(f"{finding.state.mark} {finding.state.value:<15}", finding.state)
    figures = "".join(f"{cells[name]:>{width}}" for name, width in columns)
    lines = [f"{state} {names[0]:<{name_width}} {figures}".rstrip()]
    lines += [" " * 18 + part for part in names[1:]]
    if finding.met is False:
        lines += _wrapped(finding.consequence, look.width, " " * 18)
        mending = mending_in(vars(finding), look.units)
        lines += _wrapped(f"> {mending}", look.width, " " * 18) if mending else []
    elif finding.reason and finding.state is not State.TELLS:
        lines += _wrapped(finding.reason, look.width, " " * 18)
    return lines


def _figures(finding: Finding, look: Look) -> dict[str, str]:
    if is_overlap(finding.id):
        short = _cell(finding.margin, finding, look) if finding.value else ""
        return {"value": _value(finding, look), "least": "", "most": NONE, "to spare": short}
    return {
        "value": _value(finding, look),
        "least": _cell(finding.low, finding, look),
        "most": _cell(finding.high, finding, look),
        "to spare": _cell(finding.margin, finding, look),
    }


def _value(finding: Finding, look: Look) -> str:
    if finding.value is None:
        return ""
    if is_overlap(finding.id) and finding.value == 0:
        return NONE
    if finding.unit is Kind.LENGTH:
        return compact_length(finding.value, units=look.units)
    return _cell(finding.value, finding, look)


def _cell(number: float | None, finding: Finding, look: Look) -> str:
    if number is None:
        return ""
    if finding.unit is Kind.LENGTH:
        return compact_length(number, units=look.units).rsplit(" ", 1)[0]
    if finding.unit is Kind.NUMBER:
        return f"{number:.2f}"
    return show_value(number, kind=finding.unit, units=look.units)


def _wrapped(text: str, width: int, indent: str) -> list[str]:
    return (
        textwrap.wrap(text, width, initial_indent=indent, subsequent_indent=indent) if text else []
    )


def summary(results: Sequence[Result], look: Look) -> str:
    """One line an option: verdict and strongest reason."""
    lines = ["Options (differences from the base):"]
    for result in results:
        lines += [
            f"  {line}"
            for line in headline(result, Look(look.width - 2, look.units, look.colour)).splitlines()
        ]
    return "\n".join(lines)

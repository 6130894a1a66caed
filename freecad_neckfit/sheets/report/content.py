"""What the report says, in order, before it becomes HTML or PDF."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from ...job.parameters import ALL, GROUPS
from ...job.quantity import Kind, Units
from ...job.show import compact_length, show_value
from ...run.chain import Result
from ...run.finding import Finding, State
from ...run.overlap import NONE, is_overlap
from ...run.table import complaint
from ..ink import Page
from ..joint import Joint

Rows = list[tuple[str, ...]]


@dataclass(frozen=True)
class Table:
    """A table: headings, rows of words, and each column's share of the width."""

    head: tuple[str, ...]
    rows: Rows
    shares: tuple[float, ...]


@dataclass(frozen=True)
class Picture:
    """A drawn picture, one taken from the screen as PNG, or one that came as SVG.

    ``title`` says what it shows.
    """

    title: str
    page: Page | None = None
    png: bytes = b""
    svg: str = ""


@dataclass(frozen=True)
class Unmet:
    """One demand that is not met."""

    title: str
    state: str
    figures: str
    consequence: str
    mending: str


@dataclass
class Section:
    """A heading and what stands under it, in this order."""

    title: str
    words: list[str] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)
    """Lines that keep their columns."""
    pictures: list[Picture] = field(default_factory=list)
    unmet: list[Unmet] = field(default_factory=list)
    tables: list[Table] = field(default_factory=list)
    closing: str = ""
    """What stands after all that."""


@dataclass(frozen=True)
class Report:
    """The whole report; ``verdict`` is what a hurried reader reads."""

    name: str
    verdict: str
    fits: bool
    reason: str
    sections: tuple[Section, ...]


def report_of(
    joint: Joint,
    *,
    pictures: Sequence[Picture],
    options: Iterable[Result] = (),
    more: Iterable[Section] = (),
) -> Report:
    """Everything the report says. ``more``: sections on windows, tolerances and seasons."""
    result = joint.result
    sections = [
        Section("Pictures", pictures=list(pictures)),
        _findings(joint),
        *_options(options, joint.units),
        *more,
        _origins(joint),
        _method(),
    ]
    return Report(
        name=joint.name,
        verdict=result.verdict.value.capitalize(),
        fits=result.verdict.exit_code == 0,
        reason=reason(result, joint.units),
        sections=tuple(
            s for s in sections if s.words or s.lines or s.pictures or s.unmet or s.tables
        ),
    )


def reason(result: Result, units: Units) -> str:
    """Why, in one sentence: the gravest finding, or how many demands are met."""
    counts = Counter(f.met for f in result.findings)
    first = result.findings[0] if result.findings else None
    if first is None:
        return "Nothing was checked."
    if counts[False]:
        others = counts[False] - 1
        more = f", and {others} more" if others else ""
        return f"{_upper(first.title)}: {complaint(first, units=units)}{more}."
    doubtful = [f for f in result.findings if f.state in (State.UNKNOWN, State.DISAGREES)]
    if doubtful:
        return f"{_upper(doubtful[0].title)}: {doubtful[0].reason}"
    return f"All {counts[True]} demands on this joint are met."


def _findings(joint: Joint) -> Section:
    result, units = joint.result, joint.units
    section = Section("Findings")
    section.unmet = [_unmet(f, units) for f in result.findings if f.met is False]
    shown = [f for f in result.findings if f.state is not State.ABSENT]
    rows: Rows = [
        (
            f"{f.state.mark} {f.state.value}", _upper(f.title), *_figures(f, units), _ways(f),
        )
        for f in shown
    ]  # fmt: skip
    head = ("State", "Demand", "Value", "Least", "Most", "To spare", "Read from")
    section.tables.append(Table(head, rows, (2.5, 4.6, 1.6, 1.5, 1.5, 1.5, 1.8)))
    absent = ", ".join(f.title for f in result.findings if f.state is State.ABSENT)
    if absent:
        section.closing = f"Not applicable to this joint: {absent}."
    return section


def _figures(f: Finding, units: Units) -> tuple[str, str, str, str]:
    """Value, least, most and what is to spare; of a whole part's interference none is wanted."""
    value, low, high, spare = (
        _figure(n, f.unit, units) for n in (f.value, f.low, f.high, f.margin)
    )
    if is_overlap(f.id):
        return (value, "", NONE, spare) if f.value else (value and NONE, "", NONE, "")
    return value, low, high, spare


def _unmet(f: Finding, units: Units) -> Unmet:
    value, low, high, _ = _figures(f, units)
    limits = f"; at least {low}" if low else ""
    limits += f"; at most {high}" if high else ""
    figures = f"{value}{limits}"
    return Unmet(_upper(f.title), f.state.value, figures, f.consequence, f.mending)


def _ways(f: Finding) -> str:
    if f.solids and f.closed_form:
        return "both"
    return "solids" if f.solids else "closed form" if f.closed_form else "-"


def _figure(value: float | None, kind: Kind, units: Units) -> str:
    if value is None:
        return ""
    if kind is Kind.NUMBER:
        return f"{value:.2f}"
    return show_value(value, kind=kind, units=units)


def _options(results: Iterable[Result], units: Units) -> list[Section]:
    rows: Rows = [(r.name, r.verdict.value, reason(r, units)) for r in results]
    if not rows:
        return []
    table = Table(("Option", "Verdict", "Why"), rows, (3, 1.6, 5))
    words = [
        "Other joints of the same job, by closed forms alone; check one on solids before using it."
    ]
    return [Section("Options", words=words, tables=[table])]


def _origins(joint: Joint) -> Section:
    """Every value with where it comes from."""
    section = Section(
        "Every number and its origin",
        words=[
            (
                "Stated: written in a file of the job. From memory: a default to be replaced by "
                "what the shop measures. Common practice: usual in the trade, without a "
                "published source."
            )
        ],
    )
    rows: Rows = [
        (key, _shown(joint, key), _limits(joint, key), joint.job.origin(key))
        for group in GROUPS
        for key, parameter in ALL.items()
        if parameter.group == group != "job"
    ]
    head = "Parameter", "Value", "Limits", "Origin"
    section.tables.append(Table(head, rows, (2.6, 2.6, 2.4, 3.4)))
    return section


def _shown(joint: Joint, key: str) -> str:
    value, kind = joint.values[key], ALL[key].kind
    if value is None:
        return "-"
    if getattr(value, "ndim", 0):
        return ", ".join(_one(float(v), kind, joint.units) for v in value) or "none"
    if isinstance(value, str | bool | list):
        return show_value(value, kind=kind, units=joint.units)
    return _one(float(value), kind, joint.units)


def _one(value: float, kind: Kind, units: Units) -> str:
    # Not a number: a wish that the designer has not.
    return "-" if math.isnan(value) else show_value(value, kind=kind, units=units)


def _limits(joint: Joint, key: str) -> str:
    limits = joint.limits(key)
    if limits is None:
        return ""
    kind, units = ALL[key].kind, joint.units
    low, high = (
        compact_length(d, units=units, signed=True)
        if kind is Kind.LENGTH
        else show_value(d, kind=kind, units=units, signed=True)
        for d in limits
    )
    return f"{high} / {low}"


def _method() -> Section:
    return Section(
        "How this was checked",
        words=[
            (
                "Each demand that both ways can tell is read both ways: by closed forms from the "
                "stated figures, and by measuring the solids. The solids decide; where the two lie "
                "more than 0.005 mm apart the finding says so instead of passing."
            ),
            (
                "This is an aid to a skilled maker who measures the parts in hand before "
                "cutting. The rules of your place and licensed practice come first."
            ),
        ],
    )


def _upper(text: str) -> str:
    return text[:1].upper() + text[1:]

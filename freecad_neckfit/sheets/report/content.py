"""What the report says, in order, before it becomes HTML or PDF."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence

from ...job.quantity import Kind, Units
from ...job.show import compact_length, show_value
from ...run.chain import Result
from ...run.finding import Finding, State
from ...run.overlap import NONE, is_overlap
from ...run.table import complaint
from ..joint import Joint
from .origins import origins
from .parts import Picture, Report, Rows, Section, Table, Unmet


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
        origins(joint),
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
    shares = (2.5, 4.6, 1.6, 1.5, 1.5, 1.5, 1.8)
    if units is Units.INCH:  # with room for the nearest 64th
        shares = (2.4, 4.0, 3.6, 1.4, 1.4, 1.5, 1.7)
    section.tables.append(Table(head, rows, shares))
    absent = ", ".join(f.title for f in result.findings if f.state is State.ABSENT)
    if absent:
        section.closing = f"Not applicable to this joint: {absent}."
    return section


def _figures(f: Finding, units: Units) -> tuple[str, str, str, str]:
    """Value, least, most and what is to spare; of a whole part's interference none is wanted."""
    value = _figure(f.value, f.unit, units)
    low, high, spare = (_compact(n, f.unit, units) for n in (f.low, f.high, f.margin))
    if is_overlap(f.id):
        return (value, "", NONE, spare) if f.value else (value and NONE, "", NONE, "")
    return value, low, high, spare


def _unmet(f: Finding, units: Units) -> Unmet:
    value, low, high, _ = _figures(f, units)
    limits = f"; at least {low}" if low else ""
    limits += f"; at most {high}" if high else ""
    wanted = "; none is wanted" if is_overlap(f.id) else limits
    figures = f"{value}{wanted}"
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


def _compact(value: float | None, kind: Kind, units: Units) -> str:
    """Without the nearest 64th, where a column is narrow."""
    if value is not None and kind is Kind.LENGTH:
        return compact_length(value, units=units)
    return _figure(value, kind, units)


def _options(results: Iterable[Result], units: Units) -> list[Section]:
    rows: Rows = [(r.name, r.verdict.value, reason(r, units)) for r in results]
    if not rows:
        return []
    table = Table(("Option", "Verdict", "Why"), rows, (3, 1.6, 5))
    words = [
        "Other joints of the same job, by closed forms alone; check one on solids before using it."
    ]
    return [Section("Options", words=words, tables=[table])]


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

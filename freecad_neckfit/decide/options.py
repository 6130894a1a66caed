"""Options side by side: the verdict first, then only what differs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Protocol

import numpy as np

from ..fit.case import Case
from ..fit.check import Check, Gravity
from ..fit.checks import ALL
from ..fit.verdict import ROUNDING, margin
from ..job.parameters import ALL as PARAMETERS
from ..job.parameters import ROLES
from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value
from ..job.speech import say
from ..job.words import name_of
from .progress import Progress, tell

FITS, DOES_NOT, UNSURE = "fits", "DOES NOT FIT", "not decided"
SAME = 0.005
"""Figures that differ by less, in their unit, do not count as different."""
NOTHING = "-"
"""What stands where a joint has no such thing."""
UNJUDGED = ("job", "shop")
"""Groups that say nothing of the joint itself."""
SWITCHES: dict[str, tuple[str, tuple[Any, ...]]] = {
    "plate": ("plate.cover", ("none",)),
    "shim": ("shim.make", ("none",)),
    "bridge.recess": ("bridge.mount", ("top", "plate")),
    "neck.binding_width": ("neck.binding", (0.0,)),
    **{f"pickup_{role}": (f"pickup_{role}.fitted", (False,)) for role in ROLES},
}
"""Parameters, or whole groups, that say nothing where another one has one of these values."""
MOST_LISTED = 6
"""Lists of so many values are shown whole."""


@dataclass(frozen=True)
class Figure:
    """What one check says of one joint: value, room to its limits, whether it is met.

    ``value`` None: not applicable or not known. ``met`` None: told only, or not applicable.
    """

    value: float | None
    margin: float | None
    met: bool | None
    known: bool = True


@dataclass(frozen=True)
class Column:
    """One joint of the comparison: its values by parameter, and its figures by check id."""

    name: str
    values: Mapping[str, Any]
    figures: Mapping[str, Figure]

    @property
    def unmet(self) -> list[Check]:
        """Unmet demands, worst first, as the full check puts them."""
        checks = [c for c in ALL if c.id in self.figures and self.figures[c.id].met is False]
        case = Case(self.values)

        def rank(check: Check) -> tuple[Gravity, float]:
            figure = self.figures[check.id]
            return check.toll(case, figure.value).gravity, (figure.margin or 0) / check.span

        return sorted(checks, key=rank)

    @property
    def verdict(self) -> str:
        """The answer in a word or three."""
        if self.unmet:
            return DOES_NOT
        return FITS if all(f.known for f in self.figures.values()) else UNSURE


class FindingLike(Protocol):
    """A finding of the full check: see ``run.finding``."""

    @property
    def id(self) -> str: ...
    @property
    def value(self) -> float | None: ...
    @property
    def margin(self) -> float | None: ...
    @property
    def met(self) -> bool | None: ...
    @property
    def doubtful(self) -> bool: ...


@dataclass(frozen=True)
class Cell:
    """One cell: its text, the difference to the base, and whether a demand is unmet there.

    ``number``, ``change``: both as numbers in the unit used inside, where they are numbers.
    """

    text: str
    delta: str = ""
    unmet: bool = False
    number: float | None = None
    change: float | None = None


@dataclass(frozen=True)
class Row:
    """A line of the table; ``group`` is "verdict", "stated" or "figures".

    ``unit``: of the cells' numbers.
    """

    group: str
    title: str
    cells: tuple[Cell, ...]
    unit: str = ""


@dataclass(frozen=True)
class Comparison:
    """The table: one column a joint, the base first."""

    names: tuple[str, ...]
    rows: tuple[Row, ...] = field(default=())


class JointLike(Protocol):
    """A joint to judge: see ``job.joint``."""

    @property
    def name(self) -> str: ...
    @property
    def stated(self) -> Mapping[str, Any]: ...


def columns(joints: Sequence[JointLike], *, progress: Progress | None = None) -> list[Column]:
    """Judge joints by closed forms. Raises Stopped where ``progress`` says so."""
    found = []
    for n, joint in enumerate(joints):
        tell(progress, n / len(joints), f"judging the joint {joint.name}")
        found.append(column(joint.name, joint.stated))
    return found


def column(name: str, stated: Mapping[str, Any]) -> Column:
    """Judge one joint by closed forms."""
    case = Case(stated)
    figures = {c.id: _figure(c, case) for c in ALL if c.read is not None}
    return Column(name, case.values, figures)


def judged_column(name: str, values: Mapping[str, Any], findings: Sequence[FindingLike]) -> Column:
    """A joint that the full check has judged on solids."""
    figures = {f.id: Figure(f.value, f.margin, f.met, not f.doubtful) for f in findings}
    return Column(name, values, figures)


def _figure(check: Check, case: Case) -> Figure:
    assert check.read is not None  # noqa: S101  (the caller asks those that can be read)
    reading = check.read(case)
    if not bool(reading.applies):
        return Figure(None, None, None)
    if not bool(reading.known):
        return Figure(None, None, None, known=check.gravity is Gravity.TELLS)
    value = float(reading.value)
    if check.gravity is Gravity.TELLS:
        return Figure(value, None, None)
    left = float(margin(check, case, value=value))
    if not np.isfinite(left):
        return Figure(value, None, None)
    return Figure(value, left, left >= -ROUNDING)


def compare(columns: Sequence[Column], *, units: Units) -> Comparison:
    """Lay joints side by side; the first is the base that the others are held against."""
    names = tuple(c.name for c in columns)
    rows = [
        Row("verdict", say("verdict"), tuple(_verdict(c) for c in columns)),
        Row("verdict", say("first reason"), tuple(Cell(_reason(c, units)) for c in columns)),
        *_stated(columns, units),
        *_figures(columns, units),
    ]
    return Comparison(names, tuple(rows))


def _verdict(c: Column) -> Cell:
    return Cell(say(c.verdict), unmet=bool(c.unmet))


def _reason(c: Column, units: Units) -> str:
    if not c.unmet:
        return ""
    first = c.unmet[0]
    short = _amount(abs(c.figures[first.id].margin or 0.0), first.unit, units)
    more = say(" (+{} more)").format(len(c.unmet) - 1) if len(c.unmet) > 1 else ""
    return f"{say(first.title)}: {say('out by {}').format(short)}{more}"


def _stated(columns: Sequence[Column], units: Units) -> list[Row]:
    rows = []
    for key, p in PARAMETERS.items():
        if p.group in UNJUDGED:
            continue
        values = [c.values[key] if _counts(key, c.values) else None for c in columns]
        there = [v for v in values if v is not None]
        # Where there is no plate, the row of the plate itself says so.
        if all(_alike(there[0], v) for v in there[1:]):
            continue
        cells = tuple(_stated_cell(v, values[0], p.kind, units) for v in values)
        if not _look_alike(cells):
            rows.append(Row("stated", say(name_of(key)), cells, p.kind.unit))
    return rows


def _counts(key: str, values: Mapping[str, Any]) -> bool:
    """Whether a parameter says anything of this joint: no plate has a thickness that is none."""
    group = key.partition(".")[0]
    switch, off = SWITCHES.get(key) or SWITCHES.get(group) or ("", ())
    return key == switch or not switch or values[switch] not in off


def _look_alike(cells: Sequence[Cell]) -> bool:
    """Whether a reader would see no difference."""
    return len({(cell.text, cell.unmet) for cell in cells}) == 1


def _alike(a: Any, b: Any) -> bool:
    if isinstance(a, str | bool):
        return bool(a == b)
    first, second = np.asarray(a, dtype=float), np.asarray(b, dtype=float)
    return bool(np.array_equal(first, second, equal_nan=True))


def _stated_cell(value: Any, base: Any, kind: Kind, units: Units) -> Cell:
    if value is None:
        return Cell(NOTHING)
    if not kind.is_measured or np.ndim(value):
        return Cell(_words(value, base, kind, units))
    number = float(value)
    if base is None:
        return Cell(_amount(number, kind, units), number=number)
    first = float(base)
    return Cell(
        _amount(number, kind, units),
        _delta(number, first, kind, units),
        number=number,
        change=number - first,
    )


def _words(value: Any, base: Any, kind: Kind, units: Units) -> str:
    """A choice, a flag, a list or an outline as a builder says it."""
    if kind is Kind.FLAG:
        return say("yes") if value else say("no")
    if isinstance(value, str):
        return say(value)
    if kind is Kind.POINTS:
        return show_value(value, kind=kind, units=units) + _elsewhere(value, base)
    if np.ndim(value):
        return _listed(value, kind, units) + _elsewhere(value, base)
    return show_value(value, kind=kind, units=units)


def _listed(values: Any, kind: Kind, units: Units) -> str:
    """A list as far as a cell has room for it: its values, or how many and from where to where."""
    if not values.size:
        return say("none")
    if values.size <= MOST_LISTED:
        return ", ".join(_amount(float(v), kind, units) for v in values)
    low, high = (_amount(float(v), kind, units) for v in (values.min(), values.max()))
    return say("{} values, {} to {}").format(values.size, low, high)


def _elsewhere(value: Any, base: Any) -> str:
    """What tells lists apart that are too long to be shown whole."""
    is_short = isinstance(value, np.ndarray) and value.size <= MOST_LISTED
    return "" if is_short or base is None or _alike(value, base) else say(" (others)")


def _figures(columns: Sequence[Column], units: Units) -> list[Row]:
    rows = []
    for check in ALL:
        figures = [c.figures.get(check.id, Figure(None, None, None)) for c in columns]
        if not _differ(figures):
            continue
        cells = tuple(_figure_cell(f, figures[0], check, units) for f in figures)
        if not _look_alike(cells):
            rows.append(Row("figures", say(check.title), cells, check.unit.unit))
    return rows


def _differ(figures: Sequence[Figure]) -> bool:
    values = [f.value for f in figures]
    if len({v is None for v in values}) > 1 or len({f.met for f in figures}) > 1:
        return True
    numbers = [v for v in values if v is not None]
    return bool(numbers) and max(numbers) - min(numbers) >= SAME


def _figure_cell(figure: Figure, base: Figure, check: Check, units: Units) -> Cell:
    if figure.value is None:
        return Cell(NOTHING if figure.known else say("not checked"))
    kind = check.unit
    return Cell(
        say("none") if check.overlap and not figure.value else _amount(figure.value, kind, units),
        "" if base.value is None else _delta(figure.value, base.value, kind, units),
        unmet=figure.met is False,
        number=figure.value,
        change=None if base.value is None else figure.value - base.value,
    )


def _amount(value: float, kind: Kind, units: Units) -> str:
    if kind is Kind.LENGTH:
        return compact_length(value, units=units)
    if kind is Kind.NUMBER:
        return f"{value:.2f}"
    return show_value(value, kind=kind, units=units)


def _delta(value: float, base: float, kind: Kind, units: Units) -> str:
    change = value - base
    if abs(change) < SAME:
        return ""
    if kind is Kind.LENGTH:
        return compact_length(change, units=units, signed=True).rsplit(" ", 1)[0]
    if kind is Kind.NUMBER:
        return f"{change:+.2f}"
    return show_value(change, kind=kind, units=units, signed=True)


__all__ = ["Cell", "Column", "Comparison", "Row", "column", "compare", "judged_column"]

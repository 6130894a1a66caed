"""Measured values: a number with the unit it was written in."""

from __future__ import annotations

import re
from fractions import Fraction

from .entry import Entry
from .number import exact, split_degrees, split_number, tidy
from .units import (
    INCH_MM,
    Kind,
    Unit,
    Units,
    find_unit,
    inner_unit,
    kind_of_unit,
    spellings,
)
from .words import nearest, shown

_BRACKET = re.compile(
    r"(?P<outside>[^()]*?) ?\((?P<fraction>[^()]*?)(?: (?P<error>[+-][0-9.]+))?\)"
)
_BRACKET_AGREES = Fraction(1, 1000)
"""Rounding of a shown value and of its error together [in]."""


def read_measure(raw: object, *, entry: Entry, bare: Units) -> float:
    """Return the value in the unit used inside.

    ``raw`` is a number, or text of one number and at most one unit.
    Raises BadInput for anything else, NaN and infinity included.
    """
    if isinstance(raw, bool) or not isinstance(raw, int | float | str):
        raise entry.wrong_type()
    if isinstance(raw, str):
        number, unit = split_measure(tidy(raw, entry=entry), entry=entry)
    else:
        number, unit = exact(raw, entry=entry), None
    used = unit or inner_unit(entry.kind, bare)
    return entry.as_float(number * used.scale + used.offset)


def split_measure(text: str, *, entry: Entry) -> tuple[Fraction, Unit | None]:
    """Split tidy text into its exact number and its unit; the unit is None where none stands."""
    if entry.kind is Kind.ANGLE:
        degrees = split_degrees(text, entry=entry)
        if degrees is not None:
            return degrees, Unit(Fraction(1))
    bracket = _BRACKET.fullmatch(text) if entry.kind is Kind.LENGTH else None
    number, spelling = split_number(bracket["outside"] if bracket else text, entry=entry)
    unit = _known_unit(spelling, entry=entry) if spelling else None
    if bracket:
        _check_bracket(bracket, number=number, unit=unit, entry=entry)
    return number, unit


def _known_unit(spelling: str, *, entry: Entry) -> Unit:
    unit = find_unit(spelling, kind=entry.kind)
    if unit:
        return unit
    other_kind = kind_of_unit(spelling)
    if other_kind:
        raise entry.refusal(f"is in {spelling}, a unit of {other_kind}")
    if not spellings(entry.kind):
        raise entry.refusal(f"has {shown(spelling)} after the number, but takes no unit")
    guess = nearest(spelling, spellings(entry.kind))
    hint = f" (nearest known unit: {guess})" if guess else ""
    raise entry.refusal(f"has the unknown unit {shown(spelling)}{hint}")


def _check_bracket(
    bracket: re.Match[str], *, number: Fraction, unit: Unit | None, entry: Entry
) -> None:
    """Refuse a bracketed fraction of an inch that contradicts the number before it.

    A shown value such as ``0.720 in (23/32 +0.001)`` may be pasted back into a job.
    """
    fraction, spelling = split_number(bracket["fraction"], entry=entry)
    error = split_number(bracket["error"], entry=entry)[0] if bracket["error"] else Fraction(0)
    if spelling or unit is None or unit.scale != INCH_MM:
        raise entry.refusal("has something in brackets that is no fraction of an inch")
    if abs(fraction + error - number) > _BRACKET_AGREES:
        raise entry.refusal("has a fraction in brackets that differs from the number before it")

"""Limit deviations: how far below and above its nominal size a dimension may lie."""

from __future__ import annotations

import re
from fractions import Fraction

from .entry import Entry
from .measure import split_measure
from .number import exact, tidy
from .units import Kind, Unit, Units, inner_unit

# A slash or space parts two deviations only before a sign or a bare zero: 1/64 stays whole.
_BETWEEN = re.compile(r" ?/ ?(?=[+-]|0(?:\.0*)?(?![0-9.]))| (?=[+-]|0(?:\.0*)?(?![0-9.]))")
_EITHER_WAY = re.compile(r"^(?:±|\+ ?/? ?-) ?")
_HYPHEN_AFTER_DIGIT = re.compile(r"[0-9.]-")
_SPACE_AFTER_SIGN = re.compile(r"(?<=[+-]) ")

_Deviation = tuple[Fraction, Unit | None]


def read_limits(raw: object, *, kind: Kind, bare: Units, name: str) -> tuple[float, float]:
    """Return the limit deviations (lower, upper) from nominal, in the unit used inside.

    Understands a positive number x as ±x; the texts ``±0.1 mm``, ``+-0.1``, ``+0.2/-0.1 mm``,
    ``+0.2 -0``; and a list of two deviations, in either order. A unit written once holds for
    both. Deviations are differences: ±9 °F is ±5 °C.
    Raises BadInput where it cannot be read, or could be read two ways.
    """
    entry = Entry(raw=raw, kind=kind, name=name, wanted=_example(kind))
    if not kind.is_measured:
        reason = f"would be limit deviations, which {kind.phrase} does not have"
        raise entry.refusal(reason, "leave it out")
    (first, first_unit), (second, second_unit) = _pair(raw, entry=entry)
    inner = inner_unit(kind, bare)
    one = entry.as_float(first * (first_unit or second_unit or inner).scale)
    other = entry.as_float(second * (second_unit or first_unit or inner).scale)
    return min(one, other), max(one, other)


def _example(kind: Kind) -> str:
    unit = f" {kind.unit}" if kind.unit else ""
    return f"limit deviations such as ±0.1{unit} or +0.2/-0.1{unit}"


def _pair(raw: object, *, entry: Entry) -> tuple[_Deviation, _Deviation]:
    if isinstance(raw, str):
        return _written(tidy(raw, entry=entry), entry=entry)
    if not isinstance(raw, list | tuple):
        return _either_way(_one(raw, entry=entry), entry=entry)
    if len(raw) != 2:
        raise entry.refusal(f"of {len(raw)} entries is no pair of deviations")
    return _one(raw[0], entry=entry), _one(raw[1], entry=entry)


def _written(text: str, *, entry: Entry) -> tuple[_Deviation, _Deviation]:
    # "+1-3/4" may mean +1 3/4, or +1/-3/4.
    if _HYPHEN_AFTER_DIGIT.search(text):
        raise entry.refusal("has a hyphen that may be a sign or not")
    if _EITHER_WAY.match(text):
        size = _EITHER_WAY.sub("", text)
        if size.startswith(("+", "-")):
            raise entry.refusal("has a second sign after ±")
        return _either_way(_one(size, entry=entry), entry=entry)
    parts = _BETWEEN.split(_SPACE_AFTER_SIGN.sub("", text))
    if len(parts) == 1:
        return _alone(parts[0], entry=entry)
    if len(parts) != 2:
        raise entry.refusal("has more than two deviations")
    return _signed(parts[0], entry=entry), _signed(parts[1], entry=entry)


def _alone(text: str, *, entry: Entry) -> tuple[_Deviation, _Deviation]:
    # "+0.2" may mean ±0.2 or +0.2/0: guessing would move the dimension's middle.
    if text.startswith(("+", "-")):
        raise entry.refusal("is only one of two deviations")
    return _either_way(_one(text, entry=entry), entry=entry)


def _signed(text: str, *, entry: Entry) -> _Deviation:
    number, unit = _one(text, entry=entry)
    if number and not text.startswith(("+", "-")):
        raise entry.refusal("has a deviation without its sign")
    return number, unit


def _one(raw: object, *, entry: Entry) -> _Deviation:
    if isinstance(raw, str):
        return split_measure(tidy(raw, entry=entry), entry=entry)
    if isinstance(raw, bool) or not isinstance(raw, int | float):
        raise entry.refusal("gives no limit deviations")
    return exact(raw, entry=entry), None


def _either_way(deviation: _Deviation, *, entry: Entry) -> tuple[_Deviation, _Deviation]:
    size, unit = deviation
    if size < 0:
        raise entry.refusal("is negative, where one number stands for both sides")
    return (-size, unit), (size, unit)

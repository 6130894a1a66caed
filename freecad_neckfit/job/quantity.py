"""Reading what the designer states: any value of any kind, in mm or inch or mixed.

A number without a unit is taken in the unit system named by ``bare`` if it is a length, and in
the unit used inside (``Kind.unit``) if it is anything else. Whatever cannot be read is refused
with ``BadInput``: one sentence that names the parameter, the value and what to write instead.
"""

from __future__ import annotations

from collections.abc import Callable

from .deviations import read_limits
from .entry import Entry
from .measure import read_measure
from .plain import read_choice, read_count, read_flag, read_path, read_text
from .units import Kind, Units

__all__ = ["Kind", "Points", "Units", "Value", "read_length", "read_limits", "read_value"]

Points = list[tuple[float, float]]
"""Corners of an outline, each an (x, y) pair [mm]."""
Value = float | int | bool | str | Points
"""A value of any kind, in the unit used inside."""

_FEWEST_POINTS = 3
_UNMEASURED: dict[Kind, Callable[..., Value]] = {
    Kind.COUNT: read_count,
    Kind.FLAG: read_flag,
    Kind.CHOICE: read_choice,
    Kind.TEXT: read_text,
    Kind.PATH: read_path,
}


def read_length(raw: object, *, bare: Units, name: str) -> float:
    """Return a length [mm] from a number, or from text such as ``1 3/4 in`` or ``44.45 mm``.

    Text may hold a decimal number with a point, a fraction (``5/8``, ``⅝``) or a mixed number
    (``1 3/4``, ``1-3/4``), with a sign, and a unit. Inches and feet are exact: 25.4 mm, 12 in.
    Raises BadInput for a decimal comma, NaN, infinity, true and false, units of other kinds,
    unknown units and everything else that is not one length.
    """
    return read_measure(raw, entry=Entry(raw=raw, kind=Kind.LENGTH, name=name), bare=bare)


def read_value(raw: object, *, kind: Kind, bare: Units, name: str) -> Value:
    """Return a value of the kind from what the designer wrote, in the unit used inside.

    Raises BadInput for whatever is no such value. Limits of single parameters and the words
    that a choice offers are not checked here.
    """
    if kind is Kind.POINTS:
        return _read_points(raw, bare=bare, name=name)
    entry = Entry(raw=raw, kind=kind, name=name)
    if kind.is_measured:
        return read_measure(raw, entry=entry, bare=bare)
    return _UNMEASURED[kind](raw, entry=entry)


def _read_points(raw: object, *, bare: Units, name: str) -> Points:
    entry = Entry(raw=raw, kind=Kind.POINTS, name=name)
    if not isinstance(raw, list | tuple):
        raise entry.wrong_type()
    if len(raw) < _FEWEST_POINTS:
        raise entry.refusal(f"of {len(raw)} points encloses nothing", "write three points or more")
    return [
        _read_point(point, bare=bare, name=f"{name}, point {number}")
        for number, point in enumerate(raw, start=1)
    ]


def _read_point(raw: object, *, bare: Units, name: str) -> tuple[float, float]:
    if not isinstance(raw, list | tuple) or len(raw) != 2:
        entry = Entry(raw=raw, kind=Kind.POINTS, name=name)
        raise entry.refusal("is no pair of lengths", "write a pair such as [80, 60]")
    x, y = raw
    return (
        read_length(x, bare=bare, name=f"{name}, x"),
        read_length(y, bare=bare, name=f"{name}, y"),
    )

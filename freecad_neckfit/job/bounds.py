"""Whether a value lies within what its parameter permits."""

from __future__ import annotations

from typing import Any

from .errors import BadInput
from .parameter import Parameter
from .quantity import Kind, Units
from .show import compact_length, show_value
from .words import nearest, shown


def in_bounds(p: Parameter, value: Any, *, raw: object, name: str, units: Units) -> None:
    """Return quietly for a permitted value (inner units); ``raw`` is how it was written.

    Raises BadInput that names parameter, value, unit, limit and what to do.
    """
    if p.choices:
        _refuse_unknown_choice(p, value, name=name)
    elif p.low is not None and p.high is not None and not p.low <= value <= p.high:
        written, (low, high) = _written(p, raw, units), _range(p, units)
        # Two whole sentences: a word filled in would stay English in another language.
        if value < p.low:
            raise BadInput(
                f"{name}: {written} lies below what is permitted; state {low} to {high}."
            )
        raise BadInput(f"{name}: {written} lies above what is permitted; state {low} to {high}.")


def deviations_in_bounds(p: Parameter, low: float, high: float, *, raw: object, name: str) -> None:
    """Return quietly for limit deviations (inner units) no wider than the parameter may differ.

    Raises BadInput as ``in_bounds`` does.
    """
    if p.low is not None and p.high is not None and max(-low, high) > p.high - p.low:
        raise BadInput(
            f"{name}: {shown(raw)} is more than {p.key} may differ at all "
            f"({p.high - p.low:g} {p.kind.unit}".rstrip()
            + "); make it smaller."
        )


def _refuse_unknown_choice(p: Parameter, value: str, *, name: str) -> None:
    if value in p.choices:
        return
    near = nearest(value, p.choices)
    hint = f" (nearest: {near})" if near else ""
    known = ", ".join(f'"{word}"' for word in p.choices)
    raise BadInput(f"{name}: {shown(value)} is none of its choices{hint}; write one of {known}.")


def _range(p: Parameter, units: Units) -> tuple[str, str]:
    """Return the permitted range in the declaration's own unit: rounded inches may lie outside."""
    low, high = _bounds(p, Units.MM)
    if p.kind is not Kind.LENGTH or units is Units.MM:
        return low, high
    inches = " to ".join(_bounds(p, Units.INCH))
    return low, f"{high} ({inches})"


def _bounds(p: Parameter, units: Units) -> tuple[str, str]:
    bounds = (int(b or 0) if p.kind is Kind.COUNT else float(b or 0) for b in (p.low, p.high))
    if p.kind is Kind.LENGTH:
        low, high = (compact_length(bound, units=units) for bound in bounds)
    else:
        low, high = (show_value(bound, kind=p.kind, units=units) for bound in bounds)
    return low, high


def _written(p: Parameter, raw: object, units: Units) -> str:
    """Return the value as it was written, a bare number with the unit it is taken in."""
    if isinstance(raw, str):
        return shown(raw)
    unit = units.value if p.kind is Kind.LENGTH else p.kind.unit
    return f"{shown(raw)} {unit}".rstrip()

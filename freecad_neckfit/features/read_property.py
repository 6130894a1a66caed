"""One property read: its unit, its kind and its permitted range checked."""

from __future__ import annotations

import math
from typing import Any

from ..job.bounds import in_bounds
from ..job.errors import BadInput
from ..job.parameter import Parameter
from ..job.parameters import ALL, LISTS
from ..job.quantity import Kind, Units, read_value
from ..job.tables import MOST_POINTS, most_entries
from ..job.units import INCH_MM
from .properties import property_of
from .roles import role_of

_DIMENSIONS = {Kind.LENGTH: "Length", Kind.ANGLE: "Angle"}


def inner(obj: Any, p: Parameter) -> Any:
    """The value of a parameter's property in inner units; lists as arrays, points as pairs.

    Raises BadInput in one sentence that names object, property, value, unit, limit and what to do:
    for a unit of another kind, NaN, infinity, a value out of range, or rows that do not match.
    """
    name = f"{obj.Label}.{property_of(p)}"
    raw = getattr(obj, property_of(p))
    if p.many:
        return _array(obj, p, list(raw), name=name)
    if p.kind is Kind.POINTS:
        return _points(list(raw), name=name)
    if p.kind in _DIMENSIONS:
        raw = _bare(p, raw, name=name)
    return _one(obj, p, raw, name=name)


def units_of(obj: Any) -> Units:
    """The unit system that the joint of an object, or the object itself, is stated in."""
    joints = [o for o in (obj, *obj.InList) if role_of(o) == "joint"]
    inch = joints and getattr(joints[0], "JobUnits", "mm") == "inch"
    return Units.INCH if inch else Units.MM


def has_unit_of(p: Parameter, quantity: Any) -> bool:
    """Whether the unit of a length's or an angle's property is one of its kind."""
    import FreeCAD

    return bool(quantity.Unit == getattr(FreeCAD.Units, _DIMENSIONS[p.kind]))


def _bare(p: Parameter, quantity: Any, *, name: str) -> float:
    """The number of a quantity, if its unit is one of the parameter's kind."""
    if not has_unit_of(p, quantity):
        raise BadInput(
            f"{name}: {quantity.Value:g} {_symbol(quantity)} is no {p.kind.word}; give it a value "
            f"such as {p.kind.example}."
        )
    return float(quantity.Value)


def _symbol(quantity: Any) -> str:
    """The unit alone, as FreeCAD spells it before the powers and the kind."""
    return str(quantity.Unit).removeprefix("Unit: ").split(" (")[0].strip()


def _one(obj: Any, p: Parameter, raw: Any, *, name: str) -> Any:
    if p.kind.is_measured and math.isfinite(raw):
        value: Any = float(raw)  # nothing to be read: this runs for every value of a dragged joint
    else:
        value = read_value(raw, kind=p.kind, bare=Units.MM, name=name)
    if p.low is not None and p.high is not None and p.low <= value <= p.high:
        return value
    if p.kind is not Kind.PATH:
        units = units_of(obj)
        if p.kind is Kind.LENGTH and units is Units.INCH:
            raw = round(raw / float(INCH_MM), 4)
        in_bounds(p, value, raw=raw, name=name, units=units)
    return value


def _array(obj: Any, p: Parameter, raw: list[float], *, name: str) -> Any:
    import numpy as np

    wanted = _count(obj, p)
    if not raw and wanted and p.group in LISTS and p.default is not None:
        raw = [float(p.default)] * wanted
    if wanted is not None and len(raw) != wanted:
        each = "strings, treble first" if p.many == "string" else f"rows of {p.group}"
        raise BadInput(f"{name}: {len(raw)} values for {wanted} {each}; state {wanted}.")
    if len(raw) > most_entries(p):
        raise BadInput(f"{name}: {len(raw)} values are too many; state at most {most_entries(p)}.")
    if not raw and p.group not in LISTS:
        raise BadInput(f"{name} is stated but empty; state its values, or leave it worked out.")
    return np.array(
        [_one(obj, p, x, name=f"{name}, {p.many} {i}") for i, x in enumerate(raw, start=1)],
        dtype=float,
    )


def _count(obj: Any, p: Parameter) -> int | None:
    """How many values there must be; None where any number will do."""
    if p.many == "string":
        return int(obj.StringsCount)
    if p.group not in LISTS:
        return None
    columns = [property_of(q) for q in ALL.values() if q.group == p.group]
    return max(len(getattr(obj, column)) for column in columns)


def _points(raw: list[Any], *, name: str) -> Any:
    if len(raw) > MOST_POINTS:
        raise BadInput(f"{name}: {len(raw)} points are too many; state at most {MOST_POINTS}.")
    pairs = [(p.x, p.y) for p in raw]
    return read_value(pairs, kind=Kind.POINTS, bare=Units.MM, name=name)

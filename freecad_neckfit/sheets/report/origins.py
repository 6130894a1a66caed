"""Where every number of the joint comes from: one table for each origin."""

from __future__ import annotations

import math

from ...job.parameters import ALL, GROUPS
from ...job.quantity import Kind, Units
from ...job.show import compact_length, show_value
from ...job.words import name_of
from ..joint import Joint
from .parts import Rows, Section, Table

EXPLAINED = (
    "Stated: written in a file of the job. From memory: a default to be replaced by what the shop "
    "measures. Common practice: usual in the trade, without a published source."
)
HEAD = ("What", "Value")
STATED = "stated in "


def origins(joint: Joint) -> Section:
    """Every value, what is stated first; a parameter is called by its name in plain words."""
    found: dict[str, Rows] = {}
    for key in _keys():
        row = (_upper(name_of(key)), f"{_value(joint, key)}{_limits(joint, key)}")
        found.setdefault(joint.job.origin(key), []).append(row)
    by_origin = sorted(found.items(), key=lambda item: not item[0].startswith(STATED))
    tables = [Table(HEAD, rows, (5, 4.6), _upper(said), beside=2) for said, rows in by_origin]
    return Section("Every number and its origin", words=[EXPLAINED], tables=tables)


def _keys() -> list[str]:
    """The parameters, part by part; what a job is called is no number."""
    return [
        key
        for group in GROUPS
        for key, parameter in ALL.items()
        if parameter.group == group != "job"
    ]


def _value(joint: Joint, key: str) -> str:
    value, kind = joint.values[key], ALL[key].kind
    if value is None:
        return "-"
    if getattr(value, "ndim", 0):
        return ", ".join(_one(float(v), kind, joint.units) for v in value) or "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, str | list):
        return show_value(value, kind=kind, units=joint.units) or "-"
    return _one(float(value), kind, joint.units)


def _one(value: float, kind: Kind, units: Units) -> str:
    # Not a number: a wish that the designer has not.
    return "-" if math.isnan(value) else show_value(value, kind=kind, units=units)


def _limits(joint: Joint, key: str) -> str:
    limits = joint.limits(key)
    if limits is None:
        return ""
    low, high = limits
    if abs(low + high) < 1e-12:
        return f", ±{_deviation(high, key, joint.units)}"
    signed = (_deviation(d, key, joint.units, signed=True) for d in (high, low))
    return f", {' / '.join(signed)}"


def _deviation(value: float, key: str, units: Units, *, signed: bool = False) -> str:
    kind = ALL[key].kind
    if kind is Kind.LENGTH:
        return compact_length(value, units=units, signed=signed)
    return show_value(value, kind=kind, units=units, signed=signed)


def _upper(text: str) -> str:
    return text[:1].upper() + text[1:]

"""The table of parameters for the documentation, made from the declarations."""

from __future__ import annotations

from typing import Any

from .parameter import Parameter
from .parameters import ALL, GROUPS
from .quantity import Kind, Units
from .show import show_value


def parameter_table() -> str:
    """Every parameter as Markdown, one table a group."""
    parts = ["# Parameters of a job", "", _PREFACE]
    for group in GROUPS:
        rows = [p for p in ALL.values() if p.group == group]
        parts += [
            f"\n## {group}\n",
            _HEAD,
            "|---|---|---|---|---|---|---|",
        ]
        parts += [_row(p) for p in rows]
    return "\n".join(parts)


_HEAD = (
    "| name | meaning | default | permitted | where to measure | origin of the default "
    "| default limits |"
)
_PREFACE = (
    "Written by `python3 -m freecad_neckfit parameters` from the declarations; a test keeps it so. "
    "Lengths and angles may carry any unit (`5/8 in`, `15.875 mm`, `1.5 deg`); bare numbers are in "
    "the unit that `[job] units` names. Groups marked (list) are written as `[[group]]`, once each."
)


def _row(p: Parameter) -> str:
    name = f"`{p.name}`" + (" (list)" if p.many else "")
    cells = (name, p.meaning, _default(p), _permitted(p), p.where, p.origin, _limits(p))
    return "| " + " | ".join(cell.replace("|", "/") for cell in cells) + " |"


def _default(p: Parameter) -> str:
    if p.default is None:
        return "-" if p.many and p.group == p.many else "worked out"
    return _value(p, p.default) or '""'


def _value(p: Parameter, value: Any) -> str:
    if p.kind is Kind.LENGTH:
        return f"{value:g} mm"
    if p.kind in (Kind.CHOICE, Kind.TEXT, Kind.PATH):
        return str(value)
    return show_value(value, kind=p.kind, units=Units.MM)


def _permitted(p: Parameter) -> str:
    if p.choices:
        return ", ".join(p.choices)
    if p.low is None or p.high is None:
        return ""
    return f"{p.low:g} … {p.high:g} {p.kind.unit}".strip()


def _limits(p: Parameter) -> str:
    if p.tolerance is None:
        return ""
    low, high = p.tolerance
    return f"± {high:g} {p.kind.unit}" if low == -high else f"{high:+g} / {low:+g} {p.kind.unit}"

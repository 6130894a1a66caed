"""From raw TOML tables to values in inner units, group by group."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np

from .bounds import deviations_in_bounds, in_bounds
from .errors import BadInput
from .files import plain, resolved
from .layers import Layer, Part, Said, Tables
from .parameter import Parameter
from .parameters import ALL, GROUPS, LISTS, SPREADS
from .quantity import Kind, Units, read_limits, read_value
from .words import nearest, shown

FROM = "from"
TOLERANCE = "tolerance"
LIMITS, SPREAD = "limits", "spread"
"""What may be said of a dimension's tolerance."""
MOST_ENTRIES = 100
"""Most entries of a list: no joint has as many screws, cavities or strings."""
MOST_POINTS = 4000
"""Most corners of an outline given as points."""

OpenPart = Callable[[str, str], Part]
"""Gives the part file that a table of some group names: (path as written, group)."""


@dataclass(frozen=True)
class Where:
    """The file that is being read: its name for sentences, its folder, its bare unit."""

    file: str
    folder: Path
    bare: Units

    def named(self, key: str) -> str:
        """Return how a sentence names a parameter of this file."""
        return f"{self.file}: {key}"

    def refusal(self, sentence: str) -> BadInput:
        """Return the error that says in which file something is wrong."""
        return BadInput(f"{self.file}: {sentence}")


def read_tables(raw: Mapping[str, Any], *, where: Where, open_part: OpenPart) -> Tables:
    """Return what the tables of groups, and a tolerance table beside them, state.

    Raises BadInput, naming file, parameter, value, unit and limit, for whatever is unknown or
    unusable.
    """
    own, parts = Layer(), {}
    for group, table in raw.items():
        if group == TOLERANCE:
            continue
        _refuse_unknown_group(group, where=where)
        if group in LISTS:
            own = _read_list(group, table, where=where).over(own)
            continue
        if not isinstance(table, dict):
            raise where.refusal(f"{group} is {shown(table)}, no table; write [{group}] above it.")
        keys = {k: v for k, v in table.items() if k != FROM}
        own = _read_group(group, keys, where=where).over(own)
        if FROM in table:
            written = read_value(
                table[FROM], kind=Kind.PATH, bare=where.bare, name=where.named(f"{group}.{FROM}")
            )
            parts[group] = open_part(str(written), group)
    if TOLERANCE in raw:
        own = _read_tolerances(raw[TOLERANCE], where=where).over(own)
    return Tables(own=own, parts=parts)


def _refuse_unknown_group(group: str, *, where: Where) -> None:
    if group in GROUPS:
        return
    near = nearest(group, (*GROUPS, "option", TOLERANCE))
    hint = f"nearest known: {near}" if near else f"known: {', '.join(GROUPS)}"
    raise where.refusal(f"{shown(group)} is no group of parameters ({hint}); correct the name.")


def _parameter(group: str, name: str, *, where: Where) -> Parameter:
    found = ALL.get(f"{group}.{name}")
    if found is not None:
        return found
    key = f"{group}.{name}"
    siblings = [p.key for p in ALL.values() if p.group == group]
    near = nearest(key, siblings) if name else None
    # A right name under the wrong heading is likelier than a wrong name.
    elsewhere = [p.key for p in ALL.values() if p.name == name]
    guess = near or (elsewhere[0] if elsewhere else nearest(key, ALL))
    hint = f" (nearest known: {guess})" if guess else ""
    raise where.refusal(f"{shown(key)} is no parameter{hint}; correct the name or leave it out.")


def _read_group(group: str, table: Mapping[str, Any], *, where: Where) -> Layer:
    found = Layer()
    for name, raw in table.items():
        p = _parameter(group, name, where=where)
        value = raw
        if isinstance(raw, dict):
            value = _with_limits(p, raw, where=where)
            found = _read_tolerance(p, raw, where=where).over(found)
        found = Layer({p.key: Said(_read_one(p, value, where=where), where.file)}).over(found)
    return found


def _with_limits(p: Parameter, raw: dict[str, Any], *, where: Where) -> Any:
    """The value of a table that also says something of its tolerance."""
    if not {"value"} < set(raw) <= {"value", LIMITS, SPREAD}:
        raise where.refusal(
            f"{p.key} is a table of {plain(', '.join(map(shown, raw))) or 'nothing'}; write "
            '{value = …, limits = "±0.1 mm"} or one plain value.'
        )
    return raw["value"]


def _read_one(p: Parameter, raw: Any, *, where: Where) -> Any:
    name = where.named(p.key)
    if p.many:
        return _read_array(p, raw, where=where)
    if p.kind is Kind.POINTS and isinstance(raw, list) and len(raw) > MOST_POINTS:
        raise BadInput(f"{name}: {len(raw)} points are too many; state at most {MOST_POINTS}.")
    value = read_value(raw, kind=p.kind, bare=where.bare, name=name)
    if p.kind is Kind.PATH and value:
        return str(resolved(where.folder / str(value)))
    in_bounds(p, value, raw=raw, name=name, units=where.bare)
    return value


def most_entries(p: Parameter) -> int:
    """Most values that a list may hold; a sampled surface has more than any row of parts."""
    return MOST_POINTS if p.many == "sample" else MOST_ENTRIES


def _read_array(p: Parameter, raw: Any, *, where: Where) -> Any:
    name = where.named(p.key)
    most = most_entries(p)
    if not isinstance(raw, list) or not 0 < len(raw) <= most:
        what = f"a list of {len(raw)}" if isinstance(raw, list) else shown(raw)
        raise BadInput(
            f"{name}: {what} is no list of 1 to {most} values, one for each {p.many}; "
            f"write such a list, as [{p.kind.example.split(' or ')[0]!r}]."
        )
    return np.array(
        [_entry(p, r, f"{name}, {p.many} {i}", where) for i, r in enumerate(raw, start=1)]
    )


def _entry(p: Parameter, raw: Any, name: str, where: Where) -> float:
    value = read_value(raw, kind=p.kind, bare=where.bare, name=name)
    in_bounds(p, value, raw=raw, name=name, units=where.bare)
    return float(value)  # type: ignore[arg-type]


def _read_list(group: str, raw: Any, *, where: Where) -> Layer:
    """Return an array of tables as one array for each parameter of the group."""
    if not isinstance(raw, list) or not all(isinstance(row, dict) for row in raw):
        raise where.refusal(f"{group} is no list of tables; write [[{group}]] above each.")
    if len(raw) > MOST_ENTRIES:
        raise where.refusal(f"{len(raw)} × [[{group}]] are too many; state at most {MOST_ENTRIES}.")
    for row in raw:
        for name in row:
            _parameter(group, name, where=where)
    columns = [p for p in ALL.values() if p.group == group]
    return Layer({p.key: Said(_column(p, raw, where=where), where.file) for p in columns})


def _column(p: Parameter, rows: list[dict[str, Any]], *, where: Where) -> Any:
    found = []
    for number, row in enumerate(rows, start=1):
        name = where.named(f"{p.group} {number}, {p.name}")
        if p.name not in row and p.default is None:
            raise BadInput(f"{name} is missing; state the {p.meaning}.")
        raw = row.get(p.name)
        found.append(float(p.default) if raw is None else _entry(p, raw, name, where))
    return np.array(found, dtype=float)


def _read_tolerances(raw: Any, *, where: Where) -> Layer:
    if not isinstance(raw, dict):
        raise where.refusal(f"{TOLERANCE} is {shown(raw)}, no table; write [{TOLERANCE}] above it.")
    flat: dict[str, Any] = {}
    for key, value in raw.items():
        # Without quotes TOML reads pocket.depth as a table in a table: both are meant alike.
        nested = value if isinstance(value, dict) and "." not in key else None
        flat |= {f"{key}.{n}": v for n, v in nested.items()} if nested is not None else {key: value}
    found = Layer()
    for key, value in flat.items():
        group, _, name = key.partition(".")
        p = _parameter(group, name, where=where)
        said = value if isinstance(value, dict) else {LIMITS: value}
        if not said or not set(said) <= {LIMITS, SPREAD}:
            raise where.refusal(
                f"the limits of {p.key} are a table of "
                f"{plain(', '.join(map(shown, said))) or 'nothing'}; write "
                '"±0.1 mm" or {limits = "±0.1 mm", spread = "normal"}.'
            )
        found = _read_tolerance(p, said, where=where).over(found)
    return found


def _read_tolerance(p: Parameter, raw: Mapping[str, Any], *, where: Where) -> Layer:
    """What a table says of one dimension's limits, and of how it spreads between them."""
    limits, spread = {}, {}
    if LIMITS in raw:
        limits[p.key] = Said(_read_deviations(p, raw[LIMITS], where=where), where.file)
    if SPREAD in raw:
        spread[p.key] = Said(_read_spread(p, raw[SPREAD], where=where), where.file)
    return Layer({}, limits, spread)


def _read_spread(p: Parameter, raw: Any, *, where: Where) -> str:
    if not p.kind.is_measured:
        raise where.refusal(f"{p.key} has no limits to spread between; leave its spread out.")
    if raw not in SPREADS:
        raise where.refusal(
            f"spread of {p.key} is {shown(raw)}; write one of {', '.join(SPREADS)}."
        )
    return str(raw)


def _read_deviations(p: Parameter, raw: Any, *, where: Where) -> tuple[float, float]:
    name = where.named(f"limits of {p.key}")
    low, high = read_limits(raw, kind=p.kind, bare=where.bare, name=name)
    deviations_in_bounds(p, low, high, raw=raw, name=name)
    return low, high

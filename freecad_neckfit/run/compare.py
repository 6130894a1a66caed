"""Two states of a joint side by side: which values differ, and which findings with them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from ..job.parameters import ALL

SAME = 5e-4
"""Figures closer than this [unit of the finding or value] read the same: less than is shown."""
Record = Mapping[str, Any]


@dataclass(frozen=True)
class State:
    """One state of a joint: what it is called, every value, findings as the record holds them."""

    title: str
    values: Mapping[str, Any]
    findings: Sequence[Record]
    verdict: str


@dataclass(frozen=True)
class Difference:
    """One thing that differs; ``before`` or ``after`` is None where one state lacks it.

    ``key``: the parameter's key or the check's id.
    """

    key: str
    before: Any
    after: Any


def changed_values(before: State, after: State) -> list[Difference]:
    """The parameters that differ, in the order in which they are declared."""
    pairs = [(key, before.values.get(key), after.values.get(key)) for key in ALL]
    return [Difference(key, a, b) for key, a, b in pairs if not _alike(_plain(a), _plain(b))]


def changed_findings(before: State, after: State) -> list[Difference]:
    """The findings whose state, figure or limits differ: those of ``after`` first, worst first."""
    was = {f["id"]: f for f in before.findings}
    now = {f["id"]: f for f in after.findings}
    found = [Difference(i, was.get(i), f) for i, f in now.items() if not _same(was.get(i), f)]
    return found + [Difference(i, f, None) for i, f in was.items() if i not in now]


def _same(one: Record | None, other: Record) -> bool:
    if one is None:
        return False
    return bool(one["state"] == other["state"]) and all(
        _alike(one[name], other[name]) for name in ("value", "low", "high")
    )


def _alike(one: Any, other: Any) -> bool:
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(_alike, one, other))
    if _is_number(one) and _is_number(other):
        # Infinity and NaN are each alike themselves.
        return bool(one == other or (one != one and other != other) or abs(one - other) < SAME)  # noqa: PLR0124
    return bool(one == other)


def _is_number(value: Any) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _plain(value: Any) -> Any:
    if hasattr(value, "tolist"):
        return _plain(value.tolist())
    return [_plain(x) for x in value] if isinstance(value, list | tuple) else value

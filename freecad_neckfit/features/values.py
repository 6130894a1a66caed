"""From the properties of an object to values in inner units, and back."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from typing import Any

from ..job.parameter import Parameter
from ..job.parameters import ALL, LISTS
from ..job.quantity import Kind
from .properties import READ_ONLY, STATED_KEYS, flag_of, outer, parameters_of, property_of
from .read_property import inner
from .roles import role_of

_writers: list[None] = []


@contextmanager
def writing() -> Iterator[None]:
    """While this program itself sets properties: no change within is the designer's."""
    _writers.append(None)
    try:
        yield
    finally:
        _writers.pop()


def is_writing() -> bool:
    """Whether this program itself is setting properties right now."""
    return bool(_writers)


def stated_of(obj: Any) -> dict[str, Any]:
    """What an object states: key to inner value (mm, degrees), lists as arrays.

    Values that equal the default are left out unless a job file stated them; those worked out are
    left out always. Raises BadInput, naming object, property, value, unit and limit.
    """
    named = set(getattr(obj, STATED_KEYS, ()))
    found: dict[str, Any] = {}
    for p in parameters_of(role_of(obj)):
        flag = flag_of(p)
        if flag and not getattr(obj, flag):
            continue
        value = inner(obj, p)
        if flag or p.key in named or value != p.default:
            found[p.key] = value
    return found


def state(obj: Any, values: Mapping[str, Any]) -> None:
    """Make an object state exactly what ``values`` (key to inner value) say of its groups.

    The rest goes back to its default or is worked out again. Keys of other groups are ignored.
    """
    mine = parameters_of(role_of(obj))
    with writing():
        for p in mine:
            _set(obj, p, values)
        keys = [p.key for p in mine if values.get(p.key) is not None]
        if keys != list(getattr(obj, STATED_KEYS)):
            setattr(obj, STATED_KEYS, keys)
        _show_modes(obj, mine)


def show_worked_out(obj: Any) -> None:
    """Check every property, and show in those not stated what is worked out from the others.

    Raises BadInput as ``stated_of`` does.
    """
    from ..job.resolve import complete

    mine = parameters_of(role_of(obj))
    values = complete(stated_of(obj))
    with writing():
        for p in mine:
            flag = flag_of(p)
            if flag and not getattr(obj, flag):
                _change(obj, property_of(p), _worked_out(p, values[p.key]))
        _show_modes(obj, mine)


def _worked_out(p: Parameter, value: Any) -> Any:
    """What a property shows that is not stated: nothing where nothing stands for it."""
    if value is None or (not p.many and p.kind.is_measured and not math.isfinite(value)):
        return outer(p, [] if p.many or p.kind is Kind.POINTS else 0.0)
    return outer(p, value)


def _set(obj: Any, p: Parameter, values: Mapping[str, Any]) -> None:
    value, flag = values.get(p.key), flag_of(p)
    rows = _rows(p, values) if p.group in LISTS else None
    is_stated = value is not None or rows is not None
    if flag:
        _change(obj, flag, is_stated)
        if not is_stated:
            return
    if rows is not None and not hasattr(value, "__len__"):
        # One value for all rows; nothing stands for the default, which is filled in when read.
        value = [] if value is None else [value] * rows
    _change(obj, property_of(p), outer(p, p.default if value is None else value))


def _rows(p: Parameter, values: Mapping[str, Any]) -> int | None:
    """How many rows are stated of the list that a parameter is a column of; None where none is."""
    columns = [values[key] for key in ALL if key.startswith(f"{p.group}.") and key in values]
    return max((len(c) for c in columns if hasattr(c, "__len__")), default=None)


def _change(obj: Any, name: str, value: Any) -> None:
    """Set a property that has another value; setting the same one would mark the object changed."""
    if getattr(obj, name) != value:
        setattr(obj, name, value)


def _show_modes(obj: Any, parameters: tuple[Parameter, ...]) -> None:
    for p in parameters:
        flag = flag_of(p)
        if flag:
            mode = 0 if getattr(obj, flag) else READ_ONLY
            name = property_of(p)
            if (obj.getEditorMode(name) == ["ReadOnly"]) != bool(mode):
                obj.setEditorMode(name, mode)

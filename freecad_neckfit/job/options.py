"""Options of a job: joints stated as differences from the base."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from .errors import BadInput
from .layers import Tables
from .parameters import ALL, LISTS
from .quantity import Kind, read_value
from .tables import Where
from .words import nearest, shown

MOST_OPTIONS = 200
"""Most options of one job file."""
NAME, DEFAULT = "name", "default"

ReadTables = Callable[[Mapping[str, Any]], Tables]


def read_options(raw: Any, *, where: Where, read: ReadTables) -> dict[str, Tables]:
    """Return the differences that each ``[[option]]`` states, by the option's name.

    ``read`` reads the tables of groups in it. Raises BadInput for a missing or repeated name, more
    than 200 options, and whatever ``read`` refuses.
    """
    if not isinstance(raw, list) or not all(isinstance(option, dict) for option in raw):
        raise where.refusal("option is no list of tables; write [[option]] above each option.")
    if len(raw) > MOST_OPTIONS:
        raise where.refusal(f"{len(raw)} options are too many; state at most {MOST_OPTIONS}.")
    found: dict[str, Tables] = {}
    for number, option in enumerate(raw, start=1):
        name = _name(option, number=number, where=where)
        if name in found:
            raise where.refusal(f"two options are called {_quoted(name)}; rename one of them.")
        found[name] = _differences(option, name=name, where=where, read=read)
    return found


def _name(option: Mapping[str, Any], *, number: int, where: Where) -> str:
    if NAME not in option:
        raise where.refusal(f'option {number} has no name; write name = "…" under [[option]].')
    named = where.named(f"name of option {number}")
    name = str(read_value(option[NAME], kind=Kind.TEXT, bare=where.bare, name=named)).strip()
    if not name:
        raise BadInput(f"{named} is empty; write a name that tells it from the others.")
    return name


def _quoted(name: str) -> str:
    return shown(name) if "'" in name else f"'{name[:60]}'"


def _differences(option: Mapping[str, Any], *, name: str, where: Where, read: ReadTables) -> Tables:
    if "job" in option:
        raise where.refusal(
            f"option {_quoted(name)} states [option.job], which holds for the whole file; move it "
            "to [job]."
        )
    tables = read({key: value for key, value in option.items() if key not in (NAME, DEFAULT)})
    return Tables(
        own=tables.own,
        parts=tables.parts,
        defaults=_defaults(option.get(DEFAULT, []), name=name, where=where),
    )


def _defaults(raw: Any, *, name: str, where: Where) -> tuple[str, ...]:
    """Return the keys that an option leaves to their defaults; a list's name means all its keys."""
    if not isinstance(raw, list) or not all(isinstance(key, str) for key in raw):
        raise where.refusal(
            f"{DEFAULT} of option {_quoted(name)} is no list of parameters; write it as "
            '["neck.overhang"].'
        )
    found: list[str] = []
    for key in raw:
        if key in LISTS:
            found += [p.key for p in ALL.values() if p.group == key]
        elif key in ALL:
            found.append(key)
        else:
            near = nearest(key, ALL)
            hint = f" (nearest known: {near})" if near else ""
            raise where.refusal(
                f"{DEFAULT} of option {_quoted(name)} names {shown(key)}, no parameter{hint}; "
                "correct the name."
            )
    return tuple(found)

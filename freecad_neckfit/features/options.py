"""The options of a job file as text in a document: differences from the base, parts resolved."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from ..job.errors import BadInput
from ..job.joint import Job, JobFile
from ..job.layers import Layer, Said, Tables
from ..job.options import MOST_OPTIONS
from ..job.parameters import ALL
from ..job.plain import LONGEST_TEXT
from ..job.quantity import Kind
from .gather import joint_stated


def packed(file: JobFile) -> str:
    """The options as JSON; empty where the file has none."""
    if not file.options:
        return ""
    return json.dumps([_differences(file.base, option) for option in file.options])


def keep_option(joint: Any, name: str, after: Mapping[str, Any]) -> str:
    """Keep a joint that states ``after`` (inner values by key) as one more option; return its name.

    What ``joint`` states itself stays as it is. A name that is taken gets a number. Raises BadInput
    where there are too many options, or nothing differs.
    """
    base = joint_stated(joint)
    was, now = _plain(base), _plain(dict(after))
    options = json.loads(joint.Options or "[]")
    values = {key: value for key, value in now.items() if key not in was or was[key] != value}
    defaults = [key for key in ALL if key in was and key not in now]
    if not values and not defaults:
        raise BadInput("This is what the joint states already; an option needs a difference.")
    if len(options) >= MOST_OPTIONS:
        raise BadInput(f"A joint has at most {MOST_OPTIONS} options; remove one first.")
    called = _free_name(name.strip()[: LONGEST_TEXT - 8], {o["name"] for o in options})
    options.append(
        {"name": called, "values": values, "limits": {}, "spreads": {}, "defaults": defaults}
    )
    joint.Options = json.dumps(options)
    return called


def _free_name(name: str, taken: set[str]) -> str:
    numbers = (f"{name} ({n})" for n in range(2, len(taken) + 3))
    return next(each for each in (name, *numbers) if each not in taken)


def unpacked(text: str, *, source: str) -> dict[str, Tables]:
    """The options' tables by name; ``source`` is what their values are said to come from."""
    return {
        option["name"]: Tables(
            own=Layer(
                {key: Said(_inner(key, value), source) for key, value in option["values"].items()},
                {key: Said((low, high), source) for key, (low, high) in option["limits"].items()},
                {key: Said(spread, source) for key, spread in option.get("spreads", {}).items()},
            ),
            defaults=tuple(option["defaults"]),
        )
        for option in json.loads(text or "[]")
    }


def _differences(base: Job, option: Job) -> dict[str, Any]:
    """What an option states otherwise than the base, and what it leaves to its default again."""
    was, now = _plain(base.stated), _plain(option.stated)
    limits_were, limits = base.stated_tolerances, option.stated_tolerances
    # Deviations alone cannot be left to their default: the value is left too, and stated anew.
    unlimited = {key for key in limits_were if key not in limits}
    unlimited |= {key for key in base.spreads if key not in option.spreads}
    defaults = {key for key in was if key not in now} | unlimited
    return {
        "name": option.name,
        "values": {
            key: value
            for key, value in now.items()
            if key not in was or was[key] != value or key in unlimited
        },
        "limits": {key: list(pair) for key, pair in limits.items() if limits_were.get(key) != pair},
        "spreads": {k: s for k, s in option.spreads.items() if base.spreads.get(k) != s},
        "defaults": [key for key in ALL if key in defaults],
    }


def _plain(stated: dict[str, Any]) -> dict[str, Any]:
    return {key: getattr(value, "tolist", lambda v=value: v)() for key, value in stated.items()}


def _inner(key: str, value: Any) -> Any:
    import numpy as np

    if ALL[key].many:
        return np.array(value, dtype=float)
    if ALL[key].kind is Kind.POINTS:
        return [(float(x), float(y)) for x, y in value]
    return value

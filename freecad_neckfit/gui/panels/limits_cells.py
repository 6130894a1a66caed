"""What is typed into a cell of limits, in the units that the reader has set."""

from __future__ import annotations

from ...job.bounds import deviations_in_bounds, in_bounds
from ...job.errors import BadInput
from ...job.joint import Limits
from ...job.parameters import ALL
from ...job.quantity import Units, read_limits, read_value
from ..figures import entry_value, plain
from ..translate import tr

BOTH = ("±", "+-", "+/-")
"""How an entry begins that means minus and plus at once."""


def typed_value(key: str, text: str, units: Units) -> float:
    """A dimension's value [inner unit] as typed. Raises BadInput in one sentence."""
    p, name = ALL[key], name_of(key)
    value = read_value(plain(text), kind=p.kind, bare=units, name=name)
    in_bounds(p, value, raw=text, name=name, units=units)
    return float(value)  # type: ignore[arg-type] # a measured kind is a number


def typed_limits(key: str, text: str, before: Limits, *, is_plus: bool, units: Units) -> Limits:
    """Limit deviations after one of them was typed; "±0.1" means both.

    A number without a sign counts down in the column of minus and up in that of plus. Raises
    BadInput in one sentence.
    """
    p = ALL[key]
    name = tr("limits of {}").format(name_of(key))
    text = plain(text).strip().replace("\N{MINUS SIGN}", "-")
    if text.startswith(BOTH):
        found = read_limits(text, kind=p.kind, bare=units, name=name)
    else:
        size = text[1:] if text.startswith(("+", "-")) else text
        down, up = read_limits(f"±{size}", kind=p.kind, bare=units, name=name)
        is_up = text.startswith("+") or (is_plus and not text.startswith("-"))
        typed = up if is_up else down
        found = (before[0], typed) if is_plus else (typed, before[1])
    if found[0] > found[1]:
        raise BadInput(
            tr("{}: the lower one lies above the upper one; change the other one first.").format(
                name
            )
        )
    deviations_in_bounds(p, *found, raw=text, name=name)
    return found


def shown_value(key: str, value: float, units: Units) -> str:
    """A value as it stands in a cell to be typed over."""
    return entry_value(value, kind=ALL[key].kind, units=units)


def shown_deviation(key: str, value: float, units: Units) -> str:
    """A deviation with its sign, as it stands in a cell to be typed over."""
    text = shown_value(key, value, units)
    return text if value <= 0 else f"+{text}"


def name_of(key: str) -> str:
    """A parameter in plain words."""
    return tr(key.replace(".", " ").replace("_", " "))

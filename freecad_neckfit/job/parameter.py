"""What one parameter is: said once, read by every room of the house."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from .quantity import Kind

COMMON = "common practice, no source"
MEMORY = "from memory; set your own"
PROJECT = "chosen by this project"
DERIVED = "worked out from other parameters unless stated"


@dataclass(frozen=True)
class Parameter:
    """One thing the designer can state.

    ``default`` is in the kind's inner unit (mm, degrees, ...). ``None`` means that the value is
    worked out from others (see ``resolve.py``). ``low`` and ``high`` bound what can be built
    and talked about, not what fits: outside them a job is refused.
    ``many`` names the axis of a list ("string", "screw", "cavity"), or is empty for one value.
    ``tolerance`` holds the default limit deviations (lower, upper) in the same unit.
    """

    key: str
    kind: Kind
    default: Any
    meaning: str
    low: float | None = None
    high: float | None = None
    where: str = ""
    origin: str = MEMORY
    choices: tuple[str, ...] = ()
    many: str = ""
    tolerance: tuple[float, float] | None = None

    @property
    def group(self) -> str:
        """The part or condition that owns the parameter: the word before the dot."""
        return self.key.partition(".")[0]

    @property
    def name(self) -> str:
        """The word after the dot."""
        return self.key.partition(".")[2]


def declare(group: str, *rows: tuple[Any, ...], **shared: Any) -> tuple[Parameter, ...]:
    """Turn rows of (name, kind, default, meaning, options) into parameters of ``group``."""
    return tuple(
        Parameter(
            key=f"{group}.{name}", kind=kind, default=default, meaning=meaning, **(shared | opt)
        )
        for name, kind, default, meaning, opt in rows
    )

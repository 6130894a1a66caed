"""Other parts that the shop has, from its part files."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path
from typing import Any

from ..job.errors import BadInput
from ..job.parameters import ROLES
from ..job.parts import part_values
from .moves import Stock


def read_stock(files: Iterable[Path]) -> Stock:
    """The bridges and pickups that part files state; one file may state several.

    Raises BadInput for a file that cannot be read, or that states neither.
    """
    bridges: list[tuple[str, Any]] = []
    pickups: list[tuple[str, str, Any]] = []
    for file in files:
        name, said = part_values(file)
        bridge = _of(said, "bridge")
        own = [(role, _of(said, f"pickup_{role}")) for role in ROLES]
        found = [(role, name, values) for role, values in own if values]
        if not bridge and not found:
            raise BadInput(f"{file}: states neither a bridge nor a pickup; name another part file.")
        bridges += [(name, bridge)] if bridge else []
        pickups += found
    return Stock(tuple(bridges), tuple(pickups))


def _of(said: dict[str, Any], group: str) -> dict[str, Any]:
    return {key: value for key, value in said.items() if key.startswith(f"{group}.")}

"""How objects come to be shown: the screen tells here what it does with a new one."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

_dressers: list[Callable[[Any], None]] = []


def on_made(dresser: Callable[[Any], None]) -> None:
    """Have ``dresser`` called with every object made from now on; without a screen nobody asks."""
    if dresser not in _dressers:
        _dressers.append(dresser)


def dress(obj: Any) -> None:
    """Show a new object as the screen wants it."""
    for dresser in _dressers:
        dresser(obj)

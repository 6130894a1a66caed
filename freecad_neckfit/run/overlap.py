"""Checks that tell how deep whole parts are in one another: what is wanted of them is nothing."""

from __future__ import annotations

from functools import cache

from ..fit.checks import ALL

NONE = "none"


@cache
def _told() -> frozenset[str]:
    return frozenset(check.id for check in ALL if check.overlap)


def is_overlap(check_id: str) -> bool:
    """Whether 0 there means that the parts share no place, and no room is told."""
    return check_id in _told()

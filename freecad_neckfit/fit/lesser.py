"""The lesser of two findings, and the place of it as long as few jobs are asked."""

from __future__ import annotations

from typing import TYPE_CHECKING, TypeVar

import numpy as np

from ..job.arrays import Array
from .strings import is_few

if TYPE_CHECKING:
    from .case import Case

Found = TypeVar("Found", bound=tuple[Array, ...])
"""A named tuple: a room [mm] first, then where it is."""


def lesser(best: Found | None, other: Found) -> Found:
    """Of two findings the one with less room, job by job; of many jobs the room alone.

    No report shows the places of many jobs: there they are None.
    """
    if best is None:
        return other
    if not is_few((best[0], other[0])):
        return type(best)(np.minimum(best[0], other[0]), *(None for _ in best[1:]))
    less = other[0] < best[0]
    return type(best)(*(np.where(less, b, a) for a, b in zip(best, other, strict=True)))


def place_of(case: Case, found: tuple[Array, Array, Array, Array]) -> tuple[Array, ...] | None:
    """Body-frame place [mm] of a room found on the treble side, or None for many jobs."""
    _, x, y, z = found
    return None if x is None else (x, y * case.treble_sign, z)

"""Every check, in one tuple; an id is never used again for another meaning."""

from __future__ import annotations

from ..check import Check
from . import overhang_gap

ALL: tuple[Check, ...] = (
    overhang_gap.CHECK,
)

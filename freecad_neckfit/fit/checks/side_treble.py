"""Clearance between heel and pocket on the treble side."""

from __future__ import annotations

from ..side_check import side_check

CHECK = side_check("treble", sign=1.0)

"""Clearance between heel and pocket on the bass side."""

from __future__ import annotations

from ..side_check import side_check

CHECK = side_check("bass", sign=-1.0)

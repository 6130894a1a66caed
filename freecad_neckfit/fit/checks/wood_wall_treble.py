"""Wood between the pocket and the cutaway, treble side."""

from __future__ import annotations

from ..wall_check import wall_check

CHECK = wall_check("treble", sign=1.0)

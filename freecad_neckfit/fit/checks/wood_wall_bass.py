"""Wood between the pocket and the cutaway, bass side."""

from __future__ import annotations

from ..wall_check import wall_check

CHECK = wall_check("bass", sign=-1.0)

"""The document object that states a cover plate."""

from __future__ import annotations

from typing import Any

from .proxy import StatedProxy


class PlateProxy(StatedProxy):
    """States a cover plate."""

    role = "plate"

    def execute(self, obj: Any) -> None:
        """Measure an adopted plate first."""
        if obj.Adopted is not None:
            from .adopt_measure import renew_plate

            renew_plate(obj)
        super().execute(obj)

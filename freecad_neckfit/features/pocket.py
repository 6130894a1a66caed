"""The document object that states a pocket: depth, angle and plan, and how the neck sits in it."""

from __future__ import annotations

from typing import Any

from .proxy import StatedProxy


class PocketProxy(StatedProxy):
    """States a pocket: its depth, angle and plan, and how the neck is seated in it."""

    role = "pocket"

    def execute(self, obj: Any) -> None:
        """State what was read from an adopted body's own pocket first."""
        if obj.ReadFrom is not None:
            from .adopt_measure import renew_pocket

            renew_pocket(obj)
        super().execute(obj)

"""The document object that states a body: its thickness, outline, top and cavities."""

from __future__ import annotations

from typing import Any

from .proxy import StatedProxy


class BodyProxy(StatedProxy):
    """States a body: its thickness, outline, top and cavities."""

    role = "body"

    def execute(self, obj: Any) -> None:
        """Measure an adopted solid first; raise BadInput where a picked face is not found again."""
        if obj.Adopted is not None:
            from .adopt_measure import renew_body

            renew_body(obj)
        super().execute(obj)

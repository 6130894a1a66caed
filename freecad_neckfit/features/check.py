"""The document object that keeps the findings on a joint."""

from __future__ import annotations

from typing import Any

from .proxy import Proxy


class CheckProxy(Proxy):
    """Findings as they were when the joint was checked, and whether they still hold."""

    role = "check"

    def execute(self, obj: Any) -> None:
        """Say whether the joint changed since; findings change by checking again only."""
        from .staleness import refresh

        refresh(obj)

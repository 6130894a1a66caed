"""The document object that shows some of a joint's solids where they belong."""

from __future__ import annotations

from typing import Any

from .proxy import Proxy


class PartProxy(Proxy):
    """Shows the solids named in ``Parts``, as they are when the neck is screwed down."""

    role = "part"

    def execute(self, obj: Any) -> None:
        """Take the shapes from the joint; raise BadInput where it cannot be built."""
        from .seated import show_parts

        show_parts(obj)

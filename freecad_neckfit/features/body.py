"""The document object that states a body: its thickness, outline, top and cavities."""

from __future__ import annotations

from .proxy import StatedProxy


class BodyProxy(StatedProxy):
    """States a body: its thickness, outline, top and cavities."""

    role = "body"

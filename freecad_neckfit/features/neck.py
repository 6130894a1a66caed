"""The document object that states a neck and its strings."""

from __future__ import annotations

from .proxy import StatedProxy


class NeckProxy(StatedProxy):
    """States a neck and its strings."""

    role = "neck"

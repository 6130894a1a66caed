"""The document object that states a cover plate."""

from __future__ import annotations

from .proxy import StatedProxy


class PlateProxy(StatedProxy):
    """States a cover plate."""

    role = "plate"

"""The document object that states a pocket: depth, angle and plan, and how the neck sits in it."""

from __future__ import annotations

from .proxy import StatedProxy


class PocketProxy(StatedProxy):
    """States a pocket: its depth, angle and plan, and how the neck is seated in it."""

    role = "pocket"

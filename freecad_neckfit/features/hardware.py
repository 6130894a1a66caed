"""The document object that states the bridge, pickups, screws and neck plate."""

from __future__ import annotations

from .proxy import StatedProxy


class HardwareProxy(StatedProxy):
    """States the bridge, pickups, screws and neck plate."""

    role = "hardware"

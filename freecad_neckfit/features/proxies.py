"""All proxies: FreeCAD restores those of a document only from modules that it can import.

Some distributions let it do so only for modules that are loaded already, so this is imported at
every start and must stay cheap.
"""

from __future__ import annotations

from .body import BodyProxy
from .check import CheckProxy
from .hardware import HardwareProxy
from .joint import JointProxy
from .neck import NeckProxy
from .part import PartProxy
from .plate import PlateProxy
from .pocket import PocketProxy

__all__ = [
    "BodyProxy",
    "CheckProxy",
    "HardwareProxy",
    "JointProxy",
    "NeckProxy",
    "PartProxy",
    "PlateProxy",
    "PocketProxy",
]

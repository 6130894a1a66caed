"""What the designer prefers: units, colours, the shop's defaults. FreeCAD keeps it."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCAD

from ..job.quantity import Units

PATH = "User parameter:BaseApp/Preferences/Mod/NeckFit"
UNITS, PALETTE, DEFAULTS, WARN, FOLDER, BIT, BUSH, NEXT = (
    "Units",
    "Palette",
    "ShopDefaults",
    "WarnStale",
    "Folder",
    "Bit",
    "Bush",
    "TellNext",
)
"""Names of the entries."""


def group() -> Any:
    """FreeCAD's group of parameters that holds the preferences."""
    return FreeCAD.ParamGet(PATH)


def units() -> Units | None:
    """The unit system to show findings in; None: the one FreeCAD is set to."""
    return {"mm": Units.MM, "inch": Units.INCH}.get(group().GetString(UNITS, ""))


def palette() -> str:
    """Name of the labels' palette, one of ``palette.PALETTES``."""
    return str(group().GetString(PALETTE, "colour"))


def shop_defaults() -> str:
    """The job file with what the shop states of every new joint; empty where there is none."""
    return str(group().GetString(DEFAULTS, "")).strip()


def warns_of_stale() -> bool:
    """Whether the status bar says when a check falls behind its joint."""
    return bool(group().GetBool(WARN, True))


def tells_next() -> bool:
    """Whether a small window says what to do once a joint was made."""
    return bool(group().GetBool(NEXT, True))


def keep_tells_next(wanted: bool) -> None:
    """Remember whether it is to."""
    group().SetBool(NEXT, wanted)


def folder() -> str:
    """Where files were last opened or written."""
    return str(group().GetString(FOLDER, "") or Path.home())


def keep_folder(path: str) -> None:
    """Remember where a file was opened or written."""
    group().SetString(FOLDER, path)


def cutter() -> tuple[float | None, float | None]:
    """Diameters [mm] of the router bit and guide bush used last; None for what was not stated."""
    bit, bush = (float(group().GetFloat(name, 0.0)) for name in (BIT, BUSH))
    return bit or None, bush or None


def keep_cutter(bit: float | None, bush: float | None) -> None:
    """Remember the diameters [mm] of router bit and guide bush."""
    for name, size in ((BIT, bit), (BUSH, bush)):
        group().SetFloat(name, size or 0.0)

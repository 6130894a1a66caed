"""Asks where the package for the shop is to go, and says where it went."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any

import FreeCADGui
from PySide import QtGui

from ..report import tell
from ..status import say_for_a_while
from ..translate import tr


def ask_folder(joint: Any) -> tuple[Path, bool] | None:
    """The folder for a joint's package, and whether a former one is to be replaced.

    None where the designer thought better of it.
    """
    parent = pick_parent()
    if parent is None:
        return None
    folder = parent / folder_name(str(joint.Label))
    if not folder.exists() or not any(folder.iterdir()):
        return folder, False
    return (folder, True) if confirm_replacing(folder) else None


def folder_name(label: str) -> str:
    """A folder's name that every system takes, from whatever a joint is called."""
    plain = re.sub(r"[^\w .-]+", "_", label).strip(" .")[:80]
    return f"{plain or 'joint'} package"


def pick_parent() -> Path | None:
    """The folder that the package's own is to stand in."""
    chosen = QtGui.QFileDialog.getExistingDirectory(
        FreeCADGui.getMainWindow(), tr("Folder to put the package into")
    )
    return Path(chosen) if chosen else None


def confirm_replacing(folder: Path) -> bool:
    """Whether the designer wants a former package to go."""
    box = QtGui.QMessageBox
    answer = box.question(
        FreeCADGui.getMainWindow(),
        tr("Package for the shop"),
        tr("{} holds a former package. Replace it?").format(folder),
        box.Yes | box.No,
        box.No,
    )
    return bool(answer == box.Yes)


def tell_written(folder: Path) -> None:
    """Say where the package is: in the report view to keep, in the status bar to be seen."""
    sentence = tr("the package for the shop is in {}").format(folder)
    tell(sentence)
    say_for_a_while(sentence[:1].upper() + sentence[1:])

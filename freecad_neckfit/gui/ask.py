"""Questions to the designer: which file, which one of several."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

import FreeCADGui
from PySide import QtGui

from .preferences import folder, keep_folder
from .translate import tr


def _kinds() -> str:
    return tr("Job files (*.toml);;All files (*)")


def ask_file(title: str, kinds: str = "") -> str:
    """A file that is there; empty where the designer cancelled.

    ``kinds``: of files, as Qt writes them; job files unless given.
    """
    window = FreeCADGui.getMainWindow()
    file, _ = QtGui.QFileDialog.getOpenFileName(window, title, folder(), kinds or _kinds())
    if file:
        keep_folder(str(Path(file).parent))
    return str(file)


def ask_new_file(title: str, name: str) -> str:
    """A job file to write, which may be there and is asked about then; empty where cancelled."""
    window = FreeCADGui.getMainWindow()
    start = str(Path(folder()) / name.replace("/", "-"))
    file, _ = QtGui.QFileDialog.getSaveFileName(window, title, start, _kinds())
    if not file:
        return ""
    keep_folder(str(Path(file).parent))
    # The dialog asked about the name as typed; with another one it would not have asked.
    return str(file)


def ask_one_of(title: str, question: str, names: Sequence[str]) -> int | None:
    """Which of the names; None where the designer cancelled."""
    window = FreeCADGui.getMainWindow()
    # The last argument but none: whether the names can be edited.
    name, sure = QtGui.QInputDialog.getItem(window, title, question, list(names), 0, False)
    return list(names).index(name) if sure else None

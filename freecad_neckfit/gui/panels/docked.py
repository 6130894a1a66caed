"""The docked window that a task panel's form stands in."""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui

ROUND = 60
"""What FreeCAD's frames and scroll bar take beside a form [pixel]."""


def above(widget: Any, kind: Any) -> Any:
    """The next widget of a kind that holds ``widget``; None where none does."""
    found = widget.parentWidget()
    while found is not None and not isinstance(found, kind):
        found = found.parentWidget()
    return found


def widen(form: Any, width: int) -> None:
    """Make the docked window that ``form`` stands in at least so wide [pixel] inside."""
    dock = above(form, QtGui.QDockWidget)
    main = dock.parentWidget() if dock is not None else None
    if isinstance(main, QtGui.QMainWindow) and dock.width() < width + ROUND:
        main.resizeDocks([dock], [width + ROUND], QtCore.Qt.Horizontal)

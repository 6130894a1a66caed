"""The docked window that a task panel's form stands in."""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui

END = 24
"""What a panel's frames take below its form [pixel]."""
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


def fill(form: Any) -> None:
    """Make ``form`` so high that it ends where its window does: a panel has its own height else."""
    # Found anew each time: a wrapper of FreeCAD's widget may outlive the widget.
    area = above(form, QtGui.QAbstractScrollArea)
    if area is None:
        return
    viewport = area.viewport()
    top = form.mapTo(viewport, QtCore.QPoint(0, 0)).y()
    least = form.layout().minimumHeightForWidth(form.width())
    form.setFixedHeight(max(viewport.height() - top - END, least))

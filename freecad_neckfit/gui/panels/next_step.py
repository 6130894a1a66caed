"""What comes next once a joint was made: said in a small window that stays until it is closed."""

from __future__ import annotations

from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from .. import preferences
from ..language import follow
from ..translate import tr

NAME = "NeckFitNextStep"
MARGIN = 40
"""To the main window's edges [pixel]."""


class NextStep(QtGui.QDialog):
    """One sentence and a button that does it; the designer works on meanwhile."""

    def __init__(self) -> None:
        super().__init__(FreeCADGui.getMainWindow())
        self.setObjectName(NAME)
        self.setWindowTitle(tr("NeckFit: what comes next"))
        self.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        self.words = QtGui.QLabel(
            tr(
                "Now state your own neck and pocket: choose Neck or Pocket in the tree, type what "
                "you measured into the property editor, then check the joint."
            )
        )
        self.words.setWordWrap(True)  # Qt's way
        self.words.setMinimumWidth(420)
        self.again = QtGui.QCheckBox(tr("Say this after every new joint"))
        self.again.setChecked(preferences.tells_next())
        self.again.toggled.connect(preferences.keep_tells_next)
        self.check = QtGui.QPushButton(tr("Check the joint"))
        self.check.clicked.connect(lambda *_: self._check())
        close = QtGui.QPushButton(tr("Close"))
        close.clicked.connect(self.close)
        row = QtGui.QHBoxLayout()
        row.addWidget(self.again, 1)
        for button in (self.check, close):
            button.setAutoDefault(False)  # Qt's way
            row.addWidget(button)
        column = QtGui.QVBoxLayout(self)
        column.addWidget(self.words)
        column.addLayout(row)
        follow(self)

    def _check(self) -> None:
        self.close()
        FreeCADGui.runCommand("NeckFit_Check")


def tell_next(joint: Any) -> None:
    """Choose the joint's neck, whose values come first, and say what to do."""
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(joint.Document.Name, joint.Neck.Name)
    if not preferences.tells_next():
        return
    for former in FreeCADGui.getMainWindow().findChildren(QtGui.QDialog, NAME):
        former.close()
    said = NextStep()
    said.adjustSize()
    # Below the joint, which the view has in its middle.
    corner = FreeCADGui.getMainWindow().geometry().bottomRight()
    said.move(corner - QtCore.QPoint(said.width() + MARGIN, said.height() + 2 * MARGIN))
    said.show()

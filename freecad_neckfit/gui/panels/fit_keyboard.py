"""The keyboard stays with the list of findings while rows are chosen by the arrow keys."""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui

TAKEN_WITHIN = 1000
"""FreeCAD gives the keyboard to the view of what is picked within this time [ms], if it does."""


class Keyboard:
    """Brings the keyboard back that some versions of FreeCAD give to the view of what is picked.

    The next row could not be chosen by the arrow keys otherwise. ``stop`` ends it.
    """

    def __init__(self, form: Any, findings: Any) -> None:
        self._form, self._findings = form, findings
        self._since_chosen = QtCore.QElapsedTimer()
        QtGui.QApplication.instance().focusChanged.connect(self._focus_went)

    def chosen(self) -> None:
        """A row has been chosen just now."""
        self._since_chosen.start()

    def stop(self) -> None:
        """Let the keyboard go where it goes."""
        QtGui.QApplication.instance().focusChanged.disconnect(self._focus_went)

    def _focus_went(self, before: Any, now: Any) -> None:
        findings = self._findings
        taken = before is findings and now is not None and not self._form.isAncestorOf(now)
        is_fresh = self._since_chosen.isValid() and self._since_chosen.elapsed() < TAKEN_WITHIN
        if taken and is_fresh and not QtGui.QApplication.mouseButtons():
            QtCore.QTimer.singleShot(0, findings.setFocus)

"""A bar while a file is read, whose button stops the reading; nobody knows how long it takes."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from PySide import QtCore, QtGui

from ..sentences import say
from ..translate import tr
from .decide_wait import PATIENCE


class Reading:
    """What a reader tells: what it does and for how many seconds; False stops it."""

    def __init__(self, bar: Any, title: str) -> None:
        self._bar, self._title = bar, title

    @property
    def was_stopped(self) -> bool:
        """Whether the designer pressed the button."""
        return bool(self._bar.wasCanceled())

    def __call__(self, what: str, seconds: float) -> bool:
        """Show it, and let the window live; False once the button was pressed."""
        shown = f"{self._title}\n{say(what)}"
        self._bar.setLabelText(f"{shown}: {seconds:.0f} s" if seconds >= 1 else shown)
        QtGui.QApplication.processEvents()
        return not self.was_stopped


@contextmanager
def reading(parent: Any, file: str) -> Iterator[Reading]:
    """A bar over ``parent`` that runs to and fro while a file is read."""
    title = tr("Reading {}").format(file)
    bar = QtGui.QProgressDialog(title, tr("Stop"), 0, 0, parent)
    bar.setObjectName("NeckFitReading")
    bar.setWindowTitle(f"NeckFit: {title}")
    bar.setWindowModality(QtCore.Qt.WindowModal)
    bar.setMinimumDuration(PATIENCE)
    bar.setValue(0)
    QtGui.QApplication.setOverrideCursor(QtCore.Qt.BusyCursor)
    try:
        yield Reading(bar, title)
    finally:
        QtGui.QApplication.restoreOverrideCursor()
        bar.close()
        bar.deleteLater()


@contextmanager
def thinking() -> Iterator[None]:
    """A waiting cursor while the neck is recognised: a second, mostly."""
    QtGui.QApplication.setOverrideCursor(QtCore.Qt.WaitCursor)
    try:
        yield
    finally:
        QtGui.QApplication.restoreOverrideCursor()

"""A bar for what takes longer than a moment, with a button that stops it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from PySide import QtCore, QtGui

from ...decide.progress import Progress
from ..sentences import say
from ..translate import tr

PATIENCE = 500
"""Shorter work shows no bar [ms]."""
STEPS = 1000


@contextmanager
def waiting(parent: Any, title: str) -> Iterator[Progress]:
    """A bar over ``parent`` that a search tells how far it is; its button stops the search."""
    bar = QtGui.QProgressDialog(title, tr("Stop"), 0, STEPS, parent)
    bar.setObjectName("NeckFitWaiting")
    bar.setWindowTitle(f"NeckFit: {title}")
    bar.setWindowModality(QtCore.Qt.WindowModal)
    bar.setMinimumDuration(PATIENCE)
    bar.setAutoReset(False)  # Qt's own
    bar.setValue(0)

    def go_on(share: float, what: str) -> bool:
        bar.setLabelText(say(what))
        # One short of the end: a bar that is full would close, and come again.
        bar.setValue(min(int(share * STEPS), STEPS - 1))
        QtGui.QApplication.processEvents()
        return not bar.wasCanceled()

    try:
        yield go_on
    finally:
        bar.close()
        bar.deleteLater()

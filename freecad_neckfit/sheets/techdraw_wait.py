"""Waiting for TechDraw, which draws its views by and by."""

from __future__ import annotations

import time
import warnings
from collections.abc import Callable
from typing import Any

from ..job.errors import KernelFailure

WAIT = 10.0
"""Seconds that FreeCAD 1.0 may take to draw a view."""
Pump = Callable[[], Any]
"""Lets FreeCAD's waiting events happen."""


def wait_until_drawn(feature: Any, pump: Pump) -> None:
    """Wait for a view's lines; FreeCAD 1.0 draws in a thread of its own and tells by events.

    Raises KernelFailure where it does not draw them within ``WAIT``.
    """
    until = time.monotonic() + WAIT
    while not feature.getVisibleEdges():
        if time.monotonic() > until:
            raise KernelFailure(f"TechDraw did not draw the view {feature.Label!r}.")
        pump()
        time.sleep(0.01)


def event_pump() -> Pump:
    """What lets FreeCAD's waiting events happen; makes Qt's application where there is none."""
    # Its modules warn of old ways while they load; made an error, that crashes Python.
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            from PySide import QtCore
        except ImportError:
            return lambda: None
    application = QtCore.QCoreApplication.instance() or QtCore.QCoreApplication([])
    _KEPT[:] = [application]
    pool = QtCore.QThreadPool.globalInstance()

    def pump() -> None:
        # FreeCAD 1.0 looks for faces after the edges, in a thread that must not outlive its view.
        for _ in range(3):
            pool.waitForDone(int(WAIT * 1000))
            application.processEvents()

    return pump


_KEPT: list[Any] = []
"""Qt's application must outlive the views."""

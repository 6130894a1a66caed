"""Words in FreeCAD's status bar, which is seen where the report view is hidden."""

from __future__ import annotations

import FreeCADGui

LASTS = 8000
"""As long as it takes to read a sentence [ms]."""


def say_for_a_while(sentence: str) -> None:
    """Show one sentence in the status bar."""
    FreeCADGui.getMainWindow().statusBar().showMessage(sentence, LASTS)


def take_back(sentence: str) -> None:
    """Let the status bar no longer show a sentence that has ceased to be true."""
    bar = FreeCADGui.getMainWindow().statusBar()
    if bar.currentMessage() == sentence:
        bar.clearMessage()

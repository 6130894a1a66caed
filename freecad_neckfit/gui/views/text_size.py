"""How large text is drawn: as set on the screen, and in proportion in saved pictures."""

from __future__ import annotations

import math
from collections.abc import Callable

DIAGONAL = 1450.0
"""A picture of this diagonal [pixel] is read like a window of 1200 x 800."""


def text_scale(document: str) -> Callable[[tuple[int, int]], float]:
    """A function from a picture's size [pixel] to the scale of text in the document's views.

    A picture of the size of an open view is that view, whose text keeps the size that the screen
    is set to; any other is one being saved, whose text grows with it.
    """

    def scale(size: tuple[int, int]) -> float:
        for ratio in _on_screen(document, size):
            return ratio
        diagonal = math.hypot(*size)
        return max(round(diagonal / DIAGONAL, 2), 0.5)

    return scale


def _on_screen(document: str, size: tuple[int, int]) -> list[float]:
    import FreeCADGui

    found = FreeCADGui.getDocument(document)
    views = found.mdiViewsOfType("Gui::View3DInventor") if found is not None else []
    ratio = _pixel_ratio()
    sizes = [view.getSize() for view in views]
    # Views count device pixels in some versions of FreeCAD and points of the desktop in others.
    return [ratio for s in sizes for r in (1.0, ratio)
            if all(abs(a * r - b) <= 2 for a, b in zip(s, size, strict=True))]  # fmt: skip


def _pixel_ratio() -> float:
    from PySide import QtGui

    screen = QtGui.QGuiApplication.primaryScreen()
    return float(screen.devicePixelRatio()) if screen is not None else 1.0

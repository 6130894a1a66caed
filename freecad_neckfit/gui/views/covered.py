"""What lies over a 3D view: newer versions of FreeCAD lay panels over it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from ..annotations.layout import Box

OVERLAYS = ("OverlayLeft", "OverlayRight", "OverlayTop", "OverlayBottom")
"""FreeCAD's names of the widgets that hold the panels of each side."""


def covered(document: str) -> Callable[[tuple[int, int]], tuple[Box, ...]]:
    """A function from a view's size [pixel] to what lies over the document's view of that size.

    Boxes are in pixels of the view, y up. A picture that is being saved has nothing over it.
    """

    def boxes(size: tuple[int, int]) -> tuple[Box, ...]:
        overlays = _overlays()
        return tuple(_over(overlays, _area(document, size), size)) if overlays else ()

    return boxes


def _overlays() -> list[Any]:
    import FreeCADGui
    from PySide import QtCore, QtGui

    main, near = FreeCADGui.getMainWindow(), QtCore.Qt.FindDirectChildrenOnly
    found = (main.findChild(QtGui.QWidget, name, near) for name in OVERLAYS)
    return [widget for widget in found if widget is not None and widget.isVisible()]


def _area(document: str, size: tuple[int, int]) -> Any:
    """The widget that a view of that size is drawn in; None where none is open."""
    import FreeCADGui

    shown = FreeCADGui.getDocument(document)
    for view in shown.mdiViewsOfType("Gui::View3DInventor") if shown is not None else []:
        if all(abs(a - b) <= 2 for a, b in zip(view.getSize(), size, strict=True)):
            return view.graphicsView().viewport()
    return None


def _over(overlays: list[Any], area: Any, size: tuple[int, int]) -> list[Box]:
    from PySide import QtCore

    if area is None or not area.width():
        return []
    ratio, found = size[0] / area.width(), []
    for widget in overlays:
        corner = area.mapFromGlobal(widget.mapToGlobal(QtCore.QPoint(0, 0)))
        seen = QtCore.QRect(corner, widget.size()).intersected(area.rect())
        if not seen.isEmpty():
            low = area.height() - seen.y() - seen.height()
            sides = (seen.x(), low, seen.width(), seen.height())
            found.append(Box(*(side * ratio for side in sides)))
    return found

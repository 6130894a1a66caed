"""What lies over a 3D view: FreeCAD's cube of directions, and panels in newer versions."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from ..annotations.boxes import Box

OVERLAYS = ("OverlayLeft", "OverlayRight", "OverlayTop", "OverlayBottom")
"""FreeCAD's names of the widgets that hold the panels of each side."""
CUBE, AROUND = 132, 14
"""Size of FreeCAD's cube unless set otherwise, and of its arrows beyond that [point]."""
PREFERENCES = "User parameter:BaseApp/Preferences"


def covered(document: str) -> Callable[[tuple[int, int]], tuple[Box, ...]]:
    """A function from a view's size [pixel] to what lies over the document's view of that size.

    Boxes are in pixels of the view, y up. A picture that is being saved has nothing over it.
    """

    def boxes(size: tuple[int, int]) -> tuple[Box, ...]:
        area = _area(document, size)
        if area is None or not area.width():
            return ()
        ratio = size[0] / area.width()
        found = [_seen(widget, area) for widget in _overlays()] + [_cube(area)]
        return tuple(
            Box(r.x() * ratio, (area.height() - r.y() - r.height()) * ratio,
                r.width() * ratio, r.height() * ratio)
            for r in found if not r.isEmpty()
        )  # fmt: skip

    return boxes


def _overlays() -> list[Any]:
    import FreeCADGui
    from PySide import QtGui

    main = FreeCADGui.getMainWindow()
    found = (main.findChild(QtGui.QWidget, name) for name in OVERLAYS)
    return [widget for widget in found if widget is not None and widget.isVisible()]


def _area(document: str, size: tuple[int, int]) -> Any:
    """The widget that a view of that size is drawn in; None where none is open."""
    import FreeCADGui

    shown = FreeCADGui.getDocument(document)
    for view in shown.mdiViewsOfType("Gui::View3DInventor") if shown is not None else []:
        if all(abs(a - b) <= 2 for a, b in zip(view.getSize(), size, strict=True)):
            return view.graphicsView().viewport()
    return None


def _seen(widget: Any, area: Any) -> Any:
    """What of ``area`` a widget lies over."""
    from PySide import QtCore

    corner = area.mapFromGlobal(widget.mapToGlobal(QtCore.QPoint(0, 0)))
    return QtCore.QRect(corner, widget.size()).intersected(area.rect())


def _cube(area: Any) -> Any:
    """Where FreeCAD draws its cube of directions; empty where it does not."""
    import FreeCAD
    from PySide import QtCore

    if not FreeCAD.ParamGet(f"{PREFERENCES}/View").GetBool("ShowNaviCube", True):
        return QtCore.QRect()
    settings = FreeCAD.ParamGet(f"{PREFERENCES}/NaviCube")
    corner, size = settings.GetInt("CornerNaviCube", 1), settings.GetInt("CubeSize", CUBE) + AROUND
    x = area.width() - size if corner in (1, 3) else 0
    y = area.height() - size if corner in (2, 3) else 0
    return QtCore.QRect(x, y, size, size).intersected(area.rect())

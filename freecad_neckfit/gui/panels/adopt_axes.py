"""The frame that would be, drawn over the model: three arrows and their words."""

from __future__ import annotations

from typing import Any

import FreeCADGui
from pivy import coin  # FreeCAD hands out a scene graph only where this is loaded

from ..translate import tr

LENGTHS = (120.0, 60.0, 60.0)
"""Of the arrows along X, Y and Z [mm]."""
# From a set that colour-blind eyes tell apart; the words tell them apart without colour.
COLOURS = ((0.84, 0.37, 0.0), (0.0, 0.45, 0.70), (0.0, 0.62, 0.45))


class Axes:
    """Shown in the document's 3D view until it is hidden; nothing of it is saved."""

    def __init__(self, document: Any) -> None:
        shown = FreeCADGui.getDocument(document.Name)
        views = shown.mdiViewsOfType("Gui::View3DInventor") if shown is not None else []
        self._graph = views[0].getSceneGraph() if views else None
        self.node: Any = None

    def show(self, placement: Any) -> None:
        """Draw the frame at a global placement."""
        self.hide()
        if self._graph is None:
            return
        root = coin.SoAnnotation()  # over the wood, which would hide half of it
        place = coin.SoTransform()
        base, turn = placement.Base, placement.Rotation
        place.translation.setValue(base.x, base.y, base.z)
        place.rotation.setValue(*turn.Q)
        root.addChild(place)
        words = (tr("X, to the bridge"), tr("Y"), tr("Z, out of the top"))
        for axis, (length, colour, word) in enumerate(zip(LENGTHS, COLOURS, words, strict=True)):
            root.addChild(_arrow(axis, length, colour, word))
        self._graph.addChild(root)
        self.node = root

    def hide(self) -> None:
        """Take the arrows away."""
        if self.node is not None and self._graph is not None:
            self._graph.removeChild(self.node)
        self.node = None

    def remove(self) -> None:
        """Take the arrows away and forget the view."""
        self.hide()
        self._graph = None


def _arrow(axis: int, length: float, colour: tuple[float, float, float], word: str) -> Any:
    tip = [0.0, 0.0, 0.0]
    tip[axis] = length
    made = coin.SoSeparator()
    paint, points, line = coin.SoBaseColor(), coin.SoCoordinate3(), coin.SoLineSet()
    style = coin.SoDrawStyle()
    style.lineWidth.setValue(3.0)
    paint.rgb.setValue(*colour)
    points.point.setValues(0, 2, [(0.0, 0.0, 0.0), tuple(tip)])
    line.numVertices.setValue(2)
    move, font, text = coin.SoTranslation(), coin.SoFont(), coin.SoText2()
    font.size.setValue(16.0)
    move.translation.setValue(*tip)
    text.string.setValue(word)
    for node in (style, paint, points, line, move, font, text):
        made.addChild(node)
    return made

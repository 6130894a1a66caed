"""Pictures of the joint from the document's 3D view, for the report."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import FreeCADGui
from PySide import QtGui

from ..sheets.report.parts import Picture
from .translate import tr
from .views.look import look_at, see_whole

SIZE = (1600, 900)
"""Width and height [pixel]."""
WHITE = 0xFFFFFFFF


def scene_pictures(joint: Any) -> list[Picture]:
    """The joint close up, and the whole of it turned as the designer has it.

    Empty where the document is not shown in 3D. The view is left as it was found.
    """
    shown = FreeCADGui.getDocument(joint.Document.Name)
    views = shown.mdiViewsOfType("Gui::View3DInventor") if shown is not None else []
    if not views:
        return []
    view = views[0]
    with _camera_kept(view):
        camera = view.getCameraNode()
        see_whole(joint, camera, SIZE)
        whole = _taken(view)
        look_at(joint, camera)
        close = _taken(view)
    titles = tr("The joint in the 3D view"), tr("The whole, as it is turned in the 3D view")
    return [Picture(title, png=png) for title, png in zip(titles, (close, whole), strict=True)]


@contextmanager
def _camera_kept(view: Any) -> Iterator[None]:
    was = view.getCamera()
    try:
        yield
    finally:
        view.setCamera(was)


def _taken(view: Any) -> bytes:
    """The view on white, as a PNG without transparency."""
    with tempfile.TemporaryDirectory(prefix="neckfit-") as folder:
        raw, plain = Path(folder, "raw.png"), Path(folder, "plain.png")
        view.saveImage(str(raw), *SIZE, "White")
        image = QtGui.QImage(str(raw))
        opaque = QtGui.QImage(image.size(), QtGui.QImage.Format_RGB888)
        opaque.fill(WHITE)
        painter = QtGui.QPainter(opaque)
        painter.drawImage(0, 0, image)
        painter.end()
        if not opaque.save(str(plain), "PNG"):
            return b""
        return plain.read_bytes()

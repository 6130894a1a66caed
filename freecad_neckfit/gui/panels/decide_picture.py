"""A picture that can be clicked on, drawn from SVG at whatever size there is."""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui, QtSvg

from ..figures import local_svg

PRINTED = 3.0
"""Pixels a point when a picture is saved: 288 dots an inch."""


class PictureView(QtGui.QWidget):
    """Shows SVG as large as fits. ``clicked``: x and y on the sheet, in the SVG's own points."""

    clicked = QtCore.Signal(float, float)

    def __init__(self, *, name: str) -> None:
        super().__init__()
        self.setObjectName(name)
        self.setMinimumSize(430, 280)
        self.setSizePolicy(QtGui.QSizePolicy.Expanding, QtGui.QSizePolicy.Expanding)
        self.svg = ""
        self._drawing: Any = None

    def show_svg(self, svg: str) -> None:
        """Show another picture."""
        self.svg = local_svg(svg)
        self._drawing = QtSvg.QSvgRenderer(QtCore.QByteArray(self.svg.encode("utf-8")))
        self.update()

    def save(self, path: str) -> bool:
        """Write the picture as SVG or PNG, by the file's ending; whether it was written."""
        if path.lower().endswith(".svg"):
            from pathlib import Path

            from ...job.store import write_beside

            write_beside(Path(path), self.svg.encode("utf-8"))
            return True
        return bool(self.image().save(path))

    def image(self) -> Any:
        """The picture as a bitmap of print quality."""
        size = self._drawing.defaultSize()
        bitmap = QtGui.QImage(
            int(size.width() * PRINTED), int(size.height() * PRINTED), QtGui.QImage.Format_ARGB32
        )
        bitmap.fill(QtCore.Qt.white)
        painter = QtGui.QPainter(bitmap)
        self._drawing.render(painter)
        painter.end()
        return bitmap

    def sheet_point(self, x: float, y: float) -> tuple[float, float]:
        """A point of the widget on the sheet."""
        area, size = self._area(), self._drawing.defaultSize()
        return (
            (x - area.x()) / area.width() * size.width(),
            (y - area.y()) / area.height() * size.height(),
        )

    def widget_point(self, x: float, y: float) -> tuple[float, float]:
        """A point of the sheet on the widget."""
        area, size = self._area(), self._drawing.defaultSize()
        return (
            area.x() + x / size.width() * area.width(),
            area.y() + y / size.height() * area.height(),
        )

    def _area(self) -> Any:
        size = self._drawing.defaultSize()
        scale = min(self.width() / size.width(), self.height() / size.height())
        width, height = size.width() * scale, size.height() * scale
        left, top = (self.width() - width) / 2, (self.height() - height) / 2
        return QtCore.QRectF(left, top, width, height)

    def paintEvent(self, _event: Any) -> None:  # noqa: N802 (Qt's name)
        """Draw it."""
        if self._drawing is None:
            return
        painter = QtGui.QPainter(self)
        painter.fillRect(self.rect(), QtCore.Qt.white)
        self._drawing.render(painter, self._area())
        painter.end()

    def mousePressEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """Tell where the sheet was clicked."""
        if self._drawing is not None and event.button() == QtCore.Qt.LeftButton:
            self.clicked.emit(*self.sheet_point(float(event.pos().x()), float(event.pos().y())))

"""The list of findings: model, drawing of a row, and the view with its kind of findings."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide import QtCore, QtGui

from ...run.finding import State
from ..annotations.palette import GREY, INK, Colour, look_of
from ..translate import tr
from .fit_rows import Row

ID_ROLE = QtCore.Qt.UserRole + 1
ROW_ROLE = QtCore.Qt.UserRole + 2
PAD = 5


class FindingsModel(QtCore.QAbstractListModel):
    """Rows, worst first."""

    def __init__(self, parent: Any = None) -> None:
        super().__init__(parent)
        self.rows: list[Row] = []

    def put(self, rows: Sequence[Row]) -> bool:
        """Hold these rows; False where they are the same findings in the same order.

        Nobody is told then: for a change of data alone a list is laid out anew, and the whole
        window drawn a second time. The view has itself painted.
        """
        same = [row.id for row in rows] == [row.id for row in self.rows]
        if not same:
            self.beginResetModel()
        self.rows = list(rows)
        if not same:
            self.endResetModel()
        return not same

    def rowCount(self, parent: Any = None) -> int:  # noqa: N802 (Qt's name)
        """How many findings; rows have no children."""
        return 0 if parent is not None and parent.isValid() else len(self.rows)

    def data(self, index: Any, role: int = QtCore.Qt.DisplayRole) -> Any:
        """A row's text, tooltip, id or the row itself."""
        if not index.isValid() or index.row() >= len(self.rows):
            return None
        row = self.rows[index.row()]
        if role in (QtCore.Qt.DisplayRole, QtCore.Qt.AccessibleTextRole):
            return row.text
        if role == QtCore.Qt.ToolTipRole:
            return row.text.replace(" | ", "\n")
        return {ID_ROLE: row.id, ROW_ROLE: row}.get(int(role))

    def place_of(self, finding: str) -> int | None:
        """Which row a finding has; None where it is not among them."""
        return next((i for i, row in enumerate(self.rows) if row.id == finding), None)


class RowPainter(QtGui.QStyledItemDelegate):
    """Draws a row: the state on its colour as on the label in the 3D view, beside it two lines."""

    def __init__(self, parent: Any = None) -> None:
        super().__init__(parent)
        self._chip = 0

    def sizeHint(self, option: Any, _index: Any) -> Any:  # noqa: N802 (Qt's name)
        """Two lines of text and the room round them."""
        return QtCore.QSize(200, 2 * option.fontMetrics.height() + 2 * PAD)

    def paint(self, painter: Any, option: Any, index: Any) -> None:
        """Draw one row."""
        row = index.data(ROW_ROLE)
        if row is None:
            return
        painter.save()
        chosen = bool(option.state & QtGui.QStyle.State_Selected)
        palette = option.palette
        if chosen:
            painter.fillRect(option.rect, palette.highlight())
        ink = palette.color(QtGui.QPalette.HighlightedText if chosen else QtGui.QPalette.Text)
        area = option.rect.adjusted(PAD, 2, -PAD, -2)
        wide = self._chip_width(option, area.width())
        chip = QtCore.QRect(area.left(), area.top(), wide, area.height())
        _draw_chip(painter, chip, row, option.font)
        text = area.adjusted(wide + 2 * PAD, 0, 0, 0)
        half = text.height() // 2
        painter.setPen(ink)
        _line(painter, text.adjusted(0, 0, 0, -half), row.title, option.font)
        bold = _bold(option.font)
        is_wide = QtGui.QFontMetrics(bold).boundingRect(row.figures).width() > text.width()
        figures = row.short if is_wide else row.figures
        _line(painter, text.adjusted(0, half, 0, 0), figures, bold)
        painter.restore()

    def forget(self) -> None:
        """Measure the words anew when a row is drawn next: the language was switched."""
        self._chip = 0

    def _chip_width(self, option: Any, wide: int) -> int:
        """As wide as the gravest state, at most two fifths of the row; longer words wrap."""
        if not self._chip:
            metrics = QtGui.QFontMetrics(_bold(option.font))
            self._chip = (
                metrics.boundingRect(
                    f"{State.INTERFERES.mark} {tr(State.INTERFERES.value)}"
                ).width()
                + 3 * PAD
            )
        return min(self._chip, wide * 2 // 5)


def _bold(font: Any) -> Any:
    bold = QtGui.QFont(font)
    bold.setBold(True)
    return bold


def _line(painter: Any, area: Any, text: str, font: Any) -> None:
    painter.setFont(font)
    fitted = painter.fontMetrics().elidedText(text, QtCore.Qt.ElideRight, area.width())
    painter.drawText(area, QtCore.Qt.AlignVCenter | QtCore.Qt.AlignLeft, fitted)


def _draw_chip(painter: Any, area: Any, row: Row, font: Any) -> None:
    look = look_of(row.note.state, stale=row.waits)
    painter.fillRect(area, _colour(look.fill))
    painter.setPen(_colour(GREY if row.waits else INK))
    painter.drawRect(area.adjusted(0, 0, -1, -1))
    painter.setPen(_colour(look.ink))
    painter.setFont(_bold(font))
    inside = area.adjusted(PAD, 0, -PAD, 0)
    wrapped = QtGui.QTextOption(QtCore.Qt.AlignVCenter | QtCore.Qt.AlignLeft)
    wrapped.setWrapMode(QtGui.QTextOption.WordWrap)
    painter.drawText(QtCore.QRectF(inside), row.head, wrapped)


def _colour(value: Colour) -> Any:
    return QtGui.QColor.fromRgbF(*value)


class FindingsView(QtGui.QListView):
    """The list; ``chosen`` is sent with a finding's id when the designer picks a row."""

    chosen = QtCore.Signal(str)

    def __init__(self, parent: Any = None) -> None:
        super().__init__(parent)
        self._model = FindingsModel(self)
        self.setModel(self._model)
        self.painter = RowPainter(self)
        self.setItemDelegate(self.painter)
        self.setUniformItemSizes(True)
        self.setHorizontalScrollBarPolicy(QtCore.Qt.ScrollBarAlwaysOff)
        self.setObjectName("NeckFitFindings")
        self._current, self._is_putting = "", False
        self.selectionModel().currentChanged.connect(self._moved)
        self.clicked.connect(lambda index: self.chosen.emit(index.data(ID_ROLE)))

    @property
    def current(self) -> str:
        """The id of the row that is selected; empty where none is."""
        return self._current

    @property
    def rows(self) -> list[Row]:
        """What is listed."""
        return self._model.rows

    def put(self, rows: Sequence[Row]) -> None:
        """List these rows; the selection and the scroll bar stay."""
        at = self.verticalScrollBar().value()
        self._is_putting = True
        try:
            if self._model.put(rows):
                # At once, not by a timer: the window would be drawn twice.
                self.doItemsLayout()
                self._mark()
                self.verticalScrollBar().setValue(at)
        finally:
            self._is_putting = False
        self.viewport().update()

    def choose(self, finding: str) -> None:
        """Select a finding's row without telling anyone; none where it is not listed."""
        self._current = finding
        self._is_putting = True
        try:
            self._mark()
        finally:
            self._is_putting = False
        if self.currentIndex().isValid():
            self.scrollTo(self.currentIndex())

    def keyPressEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """Enter and the space bar choose the row once more; Enter must not mean OK here."""
        if event.key() in (QtCore.Qt.Key_Return, QtCore.Qt.Key_Enter, QtCore.Qt.Key_Space):
            if self._current:
                self.chosen.emit(self._current)
            event.accept()
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """Come by with the keyboard: nothing is chosen by that alone."""
        self._is_putting = True
        try:
            super().focusInEvent(event)
        finally:
            self._is_putting = False
        now = self.currentIndex()
        self._current = now.data(ID_ROLE) if now.isValid() else ""

    def _mark(self) -> None:
        place = self._model.place_of(self._current) if self._current else None
        here = self._model.index(place) if place is not None else QtCore.QModelIndex()
        if here != self.currentIndex() or not self.selectionModel().isSelected(here):
            self.selectionModel().setCurrentIndex(here, QtCore.QItemSelectionModel.ClearAndSelect)
        if place is None:
            self.selectionModel().clearSelection()

    def _moved(self, now: Any, _before: Any) -> None:
        """The arrow keys moved on, or the mouse."""
        if self._is_putting or not now.isValid():
            return
        self._current = now.data(ID_ROLE)
        if not QtGui.QApplication.mouseButtons():  # a click is told on release
            self.chosen.emit(self._current)

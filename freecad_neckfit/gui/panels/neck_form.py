"""The import panel's widget: the list of what was recognised, and what can be said about a row."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from typing import Any

from PySide import QtCore, QtGui

from ...job.quantity import Units
from ..annotations.palette import GREEN, GREY, ORANGE, SKY, YELLOW, Colour
from ..translate import tr
from .docked import above, fill, widen
from .neck_rows import Row, Standing

WIDTH = 430
"""Least width [pixel] in which measure, value and standing can be read side by side."""
NARROW = 385
"""A list less wide [pixel] leaves residuals to the lines below it."""
COLUMNS, RESIDUAL = 4, 2
ROW = QtCore.Qt.UserRole + 1
CHIPS: dict[Standing, Colour] = {
    Standing.ASKED: ORANGE,
    Standing.DOUBTFUL: ORANGE,
    Standing.ABSENT: GREY,
    Standing.LIKELY: YELLOW,
    Standing.HAND: SKY,
    Standing.SURE: GREEN,
}
"""Of the sign before a row's standing; the word says the same without colour."""


class NeckForm(QtGui.QWidget):
    """``chosen``: a row was selected, ``pointed``: the mouse is over one (or none, empty).

    ``picking``: faces of the chosen row are to be picked, or no more; ``given_back``: the faces
    found by itself are wanted again; ``accepted``: what was recognised stands; ``typed``: a value.
    """

    chosen = QtCore.Signal(str)
    pointed = QtCore.Signal(str)
    picking = QtCore.Signal(bool)
    given_back = QtCore.Signal()
    accepted = QtCore.Signal()
    typed = QtCore.Signal(str)

    def __init__(self, file: str, *, units: Units) -> None:
        super().__init__()
        self.setWindowTitle(tr("Import a neck: {}").format(file))
        self.setObjectName("NeckFitImport")
        self.notice = _words("NeckFitImportNotice")
        self.notice.setTextFormat(QtCore.Qt.RichText)
        self.list = _list(units)
        self.list.currentItemChanged.connect(lambda *_: self._choose())
        self.list.itemEntered.connect(lambda item, _: self.pointed.emit(_id(item)))
        self.list.viewport().installEventFilter(self)
        self.detail = _words("NeckFitImportDetail")
        self.detail.setTextFormat(QtCore.Qt.RichText)
        self.pick = _button(tr("Pick faces"), "NeckFitImportPick")
        self.pick.setCheckable(True)  # Qt's way
        self.pick.setToolTip(
            tr("Click the right face in the 3D view; with Ctrl one more, or one less.")
        )
        self.back = _button(tr("Faces as found"), "NeckFitImportBack")
        self.back.setToolTip(tr("Take the faces again that were found by itself."))
        self.accept = _button(tr("Keep as recognised"), "NeckFitImportAccept")
        self.accept.setToolTip(tr("What was recognised stands as the answer."))
        self.value = QtGui.QLineEdit()
        self.value.setObjectName("NeckFitImportValue")
        self.value.setPlaceholderText(tr("another value"))
        self.take = _button(tr("Use it"), "NeckFitImportTake")
        self.pick.toggled.connect(self.picking)
        self.back.clicked.connect(lambda *_: self.given_back.emit())
        self.accept.clicked.connect(lambda *_: self.accepted.emit())
        self.take.clicked.connect(lambda *_: self.typed.emit(self.value.text()))
        self.value.installEventFilter(self)
        self._lay_out()
        self._show_row()

    def show_rows(self, rows: Mapping[str, Sequence[Row]], *, chosen: str = "") -> None:
        """List these rows under their headings; the one of id ``chosen`` stays selected."""
        bar = self.list.verticalScrollBar()
        at = bar.value()
        self.list.blockSignals(True)  # Qt's own
        self.list.clear()
        for heading, some in rows.items():
            parent = QtGui.QTreeWidgetItem(self.list, [heading])
            parent.setFirstColumnSpanned(True)  # Qt's way
            parent.setFlags(QtCore.Qt.ItemIsEnabled)
            parent.setFont(0, _bold(self.list.font()))
            for row in some:
                item = _item(parent, row)
                if row.id == chosen:
                    self.list.setCurrentItem(item)
        self.list.expandAll()
        self.list.blockSignals(False)  # Qt's own
        bar.setValue(at)
        self._show_row()

    def choose(self, row: str) -> None:
        """Select the row of that id."""
        for item in self._items():
            if _id(item) == row:
                self.list.setCurrentItem(item)
                self.list.scrollToItem(item)

    @property
    def row(self) -> Row | None:
        """The row that is selected."""
        item = self.list.currentItem()
        return item.data(0, ROW) if item is not None else None

    def rows(self) -> list[Row]:
        """All rows, from the top down."""
        return [row for item in self._items() if (row := item.data(0, ROW)) is not None]

    def stop_picking(self) -> None:
        """Let the button come up."""
        self.pick.setChecked(False)  # Qt's way

    def say(self, sentence: str, *, grave: bool = False) -> None:
        """One sentence over the list; a grave one has a sign and stands out."""
        mark = f"<b>{Standing.DOUBTFUL.value}</b> " if grave else ""
        self.notice.setText(f"{mark}{escape(sentence)}")
        fill(self)

    def make_room(self) -> None:
        """Widen the docked window that the form stands in, and fill it down to its end."""
        widen(self, WIDTH)
        area = above(self, QtGui.QAbstractScrollArea)
        if area is not None:
            area.viewport().installEventFilter(self)
            fill(self)

    def eventFilter(self, watched: Any, event: Any) -> bool:  # noqa: N802 (Qt's name)
        """What of its own widgets and of the window round it matters here.

        Enter takes the typed value and must not reach the panel; a mouse that leaves the list
        points at nothing; a window of another size is filled anew.
        """
        if watched is self.value and event.type() == QtCore.QEvent.KeyPress:
            if event.key() in (QtCore.Qt.Key_Return, QtCore.Qt.Key_Enter):
                self.typed.emit(self.value.text())
                return True
        elif watched is self.list.viewport():
            if event.type() == QtCore.QEvent.Leave:
                self.pointed.emit("")
            elif event.type() == QtCore.QEvent.Resize:
                self.list.setColumnHidden(RESIDUAL, self.list.width() < NARROW)
        elif event.type() == QtCore.QEvent.Resize:
            fill(self)
        return False

    def _items(self) -> list[Any]:
        tops = [self.list.topLevelItem(i) for i in range(self.list.topLevelItemCount())]
        return [top.child(j) for top in tops for j in range(top.childCount())]

    def _choose(self) -> None:
        self.stop_picking()
        self._show_row()
        row = self.row
        self.chosen.emit(row.id if row is not None else "")

    def _show_row(self) -> None:
        row = self.row
        lines = [escape(tr("Choose a row to see which faces told it."))]
        if row is not None:
            value = f": {escape(row.value)}" if row.value else ""
            off = f" ± {escape(row.off)}" if row.off else ""
            lines = [f"<b>{escape(row.title)}{value}</b>{off} ({escape(row.standing.word)})"]
            lines += [
                escape(text[0].upper() + text[1:]) for text in (row.question, row.how) if text
            ]
        self.detail.setText("<br>".join(lines))
        self.pick.setEnabled(row is not None and row.can_pick)
        by_hand = row is not None and row.can_pick and row.standing is Standing.HAND
        self.back.setEnabled(by_hand)
        self.accept.setEnabled(row is not None and row.can_accept)
        for widget in (self.value, self.take):
            widget.setEnabled(row is not None and row.can_type)
        self.value.clear()
        fill(self)

    def _lay_out(self) -> None:
        layout = QtGui.QVBoxLayout(self)
        layout.setContentsMargins(9, 4, 9, 4)
        layout.setSpacing(4)
        faces, answers = QtGui.QHBoxLayout(), QtGui.QHBoxLayout()
        for widget in (self.pick, self.back):
            faces.addWidget(widget)
        for widget in (self.accept, self.value, self.take):
            answers.addWidget(widget)
        layout.addWidget(self.notice)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.detail)
        layout.addLayout(faces)
        layout.addLayout(answers)


def _item(parent: Any, row: Row) -> Any:
    item = QtGui.QTreeWidgetItem(
        parent,
        [
            row.title, row.value, row.off.partition(" ")[0],
            f"{row.standing.value} {row.standing.word}",
        ],
    )  # fmt: skip
    item.setData(0, ROW, row)
    for column in (1, 2):
        item.setTextAlignment(column, QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter)
    item.setIcon(3, _chip(CHIPS[row.standing]))
    tip = "\n".join(t for t in (row.question, row.how, row.off and f"± {row.off}") if t)
    for column in range(COLUMNS):
        item.setToolTip(column, tip)
    if row.standing is Standing.ASKED:
        for column in range(COLUMNS):
            item.setFont(column, _bold(parent.font(0)))
    return item


def _chip(colour: Colour) -> Any:
    picture = QtGui.QPixmap(12, 12)
    picture.fill(QtGui.QColor.fromRgbF(*colour))
    painter = QtGui.QPainter(picture)
    painter.setPen(QtGui.QColor.fromRgbF(*GREY))
    painter.drawRect(0, 0, 11, 11)
    painter.end()
    return QtGui.QIcon(picture)


def _list(units: Units) -> Any:
    made = QtGui.QTreeWidget()
    made.setObjectName("NeckFitImportList")
    made.setHeaderLabels([tr("Measure"), tr("Value"), f"± {units.value}", tr("How sure")])
    made.setRootIsDecorated(False)  # Qt's way
    made.setIndentation(10)
    made.setMouseTracking(True)  # Qt's way
    made.setMinimumHeight(110)
    made.setAllColumnsShowFocus(True)  # Qt's way
    head = made.header()
    head.setStretchLastSection(False)  # Qt's way
    for column, mode in enumerate(
        (QtGui.QHeaderView.Stretch, *[QtGui.QHeaderView.ResizeToContents] * 3)
    ):
        head.setSectionResizeMode(column, mode)
    return made


def _words(name: str) -> Any:
    label = QtGui.QLabel()
    label.setObjectName(name)
    label.setWordWrap(True)  # Qt's way
    return label


def _button(words: str, name: str) -> Any:
    button = QtGui.QPushButton(words)
    button.setObjectName(name)
    button.setAutoDefault(False)  # Qt's way
    return button


def _bold(font: Any) -> Any:
    bold = QtGui.QFont(font)
    bold.setBold(True)
    return bold


def _id(item: Any) -> str:
    row = item.data(0, ROW) if item is not None else None
    return row.id if row is not None else ""

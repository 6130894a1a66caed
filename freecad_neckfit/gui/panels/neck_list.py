"""The list of a neck's measures: rows under headings, to be pointed at and chosen."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from PySide import QtCore, QtGui

from ...job.quantity import Units
from ..annotations.palette import GREEN, GREY, ORANGE, SKY, YELLOW, Colour
from ..translate import tr
from .neck_rows import Row, Standing

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


class NeckList(QtGui.QTreeWidget):
    """``pointed``: the mouse is over the row of that id; over none, where it is empty."""

    pointed = QtCore.Signal(str)

    def __init__(self, units: Units) -> None:
        super().__init__()
        self.setObjectName("NeckFitImportList")
        self.setHeaderLabels([tr("Measure"), tr("Value"), f"± {units.value}", tr("How sure")])
        self.setRootIsDecorated(False)  # Qt's way
        self.setIndentation(10)
        self.setMouseTracking(True)  # Qt's way
        self.setMinimumHeight(110)
        self.setAllColumnsShowFocus(True)  # Qt's way
        head = self.header()
        head.setStretchLastSection(False)  # Qt's way
        modes = QtGui.QHeaderView.Stretch, *[QtGui.QHeaderView.ResizeToContents] * 3
        for column, mode in enumerate(modes):
            head.setSectionResizeMode(column, mode)
        self.itemEntered.connect(lambda item, _: self.pointed.emit(_id(item)))

    def show_rows(self, rows: Mapping[str, Sequence[Row]], *, chosen: str) -> None:
        """List these rows under their headings; the one of id ``chosen`` is selected in silence."""
        bar = self.verticalScrollBar()
        at = bar.value()
        self.blockSignals(True)  # Qt's own
        self.clear()
        for heading, some in rows.items():
            parent = QtGui.QTreeWidgetItem(self, [heading])
            parent.setFirstColumnSpanned(True)  # Qt's way
            parent.setFlags(QtCore.Qt.ItemIsEnabled)
            parent.setFont(0, _bold(self.font()))
            for row in some:
                item = _item(parent, row)
                if row.id == chosen:
                    self.setCurrentItem(item)
        self.expandAll()
        self.blockSignals(False)  # Qt's own
        bar.setValue(at)

    def choose(self, row: str) -> None:
        """Select the row of that id."""
        for item in self.items():
            if _id(item) == row:
                self.setCurrentItem(item)
                self.scrollToItem(item)

    @property
    def row(self) -> Row | None:
        """The row that is selected."""
        item = self.currentItem()
        return item.data(0, ROW) if item is not None else None

    def rows(self) -> list[Row]:
        """All rows, from the top down."""
        return [item.data(0, ROW) for item in self.items()]

    def items(self) -> list[Any]:
        """Qt's items of the rows, from the top down."""
        tops = [self.topLevelItem(i) for i in range(self.topLevelItemCount())]
        return [top.child(j) for top in tops for j in range(top.childCount())]

    def viewportEvent(self, event: Any) -> bool:  # noqa: N802 (Qt's name)
        """A mouse that leaves the rows points at nothing any more."""
        if event.type() == QtCore.QEvent.Leave:
            self.pointed.emit("")
        return bool(super().viewportEvent(event))

    def resizeEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """A narrow list leaves its names the room of the residuals."""
        self.setColumnHidden(RESIDUAL, self.width() < NARROW)
        super().resizeEvent(event)


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


def _bold(font: Any) -> Any:
    bold = QtGui.QFont(font)
    bold.setBold(True)
    return bold


def _id(item: Any) -> str:
    row = item.data(0, ROW) if item is not None else None
    return row.id if row is not None else ""

"""The dimensions that vary, as a table to type into: value, minus, plus and spread."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from PySide import QtCore, QtGui

from ...job.joint import Limits
from ...job.parameters import ALL, SPREADS
from ...job.quantity import Units
from ..figures import local
from ..translate import tr
from .limits_cells import name_of, shown_deviation, shown_value

NAME, VALUE, MINUS, PLUS, SPREAD, EXPLAINS = range(6)


@dataclass(frozen=True)
class Line:
    """One dimension: value (None for a list), limits, and the spread that it states.

    ``is_stated``: whether the joint states the limits or the spread itself.
    """

    key: str
    value: float | None
    limits: Limits
    spread: str
    is_stated: bool


class LimitsTable(QtGui.QTableWidget):
    """Tells with ``typed`` (key, column, text) what was entered; the window takes it over.

    The text of the spread's column is one of the words of a job file, or empty for the shop's own.
    """

    typed = QtCore.Signal(str, int, str)

    def __init__(self) -> None:
        super().__init__(0, 6)
        self.setObjectName("NeckFitLimits")
        self._is_filling = False
        self._keys: list[str] = []
        heads = (
            (tr("Dimension"), tr("Bold: its limits are stated; else declared or general ones.")),
            (tr("Value"), tr("Nominal value; type it in any unit, such as 15.5, 5/8 in or 1.5°.")),
            (tr("Minus"), tr("How far it may lie below, such as 0.1 or 1/64 in; ±0.1 sets both.")),
            (tr("Plus"), tr("How far it may lie above, such as 0.1 or 1/64 in; ±0.1 sets both.")),
            (tr("Spread"), tr("How it spreads between its limits: all alike (uniform), more often "
                              "in the middle (triangular), or as a bell with the limits at three "
                              "standard deviations (normal).")),
            (tr("Explains"), tr("Share of the failures that this dimension explains alone.")),
        )  # fmt: skip
        for column, (words, tip) in enumerate(heads):
            item = QtGui.QTableWidgetItem(words)
            item.setToolTip(tip)
            self.setHorizontalHeaderItem(column, item)
        self.verticalHeader().hide()
        self.verticalHeader().setDefaultSectionSize(26)
        self.horizontalHeader().setSectionResizeMode(QtGui.QHeaderView.ResizeToContents)
        self.horizontalHeader().setSectionResizeMode(NAME, QtGui.QHeaderView.Stretch)
        self.setWordWrap(False)  # cut short at a word, two names could look alike
        self.setSelectionBehavior(QtGui.QAbstractItemView.SelectRows)
        self.setAccessibleName(tr("Dimensions that vary, and their limits"))
        self.itemChanged.connect(self._changed)

    def fill(self, lines: Iterable[Line], *, usual: str, units: Units) -> None:
        """Show these dimensions; ``usual`` is the spread of those that state none."""
        kept = self.key
        self._is_filling = True
        try:
            lines = list(lines)
            self._keys = [line.key for line in lines]
            self.setRowCount(len(lines))
            for row, line in enumerate(lines):
                self._fill_row(row, line, usual, units)
        finally:
            self._is_filling = False
        if kept in self._keys:
            self.setCurrentCell(self._keys.index(kept), max(self.currentColumn(), NAME))

    @property
    def key(self) -> str:
        """The dimension that is selected; empty for none."""
        row = self.currentRow()
        return self._keys[row] if 0 <= row < len(self._keys) else ""

    def row_of(self, key: str) -> int:
        """In which row a dimension stands."""
        return self._keys.index(key)

    def explain(self, shares: Mapping[str, float]) -> None:
        """Show what each dimension explains of the failures, once that is known."""
        self._is_filling = True
        try:
            for row, key in enumerate(self._keys):
                self._put(row, EXPLAINS, _percent(shares.get(key)))
        finally:
            self._is_filling = False

    def _fill_row(self, row: int, line: Line, usual: str, units: Units) -> None:
        meaning = tr(ALL[line.key].meaning)
        name = self._put(row, NAME, name_of(line.key), tip=meaning[:1].upper() + meaning[1:])
        font = name.font()
        font.setBold(line.is_stated)
        name.setFont(font)
        several = line.value is None
        value = "" if line.value is None else shown_value(line.key, line.value, units)
        tip = tr("There are several; type them in the property editor.") if several else ""
        self._put(row, VALUE, tr("several") if several else value, tip=tip, can_type=not several)
        low, high = line.limits
        self._put(row, MINUS, shown_deviation(line.key, low, units), can_type=True)
        self._put(row, PLUS, shown_deviation(line.key, high, units), can_type=True)
        self._put(row, EXPLAINS, "")
        self.setCellWidget(row, SPREAD, self._spread_box(line, usual))

    def _spread_box(self, line: Line, usual: str) -> Any:
        box = QtGui.QComboBox()
        box.addItem(tr("{} (the shop's)").format(tr(usual)), "")
        for word in SPREADS:
            box.addItem(tr(word), word)
        box.setCurrentIndex(1 + SPREADS.index(line.spread) if line.spread else 0)
        box.setAccessibleName(tr("Spread of {}").format(name_of(line.key)))
        key = line.key
        # Not at once: filling the table anew would take the box away under its own signal.
        box.activated.connect(
            lambda index: QtCore.QTimer.singleShot(
                0, lambda: self.typed.emit(key, SPREAD, str(box.itemData(index)))
            )
        )
        return box

    def _put(
        self, row: int, column: int, text: str, *, tip: str = "", can_type: bool = False
    ) -> Any:
        item = QtGui.QTableWidgetItem(text)
        item.setToolTip(tip)
        if not can_type:
            item.setFlags(item.flags() & ~QtCore.Qt.ItemIsEditable)
        if column != NAME:
            item.setTextAlignment(QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter)
        self.setItem(row, column, item)
        return item

    def _changed(self, item: Any) -> None:
        if self._is_filling:
            return
        key, column, text = self._keys[item.row()], item.column(), str(item.text())
        # Not at once: the cell's editor must close before the table is filled anew.
        QtCore.QTimer.singleShot(0, lambda: self.typed.emit(key, column, text))


def _percent(share: float | None) -> str:
    return "" if share is None or share < 5e-4 else local(f"{share * 100:.1f} %")

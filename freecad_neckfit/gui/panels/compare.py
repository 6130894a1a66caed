"""Two states of the joint side by side: now and saved, now and a job file, nominal and measured."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from PySide import QtGui

from ...features import revisions
from ...job.parameters import ALL
from ...job.quantity import Units
from ...job.resolve import complete
from ...job.words import name_of
from ...run.compare import Difference, State, changed_findings, changed_values
from ..annotations.notes import note_of
from ..annotations.palette import look_of
from ..ask import ask_file
from ..figures import show_value
from ..translate import tr
from .compare_measured import MeasuredTable
from .decide_dialog import DecideDialog, show, told

SAVED, JOB_FILE, MEASURED = range(3)


class CompareDialog(DecideDialog):
    """Shows only what differs."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Compare two states"), name="NeckFitCompare")
        self.other = QtGui.QComboBox()
        self.other.setObjectName("NeckFitOther")
        self.other.addItems(
            [tr("the document as saved"), tr("a job file"), tr("values measured after routing")]
        )
        self.measured = MeasuredTable(units=self.units)
        self.values = _table("NeckFitValues")
        self.findings = _table("NeckFitChanges")
        self.heads = [QtGui.QLabel() for _ in range(2)]
        self.file = ""
        self._fill()
        self.other.currentIndexChanged.connect(lambda _: self._choose())
        self.measured.changed.connect(self.look_again)

    def look(self) -> None:
        """Judge both states and list what differs, once there are two."""
        if self._waits():
            return
        before, after = self._states()
        values, findings = changed_values(before, after), changed_findings(before, after)
        self.heads[0].setText(tr("Values that differ: {}").format(len(values)))
        self.heads[1].setText(
            tr("Findings that differ: {} ({}: {}; {}: {})").format(
                len(findings), before.title, tr(before.verdict), after.title, tr(after.verdict)
            )
        )
        _put(self.values, (tr("Value"), before.title, after.title), map(self._value, values))
        _put(self.findings, (tr("Finding"), before.title, after.title), map(self._told, findings))
        self._paint(findings)
        if not values and not findings:
            self.say(tr("Both states are the same."))

    def _waits(self) -> bool:
        """Whether there is nothing yet to compare with: then say what to do."""
        chosen, ask = self.other.currentIndex(), ""
        if chosen == MEASURED:
            self.measured.tell(complete(self.stated()))
            if not self.measured.values():
                ask = tr("Nothing is measured yet: type what you measured into the last column.")
        elif chosen == JOB_FILE and not self.file:
            ask = tr("No job file is chosen yet: choose one below.")
        for part in (self.heads[1], self.values, self.findings):
            part.setVisible(not ask)
        if ask:
            self.heads[0].setText(ask)
        return bool(ask)

    def retell(self) -> None:
        """Say both states anew; what was typed stays."""
        self.measured.retell()
        self.look()

    def _states(self) -> tuple[State, State]:
        now = revisions.now(self.joint, title=tr("now"))
        chosen = self.other.currentIndex()
        if chosen == SAVED:
            return revisions.saved(self.joint, title=tr("saved")), now
        if chosen == MEASURED:
            self.measured.tell(now.values)
            nominal = State(tr("nominal"), now.values, now.findings, now.verdict)
            found = self.measured.values()
            return nominal, revisions.measured(self.joint, found, title=tr("measured"))
        stated = revisions.stated_in(Path(self.file)) if self.file else {}
        return now, revisions.measured(self.joint, stated, title=Path(self.file).name or "-")

    @told
    def _choose(self) -> None:
        chosen = self.other.currentIndex()
        self.measured.setVisible(chosen == MEASURED)
        self.take.setEnabled(chosen != SAVED)
        if chosen == JOB_FILE and not self.file:
            self.file = ask_file(tr("Compare with a job file"))
        self.look()

    @told
    def _take_file(self) -> None:
        file = ask_file(tr("Values from a job file"))
        if not file:
            return
        if self.other.currentIndex() == MEASURED:
            self.measured.take(revisions.stated_in(Path(file)))
        else:
            self.file = file
        self.look()

    def _fill(self) -> None:
        self.take = self.button(tr("Values from a job file…"), self._take_file)
        self.take.setEnabled(False)
        line = QtGui.QHBoxLayout()
        label = QtGui.QLabel(tr("&Compare the joint now with"))
        label.setBuddy(self.other)
        line.addWidget(label)
        line.addWidget(self.other)
        line.addStretch(1)
        self.body.addLayout(line)
        self.measured.hide()
        for part, share in (
            (self.measured, 5),
            (self.heads[0], 0),
            (self.values, 2),
            (self.heads[1], 0),
            (self.findings, 3),
        ):
            self.body.addWidget(part, share)

    def _value(self, found: Difference) -> tuple[str, str, str]:
        shown = [_shown(found.key, value, self.units) for value in (found.before, found.after)]
        return tr(name_of(found.key)), shown[0], shown[1]

    def _told(self, found: Difference) -> tuple[str, str, str]:
        title = str((found.after or found.before)["title"])
        before, after = (_said(f, self.units) for f in (found.before, found.after))
        return tr(title), before, after

    def _paint(self, findings: list[Difference]) -> None:
        """The states' colours; their words and signs stand there too."""
        for row, found in enumerate(findings):
            for column, record in ((1, found.before), (2, found.after)):
                if record is not None:
                    look = look_of(note_of(record, units=self.units).state)
                    cell = self.findings.item(row, column)
                    cell.setBackground(QtGui.QColor.fromRgbF(*look.fill))
                    cell.setForeground(QtGui.QColor.fromRgbF(*look.ink))


def _said(record: Mapping[str, Any] | None, units: Units) -> str:
    if record is None:
        return "-"
    note = note_of(record, units=units)
    words = f"{note.head} {note.value}".rstrip()
    return f"{words} ({note.wanted})" if note.wanted else words


def _shown(key: str, value: Any, units: Units) -> str:
    p = ALL[key]
    if value is None:
        return tr("none")
    if hasattr(value, "tolist"):
        return ", ".join(_shown_one(p, x, units) for x in value.tolist())
    return _shown_one(p, value, units)


def _shown_one(p: Any, value: Any, units: Units) -> str:
    return show_value(value, kind=p.kind, units=units) or "-"


def _table(name: str) -> Any:
    table = QtGui.QTableWidget(0, 3)
    table.setObjectName(name)
    table.setEditTriggers(QtGui.QAbstractItemView.NoEditTriggers)
    table.setSelectionBehavior(QtGui.QAbstractItemView.SelectRows)
    table.verticalHeader().hide()
    table.horizontalHeader().setSectionResizeMode(QtGui.QHeaderView.Stretch)
    return table


def _put(table: Any, heads: tuple[str, ...], rows: Any) -> None:
    table.setHorizontalHeaderLabels(list(heads))
    cells = list(rows)
    table.setRowCount(len(cells))
    for i, row in enumerate(cells):
        for j, text in enumerate(row):
            item = QtGui.QTableWidgetItem(text)
            item.setToolTip(text)
            table.setItem(i, j, item)


def open_comparison(joint: Any) -> CompareDialog:
    """Open the comparison of a joint with its saved state."""
    dialog = CompareDialog(joint)
    if not joint.Document.FileName:
        dialog.other.setCurrentIndex(MEASURED)
    show(dialog)
    return dialog

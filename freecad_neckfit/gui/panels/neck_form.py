"""The import panel's widget: the list of what was recognised, and what can be said about a row."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from typing import Any

from PySide import QtCore, QtGui

from ...job.quantity import Units
from ..translate import tr
from .docked import above, fill, widen
from .neck_list import NeckList
from .neck_rows import Row, Standing

WIDTH = 430
"""Least width [pixel] in which measure, value and standing can be read side by side."""


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
        self.list = NeckList(units)
        self.list.currentItemChanged.connect(lambda *_: self._choose())
        self.list.pointed.connect(self.pointed)
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
        self.choice = QtGui.QComboBox()
        self.choice.setObjectName("NeckFitImportChoice")
        self.choice.activated.connect(lambda at: self.typed.emit(self.choice.itemData(at)))
        self.pick.toggled.connect(self.picking)
        self.back.clicked.connect(lambda *_: self.given_back.emit())
        self.accept.clicked.connect(lambda *_: self.accepted.emit())
        self.take.clicked.connect(lambda *_: self.typed.emit(self.value.text()))
        self.value.installEventFilter(self)
        self._lay_out()
        self._show_row()

    def show_rows(self, rows: Mapping[str, Sequence[Row]]) -> None:
        """List these rows under their headings; the one that was chosen stays so."""
        chosen = self.row
        self.list.show_rows(rows, chosen=chosen.id if chosen is not None else "")
        self._show_row()

    @property
    def row(self) -> Row | None:
        """The row that is selected."""
        return self.list.row

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
        """Enter takes the typed value and must not reach the panel; a resized window is filled."""
        if watched is self.value and event.type() == QtCore.QEvent.KeyPress:
            if event.key() in (QtCore.Qt.Key_Return, QtCore.Qt.Key_Enter):
                self.typed.emit(self.value.text())
                return True
        elif event.type() == QtCore.QEvent.Resize:
            fill(self)
        return False

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
        self._show_choices(row.choices if row is not None else (), row.value if row else "")
        fill(self)

    def _show_choices(self, choices: Sequence[tuple[str, str]], shown: str) -> None:
        """What can only be chosen has a list to choose from in place of the field."""
        self.choice.clear()
        for words, stated in choices:
            self.choice.addItem(words, stated)
        self.choice.setCurrentIndex(self.choice.findText(shown))
        self.choice.setVisible(bool(choices))
        for widget in (self.value, self.take):
            widget.setVisible(not choices)

    def _lay_out(self) -> None:
        layout = QtGui.QVBoxLayout(self)
        layout.setContentsMargins(9, 4, 9, 4)
        layout.setSpacing(4)
        faces, answers = QtGui.QHBoxLayout(), QtGui.QHBoxLayout()
        for widget in (self.pick, self.back):
            faces.addWidget(widget)
        for widget in (self.accept, self.value, self.take, self.choice):
            answers.addWidget(widget)
        layout.addWidget(self.notice)
        layout.addWidget(self.list, 1)
        layout.addWidget(self.detail)
        layout.addLayout(faces)
        layout.addLayout(answers)


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

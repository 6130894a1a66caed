"""The adoption panel's widget: what is adopted as what, and a row for each pick."""

from __future__ import annotations

from typing import Any

import FreeCAD
from PySide import QtCore, QtGui

from ..sentences import say
from ..translate import tr

WIDTH = 300
"""Least width [pixel] in which what is picked can be read beside its buttons."""
ROLES = ("body", "neck", "plate")
ROWS = ("solid", "top", "centreline", "floor", "system")
OF_ROLE = {"body": ROWS, "neck": ("solid", "system"), "plate": ("solid",)}
"""Rows that a role has."""


class AdoptForm(QtGui.QWidget):
    """``changed``: anything that decides the frame; ``cleared``: a row's pick is taken back."""

    changed = QtCore.Signal()
    cleared = QtCore.Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setWindowTitle(tr("Adopt a solid"))
        layout = QtGui.QFormLayout(self)
        layout.setFieldGrowthPolicy(QtGui.QFormLayout.AllNonFixedFieldsGrow)
        self.notice = QtGui.QLabel()
        self.notice.setObjectName("NeckFitAdoptNotice")
        self.notice.setWordWrap(True)  # Qt's way
        font = self.notice.font()
        font.setBold(True)  # Qt's way
        self.notice.setFont(font)
        layout.addRow(self.notice)
        self.roles = QtGui.QComboBox()
        self.roles.setObjectName("NeckFitAdoptRole")
        self.roles.addItems([tr("body"), tr("neck"), tr("cover plate")])
        layout.addRow(tr("Adopt as"), self.roles)
        words = {
            "solid": (tr("Solid"), tr("The solid itself; picking its top face picks it too.")),
            "top": (tr("Top face"), tr("The flat top, or the carved one whose back is flat.")),
            "centreline": (
                tr("Centreline"),
                tr("A straight edge, a sketch's line or a datum line along the middle."),
            ),
            "floor": (
                tr("Pocket's floor"),
                tr("Only needed where the floor of a pocket that is there is not found."),
            ),
            "system": (
                tr("Coordinate system"),
                tr("Instead of faces: X to the bridge, Z out of the top, at the end wall."),
            ),
        }
        self.buttons: dict[str, Any] = {}
        self._lines: dict[str, Any] = {}
        for row in ROWS:
            layout.addRow(words[row][0], self._row(row, words[row][1]))
        self.pocket = QtGui.QCheckBox(tr("It has its neck pocket already"))
        self.pocket.setObjectName("NeckFitAdoptPocket")
        self.turn = QtGui.QCheckBox(tr("Turn the centreline round"))
        self.turn.setObjectName("NeckFitAdoptTurn")
        self.turn.setToolTip(
            tr("The arrow drawn over the body must point to the bridge; turn it if it does not.")
        )
        self.by_numbers = QtGui.QCheckBox(tr("Place it by figures instead"))
        self.by_numbers.setObjectName("NeckFitAdoptType")
        self.by_numbers.setToolTip(
            tr("Where the end wall meets the top on the centreline, and how the solid is turned.")
        )
        for box in (self.pocket, self.turn, self.by_numbers):
            layout.addRow(box)
            box.toggled.connect(self._changed)
        self.typing = QtGui.QWidget()
        self.numbers = self._numbers(QtGui.QFormLayout(self.typing))
        layout.addRow(self.typing)
        self.roles.currentIndexChanged.connect(self._changed)
        self._changed()

    @property
    def role(self) -> str:
        """What the solid becomes."""
        return ROLES[self.roles.currentIndex()]

    @property
    def has_pocket(self) -> bool:
        """Whether the solid's own pocket is to be read."""
        return bool(self.pocket.isChecked())

    @property
    def is_reversed(self) -> bool:
        """Whether X is turned to the other end."""
        return bool(self.turn.isChecked())

    @property
    def typed(self) -> list[float] | None:
        """X, Y, Z [mm], yaw, pitch and roll [degrees]; None where the frame is not typed."""
        if not self.by_numbers.isChecked() or self.role == "plate":
            return None
        return [float(FreeCAD.Units.Quantity(b.property("value")).Value) for b in self.numbers]

    @property
    def waiting(self) -> str:
        """The row that takes the next pick; empty where none waits."""
        return next((r for r in ROWS if self.buttons[r].isChecked()), "")

    @property
    def missing(self) -> str:
        """The first row that is still needed, with what else is picked and ticked; or empty."""
        rows = ["solid"]
        is_placed = self.typed is not None or self._lines["system"].text()
        if self.role == "body" and not is_placed:
            rows = ["top", "centreline", "solid"]  # the top's pick tells the solid too
        return next((row for row in rows if not self._lines[row].text()), "")

    def show_pick(self, row: str, words: str) -> None:
        """Show what a row holds; empty words for nothing."""
        self._lines[row].setText(words)
        self._lines[row].setCursorPosition(0)

    def go_on(self) -> None:
        """Let the next row that is needed wait; none where all is there."""
        after = self.missing
        for row, button in self.buttons.items():
            button.setChecked(row == after)  # Qt's way

    def say(self, sentence: str) -> None:
        """One sentence over the picks."""
        self.notice.setText(say(sentence) if sentence else "")

    def _row(self, row: str, tip: str) -> Any:
        line = QtGui.QLineEdit()
        line.setReadOnly(True)  # Qt's way
        line.setObjectName(f"NeckFitAdopt_{row}")
        line.setMinimumWidth(40)  # the panel is narrow
        button, clear = QtGui.QToolButton(), QtGui.QToolButton()
        button.setText(tr("Pick"))
        button.setCheckable(True)  # Qt's way
        button.setAutoExclusive(False)  # Qt's way: exclusive among the rows, by hand
        button.setObjectName(f"NeckFitAdoptPick_{row}")
        clear.setText("×")
        clear.setToolTip(tr("Take it back"))
        for widget in (line, button):
            widget.setToolTip(tip)
        button.toggled.connect(lambda on, row=row: self._only(row, is_on=on))
        button.clicked.connect(lambda *_: self.changed.emit())
        clear.clicked.connect(lambda *_, row=row: self.cleared.emit(row))
        together = QtGui.QWidget()
        inner = QtGui.QHBoxLayout(together)
        inner.setContentsMargins(0, 0, 0, 0)
        for widget in (line, button, clear):
            inner.addWidget(widget)
        self.buttons[row], self._lines[row] = button, line
        return together

    def _numbers(self, layout: Any) -> list[Any]:
        import FreeCADGui

        made: list[Any] = []
        turns = (tr("Turned about Z"), tr("about Y"), tr("about X"))
        for name, unit in [*((n, "mm") for n in "XYZ"), *((n, "deg") for n in turns)]:
            box = FreeCADGui.UiLoader().createWidget("Gui::QuantitySpinBox")
            box.setProperty("unit", unit)
            box.setObjectName(f"NeckFitAdoptType_{len(made)}")
            box.valueChanged.connect(self._changed)
            layout.addRow(name, box)
            made.append(box)
        return made

    def _only(self, row: str, *, is_on: bool) -> None:
        if is_on:
            for other, button in self.buttons.items():
                if other != row:
                    button.setChecked(False)  # Qt's way

    def _changed(self, *_: Any) -> None:
        """Show the rows that the role needs."""
        rows = OF_ROLE[self.role]
        for row in ROWS:
            self.buttons[row].parentWidget().setEnabled(row in rows)
        is_body = self.role == "body"
        self.pocket.setEnabled(is_body)
        self.turn.setEnabled(is_body)
        self.by_numbers.setEnabled(self.role != "plate")
        self.typing.setVisible(self.by_numbers.isChecked() and self.by_numbers.isEnabled())
        if self.waiting in ("", "solid", "top", "centreline") or self.waiting not in rows:
            self.go_on()
        self.changed.emit()

"""One parameter to turn: its field, its slider, and what drives it where the designer cannot."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from PySide import QtCore, QtGui

from ...job.parameters import ALL
from ...job.quantity import Kind, Units
from ..figures import compact_length, show_value
from ..translate import tr
from .fit_measure_box import MeasureBox

SETTLE = 300
"""Without a mouse button there is no release: so long [ms] after the last key, solids run."""
EDGE = 0.1
"""A value that settles within this share of the slider's ends has the slider centred anew."""


@dataclass(frozen=True)
class Scale:
    """How a slider counts [inner unit]: its finest ``unit``, keys and page, to each side."""

    unit: float
    key: int
    page: int
    around: float


SCALES = {
    (Kind.LENGTH, Units.MM): Scale(0.01, 5, 50, 4.0),
    # Half a thousandth of an inch; keys go by two thousandths, pages by twenty.
    (Kind.LENGTH, Units.INCH): Scale(0.0127, 4, 40, 4.0),
    (Kind.ANGLE, Units.MM): Scale(0.01, 5, 25, 2.0),
    (Kind.ANGLE, Units.INCH): Scale(0.01, 5, 25, 2.0),
}
"""The slider spans what a builder tries, not all that is permitted: a pixel is then 0.03 mm."""


class Knob(QtGui.QWidget):
    """Field and slider of one parameter.

    ``trying`` is sent with each value on the way, ``settled`` with the one at which the mouse was
    released, the keys rested or an entry was confirmed; ``refused`` with one sentence.
    """

    trying = QtCore.Signal(str, float)
    settled = QtCore.Signal(str, float)
    refused = QtCore.Signal(str)

    def __init__(self, key: str, *, title: str, units: Units) -> None:
        super().__init__()
        self.key = key
        self._p, self._units = ALL[key], units
        self._scale = SCALES[self._p.kind, units]
        self._is_putting = False
        self._rest = QtCore.QTimer(self)
        self._rest.setSingleShot(True)
        self._rest.setInterval(SETTLE)
        self._rest.timeout.connect(self.settle)
        self.box = MeasureBox(
            self._p, title=title, units=units, step=self._scale.unit * self._scale.key
        )
        self.slider = QtGui.QSlider(QtCore.Qt.Horizontal)
        self._ends = QtGui.QLabel(), QtGui.QLabel()
        self.note = QtGui.QLabel()
        self._name = QtGui.QLabel()
        self._lay_out()
        self.retell(title)
        self._connect()

    def _lay_out(self) -> None:
        self.setObjectName(f"NeckFit_{self.key}")
        self._name.setBuddy(self.box)
        self.slider.setRange(0, 0)
        self.slider.setSingleStep(self._scale.key)
        self.slider.setPageStep(self._scale.page)
        self.slider.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.note.setWordWrap(True)
        self.note.hide()
        grid = QtGui.QGridLayout(self)
        grid.setContentsMargins(0, 1, 0, 2)
        grid.setVerticalSpacing(1)
        grid.addWidget(self._name, 0, 0, 1, 2)
        grid.addWidget(self.box, 0, 2)
        row = QtGui.QHBoxLayout()
        for widget, stretch in ((self._ends[0], 0), (self.slider, 1), (self._ends[1], 0)):
            row.addWidget(widget, stretch)
        grid.addLayout(row, 1, 0, 1, 3)
        grid.addWidget(self.note, 2, 0, 1, 3)
        grid.setColumnStretch(0, 1)

    def retell(self, title: str) -> None:
        """Call it so, and say what it means in the language of now."""
        meaning = tr(self._p.meaning)
        self._name.setText(f"<b>{title}</b>")
        self.box.name(title)
        for widget in (self._name, self.box, self.slider):
            widget.setToolTip(meaning[:1].upper() + meaning[1:])
            widget.setAccessibleName(title)

    def _connect(self) -> None:
        self.box.typed.connect(self._typed)
        self.box.stepped.connect(self._moved_to)
        self.box.refused.connect(self.refused)
        self.slider.valueChanged.connect(self._slid)
        self.slider.sliderReleased.connect(self.settle)

    @property
    def value(self) -> float:
        """The value shown, in inner units."""
        return self.box.value

    def put(self, value: float) -> None:
        """Show a value, and centre the slider on it anew where it stands near its ends."""
        self._rest.stop()
        self.box.put(value)
        low, high = (float(b) for b in (self._p.low or 0.0, self._p.high or 0.0))
        unit, around = self._scale.unit, self._scale.around
        ends = self.slider.minimum() * unit, self.slider.maximum() * unit
        inset = EDGE * (ends[1] - ends[0])
        if not ends[0] + inset <= value <= ends[1] - inset or ends[0] == ends[1]:
            ends = max(low, value - around), min(high, value + around)
        self._is_putting = True
        try:
            self.slider.setRange(_within(ends[0], unit, low), -_within(-ends[1], unit, -high))
            self.slider.setValue(round(value / unit))
        finally:
            self._is_putting = False
        for label, at in zip(self._ends, (self.slider.minimum(), self.slider.maximum()),
                             strict=True):  # fmt: skip
            label.setText(self._short(at * unit))
        self._say_fraction()

    def drive(self, driver: str) -> None:
        """Let the designer turn it, unless ``driver`` says what does instead."""
        for widget in (self.box, self.slider):
            widget.setEnabled(not driver)
        self.note.setText(driver)
        self.note.setVisible(bool(driver))
        self._say_fraction()

    @property
    def is_turning(self) -> bool:
        """Whether a value was tried that has not settled yet."""
        return bool(self._rest.isActive() or self.slider.isSliderDown())

    def settle(self) -> None:
        """Tell that the value shown is the one that is meant."""
        self._rest.stop()
        self.settled.emit(self.key, self.value)

    def _slid(self, at: int) -> None:
        if self._is_putting:
            return
        low, high = float(self._p.low or 0.0), float(self._p.high or 0.0)
        # Twelve digits: the value that a typed entry of the same text has.
        value = float(f"{min(max(at * self._scale.unit, low), high):.12g}")
        self.box.put(value)
        self._try(value)

    def _moved_to(self, value: float) -> None:
        self._is_putting = True
        try:
            self.slider.setValue(round(value / self._scale.unit))
        finally:
            self._is_putting = False
        self._try(value)

    def _try(self, value: float) -> None:
        self._say_fraction()
        if not self.slider.isSliderDown():
            self._rest.start()
        self.trying.emit(self.key, value)

    def _typed(self, value: float) -> None:
        self.put(value)
        self.settled.emit(self.key, value)

    def _say_fraction(self) -> None:
        if self._units is Units.INCH and self._p.kind is Kind.LENGTH and self.box.isEnabled():
            self.note.setText(show_value(self.value, kind=self._p.kind, units=self._units))
            self.note.show()

    def _short(self, value: float) -> str:
        if self._p.kind is Kind.LENGTH:
            return compact_length(value, units=self._units).rsplit(" ", 1)[0]
        return show_value(value, kind=self._p.kind, units=self._units)


def _within(end: float, unit: float, limit: float) -> int:
    """The slider's count next to ``end`` that is not below ``limit``."""
    at = round(end / unit)
    return at if at * unit >= limit - 1e-9 else at + 1


def driver_of(obj: Any, name: str) -> str:
    """One sentence on what sets a property in the designer's place; empty where he does."""
    for path, expression in obj.ExpressionEngine:
        if path.lstrip(".").split(".")[0] == name:
            return tr("{} is driven by the expression {}; change it there.").format(
                f"{obj.Label}.{name}", expression
            )
    return ""

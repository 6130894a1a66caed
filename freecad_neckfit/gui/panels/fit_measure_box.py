"""A field for one measure: typed in any unit the trade writes, or stepped with the arrow keys."""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui

from ...job.bounds import in_bounds
from ...job.errors import BadInput
from ...job.parameter import Parameter
from ...job.quantity import Units, read_value
from ..figures import entry_value, plain


class MeasureBox(QtGui.QAbstractSpinBox):
    """Holds the last good value, whatever is typed.

    ``typed`` is sent with a value [inner unit] that was typed and confirmed, ``stepped`` with one
    that an arrow reached, ``refused`` with one sentence for what cannot be used. FreeCAD's own
    fields read neither ``1 3/4 in`` nor say what is wrong with an entry: hence this one, which
    reads as job files are read.
    """

    typed = QtCore.Signal(float)
    stepped = QtCore.Signal(float)
    refused = QtCore.Signal(str)

    def __init__(self, p: Parameter, *, title: str, units: Units, step: float) -> None:
        super().__init__()
        self._p, self._title, self._units, self._step = p, title, units, step
        self._value = 0.0
        self.editingFinished.connect(self.commit)

    @property
    def value(self) -> float:
        """The last good value in inner units."""
        return self._value

    def name(self, title: str) -> None:
        """Call the measure so in what is said of an entry."""
        self._title = title

    def put(self, value: float) -> None:
        """Hold a value and show it."""
        self._value = value
        self.lineEdit().setText(self._shown())

    def commit(self) -> None:
        """Take what was typed; where it cannot be used, say why and show the last good value."""
        text = self.lineEdit().text()
        if text == self._shown():
            return
        try:
            value = self._read(text)
        except BadInput as refusal:
            self.put(self._value)
            self.refused.emit(str(refusal))
            return
        self.put(value)
        self.typed.emit(value)

    def _read(self, text: str) -> float:
        value = read_value(plain(text), kind=self._p.kind, bare=self._units, name=self._title)
        in_bounds(self._p, value, raw=text, name=self._title, units=self._units)
        return float(value)  # type: ignore[arg-type] # a measured kind is a number

    def _shown(self) -> str:
        return entry_value(self._value, kind=self._p.kind, units=self._units)

    def stepBy(self, steps: int) -> None:  # noqa: N802 (Qt's name)
        """Go on by so many steps, as far as is permitted."""
        low, high = float(self._p.low or 0.0), float(self._p.high or 0.0)
        # From what is typed, as every spin box does, unless that cannot be read.
        self.commit()
        value = min(max(round(self._value / self._step + steps) * self._step, low), high)
        if value != self._value:
            self.put(value)
            self.stepped.emit(value)

    def stepEnabled(self) -> Any:  # noqa: N802 (Qt's name)
        """Both ways, up to the limits."""
        found = QtGui.QAbstractSpinBox.StepNone
        if self._p.low is not None and self._value > self._p.low:
            found |= QtGui.QAbstractSpinBox.StepDownEnabled
        if self._p.high is not None and self._value < self._p.high:
            found |= QtGui.QAbstractSpinBox.StepUpEnabled
        return found

    def keyPressEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """Enter takes the entry; it must not reach the panel, where it would mean OK."""
        if event.key() in (QtCore.Qt.Key_Return, QtCore.Qt.Key_Enter):
            self.commit()
            self.selectAll()
            event.accept()
            return
        super().keyPressEvent(event)

    def sizeHint(self) -> Any:  # noqa: N802 (Qt's name)
        """Room for the longest value."""
        metrics = self.fontMetrics()
        return QtCore.QSize(metrics.boundingRect("-00.0000 in").width() + 40, metrics.height() + 10)

"""What the shop can set: asked in one small window, kept in the document."""

from __future__ import annotations

import re
from typing import Any

from PySide import QtCore, QtGui

from ...decide.shop import STEPPED
from ...features.gather import joint_stated
from ...job.bounds import in_bounds
from ...job.errors import BadInput
from ...job.parameters import ALL
from ...job.quantity import Kind, Units, read_value
from ...job.resolve import complete
from ..figures import decimal_mark, entry_value, locale, plain
from ..sentences import say
from ..translate import tr
from .fit_measure_box import MeasureBox

ARROW = {Kind.LENGTH: 0.1, Kind.ANGLE: 0.1}
"""What an arrow key adds [mm, degrees]."""


class ShopSteps(QtGui.QDialog):
    """The smallest change of each thing, and the router's stops.

    ``values``: what was entered, by key, once it is accepted.
    """

    def __init__(self, parent: Any, joint: Any, *, units: Units) -> None:
        super().__init__(parent)
        self.setObjectName("NeckFitShopSteps")
        self.setWindowTitle(tr("NeckFit: what the shop can set"))
        self.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        self.values: dict[str, Any] = {}
        self._units, self._before = units, complete(joint_stated(joint))
        self.boxes = {key: self._box(key) for key in _keys()}
        self.stops = QtGui.QLineEdit(_joined(self._before["shop.stops"], units))
        self.stops.setObjectName("NeckFitStops")
        self.stops.setPlaceholderText(tr("none"))
        self.swap = QtGui.QDoubleSpinBox()
        self.swap.setRange(0.0, float(ALL["shop.swap"].high or 0.0))
        self.swap.setLocale(locale())
        self.swap.setValue(float(self._before["shop.swap"]))
        self.notice = QtGui.QLabel()
        self.notice.setObjectName("NeckFitNotice")
        self.notice.setWordWrap(True)
        self.notice.hide()
        self._lay_out()

    def _lay_out(self) -> None:
        form = QtGui.QFormLayout()
        rows = [*self.boxes.items(), ("shop.stops", self.stops), ("shop.swap", self.swap)]
        for key, field in rows:
            meaning = tr(ALL[key].meaning)
            field.setAccessibleName(meaning)
            form.addRow(meaning[:1].upper() + meaning[1:], field)
        hint = QtGui.QLabel(tr('Lengths in any unit, such as 0.1 or 1/64 in; stops as "15.5, 16".'))
        column = QtGui.QVBoxLayout(self)
        column.addLayout(form)
        column.addWidget(hint)
        column.addWidget(self.notice)
        ends = QtGui.QDialogButtonBox(QtGui.QDialogButtonBox.Ok | QtGui.QDialogButtonBox.Cancel)
        ends.accepted.connect(self.accept)
        ends.rejected.connect(self.reject)
        column.addWidget(ends)

    def _box(self, key: str) -> MeasureBox:
        p = ALL[key]
        box = MeasureBox(p, title=tr(p.meaning), units=self._units, step=ARROW[p.kind])
        box.setObjectName(f"NeckFit_{key}")
        box.put(float(self._before[key]))
        box.refused.connect(self._say)
        return box

    def accept(self) -> None:
        """Keep what was entered, unless the stops cannot be read: then say why."""
        try:
            stops = self._read_stops()
        except BadInput as refusal:
            self._say(str(refusal))
            return
        entered: dict[str, Any] = {key: box.value for key, box in self.boxes.items()}
        entered |= {"shop.swap": float(self.swap.value()), "shop.stops": stops}
        self.values = {k: v for k, v in entered.items() if v != _plain(self._before[k])}
        super().accept()

    def _read_stops(self) -> list[float] | None:
        before = self._before["shop.stops"]
        if self.stops.text() == _joined(before, self._units):
            return _plain(before)  # type: ignore[no-any-return] # not typed anew, so not rounded
        p, found = ALL["shop.stops"], []
        for number, text in enumerate(filter(None, _parted(self.stops.text())), start=1):
            name = tr("router's stop {}").format(number)
            value = read_value(plain(text).strip(), kind=p.kind, bare=self._units, name=name)
            in_bounds(p, value, raw=text.strip(), name=name, units=self._units)
            found.append(float(value))  # type: ignore[arg-type] # a length is a number
        return sorted(found) or None

    def _say(self, sentence: str) -> None:
        self.notice.setText(say(sentence))
        self.notice.show()


def _keys() -> list[str]:
    return [f"shop.step_{name}" for name in STEPPED]


def _plain(value: Any) -> Any:
    return value.tolist() if hasattr(value, "tolist") else value


def _parted(stops: str) -> list[str]:
    """Several lengths: a semicolon parts them, and a comma that is no decimal one."""
    return re.split("[;,]" if decimal_mark() == "." else r";|,\s+", stops)


def _joined(stops: Any, units: Units) -> str:
    if stops is None:
        return ""
    between = ", " if decimal_mark() == "." else "; "
    return between.join(entry_value(float(s), kind=Kind.LENGTH, units=units) for s in stops)

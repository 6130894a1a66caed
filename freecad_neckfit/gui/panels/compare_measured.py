"""A table to type what was measured beside what was stated."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from PySide import QtCore, QtGui

from ...job.bounds import in_bounds
from ...job.parameters import ALL
from ...job.quantity import Kind, Units, read_value
from ...job.words import name_of
from ..figures import entry_value, plain, show_value
from ..translate import tr

GROUPS = ("pocket", "neck", "body", "plate", "screws")
"""What a workbench and calipers tell of."""
KEYS = tuple(
    p.key
    for group in GROUPS
    for p in ALL.values()
    if p.group == group and p.kind in (Kind.LENGTH, Kind.ANGLE) and not p.many
)
NAME, NOMINAL, TYPED = range(3)
SEEN_WHERE: dict[str, tuple[str, tuple[str, ...]]] = {
    "pocket.end_radius": ("pocket.end_shape", ("round",)),
    "pocket.corner_radius": ("pocket.end_shape", ("square",)),
    "neck.heel_radius": ("neck.heel_end", ("round",)),
    "neck.heel_corner_radius": ("neck.heel_end", ("square",)),
    "neck.glue_line": ("neck.make", ("glued",)),
    **{f"neck.rod_{name}": ("neck.rod", ("headstock", "heel")) for name in (
        "depth", "width", "end")},
    **{f"neck.rod_{name}": ("neck.rod", ("heel",)) for name in (
        "tool", "tool_height", "tool_length")},
    **{f"body.{name}": ("body.outline", ("own",)) for name in (
        "tail", "lower_width", "waist_width", "upper_width", "block_treble", "block_bass",
        "cutaway_treble", "cutaway_bass")},
    **{f"body.dome_{name}": ("body.top", ("domed",)) for name in ("radius", "centre")},
    **{f"body.carve_{name}": ("body.top", ("carved",)) for name in (
        "slope", "radius_along", "radius_across")},
    **{f"body.top_{name}": ("body.top", ("sampled",)) for name in (
        "step", "from_x", "from_y", "error")},
    **{f"plate.{name}": ("plate.cover", ("surround", "treble side")) for name in (
        "thickness", "clearance", "margin", "reach")},
    "screws.insert_length": ("screws.fixing", ("insert",)),
}  # fmt: skip
"""Measures of something that not every joint has, and the choices with which it has it."""


class MeasuredTable(QtGui.QTableWidget):
    """Rows of parameters; ``changed`` is sent when one was typed. Empty cells count as nominal."""

    changed = QtCore.Signal()

    def __init__(self, *, units: Units) -> None:
        super().__init__(len(KEYS), 3)
        self.setObjectName("NeckFitMeasured")
        self._units, self._is_filling = units, False
        self.setHorizontalHeaderLabels([tr("Measure"), tr("nominal"), tr("measured")])
        self.verticalHeader().hide()
        self.horizontalHeader().setSectionResizeMode(QtGui.QHeaderView.Stretch)
        for row in range(len(KEYS)):
            self._set(row, NOMINAL, "")
        self.retell()
        self.itemChanged.connect(self._typed)

    def retell(self) -> None:
        """Name the measures, and say what they mean, in the language of now."""
        for row, key in enumerate(KEYS):
            p = ALL[key]
            self._set(row, NAME, tr(name_of(key)), tip=p.meaning)
            typed = self.item(row, TYPED)
            self._set(row, TYPED, typed.text() if typed else "", tip=p.where, editable=True)

    def tell(self, nominal: Mapping[str, Any]) -> None:
        """Show what is stated now."""
        for row, key in enumerate(KEYS):
            value = nominal.get(key)
            text = "-"
            if isinstance(value, float | int):
                text = show_value(float(value), kind=ALL[key].kind, units=self._units)
            self._set(row, NOMINAL, text)
            self.setRowHidden(row, not self._is_there(key, nominal))  # Qt's way

    def _is_there(self, key: str, nominal: Mapping[str, Any]) -> bool:
        """Whether the joint has what a measure tells of; what was typed is always shown."""
        choice, wanted = SEEN_WHERE.get(key, ("", ()))
        is_typed = bool(self.item(KEYS.index(key), TYPED).text().strip())
        return is_typed or not choice or str(nominal.get(choice)) in wanted

    def take(self, values: Mapping[str, Any]) -> None:
        """Fill in values (inner units) as if typed; keys that have no row are left out."""
        for row, key in enumerate(KEYS):
            value = values.get(key)
            if value is not None:
                text = entry_value(float(value), kind=ALL[key].kind, units=self._units)
                self._set(row, TYPED, text, editable=True)

    def values(self) -> dict[str, float]:
        """What was typed, in inner units. Raises BadInput, naming the measure."""
        found: dict[str, float] = {}
        for row, key in enumerate(KEYS):
            text = self.item(row, TYPED).text().strip()
            if text:
                found[key] = _read(key, text, self._units)
        return found

    def _set(
        self, row: int, column: int, text: str, *, tip: str = "", editable: bool = False
    ) -> None:
        self._is_filling = True
        try:
            item = QtGui.QTableWidgetItem(text)
            if not editable:
                item.setFlags(QtCore.Qt.ItemIsEnabled | QtCore.Qt.ItemIsSelectable)
            item.setToolTip(tr(tip) if tip else text)
            self.setItem(row, column, item)
        finally:
            self._is_filling = False

    def _typed(self, _item: Any) -> None:
        if not self._is_filling:
            self.changed.emit()


def _read(key: str, text: str, units: Units) -> float:
    p = ALL[key]
    value = read_value(plain(text), kind=p.kind, bare=units, name=key)
    in_bounds(p, value, raw=text, name=key, units=units)
    return float(value)  # type: ignore[arg-type] # these kinds are numbers

"""The Fit panel's widgets and their order; what they do is told in ``fit``."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

from PySide import QtCore, QtGui

from ...job.quantity import Units
from ..sentences import say
from ..translate import tr
from .docked import above, fill, widen
from .fit_details import Details
from .fit_headline import Headline
from .fit_knob import Knob
from .fit_list import FindingsView
from .fit_rows import Filter, Row, closest_first, filters

WIDTH = 340
"""Least width [pixel] in which a row's state and figures stand side by side."""


def titles() -> dict[str, str]:
    """The parameters that can be turned here, by key, in the order shown."""
    return {
        "pocket.depth": tr("Pocket depth"),
        "pocket.angle": tr("Pocket angle"),
        "shim.wall": tr("Shim at the end wall"),
        "shim.mouth": tr("Shim at the mouth"),
        "shim.strip": tr("Shim strip"),
        "plate.thickness": tr("Cover plate"),
    }


def keys_of(stated: dict[str, Any]) -> list[str]:
    """Those of them that the joint has, by ``stated`` (complete values by key)."""
    found = ["pocket.depth", "pocket.angle"]
    found += {"wedge": ["shim.wall", "shim.mouth"], "strip": ["shim.strip"]}.get(
        str(stated["shim.make"]), []
    )
    return found + (["plate.thickness"] if stated["plate.cover"] != "none" else [])


class FitForm(QtGui.QWidget):
    """Verdict, knobs, list and details, from the top down."""

    def __init__(self, keys: list[str], *, title: str, units: Units) -> None:
        super().__init__()
        self._title = title
        self.setWindowTitle(tr("Fit: {}").format(title))
        self.setObjectName("NeckFitFitPanel")
        self.setMinimumWidth(WIDTH)
        self._rows: list[Row] = []
        self.headline, self.knobs = Headline(), {
            key: Knob(key, title=titles()[key], units=units) for key in keys
        }  # fmt: skip
        self.notice = QtGui.QLabel()
        self.notice.setObjectName("NeckFitNotice")
        self.notice.setWordWrap(True)
        self.notice.hide()
        self.filter = QtGui.QComboBox()
        self.filter.setObjectName("NeckFitFilter")
        self._filters: tuple[Filter, ...] = filters()
        self.filter.addItems([kind.words for kind in self._filters])
        self.filter.setAccessibleName(tr("Show"))
        self.list, self.details = FindingsView(), Details(units=units)
        self.filter.currentIndexChanged.connect(lambda _: self._list())
        self._lay_out()

    def _lay_out(self) -> None:
        # Close together: on a screen of 800 pixels the details are seen without scrolling.
        column = QtGui.QVBoxLayout(self)
        column.setContentsMargins(9, 4, 9, 4)
        column.setSpacing(3)
        column.addWidget(self.headline)
        for knob in self.knobs.values():
            column.addWidget(knob)
        column.addWidget(self.notice)
        row = QtGui.QHBoxLayout()
        row.addWidget(QtGui.QLabel(tr("Show")))
        row.addWidget(self.filter, 1)
        column.addLayout(row)
        split = QtGui.QSplitter(QtCore.Qt.Vertical)
        split.setChildrenCollapsible(False)
        split.addWidget(self.list)
        split.addWidget(self.details)
        split.setSizes([190, 190])
        self.list.setMinimumHeight(84)
        self.details.setMinimumHeight(95)
        column.addWidget(split, 1)
        order = [w for knob in self.knobs.values() for w in (knob.box, knob.slider)]
        order += [self.filter, self.list, self.details]
        for before, after in pairwise(order):
            QtGui.QWidget.setTabOrder(before, after)

    def tell(self, rows: list[Row], *, meanwhile: bool) -> None:
        """Show findings; ``meanwhile``: by closed forms, solids were not asked yet."""
        self._rows, self._is_meanwhile = rows, meanwhile
        self.headline.tell(rows, meanwhile=meanwhile)
        self._list()

    def _list(self) -> None:
        kind = self._filters[max(self.filter.currentIndex(), 0)]
        listed = [row for row in self._rows if kind.holds(row)]
        closest = closest_first(self._rows)
        self.list.put(closest if closest and kind is self._filters[0] else listed)
        for index, each in enumerate(self._filters):
            words = f"{each.words} ({sum(map(each.holds, self._rows))})"
            if closest and not index:
                words = f"{tr('all fits; the closest first')} ({len(closest)})"
            if self.filter.itemText(index) != words:
                self.filter.setItemText(index, words)
        self.detail()

    def detail(self) -> None:
        """Tell of the row that is selected."""
        row = next((r for r in self._rows if r.id == self.list.current), None)
        self.details.tell(row, meanwhile=self._is_meanwhile)

    def retell(self) -> None:
        """Say everything in the language of now; the findings are told anew after this."""
        self.setWindowTitle(tr("Fit: {}").format(self._title))
        for key, knob in self.knobs.items():
            knob.retell(titles()[key])
        self._filters = filters()
        for part in (self.headline, self.details, self.list.painter):
            part.forget()

    def list_everything(self) -> None:
        """Narrow the list to nothing: what was picked in the 3D view may be of any kind."""
        self.filter.setCurrentIndex(1)

    def say(self, sentence: str) -> None:
        """Say one sentence above the list; nothing where it is empty."""
        self.notice.setText(say(sentence) if sentence else "")
        if self.notice.isHidden() == bool(sentence):
            self.notice.setVisible(bool(sentence))
            self._fill()

    def make_room(self) -> None:
        """Widen the docked window that the form stands in, and fill it down to its end."""
        widen(self, WIDTH)
        area = above(self, QtGui.QAbstractScrollArea)
        if area is not None:
            area.viewport().installEventFilter(self)
            self._fill()

    def eventFilter(self, _watched: Any, event: Any) -> bool:  # noqa: N802 (Qt's name)
        """Whenever the panel's window is resized, fill it anew."""
        if event.type() == QtCore.QEvent.Resize:
            self._fill()
        return False

    def _fill(self) -> None:
        fill(self)

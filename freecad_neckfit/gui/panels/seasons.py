"""The joint through the owner's year."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from PySide import QtGui

from ...decide.climate import MONTHS, Climate, climate_of, read_climate
from ...decide.pictures.year import draw_year
from ...decide.year import Year, find_year
from ...decide.year_text import year_lines
from ...job.resolve import complete
from ..figures import local_lines
from ..translate import tr
from .decide_dialog import DecideDialog, show, told
from .decide_picture import PictureView


class SeasonsDialog(DecideDialog):
    """Shows side clearance, gap and grip by month."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Through the year"), name="NeckFitSeasons")
        self.year: Year | None = None
        self.owner: Climate | None = None
        self.shop: Climate | None = None
        self.month = QtGui.QComboBox()
        self.month.addItems([tr("as stated"), *map(tr, MONTHS)])
        self.month.setEnabled(False)
        self.why = QtGui.QLabel(tr("Choose the shop's room first: it tells the moisture by month."))
        self.why.setObjectName("NeckFitWhy")
        self.month.setObjectName("NeckFitMonth")
        self.month.setToolTip(self.why.text())
        self.month.currentIndexChanged.connect(lambda _: self.look_again())
        self.picture = PictureView(name="NeckFitPicture")
        self.words = QtGui.QPlainTextEdit()
        self.words.setObjectName("NeckFitWords")
        self.words.setReadOnly(True)  # Qt's own
        self.words.setFont(QtGui.QFont("monospace"))
        split = QtGui.QHBoxLayout()
        split.addWidget(self.picture, 1)
        split.addWidget(self.words, 1)
        self.resize(1160, 680)  # room for the table of months beside the picture
        row = QtGui.QHBoxLayout()
        row.addWidget(QtGui.QLabel(tr("Cut in")))
        row.addWidget(self.month)
        row.addWidget(self.why)
        row.addStretch(1)
        self.body.addLayout(row)
        self.body.addLayout(split, 1)
        self.button(tr("Owner's room…"), self._owner)
        self.button(tr("Shop's room…"), self._shop)
        self.button(tr("Save picture…"), self.save_picture)

    def look(self) -> None:
        """Follow the year anew."""
        stated = self.stated()
        owner = self.owner or climate_of(complete(stated))
        month = self.month.currentIndex() - 1
        is_cut_there = self.shop is not None and month >= 0
        cut = float(self.shop.moisture[month]) if self.shop and is_cut_there else None
        self.year = find_year(stated, owner, cut=cut)
        self.picture.show_svg(draw_year(self.year, name=self.label, units=self.units))
        lines = year_lines(self.year, name=self.label, units=self.units)
        self.words.setPlainText(local_lines(lines))

    @told
    def _owner(self) -> None:
        path = self._file_to_read()
        if path:
            self.owner = read_climate(Path(path))
            self.look()

    @told
    def _shop(self) -> None:
        path = self._file_to_read()
        if path:
            self.shop = read_climate(Path(path))
            self.month.setEnabled(True)  # Qt's own
            self.month.setToolTip(tr("The wood has the moisture of this month when it is cut."))
            self.why.hide()
            self.look()

    def _file_to_read(self) -> str:
        kinds = tr("Month, temperature, humidity (*.csv)")
        answer = QtGui.QFileDialog.getOpenFileName(self, self.windowTitle(), "", kinds)
        return str(answer[0] if isinstance(answer, tuple) else answer)


def open_seasons(joint: Any) -> SeasonsDialog:
    """Open the year of a joint."""
    dialog = SeasonsDialog(joint)
    show(dialog)
    return dialog

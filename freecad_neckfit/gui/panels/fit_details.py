"""What the chosen finding costs, how to mend it, and the two readings that it rests on."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from typing import Any

from PySide import QtCore, QtGui

from ...job.quantity import Units
from ...run.finding import State
from ...run.words import mending_in
from ..annotations.notes import figure
from ..sentences import say
from ..translate import tr
from .fit_rows import Row, only_solids


class Details(QtGui.QTextBrowser):
    """Text on one finding."""

    def __init__(self, *, units: Units) -> None:
        super().__init__()
        self._units = units
        self._told: tuple[Row, bool] | None = None
        self.setObjectName("NeckFitDetails")
        self.document().setDocumentMargin(7)
        self.setOpenLinks(False)
        # So that the keyboard reaches it and leaves it, in every version of Qt.
        self.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.setTabChangesFocus(True)
        self.setHorizontalScrollBarPolicy(QtCore.Qt.ScrollBarAlwaysOff)

    def forget(self) -> None:
        """Whatever is told next is told anew: the language was switched."""
        self._told = None

    def tell(self, row: Row | None, *, meanwhile: bool) -> None:
        """Tell of a finding; ``meanwhile``: solids have not been asked since the last change."""
        if row is None:
            self._told = None
            self.setHtml(f"<i>{escape(tr('Choose a finding to see what it costs.'))}</i>")
            return
        if self._told == (row, meanwhile):
            return
        self._told = row, meanwhile
        self.setHtml("".join(_paragraphs(row, meanwhile, self._units)))


def _paragraphs(row: Row, meanwhile: bool, units: Units) -> list[str]:
    record, lines = row.record, [f"<b>{escape(row.title)}</b>"]
    if row.note.wanted:
        lines[0] += f" ({escape(row.note.wanted)})"
    if not row.waits:
        if record["consequence"]:
            lines.append(escape(say(record["consequence"])))
        # The document keeps sentences in the joint's units, which need not be the screen's.
        mending = mending_in(record, units)
        if mending:
            lines.append(f"<b>{escape(tr('To mend it:'))}</b> {escape(say(mending))}")
        if record["reason"]:
            lines.append(f"<b>{escape(say(record['reason']))}</b>")
    lines.append("<br>".join(map(escape, _readings(row, meanwhile, units))))
    return [f"<p style='margin:0 0 5px 0'>{line}</p>" for line in lines]


def _readings(row: Row, meanwhile: bool, units: Units) -> tuple[str, str]:
    """Both readings, each with where it comes from and what it says."""
    record = row.record
    if row.id in only_solids():
        closed = tr("By calculation: not told; only the solids can tell.")
    else:
        closed = tr("By calculation: {}").format(_reading(record["closed_form"], record, units))
    if meanwhile:
        return closed, tr("Measured on the solids: on release.")
    if record["state"] == State.DISAGREES.value:
        words = tr("Measured on the solids: {} - the two disagree.")
    else:
        words = tr("Measured on the solids: {}")
    return closed, words.format(_reading(record["solids"], record, units))


def _reading(reading: Mapping[str, Any] | None, record: Mapping[str, Any], units: Units) -> str:
    if reading is None or reading["value"] is None:
        return tr("does not tell here")
    return figure(reading["value"], record["unit"], units)

"""The answer first, and by which of the two ways it was found."""

from __future__ import annotations

from collections.abc import Sequence
from html import escape

from PySide import QtCore, QtGui

from ...run.finding import State
from ..annotations.notes import DOUBTFUL, headline
from ..annotations.palette import Colour, look_of
from ..translate import tr
from .fit_rows import Row


class Headline(QtGui.QWidget):
    """Verdict on its state's colour, the strongest reason, and what it rests on."""

    def __init__(self) -> None:
        super().__init__()
        self.answer, self.why, self.by = QtGui.QLabel(), QtGui.QLabel(), QtGui.QLabel()
        self.answer.setObjectName("NeckFitAnswer")
        font = self.answer.font()
        font.setBold(True)
        font.setPointSizeF(font.pointSizeF() * 1.4)
        self.answer.setFont(font)
        self.answer.setContentsMargins(8, 2, 8, 2)
        self.by.setContentsMargins(8, 1, 8, 1)
        column = QtGui.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        for label in (self.answer, self.by, self.why):
            label.setWordWrap(True)
            label.setTextFormat(QtCore.Qt.RichText)
            column.addWidget(label)
        # Room for two lines from the start: what stands below must not jump while it is turned.
        self.why.setMinimumHeight(2 * self.why.fontMetrics().lineSpacing())
        self.why.setAlignment(QtCore.Qt.AlignTop | QtCore.Qt.AlignLeft)
        self._shown: tuple[str, str, bool] | None = None

    def forget(self) -> None:
        """Whatever is told next is told anew: the language was switched."""
        self._shown = None

    def tell(self, rows: Sequence[Row], *, meanwhile: bool) -> None:
        """Tell the verdict on these findings; ``meanwhile``: by closed forms only."""
        judged = [row for row in rows if not row.waits]
        state = _state(judged)
        answer = headline(row.note for row in judged)[0]
        why = _reason(judged, state)
        if self._shown == (answer, why, meanwhile):
            return
        self._shown = answer, why, meanwhile
        look = look_of(state)
        mark = {State.FITS: "+", State.INTERFERES: "X"}.get(state, "?")
        self.answer.setText(f"{mark} {escape(answer)}")
        _paint(self.answer, look.fill, look.ink)
        self.why.setText(why)
        if meanwhile:
            self.by.setText(f"<b>{escape(REMARK())}</b>")
            _paint(self.by, (0.94, 0.89, 0.26), (0.0, 0.0, 0.0))
        else:
            self.by.setText(escape(tr("by calculation and measured on the solids")))
            _paint(self.by, None, None)


def REMARK() -> str:  # noqa: N802 # a text that follows the language
    """How findings are marked that solids have not confirmed."""
    return tr("by calculation - solids are measured on release")


def _state(rows: Sequence[Row]) -> State:
    if any(row.note.met is False for row in rows):
        return State.INTERFERES
    doubt = any(row.note.state in DOUBTFUL for row in rows)
    return State.UNKNOWN if doubt else State.FITS


def _reason(rows: Sequence[Row], state: State) -> str:
    """The strongest reason, and how many more there are."""
    if state is State.FITS or not rows:
        return ""
    first = rows[0]
    alike = [r for r in rows if (r.note.met is False if state is State.INTERFERES
                                 else r.note.state in DOUBTFUL)]  # fmt: skip
    more = tr(" (and {} more)").format(len(alike) - 1) if len(alike) > 1 else ""
    said = f"{first.note.word} {first.note.value}".rstrip()
    return f"<b>{escape(first.title)}</b>: {escape(said)}{escape(more)}"


def _paint(label: QtGui.QLabel, fill: Colour | None, ink: Colour | None) -> None:
    """By a style sheet: where panels lie over the view, FreeCAD's own would win over a palette."""
    sheet = ""
    if fill is not None and ink is not None:
        ground, letters = (", ".join(str(round(255 * a)) for a in c) for c in (fill, ink))
        sheet = f"background-color: rgb({ground}); color: rgb({letters});"
    label.setStyleSheet(sheet)

"""How often the joint fails within its limits, and what to draw in first."""

from __future__ import annotations

from typing import Any

from PySide import QtGui

from ...decide.pictures.tolerances import draw_failures
from ...decide.tolerances.dimension import dimensions
from ...decide.tolerances.report import report_lines
from ...decide.tolerances.shapes import Shape
from ...decide.tolerances.study import Study, study
from ...job.errors import BadInput
from ..translate import tr
from .decide_dialog import DecideDialog, show
from .decide_picture import PictureView
from .decide_wait import waiting

DRAWS = (100_000, 1_000_000, 10_000_000)


class TolerancesDialog(DecideDialog):
    """Draws joints at random and shows what fails, and why."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Tolerances"), name="NeckFitTolerances")
        self.found: Study | None = None
        self.draws, self.shape, self.general = (QtGui.QComboBox() for _ in range(3))
        for count in DRAWS:
            self.draws.addItem(f"{count:,}", count)
        for shape in Shape:
            self.shape.addItem(tr(shape.value), shape.value)
        self.general.addItem(tr("as stated"), "")
        for word in "fmc":
            self.general.addItem(f"ISO 2768-{word}", word)
        self.wish = QtGui.QDoubleSpinBox()
        self.wish.setObjectName("NeckFitWish")
        self.wish.setRange(0.0, 50.0)
        self.wish.setValue(1.0)
        self.wish.setSuffix(" %")
        self.picture = PictureView(name="NeckFitPicture")
        self.words = QtGui.QPlainTextEdit()
        self.words.setObjectName("NeckFitWords")
        self.words.setReadOnly(True)  # Qt's own
        self.words.setLineWrapMode(QtGui.QPlainTextEdit.NoWrap)
        self.words.setFont(QtGui.QFont("monospace"))
        self.body.addLayout(self._fields())
        self.body.addWidget(self.picture, 3)
        self.body.addWidget(self.words, 2)
        self.button(tr("Save picture…"), self.save_picture)

    def _fields(self) -> Any:
        row = QtGui.QHBoxLayout()
        for words, field in (
            (tr("Joints drawn"), self.draws),
            (tr("Spread"), self.shape),
            (tr("Other dimensions"), self.general),
            (tr("Wished share of failures"), self.wish),
        ):
            row.addWidget(QtGui.QLabel(words))
            row.addWidget(field)
        row.addStretch(1)
        return row

    def look(self) -> None:
        """Draw anew."""
        general = str(self.general.itemData(self.general.currentIndex())) or None
        shape = Shape(str(self.shape.itemData(self.shape.currentIndex())))
        base = self.job().base
        dims = dimensions(base, general=general, shape=shape)
        if not dims:
            raise BadInput(tr("No dimension of this joint has limits."))
        wish = float(self.wish.value()) / 100
        count = int(self.draws.itemData(self.draws.currentIndex()))
        with waiting(self, tr("Drawing joints")) as progress:
            self.found = study(base.stated, dims, wish=wish, draws=count, progress=progress)
        found = self.found
        svg = draw_failures(found.simulation, name=self.label, units=self.units)
        self.picture.show_svg(svg)
        lines = report_lines(
            self.label, found.linear, found.simulation, found.steps, found.alone,
            wish=wish, units=self.units,
        )  # fmt: skip
        self.words.setPlainText("\n".join(lines))


def open_tolerances(joint: Any) -> TolerancesDialog:
    """Open the study of a joint's limits."""
    dialog = TolerancesDialog(joint)
    show(dialog)
    return dialog

"""How often the joint fails within its limits, which are typed here, and what to draw in first."""

from __future__ import annotations

from typing import Any

import numpy as np
from PySide import QtGui

from ...decide.pictures.tolerances import draw_failures
from ...decide.tolerances.dimension import READ, Dimension, dimensions, limits_of
from ...decide.tolerances.report import EXPLAINED, report_lines
from ...decide.tolerances.simulate import FEWEST_DRAWS
from ...decide.tolerances.study import Study, study
from ...job.errors import BadInput, NeckFitError
from ...job.joint import Job
from ...job.parameters import ALL
from ...job.parameters.shop import GENERAL, SPREADS
from ...job.standards import general_angle_tolerance, general_tolerance
from ..figures import local_lines, locale, whole_number
from ..translate import tr
from .decide_apply import keep, keep_tolerance, take_over
from .decide_dialog import DecideDialog, show, told
from .decide_picture import PictureView
from .decide_wait import waiting
from .limits_add import AddBox
from .limits_cells import name_of, typed_limits, typed_value
from .limits_table import PLUS, SPREAD, VALUE, LimitsTable, Line

DRAWS = (FEWEST_DRAWS, 1_000_000, 10_000_000)
SMALLEST = 0.5
"""Smallest size [mm] that has a general tolerance."""


class TolerancesDialog(DecideDialog):
    """Draws joints at random and shows what fails, and why; limits are typed into its table."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Tolerances"), name="NeckFitTolerances")
        self.found: Study | None = None
        self.draws, self.shape, self.general = (QtGui.QComboBox() for _ in range(3))
        for count in DRAWS:
            self.draws.addItem(whole_number(count), count)
        for word in SPREADS:
            self.shape.addItem(tr(word), word)
        for word in GENERAL:
            self.general.addItem(tr("do not vary") if word == "none" else f"ISO 2768-{word}", word)
        self.wish = QtGui.QDoubleSpinBox()
        self.wish.setObjectName("NeckFitWish")
        self.wish.setRange(0.0, 50.0)
        self.wished = 1.0
        self.wish.setValue(self.wished)
        self.wish.setSuffix(" %")
        self.wish.setLocale(locale())
        self.limits, self.add = LimitsTable(), AddBox()
        self.picture = PictureView(name="NeckFitPicture")
        self.words = QtGui.QPlainTextEdit()
        self.words.setObjectName("NeckFitWords")
        self.words.setReadOnly(True)  # Qt's own
        self.words.setLineWrapMode(QtGui.QPlainTextEdit.NoWrap)
        self.words.setFont(QtGui.QFont("monospace"))
        self.words.setToolTip("\n".join(tr(line) for line in EXPLAINED))
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        self.resize(1180, 740)  # table and picture side by side
        left, upper = QtGui.QVBoxLayout(), QtGui.QHBoxLayout()
        left.addWidget(self.limits, 1)
        row = QtGui.QHBoxLayout()
        row.addWidget(self.add, 1)
        self.default = QtGui.QPushButton(tr("Back to its default"))
        self.default.setAutoDefault(False)  # Enter belongs to the cells
        self.default.setToolTip(tr("Let the selected dimension have its default limits again."))
        row.addWidget(self.default)
        left.addLayout(row)
        upper.addLayout(left, 7)  # wide enough for the names of dimensions in every language
        upper.addWidget(self.picture, 5)
        self.body.addLayout(self._fields())
        self.body.addLayout(upper, 3)
        self.body.addWidget(self.words, 2)
        self.button(tr("Save picture…"), self.save_picture)

    def _fields(self) -> Any:
        row = QtGui.QHBoxLayout()
        for words, field, tip in (
            (tr("Joints drawn"), self.draws, tr("More draws tell small shares more surely.")),
            (tr("Usual spread"), self.shape, tr("Of every dimension that states no other one.")),
            (
                tr("Dimensions without limits"),
                self.general,
                tr("General tolerance of what the shop makes and states no limits of."),
            ),
            (tr("Wished share of failures"), self.wish, tr("What the limits are drawn in for.")),
        ):
            field.setToolTip(tip)
            row.addWidget(QtGui.QLabel(words))
            row.addWidget(field)
        row.addStretch(1)
        return row

    def _connect(self) -> None:
        self.limits.typed.connect(self._typed)
        self.add.chosen.connect(self._add)
        self.default.clicked.connect(lambda *_: self._to_default())
        for key, box in (("shop.spread", self.shape), ("shop.general", self.general)):
            box.activated.connect(lambda _, key=key, box=box: self._shop(key, box))
        self.draws.activated.connect(lambda _: self.look_again())
        self.wish.editingFinished.connect(self._wished)

    def look(self) -> None:
        """Show the limits and draw anew."""
        base = self.job().base
        self._put(self.shape, base.values["shop.spread"])
        self._put(self.general, base.values["shop.general"])
        self._fill(base)
        dims = dimensions(base)
        if not dims:
            raise BadInput(tr("No dimension of this joint has limits; let one vary first."))
        self.wished = float(self.wish.value())
        wish = self.wished / 100
        count = int(self.draws.itemData(self.draws.currentIndex()))
        with waiting(self, tr("Drawing joints")) as progress:
            self.found = study(base.stated, dims, wish=wish, draws=count, progress=progress)
        self.limits.explain(_by_key(dims, list(self.found.simulation.influence)))
        self._tell(self.found)

    def retell(self) -> None:
        """Say anew what was found."""
        self.wish.setLocale(locale())
        for at in range(self.draws.count()):
            self.draws.setItemText(at, whole_number(self.draws.itemData(at)))
        self.words.setToolTip("\n".join(tr(line) for line in EXPLAINED))
        self._fill(self.job().base)
        if self.found is None:
            return
        dims, shares = self.found.simulation.dims, list(self.found.simulation.influence)
        self.limits.explain(_by_key(tuple(dims), shares))
        self._tell(self.found)

    def _tell(self, found: Study) -> None:
        svg = draw_failures(found.simulation, name=self.label, units=self.units)
        self.picture.show_svg(svg)
        lines = report_lines(
            self.label, found.linear, found.simulation, found.steps, found.alone,
            wish=self.wished / 100, units=self.units,
        )  # fmt: skip
        self.words.setPlainText(local_lines(lines))

    def _fill(self, base: Job) -> None:
        stated = {*base.stated_tolerances, *base.spreads}
        lines = [
            Line(key, _single(base, key), pair, base.spreads.get(key, ""), key in stated)
            for key, pair in self._limits(base).items()
        ]
        usual = str(base.values["shop.spread"])
        self.limits.fill(lines, usual=usual, units=self.units)
        self.add.offer(line.key for line in lines)

    def _limits(self, base: Job) -> dict[str, tuple[float, float]]:
        """Limits of every dimension that varies, or is stated not to, in the parameters' order."""
        found = limits_of(base)
        varying = {dim.key for dim in dimensions(base)} | (set(base.stated_tolerances) & READ)
        return {key: found[key] for key in ALL if key in found and key in varying}

    @told
    def _typed(self, key: str, column: int, text: str) -> None:
        """Take over what was typed into a cell; one step of undo."""
        base = self.job().base
        try:
            self._take(base, key, column, text)
        except NeckFitError:
            self._fill(base)
            raise
        self.look()

    def _take(self, base: Job, key: str, column: int, text: str) -> None:
        if column == VALUE:
            value = typed_value(key, text, self.units)
            with waiting(self, tr("Taking it over")) as progress:
                take_over(self.joint, {key: value}, name=name_of(key), progress=progress)
            return
        name = tr("Limits of {}").format(name_of(key))
        limits = self._limits(base)[key]
        if column == SPREAD:
            stated = base.stated_tolerances.get(key)
            keep_tolerance(self.joint, key, stated, text or None, name=name)
            return
        limits = typed_limits(key, text, limits, is_plus=column == PLUS, units=self.units)
        keep_tolerance(self.joint, key, limits, base.spreads.get(key), name=name)

    @told
    def _add(self, key: str) -> None:
        """Let one more dimension vary, within a general tolerance of class m to begin with."""
        pair = _first_limits(self.job().base, key)
        keep_tolerance(self.joint, key, pair, None, name=tr("Limits of {}").format(name_of(key)))
        self.look()
        self.limits.setCurrentCell(self.limits.row_of(key), PLUS)

    @told
    def _to_default(self) -> None:
        key = self.limits.key
        if not key:
            self.say(tr("Select a dimension first."))
            return
        name = tr("Limits of {}").format(name_of(key))
        keep_tolerance(self.joint, key, None, None, name=name)
        self.look()

    @told
    def _shop(self, key: str, box: Any) -> None:
        """What the shop states of all dimensions; one step of undo."""
        keep(self.joint, {key: str(box.itemData(box.currentIndex()))}, name=tr("Tolerances"))
        self.look()

    def _wished(self) -> None:
        # Sent also when the field merely loses the keyboard.
        if self.wished != float(self.wish.value()):
            self.look_again()

    @staticmethod
    def _put(box: Any, word: str) -> None:
        box.setCurrentIndex(box.findData(word))


def _single(base: Job, key: str) -> float | None:
    value = base.values[key]
    return None if value is None or np.ndim(value) else float(value)


def _by_key(dims: tuple[Dimension, ...], shares: list[float]) -> dict[str, float]:
    """Shares of the failures by parameter; screws count together."""
    found: dict[str, float] = {}
    for dim, share in zip(dims, shares, strict=True):
        found[dim.key] = found.get(dim.key, 0.0) + float(share)
    return found


def _first_limits(base: Job, key: str) -> tuple[float, float]:
    """Limits to begin with: the general tolerance of class m."""
    value = _single(base, key)
    if ALL[key].kind.unit == "°":
        side = float(base.values["pocket.length"])
        size = general_angle_tolerance(shorter_side=side, tolerance_class="m")
    else:
        size = general_tolerance(size=max(abs(value or 0.0), SMALLEST), tolerance_class="m")
    return -size, size


def open_tolerances(joint: Any) -> TolerancesDialog:
    """Open the study of a joint's limits."""
    dialog = TolerancesDialog(joint)
    show(dialog)
    return dialog

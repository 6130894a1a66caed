"""The window of depths and angles: a picture to click on, and a button that takes it over."""

from __future__ import annotations

from typing import Any

from PySide import QtGui

from ...decide.axes import ANGLE, DEPTH, PLATE, SHIM
from ...decide.conflicts import Conflict, find_conflicts
from ...decide.mending_text import conflict_lines
from ...decide.pictures.window import Picture, draw_window, stated_lines
from ...decide.shop import Steps
from ...decide.window import Window, find_window
from ...decide.window_text import window_lines
from ...job.resolve import complete
from ..figures import compact_length, local_lines, show_value
from ..translate import tr
from .decide_apply import keep_as_option, take_over
from .decide_dialog import DecideDialog, show, told
from .decide_picture import PictureView
from .decide_wait import waiting


class WindowDialog(DecideDialog):
    """Shows where every demand holds; a click tries a place, without touching the document."""

    def __init__(self, joint: Any) -> None:
        super().__init__(joint, title=tr("Depths and angles that work"), name="NeckFitWindow")
        self.window_found: Window | None = None
        self.drawn: Picture | None = None
        self.tried: tuple[float, float] | None = None
        self.steps = Steps()
        self.conflicts: tuple[Conflict, ...] = ()
        self.second = QtGui.QComboBox()
        self.second.setObjectName("NeckFitSecondAxis")
        self.second.currentIndexChanged.connect(lambda _: self.look_again())
        self.snap = QtGui.QCheckBox(tr("Whole steps of the shop"))
        self.snap.setChecked(True)  # Qt's own
        self.picture = PictureView(name="NeckFitPicture")
        self.picture.clicked.connect(self._click)
        self.words = QtGui.QPlainTextEdit()
        self.words.setObjectName("NeckFitWords")
        self.words.setReadOnly(True)  # Qt's own
        self.words.setMaximumHeight(150)
        top = QtGui.QHBoxLayout()
        top.addWidget(QtGui.QLabel(tr("Depth and")))
        top.addWidget(self.second)
        top.addWidget(self.snap)
        top.addSpacing(20)
        top.addWidget(QtGui.QLabel(tr("Click into the picture to try a place.")))
        top.addStretch(1)
        self.body.addLayout(top)
        self.body.addWidget(self.picture, 1)
        self.body.addWidget(self.words)
        self.take = self.button(tr("Take over the place clicked"), self._take)
        self.option = self.button(tr("Keep as an option"), self._keep)
        self.button(tr("Shop's steps…"), self.ask_shop)
        self.button(tr("Save picture…"), self.save_picture)
        self._fill_axes()

    def _fill_axes(self) -> None:
        self.second.blockSignals(True)  # Qt's own
        self.second.addItem(tr("pocket angle"), ANGLE)
        self.second.addItem(tr("shim"), SHIM)
        if complete(self.stated())["plate.cover"] != "none":
            self.second.addItem(tr("plate thickness"), PLATE)
        self.second.blockSignals(False)  # Qt's own

    def look(self) -> None:
        """Find the window anew."""
        second = str(self.second.itemData(self.second.currentIndex()))
        stated = self.stated()
        self.steps = Steps.of(complete(stated))
        with waiting(self, tr("Looking for depths and angles that work")) as progress:
            self.window_found = find_window(stated, second=second)
            self.conflicts = find_conflicts(self.window_found, progress=progress)
        self.tried = None
        self._draw()

    def retell(self) -> None:
        """Draw what was found, and the place that was tried."""
        if self.window_found is not None:
            self._draw()

    def _draw(self) -> None:
        window = self.window_found
        assert window is not None  # noqa: S101  (drawn after it was found)
        self.drawn = draw_window(
            window,
            name=self.label,
            steps=self.steps,
            tried=self.tried,
            conflicts=self.conflicts,
            units=self.units,
        )
        self.picture.show_svg(self.drawn.svg)
        for made in (self.take, self.option):
            made.setEnabled(self.tried is not None)
        lines = window_lines(window, name=self.label, units=self.units, steps=self.steps)
        lines += conflict_lines(self.conflicts, self.units)
        self.words.setPlainText(local_lines(self._tried_lines() or lines))

    def _tried_lines(self) -> list[str]:
        if self.tried is None or self.window_found is None:
            return []
        lines = stated_lines(self.window_found, self.units, at=self.tried, most=6)
        return [tr("Tried: {}").format(lines[0]), *(f"  {line}" for line in lines[1:])]

    @told
    def _click(self, x: float, y: float) -> None:
        if self.drawn is None or self.window_found is None:
            return
        depth, second = self.drawn.frame.values((x, y))
        if self.snap.isChecked():
            depth = self.steps.nearest(DEPTH, depth)
            second = self.steps.nearest(self.window_found.y.name, second)
        axes = self.window_found.x, self.window_found.y
        if all(a.low <= v <= a.high for a, v in zip(axes, (depth, second), strict=True)):
            self.tried = depth, second
            self._draw()

    def _place(self) -> tuple[str, dict[str, Any]]:
        """What the place that was tried is called, and what it states."""
        assert self.tried is not None and self.window_found is not None  # noqa: S101, PT018
        x, y = self.window_found.x, self.window_found.y
        said = compact_length(self.tried[0], units=self.units)
        other = show_value(self.tried[1], kind=y.kind, units=self.units)
        name = tr("Pocket depth {}, {}").format(said, f"{tr(y.name)} {other}")
        return name, x.taken(self.tried[0]) | y.taken(self.tried[1])

    @told
    def _keep(self) -> None:
        """Keep the place that was tried as an option of the joint."""
        if self.tried is None or self.window_found is None:
            return
        name, values = self._place()
        called = keep_as_option(self.joint, self.stated() | values, name=name)
        self.say(tr("Kept as the option {}.").format(called))

    @told
    def _take(self) -> None:
        """Make the document state the place that was tried."""
        if self.tried is None or self.window_found is None:
            return
        name, values = self._place()
        with waiting(self, tr("Taking it over")) as progress:
            take_over(self.joint, values, name=name, progress=progress)
        self.look()


def open_window(joint: Any) -> WindowDialog:
    """Open the window of a joint."""
    dialog = WindowDialog(joint)
    show(dialog)
    return dialog

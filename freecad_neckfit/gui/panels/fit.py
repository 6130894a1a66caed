"""The Fit panel: findings beside the model, with depth and angle to turn."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from ...features.properties import property_of
from ...job.errors import NeckFitError
from ...job.parameters import ALL
from ...job.resolve import complete
from ..annotations import nodes
from ..commands.chosen import joint_asked
from ..commands.command import selected
from ..commands.macro import put
from ..language import follow
from ..report import told_in_panel
from ..translate import tr
from ..views.check import units_of
from .fit_flight import Flight
from .fit_form import FitForm, keys_of
from .fit_headline import REMARK
from .fit_keyboard import Keyboard
from .fit_knob import driver_of
from .fit_neck import NeckInView
from .fit_rows import rows_of, waiting_rows
from .fit_session import FitSession, Trial
from .fit_views import annotations_of, camera_of, views_of
from .fit_watch import CloseWatch, PickWatch
from .task_panel import TaskPanel


def open_panel(joint: Any = None) -> FitPanel | None:
    """Open the panel on a joint; without one, on the joint that the designer means.

    None where the designer named none. Raises BadInput where there is none, or where it cannot be
    read or built.
    """
    if joint is None:
        document = FreeCAD.ActiveDocument
        joint = joint_asked(document, selected(document))
    if joint is None:
        return None
    panel = FitPanel(joint)
    try:
        FreeCADGui.Control.showDialog(panel)
        panel.begin()
    except BaseException:
        panel.reject()
        FreeCADGui.Control.closeDialog()
        raise
    return panel


def told(act: Callable[..., None]) -> Callable[..., None]:
    """Whatever fails in ``act`` is told in the panel; what nobody foresaw, in detail in the report.

    Qt would print it where no designer looks, and go on.
    """

    @wraps(act)
    def guarded(panel: FitPanel, *arguments: Any) -> None:
        try:
            act(panel, *arguments)
        except NeckFitError as refusal:
            panel.form.say(str(refusal))
        except Exception as error:  # noqa: BLE001 # told, not swallowed
            panel.form.say(told_in_panel(error))

    return guarded


class FitPanel(TaskPanel):
    """FreeCAD's task panel; ``form`` is its widget."""

    def __init__(self, joint: Any) -> None:
        self.session = FitSession(joint, name=tr("Fit"))
        self.units = units_of(self.session.check)
        keys = keys_of(complete(self.session.stated()))
        self.form = FitForm(keys, title=str(joint.Label), units=self.units)
        self._good: dict[str, float] = {}
        self._first = {key: self.session.value(key) for key in keys}
        self._is_over = False
        self.form.destroyed.connect(self._gone)
        self._flight, self._neck = Flight(self.form), NeckInView(joint)
        self._picks = PickWatch(self.session.check, self._picked)
        self._closing = CloseWatch(joint.Document, self._document_closed)
        for knob in self.form.knobs.values():
            knob.trying.connect(self._try)
            knob.settled.connect(self._settle)
            knob.refused.connect(self.form.say)
        self.form.list.chosen.connect(self._chosen)
        self._show_document()
        if self.form.list.rows:
            self.form.list.choose(self.form.list.rows[0].id)
            self.form.detail()
        self._keyboard = Keyboard(self.form, self.form.list)
        follow(self.form, self._retell)

    def begin(self) -> None:
        """Have room, and give the keyboard to the first knob that turns."""
        self.form.make_room()
        boxes = [k.box for k in self.form.knobs.values() if k.box.isEnabled()]
        if boxes:
            boxes[0].setFocus()
            boxes[0].selectAll()

    def accept(self) -> bool:
        """OK: what is being typed or turned counts; a refused entry leaves the panel open."""
        self.form.say("")
        for knob in self.form.knobs.values():
            knob.box.commit()
            if knob.is_turning:
                knob.settle()
        if self.form.notice.text():
            return False
        self._end()
        self._record()
        self.session.keep()
        return True

    def reject(self) -> bool:
        """Cancel: everything as it was."""
        self._end()
        self.session.cancel()
        self._come_back()
        return True

    def _record(self) -> None:
        """Set what was changed once more in a way that a macro records, which changes nothing."""
        for key in self.form.knobs:
            value = self.session.value(key)
            if value != self._first[key]:
                put(self.session.holder(key), property_of(ALL[key]), value)
        self.session.document.recompute()

    @told
    def _try(self, key: str, value: float) -> None:
        """A value on its way: closed forms judge it, the document stays."""
        trial = self.session.trial({key: value}, units=self.units)
        self._good[key] = value
        self.form.say("")
        self._show_trial(trial)

    @told
    def _settle(self, key: str, value: float) -> None:
        """A value that is meant: the document takes it, and solids judge it."""
        notice = ""
        try:
            self._settle_one(key, value)
        except NeckFitError as refusal:
            notice = str(refusal)
            good = self._good.get(key)
            if good is not None and good != value:
                # The last good value on the way there, rather than where the turning began.
                self._settle_one(key, good)
        finally:
            self._good.pop(key, None)
            self._show_document()
            self.form.say(notice)

    def _settle_one(self, key: str, value: float) -> None:
        if value != self.session.value(key):
            QtGui.QApplication.setOverrideCursor(QtCore.Qt.WaitCursor)
            try:
                self.session.settle({key: value})
            finally:
                QtGui.QApplication.restoreOverrideCursor()

    def _show_trial(self, trial: Trial) -> None:
        rows = rows_of(trial.findings, units=self.units)
        rows += waiting_rows(self._proved, units=self.units)
        self.form.tell(rows, meanwhile=True)
        view, views = annotations_of(self.session.check), views_of(self.session.document)
        # Told by its nodes, Coin would draw the views some time later, and once more than needed.
        with nodes.quietly(*(each.getSceneGraph() for each in views)):
            if view is not None:
                view.show_meanwhile([row.note for row in rows if not row.waits], REMARK())
            self._neck.sit(before=self._built, now=trial.values)
        for each in views:
            each.redraw()

    def _show_document(self) -> None:
        """Values and findings as the document holds them now."""
        self.session.rest()
        self._proved = self.session.findings()
        self._built = complete(self.session.stated())
        self._come_back()
        for key, knob in self.form.knobs.items():
            knob.put(self.session.value(key))
            knob.drive(driver_of(self.session.holder(key), property_of(ALL[key])))
        self.form.tell(rows_of(self._proved, units=self.units), meanwhile=False)

    @told
    def _retell(self) -> None:
        """The language was switched: say anew what the document holds."""
        self.form.retell()
        self._show_document()

    def _come_back(self) -> None:
        found = getattr(self.session, "check", None)
        self._neck.back()
        # Cancel takes away a check that the panel made.
        view = annotations_of(found)
        if view is not None:
            view.come_back()

    @told
    def _chosen(self, finding: str) -> None:
        """A row was chosen: its label is marked, and the camera flies to its place."""
        self._keyboard.chosen()
        self._picks.pick(finding)
        self.form.detail()
        row = next((r for r in self.form.list.rows if r.id == finding), None)
        camera = camera_of(self.session.document)
        if row is not None and row.note.place is not None and camera is not None:
            there = self.session.joint.getGlobalPlacement().multVec(FreeCAD.Vector(*row.note.place))
            self._flight.to(camera, (there.x, there.y, there.z))

    @told
    def _picked(self, finding: str) -> None:
        """A label was picked in the 3D view: its row is selected."""
        if all(row.id != finding for row in self.form.list.rows):
            self.form.list_everything()
        self.form.list.choose(finding)
        self.form.detail()

    def _end(self) -> None:
        self._is_over = True
        self._keyboard.stop()
        self._flight.stop()
        self._picks.stop()
        self._closing.stop()
        for knob in self.form.knobs.values():
            knob.blockSignals(True)  # Qt's way; a field tells when it loses focus

    def _gone(self) -> None:
        """Whoever closes the panel without OK or Cancel cancels."""
        if self._is_over:
            return
        self._is_over = True
        self._keyboard.stop()
        self._picks.stop()
        self._closing.stop()
        self.session.cancel()
        self._come_back()

    def _document_closed(self) -> None:
        self._end()
        QtCore.QTimer.singleShot(0, FreeCADGui.Control.closeDialog)

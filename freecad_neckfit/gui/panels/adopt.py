"""The panel that adopts a solid: pick it, its top and its centreline, and see the frame."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui
from PySide import QtCore

from ...features.adopt_pick import Pick, pick_of
from ...features.adopt_preview import preview
from ...features.one_step import one_step
from ...job.errors import BadInput, NeckFitError
from ...job.parameters import ALL
from ..commands.chosen import joint_of
from ..commands.command import selected
from ..commands.macro import call, written
from ..language import follow
from ..report import tell_failure
from ..translate import tr
from .adopt_axes import Axes
from .adopt_form import WIDTH, AdoptForm
from .adopt_watch import PickWatch
from .adopt_words import next_click, ready
from .docked import widen
from .fit_watch import CloseWatch
from .task_panel import TaskPanel


def open_panel(joint: Any = None) -> AdoptPanel:
    """Open the panel on a joint; without one a joint is made when the solid is adopted."""
    document = FreeCAD.ActiveDocument
    if joint is None:
        joint = joint_of(document, selected(document))
    panel = AdoptPanel(document, joint)
    try:
        FreeCADGui.Control.showDialog(panel)
        panel.begin()
    except BaseException:
        panel.reject()
        FreeCADGui.Control.closeDialog()
        raise
    return panel


class AdoptPanel(TaskPanel):
    """FreeCAD's task panel; ``form`` is its widget. Until OK the document stays as it is."""

    def __init__(self, document: Any, joint: Any) -> None:
        self.document, self.joint = document, joint
        self.form = AdoptForm()
        self.picks: dict[str, Pick] = {}
        self._axes = Axes(document)
        self._watch = PickWatch(document, self._picked)
        self._closing = CloseWatch(document, self._document_closed)
        self._is_over = False
        self.form.destroyed.connect(self._end)  # whoever closes it without OK or Cancel
        self.form.changed.connect(self._show)
        self.form.cleared.connect(self._cleared)
        follow(self.form, self._show)

    def begin(self) -> None:
        """Have room, and take what is selected already as the first picks."""
        widen(self.form, WIDTH)
        for chosen in FreeCADGui.Selection.getSelectionEx(self.document.Name, 0):
            for sub in chosen.SubElementNames or ("",):
                self._picked(chosen.Object, sub)
        self._show()

    def accept(self) -> bool:
        """OK: adopt as one step of undo; what is refused leaves the panel open and says why."""
        try:
            self._frame()  # refuses before anything is touched
            with one_step(self.document, tr("Adopt")):
                self._adopt()
        except NeckFitError as refusal:
            self.form.say(str(refusal))
            return False
        except Exception as error:  # noqa: BLE001 # undone and told
            tell_failure(tr("Adopt"), error)
            return False
        self._end()
        return True

    def reject(self) -> bool:
        """Cancel: nothing was changed."""
        self._end()
        return True

    def _adopt(self) -> None:
        arguments = self._arguments()
        joint = self.joint
        if joint is None:
            joint = call("features.acts", "new_joint", self.document, into="joint")
        function = {"body": "adopt_body", "neck": "adopt_neck", "plate": "adopt_plate"}
        solid = arguments.pop("solid")
        call("features.adopt", function[self.form.role], joint, solid, **arguments)
        # Not the active one, which may be another by now.
        FreeCADGui.doCommand(f"{written(self.document)}.recompute()")
        for obj in (joint.Body, joint.Pocket, joint.Neck, joint.CoverPlate, joint):
            if not obj.isValid():
                raise BadInput(str(obj.getStatusString()))

    def _arguments(self) -> dict[str, Any]:
        """What is picked, as ``features.adopt`` takes it. Raises BadInput where a pick lacks."""
        solid = self.picks.get("solid")
        if solid is None:
            raise BadInput(next_click(self.form.role, self.form.missing))
        found: dict[str, Any] = {"solid": solid.solid}
        if solid.path:
            found["path"] = solid.path
        if self.form.role == "plate":
            return found
        system = self.picks.get("system")
        if system is not None:
            found["system"] = system.solid
        elif self.form.typed is not None:
            found["frame"] = self.form.typed
        if self.form.role == "neck":
            return found
        if "system" not in found and "frame" not in found:
            found |= self._faces()
        if self.form.has_pocket:
            found["has_pocket"] = True
            if "floor" in self.picks:
                found["floor"] = self.picks["floor"].element
        return found

    def _faces(self) -> dict[str, Any]:
        top, line = self.picks.get("top"), self.picks.get("centreline")
        if top is None:
            raise BadInput(next_click("body", "top"))
        if line is None:
            raise BadInput(next_click("body", "centreline"))
        found: dict[str, Any] = {"top": top.element}
        if line.solid != self.picks["solid"].solid:
            found["centreline_of"] = line.solid
        if line.element:
            found["centreline"] = line.element
        if self.form.is_reversed:
            found["reverse"] = True
        return found

    def _picked(self, top: Any, sub: str) -> None:
        """Something was picked: the row that waits takes it if it is of its kind."""
        pick = pick_of(top, sub)
        row = self.form.waiting
        if not row:
            return
        if row in ("top", "floor") and not pick.element.startswith("Face"):
            self.form.say(f"{tr('That is no face.')} {next_click(self.form.role, row)}")
            return
        if row == "centreline" and pick.element.startswith(("Face", "Vertex")):
            self.form.say(f"{tr('That is no edge or line.')} {next_click(self.form.role, row)}")
            return
        self.picks[row] = pick
        if row in ("solid", "top"):
            self._take_solid(pick)
        self.form.show_pick(row, _words(pick))
        self.form.go_on()
        self._show()

    def _take_solid(self, pick: Pick) -> None:
        former = self.picks.get("solid")
        self.picks["solid"] = pick
        if former is not None and former[:2] != pick[:2]:
            for row in ("floor", "top"):
                if row in self.picks and self.picks[row][:2] != pick[:2]:
                    self._cleared(row)
        self.form.show_pick("solid", _words(pick._replace(element="")))

    def _cleared(self, row: str) -> None:
        self.picks.pop(row, None)
        self.form.show_pick(row, "")
        self.form.go_on()
        self._show()

    def _show(self) -> None:
        """The frame as it would be, and one line: what the next click does, or what is wrong."""
        self._axes.hide()
        row = self.form.waiting
        if row or self.form.missing:
            self.form.say(next_click(self.form.role, row or self.form.missing))
        if self.form.missing:
            return
        try:
            placement = self._frame()
        except NeckFitError as refusal:
            self.form.say(str(refusal))
            return
        if placement is not None:
            self._axes.show(placement)
        if not row:
            self.form.say(ready(self.form.role))

    def _frame(self) -> Any:
        """Global placement of the frame that the picks give; None for a plate, which has none."""
        arguments = self._arguments()
        if self.form.role == "plate":
            return None
        return preview(arguments.pop("solid"), length=self._length(), **arguments)

    def _length(self) -> float:
        if self.joint is None:
            return float(ALL["pocket.length"].default)
        return float(self.joint.Pocket.Length.Value)

    def _document_closed(self) -> None:
        self._end()
        QtCore.QTimer.singleShot(0, FreeCADGui.Control.closeDialog)

    def _end(self, *_: Any) -> None:
        if self._is_over:
            return
        self._is_over = True
        self._axes.remove()
        self._watch.stop()
        self._closing.stop()


def _words(pick: Pick) -> str:
    name = str(pick.solid.Label)
    return f"{pick.element}, {name}" if pick.element else name

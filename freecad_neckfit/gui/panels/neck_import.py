"""The panel in which a neck from a file is looked through, put right by hand, and taken."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui
import numpy as np
from PySide import QtCore

from ...features.neck_import import read_neck
from ...features.one_step import one_step
from ...job.errors import BadInput, NeckFitError
from ..commands.macro import call, written
from ..language import follow
from ..preferences import shop_defaults
from ..report import tell_failure, told_in_panel
from ..sentences import say
from ..status import say_for_a_while
from ..translate import tr
from ..views.look import look_at
from ..views.neck_camera import view_of
from ..views.neck_mouse import NeckMouse
from ..views.neck_scene import NeckScene
from .fit_watch import CloseWatch
from .neck_form import NeckForm
from .neck_names import name_of
from .neck_session import NeckSession
from .neck_wait import reading, thinking
from .task_panel import TaskPanel


def open_panel(document: Any, joint: Any, file: str) -> ImportPanel | None:
    """Read a neck's file and open the panel on it; None where reading was stopped.

    ``joint``: whose neck it becomes; None for a new one. Raises BadInput in one sentence where the
    file cannot be read or holds no neck.
    """
    name = Path(file).name
    with reading(FreeCADGui.getMainWindow(), name) as progress:
        try:
            part = read_neck(file, progress=progress)
        except BadInput:
            if not progress.was_stopped:
                raise
            say_for_a_while(tr("Stopped; nothing was changed."))
            return None
    with thinking():
        session = NeckSession(document, joint, file, part)
    panel = ImportPanel(document, session)
    try:
        FreeCADGui.Control.showDialog(panel)
        panel.begin()
    except BaseException:
        panel.reject()
        FreeCADGui.Control.closeDialog()
        raise
    return panel


class ImportPanel(TaskPanel):
    """FreeCAD's task panel; ``form`` is its widget. Until OK the document stays as it is."""

    def __init__(self, document: Any, session: NeckSession) -> None:
        self.document, self.session = document, session
        self.form = NeckForm(session.part.name, units=session.units)
        motion = _stand(session.joint)
        if session.read is not None:
            motion = motion @ session.read.found.frame
        self.scene = NeckScene(document, view_of(document), session.patches, motion)
        self._mouse = NeckMouse(
            self.scene, is_wanted=self.form.pick.isChecked,
            on_hover=self.scene.put_under, on_click=self._clicked,
        )  # fmt: skip
        self._closing = CloseWatch(document, self._document_closed)
        self._is_over = False
        self.form.destroyed.connect(self._end)  # whoever closes it without OK or Cancel
        self.form.chosen.connect(lambda _: self._show_chosen())
        self.form.pointed.connect(self._point)
        self.form.picking.connect(self._picking)
        self.form.given_back.connect(self._give_back)
        self.form.accepted.connect(self._accept_row)
        self.form.typed.connect(self._type_row)
        follow(self.form, self._retell)

    def begin(self) -> None:
        """Have room, and show what was recognised; a question comes first."""
        self.form.make_room()
        self.scene.look_at_all()
        self._list()
        if self.session.open():
            self.form.list.choose(self.session.open()[0])

    def accept(self) -> bool:
        """OK: the neck is the joint's, in one step; what is refused leaves the panel open."""
        still = self.session.open()
        if still:
            self.form.list.choose(still[0])
            self._tell()
            return False
        self.scene.show_others()
        try:
            with thinking(), one_step(self.document, tr("Import a neck")):
                joint = self._import()
        except NeckFitError as refusal:
            self.scene.hide_others()
            self.form.say(say(str(refusal)), grave=True)
            return False
        except Exception as error:  # noqa: BLE001 # undone and told
            self.scene.hide_others()
            tell_failure(tr("Import a neck"), error)
            return False
        self._end(keep_camera=True)
        look_at(joint)
        return True

    def reject(self) -> bool:
        """Cancel: nothing was changed."""
        self._end()
        return True

    def _import(self) -> Any:
        joint, session = self.session.joint, self.session
        if joint is None:
            defaults = [text] if (text := shop_defaults()) else []
            joint = call("features.acts", "new_joint", self.document, *defaults, into="joint")
        call("features.neck_import", "import_neck", joint, session.file, **session.arguments())
        # Not the active one, which may be another by now.
        FreeCADGui.doCommand(f"{written(self.document)}.recompute()")
        for obj in (joint.Neck, joint):
            if not obj.isValid():
                raise BadInput(str(obj.getStatusString()))
        call("features.run_check", "check", joint)
        return joint

    def _list(self) -> None:
        self.form.show_rows(self.session.rows())
        self._tell()
        self._light()

    def _retell(self) -> None:
        """The language was switched: name file, rows and what is asked anew."""
        self.form.setWindowTitle(tr("Import a neck: {}").format(self.session.part.name))
        self._list()

    def _tell(self) -> None:
        """Over the list: what is asked, or what OK will do."""
        still = self.session.open()
        if self.session.wanted is not None:
            self.form.say(say(str(self.session.wanted)), grave=True)
            return
        if still:
            names = ", ".join(name_of(key) for key in still)
            words = tr("1 question is open") if len(still) == 1 else tr("{} questions are open")
            self.form.say(f"{words.format(len(still))}: {names}.", grave=True)
            return
        notes = [say(note) for note in self.session.part.notes]
        ready = tr("A neck was recognised; OK puts it into the pocket and checks the joint.")
        self.form.say(" ".join([ready, *(f"{note[:1].upper()}{note[1:]}." for note in notes)]))

    def _light(self, row_id: str = "") -> None:
        """Light up the faces of a row: the one of that id, else the chosen one."""
        rows = {row.id: row for row in self.form.list.rows()}
        row = rows.get(row_id) or self.form.row
        if row is None:
            self.scene.light(())
            return
        faces = self.session.faces(row.item) if row.item else ()
        words = f"{row.title}: {row.value}" if faces else ""
        self.scene.light(faces, words, place=self.session.place(row.item))

    def _show_chosen(self) -> None:
        self._light()
        self.scene.look_at_lit()

    def _point(self, row_id: str) -> None:
        if not self.form.pick.isChecked():
            self._light(row_id)

    def _picking(self, is_on: bool) -> None:
        row = self.form.row
        if is_on and row is not None:
            self.form.say(
                tr("{}: click the right face in the 3D view; with Ctrl one more, or one less.")
                .format(row.title)
            )  # fmt: skip
            return
        self.scene.put_under(None)
        self._tell()

    def _clicked(self, patch: int, more: bool) -> None:
        row = self.form.row
        if row is None:
            return
        if not more:
            self.form.stop_picking()
        self._change(lambda: self.session.pick(row.item, patch, more=more))

    def _give_back(self) -> None:
        row = self.form.row
        if row is not None:
            self._change(lambda: self.session.give_back(row.item))

    def _accept_row(self) -> None:
        row = self.form.row
        if row is not None:
            self._change(lambda: self.session.accept(row.id))
            self._go_on()

    def _type_row(self, text: str) -> None:
        row = self.form.row
        if row is not None and text.strip():
            self._change(lambda: self.session.type(row.id, text))
            self._go_on()

    def _go_on(self) -> None:
        """The next question, as soon as one is answered."""
        still = self.session.open()
        if still:
            self.form.list.choose(still[0])

    def _change(self, act: Any) -> None:
        """Do what changes the neck; what is refused is told and changes nothing."""
        try:
            with thinking():
                act()
        except NeckFitError as refusal:
            refused = say(str(refusal))
        except Exception as error:  # noqa: BLE001 # told, not swallowed
            refused = told_in_panel(error)
        else:
            refused = ""
        self._list()
        if refused:
            self.form.say(refused, grave=True)

    def _document_closed(self) -> None:
        self._end(view_is_gone=True)
        QtCore.QTimer.singleShot(0, FreeCADGui.Control.closeDialog)

    def _end(self, *_: Any, keep_camera: bool = False, view_is_gone: bool = False) -> None:
        if self._is_over:
            return
        self._is_over = True
        self._closing.stop()
        if view_is_gone:
            return
        try:
            self._mouse.stop()
            self.scene.remove(put_back_camera=not keep_camera)
        except (ReferenceError, RuntimeError):  # the view was closed, and its nodes with it
            self.scene.show_others()


def _stand(joint: Any) -> Any:
    """Where the neck frame is shown: turned as the joint is, at its place."""
    if joint is None:
        return np.eye(4)
    flat = FreeCAD.Placement(joint.getGlobalPlacement()).toMatrix().A
    return np.array(flat, dtype=float).reshape(4, 4)

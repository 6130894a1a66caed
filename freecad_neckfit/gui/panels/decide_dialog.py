"""The window that each deciding command opens: what it says, what it shows, and its buttons."""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from pathlib import Path
from typing import Any

import FreeCADGui
from PySide import QtCore, QtGui

from ...decide.progress import Stopped
from ...features.gather import joint_stated
from ...features.transfer import job_file_of
from ...job.errors import NeckFitError
from ...job.joint import JobFile
from ...job.speech import spoken_by
from ..language import anew, follow
from ..report import told_in_panel
from ..sentences import say
from ..translate import tr
from ..views.check import units_of
from .decide_apply import keep

_open: dict[str, Any] = {}


def told(act: Callable[..., None]) -> Callable[..., None]:
    """Whatever fails in ``act`` is told in the window; what nobody foresaw, also in the report."""

    @wraps(act)
    def guarded(dialog: DecideDialog, *arguments: Any) -> None:
        if dialog.is_busy:
            dialog.say(tr("This window is still working; wait, or stop it first."))
            return
        dialog.say("")
        dialog.is_busy = True
        try:
            with spoken_by(say):
                act(dialog, *arguments)
        except Stopped:
            dialog.say(tr("Stopped; what stands here is from before."))
        except NeckFitError as refusal:
            dialog.say(str(refusal))
        except ReferenceError:
            dialog.say(tr("The joint is gone; close this window."))
        except Exception as error:  # noqa: BLE001 # told, not swallowed
            dialog.say(told_in_panel(error))
        finally:
            dialog.is_busy = False

    return guarded


class DecideDialog(QtGui.QDialog):
    """A window beside the model that stays open while the designer works.

    A subclass fills ``body`` and says in ``look`` what is worked out anew.
    """

    def __init__(self, joint: Any, *, title: str, name: str) -> None:
        super().__init__(FreeCADGui.getMainWindow())
        self.joint, self.is_busy, self._title = joint, False, title
        self.setObjectName(name)
        self.setWindowTitle(f"NeckFit: {title} - {joint.Label}")
        self.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        self.resize(1020, 680)
        self.notice = QtGui.QLabel()
        self.notice.setObjectName("NeckFitNotice")
        self.notice.setWordWrap(True)
        self.notice.hide()
        self.body = QtGui.QVBoxLayout()
        self.row = QtGui.QHBoxLayout()
        column = QtGui.QVBoxLayout(self)
        column.addLayout(self.body, 1)
        column.addWidget(self.notice)
        column.addLayout(self.row)
        self.row.addStretch(1)
        for words, act in ((tr("Look again"), self.look_again), (tr("Close"), self.close)):
            self.row.addWidget(self._made(words, act))
        former = _open.get(name)
        if former is not None:
            former.close()
        follow(self, self._retell)
        # Python must hold it as long as it is open: Qt alone does not.
        _open[name] = self

    def button(self, words: str, act: Callable[[], Any]) -> Any:
        """Add a button below, before those that every window has."""
        made = self._made(words, act)
        self.row.insertWidget(self.row.count() - 2, made)
        return made

    def _made(self, words: str, act: Callable[[], Any]) -> Any:
        made = QtGui.QPushButton(words)
        made.setAutoDefault(False)  # Enter belongs to the fields
        made.clicked.connect(lambda *_: act())
        return made

    def say(self, sentence: str) -> None:
        """Show one sentence above the buttons; nothing for none."""
        self.notice.setText(say(sentence) if sentence else "")
        self.notice.setVisible(bool(sentence))

    def _retell(self) -> None:
        """The language was switched: what was worked out is said anew."""
        self.setWindowTitle(f"NeckFit: {anew(self._title)} - {self.joint.Label}")
        self.tell_anew()

    @told
    def tell_anew(self) -> None:
        """Say what was worked out in the language of now."""
        self.retell()

    def closeEvent(self, event: Any) -> None:  # noqa: N802 (Qt's name)
        """Let go of it."""
        if _open.get(str(self.objectName())) is self:
            del _open[str(self.objectName())]
        super().closeEvent(event)

    @told
    def save_picture(self) -> None:
        """Ask for a file and write the window's ``picture`` (a ``PictureView``) into it."""
        path = self.file_to_write(tr("Pictures (*.png *.svg)"))
        if path and not self.picture.save(path):
            self.say(tr("{} could not be written; choose another folder.").format(path))

    def ask_shop(self) -> None:
        """Ask what the shop can set, and look again with it."""
        from .shop_steps import ShopSteps

        asked = ShopSteps(self, self.joint, units=self.units)
        asked.accepted.connect(lambda: self._keep_shop(asked))
        asked.open()

    @told
    def _keep_shop(self, asked: Any) -> None:
        keep(self.joint, asked.values, name=tr("Shop's steps"))
        self.look()

    @told
    def look_again(self) -> None:
        """Work everything out anew from what the document states now."""
        self.look()

    def look(self) -> None:
        """What a subclass works out and shows. Raises NeckFitError."""
        raise NotImplementedError

    def retell(self) -> None:
        """What a subclass says anew; all is worked out anew where it does not know better."""
        self.look()

    def stated(self) -> dict[str, Any]:
        """What the joint states now. Raises BadInput."""
        return joint_stated(self.joint)

    def job(self) -> JobFile:
        """The joint with its limits and options as a job file. Raises BadInput."""
        folder = Path(self.joint.Document.FileName or Path.home() / "joint").parent
        return job_file_of(self.joint, folder / f"{self.joint.Label}.toml")

    @property
    def units(self) -> Any:
        """The units that the screen shows."""
        return units_of(self.joint)

    @property
    def label(self) -> str:
        """What the joint is called."""
        return str(self.joint.Label)

    def file_to_write(self, kinds: str) -> str:
        """Ask for a file; empty where the designer names none."""
        where = Path(self.joint.Document.FileName or Path.home() / "x").parent
        answer = QtGui.QFileDialog.getSaveFileName(self, self.windowTitle(), str(where), kinds)
        return str(answer[0] if isinstance(answer, tuple) else answer)


def show(dialog: DecideDialog) -> DecideDialog:
    """Open a window and work out what it shows."""
    dialog.show()
    dialog.raise_()
    dialog.look_again()
    return dialog

"""What a command of the workbench is: declared once, run as one step that can be undone."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import FreeCAD
import FreeCADGui

from ... import __file__ as package_file
from ...features.one_step import one_step
from ..report import tell_failure
from ..translate import tr

ICONS = Path(package_file).parent.parent / "resources" / "icons"
Selection = tuple[Any, ...]
"""FreeCAD's SelectionEx objects of the active document."""
Run = Callable[[Any, Selection], object]
Test = Callable[[Any, Selection], bool]


def with_document(document: Any, _: Selection) -> bool:
    """Possible wherever a document is open."""
    return document is not None


@dataclass(frozen=True)
class Command:
    """One command.

    ``name``: ``NeckFit_Xyz``, by which macros and tests call it. ``menu``: its words, ``&`` before
    the letter that picks it in the menu. ``tip``: one sentence for tooltip and status bar. ``run``
    gets the active document and its selection; what it changes is one step of undo, and an
    exception undoes it and is told. ``possible`` is asked several times a second where a document
    is open: keep it cheap.
    ``icon``: file name in resources/icons. ``shortcut``: as Qt writes it. ``makes_document``: a new
    document is opened where there is none. ``step``: False for what leaves the document as it is,
    or opens a panel that keeps its own step. ``checked``: for a toggle, whether it is on.
    """

    name: str
    menu: str
    tip: str
    run: Run
    possible: Test = with_document
    icon: str = ""
    shortcut: str = ""
    makes_document: bool = False
    step: bool = True
    checked: Test | None = None

    @property
    def title(self) -> str:
        """The command's words without the accelerator, in the designer's language."""
        return tr(self.menu).replace("&", "").removesuffix("…")


class Shell:
    """A command as FreeCAD calls it."""

    def __init__(self, command: Command) -> None:
        self.command = command

    def GetResources(self) -> dict[str, Any]:  # noqa: N802 (FreeCAD's name)
        """Words, icon and shortcut; the words in English, for FreeCAD itself translates them."""
        c = self.command
        found: dict[str, Any] = {"MenuText": c.menu, "ToolTip": c.tip}
        found["StatusTip"] = c.tip
        if c.icon:
            found["Pixmap"] = str(ICONS / c.icon)
        if c.shortcut:
            found["Accel"] = c.shortcut
        if c.checked is not None:
            found["Checkable"] = False
        return found

    def IsActive(self) -> bool:  # noqa: N802 (FreeCAD's name)
        """Whether the command is possible now; a toggle shows its state on the way."""
        c, document = self.command, FreeCAD.ActiveDocument
        if document is None:
            return c.makes_document
        if c.step and FreeCADGui.Control.activeDialog():
            return False  # the panel has a step of its own under way, which this would end
        selection = selected(document)
        is_possible = c.possible(document, selection)
        if c.checked is not None:
            _show_checked(c.name, on=is_possible and c.checked(document, selection))
        return is_possible

    def Activated(self, _index: int = 0) -> None:  # noqa: N802 (FreeCAD's name)
        """Run it."""
        start(self.command)


def start(command: Command) -> bool:
    """Run a command on the active document; False where it failed, which has been told then."""
    document, is_new = FreeCAD.ActiveDocument, False
    try:
        if document is None and command.makes_document:
            FreeCADGui.doCommand("FreeCAD.newDocument()")
            document, is_new = FreeCAD.ActiveDocument, True
        _run(command, document)
    except Exception as error:  # noqa: BLE001 # whatever it is: undone and told
        if is_new and document is not None:
            FreeCAD.closeDocument(document.Name)
        tell_failure(command.title, error)
        return False
    return True


def _run(command: Command, document: Any) -> None:
    selection = selected(document)
    if not command.step or document is None:
        command.run(document, selection)
        return
    with one_step(document, command.title):
        command.run(document, selection)


def selected(document: Any) -> Selection:
    """What is selected in a document."""
    if document is None:
        return ()
    return tuple(FreeCADGui.Selection.getSelectionEx(document.Name))


def register(command: Command) -> None:
    """Make a command known to FreeCAD."""
    FreeCADGui.addCommand(command.name, Shell(command))


def _show_checked(name: str, *, on: bool) -> None:
    known = FreeCADGui.Command.get(name)
    for action in known.getAction() if known is not None else []:
        if action.isCheckable() and action.isChecked() != on:
            action.blockSignals(True)  # Qt's own
            action.setChecked(on)
            action.blockSignals(False)  # Qt's own

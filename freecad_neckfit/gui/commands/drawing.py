"""The command that draws the pocket on a TechDraw page of the document."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from ...sheets.techdraw import PAGE
from ..status import say_for_a_while
from ..translate import tr
from .chosen import has_joint, joint_of
from .command import Command, Selection
from .macro import call


def _run(document: Any, selection: Selection) -> None:
    call("gui.shop", "draw_page", joint_of(document, selection))
    if not open_page(document):
        say_for_a_while(tr("The drawing's page is in the tree; double-click it there to see it."))


def open_page(document: Any) -> bool:
    """Show the whole page in a window of its own; False where FreeCAD shows none."""
    page = document.getObject(PAGE)
    shown = page.ViewObject if page is not None else None
    if shown is None or not hasattr(shown, "doubleClicked"):
        return False
    if "ShowFrames" in shown.PropertiesList:
        shown.ShowFrames = False  # FreeCAD's frames and their captions would lie over dimensions
    if not shown.doubleClicked():
        return False
    FreeCADGui.updateGui()  # the window is laid out first
    FreeCADGui.SendMsgToActiveView("ViewFit")
    return True


COMMAND = Command(
    name="NeckFit_Drawing",
    menu="&Draw the pocket",
    tip="Draw the pocket on a TechDraw page that can be edited; draw it anew after changes",
    icon="drawing.svg",
    run=_run,
    possible=has_joint,
)

"""The command that reads a neck from a file of any CAD program."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from ..translate import tr
from .chosen import joint_asked, joints_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..ask import ask_file
    from ..panels.neck_import import open_panel

    joint = joint_asked(document, selection) if joints_of(document) else None
    if joint is None and joints_of(document):
        return  # asked which one, the designer cancelled
    file = ask_file(tr("Import a neck"), kinds())
    if file:
        open_panel(document, joint, file)


def kinds() -> str:
    """Kinds of files that hold a neck, as Qt's dialog wants them."""
    from ...solids.read import ENDINGS

    # Some programs write their endings in capitals, and some desktops tell the two apart.
    endings = " ".join(f"*{e} *{e.upper()}" for e in ENDINGS)
    return f"{tr('Necks')} ({endings});;{tr('All files')} (*)"


def _possible(_document: Any, _: Selection) -> bool:
    """Whether no other panel is open."""
    return not FreeCADGui.Control.activeDialog()


COMMAND = Command(
    name="NeckFit_ImportNeck",
    menu="&Import a neck…",
    tip="Read a neck from a STEP, IGES, BREP, FCStd, STL, OBJ or 3MF file, and put it into a joint",
    icon="import_neck.svg",
    shortcut="N, I",
    run=_run,
    possible=_possible,
    makes_document=True,
    step=False,
)

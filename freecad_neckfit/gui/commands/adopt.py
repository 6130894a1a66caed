"""The command that adopts a solid of the designer's own."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from .command import Command, Selection


def _run(_document: Any, _selection: Selection) -> None:
    from ..panels.adopt import open_panel

    open_panel()


def _possible(document: Any, _: Selection) -> bool:
    """Whether there is a document, and no other panel is open."""
    return document is not None and not FreeCADGui.Control.activeDialog()


COMMAND = Command(
    name="NeckFit_Adopt",
    menu="&Adopt a solid…",
    tip="Make a solid of your own the body, neck or cover plate of a joint, without changing it",
    icon="adopt.svg",
    run=_run,
    possible=_possible,
    step=False,
)

"""The command that opens the Fit panel."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from .chosen import joints_of
from .command import Command, Selection


def _run(_document: Any, _selection: Selection) -> None:
    from ..panels.fit import open_panel

    open_panel()


def _possible(document: Any, _: Selection) -> bool:
    """Whether there is a joint, and no other panel is open."""
    return bool(joints_of(document)) and not FreeCADGui.Control.activeDialog()


COMMAND = Command(
    name="NeckFit_Fit",
    menu="&Fit depth and angle…",
    tip="Turn depth and angle of the pocket with all findings beside the model",
    icon="fit.svg",
    run=_run,
    possible=_possible,
    step=False,
)

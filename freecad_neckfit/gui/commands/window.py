"""The command that opens the window window."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.window import open_window

    open_window(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Window",
    menu="&Depths and angles that work…",
    tip="Show which depths and angles meet every demand, and what bounds them",
    icon="window.svg",
    run=_run,
    possible=has_joint,
    step=False,
)

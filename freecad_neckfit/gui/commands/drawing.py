"""The command that draws the pocket on a TechDraw page of the document."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection
from .macro import call


def _run(document: Any, selection: Selection) -> None:
    call("gui.shop", "draw_page", joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Drawing",
    menu="&Draw the pocket",
    tip="Draw the pocket on a TechDraw page that can be edited; draw it anew after changes",
    icon="drawing.svg",
    run=_run,
    possible=has_joint,
)

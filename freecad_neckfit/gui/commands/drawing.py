"""The command that draws the pocket on a TechDraw page of the document."""

from __future__ import annotations

from typing import Any

from ..status import say_for_a_while
from ..translate import tr
from .chosen import has_joint, joint_of
from .command import Command, Selection
from .macro import call


def _run(document: Any, selection: Selection) -> None:
    call("gui.shop", "draw_page", joint_of(document, selection))
    say_for_a_while(tr("The drawing's page is in the tree; double-click it there to see it."))


COMMAND = Command(
    name="NeckFit_Drawing",
    menu="&Draw the pocket",
    tip="Draw the pocket on a TechDraw page that can be edited; draw it anew after changes",
    icon="drawing.svg",
    run=_run,
    possible=has_joint,
)

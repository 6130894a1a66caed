"""The command that opens the mend window."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.mend import open_mend

    open_mend(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Mend",
    menu="What &mends it…",
    tip="Tell which demands exclude one another, and the smallest changes that free the joint",
    icon="mend.svg",
    run=_run,
    possible=has_joint,
    step=False,
)

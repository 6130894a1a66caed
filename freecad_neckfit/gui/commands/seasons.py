"""The command that opens the seasons window."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.seasons import open_seasons

    open_seasons(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Seasons",
    menu="Through the &year…",
    tip="Follow clearances and grip through the owner's year",
    icon="seasons.svg",
    run=_run,
    possible=has_joint,
    step=False,
)

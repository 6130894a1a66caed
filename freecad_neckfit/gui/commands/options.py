"""The command that opens the options window."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.options import open_options

    open_options(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Options",
    menu="&Options side by side…",
    tip="Lay the joint and its options side by side",
    icon="options.svg",
    run=_run,
    possible=has_joint,
    step=False,
)

"""The command that compares the joint now with how it was saved, stated elsewhere or measured."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.compare import open_comparison

    open_comparison(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Compare",
    menu="Compare &two states…",
    tip="Compare the joint with how it was saved, with a job file, or with measured values",
    icon="compare.svg",
    shortcut="N, T",
    run=_run,
    possible=has_joint,
    step=False,
)

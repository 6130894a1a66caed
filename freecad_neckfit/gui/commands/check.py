"""The command that checks a joint."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection
from .macro import call


def _run(document: Any, selection: Selection) -> None:
    call("features.run_check", "check", joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Check",
    menu="&Check the joint",
    tip="Check the joint by closed forms and on solids, and show the findings in the 3D view",
    icon="check.svg",
    run=_run,
    possible=has_joint,
)

"""The command that opens the tolerances window."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.tolerances import open_tolerances

    open_tolerances(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Tolerances",
    menu="&Tolerances…",
    tip="Tell how often the joint fails within its limits, and what to draw in first",
    icon="tolerances.svg",
    run=_run,
    possible=has_joint,
    step=False,
)

"""The command that writes everything for the shop into one folder."""

from __future__ import annotations

from typing import Any

from .chosen import has_joint, joint_of
from .command import Command, Selection


def _run(document: Any, selection: Selection) -> None:
    from ..panels.package import open_package

    open_package(joint_of(document, selection))


COMMAND = Command(
    name="NeckFit_Package",
    menu="Package for the &shop…",
    tip="Write drawing, routing template, set-up sheet, report and model into one folder",
    icon="package.svg",
    run=_run,
    possible=has_joint,
    step=False,
)

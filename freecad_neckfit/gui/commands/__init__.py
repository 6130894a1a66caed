"""The workbench's commands, and where they stand in toolbars and menu."""

from __future__ import annotations

from dataclasses import dataclass

from . import adopt, check, fit, mend, options, seasons, tolerances, window
from .command import Command


@dataclass(frozen=True)
class Group:
    """Commands that stand together: a toolbar of this title, and a section of the menu."""

    title: str
    commands: tuple[Command, ...]


GROUPS = (
    Group("NeckFit parts", (adopt.COMMAND,)),
    Group("NeckFit check", (check.COMMAND, fit.COMMAND)),
    Group(
        "NeckFit decide",
        (
            window.COMMAND,
            mend.COMMAND,
            options.COMMAND,
            tolerances.COMMAND,
            seasons.COMMAND,
        ),
    ),
)
"""In the order of toolbars and menu."""
ALL = tuple(command for group in GROUPS for command in group.commands)

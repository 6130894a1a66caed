"""The workbench's commands, and where they stand in toolbars and menu."""

from __future__ import annotations

from dataclasses import dataclass

from . import check, fit
from .command import Command


@dataclass(frozen=True)
class Group:
    """Commands that stand together: a toolbar of this title, and a section of the menu."""

    title: str
    commands: tuple[Command, ...]


GROUPS = (Group("NeckFit check", (check.COMMAND, fit.COMMAND)),)
"""In the order of toolbars and menu."""
ALL = tuple(command for group in GROUPS for command in group.commands)

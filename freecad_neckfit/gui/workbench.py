"""Toolbars and menu of the workbench."""

from __future__ import annotations

from typing import Any

from .commands import ALL, GROUPS
from .commands.command import register
from .translate import tr


def furnish(workbench: Any) -> None:
    """Register all commands and lay them out in toolbars and menu."""
    for command in ALL:
        register(command)
    menu: list[str] = []
    for group in GROUPS:
        names = [command.name for command in group.commands]
        workbench.appendToolbar(tr(group.title), names)
        menu += (["Separator"] if menu else []) + names
    workbench.appendMenu(tr("&NeckFit"), menu)

"""Toolbars, menu and preferences of the workbench."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from . import preferences
from .annotations.palette import choose
from .commands import ALL, GROUPS
from .commands.command import ICONS, register
from .language import hear
from .preferences_page import PreferencesPage, apply

TRANSLATIONS = ICONS.parent / "translations"


def furnish(workbench: Any) -> None:
    """Register all commands and lay them out in toolbars and menu; add the preferences page."""
    FreeCADGui.addIconPath(str(ICONS))
    FreeCADGui.addLanguagePath(str(TRANSLATIONS))
    FreeCADGui.updateLocale()
    FreeCADGui.addPreferencePage(PreferencesPage, "NeckFit")
    choose(preferences.palette())
    hear(FreeCADGui.getMainWindow(), apply)
    for command in ALL:
        register(command)
    menu: list[str] = []
    for group in GROUPS:
        names = [command.name for command in group.commands]
        workbench.appendToolbar(group.title, names)
        menu += (["Separator"] if menu else []) + names
    workbench.appendMenu("Nec&kFit", menu)

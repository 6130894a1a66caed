"""The adoption panel hears of everything that is picked, with the way down to it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCADGui


class PickWatch:
    """Tells ``on_picked`` the outermost object and the way down from it; ``stop`` ends it."""

    def __init__(self, document: Any, on_picked: Callable[[Any, str], None]) -> None:
        self._document, self._on_picked = document, on_picked
        # Unresolved: a solid within a link lies where the link puts it.
        FreeCADGui.Selection.addObserver(self, 0)

    def addSelection(  # noqa: N802 (FreeCAD's name)
        self, document: str, name: str, sub: str, *_: Any
    ) -> None:
        """Something was picked."""
        if document == self._document.Name:
            self._on_picked(self._document.getObject(name), sub)

    def stop(self) -> None:
        """Hear no more."""
        FreeCADGui.Selection.removeObserver(self)

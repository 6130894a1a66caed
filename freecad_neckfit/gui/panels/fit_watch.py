"""The Fit panel hears of labels picked in the 3D view, and of its document being closed."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD
import FreeCADGui

from ..annotations.notes import element_of, id_of


class PickWatch:
    """Tells ``on_picked`` the id of each finding of a check that is picked; ``stop`` ends it."""

    def __init__(self, check: Any, on_picked: Callable[[str], None]) -> None:
        self._document, self._name = check.Document.Name, check.Name
        self._on_picked, self._is_telling = on_picked, False
        FreeCADGui.Selection.addObserver(self)

    def addSelection(  # noqa: N802 (FreeCAD's name)
        self, document: str, name: str, element: str, *_: Any
    ) -> None:
        """Something was picked."""
        if (document, name) == (self._document, self._name) and element and not self._is_telling:
            # What FreeCAD calls an element may be preceded by the names of groups.
            self._on_picked(id_of(element.rsplit(".", 1)[-1]))

    def pick(self, finding: str) -> None:
        """Select a finding in FreeCAD, which marks its label."""
        self._is_telling = True
        try:
            FreeCADGui.Selection.clearSelection(self._document)
            FreeCADGui.Selection.addSelection(self._document, self._name, element_of(finding))
        finally:
            self._is_telling = False

    def stop(self) -> None:
        """Hear no more."""
        FreeCADGui.Selection.removeObserver(self)


class CloseWatch:
    """Tells ``on_closed`` when a document is closed; ``stop`` ends it."""

    def __init__(self, document: Any, on_closed: Callable[[], None]) -> None:
        self._name, self._on_closed = document.Name, on_closed
        FreeCAD.addDocumentObserver(self)

    def slotDeletedDocument(self, document: Any) -> None:  # noqa: N802 (FreeCAD's name)
        """A document goes."""
        if document.Name == self._name:
            self._on_closed()

    def stop(self) -> None:
        """Hear no more."""
        FreeCAD.removeDocumentObserver(self)

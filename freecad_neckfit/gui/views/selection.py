"""FreeCAD's selection marks the labels of the findings that are selected."""

from __future__ import annotations

from typing import Any

import FreeCAD
import FreeCADGui

from ..annotations.notes import id_of


class Observer:
    """Hears of every change of the selection."""

    def addSelection(self, document: str, name: str, *_: Any) -> None:  # noqa: N802
        """Something was added."""
        mark(document, name)

    def removeSelection(self, document: str, name: str, *_: Any) -> None:  # noqa: N802
        """Something was taken away."""
        mark(document, name)

    def setSelection(self, document: str, *_: Any) -> None:  # noqa: N802
        """The selection was set as a whole."""
        self.clearSelection(document)

    def clearSelection(self, document: str, *_: Any) -> None:  # noqa: N802
        """The selection was emptied."""
        found = FreeCAD.listDocuments().values()
        for doc in found:
            if document in ("", doc.Name):
                for obj in doc.Objects:
                    mark(doc.Name, obj.Name)


_observer: Observer | None = None


def watch() -> None:
    """Begin to listen; once for all checks."""
    global _observer  # noqa: PLW0603 # FreeCAD must not hear of a second one
    if _observer is None:
        _observer = Observer()
        FreeCADGui.Selection.addObserver(_observer)


def mark(document: str, name: str) -> None:
    """Mark the selected findings of a check object; other objects are left alone."""
    obj = FreeCAD.getDocument(document).getObject(name) if document else None
    view = getattr(getattr(obj, "ViewObject", None), "Proxy", None)
    if view is not None and hasattr(view, "scene"):
        view.pick(selected_findings(obj))


def selected_findings(obj: Any) -> list[str]:
    """Ids of the findings of a check object that are selected."""
    chosen = FreeCADGui.Selection.getSelectionEx(obj.Document.Name)
    return [id_of(sub) for s in chosen if s.ObjectName == obj.Name for sub in s.SubElementNames]

"""What shows a joint: the document's 3D views, their camera, the annotations of its check."""

from __future__ import annotations

from typing import Any

import FreeCADGui


def camera_of(document: Any) -> Any:
    """The camera of the view in front; None where that is no 3D view."""
    shown = FreeCADGui.getDocument(document.Name)
    view = shown.ActiveView if shown is not None else None
    return view.getCameraNode() if view is not None and hasattr(view, "viewTop") else None


def views_of(document: Any) -> list[Any]:
    """All 3D views of the document."""
    shown = FreeCADGui.getDocument(document.Name)
    return list(shown.mdiViewsOfType("Gui::View3DInventor"))


def annotations_of(check: Any) -> Any:
    """The check's view; None where it is shown without NeckFit's, or is gone."""
    if check is None or not _is_there(check):
        return None
    view = getattr(check.ViewObject, "Proxy", None)
    return view if hasattr(view, "show_meanwhile") else None


def _is_there(obj: Any) -> bool:
    try:
        return obj.Document is not None and obj.Document.getObject(obj.Name) is not None
    except ReferenceError:
        return False

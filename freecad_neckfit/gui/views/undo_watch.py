"""After undo and redo FreeCAD marks what it took back as if it were to be built anew: it is."""

from __future__ import annotations

from typing import Any

import FreeCAD
from PySide import QtCore

from ...features.roles import role_of

MOST = 3
"""Rounds: what is built anew marks what rests on it, the check on the joint."""
_watching: list[UndoWatch] = []


class UndoWatch:
    """Builds the joint's marked objects anew, once FreeCAD is done with undo or redo."""

    def slotUndoDocument(self, document: Any) -> None:  # noqa: N802 (FreeCAD's name)
        """A step was taken back."""
        _rest_later(document.Name)

    def slotRedoDocument(self, document: Any) -> None:  # noqa: N802 (FreeCAD's name)
        """A step was made again."""
        _rest_later(document.Name)


def watch() -> None:
    """Hear of undo and redo from now on."""
    if not _watching:
        _watching.append(UndoWatch())
        FreeCAD.addDocumentObserver(_watching[0])


def touched(document: Any) -> list[Any]:
    """Objects of joints, and containers, that bear FreeCAD's mark; of the designer's no others."""
    return [
        o
        for o in document.Objects
        if "Touched" in o.State and (role_of(o) or o.TypeId == "App::Part")
    ]


def rest(document: Any) -> None:
    """Build what is marked anew, unless the designer has stopped recomputes."""
    if getattr(document, "RecomputesFrozen", False):
        return
    for _ in range(MOST):
        marked = touched(document)
        if not marked:
            return
        document.recompute(marked)


def _rest_later(name: str) -> None:
    QtCore.QTimer.singleShot(0, lambda: _rest_named(name))


def _rest_named(name: str) -> None:
    document = FreeCAD.listDocuments().get(name)
    # A step that has begun since would take this in.
    if document is not None and not document.HasPendingTransaction:
        rest(document)

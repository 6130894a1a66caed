"""Which joint the designer means."""

from __future__ import annotations

from typing import Any

import FreeCADGui
from PySide import QtGui

from ...features.roles import role_of
from ...job.errors import BadInput
from ..translate import tr


def joint_meant(document: Any) -> Any:
    """The joint that is selected, or the only one, or the one the designer names when asked.

    None where the question was cancelled. Raises BadInput where the document has no joint.
    """
    joints = joints_of(document)
    if not joints:
        raise BadInput(tr("This document has no joint; make one first."))
    chosen = selected_joints(document)
    if len(chosen) == 1:
        return chosen[0]
    return joints[0] if len(joints) == 1 else _asked(chosen or joints)


def joints_of(document: Any) -> list[Any]:
    """All joints of a document."""
    return [o for o in document.Objects if role_of(o) == "joint"]


def selected_joints(document: Any) -> list[Any]:
    """The joints that what is selected belongs to, each once."""
    found: list[Any] = []
    for obj in FreeCADGui.Selection.getSelection(document.Name):
        near = [obj, getattr(obj, "Joint", None), *obj.InList]
        found += [o for o in near if role_of(o) == "joint" and o not in found]
    return found


def _asked(joints: list[Any]) -> Any:
    names = [f"{joint.Label} ({joint.Name})" for joint in joints]
    name, sure = QtGui.QInputDialog.getItem(
        FreeCADGui.getMainWindow(),
        tr("Fit"),
        tr("Which joint do you want to fit?"),
        names,
        0,
        False,  # Qt's way: the list cannot be edited
    )
    return joints[names.index(name)] if sure else None

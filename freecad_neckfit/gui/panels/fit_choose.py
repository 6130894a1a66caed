"""Which joint the designer means."""

from __future__ import annotations

from typing import Any

import FreeCADGui
from PySide import QtGui

from ...job.errors import BadInput
from ..commands.chosen import joint_of, joints_of
from ..commands.command import selected
from ..translate import tr


def joint_meant(document: Any) -> Any:
    """The joint that is selected, or the only one, or the one the designer names when asked.

    None where the question was cancelled. Raises BadInput where the document has no joint.
    """
    joints = joints_of(document)
    if not joints:
        raise BadInput(tr("This document has no joint; make one first."))
    return joint_of(document, selected(document)) or _asked(joints)


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

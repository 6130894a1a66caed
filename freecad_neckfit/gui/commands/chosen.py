"""What of NeckFit's a selection means: the joint, the check."""

from __future__ import annotations

from typing import Any

from ...features.roles import role_of
from ...job.errors import BadInput
from ..translate import tr
from .command import Selection


def joints_of(document: Any) -> list[Any]:
    """All joints of a document."""
    return [] if document is None else [o for o in document.Objects if role_of(o) == "joint"]


def joint_of(document: Any, selection: Selection = ()) -> Any:
    """The joint that is meant: of what is selected, else the document's only one; or None."""
    for chosen in selection:
        found = _joint_of(chosen.Object)
        if found is not None:
            return found
    joints = joints_of(document)
    return joints[0] if len(joints) == 1 else None


def joint_asked(document: Any, selection: Selection = ()) -> Any:
    """The joint that is meant, or else the one that the designer names when asked.

    None where the question was cancelled. Raises BadInput where the document has no joint.
    """
    joints = joints_of(document)
    if not joints:
        raise BadInput(tr("This document has no joint; make one first."))
    return joint_of(document, selection) or _ask(joints)


def has_joint(document: Any, selection: Selection) -> bool:
    """Whether it is clear which joint is meant."""
    return joint_of(document, selection) is not None


def check_of(document: Any, selection: Selection = ()) -> Any:
    """The check of the joint that is meant; or None."""
    joint = joint_of(document, selection)
    if joint is None:
        return None
    return next((o for o in joint.InList if role_of(o) == "check"), None)


def has_check(document: Any, selection: Selection) -> bool:
    """Whether the joint that is meant has been checked."""
    return check_of(document, selection) is not None


def _joint_of(obj: Any) -> Any:
    if role_of(obj) == "joint":
        return obj
    linked = getattr(obj, "Joint", None)
    if linked is not None and role_of(linked) == "joint":
        return linked
    # What states parameters is linked by its joint.
    return next((o for o in obj.InList if role_of(o) == "joint"), None) if role_of(obj) else None


def _ask(joints: list[Any]) -> Any:
    import FreeCADGui
    from PySide import QtGui

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

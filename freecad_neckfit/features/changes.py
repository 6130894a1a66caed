"""What follows at once from a change that the designer makes to a property."""

from __future__ import annotations

from typing import Any

from . import values
from .mend_units import ENGINE, mend_units
from .properties import flag_of, parameters_of, property_of
from .roles import LINKS, role_of


def after_change(obj: Any, name: str) -> None:
    """Mark a worked-out value that was set as stated, and checks of the joint as stale or fresh.

    Nothing follows while a document is read, while a step is undone or redone (whatever followed
    then is undone along with it), and while this program itself sets properties.
    """
    document = obj.Document
    if values.is_writing() or document.Restoring or document.Transacting:
        return
    role = role_of(obj)
    if name == ENGINE:
        mend_units(obj)
    if name == ENGINE or (role == "joint" and name in LINKS):
        refresh_checks(obj)
        return
    parameter = _parameter(role, name)
    if parameter is None:
        return
    flag = flag_of(parameter)
    if flag and name != flag and not getattr(obj, flag):
        setattr(obj, flag, True)
    refresh_checks(obj)


def refresh_checks(obj: Any) -> None:
    """Say in every check that looks at the object, through its joint, whether it is stale."""
    from .staleness import refresh

    joints = [o for o in (obj, *obj.InList) if role_of(o) == "joint"]
    for check in {o for joint in joints for o in joint.InList if role_of(o) == "check"}:
        refresh(check)


def _parameter(role: str, name: str) -> Any:
    return next((p for p in parameters_of(role) if name in (property_of(p), flag_of(p))), None)

"""The commands that check: one joint, or all that are out of date."""

from __future__ import annotations

from typing import Any

from ...features.roles import role_of
from .chosen import has_joint, joint_of
from .command import Command, Selection
from .macro import call


def _check(document: Any, selection: Selection) -> None:
    call("features.run_check", "check", joint_of(document, selection))


def _recheck(document: Any, _: Selection) -> None:
    call("features.acts", "recheck", document)


def _has_stale(document: Any, _: Selection) -> bool:
    return any(role_of(o) == "check" and o.Stale for o in document.Objects)


COMMAND = Command(
    name="NeckFit_Check",
    menu="&Check the joint",
    tip="Check the joint by calculation and on its solids, and show the findings in the 3D view",
    icon="check.svg",
    shortcut="N, C",
    run=_check,
    possible=has_joint,
)
RECHECK = Command(
    name="NeckFit_Recheck",
    menu="Check &all that is out of date",
    tip="Check every joint of this document that changed since its last check",
    icon="recheck.svg",
    shortcut="N, A",
    run=_recheck,
    possible=_has_stale,
)

"""The command that makes a new joint."""

from __future__ import annotations

from typing import Any

from ..translate import tr
from .chosen import joints_of
from .command import Command, Selection
from .macro import call, put


def _run(document: Any, _: Selection) -> None:
    from ..panels.next_step import tell_next
    from ..preferences import shop_defaults
    from ..views.look import look_at

    before = set(joints_of(document))
    defaults = shop_defaults()
    if defaults:
        call("features.acts", "new_joint", document, defaults)
    else:
        call("features.acts", "start_joint", document)
    joint = next(j for j in joints_of(document) if j not in before)
    if str(joint.Label) == "Joint" != tr("Joint"):
        put(joint, "Label", tr("Joint"))
    look_at(joint)
    tell_next(joint)


COMMAND = Command(
    name="NeckFit_New",
    menu="&New joint",
    tip="Add a joint that fits, to begin with, or one with the shop's values that the preferences "
    "name",
    icon="new_joint.svg",
    shortcut="N, N",
    run=_run,
    makes_document=True,
)

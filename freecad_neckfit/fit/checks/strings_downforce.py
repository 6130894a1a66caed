"""Force with which all strings together press on the saddles."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, together
from ..strings import is_few, per_string


def read(case: Case) -> Reading:
    """Sum [N] of 2·T·sin(β/2) over the strings; negative would lift them off."""
    forces = tuple(
        string.tension * turn for string, turn in zip(case.strings, case.turns, strict=True)
    )
    detail = {"force of each string": per_string(forces)} if is_few(forces) else {}
    return Reading(value=sum(forces), detail=detail)


CHECK = Check(
    id="strings.downforce",
    title="strings' force on the saddles",
    unit=Kind.FORCE,
    gravity=Gravity.TELLS,
    reads=together(
        SADDLES,
        ("bridge.anchor_back", "bridge.anchor_height", "strings.pitch", "strings.mass"),
    ),
    read=read,
    measure="",
    consequence="This is what holds the strings on their saddles.",
    mending="",
)

"""Pull of all strings together."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SCALE, together
from ..strings import per_string


def read(case: Case) -> Reading:
    """Sum of all tensions [N], each mass per length · (2·scale·frequency)²."""
    tensions = tuple(string.tension for string in case.strings)
    return Reading(value=sum(tensions), detail={"pull of each string": per_string(tensions)})


CHECK = Check(
    id="strings.pull",
    title="pull of all strings",
    unit=Kind.FORCE,
    gravity=Gravity.TELLS,
    reads=together(SCALE, ("strings.pitch", "strings.mass")),
    read=read,
    measure="",
    consequence="This is what the neck joint has to hold.",
    mending="",
)

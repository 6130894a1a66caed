"""Break angle of the strings over their saddles."""

from __future__ import annotations

from ...job.quantity import Kind
from ..break_angle import angle_of
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, together
from ..strings import is_few, least, per_string, place_of_least


def read(case: Case) -> Reading:
    """Least break angle [degrees] of any string, its saddle at the height the string asks for."""
    turns = case.turns
    detail = {"break angle of each string": angle_of(per_string(turns))} if is_few(turns) else {}
    return Reading(
        value=angle_of(least(turns)),
        place=place_of_least(turns, case.saddles.places),
        detail=detail,
    )


CHECK = Check(
    id="bridge.break_angle",
    title="break angle over the saddles",
    unit=Kind.ANGLE,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(SADDLES, ("bridge.anchor_back", "bridge.anchor_height")),
    read=read,
    low="limits.break_min",
    span=5.0,
    measure="",
    consequence="The strings hardly press on their saddles: they rattle and slip sideways.",
    mending="Raise the saddles over the anchor (a shallower pocket or one tipped back), or choose "
    "a bridge whose anchor lies lower; {short} are missing.",
)

"""Strings over the top, or the plate on it, under the playing hand."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..over_top import hand_x, places_under_hand, under_hand
from ..reading import Reading
from ..reads import SADDLES, together
from ..reads_joint import BINDING
from ..strings import is_few, least, per_string, place_of_least


def read(case: Case) -> Reading:
    """Least height [mm] of an open string over the finished top or the cover plate.

    Midway from the fretboard's end to the saddles unless the place is stated.
    """
    rooms = under_hand(case)
    detail, place = {}, None
    if is_few(rooms):
        detail = {"X": hand_x(case), "height of each string": per_string(rooms)}
        place = place_of_least(rooms, places_under_hand(case))
    return Reading(value=least(rooms), place=place, detail=detail)


CHECK = Check(
    id="strings.top",
    title="strings over the top under the hand",
    unit=Kind.LENGTH,
    gravity=Gravity.UGLY,
    reads=together(
        SADDLES,
        BINDING,
        (
            "neck.glue_line",
            "strings.hand",
            "limits.top_string_min",
            "neck.underside",
            "plate.under_overhang",
            "plate.clearance",
            "plate.reach",
        ),
        # The cut-out, within which there is no plate.
        ("pocket.width_end", "pocket.width_mouth", "pocket.corner_radius"),
    ),
    read=read,
    low="limits.top_string_min",
    span=2.0,
    measure="top_string",
    consequence="The strings lie closer to the body under the playing hand than was wished.",
    mending="Make the pocket shallower by {short}, tip it back, or do without the plate.",
)

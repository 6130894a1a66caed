"""Clearance of the open strings over the frets."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..buzz import open_room, open_worst
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, TRAVEL, together
from ..strings import is_few, least, per_string


def read(case: Case) -> Reading:
    """Least clearance [mm] of any open string over any crown, with what the saddles can do.

    Where the bridge cannot carry a string as high or as low as the set-up asks, the string lies
    where the bridge's travel ends.
    """
    rooms = tuple(
        open_room(case, string, saddle=saddle)
        for string, saddle in zip(case.strings, case.bridge.reached, strict=True)
    )
    detail = {"least of each string": per_string(rooms)} if is_few(rooms) else {}
    place = None
    if np.ndim(least(rooms)) == 0:
        index, fret = open_worst(case)
        detail |= {"string, from the treble": index + 1, "over fret": fret}
        place = case.strings[index].crown_place(fret)
    return Reading(value=least(rooms), place=place, detail=detail)


CHECK = Check(
    id="strings.open",
    title="open strings over every fret",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(SADDLES, TRAVEL),
    read=read,
    low="limits.open_buzz_min",
    span=0.2,
    measure="string_open",
    consequence="An open string rattles on a fret.",
    mending="Raise the action, the nut or the saddles, or change the relief; {short} are missing. "
    "Where the saddles are at their end, the pocket must be deeper.",
)

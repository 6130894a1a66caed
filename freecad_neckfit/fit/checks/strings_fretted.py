"""Clearance of the fretted strings over the frets that follow."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..buzz import fretted_room, fretted_worst
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, TRAVEL, together
from ..strings import is_few, least, per_string


def read(case: Case) -> Reading:
    """Least clearance [mm] over a later crown of any string fretted at any fret.

    Where the bridge cannot carry a string as high or as low as the set-up asks, the string lies
    where the bridge's travel ends.
    """
    rooms = tuple(
        fretted_room(case, string, saddle=saddle)
        for string, saddle in zip(case.strings, case.bridge.reached, strict=True)
    )
    detail = {"least of each string": per_string(rooms)} if is_few(rooms) else {}
    place = None
    if np.ndim(least(rooms)) == 0:
        index, pressed, fret = fretted_worst(case)
        detail |= {
            "string, from the treble": index + 1,
            "fretted at": pressed,
            "over fret": fret,
        }
        place = case.strings[index].crown_place(fret)
    return Reading(value=least(rooms), place=place, detail=detail)


CHECK = Check(
    id="strings.fretted",
    title="fretted strings over every later fret",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(SADDLES, TRAVEL),
    read=read,
    low="limits.fretted_buzz_min",
    span=0.2,
    measure="string_fretted",
    consequence="A fretted string buzzes or chokes on a later fret.",
    mending="Raise the action or the saddles, or change the relief; {short} are missing. "
    "Where the saddles are at their end, the pocket must be deeper.",
)

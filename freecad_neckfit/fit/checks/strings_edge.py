"""Outer strings to the fretboard's edges at the last fret."""

from __future__ import annotations

import numpy as np

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, SEAT, together
from ..strings import is_few, least, place_of_least
from ..swing import sideways


def read(case: Case) -> Reading:
    """Least distance [mm] of an outer string to the edge, the neck swung as far as it can.

    Half the width at the last fret, less |y| of the string, less the string's shift when the
    neck swings in its side clearance.
    """
    last = float(case.frets.count)
    rooms, places = [], []
    for string, saddle_x in ((case.strings[i], case.saddles.x[i]) for i in (0, -1)):
        u = string.fret(last)
        y, half = string.y(u), case.frets.half_width(u)
        shift = sideways(case, saddle_x=saddle_x) * (u - string.nut) / string.scale
        rooms.append(half - np.abs(y) - shift)
        places.append(string.crown_place(case.frets.count))
    values = tuple(rooms)
    detail = {}
    if is_few(values):
        detail = {"bridge's centre missed by up to": sideways(case, saddle_x=case.saddles.middle_x)}
    return Reading(value=least(values), place=place_of_least(values, tuple(places)), detail=detail)


CHECK = Check(
    id="strings.edge",
    title="outer strings to the fretboard's edges at the last fret",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(
        SADDLES,
        SEAT,
        (
            "neck.width_nut",
            "neck.width_end",
            "neck.heel_width_mouth",
            "pocket.width_end",
            "pocket.width_mouth",
        ),
    ),
    read=read,
    low="limits.edge_min",
    measure="",
    consequence="An outer string slips over the edge of the upper frets.",
    mending="Choose a narrower string spread or a wider fretboard, or less side clearance; "
    "{short} are missing.",
)

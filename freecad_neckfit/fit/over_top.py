"""Strings over what lies between the fretboard's end and the bridge: top, cover plate, rings."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array, pick, within
from ..job.parameters import ROLES
from ..job.top import x_of_slope
from .board_edge import cutout_outline
from .cutout import clear_box, cutout
from .last_fret import Line
from .mount import finished_top, pickup_mount

if TYPE_CHECKING:
    from .case import Case

Point = tuple[Array, Array, Array]


def board_end(case: Case) -> Array:
    """Body-frame X [mm] past which nothing of the fretboard stands, at any height of its end."""
    end = case["neck.overhang"]
    low, high = (case.seated.body_x(x=end, z=case[f"neck.{k}"]) for k in ("underside", "height"))
    return np.maximum(low, high)


def _plate_start(case: Case) -> Array:
    """Body-frame X [mm] past the fretboard, or past the cut-out that is kept clear of it."""
    box = case.once(clear_box)
    return case.once(board_end) if box is None else box.end


def _first_on_plate(case: Case, line: Line) -> Array:
    """Body-frame X [mm] where a string comes over the plate.

    It counts as unbroken over its openings for pickups. Round a fretboard that ends within the
    cut-out the string leaves that over its corner or its round end, not over its apex.
    """
    start = _plate_start(case)
    if np.all(start >= case["plate.clearance"]):
        return start
    around, x = case.once(cutout_outline), case["plate.clearance"]
    for _ in range(2):
        past = np.maximum(np.abs(line.across(x)) - around.arc_y, 0.0)
        arc = np.sqrt(np.maximum(np.square(around.radius) - np.square(past), 0.0))
        x = np.where(past > 0, around.arc_x + arc, around.end)
    return np.maximum(start, x)


def hand_x(case: Case) -> Array:
    """Body-frame X [mm] of the playing hand: midway from fretboard end to saddles unless stated."""
    stated = case["strings.hand"]
    return (case.once(board_end) + case.saddles.middle_x) / 2 if stated is None else stated


def under_hand(case: Case) -> tuple[Array, ...]:
    """Each open string over the finished top, or the plate on it, under the hand [mm].

    A hand stated over the fretboard has the plate under it where that runs under the overhang.
    """
    x = hand_x(case)
    rooms = []
    for index, string in enumerate(case.strings):
        y = _open_y(case, index, x=x)
        top = finished_top(case, x=x, y=0.0 if case["body.top"] == "flat" else y)
        if _has_plate(case, string.share):
            top = top + np.where(_on_plate(case, x=x, y=y), case["plate.thickness"], 0.0)
        rooms.append(_open_z(case, index, x=x) - top)
    return tuple(rooms)


def _on_plate(case: Case, *, x: Array, y: Array) -> Array:
    """Whether the plate lies at (X, Y); it counts as unbroken over its openings for pickups."""
    around, box = case.once(cutout)
    beside = np.abs(y)
    cut_out = beside < around.half_width(x)
    if box is not None:
        cut_out = cut_out | ((x < box.end) & (beside < box.half))
    return np.logical_not(cut_out) & (x <= case["plate.reach"])


def places_under_hand(case: Case) -> tuple[Point, ...]:
    """Body-frame points of the open strings under the hand."""
    x = hand_x(case)
    return tuple(
        (x, _open_y(case, i, x=x), _open_z(case, i, x=x)) for i in range(len(case.strings))
    )


def over_plate_and_rings(case: Case) -> tuple[tuple[Array, ...], tuple[tuple[Line, Array], ...]]:
    """Strings fretted at the last fret over the plate and over every pickup ring [mm]; where.

    With each room goes the string's line and the X where it is found. Where plate or ring does
    not reach under a string the room is infinite.
    """
    found = [
        (room, (line, x))
        for string, line, (saddle, _) in zip(
            case.strings, case.last_fretted, case.saddles.points, strict=True
        )
        for room, x in _rooms(case, line, share=string.share, saddle=saddle)
    ]
    return tuple(room for room, _ in found), tuple(at for _, at in found)


def has_rings(case: Case) -> bool:
    """Whether any pickup has a ring that stands over its mount."""
    return bool(ringed(case))


def ringed(case: Case) -> tuple[str, ...]:
    """Roles of the pickups that have a ring."""
    return tuple(
        role
        for role in ROLES
        if case[f"pickup_{role}.fitted"] and np.any(np.asarray(case[f"pickup_{role}.ring"]) > 0)
    )


def _open_z(case: Case, index: int, *, x: Array) -> Array:
    """Z [mm] of an open string's underside at body-frame X [mm]."""
    sin, cos = case.slopes[index]
    saddle_x, saddle_z = case.saddles.points[index]
    return saddle_z - (saddle_x - x) * (sin / cos)


def _open_y(case: Case, index: int, *, x: Array) -> Array:
    """Y [mm] of an open string at body-frame X [mm]."""
    string, (_, cos) = case.strings[index], case.slopes[index]
    along = (case.saddles.x[index] - x) / (cos * np.sqrt(1 + np.square(string.climb)))
    return string.y(string.saddle - along)


def _has_plate(case: Case, share: float) -> bool:
    """Whether the cover plate lies on this string's side; a middle string runs along its edge."""
    return case["plate.cover"] == "surround" or (case.plate_there and share <= 0.5)


def _rooms(case: Case, line: Line, *, share: float, saddle: Array) -> list[tuple[Array, Array]]:
    found = []
    if _has_plate(case, share):
        first, last = _first_on_plate(case, line), np.minimum(case["plate.reach"], saddle)
        x = _nearest_to_top(case, line, first=first, last=last)
        y = 0.0 if case["body.top"] == "flat" else line.across(x)
        top = finished_top(case, x=x, y=y) + case["plate.thickness"]
        found.append((np.where(first <= last, line.height(x) - top, np.inf), x))
    for role in ringed(case):
        half, middle = case[f"pickup_{role}.length"] / 2, case[f"pickup_{role}.x"]
        x = np.where(line.climb >= 0, middle - half, middle + half)
        ring = case[f"pickup_{role}.ring"]
        room = line.height(x) - pickup_mount(case, role=role) - ring
        found.append((np.where(ring > 0, room, np.inf), x))
    return found


def _nearest_to_top(case: Case, line: Line, *, first: Array, last: Array) -> Array:
    """X [mm] in [first, last] where a string comes nearest to the top, which is never hollow."""
    if case["body.top"] == "flat":
        return pick(line.climb >= 0, first, last)
    parallel = x_of_slope(case.values, slope=line.climb, y=line.across((first + last) / 2))
    return within(parallel, first, np.maximum(first, last))

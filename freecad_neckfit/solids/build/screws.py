"""Neck screws with their holes, inserts, ferrules' seats and the neck plate."""

from __future__ import annotations

from typing import Any

import numpy as np
import Part
from FreeCAD import Vector

from ...job.frames import Seat
from ...job.resolve import Values
from .floor import floor_height
from .shapes import UP, Point, Solid, peg, tapered

HEAD = 1.9
"""Head diameter in shank diameters, from memory."""
HEAD_HEIGHT = 0.6
"""Head height in shank diameters, from memory."""
INSERT = 1.6
"""Outer diameter of a threaded insert in shank diameters, from memory."""
SKIN = 1.0
"""How far drills stand out of the wood [mm]."""


def back_height(v: Values, x: float) -> float:
    """Height Z [mm] of the body's back at X, heel contour included."""
    share = 1 - (x + v["pocket.length"]) / v["body.contour_length"]
    return float(v["body.contour_depth"] * min(max(share, 0.0), 1.0) - v["body.thickness"])


def head_seat(v: Values, x: float) -> float:
    """Height Z [mm] of what a screw's head bears on at X: plate, ferrule seat or bare back."""
    if v["neck_plate.make"] == "ferrules":
        return back_height(v, x) + float(v["neck_plate.ferrule_depth"])
    seat = back_height(v, x) + float(v["screws.head_seat"])
    return seat - float(v["neck_plate.thickness"]) if v["neck_plate.make"] == "plate" else seat


def places(v: Values) -> list[Point]:
    """(X, Y) [mm] of each screw's axis, which runs along Z."""
    return [(float(x), float(y)) for x, y in zip(v["screw.x"], v["screw.y"], strict=True)]


def screws(v: Values) -> dict[str, Solid]:
    """``screw_1`` … each with shank and head, from head seat to tip."""
    return {f"screw_{i + 1}": _screw(v, x, y) for i, (x, y) in enumerate(places(v))}


def hole_cutters(v: Values) -> list[Solid]:
    """Clearance holes from the back to the pocket's floor, and the ferrules' seats."""
    low = -float(v["body.thickness"]) - SKIN
    holes = [
        peg(x, y, (low, floor_height(v, x) + SKIN), diameter=float(v["screws.body_hole"]))
        for x, y in places(v)
    ]
    if v["neck_plate.make"] != "ferrules" or v["neck_plate.ferrule_depth"] <= 0:
        return holes
    wide = float(v["neck_plate.ferrule_diameter"])
    return holes + [peg(x, y, (low, head_seat(v, x)), diameter=wide) for x, y in places(v)]


def neck_plate(v: Values) -> Solid | None:
    """The neck plate about the middle of the screws, following the back; None without one."""
    if v["neck_plate.make"] != "plate":
        return None
    middle = np.mean(places(v), axis=0) if places(v) else (-v["pocket.length"] / 2, 0.0)
    half = float(v["neck_plate.length"]) / 2, float(v["neck_plate.width"]) / 2
    ends = float(middle[0] - half[0]), float(middle[0] + half[0])
    bends = sorted(
        {
            *ends,
            *(
                x
                for x in (-v["pocket.length"], v["body.contour_length"] - v["pocket.length"])
                if v["body.contour_depth"] > 0 and ends[0] < x < ends[1]
            ),
        }
    )
    thick = float(v["neck_plate.thickness"])
    profile = [(float(x), back_height(v, x)) for x in bends]
    profile += [(x, z - thick) for x, z in reversed(profile)]
    y = float(middle[1])
    return tapered(profile, lambda _: y - half[1], lambda _: y + half[1])


def inserts(v: Values, seat: Seat) -> Any:
    """Threaded inserts in the neck frame, flush with the heel's bottom: a compound of sleeves."""
    shank, long = float(v["screws.shank"]), float(v["screws.insert_length"])
    sleeves = []
    for x, y in places(v):
        at = float((x - seat.x0) / np.cos(seat.tilt))  # where the axis enters the heel's bottom
        hole = peg(at, y, (-SKIN, long + SKIN), diameter=shank)
        sleeves.append(peg(at, y, (0.0, long), diameter=INSERT * shank).cut(hole))
    return Part.Compound(sleeves)


def _screw(v: Values, x: float, y: float) -> Solid:
    seat, shank = head_seat(v, x), float(v["screws.shank"]) / 2
    tip = seat + float(v["screws.length"])
    half = [
        (0.0, seat - 2 * HEAD_HEIGHT * shank),
        (HEAD * shank, seat - 2 * HEAD_HEIGHT * shank),
        (HEAD * shank, seat),
        (shank, seat),
        (shank, tip),
        (0.0, tip),
    ]
    corners = [Vector(x + r, y, z) for r, z in half]
    section = Part.Face(Part.makePolygon([*corners, corners[0]]))
    return section.revolve(Vector(x, y, 0), UP, 360.0)

"""Screws, holes, ferrules, inserts and neck plate in the pocket's floor."""

from __future__ import annotations

import math
from collections.abc import Iterator
from itertools import combinations

import numpy as np

from ..resolve import Values
from .plan import pocket_plan
from .pocket import back_height, floor_height
from .words import mm

LEAST_WOOD = 0.3
"""Thinnest wood [mm] between a seat and the floor."""


def places(v: Values) -> list[tuple[float, float]]:
    """(X, Y) [mm] of the screws."""
    return [(float(x), float(y)) for x, y in zip(v["screw.x"], v["screw.y"], strict=True)]


def complaints(v: Values) -> Iterator[str]:
    """Say which screw has no place, and which seat no wood."""
    yield from _in_the_pocket(v)
    yield from _apart(v)
    if v["neck_plate.make"] == "ferrules":
        yield from _ferrules(v)
    elif v["neck_plate.make"] == "plate":
        yield from _plate(v)
    else:
        yield from _counterbores(v)
    glue, insert = float(v["neck.glue_line"]), float(v["screws.insert_length"])
    if v["screws.fixing"] == "insert" and insert > glue:
        yield (
            f"screws.insert_length: {mm(v, insert)} is longer than the heel is high up to the glue "
            f"line, {mm(v, glue)}; make it shorter."
        )


def _in_the_pocket(v: Values) -> Iterator[str]:
    plan = pocket_plan(v)
    half_hole = float(v["screws.body_hole"]) / 2
    for number, (x, y) in enumerate(places(v), start=1):
        room = min(-x, x + plan.length, plan.half_width(x) - abs(y))
        if room < half_hole + LEAST_WOOD:
            yield (
                f"screw {number}: its hole of {mm(v, 2 * half_hole)} at X = {x:.1f}, Y = {y:.1f} "
                "mm "
                "does not lie within the pocket's floor; move it, or make the pocket larger."
            )
            return


def _apart(v: Values) -> Iterator[str]:
    wide = float(v["screws.body_hole"])
    if v["neck_plate.make"] == "ferrules":
        wide = max(wide, float(v["neck_plate.ferrule_diameter"]))
    if v["screws.fixing"] == "insert":
        wide = max(wide, 1.6 * float(v["screws.shank"]))
    for (i, a), (j, b) in combinations(enumerate(places(v), start=1), 2):
        if math.dist(a, b) < wide + LEAST_WOOD:
            yield (
                f"screw {j}: it is {mm(v, math.dist(a, b))} from screw {i}, and what holds them is "
                f"{mm(v, wide)} wide; move them apart."
            )
            return


def _ferrules(v: Values) -> Iterator[str]:
    depth, wide = (float(v[f"neck_plate.ferrule_{key}"]) for key in ("depth", "diameter"))
    hole = float(v["screws.body_hole"])
    if depth > 0 and wide < hole:
        yield (
            f"neck_plate.ferrule_diameter: {mm(v, wide)} is narrower than screws.body_hole, "
            f"{mm(v, hole)}; make it wider."
        )
    for number, (x, _) in enumerate(places(v), start=1):
        floor = min(floor_height(v, x + side * wide / 2) for side in (-1, 1))
        wood = floor - back_height(v, x) - depth
        if wood < LEAST_WOOD:
            yield (
                f"neck_plate.ferrule_depth: {mm(v, depth)} goes through to the pocket at screw "
                f"{number}; make it shallower."
            )
            return


def _plate(v: Values) -> Iterator[str]:
    thick, seat = float(v["neck_plate.thickness"]), float(v["screws.head_seat"])
    if seat > thick:
        yield (
            f"screws.head_seat: {mm(v, seat)} is deeper than the neck plate is thick, "
            f"{mm(v, thick)}; "
            "make it shallower."
        )
    found = places(v)
    if not found:
        return
    middle = np.mean(found, axis=0)
    for number, (x, y) in enumerate(found, start=1):
        if (
            abs(x - middle[0]) > float(v["neck_plate.length"]) / 2
            or abs(y - middle[1]) > float(v["neck_plate.width"]) / 2
        ):
            yield (
                f"neck_plate.length: screw {number} lies beside a neck plate of "
                f"{mm(v, v['neck_plate.length'])} by {mm(v, v['neck_plate.width'])}; make the "
                "plate "
                "larger, or move the screw."
            )
            return


def _counterbores(v: Values) -> Iterator[str]:
    depth = float(v["screws.head_seat"])
    for number, (x, _) in enumerate(places(v), start=1):
        if floor_height(v, x) - back_height(v, x) - depth < LEAST_WOOD:
            yield (
                f"screws.head_seat: {mm(v, depth)} goes through to the pocket at screw {number}; "
                "make "
                "it shallower."
            )
            return

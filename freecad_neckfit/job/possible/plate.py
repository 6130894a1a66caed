"""The cover plate in one piece."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..frames import seat
from ..resolve import Values
from .openings import AROUND, fitted
from .plan import Plan, pocket_plan
from .words import mm

LEAST = 1.0
"""Narrowest strip of a plate [mm]."""


def complaints(v: Values) -> Iterator[str]:
    """Say what parts the plate, or leaves nothing of it."""
    if v["plate.cover"] == "none":
        return
    yield from _cut_out(v)
    yield from _end(v)
    yield from _beside(v)
    yield from _pickups(v)


def cut_out(v: Values) -> Plan:
    """Plan of the cut-out: the pocket's, moved outward by the clearance."""
    plan, by = pocket_plan(v), float(v["plate.clearance"])
    return Plan(
        name="plate's cut-out",
        half=plan.half + by * math.hypot(1, plan.slope) - by * plan.slope,
        slope=plan.slope,
        length=plan.length + by,
        corner=plan.corner + by,
        radius=None if plan.radius is None else plan.radius + by,
    )


def _cut_out(v: Values) -> Iterator[str]:
    plan = cut_out(v)
    touch = plan.corner / math.tan((math.pi / 2 - math.atan(plan.slope)) / 2)
    if plan.radius is None and touch > min(plan.half, plan.length) - 0.1:
        yield (
            f"plate.clearance: {mm(v, v['plate.clearance'])} rounds the cut-out's corners more "
            "than "
            "its end allows; make it smaller."
        )


def _end(v: Values) -> Iterator[str]:
    reach, end = float(v["plate.reach"]), float(v["plate.clearance"])
    if not v["plate.under_overhang"]:
        found, bound = seat(v), float(v["neck.binding_width"]) > 0
        foot = float(v["neck.underside"]) - (float(v["neck.binding"]) if bound else 0.0)
        ends = (found.to_body(x=v["neck.overhang"], z=z)[0] for z in (v["neck.height"], foot))
        end = max(end, float(max(ends)) + float(v["plate.clearance"]))
    if reach < end + LEAST:
        yield (
            f"plate.reach: {mm(v, reach)} leaves nothing of the plate behind its cut-out, which "
            "ends "
            f"at {mm(v, end)}; make it longer."
        )


def _beside(v: Values) -> Iterator[str]:
    """Find where the cut-out would break out of the block beside the pocket (own outline)."""
    if v["body.outline"] != "own":
        return
    plan = cut_out(v)
    sides = ("treble", "bass") if v["plate.cover"] == "surround" else ("treble",)
    for side in sides:
        block, inner = float(v[f"body.block_{side}"]), -float(v[f"body.cutaway_{side}"])
        half = max(plan.half_width(-plan.length), plan.half_width(min(inner, 0.0)))
        if not v["plate.under_overhang"]:
            half = max(half, float(v["neck.width_end"]) / 2 + float(v["plate.clearance"]))
        if half > block - LEAST / 5:
            yield (
                f"plate.clearance: the cut-out reaches {mm(v, half)} from the centreline and "
                "leaves "
                f"nothing of the plate within body.block_{side}, {mm(v, block)}; make it smaller."
            )


def _pickups(v: Values) -> Iterator[str]:
    plan, reach = cut_out(v), float(v["plate.reach"])
    half = max(plan.half_width(0.0), plan.half_width(-plan.length)) + float(v["plate.margin"])
    for role in fitted(v):
        x, length, width = (float(v[f"pickup_{role}.{key}"]) for key in ("x", "length", "width"))
        first, last = x - length / 2 - AROUND, x + length / 2 + AROUND
        if first < reach < last or (last < reach and width / 2 + AROUND > half - LEAST):
            yield (
                f"plate.margin: the opening of the {role} pickup, {mm(v, width)} wide and up to "
                f"{mm(v, last)} from the end wall, parts a plate {mm(v, 2 * half)} wide that "
                "ends at "
                f"{mm(v, reach)}; make the plate wider, or end it elsewhere."
            )

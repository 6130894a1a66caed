"""Heel, fretboard, binding and truss rod as wood."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..resolve import Values
from .plan import heel_plan
from .words import mm

LEAST_WOOD = 0.3
"""Thinnest wood [mm] that is still wood: a fretboard's edge, a heel over its chamfer."""
LEAST_OVERHANG = 0.01
"""Shorter overhangs [mm] are none."""
LEAST_SHAFT = 10.0
"""Shortest neck [mm] between nut and heel."""


def complaints(v: Values) -> Iterator[str]:
    """Say what of the neck cannot be made."""
    yield from heel_plan(v).complaints(v)
    yield from _lengths(v)
    yield from _heel_edge(v)
    yield from _board(v)
    yield from _binding(v)
    yield from _rod(v)


def _lengths(v: Values) -> Iterator[str]:
    heel, nut = float(v["neck.heel_length"]), float(v["neck.nut_to_heel"])
    if nut < heel + LEAST_SHAFT:
        yield (
            f"neck.nut_to_heel: {mm(v, nut)} leaves no neck between the nut and a heel "
            f"{mm(v, heel)} long; make it longer."
        )
    joint = nut - float(v["pocket.length"])
    if joint < LEAST_SHAFT:
        yield (
            f"neck.nut_to_heel: {mm(v, nut)} leaves no neck outside a pocket "
            f"{mm(v, v['pocket.length'])} long; make it longer."
        )
    if float(v["neck.rod_end"]) > nut - LEAST_SHAFT:
        yield f"neck.rod_end: {mm(v, v['neck.rod_end'])} leaves no channel; make it shorter."
    if 0 < float(v["neck.overhang"]) < LEAST_OVERHANG:
        yield (
            f"neck.overhang: {float(v['neck.overhang']):.4f} mm is too short to exist; state 0, or "
            "another neck.nut_to_heel if it is worked out."
        )


def _heel_edge(v: Values) -> Iterator[str]:
    edge, plan = float(v["neck.heel_edge"]), heel_plan(v)
    narrowest = min(plan.half, plan.half_width(-plan.length))
    room = min(float(v["neck.glue_line"]), narrowest, plan.length) - LEAST_WOOD
    touch = plan.corner / math.tan((math.pi / 2 - math.atan(plan.slope)) / 2)
    if edge > 0 and (edge > room or edge + touch > plan.length or edge + touch > plan.half):
        yield (
            f"neck.heel_edge: a chamfer of {mm(v, edge)} does not fit the heel and its corners; "
            "make "
            "it smaller."
        )


def half_width(v: Values, x: float) -> float:
    """Centreline to the fretboard's edge [mm], binding included, at neck-frame x."""
    nut, end = float(v["neck.width_nut"]), float(v["neck.width_end"])
    return (nut + (end - nut) * _share(v, x)) / 2


def _share(v: Values, x: float) -> float:
    nut = float(v["neck.nut_to_heel"])
    return (x + nut) / (nut + float(v["neck.overhang"]))


def _edge_height(v: Values, x: float) -> float:
    """Height z [mm] of the fretboard's top at its edge; -infinite where the radius is too small."""
    start, end = float(v["neck.radius_nut"]), float(v["neck.radius_end"])
    radius, half = start + (end - start) * _share(v, x), half_width(v, x)
    if half >= 0.9 * radius:
        return -math.inf
    return float(v["neck.height"]) - radius + math.sqrt(radius**2 - half**2)


def _board(v: Values) -> Iterator[str]:
    glue, under = float(v["neck.glue_line"]), float(v["neck.underside"])
    nut, end = float(v["neck.nut_to_heel"]), float(v["neck.overhang"])
    places = [(-nut * i / 8, glue, "neck.glue_line") for i in range(9)]
    if end > 0:
        places += [(end * i / 4, under, "neck.underside") for i in range(5)]
    for x, bottom, key in places:
        wood = _edge_height(v, x) - bottom
        if wood < LEAST_WOOD:
            yield (
                f"neck.height: {mm(v, v['neck.height'])} with a fretboard "
                f"{mm(v, 2 * half_width(v, x))} wide and its radius leaves no wood over {key}, "
                f"{mm(v, bottom)}, at the fretboard's edge; make the neck higher or the board "
                "flatter."
            )
            return


def _binding(v: Values) -> Iterator[str]:
    width, hangs = float(v["neck.binding_width"]), float(v["neck.binding"])
    narrowest = min(float(v["neck.width_nut"]), float(v["neck.width_end"]))
    if hangs > 0 and width == 0:
        yield (
            f"neck.binding: {mm(v, hangs)} hang below the overhang, but neck.binding_width is 0; "
            "state the binding's width too."
        )
    if width > narrowest / 3:
        yield (
            f"neck.binding_width: {mm(v, width)} is more than a third of a fretboard "
            f"{mm(v, narrowest)} wide; make it narrower."
        )
    if 0 < width < 0.05:
        yield (f"neck.binding_width: {width:.4f} mm is too thin; state 0 or at least 0.05 mm.")


def _rod(v: Values) -> Iterator[str]:
    depth, glue = float(v["neck.rod_depth"]), float(v["neck.glue_line"])
    if v["neck.rod"] != "none" and depth > glue - LEAST_WOOD:
        yield (
            f"neck.rod_depth: {mm(v, depth)} lies at or above the glue line, {mm(v, glue)}, so "
            "there "
            "is no channel; make it smaller."
        )
    if v["neck.rod"] != "none" and float(v["neck.rod_width"]) > float(v["neck.width_nut"]) / 2:
        yield (
            f"neck.rod_width: {mm(v, v['neck.rod_width'])} is more than half the neck's width at "
            "the "
            "nut; make it narrower."
        )

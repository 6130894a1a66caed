"""The pocket in the body's thickness and between its sides."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..resolve import Values
from ..top import top_height
from .plan import Plan, pocket_plan
from .words import mm

LEAST_FLOOR = 0.2
"""Thinnest floor [mm] that holds the body together."""
LEAST_DEPTH = 0.5
"""Shallowest pocket [mm] at its mouth or end."""


def floor_height(v: Values, x: float) -> float:
    """Height Z [mm] of the bare floor at X."""
    return -float(v["pocket.depth"]) + x * math.tan(math.radians(float(v["pocket.angle"])))


def back_height(v: Values, x: float) -> float:
    """Height Z [mm] of the body's back at X, heel contour included."""
    share = 1 - (x + float(v["pocket.length"])) / float(v["body.contour_length"])
    depth = float(v["body.contour_depth"])
    return depth * min(max(share, 0.0), 1.0) - float(v["body.thickness"])


def deepest(v: Values) -> tuple[float, float]:
    """Least wood [mm] under the floor, and its X [mm]: mouth, contour's end or wall."""
    mouth = -float(v["pocket.length"])
    bend = min(mouth + float(v["body.contour_length"]), 0.0)
    return min((floor_height(v, x) - back_height(v, x), x) for x in (mouth, bend, 0.0))


def complaints(v: Values) -> Iterator[str]:
    """Say why the pocket cannot be routed."""
    plan = pocket_plan(v)
    yield from plan.complaints(v)
    yield from _through(v)
    yield from _shallow(v, plan)
    yield from _fillet(v, plan)
    yield from _sides(v, plan)


def _through(v: Values) -> Iterator[str]:
    wood, x = deepest(v)
    if wood < LEAST_FLOOR:
        yield (
            f"pocket.depth: {mm(v, v['pocket.depth'])} goes through the body: {mm(v, -x)} from the "
            f"end wall the floor lies {mm(v, wood)} over the back ({mm(v, LEAST_FLOOR)} is the "
            "least); "
            "make pocket or contour shallower, or the body thicker."
        )


def _shallow(v: Values, plan: Plan) -> Iterator[str]:
    """Find where the floor comes out of the top: every top is concave, so it is at a corner."""
    need = max(LEAST_DEPTH, float(v["pocket.floor_fillet"]) + 0.2)
    depths = []
    for x in (-plan.length, 0.0):
        half = plan.half_width(x)
        lowest = min(float(top_height(v, x=x, y=y)) for y in (-half, half))
        depths.append((lowest - floor_height(v, x), x))
    depth, x = min(depths)
    if depth < need:
        yield (
            f"pocket.angle: {float(v['pocket.angle']):g}° leaves a pocket {mm(v, depth)} deep "
            f"{mm(v, -x)} from the end wall, and {mm(v, need)} is the least; make it deeper or the "
            "angle smaller."
        )


def _fillet(v: Values, plan: Plan) -> Iterator[str]:
    fillet = float(v["pocket.floor_fillet"])
    if plan.radius is None and fillet > plan.corner:
        yield (
            f"pocket.floor_fillet: {mm(v, fillet)} is more than pocket.corner_radius, "
            f"{mm(v, plan.corner)}, and no cutter leaves that; make it smaller."
        )


def _sides(v: Values, plan: Plan) -> Iterator[str]:
    """Find where the pocket breaks out of the block between the cutaways of the own outline."""
    if v["body.outline"] != "own":
        return
    mouth = -plan.length
    for side in ("treble", "bass"):
        block = float(v[f"body.block_{side}"])
        inner = min(-float(v[f"body.cutaway_{side}"]), 0.0)
        half = max(plan.half_width(mouth), plan.half_width(inner))
        if half > block - LEAST_FLOOR:
            yield (
                f"body.block_{side}: {mm(v, block)} leaves no wall beside a pocket that reaches "
                f"{mm(v, half)} from the centreline; make the block wider or the pocket narrower."
            )
        # Past the mouth the cutter runs on between the horns.
        horn = plan.half_width(-float(v[f"body.cutaway_{side}"]) - HORN_REACH)
        if horn > block + 18.0:
            yield (
                f"pocket.width_mouth: sides that widen so much toward the mouth would cut the "
                f"{side} horn; bring it closer to pocket.width_end."
            )


HORN_REACH = 83.0
"""Bottom of a cutaway to where a cutter past its horn's tip ends [mm]."""

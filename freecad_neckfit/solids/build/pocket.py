"""The solid that the pocket takes out of the body."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import numpy as np

from ...job.errors import CannotBuild, KernelFailure
from ...job.resolve import Values
from .plan import Plan, prism
from .shapes import Point, Solid, common, moved, one_solid, tapered

BEYOND = 5.0
"""How far cutters reach past the wood [mm]: any length will do that leaves no skin."""


def pocket_plan(v: Values) -> Plan:
    """Plan of the pocket in the body frame; its end wall's apex is the origin."""
    end, mouth = v["pocket.width_end"] / 2, v["pocket.width_mouth"] / 2
    is_round = v["pocket.end_shape"] == "round"
    return Plan(
        name="pocket",
        half=end,
        slope=(end - mouth) / v["pocket.length"],
        corner=0.0 if is_round else v["pocket.corner_radius"],
        radius=v["pocket.end_radius"] if is_round else None,
    )


def floor_height(v: Values, x: float) -> float:
    """Height Z [mm] of the pocket's floor at body-frame X."""
    return float(-v["pocket.depth"] + x * math.tan(math.radians(v["pocket.angle"])))


def far_end(v: Values, plan: Plan, front: float) -> float:
    """X [mm] to which the cutter runs past the mouth, ``front`` being the body's foremost X.

    Sides that close toward the mouth are followed as long as they leave an opening.
    """
    wanted = float(min(front, -v["pocket.length"]) - BEYOND)
    if plan.slope <= 0:
        return wanted
    nearly_closed = -0.98 * plan.half / plan.slope
    return max(wanted, min(nearly_closed, -float(v["pocket.length"]) - 1e-3))


def pocket_cutter(v: Values, *, front: float, above: float) -> Solid:
    """The pocket as a solid, open toward the mouth and up to Z = ``above`` [mm].

    ``front``: the foremost X of the body. Sides are vertical. The end wall is vertical too, or
    square to the floor through the origin (``pocket.wall`` "floor"); corners are arcs that touch
    wall and sides, a fillet runs along the foot of the walls. Raises CannotBuild where the plan
    does not close or the fillet does not fit.
    """
    plan = pocket_plan(v)
    far = far_end(v, plan, front)
    leaning = v["pocket.wall"] == "floor" and v["pocket.angle"] != 0
    make = _leaning if leaning else _upright
    cutter = make(v, plan, far, above)
    fillet = float(v["pocket.floor_fillet"])
    if fillet <= 0:
        return cutter
    if not 0 < plan.corner < fillet:
        return _with_fillet(v, cutter, far)
    # Round a corner narrower than itself a fillet would run into itself: it ends in a mitre there.
    sharp = _with_fillet(v, make(v, replace(plan, corner=0.0), far, above), far)
    return one_solid(common(sharp, cutter), name="pocket")


def _upright(v: Values, plan: Plan, far: float, above: float) -> Solid:
    ends = floor_height(v, 0.0), floor_height(v, far)
    if ends[0] == ends[1]:
        return prism(plan.segments(far), ends[0], above)
    blank = prism(plan.segments(far), min(ends) - BEYOND, above)
    return one_solid(common(blank, _over_floor(v, (far - 1, 1.0), above + 1)), name="pocket")


def _over_floor(v: Values, x: Point, above: float) -> Solid:
    wide = v["pocket.width_end"] + v["pocket.width_mouth"] + 200.0
    profile = [(a, floor_height(v, a)) for a in x]
    profile += [(x[1], above), (x[0], above)]
    return tapered(profile, lambda _: -wide, lambda _: wide)


def _leaning(v: Values, plan: Plan, far: float, above: float) -> Solid:
    """The end wall square to a tilted floor; the sides stay vertical."""
    tilt = math.radians(v["pocket.angle"])
    is_round = plan.radius is not None
    foot = v["pocket.depth"] * math.sin(tilt) * math.cos(tilt)
    top = -above * math.tan(tilt)
    if is_round:  # room for the apex, which the round end cuts off again
        foot, top = (max(foot, top) + 1.0,) * 2
    plan.segments(far)  # refuses what does not close
    floor = [(x, floor_height(v, x)) for x in (far, foot)]
    profile = [*floor, (top, above), (far, above)]
    blank = tapered(profile, lambda x: -plan.half_width(x), plan.half_width)
    if is_round:
        return one_solid(common(blank, _round_end(plan, tilt, above, far)), name="pocket")
    if plan.corner == 0:
        return blank
    edges = [e for e in blank.Edges if _runs_up_the_wall(e, (foot, top))]
    return _filleted(blank, plan.corner, edges, what="corners")


def _round_end(plan: Plan, tilt: float, above: float, far: float) -> Solid:
    """What lies before a round end wall: a cylinder square to the floor and all behind it."""
    radius = float(plan.radius or 0.0)
    length = 2 * abs(far) + radius
    side = [
        ((-length, -radius), None, (-radius, -radius)),
        ((-radius, -radius), (0.0, 0.0), (-radius, radius)),
        ((-radius, radius), None, (-length, radius)),
        ((-length, radius), None, (-length, -radius)),
    ]
    upright = prism(side, -above - 300.0, above + 300.0)
    cos, sin = math.cos(tilt), math.sin(tilt)
    turn = np.array([[cos, 0, -sin, 0], [0, 1, 0, 0], [sin, 0, cos, 0], [0, 0, 0, 1.0]])
    return moved(upright, turn)


def _runs_up_the_wall(edge: Any, xs: Point) -> bool:
    """Whether an edge lies between end wall and a side: from foot to top, on one side of Y = 0."""
    low, high = sorted((p.Point for p in edge.Vertexes), key=lambda p: p.z)
    ends = abs(low.x - xs[0]) < 1e-6 and abs(high.x - xs[1]) < 1e-6
    return bool(ends and low.y * high.y > 0 and high.z - low.z > 1e-6)


def _with_fillet(v: Values, cutter: Solid, far: float) -> Solid:
    radius = float(v["pocket.floor_fillet"])
    tilt = math.tan(math.radians(v["pocket.angle"]))
    edges = [
        edge
        for edge in cutter.Edges
        if all(abs(p.Z - p.X * tilt + v["pocket.depth"]) < 1e-6 for p in edge.Vertexes)
        and not all(abs(p.X - far) < 1e-6 for p in edge.Vertexes)
    ]
    return _filleted(cutter, radius, edges, what="floor fillet")


def _filleted(solid: Solid, radius: float, edges: list[Any], *, what: str) -> Solid:
    try:
        result = solid.makeFillet(radius, edges)
    except Exception as failure:
        raise CannotBuild(
            f"pocket: its {what} of radius {radius:.2f} mm does not fit; make the radius smaller."
        ) from failure
    if len(result.Solids) != 1 or not result.isValid():
        raise KernelFailure(f"pocket: the kernel gave no valid solid with its {what}.")
    return result.Solids[0]

"""The solid that the pocket takes out of the body."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import numpy as np

from ...job.resolve import Values
from .floor import floor_height, over_floor
from .foot import filleted, with_foot
from .plan import Plan, prism
from .round_end import leaning_round, with_round_foot
from .shapes import Point, Solid, box, common, moved, one_solid, tapered

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
    if leaning and plan.radius is not None and plan.slope == 0:
        return _tilted(v, plan, far, above)
    return _cutter(v, plan, far, above)


def _cutter(v: Values, plan: Plan, far: float, above: float) -> Solid:
    leaning = v["pocket.wall"] == "floor" and v["pocket.angle"] != 0
    make = _leaning if leaning else _upright
    cutter = make(v, plan, far, above)
    fillet = float(v["pocket.floor_fillet"])
    if fillet <= 0:
        return cutter
    if plan.radius is not None:
        lean = math.radians(v["pocket.angle"]) if leaning else 0.0
        return with_round_foot(v, plan, cutter, far=far, above=above, lean=lean)
    if not 0 < plan.corner < fillet:
        return with_foot(v, cutter, far=far)
    # Round a corner narrower than itself a fillet would run into itself: it ends in a mitre there.
    sharp = with_foot(v, make(v, replace(plan, corner=0.0), far, above), far=far)
    return one_solid(common(sharp, cutter), name="pocket")


def _tilted(v: Values, plan: Plan, far: float, above: float) -> Solid:
    """A pocket all of whose walls are square to its floor: a level one, tilted about the origin."""
    angle = math.radians(v["pocket.angle"])
    cos, sin = math.cos(angle), math.sin(angle)
    level = v | {"pocket.angle": 0.0, "pocket.depth": v["pocket.depth"] * cos}
    high = above + v["pocket.depth"] + abs(far)
    made = _cutter(level, plan, far - high * abs(sin) - BEYOND, high)
    turn = np.array([[cos, 0, -sin, 0], [0, 1, 0, 0], [sin, 0, cos, 0], [0, 0, 0, 1.0]])
    wide, deep = plan.half + BEYOND, floor_height(v, far) - high
    room = box((far, high), (-wide, wide), (deep, above))
    return one_solid(common(moved(made, turn), room), name="pocket")


def _upright(v: Values, plan: Plan, far: float, above: float) -> Solid:
    ends = floor_height(v, 0.0), floor_height(v, far)
    if ends[0] == ends[1]:
        return prism(plan.segments(far), ends[0], above)
    blank = prism(plan.segments(far), min(ends) - BEYOND, above)
    return one_solid(common(blank, over_floor(v, (far - 1, 1.0), above=above + 1)), name="pocket")


def _leaning(v: Values, plan: Plan, far: float, above: float) -> Solid:
    """The end wall square to a tilted floor; the sides stay vertical."""
    if plan.radius is not None:
        return leaning_round(v, plan, far=far, above=above)
    tilt = math.radians(v["pocket.angle"])
    foot = v["pocket.depth"] * math.sin(tilt) * math.cos(tilt)
    top = -above * math.tan(tilt)
    plan.segments(far)  # refuses what does not close
    floor = [(x, floor_height(v, x)) for x in (far, foot)]
    profile = [*floor, (top, above), (far, above)]
    blank = tapered(profile, lambda x: -plan.half_width(x), plan.half_width)
    if plan.corner == 0:
        return blank
    edges = [e for e in blank.Edges if _runs_up_the_wall(e, (foot, top))]
    return filleted(blank, plan.corner, edges, what="corners")


def _runs_up_the_wall(edge: Any, xs: Point) -> bool:
    """Whether an edge lies between end wall and a side: from foot to top, on one side of Y = 0."""
    low, high = sorted((p.Point for p in edge.Vertexes), key=lambda p: p.z)
    ends = abs(low.x - xs[0]) < 1e-6 and abs(high.x - xs[1]) < 1e-6
    return bool(ends and low.y * high.y > 0 and high.z - low.z > 1e-6)

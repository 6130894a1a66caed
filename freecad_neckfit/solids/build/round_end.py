"""A round end of the pocket: a cylinder, upright or square to the floor, with its foot's fillet."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence

import numpy as np
import Part
from FreeCAD import Vector

from ...job.arrays import FloatArray
from ...job.errors import CannotBuild, KernelFailure
from ...job.resolve import Values
from .floor import over_floor, trough
from .foot import FOOT, filleted, foot_of, not_valid, with_foot
from .plan import Plan
from .shapes import Solid, common, cut, moved, one_solid

PAST = 1.0
"""How far [mm] what is cut off reaches past what it is cut from."""
TANGENT = 5e-5
"""Share by which a round end's radius passes a touching one where the two meet at 0.6°."""
NEARBY = (0.0, 1e-5, -1e-5, 5e-5, -5e-5)
"""The fillet's radius is taken larger by this [mm] where the kernel fails at the one before."""
DEEP = 300.0
"""Depth [mm] from which any end wall rises."""
PLAUSIBLE = (0.5, 1.5)
"""What a fillet may fill as a share of one between floor and walls square to each other."""


def leaning_round(v: Values, plan: Plan, *, far: float, above: float) -> Solid:
    """A pocket whose round end wall is square to a tilted floor, its sides vertical; no fillet."""
    return _cut_round(v, plan, (far, above), math.radians(v["pocket.angle"]), foot=0.0)


def with_round_foot(
    v: Values, plan: Plan, cutter: Solid, *, far: float, above: float, lean: float
) -> Solid:
    """As ``with_foot``, for a ``plan`` with a round end; ``lean``: angle [radians] of its wall.

    Where sides and end meet aslant their fillets end in a mitre, and the kernel's own are seldom
    exact there and often not valid. Where upright ones touch its own are the better ones.
    """

    def mitred(foot: float) -> Solid:
        return _cut_round(v, plan, (far, above), lean, foot=foot)

    def in_one(_: float) -> Solid:
        return with_foot(v, cutter, far=far)

    touching = float(plan.radius or 0.0) < plan.touching_radius() * (1 + TANGENT)
    # The kernel's own may end the program where a leaning end touches the sides.
    ways = [mitred] if lean else [in_one, mitred] if touching else [mitred, in_one]
    stated = float(v["pocket.floor_fillet"])
    tries = [(way, stated + off) for way in ways for off in (NEARBY if way is mitred else (0.0,))]
    return _first(v, cutter, tries)


def _first(
    v: Values, cutter: Solid, tries: Sequence[tuple[Callable[[float], Solid], float]]
) -> Solid:
    """What the first way gives that gives a sound solid; the last one's failure if none does."""
    for way, radius in tries[:-1]:
        try:
            return _plausible(v, cutter, way(radius))
        except (CannotBuild, KernelFailure):
            continue
    way, radius = tries[-1]
    return _plausible(v, cutter, way(radius))


def _plausible(v: Values, cutter: Solid, result: Solid) -> Solid:
    """``result`` if it is ``cutter`` less about what a fillet fills."""
    section = (1 - math.pi / 4) * v["pocket.floor_fillet"] ** 2
    share = (cutter.Volume - result.Volume) / (section * sum(e.Length for e in foot_of(v, cutter)))
    if not (result.isValid() and PLAUSIBLE[0] < share < PLAUSIBLE[1]):
        raise not_valid(FOOT)
    return result


def _cut_round(
    v: Values, plan: Plan, bounds: tuple[float, float], lean: float, *, foot: float
) -> Solid:
    """Sides that run on past the end, less what the end leaves, each with its own fillet.

    ``bounds``: the least X and the largest Z [mm]. Raises CannotBuild where the plan does not close
    or the fillet does not fit.
    """
    far, above = bounds
    plan.segments(far)  # refuses what does not close
    past = _past(v, above, lean)
    sides = trough(v, (far, past), above=above, half=plan.half_width)
    if foot > 0:
        edges = [e for e in foot_of(v, sides) if e.BoundBox.XLength > (past - far) / 2]
        sides = filleted(sides, foot, edges, what=FOOT)
    left = _before_end(v, plan, above=above, lean=lean, foot=foot)
    return one_solid(cut(sides, [left]), name="pocket")


def _before_end(v: Values, plan: Plan, *, above: float, lean: float, foot: float) -> Solid:
    """What a round end leaves standing before it, with a fillet of radius ``foot`` [mm]."""
    radius, past = float(plan.radius or 0.0), _past(v, above, lean) + PAST
    upright = Part.makeCylinder(radius, above + 2 * DEEP, Vector(0, 0, -DEEP))
    whole = over_floor(
        v, (-2 * radius - DEEP, past + PAST), above=above + 2 * PAST, half=2 * radius
    )
    disc = one_solid(common(moved(upright, _about(radius, lean)), whole), name="pocket")
    if foot > 0:
        disc = filleted(disc, foot, foot_of(v, disc), what=FOOT)
    before = over_floor(v, (_amid_end(plan), past), above=above + PAST)
    return one_solid(cut(before, [disc]), name="pocket")


def _past(v: Values, above: float, lean: float) -> float:
    """X [mm] past all of an end wall up to Z = ``above``."""
    at_floor = float(v["pocket.depth"]) * math.sin(lean) * math.cos(lean)
    return max(at_floor, -above * math.tan(lean)) + PAST


def _about(radius: float, lean: float) -> FloatArray:
    """The motion of a round end's cylinder to its place: turned about its axis, then leaned."""
    cos, sin = math.cos(lean), math.sin(lean)
    return np.array(
        [
            [-cos, 0.0, -sin, -radius * cos],
            [0.0, -1.0, 0.0, 0.0],
            [-sin, 0.0, cos, -radius * sin],
            [0.0, 0.0, 0.0, 1.0],
        ]
    )


def _amid_end(plan: Plan) -> float:
    """X [mm] at which the round end's circle stands farthest out of the sides' lines."""
    return (-float(plan.radius or 0.0) - plan.slope * plan.half) / (1 + plan.slope**2)

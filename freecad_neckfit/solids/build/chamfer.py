"""A heel whose bottom edges, at its sides and its end, are chamfered by 45 degrees.

The kernel's own chamfer fails where it is as wide as a corner's radius, and its booleans go wrong
where a cone touches a plane. So a square end is closed from faces that are known exactly; only a
round end, whose chamfer crosses those of the sides, is cut.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

import Part
from FreeCAD import Vector

from .plan import Plan, face, prism
from .shapes import SAME, UP, Solid, closed, cut, one_solid, polygon

OVER = 1.0
"""How far cutters stand out of what they cut [mm]."""


def chamfered(plan: Plan, *, far: float, size: float, top: float) -> Solid:
    """``plan`` from z = 0 to ``top``, cut off at x = ``far``, with a chamfer ``size`` [mm] wide.

    At height z below ``size`` the outline is the plan's, moved inward by what z lacks; a corner's
    arc narrows with it and, once it has shrunk to nothing, becomes a mitre.
    """
    return _square(plan, far, size, top) if plan.radius is None else _round(plan, far, size, top)


def _square(plan: Plan, far: float, size: float, top: float) -> Solid:
    below = plan.outward(-size)
    on_wall, on_side = _corner(plan, size)
    wall_down, side_down = _down_the_corner(plan, below, size)
    wide = Vector(far, plan.half_width(far), size)
    narrow = Vector(far, below.half_width(far), 0)
    up = UP * (top - size)
    faces = [
        _across([on_wall, *wall_down]),
        _across([on_wall, on_wall + up]),
        _across([narrow, wide, wide + up]),
        face(plan.segments(far), top),
        face(below.segments(far), 0.0),
    ]
    for sides in ([wide, on_side, *side_down, narrow], [wide, on_side, on_side + up, wide + up]):
        faces += [polygon(sides), polygon(_mirrored(sides))]
    if plan.corner > SAME:
        faces += _turned_corners(plan, [wall_down[0], on_wall, on_wall + up])
    return closed(faces)


def _corner(plan: Plan, z: float) -> tuple[Vector, Vector]:
    """Where a corner's arc leaves the end and where it reaches the side, at height z."""
    on_wall, _, on_side = plan.corner_arc()
    return Vector(*on_wall, z), Vector(*on_side, z)


def _down_the_corner(plan: Plan, below: Plan, size: float) -> tuple[list[Vector], list[Vector]]:
    """The chamfer's edge down to the bottom, along the end's face and along the side's."""
    if plan.corner > size + SAME:
        on_wall, on_side = _corner(below, 0.0)
        return [on_wall], [on_side]
    mitre = Vector(below.end, below.half_width(below.end), 0)
    if plan.corner <= SAME or plan.corner > size - SAME:
        return [mitre], [mitre]
    apex = Vector(plan.end - plan.corner, plan.corner_arc()[0][1], size - plan.corner)
    return [apex, mitre], [apex, mitre]


def _turned_corners(plan: Plan, path: list[Vector]) -> list[Any]:
    """The faces that ``path`` up the end wall sweeps when turned about both corners' axes."""
    centre = [Vector(plan.end - plan.corner, plan.corner_arc()[0][1], 0)]
    turn = 90.0 + math.degrees(plan.side_angle())
    return [
        Part.makeLine(a, b).revolve(axis, UP, angle)
        for points, axis, angle in (
            (path, centre[0], turn),
            (_mirrored(path), _mirrored(centre)[0], -turn),
        )
        for a, b in pairwise(points)
    ]


def _across(half: list[Vector]) -> Any:
    """The plane face between ``half`` an outline and its mirror image in Y."""
    return polygon([*half, *reversed(_mirrored(half))])


def _mirrored(points: list[Vector]) -> list[Vector]:
    return [Vector(p.x, -p.y, p.z) for p in points]


def _round(plan: Plan, far: float, size: float, top: float) -> Solid:
    block = prism(plan.segments(far), 0.0, top)
    meets, radius = plan.round_meets_at(), float(plan.radius or 0.0)
    side = _under_side(plan, far, size)
    half_turn = math.degrees(math.atan2(meets[1], meets[0] + radius)) + 5.0
    ring = _wedge(Vector(0, 0, 0), Vector(-1, 0, 0), size)
    ring.rotate(Vector(-radius, 0, 0), UP, -half_turn)
    ring = ring.revolve(Vector(-radius, 0, 0), UP, 2 * half_turn)
    tools = [side, side.mirror(Vector(0, 0, 0), Vector(0, 1, 0)), ring]
    return one_solid(cut(block, tools), name="heel")


def _under_side(plan: Plan, far: float, size: float) -> Solid:
    angle = plan.side_angle()
    along = Vector(math.cos(angle), math.sin(angle), 0)
    start = Vector(far, plan.half_width(far), 0) - along * (2 * OVER)
    length = -far / math.cos(angle) + 4 * OVER + size
    return _wedge(start, Vector(math.sin(angle), -math.cos(angle), 0), size).extrude(along * length)


def _wedge(foot: Vector, inward: Vector, size: float) -> Any:
    """Section of what a chamfer takes off above ``foot`` on the unchamfered edge, with some air."""
    out, reach = foot - inward * OVER, size + OVER
    return polygon([out + UP * reach, out - UP * OVER, foot + inward * reach - UP * OVER])

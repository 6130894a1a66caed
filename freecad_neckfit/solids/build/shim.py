"""The shim between pocket floor and heel, in the neck frame."""

from __future__ import annotations

import math

from ...job.errors import CannotBuild
from ...job.frames import Seat
from ...job.resolve import Values
from .neck import heel_plan
from .plan import prism
from .shapes import Point, Solid, common, one_solid, tapered

DEEP = 30.0
"""Depth [mm] under the heel that holds any shim."""
KNIFE = 1e-2
"""A wedge thinner than this [mm] at one side ends in an edge: the kernel is lost in slivers."""


def shim(v: Values, seat: Seat) -> Solid | None:
    """A wedge under the whole heel, or a strip across it near the end wall; None without a shim.

    Both have the heel's plan, lie on the floor (with its finish) and carry the heel's bottom: a
    wedge with its whole face, a strip with one edge. A wedge ends at the mouth.
    """
    profile = _profile(v, seat)
    if profile is None:
        return None
    plan = heel_plan(v)
    slab = tapered(profile, lambda _: -DEEP * 3, lambda _: DEEP * 3)
    far = -float(v["neck.heel_length"]) - float(v["pocket.length"])
    block = prism(plan.segments(far), -DEEP, DEEP)
    found = common(slab, block)
    if not found.Solids:
        raise CannotBuild("shim: it lies nowhere under the heel; make the strip wider.")
    return one_solid(found, name="shim")


def _profile(v: Values, seat: Seat) -> list[Point] | None:
    if v["shim.make"] == "wedge" and max(v["shim.wall"], v["shim.mouth"]) > 0:
        return _wedge(v, seat)
    if v["shim.make"] == "strip" and v["shim.strip"] > 0:
        return _strip(v, seat)
    return None


def _wedge(v: Values, seat: Seat) -> list[Point]:
    """From the heel's bottom down to the floor; a side without thickness ends in an edge."""
    mouth = _to_neck(v, seat, along=-v["pocket.length"] / math.cos(seat.floor), above=0.0)
    other = _to_neck(v, seat, along=0.0, above=0.0)
    slope = (other[1] - mouth[1]) / (other[0] - mouth[0])
    under_end = mouth[1] - slope * mouth[0]
    edge = (-under_end / slope, 0.0) if slope else (0.0, 0.0)
    if under_end > -KNIFE:
        return [edge, mouth, (mouth[0], 0.0)]
    if mouth[1] > -KNIFE:
        return [(0.0, 0.0), (0.0, under_end), edge]
    return [(0.0, 0.0), (0.0, under_end), mouth, (mouth[0], 0.0)]


def _strip(v: Values, seat: Seat) -> list[Point]:
    """A bar that lies on the floor from the end wall to its edge toward the mouth."""
    thick, first = float(v["shim.strip"]), -float(v["shim.strip_edge"])
    lean = max(math.sin(seat.floor), 0.0) * thick  # room under a wall that is square to the top
    corners = ((first, 0.0), (-lean, 0.0), (-lean, thick), (first, thick))
    return [_to_neck(v, seat, along=s, above=n) for s, n in corners]


def _to_neck(v: Values, seat: Seat, *, along: float, above: float) -> Point:
    """Neck-frame (x, z) of a point ``along`` the floor from the wall and ``above`` its finish."""
    sin, cos = math.sin(seat.floor), math.cos(seat.floor)
    height = above + float(v["finish.floor"])
    dx = along * cos - height * sin - float(seat.x0)
    dz = -float(v["pocket.depth"]) + along * sin + height * cos - float(seat.z0)
    tilted, upright = math.sin(seat.tilt), math.cos(seat.tilt)
    return dx * upright + dz * tilted, -dx * tilted + dz * upright

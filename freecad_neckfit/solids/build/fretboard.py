"""The fretboard and its binding, in the neck frame.

The top is a cylinder, or between two radii an oblique circular cone: every section square to the
centreline is a circle through the crest line z = ``neck.height``, and its radius is straight in x.
Both are exact in the kernel: the cone as the ruled surface of degree 2 x 1 between its end
sections, whose poles and weights in between are those of the section there. That surface is wider
at its wider end by as much as one radius is the other's multiple, and far wider than the board the
kernel no longer finds where it meets it: such a board is built in stretches.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from itertools import pairwise
from typing import NamedTuple

import Part
from FreeCAD import Vector

from ...job.errors import CannotBuild
from ...job.resolve import Values
from .shapes import SAME, Point, Solid, closed, common, fused, one_solid, polygon, tapered

ROOM = 1.0
"""How far the body under the top's surface stands out of the board [mm]."""
STEP = 0.01
"""So near [mm] to the heel end no stretch ends but there."""
TIMES = 4.0
"""Most by which the top's radii at the two ends of a stretch differ."""


def board_half_width(v: Values, x: float) -> float:
    """Centreline to the fretboard's edge [mm], binding included, at neck-frame x."""
    share = (x + v["neck.nut_to_heel"]) / (v["neck.nut_to_heel"] + v["neck.overhang"])
    return float(v["neck.width_nut"] + (v["neck.width_end"] - v["neck.width_nut"]) * share) / 2


def board_radius(v: Values, x: float) -> float:
    """Radius [mm] of the fretboard's top at neck-frame x: straight from the nut to the end."""
    share = (x + v["neck.nut_to_heel"]) / (v["neck.nut_to_heel"] + v["neck.overhang"])
    return float(v["neck.radius_nut"] + (v["neck.radius_end"] - v["neck.radius_nut"]) * share)


def board_top(v: Values, x: float, y: float) -> float:
    """Height z [mm] of the fretboard's top at neck-frame (x, y), between the frets."""
    radius = board_radius(v, x)
    return float(v["neck.height"] - radius + math.sqrt(radius**2 - y**2))


def fretboard(v: Values) -> dict[str, Solid]:
    """The fretboard, and ``binding_treble`` and ``binding_bass`` where there is binding.

    The board's bottom is the glue line up to the heel end and the underside past it; a binding's
    bottom is the glue line and ``neck.binding`` below the underside. Raises CannotBuild where the
    rounded top leaves no wood at an edge.
    """
    _check_edges(v)
    under = _under_top(v)
    inset = v["neck.binding_width"]
    width = _straight(v, -inset)
    parts = {"fretboard": _piece(v, v["neck.underside"], lambda x: -width(x), width, under)}
    if inset <= 0:
        return parts
    outer, low = _straight(v, 0.0), v["neck.underside"] - v["neck.binding"]
    strips = (
        _piece(v, low, width, outer, under),
        _piece(v, low, lambda x: -outer(x), lambda x: -width(x), under),
    )
    treble, bass = strips[::-1] if v["strings.left_handed"] else strips
    return parts | {"binding_treble": treble, "binding_bass": bass}


def _straight(v: Values, outward: float) -> Callable[[float], float]:
    return lambda x: board_half_width(v, x) + outward


def _piece(
    v: Values,
    low: float,
    near: Callable[[float], float],
    far: Callable[[float], float],
    under: Sequence[Stretch],
) -> Solid:
    """The board between two straight edges, ``low`` being its bottom past the heel end."""
    pieces = [
        one_solid(common(tapered(_profile(v, low, s), near, far), s.under), name="fretboard")
        for s in under
    ]
    if len(pieces) == 1:
        return pieces[0]
    return one_solid(fused(pieces).removeSplitter(), name="fretboard")


def _profile(v: Values, low: float, stretch: Stretch) -> list[Point]:
    glue, over = v["neck.glue_line"], v["neck.height"] + ROOM
    start, end = stretch.start, stretch.end
    bottom: list[Point] = []
    if start < 0:
        bottom += [(start, glue), (min(end, 0.0), glue)]
    if end > 0:
        bottom += [(max(start, 0.0), low), (end, low)]
    return [*bottom, (end, over), (start, over)]


class Stretch(NamedTuple):
    """Of the board, from ``start`` to ``end`` [mm]; ``under`` ends above at the board's top."""

    start: float
    end: float
    under: Solid


def _under_top(v: Values) -> list[Stretch]:
    """Bodies that hold all of the board and end above at the board's top, one after the other."""
    start, end = -v["neck.nut_to_heel"], v["neck.overhang"]
    end = end if end > SAME else 0.0
    if v["neck.radius_nut"] == v["neck.radius_end"]:
        radius = v["neck.radius_nut"]
        foot = Vector(start - ROOM, 0, v["neck.height"] - radius)
        cylinder = Part.makeCylinder(radius, end - start + 2 * ROOM, foot, Vector(1, 0, 0))
        cylinder.rotate(foot, Vector(1, 0, 0), 180.0)  # its seam away from the crest
        return [Stretch(start, end, cylinder)]
    return [Stretch(a, b, _under_cone(v, a, b)) for a, b in pairwise(_stops(v, start, end))]


def _stops(v: Values, start: float, end: float) -> list[float]:
    """Where the stretches of a conical board begin and end [mm]."""
    first, last = board_radius(v, start), board_radius(v, end)
    count = max(1, math.ceil(math.log(max(first, last) / min(first, last), TIMES)))
    shares = [((last / first) ** (k / count) - 1) / (last / first - 1) for k in range(1, count)]
    within = [start + (end - start) * share for share in shares]
    # The bottom's step stands at the heel end: a stretch ends there or well beside it.
    within = [0.0 if abs(x) < STEP else x for x in within]
    return [start, *within, end]


def _under_cone(v: Values, start: float, end: float) -> Solid:
    """A little past both ends: not so far that the smaller radius loses more than a quarter."""
    room = min(ROOM, (end - start) / (3 * TIMES))
    start, end = start - room, end + room
    radii = board_radius(v, start), board_radius(v, end)
    wide = max(v["neck.width_nut"], v["neck.width_end"]) / 2 + ROOM
    angle = math.asin(min(wide / min(radii), 0.95))
    surface = Part.BSplineSurface()
    ends = [
        _section_poles(v["neck.height"], r, angle, x)
        for r, x in zip(radii, (start, end), strict=True)
    ]
    poles = [list(row) for row in zip(*ends, strict=True)]
    weights = [[1.0, 1.0], [math.cos(angle)] * 2, [1.0, 1.0]]
    surface.buildFromPolesMultsKnots(
        poles, [3, 3], [2, 2], [0.0, 1.0], [0.0, 1.0], False, False, 2, 1, weights
    )
    top = surface.toShape()
    # Where one radius is many times the other, the wider end's surface hangs below the board.
    hangs = min(poles[2].z for poles in ends)
    lowest = min(v["neck.glue_line"], v["neck.underside"] - v["neck.binding"], hangs) - ROOM
    return _closed_under(top, lowest)


def _section_poles(crest: float, radius: float, angle: float, x: float) -> list[Vector]:
    y, z = radius * math.sin(angle), crest - radius + radius * math.cos(angle)
    peak = crest - radius + radius / math.cos(angle)
    return [Vector(x, -y, z), Vector(x, 0, peak), Vector(x, y, z)]


def _closed_under(top: object, low: float) -> Solid:
    """The solid between the four-sided face ``top`` and the plane z = ``low``.

    Every edge of ``top`` must lie in a vertical plane.
    """
    faces, floor = [top], []
    for edge in top.OuterWire.OrderedEdges:  # type: ignore[attr-defined]
        first, last = (p.Point for p in (edge.firstVertex(True), edge.lastVertex(True)))
        a, b = Vector(first.x, first.y, low), Vector(last.x, last.y, low)
        sides = [edge, Part.makeLine(last, b), Part.makeLine(b, a), Part.makeLine(a, first)]
        faces.append(Part.Face(Part.Wire(sides)))
        floor.append(a)
    faces.append(polygon(floor))
    return closed(faces)


def _check_edges(v: Values) -> None:
    nut, heel, end = -v["neck.nut_to_heel"], 0.0, v["neck.overhang"]
    glue = v["neck.glue_line"]
    places = [(nut, glue, "nut"), (heel, glue, "heel's end")]
    if end > SAME:
        places.append((end, v["neck.underside"], "fretboard's end"))
    for x, bottom, where in places:
        half, radius = board_half_width(v, x), board_radius(v, x)
        if half >= radius or board_top(v, x, half) <= bottom:
            raise CannotBuild(
                f"fretboard: its top of radius {radius:.1f} mm leaves no wood at the edges at the "
                f"{where}, {2 * half:.2f} mm wide; make it thicker, narrower or flatter."
            )

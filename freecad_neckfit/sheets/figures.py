"""Every figure that a drawing may print, measured on the placed solids.

Nothing here reads a stated dimension: floors, walls, holes and gaps are found on the shapes, so
that a wrong figure on paper cannot agree with them by descent.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import numpy as np
import Part
from FreeCAD import Vector

from ..run.chain import Result
from ..solids.measure.context import Context
from ..solids.measure.saddles import rests
from ..solids.measure.surfaces import height_on

CHECKS = {
    "overhang_gap": "overhang.gap",
    "end_gap": "end.clearance",
    "side_treble": "side.treble",
    "side_bass": "side.bass",
    "wood_floor": "wood.floor",
}
"""Figures that checks have measured already, by the check's id."""
FAR = 400.0

SIDE = 0.6
"""A plane wall whose normal's Y exceeds this is a side, even of a pocket that widens much."""

Figures = dict[str, float]


def figures_of(result: Result) -> Figures:
    """Measured figures [mm, degrees] by the key that a dimension carries.

    What a joint has not is left out, and so is what could not be measured: a sheet that prints
    it then finds nothing to compare with, and stops.
    """
    context = Context(result.assembly.parts, result.values)
    found: Figures = {}
    for read in (_pocket, _sides, _corners, _floor, _holes, _hardware, _overhang, _saddles):
        found.update(read(context))
    for key, check_id in CHECKS.items():
        solids = result.find(check_id).solids
        if solids is not None and math.isfinite(solids.value):
            found[key] = float(solids.value)
    return found


def hits(solid: Any, start: Any, end: Any) -> list[Any]:
    """Points where a straight line enters or leaves a solid, from its start on."""
    inside = solid.copy().common(Part.makeLine(start, end))
    points = [v.Point for v in inside.Vertexes]
    return sorted(points, key=start.distanceToPoint)


def _pocket(context: Context) -> Figures:
    body = context.shape("body")
    top = float(context.top_height(np.zeros((1, 2)))[0])
    floor, wall = _floor_height(context), _end_wall(context, top)
    if wall is None:
        return {}
    length = wall - _front(context, floor)
    return {
        "pocket.length": length,
        "pocket.depth": top - floor(0.0),
        "depth_mouth": float(context.top_height(np.array([[-length, 0.0]]))[0]) - floor(-length),
        "body.thickness": top - body.BoundBox.ZMin,
    }


def _end_wall(context: Context, z: float) -> float | None:
    """X [mm] of the end wall on the centreline at height ``z``: of a plane or of a round wall."""
    found = []
    for index in context.body_faces.walls:
        surface = context.faces("body")[index].Surface
        kind = type(surface).__name__
        if kind == "Plane" and abs(surface.Axis.x) > SIDE:
            n, p = surface.Axis, surface.Position
            found.append(p.x - (n.z * (z - p.z) - n.y * p.y) / n.x)
        elif kind == "Cylinder" and abs(surface.Center.y) < 1e-6:
            a, c = surface.Axis, surface.Center
            found.append(c.x + (z - c.z) * a.x / a.z + surface.Radius / abs(a.z))
    return float(max(found)) if found else None


def _front(context: Context, floor: Callable[[float], float]) -> float:
    """X [mm] of the foremost edge of the pocket's floor on the centreline."""
    body, (index, *_) = context.shape("body"), sorted(context.body_faces.floor)
    x = float(context.boxes("body")[index, 0])
    z = floor(x) - 0.05
    entry = hits(body, Vector(x - 50.0, 0, z), Vector(0, 0, z))
    return float(entry[0].x) if entry else x


def _floor_height(context: Context) -> Callable[[float], float]:
    face = context.faces("body")[min(context.body_faces.floor)]
    return lambda x: float(height_on(face, np.array([[x, 0.0]]))[0])


def _floor(context: Context) -> Figures:
    height = _floor_height(context)
    climb = height(0.0) - height(-50.0)
    return {"pocket.angle": math.degrees(math.atan2(climb, 50.0))}


def _sides(context: Context) -> Figures:
    """Width between the straight side walls at the end wall and at the mouth."""
    found = _pocket(context)
    if not found:
        return {}
    widths = {}
    for key, x in (("pocket.width_end", 0.0), ("pocket.width_mouth", -found["pocket.length"])):
        ys = [y for y in (_side_at(context, i, x) for i in context.body_faces.walls) if y]
        if any(y > 0 for y in ys) and any(y < 0 for y in ys):
            widths[key] = min(y for y in ys if y > 0) - max(y for y in ys if y < 0)
    return widths


def _side_at(context: Context, index: int, x: float) -> float | None:
    face = context.faces("body")[index]
    if type(face.Surface).__name__ != "Plane":
        return None
    n, p = face.Surface.Axis, face.Surface.Position
    return float(p.y - n.x * (x - p.x) / n.y) if abs(n.y) > SIDE else None


def _corners(context: Context) -> Figures:
    """Radii of the pocket's upright curved walls: two alike are corners, one is a round end."""
    radii = [
        float(context.faces("body")[i].Surface.Radius)
        for i in context.body_faces.walls
        if type(context.faces("body")[i].Surface).__name__ == "Cylinder"
    ]
    if len(radii) == 1:
        return {"pocket.end_radius": radii[0]}
    if len(radii) == 2 and abs(radii[0] - radii[1]) < 1e-6:
        return {"pocket.corner_radius": radii[0]}
    return {}


def _holes(context: Context) -> Figures:
    """Place and diameter of the holes that come out of the pocket's floor."""
    floor = _floor_height(context)
    found: dict[tuple[float, float], float] = {}
    for face in context.faces("body"):
        if type(face.Surface).__name__ != "Cylinder" or abs(face.Surface.Axis.z) < 1 - 1e-9:
            continue
        u0, u1, _, _ = face.ParameterRange
        at = face.Surface.Center
        reaches = max(v.Z for v in face.Vertexes) > floor(at.x) - 0.5
        if u1 - u0 > 6.0 and reaches and at.x < 0:
            found[(round(at.x, 6), round(at.y, 6))] = 2 * float(face.Surface.Radius)
    figures: Figures = {}
    for x in sorted({x for x, _ in found}):
        figures[f"screw_x:{x:.3f}"] = -x
    for _, y in found:
        figures[f"screw_y:{y:.3f}"] = abs(y)
    if found:
        figures["screws.body_hole"] = max(found.values())
        figures["screw_count"] = float(len(found))
    return figures


def _hardware(context: Context) -> Figures:
    if not context.has("plate"):
        return {}
    plate = context.shape("plate")
    middle = plate.Faces[context.plate_face]
    u0, u1, v0, v1 = middle.ParameterRange
    spot = _inside(middle, (u0, u1, v0, v1))
    through = hits(plate, Vector(spot.x, spot.y, -FAR), Vector(spot.x, spot.y, FAR))
    return {"plate.thickness": through[-1].z - through[0].z} if len(through) > 1 else {}


def _inside(face: Any, ranges: tuple[float, float, float, float]) -> Any:
    """A point well inside a face."""
    u0, u1, v0, v1 = ranges
    shares = [0.5, 0.1, 0.9, 0.3, 0.7, 0.05, 0.95]
    for a in shares:
        for b in shares:
            u, v = u0 + (u1 - u0) * a, v0 + (v1 - v0) * b
            if face.isPartOfDomain(u, v):
                return face.valueAt(u, v)
    return face.Vertexes[0].Point


def _overhang(context: Context) -> Figures:
    """The overhang in the neck frame: its length and its underside over the heel's bottom."""
    frame = context.frame
    facets = context.facets("fretboard" if context.has("fretboard") else "heel")
    board = frame.to_neck(facets.points)
    down = facets.normal @ -frame.up > 0.99
    beyond = board[down][:, :, 0].max(axis=1) > 1e-6
    found = {"neck.overhang": float(max(board[:, :, 0].max(), 0.0))}
    if beyond.any():
        found["neck.underside"] = float(board[down][beyond][:, :, 2].min())
    return found | _heel_widths(context)


def _heel_widths(context: Context) -> Figures:
    """Width between the heel's straight sides, at its end and one pocket length before.

    Of several plane faces on a side the largest is the side: a given neck has others beside it.
    """
    frame, found = context.frame, _pocket(context)
    sides: dict[bool, tuple[float, Any, Any]] = {}
    for face in context.faces("heel"):
        if type(face.Surface).__name__ != "Plane":
            continue
        n, p = (np.array(tuple(a)) for a in (face.Surface.Axis, face.Surface.Position))
        if abs(n[1]) > SIDE and abs(n @ frame.up) < 1e-6:
            at = frame.to_neck(p)
            slope = -float(n @ frame.along) / n[1]
            right = float(frame.to_neck(np.array(tuple(face.CenterOfMass)))[1]) > 0
            if right not in sides or face.Area > sides[right][0]:
                sides[right] = face.Area, at, slope
    if not found or len(sides) < 2:
        return {}
    figures: Figures = {}
    for key, x in (("heel_width_end", 0.0), ("heel_width_mouth", -found["pocket.length"])):
        high, low = (
            float(at[1] + slope * (x - at[0])) for _, at, slope in (sides[True], sides[False])
        )
        figures[f"neck.{key}"] = high - low
    return figures


def _saddles(context: Context) -> Figures:
    points = rests(context)
    return {"saddle_treble": float(points[0, 0]), "saddle_bass": float(points[-1, 0])}

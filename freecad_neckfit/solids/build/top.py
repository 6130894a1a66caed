"""Solids that end above at the body's top, or at what lies on it.

A flat top is a plane, a domed one a sphere, a carved one an exact Bezier patch of degree 2 x 2, a
sampled one a spline through points of it.
Only a patch over the part's own bounds is made: a whole sphere makes booleans slower.
"""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import Part
from FreeCAD import Vector

from ...job.arrays import FloatArray
from ...job.resolve import Values
from ...job.top import top_height
from .shapes import Point, Solid, box

TICK = 10.0
"""Distance [mm] at which a sampled top is looked at."""
MARGIN = 2.0
"""How far the patch reaches past the bounds [mm]."""


def height(v: Values, x: float, y: float = 0.0) -> float:
    """Height Z [mm] of the bare top at (X, Y) [mm]."""
    return float(top_height(v, x=x, y=y))


def range_over(v: Values, x: Point, y: Point) -> Point:
    """Least and largest height Z [mm] of the bare top over a rectangle of the plan.

    Every top but a sampled one is concave, so it is lowest at a corner; it is highest where it is
    level, or as near to that as the rectangle comes.
    """
    if v["body.top"] == "sampled":
        heights = top_height(v, x=_ticks(x)[:, None], y=_ticks(y))
        return float(heights.min()), float(heights.max())
    low = min(height(v, a, b) for a in x for b in y)
    return low, height(v, _clamped(_level_x(v), x), _clamped(0.0, y))


def under_top(v: Values, x: Point, y: Point, *, raised: float, low: float) -> Solid:
    """All from Z = ``low`` or deeper to the top shifted up by ``raised`` [mm], over a rectangle."""
    wide = (x[0] - MARGIN, x[1] + MARGIN), (y[0] - MARGIN, y[1] + MARGIN)
    if v["body.top"] == "flat":
        return box(*wide, (low, raised))
    make = {"domed": _sphere, "sampled": _through_samples}.get(v["body.top"], _paraboloid)
    patch = make(v, *wide)
    patch.translate(Vector(0, 0, raised))
    depth = range_over(v, *wide)[1] + raised - low + MARGIN
    return patch.extrude(Vector(0, 0, -depth))


def _level_x(v: Values) -> float:
    if v["body.top"] == "flat":
        return 0.0
    if v["body.top"] == "domed":
        return float(v["body.dome_centre"])
    return float(math.tan(math.radians(v["body.carve_slope"])) * v["body.carve_radius_along"])


def _clamped(value: float, bounds: Point) -> float:
    return min(max(value, bounds[0]), bounds[1])


def _sphere(v: Values, x: Point, y: Point) -> Any:
    """A piece of the sphere, its poles and seam far from the top of the dome."""
    radius, centre = float(v["body.dome_radius"]), float(v["body.dome_centre"])
    reach = max(abs(a - centre) for a in x), max(abs(b) for b in y)
    angles = [math.asin(a / radius) * 1.02 for a in reach]
    sphere = Part.Sphere()
    sphere.Radius = radius
    patch = sphere.toShape(-angles[1], angles[1], -angles[0], angles[0])
    patch.rotate(Vector(0, 0, 0), Vector(0, 1, 0), -90.0)
    patch.translate(Vector(centre, 0, -math.sqrt(radius**2 - centre**2)))
    return patch


def _ticks(bounds: Point) -> FloatArray:
    return np.linspace(*bounds, max(4, round((bounds[1] - bounds[0]) / TICK)))


def _through_samples(v: Values, x: Point, y: Point) -> Any:
    along, across = _ticks(x), _ticks(y)
    heights = top_height(v, x=along[:, None], y=across)
    surface = Part.BSplineSurface()
    surface.interpolate(
        [
            [Vector(float(a), float(b), float(z)) for b, z in zip(across, row, strict=True)]
            for a, row in zip(along, heights, strict=True)
        ]
    )
    return surface.toShape()


def _paraboloid(v: Values, x: Point, y: Point) -> Any:
    climb = math.tan(math.radians(v["body.carve_slope"]))
    along, across = (1 / (2 * v[f"body.carve_radius_{way}"]) for way in ("along", "across"))
    # Each height is a sum of one term in X and one in Y; a middle pole is that term's polar form.
    columns = [(a, climb * a - along * a * a) for a in x]
    columns.insert(1, ((x[0] + x[1]) / 2, climb * (x[0] + x[1]) / 2 - along * x[0] * x[1]))
    rows = [(b, -across * b * b) for b in y]
    rows.insert(1, ((y[0] + y[1]) / 2, -across * y[0] * y[1]))
    surface = Part.BezierSurface()
    surface.increase(2, 2)
    for i, (px, zx) in enumerate(columns):
        for j, (py, zy) in enumerate(rows):
            surface.setPole(i + 1, j + 1, Vector(px, py, zx + zy))
    return surface.toShape()

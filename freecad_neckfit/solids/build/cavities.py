"""What is routed from the top besides the pocket: cavities, for pickups too, and a recess."""

from __future__ import annotations

from ...job.errors import CannotBuild
from ...job.resolve import Values
from .bridge import footprint
from .pickups import bounds, fitted
from .plan import prism, rounded_rectangle
from .shapes import Point, Solid
from .top import height

AROUND = 1.0
"""Room around a pickup in its cavity, and around a bridge in its recess [mm]."""
CORNER = 3.2
"""Radius of those corners [mm]: a common cutter's, from memory."""


def cavity_cutters(v: Values, *, above: float) -> list[Solid]:
    """Every cutter but the pocket's, each up to Z = ``above`` [mm].

    Floors are level; a depth counts from the bare top at the cavity's centre (a pickup's pole
    line). Raises CannotBuild where corner radii do not fit or a floor would break through the back.
    """
    cutters = [_cavity(v, i, above) for i in range(len(v["cavity.x"]))]
    for role in fitted(v):
        key = f"pickup_{role}"
        if v[f"{key}.cavity_depth"] > 0:
            x, y = bounds(v, role, AROUND)
            cutters.append(
                _routed(
                    v,
                    f"the cavity of the {role} pickup",
                    x,
                    y,
                    (CORNER, v[f"{key}.cavity_depth"]),
                    (v[f"{key}.x"], 0.0),
                    above,
                )
            )
    if v["bridge.mount"] == "recess" and v["bridge.recess"] > 0:
        x, y = footprint(v, AROUND)
        depth = v["bridge.recess"] - v["finish.top"]
        if depth > 0:
            centre = ((x[0] + x[1]) / 2, 0.0)
            cutters.append(
                _routed(v, "the recess of the bridge", x, y, (CORNER, depth), centre, above)
            )
    return cutters


def _cavity(v: Values, i: int, above: float) -> Solid:
    x, y, long, wide, depth, corner = (
        float(v[f"cavity.{key}"][i])
        for key in ("x", "y", "length", "width", "depth", "corner_radius")
    )
    bounds = (x - long / 2, x + long / 2), (y - wide / 2, y + wide / 2)
    return _routed(v, f"cavity {i + 1}", *bounds, (corner, depth), (x, y), above)


def _routed(
    v: Values, name: str, x: Point, y: Point, cut: tuple[float, float], centre: Point, above: float
) -> Solid:
    corner, depth = cut
    if 2 * corner > min(x[1] - x[0], y[1] - y[0]) + 1e-9:
        raise CannotBuild(
            f"{name}: corners of radius {corner:.2f} mm do not fit its sides; make them smaller."
        )
    floor = height(v, *centre) - depth
    if floor <= -v["body.thickness"]:
        raise CannotBuild(
            f"{name}: a depth of {depth:.2f} mm goes through the body; make it shallower."
        )
    return prism(rounded_rectangle(x, y, corner=corner), floor, above)

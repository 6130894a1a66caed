"""The body: outline, top, rounded edges, heel contour, and all that is routed and drilled."""

from __future__ import annotations

from typing import Any

from ...job.errors import CannotBuild
from ...job.resolve import Values
from .cavities import cavity_cutters
from .outline import Bounds, Segments, bounds_of, front_edge
from .plan import face
from .pocket import BEYOND, floor_height, pocket_cutter, pocket_plan
from .rounds import rounded_slab
from .screws import back_height, hole_cutters
from .shapes import UP, Solid, common, cut, one_solid, tapered
from .top import height, range_over, under_top

LEAST_EDGE = 0.5
"""Least height of edge [mm] that must be left between the rounds."""
ASIDE = 2.0
"""How far the contour's cutter stands out of the block on each side [mm]."""


def body(v: Values, outline: Segments) -> Solid:
    """The routed and drilled body within ``outline``, its back at Z = -``body.thickness``.

    Raises CannotBuild where the edges' round does not fit the outline, where the pocket or a
    cavity breaks through the back, or where the cuts leave the body in pieces.
    """
    bounds = bounds_of(outline)
    above = range_over(v, bounds.x, bounds.y)[1] + BEYOND
    _check_floor(v)
    _check_edges(v, outline)
    blank = _rounded(v, outline, bounds)
    tools = [*_tools(v, front=bounds.x[0], above=above), *_contour(v, outline)]
    return _cut_from(blank, tools)


def routed(v: Values, blank: Solid) -> Solid:
    """A given body with pocket, cavities and holes cut from a copy; its back stays as it is.

    Raises CannotBuild where the cuts leave it in pieces.
    """
    bounds = blank.copy().optimalBoundingBox()
    return _cut_from(blank, _tools(v, front=bounds.XMin, above=bounds.ZMax + BEYOND))


def _tools(v: Values, *, front: float, above: float) -> list[Solid]:
    return [
        pocket_cutter(v, front=front, above=above + BEYOND),
        *cavity_cutters(v, above=above),
        *hole_cutters(v),
    ]


def _cut_from(blank: Solid, tools: list[Solid]) -> Solid:
    result = cut(blank, tools)
    if len(result.Solids) != 1:
        raise CannotBuild(
            f"body: pocket, cavities and contour leave {len(result.Solids)} pieces of it; make "
            "them smaller or the outline larger."
        )
    return result.Solids[0]


def _blank(v: Values, outline: Segments, bounds: Bounds) -> Solid:
    thickness = float(v["body.thickness"])
    flat = face(outline, -thickness)
    if v["body.top"] == "flat":
        return flat.extrude(UP * thickness)
    upright = flat.extrude(UP * (range_over(v, *bounds)[1] + BEYOND + thickness))
    under = under_top(v, *bounds, raised=0.0, low=-thickness - BEYOND)
    return one_solid(common(upright, under), name="body")


def _rounded(v: Values, outline: Segments, bounds: Bounds) -> Solid:
    """The blank with its outer edges rounded, except where the pocket's mouth opens through."""
    radius, front = float(v["body.edge_round"]), front_edge(outline)
    if radius > 0 and v["body.top"] == "flat":
        slab = rounded_slab(outline, (-float(v["body.thickness"]), 0.0), radius, front)
        if slab is not None:
            return slab
    blank = _blank(v, outline, bounds)
    if radius <= 0:
        return blank
    edges = [e for e in blank.Edges if not _is_upright(e) and not _is_front(e, front)]
    try:
        result = blank.makeFillet(radius, edges)
        fits = len(result.Solids) == 1 and result.isValid()
    except Exception as failure:  # the kernel raises many kinds; all mean the same here
        raise _no_round(radius) from failure
    if not fits:
        raise _no_round(radius)
    return result.Solids[0]


def _no_round(radius: float) -> CannotBuild:
    return CannotBuild(
        f"body.edge_round: a round of {radius:.2f} mm does not fit this outline's edges; make it "
        "smaller, or the outline's own curves wider."
    )


def _is_upright(edge: Any) -> bool:
    ends = [p.Point for p in edge.Vertexes]
    return (
        len(ends) == 2 and abs(ends[0].x - ends[1].x) < 1e-6 and abs(ends[0].y - ends[1].y) < 1e-6
    )


def _is_front(edge: Any, front: Any) -> bool:
    if front is None:
        return False
    return all(
        any(abs(p.X - x) < 1e-6 and abs(p.Y - y) < 1e-6 for x, y in (front[0], front[2]))
        for p in edge.Vertexes
    )


def _contour(v: Values, outline: Segments) -> list[Solid]:
    """The heel contour: a slope on the back from the mouth on, as wide as the block."""
    if v["body.contour_depth"] <= 0:
        return []
    front = front_edge(outline)
    half = pocket_plan(v).half_width(-v["pocket.length"])
    sides = sorted((front[0][1], front[2][1])) if front else [-half, half]
    mouth, runs = -float(v["pocket.length"]), float(v["body.contour_length"])
    back, far = -float(v["body.thickness"]), mouth - BEYOND - runs
    slope = float(v["body.contour_depth"]) / runs
    low = back - BEYOND
    profile = [
        (far, low),
        (mouth + runs + BEYOND / slope, low),
        (mouth, back_height(v, mouth)),
        (far, back_height(v, mouth)),
    ]
    return [tapered(profile, lambda _: sides[0] - ASIDE, lambda _: sides[1] + ASIDE)]


def _check_floor(v: Values) -> None:
    """Refuse a pocket that goes through the back, contour and ferrules' seats left out."""
    mouth = -float(v["pocket.length"])
    for x in (mouth, min(mouth + float(v["body.contour_length"]), 0.0), 0.0):
        wood = floor_height(v, x) - back_height(v, x)
        if wood <= 0:
            raise CannotBuild(
                f"pocket: at {-x:.1f} mm from the end wall its floor lies {-wood:.2f} mm below the "
                "body's back; make it shallower, or the body thicker."
            )


def _check_edges(v: Values, outline: Segments) -> None:
    """Refuse a body with no height of edge left between its rounds."""
    need = 2 * float(v["body.edge_round"]) + LEAST_EDGE
    points = [p for segment in outline for p in segment if p is not None]
    left = min(height(v, *p) for p in points) + float(v["body.thickness"])
    if left < need:
        raise CannotBuild(
            f"body: at its outline {left:.2f} mm are left between top and back, but its rounded "
            f"edges need {need:.2f} mm; make it thicker or body.edge_round smaller."
        )

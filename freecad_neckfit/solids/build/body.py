"""The body: outline, top, rounded edges, heel contour, and all that is routed and drilled."""

from __future__ import annotations

from functools import partial

from ...job.errors import CannotBuild
from ...job.resolve import Values
from .cavities import cavity_cutters
from .edges import rounded
from .floor import floor_height
from .outline import Segments, bounds_of, front_edge
from .plan import face
from .pocket import BEYOND, pocket_cutter, pocket_plan
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
    blank = _rounded(v, outline)
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


def _blank(v: Values, outline: Segments) -> Solid:
    bounds, thickness = bounds_of(outline), float(v["body.thickness"])
    flat = face(outline, -thickness)
    if v["body.top"] == "flat":
        return flat.extrude(UP * thickness)
    upright = flat.extrude(UP * (range_over(v, *bounds)[1] + BEYOND + thickness))
    under = under_top(v, *bounds, raised=0.0, low=-thickness - BEYOND)
    return one_solid(common(upright, under), name="body")


def _rounded(v: Values, outline: Segments) -> Solid:
    """The blank with its outer edges rounded, except where the pocket's mouth opens through."""
    radius = float(v["body.edge_round"])
    if radius <= 0:
        return _blank(v, outline)
    slab = (-float(v["body.thickness"]), 0.0) if v["body.top"] == "flat" else None
    return rounded(partial(_blank, v), outline, radius, slab=slab)


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

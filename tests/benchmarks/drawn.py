"""Body and cover plate as a designer draws them: the outline one free curve, its edges rounded.

The body follows the corners of the joint's own outline, so pocket and front lie where they are
stated; the plate is an oval with waists over the stated cut-out and pickup openings.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import Part
from FreeCAD import Vector

from freecad_neckfit.job.resolve import Values
from freecad_neckfit.solids.build.assembly import stated_outline
from freecad_neckfit.solids.build.body import routed
from freecad_neckfit.solids.build.outline import front_edge, segments_of

PLATE = ((-75, 52), (-60, 66), (-20, 70), (20, 62), (60, 66), (95, 58), (112, 30), (114, 0))
"""Corners (X, Y) [mm] of one half of the plate's outline, from the mouth on."""
WIDER = 50.0
"""plate.margin [mm] of a stated plate that the drawn one is cut from, openings and all."""
PLATE_ROUND = 1.0


def drawn_body(v: Values) -> Any:
    """The stated body with one curve through its outline's corners, rounded and routed."""
    segments = segments_of(stated_outline(v))
    front = front_edge(segments)
    assert front is not None
    k = segments.index(front)
    corners: list[tuple[float, float]] = []
    for segment in segments[k + 1 :] + segments[:k]:
        edge = _edge(segment)
        corners += [(p.x, p.y) for p in (edge.valueAt(edge.FirstParameter), _middle(edge))]
    corners.append(front[0])
    slab = _slab(corners, (-float(v["body.thickness"]), 0.0))
    outer = [e for e in slab.Edges if type(e.Curve).__name__ == "BSplineCurve"]
    return routed(v, slab.makeFillet(float(v["body.edge_round"]), outer).Solids[0])


def drawn_plate(stated: Any) -> Any:
    """An oval with waists, its upper edge rounded, cut from a ``stated`` plate that is wider."""
    box = stated.BoundBox
    corners = [(x, -y) for x, y in PLATE] + [(x, y) for x, y in PLATE[-2::-1]]
    slab = _slab(corners, (box.ZMin, box.ZMax))
    upper = [
        e for e in slab.Edges
        if type(e.Curve).__name__ == "BSplineCurve" and e.BoundBox.ZMin > box.ZMax - 1e-3
    ]  # fmt: skip
    return slab.makeFillet(PLATE_ROUND, upper).common(stated.copy()).Solids[0]


def _edge(segment: tuple[Any, Any, Any]) -> Any:
    start, through, end = (None if p is None else Vector(*p, 0) for p in segment)
    if through is None:
        return Part.LineSegment(start, end).toShape()
    return Part.Arc(start, through, end).toShape()


def _middle(edge: Any) -> Any:
    return edge.valueAt(edge.getParameterByLength(edge.Length / 2))


def _slab(corners: Sequence[tuple[float, float]], z: tuple[float, float]) -> Any:
    """Over a curve through ``corners``, closed by a straight line."""
    points = [Vector(x, y, z[0]) for x, y in corners]
    curve = Part.BSplineCurve()
    curve.interpolate(points)
    wire = Part.Wire([curve.toShape(), Part.LineSegment(points[-1], points[0]).toShape()])
    return Part.Face(wire).extrude(Vector(0, 0, z[1] - z[0]))

"""Interference as a solid that shows through the wood."""

from __future__ import annotations

from typing import Any

from pivy import coin

from . import nodes
from .palette import BLACK, GREY, VERMILLION, WHITE, Colour

FINE = 0.1
"""Largest distance between a round face and its facets [mm]."""
STRIPE = 3.0
"""Width of a pair of stripes [mm]."""
EDGE_POINTS = 12


class Interference:
    """A hatched solid with its edges; ``node`` belongs under a SoAnnotation."""

    def __init__(self) -> None:
        self.node = nodes.separator(nodes.unlit())
        self.corners: list[tuple[float, float, float]] = []

    def show(self, shape: Any, *, stale: bool = False) -> None:
        """Show a Part shape, in grey where it is out of date; None or an empty one: nothing."""
        while self.node.getNumChildren() > 1:
            self.node.removeChild(1)
        self.corners = []
        if shape is None or shape.isNull() or not shape.Faces:
            return
        points, facets = shape.tessellate(FINE)
        self.corners = _corners(shape.BoundBox)
        self.node.addChild(_filled(points, facets, GREY if stale else VERMILLION))
        self.node.addChild(_edges(shape))


def _corners(box: Any) -> list[tuple[float, float, float]]:
    return [
        (x, y, z)
        for x in (box.XMin, box.XMax)
        for y in (box.YMin, box.YMax)
        for z in (box.ZMin, box.ZMax)
    ]


def _filled(points: Any, facets: Any, colour: Colour) -> Any:
    corners = coin.SoCoordinate3()
    corners.point.setValues(0, len(points), [[p.x, p.y, p.z] for p in points])
    faces = coin.SoIndexedFaceSet()
    indices = [i for facet in facets for i in (*facet, -1)]
    faces.coordIndex.setValues(0, len(indices), indices)
    return nodes.separator(nodes.colour(WHITE), *_hatch(colour), corners, faces)


def _hatch(colour: Colour) -> tuple[Any, Any]:
    """Slanting stripes, which tell interference from everything else without colour."""
    texture = coin.SoTexture2()
    dark = bytes(round(255 * c) for c in colour)
    light = bytes(round(255 * (0.35 * c + 0.65)) for c in colour)
    texture.image.setValue(coin.SbVec2s(32, 1), 3, dark * 22 + light * 10)
    texture.model = coin.SoTexture2.REPLACE
    planes = coin.SoTextureCoordinatePlane()
    # One direction that no usual face is square to, so that every face shows the stripes.
    planes.directionS = (0.7 / STRIPE, 0.7 / STRIPE, 0.5 / STRIPE)
    planes.directionT = (0, 0, 1)
    return texture, planes


def _edges(shape: Any) -> Any:
    points: list[list[float]] = []
    counts: list[int] = []
    for edge in shape.Edges:
        along = edge.discretize(2 if _is_straight(edge) else EDGE_POINTS)
        points += [[p.x, p.y, p.z] for p in along]
        counts.append(len(along))
    corners = coin.SoCoordinate3()
    corners.point.setValues(0, len(points), points)
    strokes = nodes.lines(*counts)
    # Thin and without a white edge: a clash of a few tenths would drown in it.
    return nodes.separator(nodes.colour(BLACK), nodes.line_style(1.0), corners, strokes)


def _is_straight(edge: Any) -> bool:
    return (
        len(edge.Vertexes) == 2
        and abs(edge.Length - edge.Vertexes[0].Point.distanceToPoint(edge.Vertexes[1].Point)) < 1e-9
    )

"""One view of a TechDraw page: flat lines, and dimensions on vertices found by their places."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator
from itertools import pairwise
from typing import Any

import Part
from FreeCAD import Vector

from ..job.errors import KernelFailure
from ..job.quantity import Kind, Units
from .dimension import Dimension, Placed, Pointed, Spot, Straight
from .drawing import Drawing
from .ink import Stroke
from .plan_view import mouth_segments, points_of
from .techdraw_wait import Pump, wait_until_drawn
from .view import Region, View, Window, clipped

PREFIX = "NeckFitDrawing_"
"""Names of all that belongs to the page begin with it."""
NEAR = 2e-3
"""How far [mm] TechDraw may place a vertex beside its point."""
STUB = 0.1
"""Length [mm of paper] of the short lines that give a point a vertex."""
SCALES = {"plan": 0.5, "along": 0.5, "across": 0.5}
"""Scales of the page's own; every other view has the drawing's."""


def is_shown(placed: Placed) -> bool:
    """A level floor has no angle to measure; a room of nothing has no two ends."""
    return abs(placed.what.value) > 1e-3


class ViewOnPage:
    """One view in the making."""

    def __init__(self, document: Any, page: Any, drawing: Drawing, view: View) -> None:
        self.document, self.page, self.drawing, self.view = document, page, drawing, view
        self.scale = SCALES.get(view.name, view.scale)
        self.ends = [(placed, *_ends(placed)) for placed in view.placed if is_shown(placed)]

    def draw(self, pump: Pump) -> None:
        """Put the view and its dimensions on the page."""
        lines = self.document.addObject("Part::Feature", f"{PREFIX}lines_{self.view.name}")
        lines.Label = f"{self.view.title}: lines"
        lines.Shape = Part.Compound(list(self._edges()))
        self.feature = self.document.addObject(
            "TechDraw::DrawViewPart", f"{PREFIX}view_{self.view.name}"
        )
        self.feature.Label = self.view.title
        self.page.addView(self.feature)
        self.feature.Source = [lines]
        self.feature.Direction, self.feature.XDirection = Vector(0, 0, 1), Vector(1, 0, 0)
        self.feature.ScaleType, self.feature.Scale = "Custom", self.scale
        self.document.recompute()
        wait_until_drawn(self.feature, pump)
        self.corners = _vertices(self.feature)
        self.offset = self._offset()
        self._place()
        for number, (placed, a, b) in enumerate(self.ends):
            self._dimension(number, placed, a, b)

    def _edges(self) -> Iterator[Any]:
        window = self._window()
        pocket = tuple(points_of(mouth_segments(self.drawing.joint)[:-1]))
        for stroke in (*self.view.strokes, *(s for r in self.view.regions for s in _loops(r))):
            if self.view.name == "plan" and stroke.points == pocket:
                continue  # drawn below as true arcs
            points = [*stroke.points, stroke.points[0]] if stroke.closed else list(stroke.points)
            for piece in clipped(points, window):
                yield from _polyline(piece)
        if self.view.name == "plan":
            for a, m, b in mouth_segments(self.drawing.joint)[:-1]:
                yield _edge(a, m, b)
            for r in self.view.rounds:
                yield Part.makeCircle(r.radius, Vector(*r.centre, 0))
        for placed, a, b in self.ends:
            yield from self._stubs(a, b)
            if placed.what.kind is Kind.ANGLE:
                yield from self._stubs(_level(a, b))

    def _stubs(self, *points: Spot) -> Iterator[Any]:
        """Short lines that give each end of a dimension a vertex.

        Aslant, for a line along another is merged with it and its end lost.
        """
        long = STUB / self.scale
        for x, y in points:
            yield _edge((x, y), None, (x + long, y + 0.7 * long))

    def _window(self) -> Window:
        windows = self.view.windows
        x = windows[0].x[0], windows[-1].x[1]
        return Window(x, windows[0].y, (0.0, 0.0))

    def _offset(self) -> Spot:
        """What TechDraw takes off each point of this view: it centres views its own way."""
        points = [p for _, a, b in self.ends for p in (a, b)]
        votes = Counter(
            (round(x - p[0], 3), round(y - p[1], 3)) for p in points for x, y in self.corners
        )
        (rough, _), *_ = votes.most_common(1)
        near = [
            (x - p[0], y - p[1])
            for p in points
            for x, y in self.corners
            if math.dist((x - p[0], y - p[1]), rough) < 2 * NEAR
        ]
        return sum(x for x, _ in near) / len(near), sum(y for _, y in near) / len(near)

    def _place(self) -> None:
        """Set the view's middle, where TechDraw's own origin of it lies, on the paper."""
        middle = -self.offset[0], -self.offset[1]
        window = self.view.windows[0]
        low = self.view.spot(window.x[0], window.y[0])
        self.feature.X = low[0] + (middle[0] - window.x[0]) * self.scale
        self.feature.Y = low[1] + (middle[1] - window.y[0]) * self.scale

    def _vertex(self, point: Spot) -> str:
        wanted = point[0] + self.offset[0], point[1] + self.offset[1]
        index = min(range(len(self.corners)), key=lambda i: math.dist(self.corners[i], wanted))
        if math.dist(self.corners[index], wanted) > 2 * NEAR:
            raise KernelFailure(f"TechDraw's view {self.view.title!r} lacks the point {point}.")
        return f"Vertex{index}"

    def _dimension(self, number: int, placed: Placed, a: Spot, b: Spot) -> None:
        what = placed.what
        size = self.document.addObject(
            "TechDraw::DrawViewDimension", f"{PREFIX}size_{self.view.name}_{number}"
        )
        size.Label, size.Label2 = what.key, what.key
        if what.kind is Kind.ANGLE or what.prefix:
            size.Type, references = self._of_edges(what, a, b)
        else:
            size.Type = _type_of(placed, a, b)
            references = [(self.feature, self._vertex(p)) for p in (a, b)]
        size.References2D = references
        _words(size, what)
        self.page.addView(size)
        self.document.recompute()
        self._stand(size, placed)

    def _of_edges(self, what: Dimension, a: Spot, b: Spot) -> tuple[str, list[Any]]:
        if what.kind is Kind.ANGLE:
            points = [self._vertex(p) for p in (b, a, _level(a, b))]
            return "Angle3Pt", [(self.feature, p) for p in points]
        kind = "Diameter" if what.prefix == "Ø" else "Radius"
        radius = what.value / 2 if kind == "Diameter" else what.value
        for index, edge in enumerate(self.feature.getVisibleEdges()):
            if abs(getattr(edge.Curve, "Radius", 0.0) - radius * self.scale) < NEAR:
                return kind, [(self.feature, f"Edge{index}")]
            if abs(getattr(edge.Curve, "Radius", 0.0) - radius) < NEAR:
                return kind, [(self.feature, f"Edge{index}")]
        raise KernelFailure(f"TechDraw's view {self.view.title!r} lacks the arc of {what.key}.")

    def _stand(self, size: Any, placed: Placed) -> None:
        """Where the figures stand, from the middle of the view."""
        spots = [placed.a, placed.b] if isinstance(placed, Straight) else [placed.tip]
        x = sum(p[0] for p in spots) / len(spots) + self.offset[0]
        y = sum(p[1] for p in spots) / len(spots) + self.offset[1]
        lane = placed.lane if isinstance(placed, Straight) else 0.0
        first = self.view.spot(*spots[0])
        shift = (lane - first[0], 0.0) if _upright(placed) else (0.0, lane - first[1])
        if isinstance(placed, Pointed):
            shift = placed.at[0] - first[0] + 12, placed.at[1] - first[1]
        base_y = spots[0][1] + self.offset[1] if not _upright(placed) else y
        base_x = spots[0][0] + self.offset[0] if _upright(placed) else x
        size.X, size.Y = base_x * self.scale + shift[0], base_y * self.scale + shift[1]


def _ends(placed: Placed) -> tuple[Spot, Spot]:
    if isinstance(placed, Straight):
        return placed.a, placed.b
    return placed.between or (placed.tip, placed.tip)


def _level(a: Spot, b: Spot) -> Spot:
    """The third point of an angle at ``a`` between the line to ``b`` and the level."""
    return b[0], a[1]


def _upright(placed: Placed) -> bool:
    return isinstance(placed, Straight) and placed.upright


def _type_of(placed: Placed, a: Spot, b: Spot) -> str:
    if isinstance(placed, Straight):
        return "DistanceY" if placed.upright else "DistanceX"
    if abs(a[0] - b[0]) < 1e-9:
        return "DistanceY"
    return "DistanceX" if abs(a[1] - b[1]) < 1e-9 else "Distance"


def _words(size: Any, what: Dimension) -> None:
    """Prefix, decimals, limits and note; the figure itself stays TechDraw's own."""
    count = f"{what.count}× " if what.count > 1 else ""
    prefix = what.prefix if what.prefix != "Ø" else "⌀"
    figure = f"{count}{prefix}%.2f"
    if what.reference:
        figure = f"({figure})"
    note = what.text(Units.MM).partition("[")[2]
    accept = f" [{note}" if note else f" {what.note}" if what.note else ""
    size.FormatSpec = figure + accept
    if what.limits is None:
        return
    low, high = what.limits
    size.EqualTolerance = False
    size.OverTolerance, size.UnderTolerance = high, low
    # As words: FreeCAD 1.1 would print small ones in micrometres.
    size.ArbitraryTolerances = True
    size.FormatSpecOverTolerance, size.FormatSpecUnderTolerance = f"{high:+.2f}", f"{low:+.2f}"


def _loops(region: Region) -> Iterator[Stroke]:
    for loop in region.loops:
        yield Stroke(loop, closed=True)


def _polyline(points: list[Spot]) -> Iterator[Any]:
    for a, b in pairwise(points):
        if math.dist(a, b) > 1e-5:
            yield _edge(a, None, b)


def _edge(a: Spot, m: Spot | None, b: Spot) -> Any:
    start, end = Vector(*a, 0), Vector(*b, 0)
    if m is None:
        return Part.makeLine(start, end)
    return Part.Arc(start, Vector(*m, 0), end).toShape()


def _vertices(feature: Any) -> list[Spot]:
    found: list[Spot] = []
    while True:
        try:
            vertex = feature.getVertexByIndex(len(found))
        except Exception:  # noqa: BLE001 # versions differ in the kind; each means: no more
            return found
        if vertex is None:
            return found
        point = vertex.Point if hasattr(vertex, "Point") else vertex
        found.append((point.x, point.y))

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
from ..job.quantity import Kind
from .dimension import Dimension, Placed, Pointed, Spot, Straight
from .drawing import Drawing
from .helvetica import CAPITALS
from .ink import Stroke
from .plan_view import mouth_segments, points_of
from .techdraw_layout import LETTERS, Stand, figures_at
from .techdraw_wait import Pump, wait_until_drawn
from .techdraw_words import put_words
from .view import Region, View, Window, clipped

PREFIX = "NeckFitDrawing_"
"""Names of all that belongs to the page begin with it."""
NEAR = 2e-3
"""How far [mm] TechDraw may place a vertex beside its point."""
LINE = 0.35
"""Width of a view's lines [mm]."""
STUB = 0.1
"""Length [mm of paper] of the short lines that give a point a vertex."""
FONT = LETTERS / CAPITALS
"""Size [mm] of the figures' font."""


def is_shown(placed: Placed) -> bool:
    """A level floor has no angle to measure; a room of nothing has no two ends."""
    return abs(placed.what.value) > 1e-3


class ViewOnPage:
    """One view in the making."""

    def __init__(
        self, document: Any, page: Any, drawing: Drawing, view: View, stand: Stand
    ) -> None:
        self.document, self.page, self.drawing, self.view = document, page, drawing, view
        self.stand, self.scale = stand, stand.scale
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
        if self.feature.ViewObject is not None:
            self.feature.ViewObject.LineWidth = LINE
        self.document.recompute()
        wait_until_drawn(self.feature, pump)
        self.corners = _vertices(self.feature)
        self.offset = self._offset()
        self._place()
        self._title()
        places = {id(placed): spot for placed, spot in figures_at(self.view, self.stand)}
        for number, (placed, a, b) in enumerate(self.ends):
            self._dimension(number, placed, a, b, at=places[id(placed)])

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
        origin = self.stand.origin
        self.feature.X = origin[0] - self.offset[0] * self.scale
        self.feature.Y = origin[1] - self.offset[1] * self.scale

    def _title(self) -> None:
        """The view's title as words of their own, which can be moved."""
        title = self.document.addObject(
            "TechDraw::DrawViewAnnotation", f"{PREFIX}title_{self.view.name}"
        )
        title.Label, title.Text, title.TextSize = self.view.title, [self.view.title], 5.0
        self.page.addView(title)
        title.X, title.Y = self.stand.title  # a screen moves a new view to the page's middle

    def _vertex(self, point: Spot) -> str:
        wanted = point[0] + self.offset[0], point[1] + self.offset[1]
        index = min(range(len(self.corners)), key=lambda i: math.dist(self.corners[i], wanted))
        if math.dist(self.corners[index], wanted) > 2 * NEAR:
            raise KernelFailure(f"TechDraw's view {self.view.title!r} lacks the point {point}.")
        return f"Vertex{index}"

    def _dimension(self, number: int, placed: Placed, a: Spot, b: Spot, *, at: Spot) -> None:
        what = placed.what
        size = self.document.addObject(
            "TechDraw::DrawViewDimension", f"{PREFIX}size_{self.view.name}_{number}"
        )
        size.Label, size.Label2 = what.key, what.key
        if what.kind is Kind.ANGLE or what.prefix:
            size.Type, references = self._of_edges(placed, a, b)
        else:
            size.Type = _type_of(placed, a, b)
            references = [(self.feature, self._vertex(p)) for p in (a, b)]
        size.References2D = references
        put_words(size, what)
        self.page.addView(size)
        self.document.recompute()
        size.X = at[0] + self.offset[0] * self.scale
        size.Y = at[1] + self.offset[1] * self.scale
        if size.ViewObject is not None:
            size.ViewObject.Fontsize = FONT

    def _of_edges(self, placed: Placed, a: Spot, b: Spot) -> tuple[str, list[Any]]:
        what = placed.what
        if what.kind is Kind.ANGLE:
            points = [self._vertex(p) for p in (b, a, _level(a, b))]
            return "Angle3Pt", [(self.feature, p) for p in points]
        kind = "Diameter" if what.prefix == "Ø" else "Radius"
        radius = what.value / 2 if kind == "Diameter" else what.value
        tip = placed.tip if isinstance(placed, Pointed) else a
        return kind, [(self.feature, f"Edge{self._arc(radius, tip, what)}")]

    def _arc(self, radius: float, tip: Spot, what: Dimension) -> int:
        """Number of the arc or circle of that radius which lies nearest to a point."""
        found: list[tuple[float, int]] = []
        for index in range(len(self.feature.getVisibleEdges())):
            edge = self.feature.getEdgeByIndex(index)
            own = float(getattr(edge.Curve, "Radius", 0.0))
            # Versions differ in whether they hand out a view's edges at its scale.
            for grown in (self.scale, 1.0):
                if abs(own - radius * grown) < NEAR:
                    centre = edge.Curve.Center
                    wanted = (tip[i] + self.offset[i] for i in (0, 1))
                    away = math.dist((centre.x / grown, centre.y / grown), tuple(wanted))
                    found.append((away, index))
        if not found:
            raise KernelFailure(f"TechDraw's view {self.view.title!r} lacks the arc of {what.key}.")
        return min(found)[1]


def _ends(placed: Placed) -> tuple[Spot, Spot]:
    if isinstance(placed, Straight):
        return placed.a, placed.b
    return placed.between or (placed.tip, placed.tip)


def _level(a: Spot, b: Spot) -> Spot:
    """The third point of an angle at ``a`` between the line to ``b`` and the level."""
    return b[0], a[1]


def _type_of(placed: Placed, a: Spot, b: Spot) -> str:
    if isinstance(placed, Straight):
        return "DistanceY" if placed.upright else "DistanceX"
    if abs(a[0] - b[0]) < 1e-9:
        return "DistanceY"
    return "DistanceX" if abs(a[1] - b[1]) < 1e-9 else "Distance"


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

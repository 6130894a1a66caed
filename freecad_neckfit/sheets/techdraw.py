"""The drawing as a TechDraw page within a document, which the designer can go on editing.

TechDraw's dimensions hang on vertices that it numbers anew after every change of the geometry, and
versions of FreeCAD differ in how. So each view shows a flat object of the drawing's own lines,
every end of a dimension is found by its place among the view's vertices, and every dimension's raw
value is held against the drawing before the page is handed over.
"""

from __future__ import annotations

import math
import time
import warnings
from collections import Counter
from collections.abc import Callable, Iterator
from itertools import pairwise
from typing import Any

import Part
from FreeCAD import Vector

from ..job.errors import KernelFailure
from ..job.quantity import Kind, Units
from .dimension import Dimension, Placed, Pointed, Spot, Straight
from .drawing import Drawing
from .ink import Stroke
from .joint import Misprint
from .plan_view import mouth_segments, points_of
from .techdraw_sheet import sheet_file
from .view import Region, View, Window, clipped

PAGE, PREFIX = "NeckFitDrawing", "NeckFitDrawing_"
NEAR = 2e-3
"""How far [mm] TechDraw may place a vertex beside its point."""
SAME = 1e-4
"""How far [mm, degrees] a dimension may differ from the drawing."""
WAIT = 10.0
"""Seconds that FreeCAD 1.0 may take to draw a view."""
STUB = 0.1
"""Length [mm of paper] of the short lines that give a point a vertex."""
SCALES = {"plan": 0.5, "along": 0.5, "across": 0.5}


def add_page(document: Any, drawing: Drawing) -> Any:
    """Draw the page anew into a document and return it; a former one is replaced.

    Raises KernelFailure where FreeCAD does not draw a view, Misprint where a dimension's value
    differs from the drawing; the page is taken away again then.
    """
    # First of all: FreeCAD 1.0 draws no view without a screen before Qt has an application.
    pump = _event_pump()
    remove_page(document)
    page = document.addObject("TechDraw::DrawPage", PAGE)
    try:
        _fill(document, page, drawing, pump)
        check_page(document, drawing)
    except Exception:
        remove_page(document)
        raise
    return page


def remove_page(document: Any) -> None:
    """Take the page away with all that belongs to it."""
    if document.getObject(PAGE) is not None:
        _event_pump()()  # what is being drawn comes to its end first
    names = [o.Name for o in document.Objects if o.Name.startswith(PREFIX) or o.Name == PAGE]
    # What hangs on a view goes before the view.
    for name in sorted(names, key=lambda n: (n == PAGE, "_view_" in n, "_lines_" in n)):
        if document.getObject(name) is not None:
            document.removeObject(name)


def raw_values(document: Any) -> dict[str, float]:
    """Raw value [mm, degrees] of every dimension on the page, by key."""
    return {
        o.Label2: float(o.getRawValue())
        for o in document.Objects
        if o.Name.startswith(f"{PREFIX}size_")
    }


def settle(document: Any) -> None:
    """Wait until FreeCAD has drawn all views again, as after opening; then work sizes out anew.

    Raises KernelFailure where it does not draw one.
    """
    pump = _event_pump()
    for obj in document.Objects:
        if obj.Name.startswith(f"{PREFIX}view_"):
            _wait(obj, pump)
    for obj in document.Objects:
        if obj.Name.startswith(f"{PREFIX}size_"):
            obj.touch()
    document.recompute()
    pump()


def check_page(document: Any, drawing: Drawing) -> None:
    """Compare every dimension's raw value with the drawing; raises Misprint where one differs."""
    settle(document)
    values = raw_values(document)
    for key, wanted in _wanted(drawing).items():
        if key not in values:
            raise Misprint(f"TechDraw page: the dimension {key} is missing; draw the page anew.")
        if not abs(values[key] - abs(wanted)) <= SAME:  # not a number is no agreement
            raise Misprint(
                f"TechDraw page: {key} reads {values[key]:.4f} where the drawing says "
                f"{wanted:.4f}; draw the page anew."
            )


def _wanted(drawing: Drawing) -> dict[str, float]:
    return {p.what.key: p.what.value for v in drawing.views for p in v.placed if _shown(p)}


def _shown(placed: Placed) -> bool:
    """A level floor has no angle to measure; a room of nothing has no two ends."""
    return abs(placed.what.value) > 1e-3


Pump = Callable[[], Any]
"""Lets FreeCAD's waiting events happen."""


def _fill(document: Any, page: Any, drawing: Drawing, pump: Pump) -> None:
    template = document.addObject("TechDraw::DrawSVGTemplate", f"{PREFIX}template")
    template.Template = str(sheet_file(drawing.paper))
    page.Template = template
    _fill_title(template, drawing)
    for view in drawing.views:
        _View(document, page, drawing, view).draw(pump)


def _fill_title(template: Any, drawing: Drawing) -> None:
    texts = dict(template.EditableTexts)
    title = {name: getattr(drawing.title, name) for name in type(drawing.title).names()}
    said = title | {"title": drawing.joint.name, "scale": "1:2, detail " + drawing.detail_scale}
    texts.update({key: value for key, value in said.items() if key in texts})
    template.EditableTexts = texts


class _View:
    """One view in the making."""

    def __init__(self, document: Any, page: Any, drawing: Drawing, view: View) -> None:
        self.document, self.page, self.drawing, self.view = document, page, drawing, view
        self.scale = SCALES.get(view.name, view.scale)
        self.ends = [(placed, *_ends(placed)) for placed in view.placed if _shown(placed)]

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
        _wait(self.feature, pump)
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


def _wait(feature: Any, pump: Pump) -> None:
    """FreeCAD 1.0 draws in a thread of its own and tells by events."""
    until = time.monotonic() + WAIT
    while not feature.getVisibleEdges():
        if time.monotonic() > until:
            raise KernelFailure(f"TechDraw did not draw the view {feature.Label!r}.")
        pump()
        time.sleep(0.01)


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


def _event_pump() -> Pump:
    # Its modules warn of old ways while they load; made an error, that crashes Python.
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        try:
            from PySide import QtCore
        except ImportError:
            return lambda: None
    application = QtCore.QCoreApplication.instance() or QtCore.QCoreApplication([])
    _KEPT.append(application)
    pool = QtCore.QThreadPool.globalInstance()

    def pump() -> None:
        # FreeCAD 1.0 looks for faces after the edges, in a thread that must not outlive its view.
        for _ in range(3):
            pool.waitForDone(int(WAIT * 1000))
            application.processEvents()

    return pump


_KEPT: list[Any] = []
"""Qt's application must outlive the views."""

__all__ = ["add_page", "check_page", "raw_values", "remove_page", "settle"]

"""A view: geometry in millimetres of the model, and the windows that the paper shows it through."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from .dimension import Placed
from .ink import Item, Pen, Round, Spot, Stroke, Words

Loop = tuple[Spot, ...]
TITLE_HEIGHT = 3.5
"""Height [mm] of the letters of a view's title."""


@dataclass(frozen=True)
class Window:
    """A rectangle of the model [mm] and where its lower left corner stands on the paper."""

    x: tuple[float, float]
    y: tuple[float, float]
    at: Spot


@dataclass(frozen=True)
class Region:
    """A cut face: closed loops (outer and holes alike) [mm], hatched at an angle."""

    name: str
    loops: tuple[Loop, ...]
    angle: float = 45.0
    pitch: float = 2.5


@dataclass
class View:
    """A view with its scale (paper over model), windows, geometry and dimensions.

    A view with several windows is broken: what lies between them is left out.
    """

    name: str
    title: str
    scale: float
    windows: tuple[Window, ...]
    strokes: list[Stroke] = field(default_factory=list)
    rounds: list[Round] = field(default_factory=list)
    regions: list[Region] = field(default_factory=list)
    placed: list[Placed] = field(default_factory=list)
    notes: list[Item] = field(default_factory=list)
    """Ink that is on paper already: titles, section letters."""

    def spot(self, x: float, y: float) -> Spot:
        """Where a point of the model lies on the paper."""
        window = min(self.windows, key=lambda w: max(w.x[0] - x, x - w.x[1], 0.0))
        return (
            window.at[0] + (x - window.x[0]) * self.scale,
            window.at[1] + (y - window.y[0]) * self.scale,
        )

    def ink(self) -> list[Item]:
        """The geometry on paper, clipped to the windows, with break lines; without dimensions."""
        items: list[Item] = []
        for window in self.windows:
            for region in self.regions:
                items += self._hatched(region, window)
            for stroke in self.strokes:
                items += self._clipped(stroke, window)
            for item in self.rounds:
                if _holds(window, item):
                    centre = self._through(window, item.centre)
                    items.append(
                        Round(centre, item.radius * self.scale, item.start, item.sweep, item.pen)
                    )
            items += self._break_lines(window)
        return [*items, *self.notes]

    def _through(self, window: Window, spot: Spot) -> Spot:
        return (
            window.at[0] + (spot[0] - window.x[0]) * self.scale,
            window.at[1] + (spot[1] - window.y[0]) * self.scale,
        )

    def _clipped(self, stroke: Stroke, window: Window) -> Iterator[Stroke]:
        points = [*stroke.points, stroke.points[0]] if stroke.closed else list(stroke.points)
        for piece in clipped(points, window):
            spots = tuple(self._through(window, p) for p in piece)
            yield Stroke(spots, stroke.pen, colour=stroke.colour)

    def _hatched(self, region: Region, window: Window) -> Iterator[Stroke]:
        pitch = region.pitch / self.scale
        for a, b in hatch(region.loops, angle=region.angle, pitch=pitch):
            for piece in clipped([a, b], window):
                yield Stroke(tuple(self._through(window, p) for p in piece), Pen.HATCH)
        for loop in region.loops:
            yield from self._clipped(Stroke(loop, Pen.OUTLINE, closed=True), window)

    def _break_lines(self, window: Window) -> Iterator[Stroke]:
        """A zigzag wherever a side of the window cuts material, so that no cut reads as an edge."""
        for x in window.x:
            cut = [c for r in self.regions for c in crossings(r.loops, x)]
            low, high = (max(min(cut), window.y[0]), min(max(cut), window.y[1])) if cut else (0, 0)
            if high > low:
                yield self._zigzag(window, x, low, high)

    def _zigzag(self, window: Window, x: float, low: float, high: float) -> Stroke:
        (px, y0), (_, y1) = (self._through(window, (x, y)) for y in (low, high))
        middle = (y0 + y1) / 2
        spots = (
            (px, y0 - 2), (px, middle - 2), (px - 1.5, middle - 0.7), (px + 1.5, middle + 0.7),
            (px, middle + 2), (px, y1 + 2),
        )  # fmt: skip
        return Stroke(spots, Pen.DIMENSION)


def _holds(window: Window, item: Round) -> bool:
    (x, y), r = item.centre, item.radius
    return (
        window.x[0] <= x - r and x + r <= window.x[1]
        and window.y[0] <= y - r and y + r <= window.y[1]
    )  # fmt: skip


def clipped(points: Sequence[Spot], window: Window) -> list[list[Spot]]:
    """The pieces of a polyline within a window."""
    pieces: list[list[Spot]] = []
    for a, b in pairwise(points):
        inside = _segment(a, b, window)
        if inside is None:
            continue
        start, end = inside
        if pieces and math.dist(pieces[-1][-1], start) < 1e-9:
            pieces[-1].append(end)
        else:
            pieces.append([start, end])
    return pieces


def _segment(a: Spot, b: Spot, window: Window) -> tuple[Spot, Spot] | None:
    """The part of a straight piece within a window, or None (Liang and Barsky's way)."""
    enter, leave = 0.0, 1.0
    for axis, (low, high) in enumerate((window.x, window.y)):
        run = b[axis] - a[axis]
        for way, room in ((-run, a[axis] - low), (run, high - a[axis])):
            if abs(way) < 1e-12:
                if room < 0:
                    return None
                continue
            share = room / way
            if way < 0:
                enter = max(enter, share)
            else:
                leave = min(leave, share)
    if leave - enter < 1e-9:
        return None
    return _at(a, b, enter), _at(a, b, leave)


def _at(a: Spot, b: Spot, share: float) -> Spot:
    return a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share


def crossings(loops: Iterable[Loop], x: float) -> list[float]:
    """Where closed loops cross the upright line at ``x``, as their y [mm]."""
    found = []
    for loop in loops:
        for a, b in zip(loop, (*loop[1:], loop[0]), strict=True):
            if (a[0] > x + 1e-6) != (b[0] > x + 1e-6) and (a[0] < x - 1e-6) != (b[0] < x - 1e-6):
                found.append(_at(a, b, (x - a[0]) / (b[0] - a[0]))[1])
    return found


def hatch(loops: Sequence[Loop], *, angle: float, pitch: float) -> list[tuple[Spot, Spot]]:
    """Parallel lines [mm] inside closed loops (even-odd), ``pitch`` apart, at ``angle`` degrees.

    The lines lie on a grid through the origin, so that neighbouring cuts of one part line up.
    """
    turn = math.radians(angle)
    cos, sin = math.cos(turn), math.sin(turn)
    turned = [[(x * cos + y * sin, y * cos - x * sin) for x, y in loop] for loop in loops]
    levels = [y for loop in turned for _, y in loop]
    if not levels:
        return []
    found: list[tuple[Spot, Spot]] = []
    # Off the grid by an odd share, so that no line runs along an edge.
    first = math.ceil(min(levels) / pitch - 0.37)
    for k in range(first, math.floor(max(levels) / pitch - 0.37) + 1):
        y = (k + 0.37) * pitch
        xs = sorted(
            a[0] + (b[0] - a[0]) * (y - a[1]) / (b[1] - a[1])
            for loop in turned
            for a, b in zip(loop, [*loop[1:], loop[0]], strict=True)
            if (a[1] > y) != (b[1] > y)
        )
        for x0, x1 in zip(xs[::2], xs[1::2], strict=False):
            ends = [(x * cos - y * sin, x * sin + y * cos) for x in (x0, x1)]
            found.append((ends[0], ends[1]))
    return found


def title_words(text: str, at: Spot, anchor: str = "middle") -> Words:
    """A view's title; ``anchor``: which of its ends stands at ``at``."""
    return Words(at, text, height=TITLE_HEIGHT, anchor=anchor)

"""A page as strokes and words on paper [mm], origin at its lower left corner, y upward.

Everything above this module knows what a line means; the writers below only put ink down.
"""

from __future__ import annotations

import enum
import math
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from decimal import ROUND_HALF_EVEN, Decimal

Spot = tuple[float, float]
"""(x, y) on the paper [mm]."""

BLACK, WHITE = "#000000", "#ffffff"


class Pen(enum.Enum):
    """What a line is; ``_LOOKS`` says how it is drawn."""

    OUTLINE = "outline"
    FRAME = "frame"
    SYMBOL = "symbol"
    DIMENSION = "dimension"
    HATCH = "hatch"
    HIDDEN = "hidden"
    CENTRE = "centre"
    NONE = "none"

    @property
    def width(self) -> float:
        """Line width [mm]."""
        return _LOOKS[self][0]

    @property
    def dashes(self) -> tuple[float, ...]:
        """Drawn, left out, drawn, ... [mm]; empty for a solid line."""
        return _LOOKS[self][1]


_LOOKS: dict[Pen, tuple[float, tuple[float, ...]]] = {
    Pen.OUTLINE: (0.5, ()),
    Pen.FRAME: (0.5, ()),
    Pen.SYMBOL: (0.35, ()),
    Pen.DIMENSION: (0.25, ()),
    Pen.HATCH: (0.25, ()),
    Pen.HIDDEN: (0.25, (3.0, 1.5)),
    Pen.CENTRE: (0.25, (8.0, 1.5, 1.2, 1.5)),
    Pen.NONE: (0.0, ()),
}
"""Width and dashes [mm]; the widths are those of ISO 128 for sheets up to A2."""


@dataclass(frozen=True)
class Stroke:
    """A polyline, possibly closed and filled with a colour (#rrggbb).

    ``wide``, ``broken``: a width and dashes [mm] of its own, where a chart has other lines than a
    drawing's pens; None for the pen's.
    """

    points: tuple[Spot, ...]
    pen: Pen = Pen.OUTLINE
    closed: bool = False
    fill: str = ""
    colour: str = BLACK
    wide: float | None = None
    broken: tuple[float, ...] | None = None

    @property
    def width(self) -> float:
        """Line width [mm]."""
        return self.pen.width if self.wide is None else self.wide

    @property
    def dashes(self) -> tuple[float, ...]:
        """Drawn, left out, drawn, ... [mm]; empty for a solid line."""
        return self.pen.dashes if self.broken is None else self.broken


@dataclass(frozen=True)
class Round:
    """A circle or an arc, anticlockwise from ``start`` over ``sweep`` [degrees]."""

    centre: Spot
    radius: float
    start: float = 0.0
    sweep: float = 360.0
    pen: Pen = Pen.OUTLINE

    @property
    def width(self) -> float:
        """Line width [mm]."""
        return self.pen.width

    @property
    def dashes(self) -> tuple[float, ...]:
        """Drawn, left out, drawn, ... [mm]; empty for a solid line."""
        return self.pen.dashes

    def at(self, degrees: float) -> Spot:
        """The point at an angle."""
        turn = math.radians(degrees)
        return (
            self.centre[0] + self.radius * math.cos(turn),
            self.centre[1] + self.radius * math.sin(turn),
        )


@dataclass(frozen=True)
class Words:
    """One line of text.

    ``height``: of its capitals [mm]. ``anchor``: which end ``at`` is: start, middle or end.
    ``turn``: degrees anticlockwise. ``key``: what it prints, where it is a dimension.
    """

    at: Spot
    text: str
    height: float = 2.5
    anchor: str = "start"
    turn: float = 0.0
    key: str = ""
    bold: bool = False
    colour: str = BLACK


Item = Stroke | Round | Words


@dataclass(frozen=True)
class Raster:
    """A picture of pixels (PNG) from its lower left corner ``at``, so wide and high [mm]."""

    at: Spot
    width: float
    height: float
    png: bytes


@dataclass
class Page:
    """A sheet of paper [mm] and what is on it."""

    width: float
    height: float
    title: str = ""
    items: list[Item] = field(default_factory=list)
    rasters: list[Raster] = field(default_factory=list)
    """Pictures of pixels; the PDF writer alone prints them, under everything else."""

    def add(self, *items: Item) -> None:
        """Put ink on the page."""
        self.items += items

    def line(self, *points: Spot, pen: Pen = Pen.DIMENSION) -> None:
        """Draw a polyline."""
        self.items.append(Stroke(tuple(points), pen))

    def box(self, low: Spot, high: Spot, *, pen: Pen = Pen.DIMENSION, fill: str = "") -> None:
        """Draw a rectangle from its lower left to its upper right corner."""
        corners = (low, (high[0], low[1]), high, (low[0], high[1]))
        self.items.append(Stroke(corners, pen, closed=True, fill=fill))

    @property
    def words(self) -> list[Words]:
        """All text on the page."""
        return [item for item in self.items if isinstance(item, Words)]


def moved(item: Item, by: Spot, *, shrink: float = 1.0) -> Item:
    """An item made smaller about the origin and then moved; lines keep their widths."""

    def at(spot: Spot) -> Spot:
        return spot[0] * shrink + by[0], spot[1] * shrink + by[1]

    if isinstance(item, Words):
        return replace(item, at=at(item.at), height=item.height * shrink)
    if isinstance(item, Round):
        return replace(item, centre=at(item.centre), radius=item.radius * shrink)
    return replace(item, points=tuple(at(p) for p in item.points))


def number(value: float, places: int = 3) -> str:
    """A figure for a file: rounded so that every kernel and every processor writes the same.

    The first rounding takes away the kernel's noise (below 1e-7), so that the second never
    decides a tie by it.
    """
    calm = Decimal(f"{value:.7f}")
    rounded = calm.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_EVEN)
    text = f"{rounded:f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


def arrow(tip: Spot, toward: Spot, *, length: float = 3.0) -> Stroke:
    """A filled arrowhead of ISO 129 whose point is ``tip``, coming from ``toward``."""
    span = math.dist(tip, toward) or 1.0
    ux, uy = (toward[0] - tip[0]) / span, (toward[1] - tip[1]) / span
    half = length * math.tan(math.radians(9))
    foot = tip[0] + ux * length, tip[1] + uy * length
    wings = ((foot[0] - uy * half, foot[1] + ux * half), (foot[0] + uy * half, foot[1] - ux * half))
    return Stroke((tip, *wings), Pen.NONE, closed=True, fill=BLACK)


def bounds(items: Iterable[Item]) -> tuple[float, float, float, float]:
    """Least x, least y, most x, most y [mm] of strokes and rounds (not of words)."""
    spots: list[Spot] = []
    for item in items:
        if isinstance(item, Stroke):
            spots += item.points
        elif isinstance(item, Round):
            (x, y), r = item.centre, item.radius
            spots += [(x - r, y - r), (x + r, y + r)]
    xs, ys = [s[0] for s in spots], [s[1] for s in spots]
    return min(xs), min(ys), max(xs), max(ys)

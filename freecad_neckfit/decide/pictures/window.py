"""The window as a picture: where everything holds, what bounds it, and where the joint stands."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from ...job.arrays import FloatArray
from ...job.quantity import Kind, Units
from ...job.show import compact_length, show_value
from ...job.speech import say
from ..conflicts import Conflict
from ..demands import Demand
from ..shop import INCH, Steps
from ..window import Window
from .crosses import cross_labels, draw_cross
from .frame import Frame
from .legend import Layout, draw_legend, draw_number
from .shop_marks import draw_marks, draw_name, named_depths, tell_steps
from .svg import DASHES, LINES, OUTSIDE, PAPER_WIDE, SCREEN_WIDE, WITHIN, Point, Sheet
from .zones import tell_zones

SCREEN = Layout(SCREEN_WIDE, (74.0, 96.0, 500.0, 388.0), (600.0, 108.0), 28, height=560.0)
PAPER = Layout(PAPER_WIDE, (74.0, 96.0, 504.0, 388.0), (22.0, 586.0), 38, beside=(345.0, 586.0))
LEAST_SPAN = {Kind.LENGTH: 1.0, Kind.ANGLE: 0.8}
"""The picture shows at least so much [mm, degrees]."""
CLEAR = 45.0
"""Numbers stand so far from each other and from the crosses, where there is room."""


@dataclass(frozen=True)
class Picture:
    """The SVG, and the frame that leads from a click to depth and angle."""

    svg: str
    frame: Frame


def draw_window(
    window: Window,
    *,
    name: str,
    steps: Steps | None = None,
    tried: tuple[float, float] | None = None,
    conflicts: Sequence[Conflict] = (),
    units: Units = Units.MM,
    layout: Layout = SCREEN,
) -> Picture:
    """Draw the window of the joint called ``name``, close up around it and the joint itself.

    ``steps``: what the shop can set. ``tried``: another place that is marked as well.
    ``conflicts``: what is told where there is no window. ``units``: of lengths. ``layout``:
    ``SCREEN``, or ``PAPER`` with its legend below and as high as that needs.
    """
    steps = steps or Steps()
    x, y = view(window)
    frame = Frame(*layout.frame, x, y)
    bounds = _bounding(window, frame)
    scratch = Sheet(layout.width, 0.0, title="")
    high = layout.height or draw_legend(
        scratch, layout, bounds, conflicts, stated_lines(window, units), units
    )
    sheet = Sheet(layout.width, high, title=f"{name}: {say('where every demand holds')}")
    _head(sheet, window, name)
    sheet.box(frame.left, frame.top, frame.width, frame.height, fill=OUTSIDE)
    sheet.areas((frame.places(p) for p in window.region.polygons if _seen(p, frame)), fill=WITHIN)
    named = named_depths(frame, steps, units)
    taken = [box for *_, box in named]
    crosses = [(window.chosen, say("as stated"))]
    if tried is not None:
        crosses.append((tried, say("tried")))
    labels = cross_labels(frame, crosses, taken)
    numbers = _numbers(window, frame, bounds, [frame.place(*at) for at, _ in crosses])
    taken += [(*at, 9.0, 9.0) for at in numbers]
    tell_zones(sheet, window, frame, taken)
    ticked = draw_marks(sheet, frame, window, steps)
    for each in named:
        draw_name(sheet, frame, *each[:3])
    _draw_bounds(sheet, window, frame, bounds, numbers)
    for cross, label in zip(crosses, labels, strict=True):
        draw_cross(sheet, frame, *cross, label)
    frame.edge(sheet)
    for axis, draw in ((window.x, frame.draw_x), (window.y, frame.draw_y)):
        symbol, unit = _unit(axis.kind, units)
        draw(sheet, f"{say(axis.title)} [{symbol}]", unit=unit)
    draw_legend(sheet, layout, bounds, conflicts, stated_lines(window, units), units)
    tell_steps(sheet, frame, window, steps, units, ticked)
    return Picture(sheet.text(), frame)


def _unit(kind: Kind, units: Units) -> tuple[str, float]:
    """Symbol and size of the unit that an axis counts in."""
    is_inch = kind is Kind.LENGTH and units is Units.INCH
    return (units.value, INCH) if is_inch else (kind.unit, 1.0)


def view(window: Window) -> tuple[tuple[float, float], tuple[float, float]]:
    """What the picture shows of both axes: the window and the joint, or all if there is none."""
    if window.empty:
        return (window.x.low, window.x.high), (window.y.low, window.y.high)
    points = np.vstack([*(e.points for e in window.edges), window.chosen])
    sides = []
    for axis, values in zip((window.x, window.y), points.T, strict=True):
        low, high = float(values.min()), float(values.max())
        grow = max(0.18 * (high - low), (LEAST_SPAN[axis.kind] - (high - low)) / 2)
        sides.append((max(low - grow, axis.low), min(high + grow, axis.high)))
    return sides[0], sides[1]


def _seen(polygon: FloatArray, frame: Frame) -> bool:
    low, high = polygon.min(axis=0), polygon.max(axis=0)
    return bool(
        low[0] <= frame.x[1]
        and high[0] >= frame.x[0]
        and low[1] <= frame.y[1]
        and high[1] >= frame.y[0]
    )


def _head(sheet: Sheet, window: Window, name: str) -> None:
    sheet.words((22, 32), name, size=18, bold=True)
    if window.empty:
        words = say("No {} and {} in this range meets every demand.")
        said = words.format(say(window.x.name), say(window.y.name))
    elif window.fits:
        said = say(
            "In the blue area every demand holds. The joint as stated (cross) lies within it."
        )
    else:
        said = say(
            "In the blue area every demand holds. The joint as stated (cross) lies OUTSIDE it."
        )
    sheet.words((22, 54), said, size=14)


def _lines(window: Window) -> dict[Demand, list[FloatArray]]:
    lines: dict[Demand, list[FloatArray]] = defaultdict(list)
    for edge in window.edges:
        if edge.demand is not None:
            lines[edge.demand].append(edge.points)
    return lines


def _bounding(window: Window, frame: Frame) -> list[Demand]:
    """The demands that bound the window, the longest border first: in the order of the numbers."""
    lines = _lines(window)
    return sorted(lines, key=lambda d: -max(_length(p, frame) for p in lines[d]))


def _numbers(
    window: Window, frame: Frame, bounds: list[Demand], marked: list[Point]
) -> list[Point]:
    """Where the borders' numbers stand: clear of each other and of what is ``marked``."""
    found: list[Point] = []
    lines = _lines(window)
    for demand in bounds:
        longest = max(lines[demand], key=lambda p: _length(p, frame))
        found.append(_clear(frame.places(longest), [*marked, *found]))
    return found


def _draw_bounds(
    sheet: Sheet, window: Window, frame: Frame, bounds: list[Demand], numbers: list[Point]
) -> None:
    """Draw the borders, each with its number."""
    lines = _lines(window)
    for n, demand in enumerate(bounds):
        for points in lines[demand]:
            sheet.line(
                frame.places(points), colour=LINES[n % 7], dash=DASHES[n % 7], width=3.0
            )  # fmt: skip
    for n, at in enumerate(numbers):
        draw_number(sheet, at, n)


def _length(points: FloatArray, frame: Frame) -> float:
    places = np.array(frame.places(points))
    return float(np.hypot(*np.diff(places, axis=0).T).sum())


def _clear(places: list[Point], taken: list[Point]) -> Point:
    """A place on a line, halfway if that is clear of what is there already."""
    points = np.array(places)
    run = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))])
    found = [
        (float(np.interp(share * run[-1], run, points[:, 0])),
         float(np.interp(share * run[-1], run, points[:, 1])))
        for share in (0.5, 0.35, 0.65, 0.2, 0.8)
    ]  # fmt: skip

    def room(at: Point) -> float:
        return min((np.hypot(at[0] - x, at[1] - y) for x, y in taken), default=np.inf)

    return next((at for at in found if room(at) > CLEAR), max(found, key=room))


def stated_lines(
    window: Window,
    units: Units = Units.MM,
    *,
    at: tuple[float, float] | None = None,
    most: int = 4,
) -> list[str]:
    """Where the joint stands (or ``at``), and what it has least to spare of, in plain lines."""
    x, y = window.chosen if at is None else at
    second = show_value(y, kind=window.y.kind, units=units)
    deep = say("{} deep").format(compact_length(x, units=units))
    lines = [f"{deep}, {say(window.y.name)} {second}"]
    said: set[str] = set()
    for demand, margin in window.margins_at(x, y).items():
        if demand.check.id in said or margin == 0.0:
            continue
        said.add(demand.check.id)
        word = say("{} to spare") if margin > 0 else say("{} short")
        amount = show_value(abs(margin) * demand.check.span, kind=demand.check.unit, units=units)
        lines.append(f"{say(demand.check.title)}: {word.format(amount)}")
        if len(said) == most:
            break
    return lines

"""Where views and figures stand on a TechDraw page.

TechDraw sets its figures along their lines and breaks no view, so the page has a layout of its own:
every figure has a row above or below its view, or a column beside it, to itself.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from .dimension import Placed, Pointed, Spot
from .drawing import Drawing
from .drawing_layout import DETAILS
from .helvetica import width
from .paper import Angle, Paper
from .view import View

LETTERS = 2.5
"""Height of the figures' capitals [mm]."""
ROW, CLEAR = 8.0, 6.0
"""From row to row, and from a view to its first one [mm of paper]."""
SCALES = ((0.5, "1:2"), (0.2, "1:5"))
WIDER = 1.35
"""How much longer than Helvetica's TechDraw's own letters may run."""
LEADERS = 52.0
"""Room [mm] right of the pocket for the figures on leaders."""
LEAST = 116.0
"""What the section across takes of the width [mm]."""
LONG = 50.0
"""Room [mm] beside the section across for the longest figures."""


@dataclass(frozen=True)
class Stand:
    """A view on the page: scale, and where its model's origin stands [mm]; its title's place."""

    scale: float
    origin: Spot
    title: Spot


@dataclass(frozen=True)
class Layout:
    """The page: each view's stand by name, and the scales in words."""

    stands: dict[str, Stand]
    scale: str
    detail_scale: str


def layout_of(drawing: Drawing) -> Layout:
    """Lay the page out, at 1:2 where that leaves room for the detail, else at 1:5."""
    views = {view.name: view for view in drawing.views}
    ends = [(_right_end(views["plan"], drawing, scale), scale, name) for scale, name in SCALES]
    right, scale, name = next((e for e in ends if e[0] + LEAST <= drawing.paper.high[0]), ends[-1])
    detail = _detail_scale(views["overhang"], drawing.paper, right)
    stands = _stands(views, drawing, scale, right, detail[0])
    return Layout(stands, name, detail[1])


def _left_end(drawing: Drawing, view: View, scale: float) -> float:
    """X on paper of the model's origin: room for columns of figures at the left."""
    columns = len(_columns(view)) + 1
    return drawing.paper.low[0] + CLEAR + ROW * columns - view.windows[0].x[0] * scale


def _right_end(view: View, drawing: Drawing, scale: float) -> float:
    return _left_end(drawing, view, scale) + view.windows[-1].x[1] * scale + CLEAR + ROW


def _detail_scale(view: View, paper: Paper, right: float) -> tuple[float, str]:
    window = view.windows[0]
    room = paper.high[0] - right - CLEAR - 2 * ROW - 10
    fitting = [d for d in DETAILS[1:] if (window.x[1] - window.x[0]) * d[0] <= room]
    return fitting[0] if fitting else DETAILS[-1]


def _stands(
    views: dict[str, View], drawing: Drawing, scale: float, right: float, detail: float
) -> dict[str, Stand]:
    paper, plan, along = drawing.paper, views["plan"], views["along"]
    x = _left_end(drawing, plan, scale)
    left = x + plan.windows[0].x[0] * scale
    (y0, y1), (z0, z1) = (view.windows[0].y for view in (plan, along))
    rows = len([p for p in plan.placed if _side(p) == "below"])
    above, below = CLEAR + 2 * ROW, CLEAR + rows * ROW
    top, low = paper.high[1] - 9, paper.low[1] + 8
    over = 26.0  # the depth's figure stands upright over the section
    if drawing.angle is Angle.FIRST:
        section_y, plan_y = top - over - z1 * scale, low + below - y0 * scale
    else:
        section_y = low + CLEAR + ROW - z0 * scale
        plan_y = top - above - y1 * scale
    across_x = right + LONG + (y1 - y0) / 2 * scale
    across_y = top - 6 - z1 * scale
    bottom = across_y + z0 * scale - CLEAR - ROW
    window = views["overhang"].windows[0]
    detail_x = right + CLEAR - window.x[0] * detail
    detail_y = bottom - 10 - CLEAR - ROW - window.y[1] * detail
    return {
        "plan": Stand(scale, (x, plan_y), (left + 24, plan_y + y1 * scale + above)),
        "along": Stand(scale, (x, section_y), (left + 24, section_y + z1 * scale + over)),
        "across": Stand(scale, (across_x, across_y), (across_x, across_y + z1 * scale + 6)),
        "overhang": Stand(detail, (detail_x, detail_y), (detail_x + 30, bottom - 6)),
    }


def _side(placed: Placed) -> str:
    """Where a plan's figure stands: above, below, left or right of it; "" for a leader's."""
    key = placed.what.key
    if isinstance(placed, Pointed):
        return ""
    if placed.upright:
        return "right" if key == "pocket.width_end" else "left"
    if key.startswith("screw_x") or (key.startswith("saddle") and placed.b[1] <= 0):
        return "below"
    return "above"


def _columns(view: View) -> list[Placed]:
    return [p for p in view.placed if _side(p) == "left"]


def figures_at(view: View, stand: Stand) -> Iterator[tuple[Placed, Spot]]:
    """Every figure of a view with where its middle stands [mm from the model's origin]."""
    place = {"plan": _plan, "along": _along, "across": _across, "overhang": _overhang}[view.name]
    yield from place(view, stand.scale)


def _plan(view: View, scale: float) -> Iterator[tuple[Placed, Spot]]:
    (x0, x1), (y0, y1) = ((a * scale, b * scale) for a, b in (view.windows[0].x, view.windows[0].y))
    counts = dict.fromkeys(("above", "below", "left", "right"), 0)
    for p in sorted(view.placed, key=_reach):
        if isinstance(p, Pointed):
            is_hole = p.what.prefix == "Ø"
            yield p, (x1 + 26, 5.5) if is_hole else (x1 + 26, y1 + 5)
            continue
        side = _side(p)
        away = CLEAR + ROW * counts[side]
        counts[side] += 1
        if p.upright:
            at = x0 - away if side == "left" else x1 + LEADERS
            yield p, (at, (p.a[1] + p.b[1]) / 2 * scale)
        else:
            at = y1 + away if side == "above" else y0 - away
            yield p, (_level(p, scale), at)


def _reach(p: Placed) -> float:
    """How long a line is: the shortest stands nearest to the view."""
    if isinstance(p, Pointed):
        return 0.0
    axis = 1 if p.upright else 0
    return abs(p.a[axis] - p.b[axis])


def _level(p: Placed, scale: float) -> float:
    """The middle of a level line, or a place beside one too short for its figures."""
    assert not isinstance(p, Pointed)  # noqa: S101 # asked of straight ones only
    low, high = sorted((p.a[0] * scale, p.b[0] * scale))
    long = width(f"{p.what.value:.2f}", height=LETTERS) * WIDER + (14 if p.what.limits else 4)
    if high - low >= long + 6:
        return (low + high) / 2
    return high + long / 2 + 3


def _along(view: View, scale: float) -> Iterator[tuple[Placed, Spot]]:
    window, last = view.windows[0], view.windows[-1].x[1] * scale
    for p in view.placed:
        key = p.what.key
        if isinstance(p, Pointed):
            yield p, (p.tip[0] * scale, window.y[0] * scale - CLEAR)
        elif key == "pocket.depth":
            yield p, (window.x[1] * scale + 3, window.y[1] * scale + 13)
        elif key == "body.thickness":
            yield p, (last + CLEAR, (p.a[1] + p.b[1]) / 2 * scale)
        else:
            yield p, (window.x[0] * scale - CLEAR, window.y[1] * scale + 10)


def _across(view: View, scale: float) -> Iterator[tuple[Placed, Spot]]:
    window = view.windows[0]
    for p in view.placed:
        assert isinstance(p, Pointed)  # noqa: S101 # its figures are leaders' alone
        way = 1.0 if p.tip[0] > 0 else -1.0
        yield p, (p.tip[0] * scale + way * 26, window.y[0] * scale - CLEAR)


def _overhang(view: View, scale: float) -> Iterator[tuple[Placed, Spot]]:
    window = view.windows[0]
    right, top, low = window.x[1] * scale, window.y[1] * scale, window.y[0] * scale
    for p in view.placed:
        assert isinstance(p, Pointed)  # noqa: S101 # its figures are leaders' alone
        a, b = p.between or (p.tip, p.tip)
        middle = (a[0] + b[0]) / 2 * scale, (a[1] + b[1]) / 2 * scale
        if p.what.key == "neck.overhang":
            yield p, (middle[0], top + CLEAR)
        elif p.what.key == "overhang_gap":
            yield p, (right + CLEAR, middle[1] + 26)
        elif p.what.key == "plate.thickness":
            yield p, (right + CLEAR + ROW, middle[1] - 28)
        else:
            yield p, (middle[0] + 26, low - CLEAR)


__all__ = ["LETTERS", "Layout", "Stand", "figures_at", "layout_of"]

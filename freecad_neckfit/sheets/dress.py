"""Turns placed dimensions into ink: extension lines, dimension lines, arrows, leaders, text."""

from __future__ import annotations

from ..job.quantity import Units
from .dimension import Placed, Pointed, Straight
from .helvetica import printable, width
from .ink import Item, Pen, Spot, Stroke, Words, arrow
from .view import View

HEIGHT = 2.5
"""Height of a dimension's figures [mm]."""
OFF, BEYOND, ABOVE = 1.0, 1.5, 0.9
"""Extension line from the edge, past the dimension line; figures above the line [mm]."""
LEAST = 9.0
"""A dimension line shorter than this [mm] has its arrows outside."""
TAIL = 6.0
SPARE = 0.4
"""How much longer [mm] than its figures a dimension line must be to carry them."""


def dressed(view: View, units: Units) -> list[Item]:
    """The ink of a view's dimensions."""
    return [item for placed in view.placed for item in _one(view, placed, units)]


def _one(view: View, placed: Placed, units: Units) -> list[Item]:
    text = printable(placed.what.text(units))
    if isinstance(placed, Pointed):
        return _pointed(view, placed, text)
    return _straight(view, placed, text)


def _straight(view: View, placed: Straight, text: str) -> list[Item]:
    ends = [view.spot(*placed.a), view.spot(*placed.b)]
    if not placed.upright:
        return _along(ends, placed, text)
    if abs(ends[1][1] - ends[0][1]) < max(LEAST, width(text, height=HEIGHT) + SPARE):
        return _short_upright(ends, placed, text)
    # Turned so that the same words serve: an upright line is a level one seen from the right.
    turned = [(y, -x) for x, y in ends]
    lane = Straight(what=placed.what, a=placed.a, b=placed.b, lane=-placed.lane)
    return [_turned_back(item) for item in _along(turned, lane, text)]


def _along(ends: list[Spot], placed: Straight, text: str) -> list[Item]:
    (x0, y0), (x1, y1) = sorted(ends)
    lane, items = placed.lane, list[Item]()
    for x, y in ((x0, y0), (x1, y1)):
        way = 1.0 if lane >= y else -1.0
        if abs(lane - y) > OFF:
            items.append(Stroke(((x, y + way * OFF), (x, lane + way * BEYOND)), Pen.DIMENSION))
    long = width(text, height=HEIGHT)
    span = x1 - x0
    if span >= LEAST and span >= long + SPARE:
        items.append(Stroke(((x0, lane), (x1, lane)), Pen.DIMENSION))
        items += [arrow((x0, lane), (x1, lane)), arrow((x1, lane), (x0, lane))]
        middle = (x0 + x1) / 2, lane + ABOVE
        return [*items, Words(middle, text, HEIGHT, "middle", key=placed.what.key)]
    end = x1 + TAIL + long
    if span >= LEAST:
        items.append(Stroke(((x0, lane), (end, lane)), Pen.DIMENSION))
        items += [arrow((x0, lane), (x1, lane)), arrow((x1, lane), (x0, lane))]
    else:
        items.append(Stroke(((x0 - TAIL, lane), (end, lane)), Pen.DIMENSION))
        items += [arrow((x0, lane), (x0 - 9, lane)), arrow((x1, lane), (end, lane))]
    return [*items, Words((x1 + TAIL, lane + ABOVE), text, HEIGHT, key=placed.what.key)]


def _short_upright(ends: list[Spot], placed: Straight, text: str) -> list[Item]:
    """An upright line too short for its figures: they stand level beside it."""
    (x0, y0), (x1, y1) = sorted(ends, key=lambda p: p[1])
    lane, items = placed.lane, list[Item]()
    for x, y in ((x0, y0), (x1, y1)):
        way = 1.0 if lane >= x else -1.0
        if abs(lane - x) > OFF:
            items.append(Stroke(((x + way * OFF, y), (lane + way * BEYOND, y)), Pen.DIMENSION))
    inside = y1 - y0 >= LEAST
    reach = 0.0 if inside else TAIL
    items.append(Stroke(((lane, y0 - reach), (lane, y1 + reach)), Pen.DIMENSION))
    away = 1.0 if inside else -1.0
    items += [arrow((lane, y0), (lane, y0 + away)), arrow((lane, y1), (lane, y1 - away))]
    outward = 1.0 if lane >= (x0 + x1) / 2 else -1.0
    at = lane + outward * 1.2, (y0 + y1) / 2 - HEIGHT / 2
    anchor = "start" if outward > 0 else "end"
    return [*items, Words(at, text, HEIGHT, anchor, key=placed.what.key)]


def _turned_back(item: Item) -> Item:
    if isinstance(item, Stroke):
        points = tuple((-y, x) for x, y in item.points)
        return Stroke(points, item.pen, item.closed, item.fill, item.colour)
    assert isinstance(item, Words)  # noqa: S101 # a dimension is made of these two
    (x, y) = item.at
    return Words((-y, x), item.text, item.height, item.anchor, 90.0, item.key)


def _pointed(view: View, placed: Pointed, text: str) -> list[Item]:
    tip, (x, y) = view.spot(*placed.tip), placed.at
    long = width(text, height=HEIGHT)
    far = x - long - 1 if placed.left else x + long + 1
    start = (far if placed.left else x) + 0.5
    return [
        Stroke((tip, (x, y), (far, y)), Pen.DIMENSION),
        arrow(tip, (x, y)),
        Words((start, y + ABOVE), text, HEIGHT, key=placed.what.key),
    ]

"""The deciding tools' charts as ink on paper, from the plain SVG that they are drawn in."""

from __future__ import annotations

import math
import re
import xml.etree.ElementTree as ET
from collections.abc import Iterator

from ..helvetica import CAPITALS, printable, width
from ..ink import BLACK, WHITE, Item, Page, Pen, Spot, Stroke, Words

POINT = 25.4 / 96
"""What a chart's unit of length is on paper [mm], before it is fitted to the sheet."""
TURN = math.radians(10)
_TURNED = re.compile(r"rotate\(([-0-9.]+)")


def chart_page(text: str) -> Page:
    """The chart as a page of its own size.

    Reads what ``decide.pictures.svg.Sheet`` writes: boxes, outlines, discs, lines and words. Raises
    ValueError for anything else, for a chart must not lose a part on its way to paper.
    """
    root = ET.fromstring(text)  # noqa: S314 # written by this program
    page = Page(float(root.get("width", 0)) * POINT, float(root.get("height", 0)) * POINT)
    for element in root:
        kind = element.tag.rpartition("}")[2]
        if kind == "title":
            page.title = element.text or ""
        elif kind in _READERS:
            page.add(*_READERS[kind](element, page.height))
        else:
            raise ValueError(f"a chart holds <{kind}>, which no sheet of paper can show")
    return page


def _spot(x: float, y: float, top: float) -> Spot:
    return x * POINT, top - y * POINT


def _number(element: ET.Element, name: str) -> float:
    return float(element.get(name, "0"))


def _stroke(element: ET.Element, points: list[Spot], *, closed: bool) -> Stroke:
    fill, line = (element.get(name, "none") for name in ("fill", "stroke"))
    wide = 0.0 if line == "none" else float(element.get("stroke-width", "1")) * POINT
    dashes = tuple(float(d) * POINT for d in element.get("stroke-dasharray", "").split())
    return Stroke(
        tuple(points), Pen.DIMENSION, closed, "" if fill == "none" else fill,
        BLACK if line == "none" else line, wide, dashes,
    )  # fmt: skip


def _box(element: ET.Element, top: float) -> Iterator[Item]:
    x, y, wide, high = (_number(element, name) for name in ("x", "y", "width", "height"))
    corners = ((x, y), (x + wide, y), (x + wide, y + high), (x, y + high))
    yield _stroke(element, [_spot(*c, top) for c in corners], closed=True)


def _disc(element: ET.Element, top: float) -> Iterator[Item]:
    x, y, r = (_number(element, name) for name in ("cx", "cy", "r"))
    turns = [i * TURN for i in range(round(2 * math.pi / TURN))]
    points = [_spot(x + r * math.cos(a), y + r * math.sin(a), top) for a in turns]
    yield _stroke(element, points, closed=True)


def _path(element: ET.Element, top: float) -> Iterator[Item]:
    for piece in element.get("d", "").split("M")[1:]:
        closed = piece.strip().endswith("Z")
        pairs = (pair.split(",") for pair in piece.strip().rstrip("Z").split())
        points = [_spot(float(x), float(y), top) for x, y in pairs]
        yield _stroke(element, points, closed=closed)


def _words(element: ET.Element, top: float) -> Iterator[Item]:
    at = _spot(_number(element, "x"), _number(element, "y"), top)
    turned = _TURNED.search(element.get("transform", ""))
    words = Words(
        at, printable(element.text or ""), _number(element, "font-size") * POINT * CAPITALS,
        element.get("text-anchor", "start"), -float(turned[1]) if turned else 0.0,
        bold=element.get("font-weight") == "bold", colour=element.get("fill", BLACK),
    )  # fmt: skip
    # Words with an outline are the halo behind those that follow: a white patch does on paper.
    yield _patch(words) if element.get("stroke") else words


def _patch(words: Words) -> Stroke:
    long = width(words.text, height=words.height, bold=words.bold)
    back = {"start": 0.0, "middle": long / 2, "end": long}[words.anchor]
    turn = math.radians(words.turn)
    low, high = -0.35 * words.height, 1.2 * words.height
    corners = [(-back, low), (long - back, low), (long - back, high), (-back, high)]
    spots = tuple(
        (
            words.at[0] + x * math.cos(turn) - y * math.sin(turn),
            words.at[1] + x * math.sin(turn) + y * math.cos(turn),
        )
        for x, y in corners
    )
    return Stroke(spots, Pen.NONE, closed=True, fill=WHITE)


_READERS = {"rect": _box, "circle": _disc, "path": _path, "text": _words}

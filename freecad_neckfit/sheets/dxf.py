"""Writes DXF of AutoCAD 2010 (AC1024): the same bytes for the same entities, everywhere.

``data/sheet.dxf`` is an empty drawing in which every table that the format asks for stands; it
was made once with the library ezdxf, whose own output differs from version to version and carries
the time. Only layers, entities and a few header figures are put into it here.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

from ..job.quantity import Units
from ..job.units import INCH_MM
from .helvetica import CAPITALS, printable
from .ink import BLACK, Page, Pen, Round, Stroke, Words
from .ink import number as n

Tag = tuple[int, str]
Corner = tuple[float, float, float]
"""x, y [mm] of a polyline's vertex and the bulge of the piece that follows (0: straight)."""

BASE = Path(__file__).parent.parent / "data" / "sheet.dxf"
APPLICATION = "NECKFIT"
FIRST_HANDLE = 0x100
PLACES = 9
_INSUNITS = {Units.MM: "4", Units.INCH: "1"}
_ANCHORS = {"start": "0", "middle": "1", "end": "2"}
SOLID, DASHED, CHAIN = "Continuous", "NF_DASHED", "NF_CHAIN"


@dataclass(frozen=True)
class Layer:
    """A layer: name, colour number, linetype and width [mm]."""

    name: str
    colour: int = 7
    linetype: str = SOLID
    width: float = 0.25


@dataclass
class Drawing:
    """A DXF file in the making; everything put in is in mm and written in ``units``.

    ``places``: decimals of a millimetre that are written. What comes out of the kernel differs
    from version to version beyond the fifth.
    """

    layers: Sequence[Layer]
    units: Units = Units.MM
    places: int = 7
    _tags: list[Tag] = field(default_factory=list)
    _handle: int = FIRST_HANDLE

    def polyline(
        self, corners: Iterable[Corner], *, layer: str, closed: bool = False, key: str = ""
    ) -> None:
        """A polyline of straight pieces and true arcs."""
        spots = list(corners)
        self._entity("LWPOLYLINE", "AcDbPolyline", layer)
        self._put((90, str(len(spots))), (70, str(int(closed))))
        for x, y, bulge in spots:
            self._put(*self._point(x, y, level=False))
            if bulge:
                self._put((42, n(bulge, 7)))
        self._key(key)

    def arc(self, item: Round, *, layer: str, key: str = "") -> None:
        """A circle, or an arc of one."""
        whole = abs(item.sweep) >= 360
        self._entity("CIRCLE" if whole else "ARC", "AcDbCircle", layer)
        self._put(*self._point(*item.centre), (40, self._length(item.radius)))
        if not whole:
            ends = sorted((item.start, item.start + item.sweep))
            self._put((100, "AcDbArc"), (50, n(ends[0], 6)), (51, n(ends[1], 6)))
        self._key(key)

    def filled(self, points: Sequence[tuple[float, float]], *, layer: str) -> None:
        """A filled triangle or quadrilateral."""
        self._entity("SOLID", "AcDbTrace", layer)
        corners = [*points, points[-1]][:4]
        corners[2], corners[3] = corners[3], corners[2]  # a SOLID runs crosswise
        for i, (x, y) in enumerate(corners):
            values = self._length(x), self._length(y), "0"
            self._put(*((10 * (axis + 1) + i, v) for axis, v in enumerate(values)))

    def words(self, item: Words, *, layer: str) -> None:
        """One line of text."""
        self._entity("TEXT", "AcDbText", layer)
        place = self._point(*item.at)
        self._put(*place, (40, self._length(item.height)), (1, printable(item.text)))
        self._put((50, n(item.turn)), (7, "Standard"), (72, _ANCHORS[item.anchor]))
        if item.anchor != "start":
            self._put(*((code + 1, value) for code, value in place))
        self._put((100, "AcDbText"))
        self._key(item.key)

    def text(self) -> str:
        """The whole file."""
        tags = _with_layers(_with_header(_base(), self), self.layers)
        at = tags.index((2, "ENTITIES")) + 1
        whole = [*tags[:at], *self._tags, *tags[at:]]
        return "".join(f"{code:3d}\n{value}\n" for code, value in whole)

    def _entity(self, kind: str, marker: str, layer: str) -> None:
        self._put(
            (0, kind), (5, f"{self._handle:X}"), (330, _model_space()), (100, "AcDbEntity"),
            (8, layer), (100, marker),
        )  # fmt: skip
        self._handle += 1

    def _put(self, *tags: Tag) -> None:
        self._tags += tags

    def _key(self, key: str) -> None:
        if key:
            self._put((1001, APPLICATION), (1000, key))

    def _point(self, x: float, y: float, *, level: bool = True) -> list[Tag]:
        place = [(10, self._length(x)), (20, self._length(y))]
        return [*place, (30, "0")] if level else place

    def _length(self, mm: float) -> str:
        # To 1e-7 mm first: below that lies the kernel's noise, which differs between machines.
        calm = round(mm, 7)
        return n(calm, self.places) if self.units is Units.MM else _inches(calm)


def _inches(mm: float) -> str:
    text = f"{mm / float(INCH_MM):.{PLACES}f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text


@cache
def _base() -> tuple[Tag, ...]:
    lines = BASE.read_text(encoding="utf-8").splitlines()
    return tuple((int(code), value) for code, value in zip(lines[::2], lines[1::2], strict=True))


@cache
def _model_space() -> str:
    """Handle of the block record that owns what is drawn."""
    tags = _base()
    handle = ""
    for code, value in tags[tags.index((2, "BLOCK_RECORD")) :]:
        if code == 5:
            handle = value
        if (code, value) == (2, "*Model_Space"):
            return handle
    raise AssertionError("data/sheet.dxf has no model space")


def _with_header(tags: Sequence[Tag], drawing: Drawing) -> list[Tag]:
    wanted = {
        "$INSUNITS": _INSUNITS[drawing.units],
        "$MEASUREMENT": "1" if drawing.units is Units.MM else "0",
        "$HANDSEED": f"{drawing._handle + len(drawing.layers):X}",  # noqa: SLF001 # its own file
    }
    out: list[Tag] = []
    variable = ""
    for code, value in tags:
        variable = value if code == 9 else variable
        out.append(
            (code, wanted.pop(variable)) if code != 9 and variable in wanted else (code, value)
        )
    return out


def _with_layers(tags: list[Tag], layers: Sequence[Layer]) -> list[Tag]:
    start = next(i for i in range(len(tags)) if tags[i : i + 2] == [(0, "TABLE"), (2, "LAYER")])
    end = tags.index((0, "ENDTAB"), start)
    added: list[Tag] = []
    for i, layer in enumerate(layers):
        added += [
            (0, "LAYER"), (5, f"{0xA0 + i:X}"), (330, "1"), (100, "AcDbSymbolTableRecord"),
            (100, "AcDbLayerTableRecord"), (2, layer.name), (70, "0"), (62, str(layer.colour)),
            (6, layer.linetype), (370, str(round(layer.width * 100))), (390, "13"), (347, "21"),
        ]  # fmt: skip
    count = next(i for i in range(start, end) if tags[i][0] == 70)
    head = [*tags[:count], (70, str(2 + len(layers))), *tags[count + 1 : end]]
    return [*head, *added, *tags[end:]]


PAGE_LAYERS = {
    Pen.OUTLINE: Layer("OUTLINE", 7, SOLID, 0.5),
    Pen.FRAME: Layer("FRAME", 7, SOLID, 0.5),
    Pen.SYMBOL: Layer("SYMBOL", 7, SOLID, 0.35),
    Pen.DIMENSION: Layer("DIMENSION", 5, SOLID, 0.25),
    Pen.HATCH: Layer("HATCH", 8, SOLID, 0.25),
    Pen.HIDDEN: Layer("HIDDEN", 7, DASHED, 0.25),
    Pen.CENTRE: Layer("CENTRELINE", 1, CHAIN, 0.25),
    Pen.NONE: Layer("DIMENSION_ARROWS", 5, SOLID, 0.25),
}
TEXT_LAYER, DIMENSION_TEXT_LAYER = Layer("TEXT"), Layer("DIMENSION_TEXT", 5)


def page_dxf(page: Page) -> str:
    """A page as DXF in millimetres of paper."""
    drawing = Drawing([*PAGE_LAYERS.values(), TEXT_LAYER, DIMENSION_TEXT_LAYER], places=4)
    for item in page.items:
        if isinstance(item, Words):
            layer = DIMENSION_TEXT_LAYER if item.key else TEXT_LAYER
            drawing.words(item, layer=layer.name)
        elif isinstance(item, Round):
            drawing.arc(item, layer=PAGE_LAYERS[item.pen].name)
        elif item.fill == BLACK and len(item.points) in (3, 4):
            drawing.filled(item.points, layer=PAGE_LAYERS[item.pen].name)
        else:
            _outline(drawing, item)
    return drawing.text()


def _outline(drawing: Drawing, item: Stroke) -> None:
    corners = [(x, y, 0.0) for x, y in item.points]
    drawing.polyline(corners, layer=PAGE_LAYERS[item.pen].name, closed=item.closed)


def bulge(
    start: tuple[float, float], through: tuple[float, float], end: tuple[float, float]
) -> float:
    """The bulge of the arc from start to end through a point on the way: tan of a quarter turn.

    Positive for an arc that turns left.
    """
    (ax, ay), (mx, my), (bx, by) = start, through, end
    a, b = math.atan2(my - ay, mx - ax), math.atan2(by - my, bx - mx)
    # From one half's chord to the other's the way turns by half of what the arc turns.
    half = math.remainder(b - a, 2 * math.pi)
    return math.tan(half / 2)


__all__ = ["CAPITALS", "Drawing", "Layer", "bulge", "page_dxf"]

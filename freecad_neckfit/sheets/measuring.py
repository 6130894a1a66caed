"""The work sheet for the caliper: one page that shows where to measure neck, body and plate."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ..decide.pictures.svg import FAINT, INK, LINES, Point, Sheet, wrapped
from ..job.parameter import Parameter
from ..job.parameters import ALL
from ..job.quantity import Kind, Units
from ..job.show import compact_length, show_value

WIDE, HIGH = 794.0, 1123.0
"""A4 at 96 points an inch."""
INSTRUMENTS = {"calipers": 0.05, "depth gauge": 0.05, "rule": 0.3, "nut's": 0.3}
"""How far [mm] a reading may be off, by the instrument that "where to measure" names; from
memory: calipers and gauge a scale division, a rule by eye."""

# The side view: mouth, end wall, fretboard's end, body's end; nut and fret 12.
MOUTH, END, BOARD, BODY, NUT, TWELVE = 320.0, 560.0, 620.0, 744.0, 60.0, 220.0
# Its levels: fretboard, glue line and underside, plate and body top, heel bottom, body's back.
TOP, GLUE, PLATE, DECK, FLOOR, BACK = 190.0, 220.0, 216.0, 230.0, 292.0, 340.0
MIDDLE = 462.0
"""The plan's centreline."""

Spot = tuple[Point, Point]
PLACES: dict[str, Spot] = {
    "body.thickness": ((724, DECK), (724, BACK)),
    "pocket.depth": ((545, DECK), (545, FLOOR)),
    "pocket.length": ((MOUTH, 318), (END, 318)),
    "pocket.width_end": ((552, MIDDLE - 58), (552, MIDDLE + 58)),
    "pocket.width_mouth": ((MOUTH + 8, MIDDLE - 56), (MOUTH + 8, MIDDLE + 56)),
    "neck.height": ((470, TOP), (470, FLOOR)),
    "neck.glue_line": ((410, GLUE), (410, FLOOR)),
    "neck.underside": ((600, GLUE), (600, FLOOR)),
    "neck.overhang": ((END, 174), (BOARD, 174)),
    "neck.scale": ((NUT, 126), (TWELVE, 126)),
    "neck.nut_to_heel": ((NUT, 150), (END, 150)),
    "neck.heel_width_end": ((525, MIDDLE - 55), (525, MIDDLE + 55)),
    "neck.heel_width_mouth": ((MOUTH + 40, MIDDLE - 53), (MOUTH + 40, MIDDLE + 53)),
    "plate.thickness": ((666, PLATE), (666, DECK)),
    "bridge.front": ((END, 362), (BODY - 20, 362)),
}
"""Where each measure's arrow runs on the page."""


def measured() -> list[Parameter]:
    """The parameters that are measured on parts in hand, in the order of their declaration."""
    return [p for p in ALL.values() if p.where]


def measuring_sheet(*, units: Units, stated: Mapping[str, Any] | None = None) -> str:
    """The page as SVG. ``stated``: a job's values, shown beside the room to write in."""
    sheet = Sheet(WIDE, HIGH, title="Where to measure neck, body and cover plate")
    sheet.words((40, 44), "Where to measure neck, body and cover plate", size=20, bold=True)
    sheet.words((40, 66), "neck, body: ______________________   by: ______________   date: ______",
                size=12)  # fmt: skip
    sheet.words((40, 90), "Seen from the treble side, cut along the centreline", size=11,
                colour=FAINT)  # fmt: skip
    _side_view(sheet)
    sheet.words((40, MIDDLE - 76), "Seen from above", size=11, colour=FAINT)
    _plan(sheet)
    for number, parameter in enumerate(measured(), start=1):
        _arrow(sheet, PLACES[parameter.key], number)
    bottom = _table(sheet, 556.0, units, stated or {})
    _foot(sheet, bottom + 12)
    return sheet.text()


def _side_view(sheet: Sheet) -> None:
    body = [(MOUTH, DECK), (MOUTH, BACK), (BODY, BACK), (BODY, DECK), (END + 2, DECK)]
    sheet.line([*body, (END + 2, FLOOR), (MOUTH, FLOOR)], width=1.5)
    shaft = [
        (NUT, GLUE),
        (NUT, GLUE + 34),
        (250, GLUE + 44),
        (300, FLOOR),
        (END, FLOOR),
        (END, GLUE),
    ]
    sheet.line([*shaft, (NUT, GLUE)], width=1.5, colour=LINES[0])
    sheet.line([(NUT, TOP), (BOARD, TOP), (BOARD, GLUE), (NUT, GLUE), (NUT, TOP)], width=1.5,
               colour=LINES[0])  # fmt: skip
    # The level of the heel's bottom, carried out to the arrow under the overhang.
    sheet.line([(END + 2, FLOOR), (608, FLOOR)], colour=FAINT, dash="4 3")
    for x in (TWELVE, 470 - 30, 610):
        sheet.line([(x, TOP), (x, TOP - 5)], width=3, colour=LINES[0])
    sheet.line([(NUT, TOP), (NUT, TOP - 9)], width=4, colour=LINES[0])
    sheet.box(640, PLATE, BODY - 640, DECK - PLATE, fill="#F1F1F1", line=LINES[1])
    sheet.line([(BODY - 20, PLATE), (BODY - 20, PLATE - 40)], width=4)
    for at, said in (((NUT + 4, TOP - 14), "nut"), ((TWELVE - 18, TOP - 10), "fret 12"),
                     ((648, PLATE - 6), "cover plate"), ((BODY - 60, PLATE - 46), "saddle"),
                     ((348, BACK - 8), "body"), ((110, GLUE + 20), "neck"),
                     ((340, TOP + 18), "fretboard"), ((340, FLOOR - 24), "heel")):  # fmt: skip
        sheet.words(at, said, size=10, colour=FAINT)


def _plan(sheet: Sheet) -> None:
    pocket = [(MOUTH, MIDDLE - 56), (END - 8, MIDDLE - 58), (END + 2, MIDDLE - 50)]
    sheet.line([*pocket, *[(x, 2 * MIDDLE - y) for x, y in reversed(pocket)]], width=1.5)
    sheet.line([(MOUTH, MIDDLE - 84), (MOUTH, MIDDLE + 84)], width=1.5)
    heel = [(300, MIDDLE - 52), (END - 8, MIDDLE - 55), (END, MIDDLE - 47)]
    sheet.line([(NUT, MIDDLE - 40), *heel, *[(x, 2 * MIDDLE - y) for x, y in reversed(heel)],
                (NUT, MIDDLE + 40), (NUT, MIDDLE - 40)], width=1.5, colour=LINES[0])  # fmt: skip
    sheet.line([(END, MIDDLE - 55), (BOARD, MIDDLE - 56), (BOARD, MIDDLE + 56), (END, MIDDLE + 55)],
               width=1.5, colour=LINES[0], dash="6 3")  # fmt: skip
    sheet.line([(NUT - 15, MIDDLE), (BODY, MIDDLE)], colour=FAINT, dash="12 3 3 3")


def _arrow(sheet: Sheet, place: Spot, number: int) -> None:
    (x0, y0), (x1, y1) = place
    sheet.line([(x0, y0), (x1, y1)])
    is_upright = x0 == x1
    for x, y, way in ((x0, y0, 1), (x1, y1, -1)):
        if is_upright:
            sheet.line([(x - 3, y + 7 * way), (x, y), (x + 3, y + 7 * way)])
        else:
            sheet.line([(x + 7 * way, y - 3), (x, y), (x + 7 * way, y + 3)])
    # Short arrows carry their number beside them, longer ones in their middle.
    short = abs(x1 - x0) + abs(y1 - y0) < 30
    middle = ((x0 + x1) / 2 + (18 if short and is_upright else 0), (y0 + y1) / 2)
    sheet.dot(middle, 9, fill="#FFFFFF")
    sheet.words((middle[0], middle[1] + 4), str(number), size=11, anchor="middle", bold=True)


COLUMNS = (40.0, 64.0, 350.0, 560.0, 632.0)


def _table(sheet: Sheet, top: float, units: Units, stated: Mapping[str, Any]) -> float:
    heads = ("", "measure", "where, with what", "read to", "measured")
    for x, head in zip(COLUMNS, heads, strict=True):
        sheet.words((x, top), head, size=10, bold=True)
    y = top + 6
    for number, p in enumerate(measured(), start=1):
        meaning = wrapped(f"{p.meaning}", 52)
        where = wrapped(p.where, 38)
        rows = max(len(meaning) + 1, len(where))
        sheet.line([(40, y), (WIDE - 40, y)], colour=FAINT, width=0.5)
        sheet.words((COLUMNS[0], y + 11), str(number), size=10, bold=True)
        sheet.words((COLUMNS[1], y + 11), p.key, size=10)
        for i, text in enumerate(meaning):
            sheet.words((COLUMNS[1], y + 21 + 10 * i), text, size=8.5, colour=FAINT)
        for i, text in enumerate(where):
            sheet.words((COLUMNS[2], y + 11 + 10 * i), text, size=9)
        sheet.words((COLUMNS[3], y + 11), f"±{reading(p, units)}", size=9)
        if p.key in stated:
            said = show_value(float(stated[p.key]), kind=p.kind, units=units)
            sheet.words((COLUMNS[4], y + 11), f"stated {said}", size=8, colour=FAINT)
        sheet.line([(COLUMNS[4], y + 24), (WIDE - 44, y + 24)], width=0.7)
        y += 10 * rows + 6
    sheet.line([(40, y), (WIDE - 40, y)], colour=INK, width=0.7)
    return y


def reading(p: Parameter, units: Units) -> str:
    """How near a reading with the instrument named in ``where`` comes [mm], as shown."""
    off = next((o for word, o in INSTRUMENTS.items() if word in p.where), None)
    if off is None:
        raise KeyError(p.key)
    return compact_length(off, units=units) if p.kind is Kind.LENGTH else ""


def _foot(sheet: Sheet, y: float) -> None:
    said = (
        "Measure each width at three levels and write the largest of a heel, the smallest of a "
        "pocket. Slacken the strings before the neck comes off. Write the figures under the names "
        "above into a job file, under [neck], [pocket], [body], [plate] and [bridge]: "
        'height = 25.4, or height = { value = 25.4, limits = "±0.05 mm" } with the reading\'s own '
        "spread. How near a reading comes is from memory; your instruments decide."
    )
    for i, text in enumerate(wrapped(said, 128)):
        sheet.words((40, y + 12 * i + 6), text, size=9.5)

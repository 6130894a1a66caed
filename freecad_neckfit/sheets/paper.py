"""Sheets of paper, their frame and title block (fields of ISO 7200), and the print-check bar."""

from __future__ import annotations

import enum
from dataclasses import dataclass, fields

from ..job.quantity import Units
from .helvetica import shortened
from .ink import Page, Pen, Round, Spot, Stroke, Words, number

BAR = 100.0
"""Length of the print-check bar [mm]."""


class Angle(enum.Enum):
    """Method of projection."""

    FIRST = "first angle"
    THIRD = "third angle"


@dataclass(frozen=True)
class Paper:
    """A sheet: size and margins [mm] (left is for binding), usual projection."""

    name: str
    width: float
    height: float
    left: float
    margin: float
    angle: Angle

    @property
    def low(self) -> Spot:
        """Lower left corner within the frame."""
        return self.left, self.margin

    @property
    def high(self) -> Spot:
        """Upper right corner within the frame."""
        return self.width - self.margin, self.height - self.margin


A3 = Paper("A3", 420.0, 297.0, 20.0, 10.0, Angle.FIRST)
ANSI_B = Paper("ANSI B", 431.8, 279.4, 15.0, 10.0, Angle.THIRD)
PAPERS = {"A3": A3, "ANSI B": ANSI_B}


@dataclass(frozen=True, kw_only=True)
class Title:
    """What the title block says; an empty field is left blank, to be written by hand."""

    owner: str = ""
    number: str = ""
    revision: str = ""
    date: str = ""
    creator: str = ""
    approver: str = ""

    @classmethod
    def names(cls) -> tuple[str, ...]:
        """The fields, in order."""
        return tuple(field.name for field in fields(cls))


WIDTH, ROW, SMALL = 180.0, 9.0, 2.5
BLOCK_HEIGHT = 4 * ROW


def frame(page: Page, paper: Paper) -> None:
    """The frame of the drawing area, with centring marks."""
    page.box(paper.low, paper.high, pen=Pen.FRAME)
    (x0, y0), (x1, y1) = paper.low, paper.high
    middle = (paper.width / 2, paper.height / 2)
    for a, b in (
        ((middle[0], y0), (middle[0], y0 - 5)), ((middle[0], y1), (middle[0], y1 + 5)),
        ((x0, middle[1]), (x0 - 5, middle[1])), ((x1, middle[1]), (x1 + 5, middle[1])),
    ):  # fmt: skip
        page.line(a, b, pen=Pen.FRAME)


def title_block(
    page: Page, paper: Paper, *, title: Title, name: str, kind: str, scale: str, units: Units,
    angle: Angle, sheet: str = "1/1",
) -> Spot:  # fmt: skip
    """Draw the title block into the lower right corner; return its upper left corner."""
    x0, y0 = paper.high[0] - WIDTH, paper.low[1]
    page.box((x0, y0), (paper.high[0], y0 + BLOCK_HEIGHT), pen=Pen.FRAME)
    unit = "mm" if units is Units.MM else "inch"
    # Each row from the bottom: (heading, words, width [mm]).
    rows: list[list[tuple[str, str, float]]] = [
        [("Revision", title.revision, 20), ("Date of issue", title.date, 30),
         ("Sheet", sheet, 15), ("Scale", scale, 25), ("Unit", unit, 20), ("Paper", paper.name, 25),
         ("", "", 45)],
        [("Creator", title.creator, 55), ("Approver", title.approver, 55),
         ("General tolerances", "ISO 2768-m", 35), ("Projection", "", 35)],
        [("Legal owner", title.owner, 90), ("Document type", kind, 90)],
        [("Title", name, 125), ("Identification number", title.number, 55)],
    ]  # fmt: skip
    for i, row in enumerate(rows):
        x, y = x0, y0 + i * ROW
        if i:
            page.line((x0, y), (paper.high[0], y))
        for heading, words, wide in row:
            if x > x0:
                page.line((x, y), (x, y + ROW))
            _cell(page, (x, y), heading, words, wide, bold=heading == "Title")
            x += wide
    page.add(Words((paper.high[0] - 43, y0 + 3), "NeckFit", SMALL))
    projection_symbol(page, (paper.high[0] - 13, y0 + ROW + 2.7), angle)
    return x0, y0 + BLOCK_HEIGHT


def _cell(page: Page, at: Spot, heading: str, words: str, wide: float, *, bold: bool) -> None:
    x, y = at[0] + 1.2, at[1]
    page.add(Words((x, y + ROW - 3.2), heading, SMALL, colour="#444444"))
    height = 3.0
    fitting = shortened(words, limit=wide - 2.4, height=height, bold=bold)
    page.add(Words((x, y + 1.3), fitting, height, bold=bold))


def projection_symbol(page: Page, at: Spot, angle: Angle) -> None:
    """The truncated cone of the method of projection, about ``at``."""
    (x, y), r = at, 1.9
    end = -6.5 if angle is Angle.THIRD else 6.5
    page.add(Round((x + end, y), r, pen=Pen.SYMBOL), Round((x + end, y), r / 2, pen=Pen.SYMBOL))
    # The cone's small end points away from its end view in first angle, toward it in third.
    cone = ((x - 3, y - r / 2), (x + 3, y - r), (x + 3, y + r), (x - 3, y + r / 2))
    page.add(Stroke(cone, Pen.SYMBOL, closed=True))
    for a, b in (((x - 4.5, y), (x + 4.5, y)), ((x + end - 2.5, y), (x + end + 2.5, y))):
        page.line(a, b, pen=Pen.CENTRE)
    page.line((x + end, y - 2.3), (x + end, y + 2.3), pen=Pen.CENTRE)


def check_bar(page: Page, at: Spot) -> None:
    """A bar of 100 mm and what it is for."""
    x, y = at
    for i in range(10):
        low, high = (x + i * BAR / 10, y), (x + (i + 1) * BAR / 10, y + 1.5)
        page.box(low, high, fill="#000000" if i % 2 == 0 else "#ffffff")
    words = f"Print check: this bar is {number(BAR)} mm long. If not, print again without fitting."
    page.add(Words((x, y + 2.8), words, SMALL))

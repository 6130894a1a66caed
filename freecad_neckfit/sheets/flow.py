"""Text that flows down pages: headings, paragraphs, numbered steps, tables, pictures."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from .helvetica import printable, width, wrapped
from .ink import Item, Page, Pen, Raster, Spot, Words, moved

LEAD = 1.7
"""Distance of lines in heights of capitals."""


@dataclass(frozen=True)
class Sheet:
    """A page to write on: size and margin [mm]."""

    name: str
    width: float
    height: float
    margin: float = 12.0


A4 = Sheet("A4", 210.0, 297.0)
LETTER = Sheet("Letter", 215.9, 279.4)


@dataclass(frozen=True)
class Cell:
    """A cell of a table; ``key`` names the dimension it prints; ``box`` is left to be filled in."""

    text: str = ""
    key: str = ""
    box: bool = False
    bold: bool = False


@dataclass
class Flow:
    """Pages being written from the top down; a new one begins where one is full."""

    sheet: Sheet
    title: str
    size: float = 2.5
    pages: list[Page] = field(default_factory=list)
    y: float = 0.0

    def __post_init__(self) -> None:
        """Begin with an empty page."""
        self._new_page()

    @property
    def left(self) -> float:
        """Left edge of the text."""
        return self.sheet.margin

    @property
    def wide(self) -> float:
        """Width of the text [mm]."""
        return self.sheet.width - 2 * self.sheet.margin

    @property
    def page(self) -> Page:
        """The page that is being written."""
        return self.pages[-1]

    def heading(self, text: str, *, size: float = 3.5, keep: float = 0.0) -> None:
        """A heading, kept with three lines or ``keep`` [mm] of what follows."""
        self._room(size * LEAD + max(4 * self.size * LEAD, keep + 2) + 2)
        self.space(2.0)
        for line in wrapped(text, limit=self.wide, height=size, bold=True):
            self._line(line, size=size, bold=True)
        self.space(0.8)

    def paragraph(self, text: str, *, indent: float = 0.0, bold: bool = False) -> None:
        """A paragraph."""
        for line in wrapped(text, limit=self.wide - indent, height=self.size, bold=bold):
            self._line(line, indent=indent, bold=bold)
        self.space(0.8)

    def step(self, mark: str, text: str, *, indent: float = 6.0) -> None:
        """A paragraph with a mark before it."""
        lines = wrapped(text, limit=self.wide - indent, height=self.size)
        self._room(self.size * LEAD * min(len(lines), 3))
        for i, line in enumerate(lines):
            if i == 0:
                base = self.y - self.size * LEAD
                self.page.add(Words((self.left, base + 0.6), printable(mark), self.size, bold=True))
            self._line(line, indent=indent)
        self.space(0.8)

    def table(
        self, head: Sequence[str], rows: Sequence[Sequence[Cell]], shares: Sequence[float]
    ) -> None:
        """A table; ``shares`` are the columns' parts of the width.

        The head, which may be empty, is repeated on every page, and stands on none without a row.
        """
        edges = [self.left]
        for share in shares:
            edges.append(edges[-1] + self.wide * share / sum(shares))
        heads = [[Cell(h, bold=True) for h in head]] if head else []
        for i, row in enumerate(rows):
            begins = i == 0 or not self._has_room(self._row_height(row, edges))
            together = [*heads, row] if begins else [row]
            self._room(sum(self._row_height(r, edges) for r in together))
            for one in together:
                self._row(one, edges)
        self.space(1.5)

    def scale_of(self, wide: float, *, fill: bool = False) -> float:
        """By how much a picture so wide [mm] is scaled; ``fill``: up to the text's width too."""
        return self.wide / wide if fill else min(1.0, self.wide / wide)

    def picture(self, items: Sequence[Item], size: Spot, *, fill: bool = False) -> None:
        """A picture drawn from its own lower left corner, as wide and high as ``size`` [mm].

        Where it is too wide it is shrunk, with ``fill`` it becomes as wide as the text. Letters are
        not made smaller than the text's.
        """
        scale = self.scale_of(size[0], fill=fill)
        self._room(size[1] * scale + 2)
        self.y -= size[1] * scale
        at = self.left, self.y
        self.page.add(*(self._legible(moved(item, at, shrink=scale), item) for item in items))
        self.space(2.0)

    def _legible(self, item: Item, before: Item) -> Item:
        if not isinstance(item, Words) or not isinstance(before, Words):
            return item
        return replace(item, height=max(item.height, min(before.height, self.size)))

    def raster(self, png: bytes, *, shape: float) -> None:
        """A picture of pixels over the whole width; ``shape``: its height over its width."""
        high = self.wide * shape
        self._room(high + 4)
        self.y -= high + 2
        self.page.rasters.append(Raster((self.left, self.y), self.wide, high, png))
        self.space(2.0)

    def keep(self, lines: int) -> None:
        """Begin a new page where fewer than so many lines are left on this one."""
        self._room(lines * self.size * LEAD)

    def space(self, mm: float) -> None:
        """Leave some room."""
        self.y -= mm

    def _lines(self, cell: Cell, wide: float) -> list[str]:
        return wrapped(cell.text, limit=wide - 2.4, height=self.size, bold=cell.bold) or [""]

    def _row_height(self, row: Sequence[Cell], edges: Sequence[float]) -> float:
        spans = itertools.pairwise(edges)
        most = max(len(self._lines(c, b - a)) for c, (a, b) in zip(row, spans, strict=True))
        return most * self.size * LEAD + 1.4

    def _row(self, row: Sequence[Cell], edges: Sequence[float]) -> None:
        high = self._row_height(row, edges)
        self._room(high)
        top, bottom = self.y, self.y - high
        for cell, a, b in zip(row, edges, edges[1:], strict=False):
            if cell.box:
                self.page.box((a + 0.8, bottom + 0.7), (b - 0.8, top - 0.7), pen=Pen.SYMBOL)
            y = top
            for line in self._lines(cell, b - a):
                y -= self.size * LEAD
                spot = (a + 1.2, y + 0.6)
                self.page.add(Words(spot, line, self.size, key=cell.key, bold=cell.bold))
        self.page.line((edges[0], bottom), (edges[-1], bottom))
        self.y = bottom

    def _line(
        self, text: str, *, size: float | None = None, indent: float = 0.0, bold: bool = False
    ) -> None:
        size = size or self.size
        self._room(size * LEAD)
        self.y -= size * LEAD
        self.page.add(Words((self.left + indent, self.y + 0.6), text, size, bold=bold))

    def _has_room(self, mm: float) -> bool:
        return self.y - mm >= self.sheet.margin + 4

    def _room(self, mm: float) -> None:
        if not self._has_room(mm):
            self._new_page()

    def _new_page(self) -> None:
        self.pages.append(Page(self.sheet.width, self.sheet.height, self.title))
        self.y = self.sheet.height - self.sheet.margin

    def numbered(self) -> list[Page]:
        """The pages, each with its number at the foot."""
        count = len(self.pages)
        for i, page in enumerate(self.pages, start=1):
            words = printable(f"{self.title} - {i}/{count}")
            if width(words, height=2.5) > self.wide:
                words = f"{i}/{count}"
            at = self.sheet.width / 2, self.sheet.margin - 4
            page.add(Words(at, words, 2.5, "middle", colour="#444444"))
        return self.pages

"""The report as pages for the PDF writer."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from ..flow import Cell, Flow, Sheet
from ..helvetica import shortened
from ..ink import Page
from ..png import read_png
from .blocks import Sentence, blocks
from .charts import chart_page
from .parts import Picture, Report, Section, Table

STEP = 3.0
"""How far [mm] a sentence is set in for each step."""


def report_pages(report: Report, sheet: Sheet) -> list[Page]:
    """The report on A4 or Letter, with all that its HTML shows."""
    flow = Flow(sheet, f"Report: {report.name}")
    flow.heading(shortened(report.name, limit=flow.wide, height=5.0, bold=True), size=5.0)
    flow.heading(report.verdict, size=7.0)
    flow.paragraph(report.reason, bold=True)
    for section in report.sections:
        _section(flow, section)
    return flow.numbered()


def _section(flow: Flow, section: Section) -> None:
    high = max((_height(flow, p) for p in section.pictures[:1]), default=0.0)
    flow.heading(section.title, keep=0.0 if section.words else high)
    for words in section.words:
        flow.paragraph(words)
    for picture in section.pictures:
        _picture(flow, picture, said=picture.title != section.title)
    _lines(flow, section.lines)
    for unmet in section.unmet:
        flow.keep(4)
        flow.paragraph(f"{unmet.title}: {unmet.state}", bold=True)
        for words in (unmet.figures, unmet.consequence, unmet.mending and f"Mend: {unmet.mending}"):
            if words:
                flow.paragraph(words, indent=6.0)
    for table in section.tables:
        _table(flow, table)
    if section.closing:
        flow.paragraph(section.closing)


def _page_of(picture: Picture) -> Page | None:
    return chart_page(picture.svg) if picture.svg else picture.page


def _height(flow: Flow, picture: Picture) -> float:
    page = _page_of(picture)
    if page is not None:
        return page.height * flow.scale_of(page.width, fill=bool(picture.svg))
    png = read_png(picture.png)
    return flow.wide * png.height / png.width


def _picture(flow: Flow, picture: Picture, *, said: bool) -> None:
    page = _page_of(picture)
    if page is not None:
        flow.picture(page.items, (page.width, page.height), fill=bool(picture.svg))
    else:
        png = read_png(picture.png)
        flow.raster(picture.png, shape=png.height / png.width)
    if said:
        flow.paragraph(picture.title)


def _lines(flow: Flow, lines: list[str]) -> None:
    for block in blocks(lines):
        if isinstance(block, Sentence):
            flow.paragraph(block.text, indent=STEP * block.deep)
        else:
            _table(flow, Table(block.head, list(block.rows), block.shares))


def _table(flow: Flow, table: Table) -> None:
    if table.title:
        flow.keep(5)
        flow.space(1.0)
        flow.paragraph(table.title, bold=True)
    rows = [[Cell(cell) for cell in row] for row in _side_by_side(table)]
    flow.table(table.head * table.beside, rows, table.shares * table.beside)


def _side_by_side(table: Table) -> Iterator[tuple[str, ...]]:
    """Rows of so many of the table's own, one after the other; the last is filled up."""
    empty = ("",) * len(table.shares)
    for i in range(0, len(table.rows), table.beside):
        row = table.rows[i : i + table.beside]
        yield tuple(itertools.chain(*row, *[empty] * (table.beside - len(row))))

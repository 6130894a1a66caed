"""The report as pages for the PDF writer."""

from __future__ import annotations

from ..flow import Cell, Flow, Sheet
from ..helvetica import shortened
from ..ink import Page
from .content import Report, Section


def report_pages(report: Report, sheet: Sheet) -> list[Page]:
    """The report on A4 or Letter. Pictures taken from the screen stand in the HTML only."""
    flow = Flow(sheet, f"Report: {report.name}")
    flow.heading(shortened(report.name, limit=flow.wide, height=5.0, bold=True), size=5.0)
    flow.heading(report.verdict, size=7.0)
    flow.paragraph(report.reason, bold=True)
    for section in report.sections:
        _section(flow, section)
    return flow.numbered()


def _section(flow: Flow, section: Section) -> None:
    drawn = [p for p in section.pictures if p.page is not None]
    if not (drawn or section.words or section.lines or section.tables or section.unmet):
        return
    flow.heading(section.title)
    for words in section.words:
        flow.paragraph(words)
    for picture in drawn:
        assert picture.page is not None  # noqa: S101 # chosen just above
        flow.picture(picture.page.items, (picture.page.width, picture.page.height))
        flow.paragraph(picture.title)
    for line in section.lines:
        flow.paragraph(line.strip(), indent=3.0 if line.startswith(" ") else 0.0)
    for unmet in section.unmet:
        flow.keep(4)
        flow.paragraph(f"{unmet.title}: {unmet.state}", bold=True)
        for words in (unmet.figures, unmet.consequence, unmet.mending and f"Mend: {unmet.mending}"):
            if words:
                flow.paragraph(words, indent=6.0)
    for table in section.tables:
        rows = [[Cell(cell) for cell in row] for row in table.rows]
        flow.table(table.head, rows, table.shares)

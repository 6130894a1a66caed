"""A comparison of options as text, as HTML and as CSV."""

from __future__ import annotations

import csv
import io
import textwrap
from html import escape

from ..job.speech import say
from .options import Cell, Comparison, Row

TITLE, CELL = 30, 18
"""Letters of the first column and of the others, in text."""
UNMET = "X"
HEADS = {"stated": "what is stated", "figures": "what comes out"}

STYLE = """
body { font: 14px Arial, Helvetica, sans-serif; color: #222; margin: 1.5em; }
table { border-collapse: collapse; }
th, td { padding: 4px 10px; border-bottom: 1px solid #ddd; text-align: right; vertical-align: top; }
td { white-space: nowrap; }
td.title { text-align: left; white-space: normal; }
thead th { border-bottom: 2px solid #222; }
tr.verdict td { font-weight: bold; white-space: normal; }
tr.head th { text-align: left; padding-top: 14px; border-bottom: 1px solid #222; }
td.unmet { background-color: #fbe3d4; }
small { color: #555; font-weight: normal; }
"""
LEAST, FIRST = 110, 210
"""Least width of a joint's column, and of the titles' [pixel]."""


def as_text(table: Comparison, *, width: int) -> str:
    """The table in columns; where ``width`` [letters] is too small, in blocks with the base."""
    each = max((width - TITLE) // (CELL + 1), 2)
    others = list(range(1, len(table.names)))
    blocks = [[0, *others[n : n + each - 1]] for n in range(0, max(len(others), 1), each - 1)]
    return "\n\n".join(_block(table, block) for block in blocks)


def _block(table: Comparison, which: list[int]) -> str:
    lines = _line("", [table.names[n] for n in which])
    lines.append("-" * (TITLE + (CELL + 1) * len(which)))
    group = ""
    for row in table.rows:
        if row.group != group and row.group in HEADS:
            lines += ["", say(HEADS[row.group])]
        group = row.group
        cells = [row.cells[n] for n in which]
        if row.group in HEADS and all(c.text == cells[0].text for c in cells):
            continue
        lines += _line(row.title, [_text(cell) for cell in cells])
    return "\n".join(lines)


def _text(cell: Cell) -> str:
    mark = f"{UNMET} " if cell.unmet and cell.text else ""
    delta = f" ({cell.delta})" if cell.delta else ""
    return f"{mark}{cell.text}{delta}"


def _line(title: str, texts: list[str]) -> list[str]:
    columns = [textwrap.wrap(title, TITLE - 1) or [""]]
    columns += [textwrap.wrap(text, CELL) or [""] for text in texts]
    lines = []
    for n in range(max(map(len, columns))):
        parts = [c[n] if n < len(c) else "" for c in columns]
        line = f"{parts[0]:<{TITLE}}" + "".join(f" {p:>{CELL}}" for p in parts[1:])
        lines.append(line.rstrip())
    return lines


def as_html(table: Comparison, *, title: str) -> str:
    """The table as one page that needs nothing else."""
    head = "".join(f'<th width="{LEAST}">{escape(name)}</th>' for name in table.names)
    body = []
    group = ""
    for row in table.rows:
        if row.group != group and row.group in HEADS:
            span = len(table.names) + 1
            body.append(f'<tr class="head"><th colspan="{span}">{say(HEADS[row.group])}</th></tr>')
        group = row.group
        body.append(_html_row(row))
    remark = say(
        "Differences to the first column stand below each figure. {} marks a demand that is not "
        "met."
    ).format(UNMET)
    return (
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        f"<title>{escape(title)}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n"
        f"<h1>{escape(title)}</h1>\n<p>{escape(remark)}</p>\n<table>\n"
        f'<thead><tr><th width="{FIRST}"></th>{head}</tr></thead>\n<tbody>\n'
        + "\n".join(body)
        + "\n"
        "</tbody>\n</table>\n</body>\n</html>\n"
    )


def _html_row(row: Row) -> str:
    cells = "".join(_html_cell(cell) for cell in row.cells)
    title = f'<td class="title" align="left">{escape(row.title)}</td>'
    return f'<tr class="{row.group}">{title}{cells}</tr>'


def _html_cell(cell: Cell) -> str:
    unmet = ' class="unmet"' if cell.unmet else ""
    mark = f"{UNMET} " if cell.unmet and cell.text else ""
    delta = f"<br><small>{escape(cell.delta)}</small>" if cell.delta else ""
    return f'<td align="right"{unmet}>' + f"{mark}{escape(cell.text)}{delta}</td>"


def as_csv(table: Comparison) -> str:
    """The table for a spreadsheet: for each joint its numbers, differences and unmet demands.

    Numbers stand in the unit of their line, whatever the table on the screen is shown in.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    head = ["group", "what", "unit"]
    for n, name in enumerate(table.names):
        head += [name, f"{name}: not met"] + ([f"{name}: difference"] if n else [])
    writer.writerow(head)
    for row in table.rows:
        cells: list[str] = []
        for n, cell in enumerate(row.cells):
            cells += [_plain(cell), UNMET if cell.unmet else ""]
            cells += [_number(cell.change)] if n else []
        writer.writerow([row.group, row.title, row.unit, *cells])
    return out.getvalue()


def _plain(cell: Cell) -> str:
    return cell.text if cell.number is None else _number(cell.number)


def _number(value: float | None) -> str:
    return "" if value is None else f"{value:.6g}"

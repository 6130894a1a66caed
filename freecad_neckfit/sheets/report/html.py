"""The report as one HTML file: no script, no link, nothing fetched."""

from __future__ import annotations

import base64
from collections.abc import Iterable
from html import escape

from ..svg import svg
from .blocks import Block, Sentence, blocks
from .parts import Picture, Report, Section, Table, Unmet

STYLE = """
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 62rem; padding: 1rem; color: #1a1a1a; background: #fff;
  font: 1rem/1.45 system-ui, "Segoe UI", "Liberation Sans", Arial, sans-serif;
  overflow-wrap: break-word; }
h1 { font-size: 1.5rem; margin: 0 0 .5rem; }
h2 { font-size: 1.2rem; margin: 2rem 0 .5rem; border-bottom: 2px solid #1a1a1a; }
.verdict { border: 3px solid #1a1a1a; padding: .6rem 1rem; margin: 0 0 1rem; }
.verdict strong { display: block; font-size: 1.6rem; }
.fits { border-style: solid; } .not { border-style: double; border-width: 6px; }
h3 { font-size: 1rem; margin: 1.2rem 0 .2rem; }
.unmet { border-left: 6px solid #1a1a1a; padding: .2rem 0 .2rem .8rem; margin: .8rem 0; }
.unmet h3 { margin: 0; font-size: 1rem; }
.unmet p { margin: .2rem 0; }
figure { margin: 1rem 0; } figure svg, figure img { width: 100%; height: auto; display: block; }
figcaption { color: #444; }
.wide { overflow-x: auto; }
.deep1 { margin: 0 0 0 1.2rem; } .deep2 { margin: 0 0 0 2.4rem; }
table { border-collapse: collapse; table-layout: fixed; width: 100%; margin: .8rem 0;
  font-size: .9rem; }
th, td { text-align: left; vertical-align: top; padding: .25rem .4rem;
  border-bottom: 1px solid #999; }
@media screen and (max-width: 40rem) {
  .wide > * { min-width: 38rem; }
  thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  table, tbody { display: block; }
  tr { display: block; border-bottom: 2px solid #666; padding: .4rem 0; }
  td { display: flex; gap: .6rem; border: 0; padding: .1rem 0; }
  td[data-label]::before { content: attr(data-label); flex: 0 0 6.5rem; color: #444; }
  td:empty { display: none; }
  td[data-label] { overflow-wrap: anywhere; }
}
@media print {
  @page { margin: 14mm; }
  body { font-size: 9pt; line-height: 1.3; max-width: none; padding: 0; }
  table { font-size: 8pt; } th, td { padding: .1rem .3rem; }
  h2, h3 { break-after: avoid; }
  figure, .unmet, .verdict, tr { break-inside: avoid; }
  .wide { overflow: visible; }
  thead { display: table-header-group; }
}
"""


def html(report: Report) -> str:
    """The report as a page of HTML; everything a user typed is escaped."""
    name = escape(report.name)
    mark = "fits" if report.fits else "not"
    parts = [
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{name}: {escape(report.verdict)}</title>\n<style>{STYLE}</style>\n</head>",
        f"<body>\n<main>\n<h1>{name}</h1>",
        (
            f'<div class="verdict {mark}"><strong>{escape(report.verdict)}</strong>'
            f"{escape(report.reason)}</div>"
        ),
        *(_section(section) for section in report.sections),
        "</main>\n</body>\n</html>\n",
    ]
    return "\n".join(parts)


def _section(section: Section) -> str:
    parts = [f"<section>\n<h2>{escape(section.title)}</h2>"]
    parts += [f"<p>{escape(words)}</p>" for words in section.words]
    parts += [_picture(p, said=p.title != section.title) for p in section.pictures]
    parts += [_block(block) for block in blocks(section.lines)]
    parts += [_unmet(unmet) for unmet in section.unmet]
    parts += [_table(table) for table in section.tables]
    parts += [f"<p>{escape(section.closing)}</p>"] if section.closing else []
    return "\n".join([*parts, "</section>"])


def _block(block: Block) -> str:
    if isinstance(block, Sentence):
        return f'<p class="deep{min(block.deep, 2)}">{escape(block.text)}</p>'
    return _table(Table(block.head, list(block.rows), block.shares))


def _picture(picture: Picture, *, said: bool) -> str:
    """The picture, wide enough to be read: a phone moves it sideways within its own frame."""
    title = escape(picture.title, quote=True)
    caption = f"<figcaption>{title}</figcaption>" if said else ""
    frame = f'<div class="wide" tabindex="0" role="group" aria-label="{title}">'
    return f"<figure>{frame}{_drawn(picture, title)}</div>{caption}</figure>"


def _drawn(picture: Picture, title: str) -> str:
    if picture.page is not None:
        return svg(picture.page, inline=True)
    data = base64.b64encode(picture.png or picture.svg.encode()).decode()
    kind = "png" if picture.png else "svg+xml"
    return f'<img src="data:image/{kind};base64,{data}" alt="{title}">'


def _unmet(unmet: Unmet) -> str:
    lines = [unmet.figures, unmet.consequence, unmet.mending and f"Mend: {unmet.mending}"]
    body = "".join(f"<p>{escape(line)}</p>" for line in lines if line)
    return f'<div class="unmet"><h3>{escape(unmet.title)}: {escape(unmet.state)}</h3>{body}</div>'


def _table(table: Table) -> str:
    heads = "".join(f'<th scope="col">{escape(h)}</th>' for h in table.head)
    head = f"<thead><tr>{heads}</tr></thead>\n" if table.head else ""
    rows = "\n".join(f"<tr>{''.join(_cells(table.head, row))}</tr>" for row in table.rows)
    wide = (100 * share / sum(table.shares) for share in table.shares)
    columns = "".join(f'<col style="width:{share:.1f}%">' for share in wide)
    title = f"<h3>{escape(table.title)}</h3>\n" if table.title else ""
    body = f"<colgroup>{columns}</colgroup>\n{head}<tbody>\n{rows}\n</tbody>"
    return f"{title}<table>\n{body}\n</table>"


def _cells(head: tuple[str, ...], row: tuple[str, ...]) -> Iterable[str]:
    if not head:
        yield from (f"<td>{escape(cell)}</td>" for cell in row)
        return
    for title, cell in zip(head, row, strict=True):
        yield f'<td data-label="{escape(title, quote=True)}">{escape(cell)}</td>'

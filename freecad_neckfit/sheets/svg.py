"""Writes a page as SVG, in millimetres, without scripts, links or fonts of its own."""

from __future__ import annotations

from xml.sax.saxutils import escape, quoteattr

from .helvetica import CAPITALS, printable, width
from .ink import Item, Page, Pen, Round, Stroke, Words
from .ink import number as n

FONT = "Helvetica, Arial, 'Liberation Sans', sans-serif"


def svg(page: Page, *, inline: bool = False) -> str:
    """The page as an SVG document, or as an element to stand within HTML."""
    size = f'viewBox="0 0 {n(page.width)} {n(page.height)}"'
    if inline:
        head = f'<svg xmlns="http://www.w3.org/2000/svg" {size} role="img">'
    else:
        head = (
            '<?xml version="1.0" encoding="UTF-8"?>\n'
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{n(page.width)}mm" '
            f'height="{n(page.height)}mm" {size}>'
        )
    lines = [head, f"<title>{_text(page.title)}</title>"]
    if not inline:
        lines.append(f'<rect width="{n(page.width)}" height="{n(page.height)}" fill="#ffffff"/>')
    lines += [_item(item, page.height) for item in page.items]
    return "\n".join([*lines, "</svg>"]) + "\n"


def _item(item: Item, top: float) -> str:
    if isinstance(item, Words):
        return _words(item, top)
    if isinstance(item, Round):
        return _round(item, top)
    tag = "polygon" if item.closed else "polyline"
    points = " ".join(f"{n(x)},{n(top - y)}" for x, y in item.points)
    return f'<{tag} points="{points}" {_look(item)}/>'


def _look(item: Stroke | Round) -> str:
    fill = getattr(item, "fill", "") or "none"
    if item.pen is Pen.NONE:
        return f'fill="{fill}"'
    colour = getattr(item, "colour", "#000000")
    dashes = " ".join(n(d) for d in item.dashes)
    dashed = f' stroke-dasharray="{dashes}"' if dashes else ""
    return (
        f'fill="{fill}" stroke="{colour}" stroke-width="{n(item.width)}" '
        f'stroke-linecap="round" stroke-linejoin="round"{dashed}'
    )


def _round(item: Round, top: float) -> str:
    x, y = item.centre
    if abs(item.sweep) >= 360:
        return f'<circle cx="{n(x)}" cy="{n(top - y)}" r="{n(item.radius)}" {_look(item)}/>'
    (ax, ay), (bx, by) = item.at(item.start), item.at(item.start + item.sweep)
    large = int(abs(item.sweep) > 180)
    turn = int(item.sweep < 0)
    return (
        f'<path d="M{n(ax)} {n(top - ay)}A{n(item.radius)} {n(item.radius)} 0 {large} {turn} '
        f'{n(bx)} {n(top - by)}" {_look(item)}/>'
    )


def _words(item: Words, top: float) -> str:
    x, y = n(item.at[0]), n(top - item.at[1])
    # The length is stated so that another font than the one measured with cannot run into a line.
    length = width(item.text, height=item.height, bold=item.bold)
    bits = [f'x="{x}" y="{y}" font-size="{n(item.height / CAPITALS)}"']
    bits.append(f'font-family="{FONT}" fill="{item.colour}"')
    if item.bold:
        bits.append('font-weight="bold"')
    if item.anchor != "start":
        bits.append(f'text-anchor="{item.anchor}"')
    if length > 0:
        bits.append(f'textLength="{n(length)}" lengthAdjust="spacingAndGlyphs"')
    if item.turn:
        bits.append(f'transform="rotate({n(-item.turn)} {x} {y})"')
    if item.key:
        bits.append(f"data-dimension={quoteattr(item.key)}")
    return f"<text {' '.join(bits)}>{_text(item.text)}</text>"


def _text(text: str) -> str:
    return escape(printable(text))

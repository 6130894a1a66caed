"""Writes pages as PDF: vectors and Helvetica, nothing else, the same bytes for the same pages."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence

from .helvetica import CAPITALS, encoded, width
from .ink import BLACK, Item, Page, Raster, Round, Stroke, Words
from .ink import number as n
from .png import read_png

POINTS = 72 / 25.4
"""Points in a millimetre."""


def pdf(pages: Sequence[Page]) -> bytes:
    """A PDF document of one or more pages, in the readers' own Helvetica.

    A text that prints a dimension is marked with its key, so that it can be found again.
    """
    count = len(pages)
    kids = " ".join(f"{5 + 2 * i} 0 R" for i in range(count))
    font = "<< /Type /Font /Subtype /Type1 /BaseFont /%s /Encoding /WinAnsiEncoding >>"
    bodies: list[bytes] = [
        b"<< /Type /Catalog /Pages 2 0 R /ViewerPreferences << /PrintScaling /None >> >>",
        f"<< /Type /Pages /Kids [{kids}] /Count {count} >>".encode(),
        (font % "Helvetica").encode(),
        (font % "Helvetica-Bold").encode(),
    ]
    first = 5 + 2 * count  # where the pictures begin
    rasters = [raster for page in pages for raster in page.rasters]
    for i, page in enumerate(pages):
        ink = _content(page)
        size = f"{n(page.width * POINTS)} {n(page.height * POINTS)}"
        bodies.append(
            (
                f"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {size}] /Contents {6 + 2 * i} 0 R "
                f"/Resources << /Font << /F1 3 0 R /F2 4 0 R >>{_pictures(page, first)} >> >>"
            ).encode()
        )
        bodies.append(b"<< /Length %d >>\nstream\n%s\nendstream" % (len(ink), ink))
        first += len(page.rasters)
    bodies += [_picture(raster) for raster in rasters]
    info = b"<< /Title (%s) /Creator (NeckFit) >>" % _string(pages[0].title if pages else "")
    return _document([*bodies, info])


def _document(bodies: Sequence[bytes]) -> bytes:
    out = bytearray(b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n")
    places = []
    for index, body in enumerate(bodies, start=1):
        places.append(len(out))
        out += b"%d 0 obj\n%s\nendobj\n" % (index, body)
    table = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(bodies) + 1)
    for place in places:
        out += b"%010d 00000 n \n" % place
    out += b"trailer\n<< /Size %d /Root 1 0 R /Info %d 0 R >>\n" % (len(bodies) + 1, len(bodies))
    return bytes(out + b"startxref\n%d\n%%%%EOF\n" % table)


def _content(page: Page) -> bytes:
    head = f"{n(POINTS, 6)} 0 0 {n(POINTS, 6)} 0 0 cm 1 J 1 j".encode()
    shown = [
        f"q {n(r.width)} 0 0 {n(r.height)} {n(r.at[0])} {n(r.at[1])} cm /I{i} Do Q".encode()
        for i, r in enumerate(page.rasters)
    ]
    return b"\n".join([head, *shown, *(_item(item) for item in page.items)])


def _pictures(page: Page, first: int) -> str:
    named = " ".join(f"/I{i} {first + i} 0 R" for i in range(len(page.rasters)))
    return f" /XObject << {named} >>" if named else ""


def _picture(raster: Raster) -> bytes:
    """A picture as PDF keeps it: PNG's own packing of the pixels is one that PDF knows."""
    png = read_png(raster.png)
    head = (
        f"<< /Type /XObject /Subtype /Image /Width {png.width} /Height {png.height} "
        "/ColorSpace /DeviceRGB /BitsPerComponent 8 /Filter /FlateDecode /DecodeParms "
        f"<< /Predictor 15 /Colors 3 /BitsPerComponent 8 /Columns {png.width} >> "
        f"/Length {len(png.packed)} >>"
    )
    return b"%s\nstream\n%s\nendstream" % (head.encode(), png.packed)


def _item(item: Item) -> bytes:
    if isinstance(item, Words):
        return _words(item)
    if isinstance(item, Round):
        return f"{_pen(item)}{_curve(item)} S".encode()
    path = " ".join(
        f"{n(x)} {n(y)} {'l' if i else 'm'}" for i, (x, y) in enumerate(item.points)
    ) + (" h" if item.closed else "")
    return f"{_pen(item)}{_fill(item)}{path} {_paint(item)}".encode()


def _pen(item: Stroke | Round) -> str:
    dashes = " ".join(n(d) for d in item.dashes)
    colour = item.colour if isinstance(item, Stroke) else BLACK
    return f"{_rgb(colour)} RG {n(item.width)} w [{dashes}] 0 d "


def _fill(item: Stroke) -> str:
    return f"{_rgb(item.fill)} rg " if item.fill else ""


def _paint(item: Stroke) -> str:
    if not item.width:
        return "f" if item.fill else "n"
    return "B" if item.fill else "S"


def _rgb(colour: str) -> str:
    return " ".join(n(int(colour[i : i + 2], 16) / 255) for i in (1, 3, 5))


def _curve(item: Round) -> str:
    steps = max(1, math.ceil(abs(item.sweep) / 90 - 1e-9))
    step = item.sweep / steps
    reach = 4 / 3 * math.tan(math.radians(step) / 4) * item.radius
    x, y = item.at(item.start)
    bits = [f"{n(x)} {n(y)} m"]
    for i in range(steps):
        a, b = item.start + i * step, item.start + (i + 1) * step
        (ax, ay), (bx, by) = item.at(a), item.at(b)
        ra, rb = math.radians(a), math.radians(b)
        handles = (
            (ax - reach * math.sin(ra), ay + reach * math.cos(ra)),
            (bx + reach * math.sin(rb), by - reach * math.cos(rb)),
            (bx, by),
        )
        bits.append(" ".join(f"{n(px)} {n(py)}" for px, py in handles) + " c")
    return " ".join(bits) + (" h" if abs(item.sweep) >= 360 else "")


def _words(item: Words) -> bytes:
    size = item.height / CAPITALS
    length = width(item.text, height=item.height, bold=item.bold)
    back = {"start": 0.0, "middle": length / 2, "end": length}[item.anchor]
    turn = math.radians(item.turn)
    cos, sin = math.cos(turn), math.sin(turn)
    x, y = item.at[0] - back * cos, item.at[1] - back * sin
    matrix = " ".join((n(cos, 6), n(sin, 6), n(-sin, 6), n(cos, 6), n(x), n(y)))
    font = "F2" if item.bold else "F1"
    ink = b"%s rg BT /%s %s Tf %s Tm (%s) Tj ET" % (
        _rgb(item.colour).encode(), font.encode(), n(size, 4).encode(), matrix.encode(),
        _string(item.text),
    )  # fmt: skip
    return b"/Span << /Key (%s) >> BDC %s EMC" % (_string(item.key), ink) if item.key else ink


def _string(text: str) -> bytes:
    return re.sub(rb"([()\\])", rb"\\\1", encoded(text))

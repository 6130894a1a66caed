"""How lines, charts and pictures of the screen come into the report's pages."""

import struct
import zlib

import pytest

from freecad_neckfit.decide.pictures.svg import Sheet
from freecad_neckfit.sheets.flow import A4, Cell, Flow
from freecad_neckfit.sheets.ink import Page, Stroke
from freecad_neckfit.sheets.pdf import pdf
from freecad_neckfit.sheets.png import read_png
from freecad_neckfit.sheets.report.blocks import Columns, Sentence, blocks
from freecad_neckfit.sheets.report.charts import POINT, chart_page
from freecad_neckfit.sheets.report.html import html
from freecad_neckfit.sheets.report.pages import report_pages
from freecad_neckfit.sheets.report.parts import Picture, Report, Section

LINES = """Heron: fits
  cut at 8.0 % moisture

  month   moisture          side
  Jan        7.0 %       0.10 mm
  Feb        7.2 %       0.10 mm

  fails:   share of the joints
  middle:  room left to the limit;
           negative where it is not met

What matters:
  neck heel width     ±0.10 mm     8.2 %""".splitlines()


def png(wide=2, high=1, kind=2):
    def chunk(name, body):
        check = zlib.crc32(name + body)
        return struct.pack(">I", len(body)) + name + body + struct.pack(">I", check)

    head = struct.pack(">IIBBBBB", wide, high, 8, kind, 0, 0, 0)
    rows = b"".join(b"\0" + b"\xff\0\0" * wide for _ in range(high))
    packed = chunk(b"IDAT", zlib.compress(rows))
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + packed + chunk(b"IEND", b"")


def test_lines_become_sentences_and_tables():
    assert blocks(LINES) == [
        Sentence("Heron: fits"),
        Sentence("cut at 8.0 % moisture", 1),
        Columns(
            ("month", "moisture", "side"),
            (("Jan", "7.0 %", "0.10 mm"), ("Feb", "7.2 %", "0.10 mm")),
        ),
        Sentence("fails: share of the joints", 1),
        Sentence("middle: room left to the limit; negative where it is not met", 1),
        Sentence("What matters:"),
        Columns((), (("neck heel width", "±0.10 mm", "8.2 %"),)),
    ]


def test_no_word_of_a_line_is_lost():
    told = []
    for block in blocks(LINES):
        if isinstance(block, Sentence):
            told += block.text.split()
        else:
            told += " ".join(" ".join(row) for row in (block.head, *block.rows)).split()
    assert told == " ".join(LINES).split()


def chart():
    sheet = Sheet(96.0, 48.0, title="a chart")
    sheet.areas([[(0, 0), (96, 0), (0, 48)]], fill="#CFE8F7")
    sheet.line([(0, 48), (96, 0)], colour="#D55E00", width=3, dash="9 4")
    sheet.dot((48, 24), 9, fill="#FFFFFF", line="#0072B2", width=2)
    sheet.words((48, 24), "5 < 6 & ½", anchor="middle", turn=-90, halo="#FFFFFF")
    return sheet.text()


def test_a_chart_keeps_its_places_colours_and_dashes_on_paper():
    page = chart_page(chart())
    assert (page.width, page.height, page.title) == (25.4, 12.7, "a chart")
    strokes = [item for item in page.items if isinstance(item, Stroke)]
    ground, area, line, disc, halo = strokes
    assert ground.points == ((0, 12.7), (25.4, 12.7), (25.4, 0), (0, 0))
    assert (area.fill, area.closed) == ("#CFE8F7", True)
    assert line.points == ((0, 0), (25.4, 12.7))
    assert (line.colour, line.width) == ("#D55E00", 3 * POINT)
    assert line.dashes == (9 * POINT, 4 * POINT)
    assert max(x for x, _ in disc.points) == pytest.approx(57 * POINT)
    assert halo.fill == "#ffffff"
    (words,) = page.words
    assert (words.text, words.turn, words.anchor) == ("5 < 6 & ½", 90.0, "middle")
    assert words.at == pytest.approx((12.7, 6.35))


def test_a_chart_that_no_paper_can_show_is_refused():
    with pytest.raises(ValueError, match="ellipse"):
        chart_page(chart().replace("<circle", "<ellipse"))


def report(*pictures):
    section = Section("Depths", lines=LINES, pictures=list(pictures))
    return Report("a joint", "Fits", True, "All is well.", (section,))


def test_paper_and_browser_show_the_same():
    shown = report(Picture("chart", svg=chart()), Picture("screen", png=png()))
    words = {w.text for page in report_pages(shown, A4) for w in page.words}
    text = html(shown)
    for said in ("moisture", "7.2 %", "What matters:", "chart", "screen"):
        assert said in words
        assert said in text
    assert "5 < 6 & ½" in words
    assert text.count("<img ") == 2


def test_a_picture_of_the_screen_is_held_in_the_pdf():
    pages = report_pages(report(Picture("screen", png=png(4, 2))), A4)
    (raster,) = (r for page in pages for r in page.rasters)
    assert raster.height == pytest.approx(raster.width / 2)
    data = pdf(pages)
    assert b"/Subtype /Image /Width 4 /Height 2" in data
    body = data[data.index(b"/Subtype /Image") :]
    packed = body[body.index(b"stream\n") + 7 : body.index(b"\nendstream")]
    assert zlib.decompress(packed) == (b"\0" + b"\xff\0\0" * 4) * 2
    assert data.count(b"/I0 Do") == 1


def test_pictures_on_several_pages_are_each_found():
    pages = [Page(10, 10), Page(10, 10), Page(10, 10)]
    for page, wide in ((pages[0], 3), (pages[2], 5)):
        flow = Flow(A4, "t")
        flow.raster(png(wide), shape=1 / wide)
        page.rasters += flow.page.rasters
    data = pdf(pages)
    for number, wide in ((11, 3), (12, 5)):
        assert b"/I0 %d 0 R" % number in data
        assert b"%d 0 obj\n<< /Type /XObject /Subtype /Image /Width %d " % (number, wide) in data


def test_only_plain_pictures_are_taken():
    assert read_png(png(3, 2)).width == 3
    with pytest.raises(ValueError, match="plain"):
        read_png(png(kind=6))
    with pytest.raises(ValueError, match="no PNG"):
        read_png(b"GIF89a")


def test_a_tables_head_never_stands_alone():
    flow = Flow(A4, "t")
    for _ in range(40):
        flow.space(4.5)
        flow.table(("Head",), [[Cell("one")], [Cell("two")]], (1,))
    for page in flow.pages:
        texts = [w.text for w in page.words]
        assert texts
        assert texts[-1] != "Head"
        assert texts[0] == "Head"

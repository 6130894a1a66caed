import io
import xml.etree.ElementTree as ET

import pytest

from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets.dxf import Drawing, Layer, bulge, page_dxf
from freecad_neckfit.sheets.helvetica import printable, width, wrapped
from freecad_neckfit.sheets.ink import Page, Pen, Round, Stroke, Words, number
from freecad_neckfit.sheets.pdf import pdf
from freecad_neckfit.sheets.read_back import from_dxf, from_pdf, from_svg
from freecad_neckfit.sheets.svg import svg

ezdxf = pytest.importorskip("ezdxf", reason="tests/run installs it")

pytestmark = pytest.mark.filterwarnings("ignore::DeprecationWarning")  # ezdxf's own

NASTY = 'A <b> & "quoted" \\ (brackets) \x00 ő 漢 −1'


def page():
    made = Page(100, 80, NASTY)
    made.line((10, 10), (90, 10), (90, 70))
    made.box((20, 20), (40, 30), pen=Pen.OUTLINE, fill="#cccccc")
    made.add(Round((50, 40), 10), Round((50, 40), 15, 30, 120, Pen.CENTRE))
    made.add(Stroke(((1, 1), (2, 2), (3, 1)), Pen.NONE, closed=True, fill="#000000"))
    made.add(Words((10, 60), NASTY), Words((50, 60), "15.50 ±0.10", 2.5, "middle", 90, "a.b"))
    made.add(Words((50, 50), "(2× Ø4.50) [at \\ least]", key="(odd) \\ key"))
    return made


@pytest.mark.parametrize(
    ("write", "read"),
    [
        (lambda p: svg(p).encode(), from_svg),
        (lambda p: pdf([p]), from_pdf),
        (lambda p: page_dxf(p).encode(), from_dxf),
    ],
    ids=["svg", "pdf", "dxf"],
)
def test_every_keyed_text_is_read_back(write, read):
    assert read(write(page())) == {
        "a.b": ["15.50 ±0.10"],
        "(odd) \\ key": ["(2× Ø4.50) [at \\ least]"],
    }


def test_what_was_typed_does_no_harm_in_svg():
    root = ET.fromstring(svg(page()))
    texts = [e.text for e in root.iter() if e.tag.endswith("text")]
    assert texts[0] == 'A <b> & "quoted" \\ (brackets)   o ? -1'
    assert root.get("width") == "100mm"


def test_a_page_as_dxf_is_sound():
    stream = page_dxf(page())
    document = ezdxf.read(io.StringIO(stream))
    assert not document.audit().errors
    assert document.dxfversion == "AC1024"
    kinds = sorted(e.dxftype() for e in document.modelspace())
    assert kinds == ["ARC", "CIRCLE", "LWPOLYLINE", "LWPOLYLINE", "SOLID", "TEXT", "TEXT", "TEXT"]


def test_a_drawing_in_inches_says_so():
    drawing = Drawing([Layer("A")], Units.INCH)
    drawing.polyline([(0, 0, 0.0), (25.4, 0, 1.0), (25.4, 12.7, 0.0)], layer="A", closed=True)
    document = ezdxf.read(io.StringIO(drawing.text()))
    assert document.header["$INSUNITS"] == 1
    assert document.header["$MEASUREMENT"] == 0
    (line,) = document.modelspace()
    assert line.closed
    assert list(line.get_points("xyb")) == [(0, 0, 0), (1, 0, 1), (1, 0.5, 0)]


def test_bulge_is_the_tangent_of_a_quarter_turn():
    assert bulge((0, 0), (1, 1), (2, 0)) == pytest.approx(-1.0)
    assert bulge((0, 0), (1, -1), (2, 0)) == pytest.approx(1.0)
    assert bulge((1, 0), (0.5**0.5, 0.5**0.5), (0, 1)) == pytest.approx(0.41421356)


def test_a_pdf_is_whole():
    data = pdf([page(), page()])
    assert data == pdf([page(), page()])
    assert data.startswith(b"%PDF-1.4")
    assert b"/Count 2" in data
    start = int(data.rsplit(b"startxref\n", 1)[1].split()[0])
    assert data[start:].startswith(b"xref\n")
    for line in data[start:].splitlines()[3:]:
        if not line.endswith(b" n "):
            break
        assert data[int(line[:10]) :].split(b" obj", 1)[0].endswith(b" 0")


@pytest.mark.parametrize(
    ("value", "places", "text"),
    [(7.9375, 3, "7.938"), (7.9375 - 1e-10, 3, "7.938"), (-1e-9, 3, "0"), (2.0, 3, "2")],
)
def test_noise_never_decides_a_tie(value, places, text):
    assert number(value, places) == text


def test_text_is_measured_as_the_metrics_say():
    # H is 722 and e 556 thousandths wide; capitals are 718 high.
    assert width("He", height=7.18) == pytest.approx(12.78)
    assert printable("Größe 1½ – “x”") == "Größe 1½ – “x”"


def test_lines_are_broken_where_they_must():
    lines = wrapped("one two threefourfivesixseven eight", limit=12, height=2.5)
    assert "".join(lines).replace(" ", "") == "onetwothreefourfivesixseveneight"
    assert all(width(line, height=2.5) <= 12 for line in lines)

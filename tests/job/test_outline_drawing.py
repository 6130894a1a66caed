"""Outlines from DXF drawings: every way to draw one, every unit, and drawings that are none."""

import builtins
import math

import numpy as np
import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.outline import outline_of
from freecad_neckfit.job.outline.drawing import read_drawing
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.resolve import complete

ezdxf = pytest.importorskip("ezdxf", reason="tests/run installs it")

# A body with a round tail: three lines and a half circle of radius 100 about (200, 0).
CORNERS = [(200.0, -100.0), (200.0, 100.0), (-76.0, 60.0), (-76.0, -60.0)]
AREA = 276 * 160 + math.pi * 100**2 / 2


@pytest.fixture
def drawn(tmp_path):
    def save(draw, *, units=4):
        document = ezdxf.new("R2000")
        document.header["$INSUNITS"] = units
        draw(document.modelspace())
        path = tmp_path / "outline.dxf"
        document.saveas(path)
        return path

    return save


def polyline(space, scale=1.0, **more):
    rows = [(x * scale, y * scale, 1.0 if i == 0 else 0.0) for i, (x, y) in enumerate(CORNERS)]
    space.add_lwpolyline(rows, format="xyb", close=True, **more)


def loose(space):
    a, b, c, d = CORNERS
    space.add_line(d, c)
    space.add_arc((200, 0), 100, -90, 90)
    space.add_line(d, a)
    space.add_line(b, c)


def old_polyline(space):
    space.add_polyline2d([(*p, 1.0 if i == 0 else 0.0) for i, p in enumerate(CORNERS)],
                         format="xyb", close=True)  # fmt: skip


def with_words(space):
    polyline(space)
    space.add_text("body Heron")
    space.add_point((0, 0))


def split_arc_upside_down(space):
    """The arc drawn from below: its plane's normal points down, so that X is mirrored."""
    a, b, c, d = CORNERS
    for p, q in ((b, c), (c, d), (d, a)):
        space.add_line(p, q)
    space.add_arc((-200, 0), 100, 90, 270, dxfattribs={"extrusion": (0, 0, -1)})


@pytest.mark.parametrize("draw", [polyline, loose, old_polyline, with_words, split_arc_upside_down])
def test_the_same_outline_drawn_in_any_way_is_the_same(drawn, draw):
    outline = read_drawing(drawn(draw), bare=Units.MM)
    arcs = [s for s in outline.segments if s.through is not None]
    assert {round(s.circle[1], 6) for s in arcs} == {100.0}
    assert sum(s.length for s in arcs) == pytest.approx(math.pi * 100)
    x, y = outline.polyline(1e-5).T
    area = np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y) / 2
    assert area == pytest.approx(AREA, rel=1e-6)


@pytest.mark.parametrize(
    ("units", "bare", "scale"),
    [
        (4, Units.INCH, 1.0),
        (1, Units.MM, 25.4),
        (0, Units.MM, 1.0),
        (0, Units.INCH, 25.4),
        (5, Units.MM, 10.0),
    ],
)
def test_the_drawings_own_unit_counts(drawn, units, bare, scale):
    path = drawn(lambda space: polyline(space, 1 / scale), units=units)
    x, y = read_drawing(path, bare=bare).polyline(0.01).T
    assert (x.min(), x.max()) == pytest.approx((-76.0, 300.0))
    assert (y.min(), y.max()) == pytest.approx((-100.0, 100.0))


def test_a_circle_is_an_outline(drawn):
    path = drawn(lambda space: space.add_circle((50, 0), 126))
    assert [s.circle for s in read_drawing(path, bare=Units.MM).segments] == [
        (pytest.approx((50, 0)), pytest.approx(126))
    ] * 2


def test_splines_and_ellipses_become_lines_close_to_them(drawn):
    path = drawn(lambda space: space.add_ellipse((0, 0), (200, 0), 0.5))
    outline = read_drawing(path, bare=Units.MM)
    x, y = outline.polyline().T
    middle = (np.stack([x, y]) + np.roll([x, y], -1, axis=1)) / 2
    # How far the chords' middles lie inside, measured on the shorter half-axis: on the safe side.
    inside = 100 * (1 - np.hypot(middle[0] / 200, middle[1] / 100))
    assert inside.max() < 0.006

    def spline(space):
        space.add_spline([(-76, -60), (100, -150), (300, 0), (100, 150), (-76, 60)])
        space.add_line((-76, -60), (-76, 60))

    outline = read_drawing(drawn(spline), bare=Units.MM)
    assert 20 < len(outline.segments) < 2000
    assert outline.distance(np.array([(300.0, 0.0)])) < 0.02


def test_a_job_takes_its_outline_from_a_drawing(drawn):
    stated = {"body.outline": "file", "body.outline_file": str(drawn(polyline))}
    assert len(outline_of(complete(stated)).segments) == 5


def two(space):
    polyline(space)
    space.add_circle((100, 0), 10)


def open_line(space):
    space.add_lwpolyline(CORNERS)


def three_meet(space):
    polyline(space)
    space.add_line((-76, 60), (0, 0))


def block(space):
    space.doc.blocks.new("b")
    space.add_blockref("b", (0, 0))


def high(space):
    polyline(space, dxfattribs={"elevation": 3.0})


def many(space):
    for i in range(5000):
        space.add_line((i, 0), (i + 1, 0))


@pytest.mark.parametrize(
    ("draw", "words"),
    [
        (two, ("more than one",)),
        (open_line, ("open", "X =")),
        (three_meet, ("3 lines",)),
        (lambda space: None, ("no outline",)),
        (block, ("INSERT",)),
        (high, ("3.00 mm",)),
        (many, ("4000",)),
    ],
)
def test_a_drawing_that_is_not_one_closed_outline_is_refused(drawn, draw, words):
    with pytest.raises(BadInput) as refusal:
        read_drawing(drawn(draw), bare=Units.MM)
    sentence = str(refusal.value)
    assert sentence.startswith("outline.dxf")
    assert sentence.endswith(".")
    for word in words:
        assert word in sentence


def test_an_unknown_unit_is_refused(drawn):
    with pytest.raises(BadInput, match=r"\$INSUNITS 8"):
        read_drawing(drawn(polyline, units=8), bare=Units.MM)


@pytest.mark.parametrize(
    "data", [b"", b"no drawing", b"\x00\xff" * 500, b"0\nSECTION\n2\nENTITIES\n0\n"]
)
def test_a_broken_drawing_is_refused_in_one_sentence(tmp_path, data):
    path = tmp_path / "broken.dxf"
    path.write_bytes(data)
    with pytest.raises(BadInput) as refusal:
        read_drawing(path, bare=Units.MM)
    assert str(refusal.value).startswith("broken.dxf")
    assert "\n" not in str(refusal.value)


def test_a_drawing_cut_short_anywhere_is_read_or_refused(drawn):
    path = drawn(polyline)
    data = path.read_bytes()
    refused = 0
    for share in np.linspace(0.02, 0.98, 25):
        path.write_bytes(data[: int(len(data) * share)])
        try:
            read_drawing(path, bare=Units.MM)
        except BadInput:
            refused += 1
    assert refused > 15


def test_a_huge_drawing_is_refused_unread(tmp_path):
    path = tmp_path / "huge.dxf"
    with path.open("wb") as file:
        file.truncate(30_000_000)
    with pytest.raises(BadInput, match="20 MB"):
        read_drawing(path, bare=Units.MM)


def test_without_ezdxf_the_sentence_says_what_to_install(drawn, monkeypatch):
    path = drawn(polyline)
    real = builtins.__import__

    def missing(name, *rest, **more):
        if name == "ezdxf":
            raise ImportError(name)
        return real(name, *rest, **more)

    monkeypatch.setattr(builtins, "__import__", missing)
    with pytest.raises(BadInput, match="python3-ezdxf"):
        read_drawing(path, bare=Units.MM)

"""An outline drawn as a sketch in a FreeCAD document."""

# ruff: noqa: E402  (imported after it is known that FreeCAD is there)
import math

import pytest

FreeCAD = pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.run.sketch import outline_segments
from freecad_neckfit.solids.build.plan import face

pytestmark = pytest.mark.freecad


@pytest.fixture
def sketched(tmp_path):
    """Save a document with sketches of the given geometry, one list each."""

    def make(*sketches, place=None):
        document = FreeCAD.newDocument("Outline", hidden=True)
        for geometry in sketches:
            sketch = document.addObject("Sketcher::SketchObject", "Sketch")
            if place:
                sketch.Placement = place
            sketch.addGeometry(geometry, False)
        document.recompute()
        path = tmp_path / "outline.FCStd"
        document.saveAs(str(path))
        FreeCAD.closeDocument(document.Name)
        return path

    return make


def lines(*corners):
    points = [Vector(x, y, 0) for x, y in corners]
    return [Part.LineSegment(a, b) for a, b in zip(points, [*points[1:], points[0]], strict=True)]


SQUARE = lines((0, 0), (40, 0), (40, 30), (0, 30))


def test_lines_and_arcs_come_in_order(sketched):
    half_turn = Part.ArcOfCircle(
        Part.Circle(Vector(40, 15, 0), Vector(0, 0, 1), 15), -math.pi / 2, math.pi / 2
    )
    path = sketched([SQUARE[0], half_turn, SQUARE[2], SQUARE[3]])
    segments = outline_segments(path)
    for (_, _, end), (start, _, _) in zip(segments, [*segments[1:], segments[0]], strict=True):
        assert end == pytest.approx(start, abs=1e-9)
    assert face(segments, 0.0).Area == pytest.approx(40 * 30 + math.pi * 15**2 / 2)


def test_a_circle_is_an_outline(sketched):
    path = sketched([Part.Circle(Vector(5, 0, 0), Vector(0, 0, 1), 20)])
    assert face(outline_segments(path), 0.0).Area == pytest.approx(math.pi * 400)


def test_the_sketch_s_place_counts(sketched):
    path = sketched(SQUARE, place=FreeCAD.Placement(Vector(100, 0, 0), FreeCAD.Rotation()))
    assert min(start[0] for start, _, _ in outline_segments(path)) == pytest.approx(100)


@pytest.mark.parametrize(
    ("sketches", "sentence"),
    [
        ([], "holds 0 sketches"),
        ([SQUARE, SQUARE], "holds 2 sketches"),
        ([SQUARE[:3]], "not one closed outline"),
        ([SQUARE + lines((5, 5), (10, 5), (10, 10))], "not one closed outline"),
        ([[Part.Ellipse(Vector(0, 0, 0), 30, 20)]], "neither line nor arc"),
    ],
)
def test_other_sketches_are_refused_in_one_sentence(sketched, sketches, sentence):
    with pytest.raises(BadInput, match=sentence) as refusal:
        outline_segments(sketched(*sketches))
    assert "\n" not in str(refusal.value)


def test_a_sketch_that_stands_up_is_refused(sketched):
    upright = FreeCAD.Placement(Vector(), FreeCAD.Rotation(Vector(1, 0, 0), 90))
    with pytest.raises(BadInput, match="does not lie flat"):
        outline_segments(sketched(SQUARE, place=upright))


def test_missing_and_broken_files_are_told(tmp_path):
    with pytest.raises(BadInput, match="no such file"):
        outline_segments(tmp_path / "none.FCStd")
    broken = tmp_path / "broken.FCStd"
    broken.write_bytes(b"PK not a zip")
    with pytest.raises(BadInput, match="FreeCAD cannot open it"):
        outline_segments(broken)
    assert "broken" not in FreeCAD.listDocuments()

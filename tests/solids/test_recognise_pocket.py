"""Pockets routed with known values, read back from the faces alone."""

import math

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Matrix, Rotation, Vector

from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build import build
from freecad_neckfit.solids.recognise.pocket import read_pocket
from freecad_neckfit.solids.recognise.reading import NotRead

pytestmark = pytest.mark.freecad

CASES = {
    "as usual": {},
    "angled": {"pocket.angle": 1.7, "pocket.depth": 18.288},
    "tipped forward": {"pocket.angle": -0.8},
    "square to the floor": {"pocket.angle": 3.0, "pocket.wall": "floor"},
    "sharp corners": {"pocket.corner_radius": 0.0},
    "wide corners, fillet": {"pocket.corner_radius": 6.0, "pocket.floor_fillet": 1.5},
    "narrow corners, fillet": {"pocket.corner_radius": 2.0, "pocket.floor_fillet": 1.0,
                               "pocket.angle": 1.0},
    "round end": {"pocket.end_shape": "round", "pocket.width_end": 56.0,
                  "pocket.width_mouth": 56.0},
    "flat round end": {"pocket.end_shape": "round", "pocket.end_radius": 60.0,
                       "pocket.angle": 2.0},
    "round and square to the floor": {"pocket.end_shape": "round", "pocket.end_radius": 60.0,
                                      "pocket.angle": 2.0, "pocket.wall": "floor"},
    "parallel and long": {"pocket.width_end": 63.5, "pocket.width_mouth": 63.5,
                          "pocket.length": 100.0},
    "closing toward the end": {"pocket.width_end": 54.0, "pocket.width_mouth": 57.5},
    "carved": {"body.top": "carved", "body.edge_round": 0.0, "pocket.angle": 1.0},
    "domed": {"body.top": "domed", "pocket.depth": 14.0},
    "screws, cavity, contour": {"body.contour_depth": 8.0, "cavity.x": np.array([60.0]),
                                "pickup_neck.cavity_depth": 20.0},
}  # fmt: skip


def routed(stated):
    return build(complete(stated), parts=["body"]).parts["body"]


def expected(stated):
    v = complete(stated)
    keys = ["depth", "angle", "length", "width_end", "width_mouth", "end_shape", "floor_fillet"]
    if v["pocket.end_shape"] == "round":
        keys.append("end_radius")
    else:
        keys.append("corner_radius")
    if v["pocket.angle"]:
        keys.append("wall")
    return {f"pocket.{key}": v[f"pocket.{key}"] for key in keys}


@pytest.mark.parametrize("name", CASES)
def test_what_was_routed_is_read(name):
    found = read_pocket(routed(CASES[name]))
    for key, value in expected(CASES[name]).items():
        assert found.shown.values[key] == (
            value if isinstance(value, str) else pytest.approx(value, abs=1e-6)
        ), key
    assert found.origin == pytest.approx([0.0, 0.0, 0.0], abs=1e-6)
    assert found.turn == pytest.approx(0.0, abs=1e-6)
    assert max(found.shown.residuals.values()) < 1e-6
    assert not found.shown.notes


def test_where_the_origin_lies_along_the_centreline_does_not_matter():
    stated = {"pocket.angle": 2.0, "body.top": "carved", "body.edge_round": 0.0}
    body = routed(stated)
    body.translate(Vector(123.0, 0.0, -17.0))
    found = read_pocket(body)
    assert found.origin == pytest.approx([123.0, 0.0, -17.0], abs=1e-6)
    assert found.shown.values["pocket.depth"] == pytest.approx(15.875, abs=1e-6)


def test_a_centreline_a_little_off_is_told():
    body = routed({})
    body.rotate(Vector(0, 0, 0), Vector(0, 0, 1), 0.05)
    found = read_pocket(body)
    assert found.turn == pytest.approx(0.05, abs=1e-3)
    assert any("off the frame's X axis" in note for note in found.shown.notes)


def free_form(solid):
    """The same solid with every surface, plane and cylinder too, as a B-spline."""
    return solid.toNurbs().Solids[0]


@pytest.mark.parametrize("name", [
    "as usual", "angled", "flat round end", "wide corners, fillet", "square to the floor",
])  # fmt: skip
def test_planes_and_cylinders_kept_as_free_form_surfaces_are_recognised(name):
    body = free_form(routed(CASES[name]))
    assert {type(f.Surface).__name__ for f in body.Faces} == {"BSplineSurface"}
    found = read_pocket(body)
    for key, value in expected(CASES[name]).items():
        if key == "pocket.floor_fillet":
            continue  # the corners' rings are free-form now; the straight fillets show the radius
        assert found.shown.values[key] == (
            value if isinstance(value, str) else pytest.approx(value, abs=1e-4)
        ), key


def test_a_body_without_a_pocket_says_what_to_pick():
    with pytest.raises(NotRead, match="pick the pocket's floor face"):
        read_pocket(Part.makeBox(300, 200, 40, Vector(-76, -100, -40)))


def test_a_cavity_is_no_pocket():
    block = Part.makeBox(300, 200, 40, Vector(-76, -100, -40))
    cavity = Part.makeBox(60, 60, 20, Vector(20, -30, -20))
    with pytest.raises(NotRead, match="pick the pocket's floor face"):
        read_pocket(block.cut(cavity))


def two_pockets():
    """A pocket, and a step across its mouth that is open too."""
    block = Part.makeBox(300, 200, 40, Vector(-76, -100, -40))
    upper = Part.makeBox(100, 80, 6, Vector(-100, -40, -6))
    lower = Part.makeBox(80, 56, 20, Vector(-100, -28, -20))
    return block.cut([upper, lower])


def test_two_that_could_be_it_are_asked_about():
    body = two_pockets()
    with pytest.raises(NotRead, match=r"2 faces could be the pocket's floor; pick the"):
        read_pocket(body)
    floor = next(
        i for i, f in enumerate(body.Faces)
        if abs(f.CenterOfMass.z + 20) < 1e-6 and f.normalAt(0, 0).z > 0.9
    )  # fmt: skip
    found = read_pocket(body, floor=floor)
    assert found.shown.values["pocket.depth"] == pytest.approx(20.0)
    assert found.shown.values["pocket.width_end"] == pytest.approx(56.0)
    assert found.origin == pytest.approx([-20.0, 0.0, 0.0])


def test_a_picked_face_that_is_no_floor_is_refused():
    body = routed({})
    top = max(range(len(body.Faces)), key=lambda i: body.Faces[i].CenterOfMass.z)
    with pytest.raises(NotRead, match="no pocket's floor; pick"):
        read_pocket(body, floor=top)


def leaning(angle):
    """A plain pocket whose side at +Y leans."""
    block = Part.makeBox(300, 200, 40, Vector(-76, -100, -40))
    shift = 60 * math.tan(math.radians(angle))
    profile = [(-28, -16), (28, -16), (28 + shift, 44), (-28, 44)]
    points = [Vector(-100, y, z) for y, z in profile]
    tool = Part.Face(Part.makePolygon([*points, points[0]])).extrude(Vector(100, 0, 0))
    return block.cut(tool)


def test_a_leaning_side_wall_is_refused_in_one_sentence():
    with pytest.raises(NotRead, match=r"side wall at \+Y leans by 3.00°"):
        read_pocket(leaning(3.0))
    assert read_pocket(leaning(0.0)).shown.values["pocket.width_end"] == pytest.approx(56.0)


def test_an_end_wall_square_to_nothing_is_refused():
    block = Part.makeBox(300, 200, 40, Vector(-76, -100, -40))
    profile = [(-100, -16), (0, -16), (4, 0), (14, 40), (-100, 40)]
    points = [Vector(x, -28, z) for x, z in profile]
    tool = Part.Face(Part.makePolygon([*points, points[0]])).extrude(Vector(0, 56, 0))
    with pytest.raises(NotRead, match="square to neither top nor floor"):
        read_pocket(block.cut(tool))


def test_unlike_corners_are_a_residual():
    block = Part.makeBox(300, 200, 40, Vector(-76, -100, -40))
    tool = Part.makeBox(100, 56, 60, Vector(-100, -28, -16))
    for y, radius in ((-28, 3.4), (28, 3.0)):
        edge = next(e for e in tool.Edges if e.CenterOfMass.isEqual(Vector(0, y, 14), 1e-6))
        tool = tool.makeFillet(radius, [edge])
    found = read_pocket(block.cut(tool))
    assert found.shown.values["pocket.corner_radius"] == pytest.approx(3.2)
    assert found.shown.residuals["pocket.corner_radius"] == pytest.approx(0.2)
    assert any("radii from 3.000 to 3.400" in note for note in found.shown.notes)


def test_the_solid_is_left_as_it_was():
    body = routed({})
    before = [v.Tolerance for v in body.Vertexes], body.hashCode()
    read_pocket(body)
    assert ([v.Tolerance for v in body.Vertexes], body.hashCode()) == before


def test_rotated_by_a_matrix_and_back_it_reads_the_same():
    turn = Rotation(Vector(1, 2, 3), 37.0).toMatrix()
    there = routed({"pocket.angle": 1.7}).transformed(turn, copy=True)
    back = Matrix(turn)
    back.invert()
    found = read_pocket(there.transformed(back, copy=True))
    assert found.shown.values["pocket.angle"] == pytest.approx(1.7, abs=1e-6)

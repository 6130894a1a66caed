"""The body frame from a top face and a centreline, and picked faces found again after edits."""

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Rotation, Vector

from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build import build
from freecad_neckfit.solids.build.shapes import moved
from freecad_neckfit.solids.recognise.frame import Line, place
from freecad_neckfit.solids.recognise.reading import NotRead
from freecad_neckfit.solids.recognise.signature import find, signature_of
from tests.solids.test_build_given import blank_of

pytestmark = pytest.mark.freecad

TURNED = np.eye(4)
TURNED[:3, :3] = np.array(Rotation(Vector(1, 2, 3), 77.0).toMatrix().A).reshape(4, 4)[:3, :3]
TURNED[:3, 3] = 310.0, -55.0, 12.0


def top_of(solid):
    up = [i for i, f in enumerate(solid.Faces) if normal_at_middle(f).z > 0.5]
    return max(up, key=lambda i: solid.Faces[i].Area)


def normal_at_middle(face):
    u0, u1, v0, v1 = face.ParameterRange
    return face.normalAt((u0 + u1) / 2, (v0 + v1) / 2)


def line(motion, *, start=30.0, sign=1.0):
    point = motion @ np.array([start, 0.0, 0.0, 1.0])
    return Line(point[:3], sign * motion[:3, 0])


@pytest.mark.parametrize("sign", [1.0, -1.0])
@pytest.mark.parametrize("stated", [
    {}, {"body.top": "carved", "body.edge_round": 0.0, "pocket.length": 70.0},
])  # fmt: skip
def test_the_frame_of_a_turned_blank_is_found(stated, sign):
    blank = blank_of(stated)
    found = place(moved(blank, TURNED), top=top_of(blank), line=line(TURNED, sign=sign),
                  length=float(complete(stated)["pocket.length"]), has_pocket=False)  # fmt: skip
    assert found.frame == pytest.approx(TURNED, abs=1e-6)


def test_reversed_it_points_the_other_way():
    blank = blank_of({})
    found = place(blank, top=top_of(blank), line=line(np.eye(4)), length=76.0, has_pocket=False,
                  reverse=True)  # fmt: skip
    assert found.frame[:3, 0] == pytest.approx([-1.0, 0.0, 0.0])
    assert found.frame[:3, 2] == pytest.approx([0.0, 0.0, 1.0])


@pytest.mark.parametrize("stated", [
    {"pocket.angle": 1.3}, {"body.top": "domed", "pocket.end_shape": "round"},
])  # fmt: skip
def test_the_frame_of_a_body_with_a_pocket_is_the_pocket_s(stated):
    body = build(complete(stated), parts=["body"]).parts["body"]
    found = place(moved(body, TURNED), top=top_of(body), line=line(TURNED, start=100.0),
                  length=1.0, has_pocket=True)  # fmt: skip
    assert found.frame == pytest.approx(TURNED, abs=1e-6)
    assert found.pocket.shown.values["pocket.depth"] == pytest.approx(15.875, abs=1e-6)


def test_a_centreline_that_stands_upright_is_refused():
    blank = blank_of({})
    with pytest.raises(NotRead, match="not level"):
        place(blank, top=top_of(blank), line=Line(np.zeros(3), np.array([0, 0, 1.0])),
              length=76.0, has_pocket=False)  # fmt: skip


def block(height=40.0, width=200.0, hole=0.0):
    made = Part.makeBox(300, width, height)
    if hole:
        made = made.cut(Part.makeCylinder(hole, 100, Vector(150, 60, -10)))
    return made


def rounded():
    made = block()
    return made.makeFillet(5.0, made.Edges[:4])


def face_at(solid, z):
    return next(i for i, f in enumerate(solid.Faces) if abs(f.CenterOfMass.z - z) < 1e-6
                and abs(f.normalAt(0, 0).z) > 0.9)  # fmt: skip


@pytest.mark.parametrize("edited", [
    block(height=45.0), block(width=230.0), block(hole=30.0), block(height=30.0, hole=20.0),
    rounded(),
])  # fmt: skip
def test_a_picked_face_is_found_again_after_an_edit(edited):
    before = block()
    kept = signature_of(before.Faces[face_at(before, 40.0)])
    found = edited.Faces[find(edited, kept, what="top face")]
    assert normal_at_middle(found).z > 0.9
    assert found.CenterOfMass.z == pytest.approx(edited.BoundBox.ZMax)


def test_a_face_that_is_gone_is_asked_for():
    kept = signature_of(block().Faces[face_at(block(), 40.0)])
    ball = Part.makeSphere(200)
    with pytest.raises(NotRead, match="top face that was picked is no longer there; pick it again"):
        find(ball, kept, what="top face")


def test_of_two_alike_neither_is_taken():
    one = Part.makeBox(10, 10, 10)
    kept = signature_of(one.Faces[face_at(one, 10.0)])
    both = Part.Compound([Part.makeBox(10, 10, 10, Vector(0, x, 0)) for x in (-1, 1)])
    with pytest.raises(NotRead, match="Several look like the top face"):
        find(both, kept, what="top face")


def test_an_edge_is_found_whichever_way_it_runs():
    kept = signature_of(Part.makeLine(Vector(0, 0, 0), Vector(100, 0, 0)))
    shape = Part.Compound([Part.makeLine(Vector(0, 50, 0), Vector(100, 50, 0)),
                           Part.makeLine(Vector(104, 0, 0), Vector(0, 0, 0))])  # fmt: skip
    assert find(shape, kept, what="centreline") == 1

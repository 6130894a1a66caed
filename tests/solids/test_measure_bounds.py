"""What a face's surface tells of its reach and its look holds for points all over the face."""

from __future__ import annotations

import numpy as np
import pytest

from freecad_neckfit.host import load_freecad

if load_freecad():
    pytest.skip("FreeCAD is not installed", allow_module_level=True)

import FreeCAD
import Part

from freecad_neckfit.solids.measure.bounds import box_of, looks

UP, ACROSS = FreeCAD.Vector(0, 0, 1), FreeCAD.Vector(0, 1, 0)


def filleted(radius=4.0):
    """A cylinder with both rims rounded: pieces of rings that look up and that look down."""
    solid = Part.makeCylinder(20, 30, FreeCAD.Vector(5, -7, 3))
    rims = [e for e in solid.Edges if len(e.Vertexes) == 1]
    return solid.makeFillet(radius, rims)


def hollow():
    """A post on a plate with a fillet about its foot: a ring's inner side."""
    plate = Part.makeBox(60, 60, 5, FreeCAD.Vector(-30, -30, 0))
    solid = plate.fuse(Part.makeCylinder(10, 30))
    foot = [e for e in solid.Edges if e.BoundBox.ZMax - 5 < 1e-6 < e.BoundBox.ZMin - 4.9
            and type(e.Curve).__name__ == "Circle"]  # fmt: skip
    return solid.makeFillet(3.0, foot)


def ring(first, last):
    """A piece of a ring's skin: of its own circle from ``first`` to ``last`` [degrees]."""
    circle = Part.Circle(FreeCAD.Vector(20, 0, 0), FreeCAD.Vector(0, -1, 0), 4)
    circle.XAxis = FreeCAD.Vector(1, 0, 0)
    arc = Part.ArcOfCircle(circle, np.radians(first), np.radians(last)).toShape()
    found = arc.revolve(FreeCAD.Vector(), UP, 75)
    assert type(found.Faces[0].Surface).__name__ == "Toroid"
    return found


def drawn():
    """A block under a free curve, rounded: an upright drawn wall and free-form rounds."""
    half = [(-75, 52), (-60, 66), (-20, 70), (20, 62), (60, 66), (95, 58), (112, 30), (114, 0)]
    corners = [(x, -y) for x, y in half] + [(x, y) for x, y in half[-2::-1]]
    curve = Part.BSplineCurve()
    curve.interpolate([FreeCAD.Vector(x, y, 0) for x, y in corners])
    ends = [FreeCAD.Vector(*corners[k], 0) for k in (-1, 0)]
    wire = Part.Wire([curve.toShape(), Part.LineSegment(*ends).toShape()])
    slab = Part.Face(wire).extrude(UP * 20)
    return slab.makeFillet(1.0, [e for e in slab.Edges if type(e.Curve).__name__ == "BSplineCurve"])


def swelling():
    """A loft that bulges, cut through: its poles lie far outside what is left."""
    rings = [Part.Wire(Part.makeCircle(r, FreeCAD.Vector(0, 0, z)))
             for r, z in ((10, 0), (25, 20), (8, 40), (22, 60))]  # fmt: skip
    return Part.makeLoft(rings, True).common(Part.makeBox(60, 30, 12, FreeCAD.Vector(-30, -4, 44)))


def tipped(shape):
    """Turned about an axis that is none of the frame's, and cut, so that its faces are pieces."""
    shape.rotate(FreeCAD.Vector(), FreeCAD.Vector(1, 2, 0.5), 63)
    return shape.common(Part.makeBox(30, 30, 30, FreeCAD.Vector(-29, -3, -4)))


SHAPES = {
    "tipped cone": tipped(Part.makeCone(9, 2, 20)), "tipped bore": tipped(
        Part.makeBox(20, 20, 20, FreeCAD.Vector(-10, -10, 0)).cut(Part.makeCylinder(5, 20))),
    "drawn": drawn(), "piece of what is drawn": drawn().common(Part.makeBox(30, 30, 9)),
    "swelling": swelling(),
    "rims": filleted(), "foot": hollow(), "whole ring": Part.makeTorus(20, 4),
    "piece of a ring": ring(-30, 60), "inner side": ring(95, 170), "over the top": ring(60, 120),
    "ring on edge": Part.makeTorus(20, 4, FreeCAD.Vector(), ACROSS),
    "ball": Part.makeSphere(7), "cone": Part.makeCone(5, 2, 9),
    "lying": Part.makeCylinder(4, 20, FreeCAD.Vector(), ACROSS), "box": Part.makeBox(1, 2, 3),
}  # fmt: skip


def spots(face):
    u0, u1, v0, v1 = face.ParameterRange
    return [(u, v) for u in np.linspace(u0, u1, 41) for v in np.linspace(v0, v1, 41)]


@pytest.mark.parametrize("name", SHAPES)
def test_no_point_of_a_face_lies_outside_its_bounds(name):
    for face in SHAPES[name].Faces:
        found = np.array([face.valueAt(u, v) for u, v in spots(face) if face.isPartOfDomain(u, v)])
        box = np.array(box_of(face))
        assert (found >= box[:3] - 1e-6).all()
        assert (found <= box[3:] + 1e-6).all()


@pytest.mark.parametrize("name", SHAPES)
def test_no_normal_looks_farther_up_or_down_than_told(name):
    for face in SHAPES[name].Faces:
        told = looks(face)
        if told is not None:
            z = np.array([face.normalAt(u, v).z for u, v in spots(face)])
            assert z.min() >= told[0] - 1e-9
            assert z.max() <= told[1] + 1e-9


@pytest.mark.parametrize("name", ["tipped cone", "tipped bore", "lying"])
def test_what_turns_about_a_line_looks_just_as_far_as_told(name):
    curved = [f for f in SHAPES[name].Faces if type(f.Surface).__name__ in ("Cylinder", "Cone")]
    assert curved
    for face in curved:
        z = np.array([face.normalAt(u, v).z for u, v in spots(face)])
        assert looks(face) == pytest.approx((z.min(), z.max()), abs=0.01)


def test_rounds_look_one_way_and_walls_neither():
    rounds = [f for f in filleted().Faces if type(f.Surface).__name__ == "Toroid"]
    assert sorted(tuple(round(z, 9) for z in looks(f)) for f in rounds) == [(-1.0, 0.0), (0.0, 1.0)]
    assert [looks(f) for f in filleted().Faces if type(f.Surface).__name__ == "Cylinder"] == [
        (0.0, 0.0)
    ]
    assert [looks(f) for n in ("ring on edge", "ball", "whole ring") for f in SHAPES[n].Faces] == [
        None, None, None,
    ]  # fmt: skip


def test_a_cut_free_form_faces_bounds_do_not_hold_its_poles():
    loft = next(f for f in swelling().Faces if type(f.Surface).__name__ == "BSplineSurface")
    assert loft.BoundBox.ZMin < 40  # what the kernel's own bounds are like
    assert box_of(loft)[2] == pytest.approx(44, abs=0.1)
    assert box_of(loft)[5] == pytest.approx(56, abs=0.1)


def test_an_upright_drawn_wall_looks_neither_way():
    walls = [f for f in drawn().Faces if type(f.Surface).__name__ == "SurfaceOfExtrusion"]
    assert [looks(f) for f in walls] == [(0.0, 0.0)]


def test_a_rounds_bounds_are_those_of_its_edges():
    piece = filleted().common(Part.makeBox(50, 50, 50, FreeCAD.Vector(8, 0, 0)))
    rounds = [f for f in piece.Faces if type(f.Surface).__name__ == "Toroid"]
    assert len(rounds) == 2
    for face in rounds:
        box = box_of(face)
        assert (box[0], box[1]) == pytest.approx((8.0, 0.0), abs=1e-5)
        assert max(box[3] - 25.0, box[4] - 13.0) < 1e-5

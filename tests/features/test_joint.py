"""The joint builds its parts, wherever it lies."""

import math

import pytest

from freecad_neckfit.job.resolve import complete

pytestmark = pytest.mark.freecad


def test_parts_are_the_solids_of_the_joint(joint):
    from freecad_neckfit.solids.build import build

    document = joint.Document
    joint.CoverPlate.Cover = "surround"
    joint.Pocket.ShimMake = "wedge"
    document.recompute()
    stated = {"plate.cover": "surround", "shim.make": "wedge"}
    parts = build(complete(stated)).parts
    for name, solids in {
        "RoutedBody": ["body"],
        "SeatedNeck": ["heel", "shaft", "fretboard", "frets"],
        "SeatedPlate": ["plate"],
        "Shim": ["shim"],
        "Bridge": ["bridge", "saddles"],
        "Screws": ["neck_plate", "screw_1", "screw_2", "screw_3", "screw_4"],
    }.items():
        shape = document.getObject(name).Shape
        wanted = sum(parts[s].Volume for s in solids)
        assert shape.Volume == pytest.approx(wanted, rel=1e-9), name
        assert shape.isValid()
    assert document.Pickups.Shape.isNull()


def test_a_part_that_is_taken_away_leaves_no_shape(joint):
    joint.CoverPlate.Cover = "surround"
    joint.Document.recompute()
    assert joint.Document.SeatedPlate.Shape.Volume > 0
    joint.CoverPlate.Cover = "none"
    joint.Document.recompute()
    assert joint.Document.SeatedPlate.Shape.isNull()
    assert all(o.isValid() for o in joint.Document.Objects)


def test_nothing_is_left_to_recompute(joint):
    assert [o.Name for o in joint.Document.Objects if "Touched" in o.State] == []
    assert joint.Document.recompute() == 0


def test_two_joints_of_a_document_share_a_body(joint):
    from freecad_neckfit.features.make import make_joint, parts_of

    other = make_joint(joint.Document)
    other.Body = joint.Body
    joint.Body.Thickness = 50
    joint.Document.recompute()
    thick = [
        next(p for p in parts_of(j) if list(p.Parts) == ["body"]).Shape.BoundBox.ZLength
        for j in (joint, other)
    ]
    assert thick == pytest.approx([50, 50], abs=0.01)


def same_place(a, b):
    first, second = a.toMatrix().A, b.toMatrix().A
    return first == pytest.approx(second, abs=1e-9)


@pytest.fixture
def turned(joint):
    """The joint turned, in a part within a part, both turned and moved."""
    import FreeCAD

    def turn(*axis):
        return FreeCAD.Placement(
            FreeCAD.Vector(100, -20, 7), FreeCAD.Rotation(FreeCAD.Vector(*axis), 33)
        )

    document = joint.Document
    inner, outer = (document.addObject("App::Part", name) for name in ("Inner", "Outer"))
    inner.addObject(joint)
    outer.addObject(inner)
    joint.Placement, inner.Placement, outer.Placement = turn(1, 2, 3), turn(0, 1, 1), turn(1, 0, 0)
    document.recompute()
    return joint


def test_a_turned_and_nested_joint_takes_its_parts_along(turned):
    whole = turned.getGlobalPlacement()
    assert math.degrees(whole.Rotation.Angle) > 10
    for name in ("RoutedBody", "SeatedNeck", "Bridge"):
        part = turned.Document.getObject(name)
        assert part.isValid()
        assert part.getParentGeoFeatureGroup().Name == "Inner"
        assert same_place(part.getGlobalPlacement(), whole)


def test_a_turned_and_nested_joint_has_the_same_findings(turned):
    from freecad_neckfit.features.make import make_joint
    from freecad_neckfit.features.run_check import check

    turned.Pocket.Depth = 18
    twin = make_joint(turned.Document, name="Joint")
    twin.Pocket.Depth = 18
    turned.Document.recompute()
    a, b = check(turned, solids=False), check(twin, solids=False)
    assert a.Findings.replace(turned.Label, "") == b.Findings.replace(twin.Label, "")


def test_a_part_taken_out_of_its_container_takes_the_joint_along(turned):
    body = turned.Document.RoutedBody
    turned.Document.Inner.removeObject(body)
    turned.Document.recompute()
    assert turned.getParentGeoFeatureGroup() is body.getParentGeoFeatureGroup()
    assert same_place(body.getGlobalPlacement(), turned.getGlobalPlacement())

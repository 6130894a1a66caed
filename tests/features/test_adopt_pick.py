"""Picks in nested containers and links, solids within links, and other ways to give the frame."""

import pytest

from tests.features.test_adopt import SAME, adopt, designs, findings, made, same

pytestmark = pytest.mark.freecad


def test_a_pick_in_nested_containers_is_the_solid_itself(document):
    from freecad_neckfit.features.adopt_pick import pick_of

    solid, line = designs().padded(document)
    outer = designs().nest(document, solid, line)
    document.recompute()
    found = pick_of(outer, f"Inner.{solid.Name}.Rounded.Face6")
    assert (found.solid, found.path, found.element) == (solid, "", "Face6")
    assert pick_of(solid, "Rounded.Face2").solid == solid
    assert pick_of(outer, "Inner.Middle.Edge1") == (line, "", "Edge1")
    assert pick_of(solid) == (solid, "", "")


def test_a_pick_through_a_link_keeps_the_way_below_it(document):
    from freecad_neckfit.features.adopt_pick import pick_of

    solid, line = designs().padded(document)
    outer = designs().nest(document, solid, line)
    link = document.addObject("App::Link", "Twin")
    link.LinkedObject = outer
    document.recompute()
    found = pick_of(link, f"Inner.{solid.Name}.Rounded.Face6")
    assert found.solid == link
    assert found.path == f"Inner.{solid.Name}"
    assert found.element == "Face6"


def linked(document, target, name="Twin"):
    from FreeCAD import Placement, Rotation, Vector

    link = document.addObject("App::Link", name)
    link.LinkedObject = target
    link.Placement = Placement(Vector(500, 20, -60), Rotation(Vector(0.3, 0.2, 1), 130.0))
    document.recompute()
    return link


@pytest.mark.parametrize("transforms", [False, True])
def test_through_a_link_the_findings_are_the_same(document, transforms):
    from freecad_neckfit.features.adopt import adopt_body
    from freecad_neckfit.features.adopt_given import joint_frame
    from freecad_neckfit.features.adopt_shape import matrix_of

    solid, line, joint = made(document, "pocketed")
    designs().turn(solid, line)
    document.recompute()
    adopt(joint, solid, line, "pocketed")
    before = findings(joint)
    link, other = linked(document, solid), linked(document, line, "OtherLine")
    for each in (link, other):
        each.LinkTransform = transforms
    document.recompute()
    adopt_body(joint, link, top=designs().top_name(solid), centreline="Edge1",
               centreline_of=other, has_pocket=True)  # fmt: skip
    document.recompute()
    assert joint.Body.isValid(), joint.Body.getStatusString()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)
    # And the joint lies on the link, not on the solid that it links.
    away = matrix_of(link.Placement)
    if transforms:
        away = away @ matrix_of(solid.Placement)
    import numpy as np

    wall = np.array([0.0, 0.0, 44.45, 1.0])
    assert joint_frame(joint)[:, 3] == pytest.approx(away @ wall, abs=1e-6)


def test_a_solid_below_a_link_to_a_group(document):
    from freecad_neckfit.features.adopt import adopt_body

    solid, line, joint = made(document, "pocketed")
    adopt(joint, solid, line, "pocketed")
    before = findings(joint)
    outer = designs().nest(document, solid, line)
    link = linked(document, outer)
    adopt_body(joint, link, path=f"Inner.{solid.Name}", has_pocket=True,
               frame=_frame_below(outer))  # fmt: skip
    document.recompute()
    assert joint.Body.isValid(), joint.Body.getStatusString()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)


def _frame_below(outer):
    """The pocket's frame as seen from a link to the outer container that moves with its own."""
    from FreeCAD import Placement, Rotation, Vector

    inner = outer.Group[0]
    here = inner.Placement.multiply(Placement(Vector(30.0, 0, 44.45), Rotation()))
    yaw, pitch, roll = here.Rotation.getYawPitchRoll()
    return [*here.Base, yaw, pitch, roll]


def test_the_frame_may_be_typed(document):
    from freecad_neckfit.features.adopt import adopt_body, typed_frame

    solid, line, joint = made(document, "padded")
    adopt(joint, solid, line, "padded")
    before = findings(joint)
    body = adopt_body(joint, solid, frame=typed_frame(joint.Body))
    document.recompute()
    assert body.FrameFrom == "placement"
    assert body.isValid(), body.getStatusString()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)


def test_the_frame_may_be_a_coordinate_system_that_moves_along(document):
    from FreeCAD import Placement, Rotation, Vector

    from freecad_neckfit.features.adopt import adopt_body

    solid, line, joint = made(document, "padded")
    adopt(joint, solid, line, "padded")
    before = findings(joint)
    known = document.supportedTypes()
    kind = next(k for k in ("PartDesign::CoordinateSystem", "Part::LocalCoordinateSystem")
                if k in known)  # fmt: skip
    system = solid.newObject(kind, "Datum") if kind.startswith("PartDesign") else (
        document.addObject(kind, "Datum"))  # fmt: skip
    system.Placement = Placement(Vector(0, 0, 44.45), Rotation())
    designs().nest(document, solid, line)
    document.recompute()
    body = adopt_body(joint, solid, system=system)
    document.recompute()
    assert body.isValid(), body.getStatusString()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)
    system.Placement = Placement(Vector(5.0, 0, 44.45), Rotation())
    document.recompute()
    assert not joint.isValid()  # the mouth is no longer where the pocket's length puts it
    assert "pocket.length" in joint.getStatusString()


@pytest.mark.parametrize("kind", ["axis", "datum line"])
def test_the_centreline_may_be_an_axis(document, kind):
    from FreeCAD import Rotation, Vector

    from freecad_neckfit.features.adopt import adopt_body

    solid, line, joint = made(document, "padded")
    adopt(joint, solid, line, "padded")
    before = findings(joint)
    if kind == "axis":
        axis = next(f for f in solid.Origin.OriginFeatures if f.Name.startswith("X_Axis"))
    else:
        axis = solid.newObject("PartDesign::Line", "Along")
        axis.Placement.Rotation = Rotation(Vector(0, 0, 1), Vector(1, 0, 0))
    document.recompute()
    body = adopt_body(joint, solid, top=designs().top_name(solid), centreline_of=axis)
    document.recompute()
    assert body.isValid(), body.getStatusString()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)


def test_what_cannot_be_adopted_is_refused(document):
    from freecad_neckfit.features.adopt import adopt_body, adopt_plate
    from freecad_neckfit.job.errors import BadInput

    solid, line, joint = made(document, "padded")
    for call, words in (
        (lambda: adopt_body(joint, None), "Nothing is picked"),
        (lambda: adopt_body(joint, joint.Body), "is NeckFit's own"),
        (lambda: adopt_body(joint, line), "has no solid"),
        (lambda: adopt_body(joint, solid, top="Face999", centreline="Edge1"), "Face999 is no face"),
        (lambda: adopt_body(joint, solid, top="Face1"), "centreline is not picked"),
        (lambda: adopt_body(joint, solid, frame=[1.0]), "6 numbers"),
        (lambda: adopt_plate(joint, line), "has no solid"),
    ):
        with pytest.raises(BadInput, match=words):
            call()


def test_a_pocket_that_is_there_is_not_routed_over(document):
    from freecad_neckfit.features.adopt import adopt_body

    solid, line, joint = made(document, "pocketed")
    body = adopt_body(joint, solid, top=designs().top_name(solid), centreline="Edge1",
                      centreline_of=line)  # fmt: skip
    document.recompute()
    assert not body.isValid()
    assert "has a neck pocket already" in body.getStatusString()


def test_a_plate_is_taken_where_it_lies(document):
    import Part

    from freecad_neckfit.features.adopt import adopt_plate

    solid, line, joint = made(document, "padded")
    joint.CoverPlate.Cover = "surround"
    adopt(joint, solid, line, "padded")
    before = findings(joint)
    plate = document.addObject("Part::Feature", "Cover")
    plate.Shape = Part.getShape(document.SeatedPlate)
    outer = designs().nest(document, solid, line)
    plate.Placement = outer.getGlobalPlacement().multiply(
        outer.Group[0].Placement
    ).multiply(plate.Placement)  # fmt: skip
    document.recompute()
    adopt_plate(joint, plate)
    document.recompute()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)
    assert not plate.Visibility


def test_a_plate_s_thickness_is_measured(document):
    import Part

    from freecad_neckfit.features.adopt import adopt_plate

    joint = made(document, "padded")[2]
    joint.CoverPlate.Cover, joint.CoverPlate.Thickness = "surround", 1.9
    document.recompute()
    plate = document.addObject("Part::Feature", "Cover")
    plate.Shape = Part.getShape(document.SeatedPlate)
    joint.CoverPlate.Thickness = 2.6
    adopt_plate(joint, plate)
    document.recompute()
    assert joint.CoverPlate.isValid(), joint.CoverPlate.getStatusString()
    assert joint.CoverPlate.Thickness.Value == pytest.approx(1.9, abs=SAME)
    assert list(joint.CoverPlate.Measured) == ["plate.thickness"]
    ball = Part.makeSphere(30.0)
    plate.Shape = ball
    document.recompute()
    assert joint.CoverPlate.Thickness.Value == pytest.approx(1.9, abs=SAME)
    assert not joint.CoverPlate.Measured
    assert "must be stated" in joint.CoverPlate.Remarks[0]


def test_a_neck_of_one_solid_is_taken_by_its_frame(document):
    from FreeCAD import Placement, Rotation, Vector

    from freecad_neckfit.features.adopt import adopt_neck
    from tests.solids.test_build_given import wood_of

    joint = made(document, "padded")[2]
    joint.Neck.ShaftThickness = 22.0
    document.recompute()
    before = findings(joint)
    neck = document.addObject("Part::Feature", "Supplied")
    neck.Shape = wood_of({"neck.shaft_thickness": 22.0}, "heel", "shaft", "fretboard")
    frame = Placement(Vector(10, 20, 30), Rotation(40, 10, 5))
    neck.Shape = neck.Shape.transformed(frame.toMatrix(), copy=True)
    designs().turn(neck)
    document.recompute()
    adopt_neck(joint, neck, frame=[*frame.Base, *frame.Rotation.getYawPitchRoll()])
    document.recompute()
    assert joint.isValid(), joint.getStatusString()
    same(before, findings(joint), SAME)

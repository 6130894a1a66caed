"""A wrong value leaves the last good shape, marks the object and says why in one sentence."""

import pytest

pytestmark = pytest.mark.freecad


def put(joint, link, name, value):
    obj = joint if link is None else getattr(joint, link)
    if isinstance(value, str) and value.startswith("="):
        obj.setExpression(name, value[1:])
    else:
        setattr(obj, name, value)
    joint.Document.recompute()
    return obj


@pytest.mark.parametrize(
    ("link", "name", "value", "sentence"),
    [
        ("Pocket", "Depth", 99,
         "Pocket.Depth: 99.0 mm lies above what is permitted; state 3.00 mm to 60.00 mm."),
        ("Pocket", "Depth", -1,
         "Pocket.Depth: -1.0 mm lies below what is permitted; state 3.00 mm to 60.00 mm."),
        ("Pocket", "Depth", float("nan"),
         "Pocket.Depth: nan is not a finite number; write a length such as 15.875 mm or 5/8 in."),
        ("Pocket", "Depth", "=5 kg",
         "Pocket.Depth: 5 kg is no length; give it a value such as 15.875 mm or 5/8 in."),
        ("Pocket", "Depth", "=3/4 in",
         "Pocket.Depth: 0.0295276 1/mm is no length; give it a value such as 15.875 mm or 5/8 in."),
        ("Pocket", "Angle", "=5 mm",
         "Pocket.Angle: 5 mm is no angle; give it a value such as 1.5 deg or 1°30'."),
        ("Neck", "Frets", 50,
         "Neck.Frets: 50 lies above what is permitted; state 12 to 30."),
        ("Neck", "StringsPitch", [440.0] * 3,
         "Neck.StringsPitch: 3 values for 6 strings, treble first; state 6."),
        ("Neck", "StringsPitch", [],
         "Neck.StringsPitch: 0 values for 6 strings, treble first; state 6."),
        ("Body", "OutlinePoints", [(0, 0, 0)],
         "Body.OutlinePoints: a list of 1 points encloses nothing; write three points or more."),
        ("Hardware", "ScrewX", [-10.0],
         "Hardware.ScrewX: 1 values for 4 rows of screw; state 4."),
        (None, "ClimateHumidityDry", 120.0,
         "Joint.ClimateHumidityDry: 120.0 % lies above what is permitted; state 0.0 % to 100.0 %."),
        (None, "JobNote", "two\nlines",
         ('Joint.JobNote: "two\\u000alines" has a line break or control character; write it in one '
          "line.")),
    ],
)  # fmt: skip
def test_the_object_is_marked_and_says_why(joint, link, name, value, sentence):
    shapes = shown(joint)
    obj = put(joint, link, name, value)
    assert not obj.isValid()
    assert obj.getStatusString() == sentence
    assert shown(joint) == shapes


def shown(joint):
    from freecad_neckfit.features.make import parts_of

    return [None if p.Shape.isNull() else p.Shape.hashCode() for p in parts_of(joint)]


def test_an_inch_joint_is_told_in_inches(joint):
    joint.JobUnits = "inch"
    pocket = put(joint, "Pocket", "Depth", 99)
    assert pocket.getStatusString() == (
        "Pocket.Depth: 3.8976 in lies above what is permitted; state 3.00 mm to 60.00 mm "
        "(0.118 in to 2.362 in)."
    )


def test_what_cannot_exist_together_marks_the_joint(joint):
    put(joint, "Body", "Thickness", 20)
    before = shown(joint)
    put(joint, "Pocket", "Depth", 25)
    assert joint.Pocket.isValid()
    assert not joint.isValid()
    assert joint.getStatusString().startswith("Joint: pocket.depth")
    assert shown(joint) == before


def test_a_mended_value_builds_again(joint):
    before = shown(joint)
    put(joint, "Pocket", "Depth", 99)
    put(joint, "Pocket", "Depth", 18)
    assert joint.isValid()
    assert joint.Pocket.isValid()
    assert shown(joint)[0] != before[0]


def test_a_joint_without_a_neck_says_so(joint):
    joint.Neck = None
    joint.Document.recompute()
    assert joint.getStatusString() == "Joint.Neck links nothing; link a neck."
    joint.Neck = joint.Pocket
    joint.Document.recompute()
    assert joint.getStatusString() == "Joint.Neck links Pocket, which is no neck; link one."


@pytest.mark.parametrize("undone", [False, True])
def test_a_property_takes_lengths_again_after_a_wrong_expression(joint, undone):
    document, pocket = joint.Document, joint.Pocket
    document.openTransaction("drive")
    put(joint, "Pocket", "Depth", "=5 kg")
    document.commitTransaction()
    if undone:
        document.undo()
        document.recompute()
        assert pocket.Depth.Value == 15.875
    else:
        pocket.setExpression("Depth", None)
    pocket.Depth = "3/4 in"
    document.recompute()
    assert pocket.isValid()
    assert pocket.Depth.Value == pytest.approx(19.05, abs=1e-12)


def test_expressions_and_sheets_drive_properties(joint):
    sheet = joint.Document.addObject("Spreadsheet::Sheet", "Sheet")
    sheet.set("A1", "=17 mm")
    put(joint, "Pocket", "Depth", "=Sheet.A1 + 1 mm")
    floor = joint.Document.RoutedBody.Shape.Volume
    assert joint.Pocket.Depth.Value == pytest.approx(18.0)
    sheet.set("A1", "=19 mm")
    joint.Document.recompute()
    assert joint.Pocket.Depth.Value == pytest.approx(20.0)
    taken = floor - joint.Document.RoutedBody.Shape.Volume
    assert taken == pytest.approx(2.0 * 76 * 56, rel=0.03)  # 2 mm more over the whole floor


def test_a_worked_out_value_follows_until_it_is_stated(joint):
    neck = joint.Neck
    assert neck.getEditorMode("Overhang") == ["ReadOnly"]
    before = neck.Overhang.Value
    neck.EndMargin = neck.EndMargin.Value + 1
    joint.Document.recompute()
    assert neck.Overhang.Value == pytest.approx(before + 1)
    neck.Overhang = 9
    assert neck.OverhangStated
    neck.EndMargin = 8
    joint.Document.recompute()
    assert neck.Overhang.Value == 9
    assert neck.getEditorMode("Overhang") == []
    neck.OverhangStated = False
    joint.Document.recompute()
    assert neck.Overhang.Value == pytest.approx(before + 2.5)

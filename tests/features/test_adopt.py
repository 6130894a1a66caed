"""Bodies that the designer has already become the body of a joint, untouched."""

import pytest

pytestmark = pytest.mark.freecad

SAME = 1e-6
AGREE = 0.005
CLOSED_ONLY = ("wood.wall_treble", "wood.wall_bass", "wood.web")
"""Their closed forms are bounds of the workbench's own outline, and not for comparing."""


def designs():
    from tests.features import designs

    return designs


DESIGNS = ("padded", "carved", "pocketed")


def made(document, name):
    """The design, and the joint that is stated beside it."""
    from freecad_neckfit.features.make import make_joint

    solid, line = getattr(designs(), name)(document)
    joint = make_joint(document)
    document.recompute()
    return solid, line, joint


def adopt(joint, solid, line, name, **more):
    from freecad_neckfit.features.adopt import adopt_body

    if name == "carved":
        joint.Body.Top = "carved"
    body = adopt_body(
        joint, solid, top=designs().top_name(solid), centreline="Edge1", centreline_of=line,
        has_pocket=name == "pocketed", **more,
    )  # fmt: skip
    joint.Document.recompute()
    assert body.isValid(), body.getStatusString()
    assert joint.isValid(), joint.getStatusString()
    return body


def findings(joint):
    from freecad_neckfit.features.run_check import check, findings_of

    found = check(joint)
    joint.Document.recompute()
    assert found.isValid()
    return {f["id"]: f for f in findings_of(found)}


def same(one, other, within, *, skipped=()):
    assert set(one) == set(other)
    for key, finding in one.items():
        twin = other[key]
        assert twin["state"] == finding["state"], (key, finding["reason"], twin["reason"])
        for way in ("solids", "closed_form"):
            if finding.get(way) is None or (way == "closed_form" and key in skipped):
                continue
            assert twin[way]["value"] == pytest.approx(finding[way]["value"], abs=within), key


def parametric(name):
    from freecad_neckfit.run.chain import check_values

    stated = getattr(designs(), name.upper())
    return check_values(stated)


@pytest.fixture(scope="module")
def plain():
    """Findings on each design as it lies, and what was stated then."""
    import FreeCAD

    kept = {}
    for name in DESIGNS:
        document = FreeCAD.newDocument(f"Plain{name}", hidden=True)
        solid, line, joint = made(document, name)
        adopt(joint, solid, line, name)
        kept[name] = findings(joint)
        FreeCAD.closeDocument(document.Name)
    return kept


@pytest.mark.parametrize("name", DESIGNS)
def test_findings_are_those_of_the_parametric_joint(plain, name):
    result = parametric(name)
    for finding in result.findings:
        twin = plain[name][finding.id]
        assert twin["state"] == finding.state.value, (finding.id, twin["reason"])
        if finding.solids is not None:
            assert twin["solids"]["value"] == pytest.approx(finding.solids.value, abs=AGREE), (
                finding.id
            )
        if finding.closed_form is not None and finding.id not in CLOSED_ONLY:
            assert twin["closed_form"]["value"] == pytest.approx(
                finding.closed_form.value, abs=AGREE
            ), finding.id


@pytest.mark.parametrize("name", DESIGNS)
def test_turned_and_nested_the_findings_are_the_same(document, plain, name):
    solid, line, joint = made(document, name)
    designs().turn(solid, line)
    designs().nest(document, solid, line)
    document.recompute()
    adopt(joint, solid, line, name)
    same(plain[name], findings(joint), SAME)


@pytest.mark.parametrize("name", DESIGNS)
def test_the_designer_s_history_is_not_touched(document, name):
    solid, line, joint = made(document, name)
    designs().nest(document, solid, line)
    document.recompute()
    before = designs().history(document)
    adopt(joint, solid, line, name)
    findings(joint)
    after = designs().history(document)
    assert after == before
    assert not solid.Visibility


@pytest.mark.parametrize("name", DESIGNS)
def test_the_result_lies_on_the_original(document, name):
    import Part

    solid, line, joint = made(document, name)
    designs().turn(solid, line)
    designs().nest(document, solid, line)
    document.recompute()
    adopt(joint, solid, line, name)
    shown = Part.getShape(document.RoutedBody)
    there = Part.getShape(solid)
    there.Placement = solid.getGlobalPlacement().multiply(
        solid.Placement.inverse()
    ).multiply(there.Placement)  # fmt: skip
    assert shown.common(there).Volume == pytest.approx(shown.Volume, rel=1e-6)
    assert shown.Volume < there.Volume * (1 + 1e-9)


def test_a_free_form_outline_is_read_and_checked_as_it_lies_and_turned(document):
    solid, line, joint = made(document, "free_form")
    body = adopt(joint, solid, line, "free_form")
    assert body.Thickness.Value == pytest.approx(44.45, abs=SAME)
    length = joint.Pocket.Length.Value
    curve = document.Outline.Shape.Edges[0].Curve
    for side, sign in (("Treble", 1), ("Bass", -1)):
        along = [0.5 - length + 0.5 * n for n in range(int(2 * length) - 1)]
        walls = [next_wall(curve, body.Frame.Base.x + x, sign) for x in along]
        assert getattr(body, f"Block{side}").Value == pytest.approx(min(walls), abs=0.01)
    as_it_lies = findings(joint)
    states = {f["state"] for f in as_it_lies.values()}
    assert "could not be checked" not in states
    designs().turn(solid, line)
    designs().nest(document, solid, line)
    document.recompute()
    same(as_it_lies, findings(joint), AGREE)


def next_wall(curve, x, sign):
    """Distance [mm] from the centreline to the curve beside the pocket at one X."""
    import FreeCAD
    import Part

    across = Part.LineSegment(FreeCAD.Vector(x, sign * 29, 0), FreeCAD.Vector(x, sign * 250, 0))
    return min(abs(p.Y) for p in curve.intersect(across))


def test_what_was_measured_is_stated_and_said_to_be(document):
    from freecad_neckfit.features.values import stated_of

    solid, line, joint = made(document, "pocketed")
    body = adopt(joint, solid, line, "pocketed")
    assert "body.thickness" in body.Measured
    assert stated_of(body)["body.outline"] == "section"
    assert body.Thickness.Value == pytest.approx(44.45, abs=SAME)
    assert "pocket.depth" in joint.Pocket.Measured
    assert joint.Pocket.Depth.Value == pytest.approx(17.2, abs=SAME)
    assert joint.Pocket.WidthEnd.Value == pytest.approx(56.2, abs=SAME)
    assert joint.Pocket.CornerRadius.Value == pytest.approx(3.2, abs=SAME)


def test_an_edit_of_the_model_is_followed(document):
    from freecad_neckfit.features.run_check import check_of

    solid, line, joint = made(document, "padded")
    body = adopt(joint, solid, line, "padded")
    before = findings(joint)
    document.Pad.Length = 48.0
    document.recompute()
    assert body.isValid(), body.getStatusString()
    assert body.Thickness.Value == pytest.approx(48.0, abs=SAME)
    assert check_of(joint).Stale
    after = findings(joint)
    floor = "wood.floor"
    assert after[floor]["value"] == pytest.approx(before[floor]["value"] + 3.55, abs=SAME)
    gap = "overhang.gap"
    assert after[gap]["value"] == pytest.approx(before[gap]["value"], abs=SAME)


def test_a_pocket_routed_deeper_is_read_anew(document):
    solid, line, joint = made(document, "pocketed")
    adopt(joint, solid, line, "pocketed")
    document.Routed.Length = 18.5
    document.recompute()
    assert joint.Pocket.Depth.Value == pytest.approx(18.5, abs=SAME)
    assert joint.isValid()


def test_a_deeper_pocket_may_be_tried_and_a_shallower_one_not(document):
    solid, line, joint = made(document, "pocketed")
    adopt(joint, solid, line, "pocketed")
    joint.Pocket.Depth = 19.0
    document.recompute()
    assert joint.isValid(), joint.getStatusString()
    assert findings(joint)["wood.floor"]["value"] == pytest.approx(44.45 - 19.0, abs=AGREE)
    joint.Pocket.Depth = 15.0
    document.recompute()
    assert not joint.isValid()
    assert "wood that is gone does not come back" in joint.getStatusString()


def test_a_face_that_is_gone_marks_the_object_and_asks(document):
    import Part

    solid, line, joint = made(document, "carved")
    body = adopt(joint, solid, line, "carved")
    shape = body.Adopted
    document.Under.Shape = Part.makeBox(500, 500, 50)  # the curved top is gone
    document.recompute()
    assert shape.isValid()
    assert not body.isValid()
    assert "top face" in body.getStatusString()
    assert "pick it again" in body.getStatusString()


def test_it_survives_save_and_reopen(document, reopened, tmp_path):
    solid, line, joint = made(document, "padded")
    designs().nest(document, solid, line)
    document.recompute()
    adopt(joint, solid, line, "padded")
    before = findings(joint)
    again = reopened(document, tmp_path / "adopted.FCStd")
    twin = again.getObject("Joint")
    from freecad_neckfit.features.run_check import check_of

    assert not check_of(twin).Stale
    assert again.Body.Adopted == again.Slab
    same(before, findings(twin), SAME)
    again.Pad.Length = 50.0
    again.recompute()
    assert again.Body.Thickness.Value == pytest.approx(50.0, abs=SAME)


def test_undo_takes_it_back(document):
    from freecad_neckfit.features.one_step import one_step

    solid, line, joint = made(document, "pocketed")
    with one_step(document, "Adopt"):
        adopt(joint, solid, line, "pocketed")
    assert joint.Pocket.Depth.Value == pytest.approx(17.2, abs=SAME)
    document.undo()
    document.recompute()
    assert joint.Body.Adopted is None
    assert solid.Visibility
    assert joint.Pocket.Depth.Value == pytest.approx(15.875)
    assert not joint.Pocket.Measured
    document.redo()
    document.recompute()
    assert joint.Body.Adopted == solid
    assert joint.Pocket.Depth.Value == pytest.approx(17.2, abs=SAME)


def test_letting_go_leaves_what_was_measured(document):
    from freecad_neckfit.features.adopt import let_go

    solid, line, joint = made(document, "pocketed")
    adopt(joint, solid, line, "pocketed")
    assert let_go(joint, "body") == solid
    document.recompute()
    assert solid.Visibility
    assert joint.isValid(), joint.getStatusString()
    assert joint.Pocket.Depth.Value == pytest.approx(17.2, abs=SAME)

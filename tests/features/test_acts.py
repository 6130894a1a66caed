"""What commands do, without a screen: building, checking again, comparing states."""

import FreeCAD
import pytest

from freecad_neckfit.features import acts, revisions
from freecad_neckfit.features.run_check import check, findings_of
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.run.compare import State, changed_findings, changed_values

pytestmark = pytest.mark.freecad


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Acts")
    yield made
    FreeCAD.closeDocument(made.Name)


def test_the_sample_is_built_and_checked(document):
    joint = acts.build_sample(document)
    assert document.Check.Verdict == "fits"
    assert document.Check.Joint is joint
    assert document.RoutedBody.Shape.Volume > 1e6


def test_a_new_joint_takes_the_shops_defaults_but_not_its_name(document, tmp_path):
    file = tmp_path / "shop.toml"
    file.write_text('[job]\nname = "ours"\n[pocket]\ndepth = "16.2 mm"\n[[option]]\nname = "x"\n')
    joint = acts.new_joint(document, str(file))
    assert joint.Pocket.Depth.Value == pytest.approx(16.2)
    assert (joint.Label, joint.JobName, joint.Options) == ("Joint", "", "")
    with pytest.raises(BadInput, match="no such file"):
        acts.new_joint(document, str(tmp_path / "none.toml"))


def test_a_joint_to_begin_with_fits(document):
    joint = acts.start_joint(document)
    assert (joint.Label, joint.JobName, joint.Options) == ("Joint", "", "")
    assert check(joint).Verdict == "fits"


def test_only_what_is_out_of_date_is_checked_again(document):
    one, two = acts.new_joint(document), acts.new_joint(document)
    fresh, stale = check(one), check(two)
    kept = fresh.Findings
    two.Pocket.Depth = 17.3
    assert acts.stale_checks(document) == [stale]
    assert acts.recheck(document) == [stale]
    assert fresh.Findings == kept
    assert not stale.Stale
    two.Pocket.Depth = -1
    with pytest.raises(BadInput, match="Depth"):
        acts.recheck(document)
    assert stale.Stale


def test_the_saved_state_is_read_from_the_file_and_nothing_changes(document, tmp_path):
    joint = acts.build_sample(document)
    with pytest.raises(BadInput, match="save it first"):
        revisions.saved(joint)
    document.saveAs(str(tmp_path / "saved.FCStd"))
    joint.Pocket.Depth = 18.288
    before, after = revisions.saved(joint), revisions.now(joint)
    assert [(d.key, d.before, d.after) for d in changed_values(before, after)] == [
        ("pocket.depth", 15.5, 18.288)
    ]
    changed = {d.key: d for d in changed_findings(before, after)}
    assert changed["overhang.gap"].before["state"] == "fits"
    assert changed["overhang.gap"].after["state"] == "interferes"
    assert "end.clearance" not in changed
    # The document's own findings are those of its last check.
    assert findings_of(document.Check)
    assert document.Check.Verdict == "fits"
    assert len(FreeCAD.listDocuments()) == 1
    assert FreeCAD.ActiveDocument.Name == document.Name


def test_what_was_measured_is_judged_in_place_of_what_is_stated(document):
    joint = acts.build_sample(document)
    nominal = revisions.now(joint)
    routed = revisions.measured(joint, {"pocket.depth": 15.9})
    gap = {d.key: d for d in changed_findings(nominal, routed)}["overhang.gap"]
    assert gap.before["value"] - gap.after["value"] == pytest.approx(0.4, abs=1e-6)
    assert joint.Pocket.Depth.Value == 15.5
    with pytest.raises(BadInput):
        revisions.measured(joint, {"pocket.depth": 50.0})


def test_a_finding_that_only_one_state_has_is_told():
    def finding(name, value):
        return {"id": name, "state": "fits", "value": value, "low": None, "high": None}

    one = State("a", {}, [finding("x", 1.0), finding("y", None)], "fits")
    two = State("b", {}, [finding("x", 1.0004), finding("z", 2.0)], "fits")
    told = changed_findings(one, two)
    assert [(d.key, d.before is None, d.after is None) for d in told] == [
        ("z", True, False), ("y", False, True),
    ]  # fmt: skip

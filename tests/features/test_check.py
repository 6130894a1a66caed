"""The check object keeps the findings and says when they are stale."""

import json

import pytest

pytestmark = pytest.mark.freecad


@pytest.fixture
def checked(joint):
    from freecad_neckfit.features.run_check import check

    return check(joint, solids=False)


def test_findings_are_those_of_the_chain(joint):
    from freecad_neckfit.features.run_check import check, findings_of
    from freecad_neckfit.run.chain import check_values
    from freecad_neckfit.run.record import record

    joint.Pocket.Depth = 18.288
    found = check(joint)
    (plain,) = record([check_values({"pocket.depth": 18.288}, name="Joint")], source="")["joints"]
    assert found.Verdict == plain["verdict"]
    assert findings_of(found) == json.loads(json.dumps(plain["findings"]))
    assert all(f["solids"] for f in findings_of(found) if f["id"] == "overhang.gap")


def test_a_change_makes_it_stale_at_once_and_its_reversal_fresh(joint, checked):
    assert not checked.Stale
    joint.Pocket.Depth = 17
    assert checked.Stale
    joint.Pocket.Depth = 15.875
    assert not checked.Stale
    joint.Hardware.Front = 190
    joint.Document.recompute()
    assert checked.Stale


def test_what_no_finding_depends_on_leaves_it_fresh(joint, checked):
    joint.JobNote = "for the shop"
    joint.Label = "Renamed"
    assert not checked.Stale


def test_a_limit_is_part_of_what_was_checked(joint, checked):
    joint.LimitsGapMin = 0.2
    assert checked.Stale


def test_a_driven_change_makes_it_stale(joint, checked):
    joint.Pocket.setExpression("Depth", "17 mm")
    joint.Document.recompute()
    assert checked.Stale


def test_another_pocket_makes_it_stale_and_none_too(joint, checked):
    first, other = joint.Pocket, joint.Document.copyObject(joint.Pocket)
    other.Depth = 17
    joint.Pocket = other
    assert checked.Stale
    joint.Pocket = first
    assert not checked.Stale
    joint.Document.removeObject(first.Name)
    assert checked.Stale
    joint.Document.recompute()
    assert checked.Stale


def test_a_worked_out_value_shown_anew_changes_nothing(joint, checked):
    joint.Neck.touch()
    joint.Document.recompute()
    assert not checked.Stale


def test_a_refused_value_makes_it_stale_and_keeps_the_findings(joint, checked):
    from freecad_neckfit.features.run_check import check
    from freecad_neckfit.job.errors import BadInput

    before = checked.Findings
    joint.Pocket.Depth = 99
    joint.Document.recompute()
    assert checked.Stale
    with pytest.raises(BadInput, match=r"Pocket\.Depth: 99\.0 mm lies above"):
        check(joint, solids=False)
    assert checked.Findings == before


def test_checking_again_uses_the_same_object(joint, checked):
    from freecad_neckfit.features.run_check import check

    joint.Pocket.Depth = 17
    assert check(joint, solids=False) is checked
    assert not checked.Stale


def test_undo_and_redo_bring_findings_and_freshness_back(joint, checked):
    from freecad_neckfit.features.one_step import one_step
    from freecad_neckfit.features.run_check import check

    document, first = joint.Document, checked.Findings
    with one_step(document, "Deepen"):
        joint.Pocket.Depth = 18.288
        document.recompute()
    with one_step(document, "Check"):
        check(joint, solids=False)
        document.recompute()
    second = checked.Findings
    assert second != first
    document.undo()
    assert (checked.Findings == first, checked.Stale) == (True, True)
    document.undo()
    document.recompute()
    assert (checked.Findings == first, checked.Stale) == (True, False)
    document.redo()
    assert (checked.Findings == first, checked.Stale) == (True, True)
    document.redo()
    document.recompute()
    assert (checked.Findings == second, checked.Stale) == (True, False)


def test_it_keeps_what_the_screen_draws_and_drops_it_when_the_joint_fits(joint):
    from freecad_neckfit.features.run_check import check

    joint.Pocket.Depth, joint.CoverPlate.Cover = 17.5, "surround"
    found = check(joint)
    box, gap_map = found.Interference.BoundBox, json.loads(found.GapMap)
    # The plate's top stands at 0.25 + 2.4, the overhang's underside at 18.6 - 17.5.
    assert (box.ZMin, box.ZMax) == pytest.approx((1.1, 2.65), abs=1e-6)
    rooms = [gap for row in gap_map["gap"] for gap in row if gap is not None]
    assert min(rooms) == pytest.approx(1.1 - 2.65, abs=1e-4)
    assert len(gap_map["gap"]) == len(gap_map["x"])

    joint.Pocket.Depth = 15.875
    joint.CoverPlate.Cover = "none"
    found = check(joint)
    assert found.Interference.isNull()
    assert json.loads(found.GapMap)["gap"]

    found = check(joint, solids=False)
    assert found.GapMap == ""

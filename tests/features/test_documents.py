"""Saving, opening, copying, undoing: nothing is lost, and nothing stale is shown as fresh."""

import pytest

from freecad_neckfit.features import roles
from tests.features.held import digest

pytestmark = pytest.mark.freecad


def test_a_joint_survives_save_and_open(joint, reopened, tmp_path):
    from freecad_neckfit.features.run_check import check

    joint.Pocket.setExpression("Depth", "16 mm + 2.288 mm")
    joint.CoverPlate.Cover = "surround"
    joint.Neck.Overhang = 1 / 3 + 9
    joint.ClimateTemperature = 0.1 + 0.2  # a document keeps 16 decimals: not this last bit
    joint.Document.recompute()
    found = check(joint, solids=False)
    before, name, kept = digest(joint.Document), joint.Name, found.Findings
    volume = joint.Document.SeatedPlate.Shape.Volume
    again = reopened(joint.Document, tmp_path / "joint.FCStd")
    assert digest(again) == before
    assert [o.Name for o in again.Objects if "Touched" in o.State] == []
    assert again.SeatedPlate.Shape.Volume == pytest.approx(volume, rel=1e-9)
    assert (again.Check.Findings, again.Check.Stale) == (kept, False)
    again.getObject(name).touch()
    again.recompute()
    assert all(o.isValid() for o in again.Objects)
    assert not again.Check.Stale
    again.Neck.Overhang = 9
    again.recompute()
    assert again.Check.Stale


def test_a_refused_value_is_still_refused_after_opening(joint, reopened, tmp_path):
    from freecad_neckfit.features.run_check import check

    check(joint, solids=False)
    joint.Pocket.Depth = 99
    joint.Document.recompute()
    again = reopened(joint.Document, tmp_path / "joint.FCStd")
    assert not again.Pocket.isValid()
    assert again.Check.Stale
    again.recompute()
    assert again.Pocket.getStatusString().startswith("Pocket.Depth: 99.0 mm lies above")
    assert again.RoutedBody.Shape.Volume > 0
    again.Pocket.Depth = 15.875
    again.recompute()
    assert all(o.isValid() for o in again.Objects)
    assert not again.Check.Stale


def test_a_copy_has_a_life_of_its_own(joint):
    document = joint.Document
    from freecad_neckfit.features.run_check import check

    check(joint, solids=False)
    copies = document.copyObject([o for o in document.Objects if roles.role_of(o)], True)
    (other,) = (o for o in copies if roles.role_of(o) == "joint")
    (found,) = (o for o in copies if roles.role_of(o) == "check")
    assert found.Joint is other
    assert other.Pocket is not joint.Pocket
    assert not found.Stale
    other.Pocket.Depth = 18
    document.recompute()
    assert (found.Stale, document.Check.Stale) == (True, False)
    assert joint.Pocket.Depth.Value == 15.875
    depths = [o.Shape.BoundBox.ZMin for o in document.Objects if o.Label.startswith("Seated neck")]
    assert depths == pytest.approx([-15.875, -18], abs=1e-6)


def test_making_a_joint_is_one_step(document):
    from freecad_neckfit.features.make import make_joint
    from freecad_neckfit.features.one_step import one_step

    with one_step(document, "Make a joint"):
        make_joint(document)
        document.recompute()
    made = digest(document)
    assert document.UndoNames == ["Make a joint"]
    document.undo()
    assert document.Objects == []
    document.redo()
    assert digest(document) == made
    document.recompute()
    assert all(o.isValid() for o in document.Objects)


def test_an_edit_is_one_step_and_brings_the_shape_back(joint):
    from freecad_neckfit.features.one_step import one_step

    document, before = joint.Document, digest(joint.Document)
    volume = document.RoutedBody.Shape.Volume
    with one_step(document, "Deepen"):
        joint.Pocket.Depth = 20
        joint.Neck.Overhang = 8
        document.recompute()
    document.undo()
    assert document.RoutedBody.Shape.Volume == pytest.approx(volume, rel=1e-12)
    document.recompute()
    assert digest(document) == before
    document.redo()
    document.recompute()
    assert (joint.Pocket.Depth.Value, joint.Neck.Overhang.Value) == (20, 8)
    assert document.RoutedBody.Shape.Volume < volume - 4 * 76 * 50


def test_an_exception_undoes_the_step(joint):
    from freecad_neckfit.features.one_step import one_step

    before = digest(joint.Document)

    def deepen_and_fail():
        with one_step(joint.Document, "Deepen"):
            joint.Pocket.Depth = 20
            raise RuntimeError

    with pytest.raises(RuntimeError):
        deepen_and_fail()
    joint.Document.recompute()
    assert digest(joint.Document) == before
    assert joint.Document.UndoNames == []

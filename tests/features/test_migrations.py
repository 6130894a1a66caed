"""Documents of older versions are brought up to date step by step."""

import shutil
from pathlib import Path

import pytest

from freecad_neckfit.job.resolve import complete

pytestmark = pytest.mark.freecad

SAVED = Path(__file__).parent / "fixtures" / "joint_schema_1.FCStd"
"""Saved with FreeCAD 0.20: a deeper pocket with a plate, checked, and a stale edit after that."""


@pytest.fixture
def saved(tmp_path):
    import FreeCAD

    copy = shutil.copy(SAVED, tmp_path)  # opening and saving must not touch what is kept
    document = FreeCAD.openDocument(str(copy), hidden=True)
    yield document
    FreeCAD.closeDocument(document.Name)


def test_the_document_of_the_first_schema_opens_and_lives(saved):
    from freecad_neckfit.features.gather import joint_stated

    assert [type(o.Proxy).__name__ for o in saved.Objects].count("PartProxy") == 7
    assert {o.SchemaVersion for o in saved.Objects} == {1}
    assert joint_stated(saved.Joint) == {
        "pocket.depth": 18.288,
        "neck.overhang": 9.0,
        "plate.cover": "surround",
        "limits.gap_min": 0.2,
    }
    assert saved.SeatedPlate.Shape.Volume > 0
    for obj in saved.Objects:
        obj.touch()
    saved.recompute()
    assert all(o.isValid() for o in saved.Objects)


def test_its_findings_are_kept_and_known_to_be_stale(saved):
    from freecad_neckfit.features.run_check import findings_of

    (gap,) = (f for f in findings_of(saved.Check) if f["id"] == "overhang.gap")
    assert gap["state"] == "interferes"
    assert saved.Check.Stale
    saved.Joint.LimitsGapMin = 0.15  # as it was checked
    assert not saved.Check.Stale


def test_steps_run_in_order_and_once(joint, monkeypatch):
    from freecad_neckfit.features import migrations

    ran = []
    monkeypatch.setattr(migrations, "CURRENT", 4)
    steps = {n: lambda obj, n=n: ran.append((n, obj.Name)) for n in (1, 2, 3)}
    monkeypatch.setattr(migrations, "STEPS", steps)
    joint.Pocket.SchemaVersion = 2
    migrations.bring_up_to_date(joint.Pocket)
    migrations.bring_up_to_date(joint.Pocket)
    assert ran == [(2, "Pocket"), (3, "Pocket")]
    assert joint.Pocket.SchemaVersion == 4


def test_a_parameter_declared_since_is_added_at_its_default(joint, tmp_path, reopened):
    pocket = joint.Pocket
    pocket.removeProperty("FloorFillet")
    pocket.removeProperty("EndRadius")
    again = reopened(joint.Document, tmp_path / "older.FCStd")
    assert again.Pocket.FloorFillet.Value == 0.0
    again.recompute()
    assert again.Pocket.EndRadius.Value == pytest.approx(complete({})["pocket.end_radius"])
    assert not again.Pocket.EndRadiusStated


def test_what_a_newer_version_made_is_left_alone_and_says_so(joint):
    from freecad_neckfit.features.migrations import bring_up_to_date

    joint.Pocket.SchemaVersion = 99
    bring_up_to_date(joint.Pocket)
    joint.touch()
    joint.Document.recompute()
    assert joint.Pocket.SchemaVersion == 99
    assert joint.getStatusString() == (
        "Pocket was made by a newer NeckFit (schema 99, this one knows up to 1); update NeckFit."
    )

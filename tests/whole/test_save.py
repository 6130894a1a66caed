"""What is saved is what was built, and a failure leaves nothing behind."""

# ruff: noqa: E402  (imported after it is known that FreeCAD is there)
import re

import pytest

FreeCAD = pytest.importorskip("FreeCAD")

import Part

from freecad_neckfit.job.errors import BadInput, KernelFailure
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.run import save as saving
from freecad_neckfit.solids.build.assembly import build

pytestmark = pytest.mark.freecad


@pytest.fixture(scope="module")
def joint():
    values = complete({
        "plate.cover": "surround", "pickup_neck.fitted": True, "neck.binding_width": 1.5,
        "neck.radius_end": 400.0, "pocket.angle": 1.0, "body.top": "carved",
    })  # fmt: skip
    return build(values)


def test_the_document_opens_again_with_every_part_in_its_group(joint, tmp_path):
    path = tmp_path / "joint.FCStd"
    assert saving.save(joint, fcstd=path) == (path,)
    document = FreeCAD.openDocument(str(path), hidden=True)
    try:
        features = {o.Name: o for o in document.Objects if o.isDerivedFrom("Part::Feature")}
        assert set(features) == set(joint.parts)
        for name, feature in features.items():
            assert feature.Label == name
            assert feature.Shape.Volume == pytest.approx(joint.parts[name].Volume, rel=1e-6)
            assert feature.Shape.isValid()
        groups = {
            o.Label: {m.Name for m in o.Group} for o in document.Objects if hasattr(o, "Group")
        }
        assert groups["Neck"] == {
            "heel",
            "shaft",
            "fretboard",
            "binding_treble",
            "binding_bass",
            "frets",
        }
        assert sum(len(members) for members in groups.values()) == len(features)
    finally:
        FreeCAD.closeDocument(document.Name)


def test_the_step_file_reads_back_with_names(joint, tmp_path):
    path = tmp_path / "joint.step"
    saving.save(joint, step=path)
    shape = Part.read(str(path))
    expected = [s for part in joint.parts.values() for s in part.Solids]
    assert len(shape.Solids) == len(expected)
    volumes = sorted(s.Volume for s in shape.Solids)
    assert volumes == pytest.approx(sorted(s.Volume for s in expected), rel=1e-6)
    named = set(re.findall(r"PRODUCT\('([^']*)'", path.read_text(encoding="utf-8")))
    assert set(joint.parts) <= named


def test_nothing_is_left_beside_the_files(joint, tmp_path):
    saving.save(joint, fcstd=tmp_path / "a.FCStd", step=tmp_path / "a.step")
    assert sorted(p.name for p in tmp_path.iterdir()) == ["a.FCStd", "a.step"]


def test_no_document_stays_open_and_the_active_one_stays_active(joint, tmp_path):
    mine = FreeCAD.newDocument("Mine", hidden=True)
    try:
        before = set(FreeCAD.listDocuments())
        saving.save(joint, step=tmp_path / "a.step")
        assert set(FreeCAD.listDocuments()) == before
        assert FreeCAD.ActiveDocument.Name == mine.Name
    finally:
        FreeCAD.closeDocument(mine.Name)


def test_a_folder_that_is_missing_is_told_in_one_sentence(joint, tmp_path):
    with pytest.raises(BadInput, match="cannot be written") as refusal:
        saving.save(joint, fcstd=tmp_path / "none" / "a.FCStd")
    assert "\n" not in str(refusal.value)


@pytest.mark.parametrize("kind", ["fcstd", "step"])
def test_a_failure_half_way_leaves_the_old_file_alone(joint, tmp_path, monkeypatch, kind):
    path = tmp_path / f"a.{kind}"
    path.write_text("old")

    def half(draft, path):
        draft.write_bytes(draft.read_bytes()[:1000])
        raise KernelFailure("cut off")

    monkeypatch.setattr(saving, "_check_document" if kind == "fcstd" else "_check_step", half)
    with pytest.raises(KernelFailure):
        saving.save(joint, **{kind: path})
    assert path.read_text() == "old"
    assert [p.name for p in tmp_path.iterdir()] == [path.name]


def test_a_file_that_was_cut_off_is_seen(joint, tmp_path):
    whole = tmp_path / "a.step"
    saving.save(joint, step=whole, fcstd=tmp_path / "a.FCStd")
    short = tmp_path / "b"
    short.write_bytes(whole.read_bytes()[:-300])
    with pytest.raises(KernelFailure, match="no whole STEP file"):
        saving._check_step(short, short)
    short.write_bytes((tmp_path / "a.FCStd").read_bytes()[:-300])
    with pytest.raises(KernelFailure, match="wrote no document"):
        saving._check_document(short, short)

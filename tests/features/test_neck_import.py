"""A neck from a file becomes a joint's neck, as one step that can be undone and is kept."""

import sys
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parents[1] / "solids"))

from necks_in_files import sound_necks, unpacked

from freecad_neckfit.job.errors import BadInput

pytestmark = pytest.mark.freecad

TRUTH = {r["kind"]: r["truth"] for r in sound_necks()}
MADE = {r["kind"]: r["made"] for r in sound_necks()}
WIDE = "neck.heel_width_end", 57.05
"""A question that the crooked heel asks, and what a designer answers."""


def imported(joint, file, **more):
    from freecad_neckfit.features.neck_import import import_neck

    found = import_neck(joint, str(file), **more)
    joint.Document.recompute()
    assert joint.isValid(), joint.getStatusString()
    return found


def bare(kind):
    """Frets and scale, which a fretboard without frets does not show."""
    return {"neck.frets": MADE[kind]["N"], "neck.scale": MADE[kind]["scale"]}


def findings(joint):
    from freecad_neckfit.features.run_check import check, findings_of

    return {f["id"]: f for f in findings_of(check(joint))}


OF_FREECAD = ("Shape", "ShapeMaterial", "_ElementMapVersion")
"""Properties that have no text to compare, or that FreeCAD keeps for itself."""


def held(document):
    return {
        f"{o.Name}.{p}": str(getattr(o, p))
        for o in document.Objects
        for p in o.PropertiesList
        if p not in OF_FREECAD
    }


@pytest.fixture
def room(joint):
    """A pocket in which any of the necks finds room."""
    joint.Pocket.WidthEnd, joint.Pocket.WidthMouth = 60, 60
    joint.Document.recompute()
    return joint


@pytest.mark.parametrize("kind", ["cylinder", "bound", "screws", "round-end"])
def test_the_joint_states_the_neck_and_judges_its_solid(room, kind, tmp_path):
    from freecad_neckfit.features.gather import joint_stated
    from freecad_neckfit.job.joint import Job
    from freecad_neckfit.run.neck_file import read_neck_file
    from freecad_neckfit.run.neck_judged import judge_neck, recognise_for

    beside = {k: v for k, v in joint_stated(room).items() if not k.startswith("neck.")}
    file = unpacked(f"{kind}.step.xz", tmp_path)
    typed = {} if kind == "bound" else bare(kind)
    solid = imported(room, file, answers=typed)
    stated = joint_stated(room)
    for key, value in TRUTH[kind].items():
        if key in stated and isinstance(value, float):
            assert stated[key] == pytest.approx(value, abs=0.01), key
    assert room.Neck.Adopted is solid
    assert not solid.Visibility
    for key, value in typed.items():
        assert stated[key] == value
    read = recognise_for(read_neck_file(file), beside | typed)
    known = {f.id: f for f in judge_neck(read, Job.of("x", beside, source="x")).findings}
    found = findings(room)
    assert set(found) == set(known)
    measured = [i for i, f in known.items() if f.solids is not None and f.margin is not None]
    assert len(measured) > 10
    for i in measured:
        assert found[i]["state"] == known[i].state.value, i
        assert found[i]["margin"] == pytest.approx(known[i].margin, abs=0.001), i


def test_it_is_one_step_of_undo(room, tmp_path):
    from freecad_neckfit.features.one_step import one_step

    document = room.Document
    before = held(document)
    with one_step(document, "Import a neck"):
        imported(room, unpacked("cylinder.step.xz", tmp_path), answers=bare("cylinder"))
    after = held(document)
    assert after != before
    document.undo()
    document.recompute()
    assert held(document) == before
    document.redo()
    document.recompute()
    assert held(document) == after


def test_reopened_it_is_judged_the_same(room, reopened, tmp_path):
    imported(room, unpacked("bound.step.xz", tmp_path))
    first = findings(room)
    again = reopened(room.Document, tmp_path / "joint.FCStd")
    again.recompute()
    assert {i: f["state"] for i, f in findings(again.Joint).items()} == {
        i: f["state"] for i, f in first.items()
    }


def test_a_second_neck_takes_the_place_of_the_first(room, tmp_path):
    imported(room, unpacked("bound.step.xz", tmp_path))
    assert room.Neck.Binding.Value > 1
    second = imported(room, unpacked("cylinder.step.xz", tmp_path), answers=bare("cylinder"))
    assert room.Neck.Adopted is second
    assert [o.Name for o in room.Document.Objects if hasattr(o, "NeckSolids")] == [second.Name]
    assert room.Neck.Binding.Value == 0


def test_a_mesh_states_values_and_leaves_no_solid(room, tmp_path):
    assert imported(room, unpacked("screws.stl.xz", tmp_path)) is None
    assert room.Neck.Adopted is None
    truth = TRUTH["screws"]["neck.heel_width_end"]
    assert room.Neck.HeelWidthEnd.Value == pytest.approx(truth, abs=0.1)


def test_a_question_must_be_answered(room, tmp_path):
    file = unpacked("crooked-heel.step.xz", tmp_path)
    before = held(room.Document)
    with pytest.raises(BadInput, match=r"neck.heel_width_end is open"):
        imported(room, file)
    assert held(room.Document) == before
    # What the joint says of its present neck is no answer.
    room.Neck.HeelWidthEnd = 55.0
    with pytest.raises(BadInput, match="is open"):
        imported(room, file)
    imported(room, file, answers=dict([WIDE]))
    assert room.Neck.HeelWidthEnd.Value == WIDE[1]
    assert "neck.heel_width_end" not in room.Neck.Measured


def test_what_was_recognised_can_be_taken_as_it_is(room, tmp_path):
    imported(room, unpacked("crooked-heel.step.xz", tmp_path), accepted=["neck.heel_width_end"])
    assert room.Neck.HeelWidthEnd.Value == pytest.approx(57.044, abs=0.001)


def test_what_is_no_neck_changes_nothing(room, tmp_path):
    before = held(room.Document)
    with pytest.raises(BadInput, match="not a neck"):
        imported(room, unpacked("stick.step.xz", tmp_path))
    assert held(room.Document) == before


def test_a_file_is_read_once_and_again_when_it_changed(tmp_path):
    from freecad_neckfit.features.neck_import import read_neck

    file = unpacked("cylinder.step.xz", tmp_path)
    first = read_neck(str(file))
    assert read_neck(str(file)) is first
    file.write_bytes(file.read_bytes() + b"\n")
    assert read_neck(str(file)) is not first

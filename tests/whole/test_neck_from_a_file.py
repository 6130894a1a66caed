"""A neck from somebody's file, recognised, seated by a job and judged on its own solid."""

import sys
import tomllib
from pathlib import Path

import pytest

sys.path.insert(0, str(Path(__file__).parents[1] / "solids"))

from necks_in_files import FILES, sound_necks, unpacked

from freecad_neckfit.run.neck_table import part_text

pytestmark = pytest.mark.freecad

RECORDS = {r["kind"]: r for r in sound_necks()}
JUDGED = (
    "parts", "below", "coplanar", "cone", "left", "no-overhang", "splines", "splines-cone",
    "screws", "rod-slot", "rod-hole", "bound",
)  # fmt: skip


def read(file, folder, stated=None, **more):
    from freecad_neckfit.run.neck_file import read_neck_file
    from freecad_neckfit.run.neck_judged import recognise_for

    return recognise_for(read_neck_file(unpacked(file, folder)), stated or {}, **more)


def pocket_for(found):
    """A pocket cut to the neck, 0.1 mm wider on each side, and a bridge where its scale lands."""
    v = found.stated
    scale = v.get("neck.scale", 647.7)
    depth = v["neck.underside"] - 0.4 if "neck.underside" in v else 16.0
    return {
        "pocket.width_end": v["neck.heel_width_end"] + 0.2,
        "pocket.width_mouth": v["neck.heel_width_mouth"] + 0.2,
        "pocket.corner_radius": v.get("neck.heel_corner_radius", 3.0),
        "pocket.depth": depth, "seat.end_gap": 0.1,
        "neck.frets": v.get("neck.frets", 20),
        "bridge.front": scale - v["neck.nut_to_heel"] - 5.0,
    }  # fmt: skip


@pytest.mark.parametrize("kind", JUDGED)
def test_the_necks_own_solid_agrees_with_the_closed_forms(kind, tmp_path):
    from freecad_neckfit.job.joint import Job
    from freecad_neckfit.run.finding import State
    from freecad_neckfit.run.neck_judged import judge_neck, recognise_for

    part = read(RECORDS[kind]["files"][0], tmp_path).part
    again = recognise_for(part, pocket_for(recognise_for(part, {}).found))
    result = judge_neck(again, Job.of("joint", again.stated))
    doubts = [
        (f.id, f.state.value, f.reason)
        for f in result.findings
        if f.state in (State.DISAGREES, State.UNKNOWN)
    ]
    assert doubts == []
    side = result.find("side.treble")
    assert side.solids.value == pytest.approx(0.1, abs=0.005)
    if RECORDS[kind]["truth"]["neck.overhang"] > 0:
        gap = result.find("overhang.gap")
        assert gap.solids.value == pytest.approx(gap.closed_form.value, abs=0.005)


def test_a_neck_too_wide_for_its_pocket_is_found_on_its_own_solid(tmp_path):
    from freecad_neckfit.job.joint import Job
    from freecad_neckfit.run.chain import Verdict
    from freecad_neckfit.run.neck_judged import judge_neck

    found = read("parts.step.xz", tmp_path)
    stated = pocket_for(found.found)
    stated["pocket.width_end"] -= 0.6
    stated["pocket.width_mouth"] -= 0.6
    again = read("parts.step.xz", tmp_path, stated=stated)
    result = judge_neck(again, Job.of("joint", again.stated))
    assert result.verdict is Verdict.DOES_NOT_FIT
    assert result.find("side.treble").solids.value == pytest.approx(-0.2, abs=0.005)


def test_a_job_answers_what_a_value_can_answer(tmp_path):
    leaning = "leaning-board.step.xz"
    asked = read(leaning, tmp_path)
    assert [q.key for q in asked.open] == ["neck.height", "neck.underside"]
    # What a job states may be another neck's: it makes no board parallel.
    judged = read(leaning, tmp_path, stated={"neck.height": 24.9, "neck.underside": 18.5})
    assert [q.key for q in judged.open] == ["neck.height"]
    assert [q.key for q in judged.answered] == ["neck.underside"]
    assert judged.kept == ("neck.underside",)
    assert judged.stated["neck.height"] == asked.found["neck.height"]
    # What is answered for this very neck stands.
    answered = read(leaning, tmp_path, answers={"neck.height": 24.9, "neck.underside": 18.5})
    assert answered.is_settled
    assert answered.kept == ("neck.height", "neck.underside")
    assert answered.stated["neck.height"] == 24.9
    accepted = read(leaning, tmp_path, accepted=("neck.height", "neck.underside"))
    assert accepted.is_settled
    assert accepted.stated["neck.height"] == asked.found["neck.height"]


@pytest.mark.parametrize(("file", "key"), [
    ("crooked-heel.step.xz", "neck.heel_width_end"), ("leaning-board.step.xz", "neck.height"),
])  # fmt: skip
def test_no_number_of_a_job_makes_a_crooked_neck_straight(file, key, tmp_path):
    asked = read(file, tmp_path)
    assert key in {q.key for q in asked.open}
    judged = read(file, tmp_path, stated=dict(asked.stated))
    assert key in {q.key for q in judged.open}
    assert read(file, tmp_path, stated=dict(asked.stated), accepted=(key,)).open == tuple(
        q for q in judged.open if q.key != key
    )


def test_a_bare_board_that_the_jobs_frets_do_not_fill_asks_where_the_nut_is(tmp_path):
    bare = read("plain.step.xz", tmp_path)
    length = bare.stated["neck.nut_to_heel"] + bare.stated["neck.overhang"]
    scale = (length - 6.0) / (1 - 2 ** (-22 / 12))
    job = {"neck.scale": scale, "neck.frets": 22, "neck.end_margin": 6.0}
    assert not read("plain.step.xz", tmp_path, stated=job).open
    asked = read("plain.step.xz", tmp_path, stated=job | {"neck.end_margin": 11.0})
    assert [q.key for q in asked.open] == ["neck.nut_to_heel"]
    assert "5.00 mm" in asked.open[0].text


def test_a_part_file_leaves_out_what_is_open_and_says_so(tmp_path):
    text = part_text(read("leaning-board.step.xz", tmp_path))
    assert "\nheight =" not in text
    assert "\nunderside =" not in text
    assert "# open: neck.height: " in text
    tomllib.loads(text)


def test_a_neck_in_a_document_is_read_without_its_screen(tmp_path):
    """One solid in a moved container, a hidden one and a line beside it."""
    import FreeCAD
    import Part

    from freecad_neckfit.run.neck_file import read_neck_file

    shape = read_neck_file(unpacked("cylinder.brep.xz", tmp_path)).solids[0]
    document = FreeCAD.newDocument("Neck")
    try:
        neck = document.addObject("Part::Feature", "Neck")
        neck.Shape = shape
        container = document.addObject("App::Part", "Container")
        container.addObject(neck)
        container.Placement = FreeCAD.Placement(
            FreeCAD.Vector(10, 20, 30), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 30)
        )
        hidden = document.addObject("Part::Feature", "Hidden")
        hidden.Shape = Part.makeBox(10, 10, 10)
        hidden.Visibility = False
        wire = document.addObject("Part::Feature", "Wire")
        wire.Shape = Part.makeLine(FreeCAD.Vector(), FreeCAD.Vector(1, 0, 0))
        document.recompute()
        document.saveAs(str(tmp_path / "neck.FCStd"))
    finally:
        FreeCAD.closeDocument(document.Name)
    part = read_neck_file(tmp_path / "neck.FCStd")
    assert len(part.solids) == 1
    assert part.solids[0].Volume == pytest.approx(shape.Volume)
    from freecad_neckfit.solids.recognise.neck import recognise_neck

    truth = RECORDS["cylinder"]["truth"]
    assert recognise_neck(part)["neck.height"] == pytest.approx(truth["neck.height"], abs=1e-3)


def test_a_document_whose_shape_freecad_lost_is_refused_by_name(tmp_path):
    import FreeCAD

    from freecad_neckfit.job.errors import BadInput
    from freecad_neckfit.run.neck_file import read_neck_file

    document = FreeCAD.newDocument("Neck")
    document.addObject("Part::Feature", "Lost")
    document.saveAs(str(tmp_path / "neck.FCStd"))
    FreeCAD.closeDocument(document.Name)
    with pytest.raises(BadInput, match=r"neck\.FCStd: FreeCAD read no shape for Lost; save"):
        read_neck_file(tmp_path / "neck.FCStd")


def test_an_empty_document_is_refused(tmp_path):
    import FreeCAD

    from freecad_neckfit.job.errors import BadInput
    from freecad_neckfit.run.neck_file import read_neck_file

    document = FreeCAD.newDocument("Empty")
    document.saveAs(str(tmp_path / "empty.FCStd"))
    FreeCAD.closeDocument(document.Name)
    with pytest.raises(BadInput, match="no solid"):
        read_neck_file(tmp_path / "empty.FCStd")


def test_all_committed_files_are_small():
    assert max(f.stat().st_size for f in FILES.iterdir()) < 160_000

"""Necks that another CAD kernel made: every recognised dimension, in five poses each.

NECKFIT_POSES names how many poses are looked at: the file's own and, by default, one more.
"""

import math
import os
import random
import sys
from pathlib import Path

import numpy as np
import pytest

sys.path.insert(0, str(Path(__file__).parent))

from necks_in_files import flawed_necks, sound_necks, unpacked, wrong

pytestmark = pytest.mark.freecad

EXACT = [(r["kind"], f) for r in sound_necks() for f in r["files"] if ".stl" not in f]
MESHES = [(r["kind"], f) for r in sound_necks() for f in r["files"] if ".stl" in f]
RECORDS = {r["kind"]: r for r in sound_necks()}
POSES = int(os.environ.get("NECKFIT_POSES", "2"))


def read(file, folder):
    from freecad_neckfit.solids.read import in_neck_size, read_part

    return in_neck_size(read_part(unpacked(file, folder), in_own_process=False))


def recognise(part, record, **more):
    from freecad_neckfit.solids.recognise.neck import recognise_neck

    spread = (record["spread"],) * 2 if record.get("spread") else None
    return recognise_neck(part, spread=spread, **more)


def turned(part, rng):
    """The part in another pose, written into its geometry."""
    from dataclasses import replace

    from FreeCAD import Matrix, Placement, Rotation, Vector

    axis = Vector(*(rng.gauss(0, 1) for _ in range(3)))
    place = Placement(
        Vector(*(rng.uniform(-500, 500) for _ in range(3))), Rotation(axis, rng.uniform(5, 175))
    )
    m: Matrix = place.toMatrix()
    rows = np.array([[m.A[4 * i + j] for j in range(4)] for i in range(4)])
    mesh = None if part.mesh is None else part.mesh @ rows[:3, :3].T + rows[:3, 3]
    solids = []
    for solid in part.solids:
        moved = solid.copy()
        moved.transformShape(m, True)
        solids.append(moved)
    return replace(part, solids=tuple(solids), mesh=mesh)


@pytest.mark.parametrize(("kind", "file"), EXACT, ids=[f for _, f in EXACT])
def test_every_dimension_of_an_exact_model_is_right_to_a_hundredth(kind, file, tmp_path):
    record = RECORDS[kind]
    part = read(file, tmp_path)
    found = recognise(part, record)
    assert wrong(found.stated, record["truth"]) == []
    assert found.questions == ()
    rng = random.Random(file)
    for _ in range(POSES - 1):
        again = recognise(turned(part, rng), record)
        assert wrong(again.stated, record["truth"]) == []
        assert again.questions == ()


@pytest.mark.parametrize(("kind", "file"), MESHES, ids=[f for _, f in MESHES])
def test_a_mesh_is_read_within_its_deflection(kind, file, tmp_path):
    record = RECORDS[kind]
    part = read(file, tmp_path)
    for seed in range(POSES):
        found = recognise(turned(part, random.Random(seed)), record)
        truth = {k: v for k, v in record["truth"].items() if k != "neck.glue_line"}
        assert wrong(found.stated, truth, within=0.1) == []
        assert wrong(found.stated, {k: v for k, v in truth.items() if "width" in k}) == []
        assert found.questions == ()


def test_at_least_sixteen_necks_and_ten_flawed_ones_are_looked_at():
    assert len({kind for kind, _ in EXACT}) >= 16
    assert len(flawed_necks()) >= 10


@pytest.mark.parametrize("kind", ["cone", "ruled", "splines-cone"])
def test_a_cone_is_not_read_as_a_cylinder(kind, tmp_path):
    record = RECORDS[kind]
    found = recognise(read(record["files"][0], tmp_path), record)
    assert found["neck.radius_end"] - found["neck.radius_nut"] > 30
    assert found.top.shape in ("cone", "ruled")
    assert any("conical" in note for note in found.notes)


def test_a_flat_top_is_told_with_what_stating_it_adds(tmp_path):
    found = recognise(read("plain.step.xz", tmp_path), RECORDS["plain"])
    radius = next(d for d in found.dimensions if d.key == "neck.radius_end")
    half = RECORDS["plain"]["truth"]["neck.width_end"] / 2
    assert radius.value == 100_000.0
    assert radius.residual == pytest.approx(1e5 - math.sqrt(1e10 - half**2), abs=1e-6)
    assert radius.residual < 0.005
    assert any("flat" in note and f"{radius.residual:.3f} mm" in note for note in found.notes)


def test_fret_tops_are_not_the_board(tmp_path):
    record = RECORDS["parts"]
    found = recognise(read("parts.step.xz", tmp_path), record)
    assert found["neck.height"] == pytest.approx(record["truth"]["neck.height"], abs=1e-3)
    assert found["neck.fret_height"] > 0.5


def test_the_frame_brings_the_neck_to_its_heel(tmp_path):
    """The heel's bottom lies in z = 0, its end at x = 0, the fretboard above."""
    part = read("cylinder.step.xz", tmp_path)
    found = recognise(part, RECORDS["cylinder"])
    rows = found.frame
    assert np.allclose(rows[:3, :3] @ rows[:3, :3].T, np.eye(3), atol=1e-9)
    assert np.linalg.det(rows[:3, :3]) == pytest.approx(1.0)
    points = np.array([(v.X, v.Y, v.Z) for v in part.solids[0].Vertexes]) @ rows[:3, :3].T
    points += rows[:3, 3]
    in_heel = points[:, 0] > -70
    assert points[in_heel, 2].min() == pytest.approx(0.0, abs=1e-6)
    assert points[:, 0].max() == pytest.approx(found["neck.overhang"], abs=1e-6)
    assert math.isclose(points[in_heel, 1].max(), -points[in_heel, 1].min(), abs_tol=1e-6)


def test_solids_are_told_apart(tmp_path):
    record = RECORDS["bound"]
    found = recognise(read(record["files"][0], tmp_path), record)
    assert set(found.solids) >= {"wood", "fretboard", "binding", "frets"}
    assert len(found.solids["binding"]) == 2
    assert len(found.solids["frets"]) == record["truth"]["neck.frets"]


def test_holes_in_the_heel_are_found(tmp_path):
    found = recognise(read("screws.step.xz", tmp_path), RECORDS["screws"])
    assert [(round(h.x), round(h.y)) for h in found.holes] == [
        (-14, -18), (-14, 18), (-56, -17), (-56, 17),
    ]  # fmt: skip
    assert all(h.diameter == pytest.approx(3.2, abs=1e-3) for h in found.holes)
    assert all(h.depth == pytest.approx(15.0, abs=1e-3) for h in found.holes)


@pytest.mark.parametrize("record", flawed_necks(), ids=lambda r: r["name"])
def test_a_flawed_file_is_mended_refused_or_asked_about(record, tmp_path):
    from freecad_neckfit.job.errors import BadInput

    try:
        found = recognise(read(record["file"], tmp_path), record)
    except BadInput as refusal:
        said, outcome = str(refusal), "refused"
    else:
        asked = " ".join(q.text for q in found.questions)
        said = " ".join([*found.notes, asked])
        outcome = "asks" if asked else "read"
        within = 0.1 if "mesh" in record["name"] else 0.01
        assert wrong(found.stated, record.get("truth", {}), within=within) == []
    assert outcome == {"mended": "read", "noted": "read"}.get(
        record["expected"], record["expected"]
    )
    assert [word for word in record["words"] if word not in said] == []


def test_faces_picked_by_hand_override_what_was_found(tmp_path):
    record = RECORDS["cylinder"]
    part = read("cylinder.step.xz", tmp_path)
    found = recognise(part, record)
    again = recognise(part, record, picks=found.items_to_pick())
    assert again.stated == pytest.approx(found.stated, abs=1e-9)


def test_a_wrong_pick_is_refused_or_asked_about(tmp_path):
    from freecad_neckfit.job.errors import BadInput

    part = read("cylinder.step.xz", tmp_path)
    found = recognise(part, RECORDS["cylinder"])
    with pytest.raises(BadInput, match="pick faces of this neck"):
        recognise(part, RECORDS["cylinder"], picks={"heel bottom": [9999]})
    with pytest.raises(BadInput, match="cannot be picked"):
        recognise(part, RECORDS["cylinder"], picks={"headstock": [1]})
    side = found.items["heel sides"][:1]
    try:
        wrong_pick = recognise(part, RECORDS["cylinder"], picks={"heel bottom": side})
    except BadInput:
        return
    assert wrong_pick.questions


@pytest.mark.parametrize("is_mesh", [False, True])
@pytest.mark.parametrize("high", [0.0, 1.0])
def test_what_stands_out_of_the_heels_bottom_is_asked_about(high, is_mesh, tmp_path):
    import Part
    from FreeCAD import Vector

    from freecad_neckfit.solids.build.shapes import moved
    from freecad_neckfit.solids.read.part import Part3D

    part = read("plain.step.xz", tmp_path)
    place = np.linalg.inv(recognise(part, RECORDS["plain"]).frame)
    boss = Part.makeBox(8, 8, high + 1, Vector(-40, -4, -high))
    wood = part.solids[0].fuse(moved(boss, place)).removeSplitter().Solids[0]
    part = Part3D("boss", solids=(wood, *part.solids[1:]))
    if is_mesh:
        corners, triples = Part.Compound(part.solids).tessellate(0.02)
        mesh = np.array([(p.x, p.y, p.z) for p in corners])[np.array(triples)]
        part = Part3D("boss", mesh=mesh)
    asked = [q.text for q in recognise(part, RECORDS["plain"]).questions if q.key == "heel bottom"]
    assert len(asked) == (1 if high else 0)
    assert not high or "stands 1.00 mm out" in asked[0]


def test_a_nut_that_would_lie_at_the_heel_is_none():
    from freecad_neckfit.solids.recognise.neck.found import Findings
    from freecad_neckfit.solids.recognise.neck.recognise import _doubt_nut

    found = Findings()
    for key in ("neck.nut_to_heel", "neck.width_nut", "neck.width_end"):
        found.tell(key, 1.0, "as if")
    _doubt_nut(-460.0, found)
    assert not found.questions
    _doubt_nut(16.0, found)
    assert set(found.dimensions) == {"neck.width_end"}
    assert [(q.key, q.by_value) for q in found.questions] == [("neck.nut_to_heel", False)]
    assert "+16 mm from" in found.questions[0].text

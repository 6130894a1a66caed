"""Files of every kind read, and files that cannot be.

NECKFIT_PARTS may name a folder of files of other things than necks: each must be refused.
"""

import os
import sys
import zipfile
from pathlib import Path

import numpy as np
import pytest

sys.path.insert(0, str(Path(__file__).parent))

from necks_in_files import unpacked

pytestmark = pytest.mark.freecad

BOX = [(x, y, z) for x in (0, 640) for y in (0, 50) for z in (0, 25)]
SIDES = [
    (0, 1, 3), (0, 3, 2), (4, 6, 7), (4, 7, 5), (0, 4, 5), (0, 5, 1),
    (2, 3, 7), (2, 7, 6), (0, 2, 6), (0, 6, 4), (1, 5, 7), (1, 7, 3),
]  # fmt: skip


def read(path, **more):
    from freecad_neckfit.solids.read import read_part

    return read_part(path, **more)


def refused(path, **more):
    from freecad_neckfit.job.errors import BadInput

    with pytest.raises(BadInput) as refusal:
        read(path, **more)
    said = str(refusal.value)
    assert path.name in said
    assert "\n" not in said
    return said


def ascii_stl(scale=1.0, sides=SIDES):
    rows = ["solid box"]
    for side in sides:
        rows += ["facet normal 0 0 0", "outer loop"]
        rows += ["vertex " + " ".join(f"{c * scale:.6f}" for c in BOX[i]) for i in side]
        rows += ["endloop", "endfacet"]
    return "\n".join([*rows, "endsolid box"])


def obj():
    points = [f"v {x} {y} {z}" for x, y, z in BOX]
    quads = [
        "f 1 2 4 3",
        "f 5 7 8 6",
        "f 1 5 6 2",
        "f 3/1 4/2 8/3 7/4",
        "f 1 3 7 5",
        "f -7 -3 -1 -5",
    ]
    return "\n".join([*points, *quads])


def three_mf(path, unit="millimeter", transform="1 0 0 0 1 0 0 0 1 5 6 7"):
    vertices = "".join(f'<vertex x="{x}" y="{y}" z="{z}"/>' for x, y, z in BOX)
    triangles = "".join(f'<triangle v1="{a}" v2="{b}" v3="{c}"/>' for a, b, c in SIDES)
    text = (
        f'<?xml version="1.0"?><model unit="{unit}" '
        'xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02"><resources>'
        f'<object id="1"><mesh><vertices>{vertices}</vertices><triangles>{triangles}</triangles>'
        '</mesh></object><object id="2"><components><component objectid="1" '
        f'transform="{transform}"/></components></object></resources>'
        '<build><item objectid="2"/></build></model>'
    )
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("3D/3dmodel.model", text)
    return path


def test_ascii_stl_obj_and_3mf_hold_the_same_box(tmp_path):
    (tmp_path / "box.stl").write_text(ascii_stl())
    (tmp_path / "box.obj").write_text(obj())
    three_mf(tmp_path / "box.3mf")
    from freecad_neckfit.solids.read.mesh_heal import volume

    for name in ("box.stl", "box.obj", "box.3mf"):
        part = read(tmp_path / name)
        assert part.is_mesh
        assert volume(part.mesh) == pytest.approx(640 * 50 * 25)
        assert np.ptp(part.points, axis=0) == pytest.approx([640, 50, 25])


def test_3mf_states_its_unit_and_where_things_lie(tmp_path):
    part = read(three_mf(tmp_path / "box.3mf", unit="inch"))
    assert part.points.min(axis=0) == pytest.approx(np.array([5, 6, 7]) * 25.4)
    assert np.ptp(part.points, axis=0) == pytest.approx(np.array([640, 50, 25]) * 25.4)


def test_a_mesh_inside_out_is_turned_and_an_open_one_refused(tmp_path):
    from freecad_neckfit.solids.read.mesh_heal import volume

    (tmp_path / "in.stl").write_text(ascii_stl(sides=[s[::-1] for s in SIDES]))
    part = read(tmp_path / "in.stl")
    assert volume(part.mesh) > 0
    assert any("inside out" in note for note in part.notes)
    (tmp_path / "open.stl").write_text(ascii_stl(sides=SIDES[1:]))
    assert "open" in refused(tmp_path / "open.stl")
    (tmp_path / "mixed.stl").write_text(ascii_stl(sides=[SIDES[0][::-1], *SIDES[1:]]))
    assert "contradict" in refused(tmp_path / "mixed.stl")


@pytest.mark.parametrize(
    ("name", "data", "word"),
    [
        ("empty.step", b"", "empty"), ("text.step", b"hello", "STEP"),
        ("text.igs", b"hello", "IGES"), ("text.brep", b"hello", "BREP"),
        ("text.stl", b"hello", "STL"), ("text.obj", b"v 1 2\nf 1 2 9", "OBJ"),
        ("text.3mf", b"hello", "3MF"), ("picture.png", b"x", "save the neck as"),
        ("none", b"x", "save the neck as"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("apart", [True, False])
def test_what_cannot_be_read_is_refused_in_one_sentence(tmp_path, name, data, word, apart):
    path = tmp_path / name
    path.write_bytes(data)
    assert word in refused(path, in_own_process=apart)


def test_a_missing_file_and_a_folder_are_refused(tmp_path):
    refused(tmp_path / "absent.step")
    refused(tmp_path)


def test_entities_in_3mf_are_refused(tmp_path):
    with zipfile.ZipFile(tmp_path / "trap.3mf", "w") as archive:
        archive.writestr("3D/3dmodel.model", '<!DOCTYPE a [<!ENTITY b "c">]><model/>')
    refused(tmp_path / "trap.3mf")


@pytest.mark.parametrize(
    "name", ["cylinder.step.xz", "cylinder.igs.xz", "cylinder.brep.xz", "bass.step.xz",
             "cone.step.xz", "left.step.xz", "round-end.step.xz"],
)  # fmt: skip
def test_the_own_process_reads_what_this_one_reads(name, tmp_path):
    path = unpacked(name, tmp_path)
    here, apart = read(path, in_own_process=False), read(path)
    assert len(here.solids) == len(apart.solids)
    assert [s.Volume for s in here.solids] == pytest.approx([s.Volume for s in apart.solids])


def test_reading_tells_its_progress_and_can_be_cancelled(tmp_path):
    path = unpacked("parts.step.xz", tmp_path)
    told = []
    read(path, progress=lambda what, seconds: told.append((what, seconds)) or True)
    assert told[0][0] == "reading STEP"
    assert told[-1][0] == "looking for flaws"
    assert "cancelled" in refused(path, progress=lambda what, seconds: seconds < 0)
    assert "cancelled" in refused(path, progress=lambda what, seconds: what != "looking for flaws")


def test_a_kernel_that_comes_down_costs_nothing_else(tmp_path, monkeypatch):
    from freecad_neckfit.solids.read import apart

    monkeypatch.setattr(apart, "WORDS", "import os; os.abort()  # {sep} {unreadable}")
    assert "brought" in refused(unpacked("plain.step.xz", tmp_path))


def test_a_kernel_that_stalls_is_ended(tmp_path, monkeypatch):
    from freecad_neckfit.solids.read import apart

    monkeypatch.setattr(apart, "WORDS", "import time; time.sleep(60)  # {sep} {unreadable}")
    monkeypatch.setattr(apart, "PATIENCE", 0.3)
    assert "not read within" in refused(unpacked("plain.step.xz", tmp_path))


def test_units_that_lie_are_told_from_necks_and_from_other_things(tmp_path):
    from freecad_neckfit.job.errors import BadInput
    from freecad_neckfit.solids.read import in_neck_size

    for scale, word in ((1 / 25.4, "inches"), (0.001, "metres"), (0.1, "centimetres"),
                        (25.4, "25.4 times too"), (1000, "1000 times too")):  # fmt: skip
        (tmp_path / "box.stl").write_text(ascii_stl(scale))
        part = in_neck_size(read(tmp_path / "box.stl"))
        assert part.size()[0] == pytest.approx(640, rel=1e-2)
        assert any(word in note for note in part.notes)
    for scale in (0.5, 2.0, 5.0):
        (tmp_path / "box.stl").write_text(ascii_stl(scale))
        with pytest.raises(BadInput, match="not a neck"):
            in_neck_size(read(tmp_path / "box.stl"))


def test_a_thing_of_round_inches_has_a_suspicious_unit(tmp_path):
    """A part of 200 x 150 x 87 mm, written 25.4 times too large."""
    import Part

    from freecad_neckfit.job.errors import BadInput
    from freecad_neckfit.solids.read import in_neck_size

    Part.makeBox(5080, 3810, 87 * 25.4).exportStep(str(tmp_path / "part.step"))
    with pytest.raises(BadInput, match=r"not a neck.*unit is suspicious.*200 x 150 x 87"):
        in_neck_size(read(tmp_path / "part.step", in_own_process=False))


OTHER_THINGS = [
    path
    for path in sorted(Path(os.environ.get("NECKFIT_PARTS", os.devnull)).rglob("*"))
    if path.suffix.lower() in (".stp", ".step", ".igs", ".brep", ".stl")
]

if OTHER_THINGS:

    @pytest.mark.parametrize("path", OTHER_THINGS, ids=lambda path: path.name)
    def test_what_is_no_neck_is_refused_in_one_sentence(path):
        from freecad_neckfit.job.errors import BadInput
        from freecad_neckfit.run.neck_file import read_neck_file
        from freecad_neckfit.run.neck_judged import recognise_for

        with pytest.raises(BadInput) as refusal:
            recognise_for(read_neck_file(path), {})
        assert "\n" not in str(refusal.value)


@pytest.mark.parametrize(
    "file", ["cylinder.brep.xz", "one-solid.brep.xz", "mirrored-place.brep.xz"]
)
def test_a_solid_that_was_read_survives_being_saved(file, tmp_path):
    """FreeCAD 1.1 loses solids with endless trims, and takes a place that mirrors for a turn."""
    import FreeCAD

    solid = read(unpacked(file, tmp_path)).solids[0]
    document = FreeCAD.newDocument("Kept")
    document.addObject("Part::Feature", "Neck").Shape = solid
    document.saveAs(str(tmp_path / "kept.FCStd"))
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(str(tmp_path / "kept.FCStd"))
    try:
        back = document.Neck.Shape.copy()
        assert len(back.Faces) == len(solid.Faces)
        assert back.Volume == pytest.approx(solid.Volume)
        assert (back.Solids[0].CenterOfMass - solid.CenterOfMass).Length < 1e-6
        back.Placement = FreeCAD.Placement()
        assert back.Volume > 0
    finally:
        FreeCAD.closeDocument(document.Name)

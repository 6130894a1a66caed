"""Solids told apart by a prism: by way of their faces as by the kernel's booleans."""

import sys
from pathlib import Path

import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector

sys.path.insert(0, str(Path(__file__).parent))

from necks_in_files import unpacked

from freecad_neckfit.job.errors import KernelFailure
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.run.neck_file import read_neck_file
from freecad_neckfit.run.neck_judged import given_neck, recognise_for
from freecad_neckfit.solids.build import build
from freecad_neckfit.solids.build import halves as room
from freecad_neckfit.solids.build.shapes import common, cut

pytestmark = pytest.mark.freecad

STEPPED = [(-10.0, 5.0), (12.0, 5.0), (12.0, 3.0), (40.0, 3.0), (40.0, 30.0), (-10.0, 30.0)]


def by_booleans(whole, profile, y):
    tool = room.prism(profile, y)
    return room.largest(common(whole, tool)), room.largest(cut(whole, [tool]))


def same(one, other):
    assert one.isValid()
    assert one.ShapeType == "Solid"
    assert all(shell.isClosed() for shell in one.Shells)
    assert one.Volume == pytest.approx(other.Volume, abs=1e-3)
    assert one.Area == pytest.approx(other.Area, abs=1e-3)
    assert len(one.Faces) == len(other.Faces)
    assert (one.CenterOfMass - other.CenterOfMass).Length < 1e-6


def bored_block():
    block = Part.makeBox(30, 20, 20, Vector(0, -10, 0))
    return block.cut([Part.makeCylinder(3, 40, Vector(10, 0, -10)),
                      Part.makeCylinder(2, 40, Vector(-5, 4, 9), Vector(1, 0, 0))])  # fmt: skip


@pytest.mark.parametrize("profile", [
    [(-5.0, 8.0), (50.0, 8.0), (50.0, 40.0), (-5.0, 40.0)],
    [(-5.0, 7.0), (50.0, 7.0), (50.0, 40.0), (-5.0, 40.0)],  # through the bore's lowest line
    STEPPED,
    [(15.0, -9.0), (50.0, -9.0), (50.0, 40.0), (15.0, 40.0)],
])  # fmt: skip
def test_both_ways_give_the_same_halves(profile):
    whole = bored_block().Solids[0]
    before = whole.Volume, whole.getTolerance(1)
    try:
        found = room.split(whole, profile, (-30.0, 30.0))
    except room._Unclear:
        found = room.halves(whole, profile, (-30.0, 30.0))
    for one, other in zip(found, by_booleans(whole, profile, (-30.0, 30.0)), strict=True):
        same(one, other)
    assert (whole.Volume, whole.getTolerance(1)) == before


def test_the_quick_way_is_taken_where_nothing_is_in_doubt():
    found = room.split(bored_block().Solids[0], STEPPED, (-30.0, 30.0))
    for one, other in zip(
        found, by_booleans(bored_block().Solids[0], STEPPED, (-30.0, 30.0)), strict=True
    ):
        same(one, other)


@pytest.mark.parametrize("file", ["one-solid.brep.xz", "ruled.step.xz"])
def test_a_neck_with_its_frets_is_told_apart_as_by_booleans(file, tmp_path, monkeypatch):
    asked = []

    def both(whole, profile, y):
        quick = room.split(whole, profile, y)
        for one, other in zip(quick, by_booleans(whole, profile, y), strict=True):
            same(one, other)
        asked.append(len(whole.Faces))
        return quick

    monkeypatch.setattr("freecad_neckfit.solids.build.given_neck.halves", both)
    read = recognise_for(read_neck_file(unpacked(file, tmp_path)), {})
    values = complete(read.stated)
    built = build(values, given=given_neck(read, values), parts=["heel", "shaft", "fretboard"])
    assert set(built.parts) == {"heel", "shaft", "fretboard"}
    assert len(asked) == 2


def test_a_leaning_solid_far_from_the_prism_is_refused_by_both_ways():
    whole = Part.makeBox(10, 10, 10, Vector(0, -5, 0))
    whole = whole.rotate(Vector(0, 0, 0), Vector(0, 1, 0), 20) or whole
    away = [(100.0, 0.0), (120.0, 0.0), (120.0, 20.0), (100.0, 20.0)]
    with pytest.raises(room._Unclear):
        room.split(whole, away, (-30.0, 30.0))
    with pytest.raises(KernelFailure):
        room.halves(whole, away, (-30.0, 30.0))


def test_what_is_in_doubt_is_left_to_the_booleans(monkeypatch):
    def never(*_):
        raise room._Unclear

    monkeypatch.setattr(room, "FEW", 0)
    monkeypatch.setattr(room, "split", never)
    whole = bored_block().Solids[0]
    found = room.halves(whole, STEPPED, (-30.0, 30.0))
    for one, other in zip(found, by_booleans(whole, STEPPED, (-30.0, 30.0)), strict=True):
        same(one, other)


def test_a_neck_is_not_changed_by_being_told_apart(tmp_path):
    part = read_neck_file(unpacked("one-solid.brep.xz", tmp_path))
    read = recognise_for(part, {})
    values = complete(read.stated)
    given = given_neck(read, values)
    shapes = [part.solids[0], given.neck["neck"]]
    before = [shape.exportBrepToString() for shape in shapes]
    build(values, given=given, parts=["heel", "shaft", "fretboard"])
    assert [shape.exportBrepToString() for shape in shapes] == before


def test_a_face_that_is_turned_the_wrong_way_is_noticed():
    faces = Part.makeBox(3, 4, 5).Faces
    met = faces[1:]
    room._turned_alike(met, met)
    with pytest.raises(room._Unclear):
        room._turned_alike(met, [met[0].reversed(), *met[1:]])
    with pytest.raises(room._Unclear):
        room._turned_alike(met, [face.reversed() for face in met])

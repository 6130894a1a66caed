import hashlib
import re
import subprocess
import sys
from pathlib import Path

import pytest

pytest.importorskip("FreeCAD")

import FreeCAD
import Part

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets import package as package_module
from freecad_neckfit.sheets.joint import Misprint
from freecad_neckfit.sheets.model import POCKET, WORK_ZERO, shop_parts, volumes, write_step
from freecad_neckfit.sheets.package import CONTENTS, FILES, Wish, write_package
from freecad_neckfit.sheets.paper import Title
from tests.sheets.shop import NAMES, SAMPLE, joint_of, round_of_joints, sample

pytestmark = pytest.mark.freecad
DIGESTS = Path(__file__).parent / "digests.txt"


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    path = tmp_path_factory.mktemp("shop") / "package"
    write_package(sample(), path, wish=Wish(title=Title(owner="A shop")))
    return path


def test_everything_is_there(folder):
    assert {p.name for p in folder.iterdir()} == {*FILES, CONTENTS}
    assert all(p.stat().st_size > 500 for p in folder.iterdir())


def test_progress_is_told_to_the_end(tmp_path):
    told = []
    write_package(sample(), tmp_path / "p", wish=Wish(), progress=lambda *step: told.append(step))
    assert [step for step, _, _ in told] == list(range(told[0][1] + 1))


def test_nothing_is_left_where_a_sheet_fails(tmp_path, monkeypatch):
    def fail(*_):
        raise Misprint("no")

    monkeypatch.setattr(package_module, "write_machining", fail)
    with pytest.raises(Misprint):
        write_package(sample(), tmp_path / "p", wish=Wish())
    assert list(tmp_path.iterdir()) == []


def test_a_former_package_stays_unless_it_is_to_be_replaced(tmp_path, monkeypatch):
    path = tmp_path / "p"
    write_package(sample(), path, wish=Wish(title=Title(revision="A")))
    with pytest.raises(BadInput, match="former package"):
        write_package(sample(), path, wish=Wish(title=Title(revision="B")))
    write_package(sample(), path, wish=Wish(title=Title(revision="B"), replace=True))
    assert "revision  B" in (path / CONTENTS).read_text()

    def fail(*_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(package_module, "write_machining", fail)
    with pytest.raises(BadInput, match="No space"):
        write_package(sample(), path, wish=Wish(title=Title(revision="C"), replace=True))
    assert "revision  B" in (path / CONTENTS).read_text()
    assert [p.name for p in tmp_path.iterdir()] == ["p"]


def test_other_files_are_never_overwritten(tmp_path):
    (tmp_path / "mine.txt").write_text("precious")
    with pytest.raises(BadInput, match="no package of this tool"):
        write_package(sample(), tmp_path, wish=Wish(replace=True))
    path = tmp_path / "p"
    write_package(sample(), path, wish=Wish())
    (path / "mine.txt").write_text("precious")
    with pytest.raises(BadInput, match=r"mine\.txt, which would be lost"):
        write_package(sample(), path, wish=Wish(replace=True))
    with pytest.raises(BadInput, match="is a file"):
        write_package(sample(), tmp_path / "mine.txt", wish=Wish())
    with pytest.raises(BadInput, match="parent exists"):
        write_package(sample(), tmp_path / "no" / "p", wish=Wish())


def test_a_bit_too_large_stops_before_anything_is_written(tmp_path):
    with pytest.raises(BadInput, match="largest that works"):
        write_package(sample(), tmp_path / "p", wish=Wish(bit=12.0))
    assert list(tmp_path.iterdir()) == []


def test_step_read_back_has_the_same_volumes_and_names(folder):
    wanted = volumes(shop_parts(sample()))
    assert {"body", "plate", "heel", "fretboard"} <= set(wanted)
    text = (folder / "model.step").read_text()
    assert ".MILLI." in text
    names = set(re.findall(r"PRODUCT\('([^']*)'", text))
    assert set(wanted) <= names
    shape = Part.read(str(folder / "model.step"))
    read = sorted(s.Volume for s in shape.Solids)
    built = sorted(s.Volume for p in shop_parts(sample()).parts.values() for s in p.Solids)
    assert len(read) == len(built)
    assert all(a == pytest.approx(b, rel=1e-6) for a, b in zip(read, built, strict=True))


def test_the_pocket_can_be_picked_for_machining(folder):
    document = FreeCAD.openDocument(str(folder / "machining.FCStd"), hidden=True)
    try:
        pocket, body = document.getObject(POCKET), document.getObject("body")
        floor = [f for f in pocket.Shape.Faces if f.normalAt(0, 0).z < -0.99]
        assert len(floor) == 1
        assert floor[0].CenterOfMass.z == pytest.approx(-15.5)
        assert document.getObject(WORK_ZERO).Placement.isIdentity()
        assert pocket.Shape.BoundBox.XMax == pytest.approx(0.0, abs=1e-6)
        assert pocket.Shape.BoundBox.ZMax == pytest.approx(0.0, abs=1e-6)
        assert pocket.Shape.copy().common(body.Shape.copy()).Volume == pytest.approx(0, abs=1e-6)
    finally:
        FreeCAD.closeDocument(document.Name)


def test_a_domed_pocket_ends_at_the_top(tmp_path):
    from freecad_neckfit.sheets.model import pocket_volume

    joint = joint_of({"body.top": "domed", "pocket.angle": 1.0})
    pocket = pocket_volume(joint)
    assert pocket.isValid()
    assert pocket.copy().common(joint.parts["body"].copy()).Volume == pytest.approx(0, abs=1e-4)


@pytest.mark.parametrize("name", ["drawing.svg", "drawing.dxf", "template.dxf", "drawing.pdf"])
def test_the_bytes_are_the_same_on_every_freecad(folder, name):
    """After a wanted change of a sheet or of the sample, put the new digest into the file."""
    wanted = dict(line.split() for line in DIGESTS.read_text().splitlines())
    assert hashlib.sha256((folder / name).read_bytes()).hexdigest() == wanted[name]


def test_the_command_writes_it_and_says_where(tmp_path):
    command = [sys.executable, "-m", "freecad_neckfit", "package", str(SAMPLE)]
    path = tmp_path / "out"
    done = subprocess.run(
        [*command, str(path), "--units", "inch", "--revision", "C", "--bit", "1/4 in"],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    assert done.stdout.rstrip().endswith("FITS")
    contents = (path / CONTENTS).read_text()
    assert "units     inch" in contents
    assert "ANSI B" in contents
    assert "bit 0.250 in" in contents
    again = subprocess.run([*command, str(path)], capture_output=True, text=True, check=False)
    assert again.returncode == 2
    assert "former package" in again.stderr


def test_the_command_refuses_a_bit_with_one_sentence(tmp_path):
    done = subprocess.run(
        [sys.executable, "-m", "freecad_neckfit", "package", str(SAMPLE), str(tmp_path / "p"),
         "--bit", "1/2 in"],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert done.returncode == 2
    assert "largest that works is 6.40 mm" in done.stderr
    assert not (tmp_path / "p").exists()


@pytest.mark.parametrize("name", [n for n in NAMES if n not in ("sample", "does not fit")])
def test_a_round_of_joints_goes_through_without_care(name, tmp_path):
    units = list(Units)[NAMES.index(name) % 2]
    joint = round_of_joints(name, units)
    write_package(joint, tmp_path / "p", wish=Wish())
    said = (tmp_path / "p" / CONTENTS).read_text()
    assert ("tilted by 2.40 degrees" in said) == (name == "angled")
    assert ("deepest edge" in said) == (name == "angled")
    assert f"units     {'mm' if units is Units.MM else 'inch'}" in said
    step = Part.read(str(tmp_path / "p" / "model.step"))
    built = sum(volumes(shop_parts(joint)).values())
    assert sum(s.Volume for s in step.Solids) == pytest.approx(built, rel=1e-6)


def test_an_imported_necks_binding_goes_to_the_shop_too(tmp_path):
    joint = round_of_joints("imported neck, bound")
    assert {"binding_treble", "binding_bass"} <= set(shop_parts(joint).parts)
    write_step(joint, tmp_path / "m.step")
    text = (tmp_path / "m.step").read_text()
    names = set(re.findall(r"PRODUCT\('([^']*)'", text))
    assert {"binding_treble", "binding_bass", "fretboard", "heel"} <= names

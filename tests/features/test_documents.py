"""Saving, opening, copying, undoing: nothing is lost, and nothing stale is shown as fresh."""

import json
import os
import subprocess
import sys

import pytest

from freecad_neckfit.features import roles
from freecad_neckfit.host import find_freecad

pytestmark = pytest.mark.freecad


def digest(document):
    """Everything that NeckFit's objects hold, links by name, shapes by what can be compared."""
    return {o.Name: _held(o) for o in document.Objects if roles.role_of(o)}


def _held(obj):
    held = {name: _plain(getattr(obj, name)) for name in obj.PropertiesList if name not in SKIPPED}
    return held | {"proxy": type(obj.Proxy).__name__, "modes": _modes(obj)}


SKIPPED = {"Proxy", "Shape", "ExpressionEngine", "_ElementMapVersion", "ShapeMaterial"}


def _modes(obj):
    return {name: obj.getEditorMode(name) for name in obj.PropertiesList}


def _plain(value):
    if hasattr(value, "Name"):
        return value.Name
    if isinstance(value, float):
        return pytest.approx(value, abs=1e-12)
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    return getattr(value, "UserString", None) or str(value)


def test_a_joint_survives_save_and_open(joint, reopened, tmp_path):
    from freecad_neckfit.features.run_check import check

    joint.Pocket.setExpression("Depth", "16 mm + 2.288 mm")
    joint.CoverPlate.Cover = "surround"
    joint.Neck.Overhang = 1 / 3 + 9
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
    with pytest.raises(RuntimeError), one_step(joint.Document, "Deepen"):
        joint.Pocket.Depth = 20
        raise RuntimeError
    joint.Document.recompute()
    assert digest(joint.Document) == before
    assert joint.Document.UndoNames == []


WITHOUT = """
import json, sys
import FreeCAD
document = FreeCAD.openDocument(sys.argv[1], hidden=True)
print("answer", json.dumps({
    "loaded": any(name.startswith("freecad_neckfit") for name in sys.modules),
    "volumes": {o.Name: o.Shape.Volume for o in document.Objects
                if hasattr(o, "Shape") and not o.Shape.isNull()},
    "proxies": [o.Name for o in document.Objects if o.Proxy is not None],
}))
document.saveAs(sys.argv[1])
"""


def test_without_the_workbench_shapes_show_and_with_it_all_lives_again(joint, tmp_path):
    import FreeCAD

    from freecad_neckfit.features.make import reattach

    file = tmp_path / "joint.FCStd"
    volume, before = joint.Document.RoutedBody.Shape.Volume, digest(joint.Document)
    joint.Document.saveAs(str(file))
    FreeCAD.closeDocument(joint.Document.Name)
    answer = _ask_without_workbench(file, tmp_path)
    assert answer["loaded"] is False
    assert answer["proxies"] == []
    assert answer["volumes"]["RoutedBody"] == pytest.approx(volume, rel=1e-9)
    again = FreeCAD.openDocument(str(file), hidden=True)
    try:
        lost = reattach(again)
        assert {o.Name for o in lost} == set(before)
        assert digest(again) == before
        again.Pocket.Depth = 18
        again.recompute()
        assert all(o.isValid() for o in again.Objects)
        assert again.RoutedBody.Shape.Volume < volume
    finally:
        FreeCAD.closeDocument(again.Name)


def _ask_without_workbench(file, tmp_path):
    (tmp_path / "bare").mkdir()
    done = subprocess.run(
        [sys.executable, "-P", "-c", WITHOUT, str(file)],
        cwd=tmp_path,
        env={
            **{k: v for k, v in os.environ.items() if k != "PYTHONPATH"},
            "FREECAD_USER_HOME": str(tmp_path / "bare"),
            "PYTHONPATH": str(find_freecad().paths[0]),
        },
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    (line,) = [line for line in done.stdout.splitlines() if line.startswith("answer ")]
    return json.loads(line.removeprefix("answer "))


AT_START = """
import json, sys
import FreeCAD
print("answer", json.dumps(sorted(
    name for name in sys.modules
    if name.split(".")[0] in ("numpy", "Part", "freecad_neckfit")
)))
"""


def test_freecads_start_loads_the_proxies_and_nothing_heavy(tmp_path, checkout):
    home = tmp_path / "home" / "Mod"
    home.mkdir(parents=True)
    (home / "NeckFit").symlink_to(checkout)
    done = subprocess.run(
        [sys.executable, "-P", "-c", AT_START],
        cwd=tmp_path,
        env={
            **{k: v for k, v in os.environ.items() if k != "PYTHONPATH"},
            "FREECAD_USER_HOME": str(home.parent),
            "PYTHONPATH": str(find_freecad().paths[0]),
        },
        capture_output=True,
        text=True,
        timeout=60,
        check=True,
    )
    (line,) = [line for line in done.stdout.splitlines() if line.startswith("answer ")]
    package = "freecad_neckfit"
    modules = ("proxies", "proxy", "body", "check", "hardware", "joint", "neck", "part", "plate", "pocket")
    wanted = {package, f"{package}.features", *(f"{package}.features.{m}" for m in modules)}
    assert set(json.loads(line.removeprefix("answer "))) == wanted

"""FreeCAD without the workbench shows the shapes, and with it starts no slower than it must."""

import json
import os
import subprocess
import sys

import pytest

from freecad_neckfit.host import find_freecad
from tests.features.held import digest

pytestmark = pytest.mark.freecad

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
    modules = (
        "proxies",
        "proxy",
        "body",
        "check",
        "hardware",
        "joint",
        "neck",
        "part",
        "plate",
        "pocket",
    )
    wanted = {package, f"{package}.features", *(f"{package}.features.{m}" for m in modules)}
    assert set(json.loads(line.removeprefix("answer "))) == wanted

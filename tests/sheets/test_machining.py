"""FreeCAD's own CAM picks the pocket from the machining document and cuts it to its floor."""

import json
import os
import shutil
import subprocess
from pathlib import Path

import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.sheets.model import write_machining
from tests.sheets.shop import joint_of, sample

pytestmark = pytest.mark.freecad
SCRIPT = Path(__file__).with_name("cam_job.py")


def cut(joint, name, folder):
    """What CAM made of the floor of the object ``name``."""
    path = folder / "machining.FCStd"
    write_machining(joint, path)
    answer = folder / "answer.json"
    done = subprocess.run(
        [shutil.which("freecadcmd") or "FreeCADCmd", str(SCRIPT)],
        cwd=folder,
        env={name: value for name, value in os.environ.items() if name != "PYTHONPATH"}
        | {
            "FREECAD_USER_HOME": str(folder),
            "QT_QPA_PLATFORM": "offscreen",
            "NECKFIT_DOCUMENT": str(path),
            "NECKFIT_OBJECT": name,
            "NECKFIT_ANSWER": str(answer),
        },
        capture_output=True, text=True, errors="replace", check=False, timeout=180,
    )  # fmt: skip
    assert answer.is_file(), done.stdout[-2000:] + done.stderr[-2000:]
    seen = json.loads(answer.read_text())
    assert "error" not in seen, seen["error"]
    return seen


@pytest.fixture(scope="module", params=["pocket", "body"])
def told(request, tmp_path_factory):
    return request.param, cut(sample(), request.param, tmp_path_factory.mktemp("cam"))


def test_the_tool_goes_down_to_the_floor_and_no_deeper(told):
    _, seen = told
    assert seen["valid"]
    assert seen["moves"] > 50
    assert seen["lowest"] == pytest.approx(-15.5, abs=0.01)


def test_work_zero_is_the_joints_origin(told):
    """The tool's edge runs along the end wall at X = 0 and evenly to both sides of Y = 0."""
    _, seen = told
    radius = seen["tool"] / 2
    assert seen["x"][1] + radius == pytest.approx(0.0, abs=0.05)
    assert sum(seen["y"]) == pytest.approx(0.0, abs=0.05)
    assert seen["y"][1] + radius == pytest.approx(56.2 / 2, abs=0.1)
    assert seen["moved"] == [False, False]


def test_the_pockets_own_floor_is_cut_out_past_the_mouth(told):
    name, seen = told
    front = seen["x"][0] - seen["tool"] / 2
    assert (front < -76.0 - 1.0) == (name == "pocket")


def test_a_left_handed_round_pocket_is_cut_too(tmp_path):
    round_end = {
        "pocket.depth": 16.3, "strings.left_handed": True, "pocket.end_shape": "round",
        "pocket.end_radius": 60.0, "pocket.width_end": 56.2,
    }  # fmt: skip
    seen = cut(joint_of(round_end), "pocket", tmp_path)
    assert seen["lowest"] == pytest.approx(-16.3, abs=0.01)
    assert seen["x"][1] + seen["tool"] / 2 == pytest.approx(0.0, abs=0.05)

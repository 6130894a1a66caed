"""FreeCAD's own CAM picks the pocket from the machining document and cuts it to its floor."""

import json
import math
import os
import shutil
import subprocess
from pathlib import Path

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.sheets.model import write_machining
from tests.sheets.shop import joint_of, sample

pytestmark = pytest.mark.freecad
SCRIPT = Path(__file__).with_name("cam_job.py")


STEP = 0.25
"""Depth [mm] of a step on a tilted floor: as in ``cam_job.py``."""


def cut(joint, name, folder, way="level"):
    """What CAM made of the floor of the object ``name``, by one of the ways of ``cam_job.py``."""
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
            "NECKFIT_WAY": way,
            "NECKFIT_ANGLE": str(joint.length("pocket.angle")),
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


def angled(angle, wall="top"):
    return joint_of({"pocket.depth": 15.0, "pocket.angle": angle, "pocket.wall": wall})


def floor(joint, x):
    """Height [mm] of the floor, as the seat is defined."""
    tilt = math.tan(math.radians(joint.length("pocket.angle")))
    return -joint.length("pocket.depth") + x * tilt


def ground(seen, x, y):
    """Height [mm] of what a flat bit leaves at points of the plan."""
    points, radius = np.stack([x, y], axis=-1), seen["tool"] / 2
    left = np.zeros(x.shape)
    for start, end in np.array(seen["ways"]):
        way = end[:2] - start[:2]
        along = ((points - start[:2]) @ way / max(way @ way, 1e-12)).clip(0.0, 1.0)
        away = np.linalg.norm(points - start[:2] - along[..., None] * way, axis=-1)
        # A move that sinks cuts to its lower end only there; to count its higher one is safe.
        height = max(start[2], end[2])
        left = np.where(away <= radius, np.minimum(left, height), left)
    return left


@pytest.mark.parametrize("angle", [1.5, -0.8])
def test_a_pocket_in_3d_follows_a_tilted_floor_by_steps(angle, tmp_path):
    """Never below the floor, and all over it no more than a step above."""
    joint = angled(angle)
    seen = cut(joint, "body", tmp_path, way="steps")
    assert seen["valid"]
    x, y = np.meshgrid(np.linspace(-72, -4, 69), np.linspace(-23, 23, 24), indexing="ij")
    left = ground(seen, x, y) - floor(joint, x)
    assert left.min() > -0.01
    assert left.max() < STEP + 0.05
    assert left.max() > STEP / 2


@pytest.mark.parametrize("angle", [1.5, -0.8])
@pytest.mark.parametrize("name", ["pocket", "body"])
def test_on_a_wedge_of_its_angle_a_tilted_floor_is_cut_level(angle, name, tmp_path):
    """The work turned about the joint's origin, which stays the work zero."""
    joint = angled(angle)
    seen = cut(joint, name, tmp_path, way="tilted")
    assert seen["valid"]
    assert seen["moves"] > 50
    deep = joint.length("pocket.depth") * math.cos(math.radians(angle))
    assert seen["lowest"] == pytest.approx(-deep, abs=0.01)
    assert sum(seen["y"]) == pytest.approx(0.0, abs=0.05)
    # The floor's edge at the end wall, which leans by the angle where it is square to the top.
    wall = -joint.length("pocket.depth") * math.sin(math.radians(angle))
    assert seen["x"][1] + seen["tool"] / 2 == pytest.approx(wall, abs=0.05)


def test_a_pocket_in_2_5d_is_not_for_a_tilted_floor(tmp_path):
    """FreeCAD 0.20 and 1.0 refuse it; 1.1 cuts it level, as deep as its deepest edge."""
    joint = angled(1.5)
    seen = cut(joint, "body", tmp_path)
    if seen["moves"]:
        deep = pytest.approx(floor(joint, -76.0), abs=0.01)
        assert (seen["lowest"], seen["lowest at the wall"]) == (deep, deep)
    else:
        assert seen["version"] in (["0", "20"], ["1", "0"])


def test_on_a_wedge_an_end_wall_square_to_the_floor_is_cut_as_stated(tmp_path):
    seen = cut(angled(1.5, wall="floor"), "body", tmp_path, way="tilted")
    assert seen["x"][1] + seen["tool"] / 2 == pytest.approx(0.0, abs=0.05)

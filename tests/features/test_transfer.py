"""A job file becomes a joint and comes back with the same values, deviations and options."""

import numpy as np
import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.read import read_job

pytestmark = pytest.mark.freecad

JOB = """
[job]
name = "Deeper pocket"
units = "inch"

[pocket]
depth = 0.72
angle = 1.5

[neck]
from = "neck.toml"
overhang = 0.4

[strings]
compensation = [0.04, 0.05, 0.06, 0.08, 0.1, 0.12]

[body]
thickness = 1.75
outline = "points"
outline_points = [[-3, -3], [14, -6], [14, 6], [-3, 3]]

[[cavity]]
x = 3
width = 3.5

[[screw]]
x = -0.6
y = 0.7
[[screw]]
x = -2
y = -0.7

[tolerance]
"pocket.depth" = "±0.005 in"
"pocket.length" = "±0.010 in"
"neck.nut_to_heel" = {limits = "±0.01 in", spread = "normal"}
"plate.thickness" = {spread = "triangular"}

[shop]
step_depth = "1/64 in"
stops = [0.6, 0.625]

[[option]]
name = "flat and shallow"
default = ["pocket.angle", "neck.overhang"]
[option.pocket]
depth = 0.625
[[option.screw]]
x = -1
y = 0

[[option]]
name = "with plate"
[option.plate]
cover = "surround"
[option.tolerance]
"pocket.depth" = "±0.01 in"
"plate.thickness" = {spread = "normal"}

[[option]]
name = "another neck"
[option.neck]
from = "neck21.toml"
"""
NECK_21 = """
[neck]
frets = 21
nut_to_heel = 470
"""
NECK = """
[part]
units = "mm"
[neck]
frets = 24
nut_to_heel = 470
height = 26.5
"""


@pytest.fixture
def file(tmp_path):
    (tmp_path / "neck.toml").write_text(NECK)
    (tmp_path / "neck21.toml").write_text(NECK_21)
    (tmp_path / "joint.toml").write_text(JOB)
    return tmp_path / "joint.toml"


def same(a, b):
    return set(a) == set(b) and all(np.allclose(a[k], b[k], atol=1e-12) if _is_number(a[k])
                                    else a[k] == b[k] for k in a)  # fmt: skip


def _is_number(value):
    return isinstance(value, float) or hasattr(value, "dtype")


def test_a_job_file_comes_back(document, file, tmp_path):
    from freecad_neckfit.features.transfer import joint_from_file, joint_to_file

    joint = joint_from_file(document, file)
    joint_to_file(joint, tmp_path / "back.toml")
    was, now = read_job(file), read_job(tmp_path / "back.toml")
    assert (joint.Label, now.name, now.units) == (was.name, was.name, was.units)
    for a, b in zip([was.base, *was.options], [now.base, *now.options], strict=True):
        assert a.name == b.name
        assert same(a.stated, b.stated)
        assert a.stated_tolerances.keys() == b.stated_tolerances.keys()
        for key, limits in a.stated_tolerances.items():
            assert limits == pytest.approx(b.stated_tolerances[key], abs=1e-12)
        assert a.spreads == b.spreads
    assert now.options[1].spreads["plate.thickness"] == "normal"


def test_it_comes_back_after_saving_and_an_edit(document, file, tmp_path, reopened):
    from freecad_neckfit.features.transfer import joint_from_file, joint_to_file

    joint_from_file(document, file)
    again = reopened(document, tmp_path / "joint.FCStd")
    again.Pocket.Depth = 18
    joint_to_file(again.Joint, tmp_path / "back.toml")
    was, now = read_job(file), read_job(tmp_path / "back.toml")
    wanted = {**was.base.stated, "pocket.depth": 18.0}
    assert same(now.base.stated, wanted)
    shallow, plate, _ = now.options
    assert shallow.stated["pocket.depth"] == pytest.approx(15.875)
    assert plate.stated["pocket.depth"] == pytest.approx(18.0)


def test_a_default_that_the_file_states_is_stated_again(document, tmp_path):
    from freecad_neckfit.features.transfer import joint_from_file, joint_to_file

    (tmp_path / "joint.toml").write_text("[pocket]\ndepth = 15.875\n")
    joint = joint_from_file(document, tmp_path / "joint.toml")
    joint_to_file(joint, tmp_path / "back.toml")
    assert read_job(tmp_path / "back.toml").base.stated == {"pocket.depth": 15.875}


def test_an_option_becomes_a_joint(document, file):
    from freecad_neckfit.features.gather import joint_stated
    from freecad_neckfit.features.transfer import joint_from_file

    joint = joint_from_file(document, file, option="flat and shallow")
    option = read_job(file).options[0]
    assert same(joint_stated(joint), option.stated)
    assert joint.Label == "flat and shallow"
    assert joint.Options == ""


def test_an_unknown_option_is_refused_and_leaves_the_document_alone(document, file):
    from freecad_neckfit.features.transfer import joint_from_file

    with pytest.raises(
        BadInput, match=r'joint\.toml has no option "with plates" \(nearest: "with plate"\)'
    ):
        joint_from_file(document, file, option="with plates")
    assert document.Objects == []


def test_an_edited_joint_that_is_refused_is_not_written(joint, tmp_path):
    from freecad_neckfit.features.transfer import joint_to_file

    joint.Pocket.Depth = 99
    with pytest.raises(BadInput, match=r"Pocket\.Depth: 99\.0 mm lies above"):
        joint_to_file(joint, tmp_path / "joint.toml")
    assert list(tmp_path.iterdir()) == []


def test_another_place_is_kept_as_an_option_and_written(document, file, tmp_path):
    from freecad_neckfit.features.gather import joint_stated
    from freecad_neckfit.features.options import keep_option
    from freecad_neckfit.features.transfer import joint_from_file, joint_to_file

    joint = joint_from_file(document, file)
    before = joint_stated(joint)
    after = {k: v for k, v in before.items() if k != "pocket.angle"} | {"pocket.depth": 16.25}
    names = [keep_option(joint, "shallower", after) for _ in range(2)]
    assert names == ["shallower", "shallower (2)"]
    assert same(joint_stated(joint), before)
    with pytest.raises(BadInput, match="needs a difference"):
        keep_option(joint, "the same", before)
    joint_to_file(joint, tmp_path / "more.toml")
    job = read_job(tmp_path / "more.toml")
    kept = job.options[-1]
    assert kept.name == "shallower (2)"
    assert kept.stated["pocket.depth"] == pytest.approx(16.25)
    assert "pocket.angle" not in kept.stated
    assert len(job.options) == len(read_job(file).options) + 2

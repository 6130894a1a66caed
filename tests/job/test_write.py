"""A job written and read again: the same values, deviations and options; no file half-written."""

import dataclasses

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.parameters import ALL, LISTS
from freecad_neckfit.job.quantity import Kind, Units
from freecad_neckfit.job.read import Job, JobFile, read_job
from freecad_neckfit.job.write import job_text, write_job

FULL = """
[job]
name = "a \\"quoted\\" joint \\\\ ½"
units = "inch"
[neck]
from = "shop/neck.toml"
relief = "0.3 mm"
[pocket]
depth = {value = "5/8 in", limits = "+0.2/-0.1 mm"}
angle = "1°30'"
[strings]
count = 4
compensation = [0.05, "1.3 mm", 0.1, 0.15]
left_handed = true
[body]
outline_points = [[0, 1], ["3 mm", 0.1], [7, 7]]
outline_file = "shop/o.dxf"
[climate]
temperature = "68 °F"
[shop]
step_depth = "1/64 in"
stops = [0.6, "16 mm"]
general = "m"
[tolerance]
"pocket.angle" = {limits = "±0.2 deg", spread = "normal"}
"plate.thickness" = {spread = "triangular"}
[[screw]]
x = -0.5
y = 0.75
[[screw]]
x = "-20 mm"
y = -0.75
[[option]]
name = "bare"
default = ["neck.relief", "old_pilot"]
screw = []
[option.pocket]
depth = 0.7
[[option]]
name = "other"
[option.neck]
from = "shop/other.toml"
[option.tolerance]
"pocket.depth" = 0.01
"pocket.angle" = {spread = "uniform"}
"""


@pytest.fixture
def full(tmp_path):
    shop = tmp_path / "shop"
    shop.mkdir()
    (shop / "neck.toml").write_text("[neck]\nheight = 24.3\n[strings]\nspread_nut = 36")
    (shop / "other.toml").write_text("[neck]\nheight = 25.3")
    path = tmp_path / "joint.toml"
    path.write_text(FULL, encoding="utf-8")
    return read_job(path)


def same(one, other):
    assert one.stated.keys() == other.stated.keys()
    for key, value in one.stated.items():
        if isinstance(value, np.ndarray):
            assert value.tolist() == other.stated[key].tolist()
        else:
            assert value == other.stated[key], key
            assert type(value) is type(other.stated[key])
    assert one.stated_tolerances == other.stated_tolerances
    assert one.spreads == other.spreads


def test_everything_reads_back_the_same(full, tmp_path):
    again_path = tmp_path / "again.toml"
    write_job(full, again_path)
    again = read_job(again_path)
    assert again.name == full.name
    assert again.units is full.units
    same(full.base, again.base)
    assert again.base.spreads == {"pocket.angle": "normal", "plate.thickness": "triangular"}
    assert again.options[1].spreads["pocket.angle"] == "uniform"
    assert [o.name for o in again.options] == [o.name for o in full.options]
    for one, other in zip(full.options, again.options, strict=True):
        same(one, other)


def test_a_job_written_into_another_folder_still_finds_its_parts(full, tmp_path):
    (tmp_path / "deep" / "er").mkdir(parents=True)
    path = tmp_path / "deep" / "er" / "joint.toml"
    write_job(full, path)
    assert '"../../shop/neck.toml"' in path.read_text()
    same(full.base, read_job(path).base)


def test_writing_what_was_read_again_changes_nothing(full, tmp_path):
    once = job_text(full, folder=tmp_path)
    path = tmp_path / "once.toml"
    path.write_text(once, encoding="utf-8")
    assert job_text(read_job(path), folder=tmp_path) == once


def test_inches_stay_inches_where_they_read_back_exactly(full, tmp_path):
    text = job_text(full, folder=tmp_path)
    assert "depth = 0.625" in text
    assert 'angle = "1.5 deg"' in text


def _value(p):
    if p.kind is Kind.FLAG:
        return st.booleans()
    if p.choices:
        return st.sampled_from(p.choices)
    if p.kind is Kind.COUNT:
        return st.integers(int(p.low), int(p.high))
    return st.floats(p.low, p.high)


SINGLE = [p for p in ALL.values() if not p.many and p.kind.is_measured and p.low is not None]
SINGLE += [p for p in ALL.values() if not p.many and (p.kind is Kind.FLAG or p.choices)]
SINGLE = [p for p in SINGLE if p.key != "job.units" and p.group not in LISTS]
MEASURED = [p for p in SINGLE if p.kind.is_measured and p.low is not None]


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(
    stated=st.fixed_dictionaries({}, optional={p.key: _value(p) for p in SINGLE}),
    limits=st.dictionaries(
        st.sampled_from([p.key for p in MEASURED]), st.floats(0, 0.5), max_size=5
    ),
    units=st.sampled_from(Units),
)
def test_any_permitted_values_read_back_bit_for_bit(tmp_path_factory, stated, limits, units):
    tolerances = {key: (-size, size / 2) for key, size in limits.items()}
    path = tmp_path_factory.mktemp("job") / "joint.toml"
    job = JobFile(path, Job.of("joint", stated, tolerances=tolerances), (), units)
    write_job(job, path)
    again = read_job(path)
    assert again.base.stated_tolerances == tolerances
    named = {} if units is Units.MM else {"job.units": "inch"}
    assert again.base.stated == stated | named


def test_a_failed_write_leaves_the_old_file_and_nothing_beside_it(full, tmp_path):
    folder = tmp_path / "results"
    folder.mkdir()
    old = folder / "joint.toml"
    old.write_text("old")
    broken = dataclasses.replace(full.base, tables=Job.of("x", {"pocket.depth": object()}).tables)
    with pytest.raises(TypeError):
        write_job(dataclasses.replace(full, base=broken), old)
    assert old.read_text() == "old"
    assert [p.name for p in folder.iterdir()] == ["joint.toml"]


@pytest.mark.parametrize("where", ["no such folder/joint.toml", "."])
def test_a_place_that_cannot_be_written_is_refused(full, tmp_path, where):
    with pytest.raises(BadInput, match="folder"):
        write_job(full, tmp_path / where)

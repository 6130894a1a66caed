"""A job file read: units, lists, deviations, and where each value comes from."""

from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job


@pytest.fixture
def read(tmp_path):
    def write_and_read(text):
        path = tmp_path / "joint.toml"
        path.write_text(text, encoding="utf-8")
        return read_job(path)

    return write_and_read


@pytest.fixture
def refused(read):
    def sentence(text):
        with pytest.raises(BadInput) as refusal:
            read(text)
        said = str(refusal.value)
        assert "\n" not in said
        assert said.endswith(".")
        assert len(said) < 400
        return said

    return sentence


def test_an_empty_file_is_the_default_joint(read):
    job = read("")
    assert job.name == "joint"
    assert job.base.stated == {}
    assert job.base.values["pocket.depth"] == ALL["pocket.depth"].default
    assert job.options == ()


@pytest.mark.parametrize(
    ("units", "written", "mm"),
    [
        ("mm", "16", 16.0),
        ("inch", "0.625", 15.875),
        ("inch", "'16 mm'", 16.0),
        ("mm", "'5/8 in'", 15.875),
        ("mm", "'1 3/4 in'", 44.45),
    ],
)
def test_bare_numbers_follow_the_file_and_units_follow_themselves(read, units, written, mm):
    job = read(f"[job]\nunits = '{units}'\n[neck]\nheight = {written}\n[pocket]\ndepth={written}")
    assert job.base.stated["pocket.depth"] == mm
    assert job.units is (Units.INCH if units == "inch" else Units.MM)


def test_an_angle_is_in_degrees_in_any_file(read):
    assert read("[job]\nunits='inch'\n[pocket]\nangle=1.5").base.stated["pocket.angle"] == 1.5


def test_an_array_of_tables_becomes_one_array_for_each_parameter(read):
    stated = read("[[cavity]]\nx = 100\n[[cavity]]\nx = '5 in'\ny = -20\nwidth = 50").base.stated
    assert stated["cavity.x"].tolist() == [100.0, 127.0]
    assert stated["cavity.y"].tolist() == [0.0, -20.0]
    assert stated["cavity.width"].tolist() == [ALL["cavity.width"].default, 50.0]


def test_no_screws_can_be_stated(read):
    assert len(read("screw = []").base.values["screw.x"]) == 0
    assert len(read("").base.values["screw.x"]) == 4


def test_a_list_for_each_string_follows_the_number_of_strings(read):
    job = read("[strings]\ncount = 4\ncompensation = [1, 2, '3 mm', 4]")
    assert job.base.values["strings.compensation"].tolist() == [1.0, 2.0, 3.0, 4.0]


def test_deviations_stand_beside_the_value_or_in_their_own_table(read):
    job = read(
        "[pocket]\ndepth = {value = '5/8 in', limits = '±0.1 mm'}\n"
        "[tolerance]\n'pocket.angle' = '+0.2/-0.1'\nneck.height = 0.05"
    )
    assert job.base.stated["pocket.depth"] == 15.875
    assert job.base.stated_tolerances == {
        "pocket.depth": (-0.1, 0.1),
        "pocket.angle": (-0.1, 0.2),
        "neck.height": (-0.05, 0.05),
    }
    assert job.tolerances["plate.thickness"] == ALL["plate.thickness"].tolerance


def test_how_a_dimension_spreads_stands_beside_its_limits(read):
    job = read(
        "[pocket]\ndepth = {value = 15, limits = '±0.1 mm', spread = 'normal'}\n"
        "angle = {value = 1, spread = 'triangular'}\n"
        "[tolerance]\n'plate.thickness' = {spread = 'normal'}\n"
        "neck.height = {limits = 0.05, spread = 'triangular'}"
    )
    assert job.base.spreads == {
        "pocket.depth": "normal",
        "pocket.angle": "triangular",
        "plate.thickness": "normal",
        "neck.height": "triangular",
    }
    assert job.base.stated_tolerances == {
        "pocket.depth": (-0.1, 0.1),
        "neck.height": (-0.05, 0.05),
    }


def test_the_origin_of_each_value_is_told(read):
    base = read("[pocket]\ndepth = 16").base
    assert base.origin("pocket.depth") == "stated in joint.toml"
    assert base.origins["pocket.angle"] == ALL["pocket.angle"].origin


def test_a_drawing_is_looked_for_beside_the_job(read, tmp_path):
    stated = read("[body]\noutline = 'file'\noutline_file = 'shapes/o.dxf'").base.stated
    assert stated["body.outline_file"] == str(tmp_path / "shapes/o.dxf")


def test_points_of_an_outline_may_carry_units(read):
    stated = read("[body]\noutline_points = [[0, 0], ['1 in', 0], [0, 50]]").base.stated
    assert stated["body.outline_points"] == [(0.0, 0.0), (25.4, 0.0), (0.0, 50.0)]


def test_text_with_a_byte_order_mark_and_other_line_ends_is_read(tmp_path):
    path = tmp_path / "joint.toml"
    path.write_bytes(b"\xef\xbb\xbf[pocket]\r\ndepth = 16\r\n")
    assert read_job(path).base.stated == {"pocket.depth": 16.0}


@pytest.mark.parametrize(
    ("text", "parts"),
    [
        ("[pocket]\ndepht = 16", ("joint.toml", '"pocket.depht"', "pocket.depth")),
        ("[neck]\ndepth = 16", ('"neck.depth"', "nearest")),
        ("[qqqq]\nx = 1", ("qqqq", "known: job, body, pocket")),
        ("[pocket]\ndepth = -1", ("pocket.depth", "-1 mm", "below", "3.00 mm", "60.00 mm")),
        ("[job]\nunits='inch'\n[pocket]\ndepth = 9", ("9 in", "above", "2.362 in")),
        ("[pocket]\ndepth = '100 in'", ('"100 in"', "above", "60.00 mm")),
        ("[pocket]\nangle = 90", ("90 °", "above", "6.00°")),
        ("[neck]\nfrets = 31", ("31", "above", "30")),
        ("[pocket]\nend_shape = 'rund'", ('"rund"', "nearest: round", '"square"')),
        ("[pocket]\ndepth = {value = 16}", ("pocket.depth", "limits")),
        ("[pocket]\ndepth = {value = 16, limits = '0.1 deg'}", ("limits of pocket.depth",)),
        ("[tolerance]\n'pocket.depth' = 900", ("limits of pocket.depth", "900", "57")),
        ("[tolerance]\n'pocket.end_shape' = 1", ("pocket.end_shape",)),
        ("[tolerance]\n'pocket.depht' = 1", ("pocket.depth",)),
        ("tolerance = 1", ("tolerance",)),
        ("[pocket]\ndepth = {value = 16, spread = 'flat'}", ("spread of pocket.depth", "normal")),
        ("[tolerance]\n'pocket.end_shape' = {spread = 'normal'}", ("pocket.end_shape", "spread")),
        ("[tolerance]\n'pocket.depth' = {}", ("limits of pocket.depth", "nothing")),
        ("[shop]\nstep_depth = 0", ("shop.step_depth", "0.001")),
        ("[shop]\ngeneral = 'x'", ("shop.general",)),
        ("[tolerance.pocket.depth]\nlower = 1", ("limits of pocket.depth",)),
        ("[strings]\ncompensation = 2", ("strings.compensation", "list")),
        ("[strings]\ncompensation = []", ("strings.compensation", "list of 0")),
        ("[strings]\ncompensation = [1,2,3,4,5,'x']", ("string 6",)),
        ("[strings]\ncompensation = [1,2,3,4,5,99]", ("string 6", "99 mm", "12.00 mm")),
        ("[strings]\ncount = 5\nmass = [1,1,1,1]", ("strings.mass", "4", "5")),
        ("[[screw]]\nx = -5", ("screw 1, y", "missing")),
        ("[[screw]]\nx = -5\ny = 1\nz = 2", ("screw.z",)),
        ("[[screw]]\nx = -5\ny = 'a'", ("screw 1, y",)),
        ("[screw]\nx = -5\ny = 1", ("[[screw]]",)),
        ("screw = [1]", ("[[screw]]",)),
        ("[[pocket]]\ndepth = 4", ("pocket", "[pocket]")),
        ("[job]\nunits = 'cm'", ("job.units", '"cm"', "inch")),
        ("[job]\nunits = 3", ("job.units", "3")),
        ("job = 3", ("job is 3",)),
        ("[wood]\nbody = 'balsa'", ("wood.body", '"balsa"', "red alder")),
        ("[pocket]\ndepth = 1979-05-27", ("pocket.depth", "date")),
        ("[pocket]\ndepth = 1e400", ("pocket.depth", "inf")),
        ("[body]\noutline_points = [[0,0],[1,1]]", ("outline_points", "2 points")),
        ("a = " + "9" * 5000, ("joint.toml", "not valid TOML")),
        ("a = " + "[" * 50_000, ("joint.toml", "deep")),
        ("[pocket]\ndepth = 1\ndepth = 2", ("line 3",)),
        ("'a\\nb' = 1", ("group",)),
        ('"a\\u0000\\n" = 1', ("\\u0000",)),
    ],
)  # fmt: skip
def test_bad_input_is_refused_in_one_sentence(refused, text, parts):
    sentence = refused(text)
    for part in parts:
        assert part in sentence


def test_many_screws_are_too_many(refused):
    assert "101" in refused("[[screw]]\nx = -5\ny = 1\n" * 101)


def test_many_points_are_too_many(refused):
    points = ",".join(["[0,0]"] * 4001)
    assert "4001 points" in refused(f"[body]\noutline_points = [{points}]")


def test_broken_text_is_told_with_line_and_column(refused):
    assert "joint.toml, line 2, column 3 is not valid TOML" in refused("[pocket]\na b")


def test_a_special_file_is_refused_without_reading_it():
    with pytest.raises(BadInput, match="no ordinary file"):
        read_job(Path("/dev/zero"))


def test_values_of_every_parameter_read_back_as_declared(read):
    """Each default, written as a bare number or word, reads as itself."""
    lines = {}
    for p in ALL.values():
        if p.default is None or p.many or p.key in ("job.name", "body.outline_file"):
            continue
        text = str(p.default).lower() if isinstance(p.default, bool) else repr(p.default)
        lines.setdefault(p.group, []).append(f"{p.name} = {text}")
    text = "\n".join(f"[{group}]\n" + "\n".join(rows) for group, rows in lines.items())
    stated = read(text).base.stated
    assert len(stated) > 150
    assert all(stated[key] == ALL[key].default for key in stated)
    assert not any(isinstance(value, np.ndarray) for value in stated.values())

"""A joint's year against published moistures and movements worked by hand."""

import xml.etree.ElementTree as ET
from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.decide.climate import Climate, climate_of, month_number, read_climate
from freecad_neckfit.decide.pictures.year import draw_year
from freecad_neckfit.decide.year import find_year
from freecad_neckfit.decide.year_text import year_lines, year_record
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import seasons_gap, seasons_side
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job

SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"


@pytest.fixture(scope="module")
def base():
    return read_job(SAMPLE).base


def room(humidity, temperature=20.0):
    return Climate(np.full(12, temperature), np.broadcast_to(np.asarray(humidity, float), 12))


def curve(year, start):
    return next(c for c in year.curves if c.title.startswith(start))


def test_the_months_take_on_the_published_moisture():
    # Equilibrium moisture after FPL-RN-0268 at 20 °C.
    humidity = [30, 40, 50, 65, 80, 30, 40, 50, 65, 80, 30, 40]
    expected = [6.19, 7.72, 9.27, 12.00, 16.04] * 2 + [6.19, 7.72]
    assert room(humidity).moisture == pytest.approx(expected, abs=0.006)


def test_differential_movement_by_hand(base):
    # Red alder .00151/.00256 and sugar maple .00165/.00353 (Wood Handbook, table 13-5).
    year = find_year(base.stated, room([50.0] * 12), cut=8.0)
    rise = float(year.moisture[0]) - 8.0
    alder = 0.00151 + (0.00256 - 0.00151) * np.sin(np.radians(30)) ** 2
    maple = 0.00165 + (0.00353 - 0.00165) * np.sin(np.radians(15)) ** 2
    sides = curve(year, "side")
    assert sides.values - sides.now == pytest.approx((56.2 * alder - 56.0 * maple) * rise / 2)
    alder_high = 0.00151 + (0.00256 - 0.00151) * np.cos(np.radians(30)) ** 2
    maple_high = 0.00165 + (0.00353 - 0.00165) * np.cos(np.radians(15)) ** 2
    gap = curve(year, "room")
    assert gap.values - gap.now == pytest.approx((18.6 * maple_high - 15.5 * alder_high) * rise)
    # The wood between heads and heel: 44.45 - 15.5 mm.
    grip = curve(year, "screws")
    assert grip.values - grip.now == pytest.approx(-28.95 * alder_high * rise / 4.2)


def test_driest_and_dampest_month_are_those_of_the_checks(base):
    year = find_year(base.stated, climate_of(base.values))
    case = Case(base.stated)
    for check, start in ((seasons_side.CHECK, "side"), (seasons_gap.CHECK, "room")):
        detail = check.read(case).detail
        values = curve(year, start).values
        assert values[0] == pytest.approx(float(detail["in the driest month"]))
        assert values[6] == pytest.approx(float(detail["in the dampest month"]))
    assert year.met is True


def test_months_outside_the_coefficients_are_not_checked(base):
    year = find_year(base.stated, room([20.0, *[45.0] * 10, 85.0]))
    assert year.known.tolist() == [False, *[True] * 10, False]
    for each in year.curves:
        assert np.isnan(each.values[[0, 11]]).all()
        assert np.isfinite(each.values[1:11]).all()
    assert year.met is None
    assert find_year(base.stated, room([45.0] * 12), cut=15.0).met is None
    assert not find_year(base.stated, room([45.0] * 12), cut=15.0).known.any()


def test_a_month_that_breaks_a_limit_decides(base):
    tight = base.stated | {"limits.gap_max": 0.60}
    year = find_year(tight, climate_of(base.values))
    assert year.met is False
    assert curve(year, "room").met is False
    text = "\n".join(year_lines(year, name="a", units=Units.MM))
    assert text.startswith("a: DOES NOT FIT through the year")
    assert "NOT MET" in text
    assert "X 0.65 mm" in text


def test_a_neck_without_overhang_or_wood_screws_has_no_such_curve(base):
    bare = base.stated | {"neck.overhang": 0.0, "screws.fixing": "insert"}
    titles = [c.title for c in find_year(bare, climate_of(base.values)).curves]
    assert titles == ["side clearance, each side"]


def test_a_climate_is_read_month_by_month(tmp_path):
    file = tmp_path / "room.csv"
    lines = [f"{n}, 68 °F, {30 + n}" for n in range(12, 0, -1)]
    file.write_text("\n".join(["month, temperature, humidity", *lines]))
    found = read_climate(file)
    assert found.temperature == pytest.approx(20.0)
    assert found.humidity.tolist() == list(range(31, 43))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("", "first line must name"),
        ("month,temperature\n1,20", "first line must name"),
        ("month,temperature,humidity\nJan,20,40", "twelve months"),
        ("month,temperature,humidity\n" + "Jan,20,40\n" * 12, "twelve months"),
        ("month,temperature,humidity\nSmarch,20,40", "no month"),
        ("month,temperature,humidity\n" + "\n".join(f"{n},20,400" for n in range(1, 13)), "400"),
        ("month,temperature,humidity\n" + "\n".join(f"{n},warm,40" for n in range(1, 13)), "warm"),
        ("month,temperature,humidity\n" + "\n".join(f"{n},20" for n in range(1, 13)), "humidity"),
    ],
)
def test_a_climate_that_cannot_be_read_is_refused_in_one_sentence(tmp_path, text, says):
    file = tmp_path / "room.csv"
    file.write_text(text)
    with pytest.raises(BadInput, match=says) as refusal:
        read_climate(file)
    assert "\n" not in str(refusal.value)


def test_months_by_word_or_number():
    assert month_number("July", "--month") == 6
    assert month_number("12", "--month") == 11
    with pytest.raises(BadInput, match="--month"):
        month_number("13", "--month")


def test_the_picture_shows_every_curve_with_its_unit_and_limits(base):
    year = find_year(base.stated, room([20.0, *[45.0] * 11]))
    root = ET.fromstring(draw_year(year, name="Heron"))
    said = " ".join(e.text for e in root.iter("{http://www.w3.org/2000/svg}text"))
    for word in ("room under the overhang [mm]", "side clearance, each side [mm]", "Jan", "Dec",
                 "screws' grip [shank diameters]", "moisture of the wood [%]", "most 0.80",
                 "could not be checked in every month"):  # fmt: skip
        assert word in said
    record = year_record(year, name="Heron")
    assert record["curves"][0]["values"][0] is None
    assert record["met"] is None

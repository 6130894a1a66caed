"""Sizes, tolerances and fits against the standards' tables; a sagitta."""

import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.standards import (
    general_angle_tolerance,
    general_tolerance,
    it_grade,
    screw_shank,
    shaft_deviation,
)


@pytest.mark.parametrize(("gauge", "inches"), [(6, 0.138), (8, 0.164), (10, 0.190), (12, 0.216)])
def test_wood_screw_shanks(gauge, inches):
    # ASME B18.6.1: D = 0.060 in + 0.013 in · number.
    assert 0.060 + 0.013 * gauge == pytest.approx(inches)
    assert screw_shank(gauge=gauge) == pytest.approx(inches * 25.4)


def test_a_screw_number_that_is_not_in_the_table():
    with pytest.raises(BadInput, match="screw number 7"):
        screw_shank(gauge=7)


@pytest.mark.parametrize(
    ("size", "widths"),
    [(56.0, (19, 30, 46, 74, 120, 190, 300, 460)), (100.0, (22, 35, 54, 87, 140, 220, 350, 540))],
)
def test_widths_of_tolerance_intervals(size, widths):
    # ISO 286-1, IT6 to IT13 in µm.
    for grade, width in enumerate(widths, start=6):
        assert it_grade(size=size, grade=grade) == pytest.approx(width / 1000)


def test_shaft_deviations():
    # ISO 286-1, upper deviations es in µm.
    assert shaft_deviation(size=56.0, letter="f") == pytest.approx(-0.030)
    assert shaft_deviation(size=56.0, letter="g") == pytest.approx(-0.010)
    assert shaft_deviation(size=100.0, letter="f") == pytest.approx(-0.036)
    assert shaft_deviation(size=100.0, letter="g") == pytest.approx(-0.012)


def test_fits_as_published():
    # ISO 286-2: 56 H8/f7 clearance 30 … 106 µm; 56 H7/h6 0 … 49 µm.
    hole, shaft = it_grade(size=56.0, grade=8), it_grade(size=56.0, grade=7)
    upper = shaft_deviation(size=56.0, letter="f")
    assert -upper == pytest.approx(0.030)
    assert hole - (upper - shaft) == pytest.approx(0.106)
    assert it_grade(size=56.0, grade=7) + it_grade(size=56.0, grade=6) == pytest.approx(0.049)


def test_sizes_belong_to_the_range_that_ends_with_them():
    assert it_grade(size=80.0, grade=6) == pytest.approx(0.019)
    assert it_grade(size=80.001, grade=6) == pytest.approx(0.022)
    with pytest.raises(BadInput, match="IT6 for 50 mm"):
        it_grade(size=50.0, grade=6)
    with pytest.raises(BadInput, match="IT5"):
        it_grade(size=56.0, grade=5)


# ISO 2768-1 table 1: ± mm in classes f, m, c, v.
LENGTHS = {
    2.0: (0.05, 0.1, 0.2, None),
    5.0: (0.05, 0.1, 0.3, 0.5),
    25.0: (0.1, 0.2, 0.5, 1.0),
    56.0: (0.15, 0.3, 0.8, 1.5),
    300.0: (0.2, 0.5, 1.2, 2.5),
    700.0: (0.3, 0.8, 2.0, 4.0),
}


@pytest.mark.parametrize("size", LENGTHS)
def test_general_tolerances_of_lengths(size):
    for letter, expected in zip("fmcv", LENGTHS[size], strict=True):
        if expected is None:
            with pytest.raises(BadInput, match="class v"):
                general_tolerance(size=size, tolerance_class=letter)
        else:
            assert general_tolerance(size=size, tolerance_class=letter) == expected


def test_general_tolerances_at_the_ends_of_their_ranges():
    assert general_tolerance(size=0.5, tolerance_class="m") == 0.1
    assert general_tolerance(size=30.0, tolerance_class="m") == 0.2
    assert general_tolerance(size=30.01, tolerance_class="m") == 0.3
    for size in (0.4, 1000.1):
        with pytest.raises(BadInput, match="ISO 2768-1"):
            general_tolerance(size=size, tolerance_class="m")
    with pytest.raises(BadInput, match="none of f, m, c and v"):
        general_tolerance(size=5.0, tolerance_class="x")


@pytest.mark.parametrize(
    ("side", "minutes"), [(10, 60), (11, 30), (50, 30), (76, 20), (400, 10), (401, 5)]
)
def test_general_tolerances_of_angles(side, minutes):
    # ISO 2768-1 table 3, classes f and m, by the shorter side in mm.
    for letter in "fm":
        found = general_angle_tolerance(shorter_side=side, tolerance_class=letter)
        assert found == pytest.approx(minutes / 60)


def test_sagitta_of_a_fretboard():
    # Circle of 304.8 under a chord of 56: 304.8 - √(304.8² - 28²) = 1.28881, plain geometry.
    sag = Case({"neck.radius_nut": 304.8}).frets.sag(u=300.0, y=28.0)
    assert sag == pytest.approx(1.28881, abs=5e-6)

"""Fret positions, relief, radius and fall-away."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.frets import fret_distance
from tests.fit.string_jobs import SORTS
from tests.fit.strings_by_points import Points


@pytest.mark.parametrize(
    ("fret", "distance"),
    [(1, 56.1257), (5, 250.8465), (7, 332.5801), (12, 500.0), (22, 719.3845), (24, 750.0)],
)
def test_frets_of_a_scale_of_1000(fret, distance):
    # Equal temperament, each semitone a factor 2^(1/12) = 1.0594630943593: L·(1 - 2^(-n/12)),
    # computed by hand to four places.
    assert fret_distance(scale=1000.0, fret=fret) == pytest.approx(distance, abs=5e-5)


def test_each_fret_takes_the_same_share_of_what_is_left():
    u = fret_distance(scale=647.7, fret=np.arange(25))
    shares = np.diff(u) / (647.7 - u[:-1])
    # 2^(1/12) = 1.0594630943593, so each fret takes 1 - 1/1.0594630943593 of the rest; the rule
    # of a seventeenth part (1/17.817) is this number, that of 18/17 is another.
    assert shares == pytest.approx(1 - 1 / 1.0594630943593, abs=1e-12)
    assert abs(shares[0] - 1 / 18) > 5e-4


def test_every_fret_of_one_scale_stands_square():
    frets = Case({}).frets
    assert frets.on_centre(12.0) == pytest.approx(647.7 / 2)
    assert frets.position(fret=0.0, scale=647.7) == 0.0


@pytest.mark.parametrize("square", [0.0, 7.0, 9.5])
def test_fanned_frets_cross_one_square_fret(square):
    case = Case({"neck.scale": 640.0, "neck.scale_bass": 690.0, "neck.square_fret": square})
    at = [string.fret(square) for string in case.strings]
    assert at == pytest.approx([case.frets.on_centre(square)] * 6)
    assert at[0] == pytest.approx(fret_distance(scale=665.0, fret=square))
    for string in case.strings:
        assert string.fret(12.0) - string.nut == pytest.approx(string.scale / 2)
    # Before the square fret the longer bass string begins farther from the bridge, after it ends
    # nearer to the tail.
    if square:
        assert case.strings[-1].nut < 0 < case.strings[0].nut
    assert case.strings[-1].saddle > case.strings[0].saddle


@pytest.mark.parametrize("relief", [0.1, 0.3])
@pytest.mark.parametrize(
    "neck", [{}, {"pocket.length": 60.0}, {"neck.frets": 14, "pocket.length": 40.0}]
)
def test_relief_is_the_largest_depth_under_the_chord(relief, neck):
    frets = Case({"neck.relief": relief, **neck}).frets
    first, last = frets.on_centre(1), frets.on_centre(frets.count)
    u = np.linspace(first, last, 400_001)
    chord = np.interp(u, [first, last], [frets.bow(first), frets.bow(last)])
    depth = chord - frets.bow(u)
    assert depth.max() == pytest.approx(relief, abs=1e-9)
    assert depth.min() >= -1e-12
    arm, width = frets.joint - first, last - first
    if arm < width:
        assert u[depth.argmax()] == pytest.approx(frets.joint - arm**2 / (2 * width), abs=0.01)
        assert frets.bow(frets.joint) == 0 == frets.bow(last)


def test_no_relief_where_the_joint_lies_before_fret_1():
    frets = Case({"neck.nut_to_heel": 100.0, "pocket.length": 80.0}).frets
    assert frets.joint < frets.on_centre(1)
    assert np.all(frets.bow(np.linspace(0, 600, 50)) == 0)


def test_sag_of_a_chord():
    # Sagitta of radius 304.8 over a chord of 56, from Pythagoras: 1.28881.
    frets = Case({}).frets
    assert frets.sag(u=0.0, y=28.0) == pytest.approx(1.28881, abs=5e-6)
    assert frets.sag(u=300.0, y=-28.0) == pytest.approx(304.8 - math.sqrt(304.8**2 - 784))


def test_a_conical_radius_runs_straight_from_nut_to_end():
    frets = Case({"neck.radius_nut": 254.0, "neck.radius_end": 406.4}).frets
    assert frets.radius(0.0) == 254.0
    assert frets.radius(frets.board_end) == pytest.approx(406.4)
    assert frets.radius(frets.board_end / 2) == pytest.approx((254.0 + 406.4) / 2)


def test_fall_away_begins_past_fret_12_and_is_straight():
    case = Case({"neck.fall_away": 0.2, "neck.frets": 24})
    frets = case.frets
    assert frets.fall(np.array([1.0, 11.0, 12.0])) == pytest.approx([0, 0, 0])
    assert frets.fall(24.0) == pytest.approx(0.2)
    # On a line: as far along the neck, as far down.
    u12, u17, u24 = (frets.on_centre(n) for n in (12.0, 17.0, 24.0))
    assert frets.fall(17.0) == pytest.approx(0.2 * (u17 - u12) / (u24 - u12))


def test_a_neck_of_12_frets_has_no_fall_away():
    frets = Case({"neck.fall_away": 0.2, "neck.frets": 12}).frets
    assert np.all(frets.fall(frets.numbers) == 0)


@pytest.mark.parametrize("sort", SORTS)
def test_crowns_point_by_point(sort):
    case, points = Case(SORTS[sort]), Points(SORTS[sort])
    for i, string in enumerate(case.strings):
        expected = [points.crown(n, i) for n in range(1, points.last + 1)]
        assert string.crown(case.frets.numbers) == pytest.approx(expected, abs=1e-9)
        assert string.crown(0.0) == pytest.approx(points.crown(0, i), abs=1e-9)


def test_half_width_runs_straight():
    frets = Case({}).frets
    assert frets.half_width(0.0) == 21.0
    assert frets.half_width(frets.board_end) == pytest.approx(28.0)

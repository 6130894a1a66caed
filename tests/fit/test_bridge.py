"""The bridge: room of the saddles, fixed radius, floating base, break angle, angle needed."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    bridge_angle_needed,
    bridge_base_gap,
    bridge_break_angle,
    bridge_radius,
    saddle_high,
    saddle_low,
    strings_downforce,
)
from tests.fit.string_jobs import SORTS, random_jobs
from tests.fit.strings_by_points import Points


def margins(job):
    case = Case(job)
    return saddle_low.read(case).value, saddle_high.read(case).value


@pytest.mark.parametrize("sort", SORTS)
def test_margins_point_by_point(sort):
    assert margins(SORTS[sort]) == pytest.approx(Points(SORTS[sort]).margins(), abs=1e-9)


def test_margins_of_random_jobs():
    found = np.array([(*margins(job), *Points(job).margins()) for job in random_jobs(120)])
    assert found[:, :2] == pytest.approx(found[:, 2:], abs=1e-9)
    # The jobs try both ends of the travel, and neither.
    for column in (found[:, 0], found[:, 1], found[:, :2].min(axis=1)):
        assert 10 < (column < 0).sum() < 110


@pytest.mark.parametrize("make", ["separate saddles", "fixed radius", "floating"])
def test_a_deeper_pocket_takes_from_lowering_what_it_gives_to_raising(make):
    job = {"bridge.make": make, "bridge.base_low": 0.0, "bridge.base_high": 0.0}
    low, high = margins(job)
    deeper = margins(job | {"pocket.depth": 15.875 + 0.4})
    assert deeper == pytest.approx((low - 0.4, high + 0.4), abs=1e-9)


@pytest.mark.parametrize(
    ("job", "up"),
    [
        ({"bridge.mount": "plate", "plate.cover": "surround"}, -2.4),
        ({"bridge.mount": "plate"}, 0.0),
        ({"bridge.mount": "recess", "bridge.recess": 3.0}, 3.0),
        ({"finish.top": 0.75}, -0.5),
    ],
)
def test_mount_counts_into_the_height(job, up):
    low, high = margins({})
    assert margins(job) == pytest.approx((low + up, high - up), abs=1e-9)


def test_left_handed_is_the_mirror():
    for job in random_jobs(30):
        one = Case(job | {"strings.left_handed": False, "pickup_neck.fitted": True})
        two = Case(job | {"strings.left_handed": True, "pickup_neck.fitted": True})
        assert one.saddles.above == pytest.approx(two.saddles.above, abs=1e-12)
        assert one.bridge.shifts == pytest.approx(two.bridge.shifts, abs=1e-12)
        for right, left in zip(one.saddles.places, two.saddles.places, strict=True):
            assert left == pytest.approx((right[0], -right[1], right[2]))
        assert one.strings[0].y_saddle > 0 > two.strings[0].y_saddle


# --- fixed radius -----------------------------------------------------------------------------
def test_fixed_radius_that_matches_leaves_nothing():
    # Undersides on a circle of 304.8 at the bridge: a cylinder of that radius whose strings run
    # parallel and with the same action has exactly that.
    job = {
        "bridge.make": "fixed radius", "strings.spread_nut": 52.5, "strings.action_bass": 1.6,
        "strings.nut_bass": 0.4, "strings.compensation_treble": 2.0,
        "strings.compensation_bass": 2.0,
    }  # fmt: skip
    assert bridge_radius.read(Case(job)).value == pytest.approx(0.0, abs=1e-9)


def test_fixed_radius_too_round_worked_by_hand():
    # The same strings on saddles of 254: at y = 15.75 of ± 26.25 a circle stands
    # √(R² - 15.75²) - √(R² - 26.25²) over its outer strings.
    job = {
        "bridge.make": "fixed radius", "strings.spread_nut": 52.5, "strings.action_bass": 1.6,
        "strings.nut_bass": 0.4, "strings.compensation_treble": 2.0,
        "strings.compensation_bass": 2.0, "bridge.saddle_radius": 254.0,
    }  # fmt: skip

    def arch(radius, y):
        return math.sqrt(radius**2 - y**2) - math.sqrt(radius**2 - 26.25**2)

    error = max(arch(254.0, y) - arch(304.8, y) for y in (15.75, 5.25)) / 2
    reading = bridge_radius.read(Case(job))
    assert reading.value == pytest.approx(error, abs=1e-9)
    assert abs(reading.place[1]) == pytest.approx(5.25)
    # Rounder saddles carry the middle strings too high: the action is not too low there.
    assert reading.detail["action too low by"][2] == pytest.approx(-error)


@pytest.mark.parametrize("sort", [s for s in SORTS if s.startswith("fixed")])
def test_fixed_radius_point_by_point(sort):
    case, p = Case(SORTS[sort]), Points(SORTS[sort])
    expected = [p.residual(i) for i in range(p.count)]
    assert case.bridge.residuals == pytest.approx(expected, abs=1e-9)
    assert bridge_radius.read(case).value == pytest.approx(max(map(abs, expected)) / 2, abs=1e-9)


def test_half_the_residual_is_the_action_error():
    job = SORTS["fixed radius"]
    case = Case(job)
    for string, residual, real in zip(
        case.strings, case.bridge.residuals, case.bridge.reached, strict=True
    ):
        # From the nut, unmoved, to the saddle: fret 12 lies halfway but for the compensation.
        half = (string.fret(12.0) - string.nut) / (string.saddle - string.nut)
        error = (string.saddle_height - real) * half
        assert error == pytest.approx(residual / 2, rel=0.01, abs=1e-12)


def test_radius_does_not_apply_to_separate_saddles():
    assert not bridge_radius.read(Case({})).applies
    assert not bridge_base_gap.read(Case({})).applies


@pytest.mark.parametrize("sort", SORTS)
def test_reached_heights_point_by_point(sort):
    case, p = Case(SORTS[sort]), Points(SORTS[sort])
    expected = [p.real_saddle_z(i) for i in range(p.count)]
    assert case.bridge.reached == pytest.approx(expected, abs=1e-9)


# --- floating ---------------------------------------------------------------------------------
@pytest.mark.parametrize("sort", [s for s in SORTS if s.startswith("floating")])
def test_floating_base_point_by_point(sort):
    assert bridge_base_gap.read(Case(SORTS[sort])).value == pytest.approx(
        Points(SORTS[sort]).base(), abs=1e-9
    )


def test_a_floating_bridge_is_feasible_where_some_base_height_serves_all_strings():
    seen = set()
    for job in random_jobs(80, seed=3):
        job |= {"bridge.make": "floating", "bridge.high": job["bridge.low"] + 1.7}
        above, v = Points(job).above(), Case(job).values
        bases = np.linspace(v["bridge.base_low"], v["bridge.base_high"], 20_001)
        serves = (min(above) >= bases + v["bridge.low"]) & (max(above) <= bases + v["bridge.high"])
        least = min(margins(job))
        if abs(least) > 1e-3:
            assert serves.any() == (least > 0)
            seen.add(bool(serves.any()))
    assert seen == {True, False}


# --- break angle ------------------------------------------------------------------------------
@pytest.mark.parametrize("sort", SORTS)
@pytest.mark.parametrize("anchor", [(30.0, 2.0), (4.0, -40.0), (60.0, 14.0), (1.0, -60.0)])
def test_break_angle_point_by_point(sort, anchor):
    back, height = anchor
    job = SORTS[sort] | {"bridge.anchor_back": back, "bridge.anchor_height": height}
    case, expected = Case(job), Points(job).break_angles()
    reading = bridge_break_angle.read(case)
    assert reading.value == pytest.approx(min(expected), abs=1e-9)
    assert reading.detail["break angle of each string"] == pytest.approx(np.array(expected))
    force = sum(
        2 * string.tension * math.sin(math.radians(angle) / 2)
        for string, angle in zip(case.strings, expected, strict=True)
    )
    assert strings_downforce.read(case).value == pytest.approx(force, abs=1e-9)


def test_break_angle_worked_by_hand():
    # A string level with the top, 10 over the mount, falls to an anchor 10 behind and at the
    # mount: 45 degrees; with 8 behind and 4 high, atan(6/8).
    job = {
        "strings.zero_fret": True, "neck.relief": 0.0, "neck.radius_nut": 5000.0,
        "strings.spread_nut": 50.0, "strings.spread_bridge": 50.0, "bridge.anchor_height": 0.0,
    }  # fmt: skip
    case = Case(job)
    climb = math.degrees(math.atan(case.strings[0].climb))
    assert climb == pytest.approx(math.degrees(math.atan(1.6 / 323.85)))
    above = case.saddles.above[0]
    level = Case(job | {"pocket.depth": 15.875 + above - 10.0, "bridge.anchor_back": 10.0})
    assert level.saddles.above[0] == pytest.approx(10.0)
    angles = bridge_break_angle.read(level).detail["break angle of each string"]
    assert angles[0] == pytest.approx(45.0 + climb)


# --- the angle needed at this depth -----------------------------------------------------------
def bisected(job, which):
    low, high = -30.0, 30.0
    for _ in range(60):
        middle = (low + high) / 2
        margin = Points(job | {"pocket.angle": middle}).margins()[which]
        if (margin > 0) == (which == 0):
            high = middle
        else:
            low = middle
    return (low + high) / 2


@pytest.mark.parametrize("sort", SORTS)
def test_angle_needed_point_by_point(sort):
    job = SORTS[sort]
    low, high = bisected(job, 0), bisected(job, 1)
    reading = bridge_angle_needed.read(Case(job))
    angle = job.get("pocket.angle", 0.0)
    assert reading.detail["least angle at this depth"] == pytest.approx(low, abs=1e-8)
    assert reading.detail["largest angle at this depth"] == pytest.approx(high, abs=1e-8)
    assert reading.value == pytest.approx(max(low - angle, angle - high, 0.0), abs=1e-8)


def test_deeper_pocket_and_bridge_that_needs_an_angle():
    # Common practice, no source: a bridge that needs an angled pocket and the deeper pocket do
    # not go together. Here the angle needed at each depth: about a third of a degree a mm.
    high_bridge = {"bridge.low": 13.0, "bridge.high": 18.0}
    usual, deep = (
        bridge_angle_needed.read(Case(high_bridge | {"pocket.depth": depth}))
        for depth in (15.875, 18.288)
    )
    assert usual.value > 0
    gain = (deep.value - usual.value) / (18.288 - 15.875)
    assert gain == pytest.approx(math.degrees(1 / 188.3), rel=0.03)
    tipped = Case(high_bridge | {"pocket.depth": 18.288, "pocket.angle": float(deep.value)})
    assert saddle_low.read(tipped).value == pytest.approx(0.0, abs=1e-8)
    assert bridge_angle_needed.read(tipped).value == pytest.approx(0.0, abs=1e-8)


def test_no_angle_does_where_saddles_travel_too_little():
    reading = bridge_angle_needed.read(Case({"bridge.low": 11.0, "bridge.high": 11.5}))
    assert not reading.detail["some angle does"]
    assert reading.value > 0


def test_a_bound_beyond_reason_is_cut():
    # The saddles stand some 30 behind the end wall: a degree moves them by half a millimetre.
    job = {"neck.nut_to_heel": 620.0, "bridge.low": 1.0, "bridge.high": 60.0}
    reading = bridge_angle_needed.read(Case(job))
    assert reading.detail["largest angle at this depth"] == 30.0
    assert reading.known
    assert reading.value == 0.0


def test_angle_beyond_reason_is_not_known():
    reading = bridge_angle_needed.read(Case({"bridge.low": 200.0, "bridge.high": 210.0}))
    assert not reading.known

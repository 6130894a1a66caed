"""Strings over every fret, open and fretted, with what the saddles can do."""

import numpy as np
import pytest

from freecad_neckfit.fit.buzz import fretted_room, least_line, lower_edge, open_room, pairs
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import strings_fretted, strings_open
from tests.fit.string_jobs import SORTS, random_jobs
from tests.fit.strings_by_points import Points


@pytest.mark.parametrize("sort", SORTS)
def test_every_fret_point_by_point(sort):
    case, points = Case(SORTS[sort]), Points(SORTS[sort])
    assert strings_open.read(case).value == pytest.approx(min(points.open_rooms()), abs=1e-9)
    assert strings_fretted.read(case).value == pytest.approx(min(points.fretted_rooms()), abs=1e-9)


def test_random_jobs_point_by_point():
    buzzing = 0
    for job in random_jobs(60, seed=11):
        case, points = Case(job), Points(job)
        fretted = strings_fretted.read(case).value
        assert strings_open.read(case).value == pytest.approx(min(points.open_rooms()), abs=1e-9)
        assert fretted == pytest.approx(min(points.fretted_rooms()), abs=1e-9)
        buzzing += fretted < 0.02
    assert 5 < buzzing < 55


def test_fretted_clearance_worked_by_hand():
    # A straight neck on a flat board, action 2 over fret 12 from the zero fret's crown. The
    # saddle is 4 over the crowns; fretted at 21, the string has climbed over fret 22 by the
    # share of the way to the saddle: 4·(u22 - u21)/(L - u21) = 4·(1 - 2^(-1/12)).
    job = {
        "neck.relief": 0.0, "neck.radius_nut": 5000.0, "strings.zero_fret": True,
        "strings.spread_nut": 50.0, "strings.spread_bridge": 50.0, "strings.action_treble": 2.0,
        "strings.action_bass": 2.0, "strings.compensation_treble": 0.0,
        "strings.compensation_bass": 0.0,
    }  # fmt: skip
    # Equal for every neighbour, in equal temperament.
    assert strings_fretted.read(Case(job)).value == pytest.approx(4 * (1 - 2 ** (-1 / 12)))
    # Open: the first fret from the zero fret's crown, the same share.
    assert strings_open.read(Case(job)).value == pytest.approx(4 * (1 - 2 ** (-1 / 12)))


def test_saddles_that_cannot_come_up_make_strings_buzz():
    # Shallow pocket: the strings want saddles higher than the bridge has.
    low = Case({"pocket.depth": 10.0})
    assert min(low.bridge.shifts) < -4
    within = Case({"pocket.depth": 10.0, "bridge.high": 20.0})
    assert strings_fretted.read(low).value < 0 < strings_fretted.read(within).value
    assert strings_open.read(low).value < strings_open.read(within).value


def test_saddles_that_cannot_go_down_do_not_buzz():
    high = Case({"pocket.depth": 19.0})
    assert max(high.bridge.shifts) > 0.5
    assert strings_fretted.read(high).value > strings_fretted.read(Case({})).value


def test_a_lifted_saddle_lifts_the_string_by_its_share_of_the_way():
    case = Case({})
    string, fret = case.strings[2], np.array([7.0, 19.0])
    n, m = string.fret(fret)
    constant, slope = pairs(
        string.fret(case.frets.numbers), string.rise(case.frets.numbers), saddle_u=string.saddle
    )
    order = [(a, b) for a in range(1, 22) for b in range(a + 1, 23)]
    at = order.index((7, 19))
    assert slope[at] == pytest.approx((m - n) / (string.saddle - n), abs=1e-15)
    saddle = string.saddle_height - case.frets.crest
    crown = string.rise(fret)
    line = crown[0] + (saddle - crown[0]) * (m - n) / (string.saddle - n)
    assert constant[at] + slope[at] * saddle == pytest.approx(line - crown[1], abs=1e-12)


def test_lower_edge_equals_the_least_of_all_lines():
    draw = np.random.default_rng(5)
    for count in (1, 2, 30, 231):
        constant, slope = draw.normal(size=count), draw.uniform(0, 1, size=count)
        at = draw.uniform(-40, 40, size=5000)
        expected = np.min(constant + slope * at[:, None], axis=1)
        assert least_line(constant, slope=slope, at=at) == pytest.approx(expected, abs=1e-12)
        crossings = lower_edge(constant.tobytes(), slope.tobytes())[1]
        assert crossings == sorted(crossings)
        # A narrow range must give the same as the wide one, also exactly on a crossing.
        for x in [*crossings, 0.3]:
            near = np.array([x, x + 1e-9])
            expected = np.min(constant + slope * near[:, None], axis=1)
            assert least_line(constant, slope=slope, at=near) == pytest.approx(expected, abs=1e-12)


def test_parallel_lines_keep_the_lowest():
    constant, slope = np.array([1.0, 0.5, 2.0]), np.array([0.2, 0.2, 0.2])
    assert least_line(constant, slope=slope, at=np.array([0.0, 10.0])) == pytest.approx([0.5, 2.5])


@pytest.mark.parametrize("sort", SORTS)
def test_one_job_names_string_and_frets(sort):
    case, points = Case(SORTS[sort]), Points(SORTS[sort])
    opened, fretted = strings_open.read(case), strings_fretted.read(case)
    rooms, count = points.open_rooms(), points.last
    at = (opened.detail["string, from the treble"] - 1) * count + opened.detail["over fret"] - 1
    assert rooms[at] == pytest.approx(min(rooms), abs=1e-9)
    order = [
        (i, n, m)
        for i in range(points.count)
        for n in range(1, count)
        for m in range(n + 1, count + 1)
    ]
    index, fret = fretted.detail["string, from the treble"] - 1, fretted.detail["over fret"]
    rooms = points.fretted_rooms()
    found = rooms[order.index((index, fretted.detail["fretted at"], fret))]
    assert found == pytest.approx(min(rooms), abs=1e-9)
    x, z = points.body(points.u(fret, index), points.crown(fret, index))
    y = points.y(index, points.u(fret, index))
    assert fretted.place == pytest.approx((x, y, z), abs=1e-9)


@pytest.mark.parametrize("sort", SORTS)
def test_one_neck_and_a_neck_for_each_job_give_the_same(sort):
    depths = np.linspace(12.0, 22.0, 41)
    shared = Case(SORTS[sort] | {"pocket.depth": depths})
    relief = Case(SORTS[sort])["neck.relief"]
    each = Case(
        SORTS[sort] | {"pocket.depth": depths, "neck.relief": np.full(depths.shape, relief)}
    )
    assert shared.frets.one_neck
    assert not each.frets.one_neck
    for room in (open_room, fretted_room):
        for i, string in enumerate(shared.strings):
            one = room(shared, string, saddle=shared.bridge.reached[i])
            two = room(each, each.strings[i], saddle=each.bridge.reached[i])
            assert one == pytest.approx(two, abs=1e-12)


def test_parts_of_many_necks_join_without_a_seam(monkeypatch):
    job = {"neck.relief": np.linspace(0.0, 0.5, 23), "pocket.depth": np.linspace(14.0, 18.0, 23)}
    whole = strings_fretted.read(Case(job)).value
    monkeypatch.setattr("freecad_neckfit.fit.buzz.CHUNK", 5)
    assert strings_fretted.read(Case(job)).value == pytest.approx(whole, abs=0)

"""The open strings: set-up, saddle height, scale gate, tension, edges, strings over the top."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    scale_reach,
    strings_edge,
    strings_plate,
    strings_pull,
    strings_top,
)
from tests.fit.string_jobs import SORTS, random_jobs
from tests.fit.strings_by_points import Points

FLAT_BOARD = {"neck.radius_nut": 5000.0, "neck.relief": 0.0, "strings.count": 4}


@pytest.mark.parametrize("sort", SORTS)
def test_set_up_is_met_over_fret_1_and_fret_12(sort):
    case = Case(SORTS[sort])
    for i, string in enumerate(case.strings):
        share = i / (len(case.strings) - 1)
        action = 1.6 + (case["strings.action_bass"] - 1.6) * share
        assert string.height(string.fret(12.0)) - string.crown(12.0) == pytest.approx(action)
        if case["strings.zero_fret"]:
            assert string.height(string.nut) == pytest.approx(string.crown(0.0))
        else:
            over_first = string.height(string.fret(1.0)) - string.crown(1.0)
            assert over_first == pytest.approx(0.4 + 0.1 * share)


@pytest.mark.parametrize("sort", SORTS)
def test_saddle_point_by_point(sort):
    case, points = Case(SORTS[sort]), Points(SORTS[sort])
    for i in range(len(case.strings)):
        x, z = case.saddles.points[i]
        assert (x, z) == pytest.approx(points.saddle(i), abs=1e-9)
    assert case.saddles.above == pytest.approx(points.above(), abs=1e-9)


def test_saddle_height_worked_by_hand():
    # Straight neck, flat board, zero fret: the string climbs 2.0 over fret 12, half a scale, so
    # it stands 4.0 over the crowns at the full scale. Heel flat on the floor 16 down:
    # 25 + 1 - 16 + 4 = 14, less what the board of radius 5000 sags under the outer string.
    job = FLAT_BOARD | {
        "strings.zero_fret": True, "strings.action_treble": 2.0, "strings.action_bass": 2.0,
        "strings.compensation_treble": 0.0, "strings.compensation_bass": 0.0,
        "neck.height": 25.0, "neck.fret_height": 1.0, "pocket.depth": 16.0,
        "strings.spread_nut": 50.0, "strings.spread_bridge": 50.0,
    }  # fmt: skip
    sag = 5000 - math.sqrt(5000**2 - 25**2)
    case = Case(job)
    assert case.saddles.height[0] == pytest.approx(14.0 - sag, abs=1e-9)
    # Scale 647.7 from the nut, heel end at 460.6: 187.1 behind the end wall.
    assert case.saddles.x[0] == pytest.approx(187.1, abs=1e-9)


def test_more_relief_lowers_the_saddle_about_three_times_as_much():
    # Common practice of set-up, no source: at fixed action the saddle falls by about 3·r.
    low = Case({"neck.relief": 0.1}).saddles.height[0]
    high = Case({"neck.relief": 0.3}).saddles.height[0]
    assert (high - low) / 0.2 == pytest.approx(-3.0, abs=0.35)


@pytest.mark.parametrize("delta", [-1.0, 0.7, 2.413])
def test_a_deeper_pocket_lowers_strings_and_saddles_as_much(delta):
    before, after = (
        Case({"pocket.angle": 0.8}),
        Case({"pocket.angle": 0.8, "pocket.depth": 15.875 + delta}),
    )
    for one, two in zip(before.saddles.height, after.saddles.height, strict=True):
        assert two - one == pytest.approx(-delta, abs=1e-9)
    for check in (strings_top, strings_edge):
        moved = check.read(after).value - check.read(before).value
        assert moved == pytest.approx(-delta if check is strings_top else 0.0, abs=1e-9)


def test_a_degree_more_lifts_the_saddle_by_its_distance_in_radians():
    step = 0.001
    one, two = Case({}), Case({"pocket.angle": step})
    for x, low, high in zip(one.saddles.x, one.saddles.height, two.saddles.height, strict=True):
        gain = (high - low) / step
        assert gain == pytest.approx(x * math.pi / 180, rel=1e-3)
        assert 3.0 < gain < 3.5


@pytest.mark.parametrize("sort", SORTS)
def test_scale_gate_point_by_point(sort):
    job = SORTS[sort]
    case, points = Case(job), Points(job)
    x = [points.saddle(i)[0] for i in range(points.count)]
    rooms = [min(at - 184.5, 194.5 - at) for at in x]
    reading = scale_reach.read(case)
    assert reading.value == pytest.approx(min(rooms), abs=1e-9)
    assert reading.detail["X of each saddle"] == pytest.approx(np.array(x), abs=1e-9)
    assert reading.place[0] == pytest.approx(x[int(np.argmin(rooms))], abs=1e-9)


@pytest.mark.parametrize("angle", [-5.0, -1.0, 0.0, 2.0])
@pytest.mark.parametrize(
    ("front", "travel"), [(187.0, 4.0), (188.5, 10.0), (184.5, 6.7), (184.0, 7.2), (180.0, 10.6)]
)
def test_scale_gate_names_the_angles_that_land(front, travel, angle):
    job = {"bridge.front": front, "bridge.travel": travel}
    reading = scale_reach.read(Case(job | {"pocket.angle": angle}))
    first = float(reading.detail["least angle that lands"])
    last = float(reading.detail["largest angle that lands"])

    def room(at):
        return scale_reach.read(Case(job | {"pocket.angle": at})).value

    # Every angle between lands; just beyond either end none does, unless a job cannot state it.
    assert all(room(at) > -1e-4 for at in np.linspace(first, last, 60))
    for end, beyond in ((first, first - 0.05), (last, last + 0.05)):
        if -6 < end < 6:
            assert room(end) == pytest.approx(0.0, abs=1e-3)
            assert room(beyond) < 0
    # It is the stretch nearest to the job's own angle.
    distance = max(first - angle, angle - last, 0.0)
    others = [at for at in np.linspace(-6, 6, 121) if room(at) >= 0]
    assert distance == pytest.approx(min(abs(at - angle) for at in others), abs=0.11)


def test_scale_gate_without_any_angle_says_so():
    reading = scale_reach.read(Case({"bridge.front": 230.0}))
    assert reading.value == pytest.approx(188.3 - 230.0, abs=1e-9)
    assert np.isnan(reading.detail["least angle that lands"])


@pytest.mark.parametrize(("frequency", "mass"), [(82.4, 6.846), (196.0, 1.210), (329.6, 0.4279)])
def test_published_string_tension(frequency, mass):
    # Young and Freedman, University Physics, 14th edition, problem 15.74: strings of 25.5 in at
    # a tension of 78.0 N; masses per length worked out from it.
    case = Case({
        "neck.scale": 25.5 * 25.4, "strings.pitch": np.full(6, frequency),
        "strings.mass": np.full(6, mass),
    })  # fmt: skip
    assert case.strings[0].tension == pytest.approx(78.0, rel=3e-4)
    assert strings_pull.read(case).value == pytest.approx(6 * 78.0, rel=3e-4)


def test_tension_of_a_plain_string():
    # Plain steel of 7850 kg/m3 (published density), 0.010 in thick, at E4 by ISO 16.
    mass = 7850e3 * math.pi / 4 * (0.010 * 0.0254) ** 2
    assert mass == pytest.approx(0.39777, abs=5e-6)
    pitch, masses = np.full(6, 329.6276), np.full(6, mass)
    case = Case({"strings.pitch": pitch, "strings.mass": masses})
    assert case.strings[0].tension == pytest.approx(72.52, abs=0.005)


def test_tension_follows_each_strings_own_scale():
    case = Case({
        "neck.scale": 600.0, "neck.scale_bass": 700.0, "strings.pitch": np.full(6, 100.0),
        "strings.mass": np.full(6, 1.0),
    })  # fmt: skip
    # 1 g/m at 100 Hz: 0.001·(2·0.6·100)² = 14.4 N and 0.001·(2·0.7·100)² = 19.6 N.
    assert case.strings[0].tension == pytest.approx(14.4)
    assert case.strings[-1].tension == pytest.approx(19.6)


def test_edge_margin_worked_by_hand():
    # A parallel board of 60 and strings 50 apart leave 5 a side. Pocket 0.4 wider than the heel
    # over 80: the neck turns by 0.005, about the pocket's middle 40 before the end wall; the
    # saddle at X = 200 is missed by 240·0.005 = 1.2; at fret 12 half of that.
    job = {
        "neck.width_nut": 60.0, "neck.width_end": 60.0, "neck.frets": 12,
        "strings.spread_nut": 50.0, "strings.spread_bridge": 50.0, "pocket.length": 80.0,
        "pocket.width_end": 56.4, "pocket.width_mouth": 56.4, "neck.heel_width_end": 56.0,
        "neck.heel_width_mouth": 56.0, "neck.scale": 650.0, "neck.nut_to_heel": 450.0,
        "strings.compensation_treble": 0.0, "strings.compensation_bass": 0.0,
    }  # fmt: skip
    reading = strings_edge.read(Case(job))
    assert reading.detail["bridge's centre missed by up to"] == pytest.approx(1.2)
    assert reading.value == pytest.approx(5.0 - 0.6)
    # A heel too wide for its pocket does not swing at all, and finish takes its share.
    assert strings_edge.read(
        Case(job | {"neck.heel_width_end": 57.0, "neck.heel_width_mouth": 57.0})
    ).value == pytest.approx(5)
    finished = strings_edge.read(Case(job | {"finish.wall": 0.1})).value
    assert finished == pytest.approx(5.0 - 239.9 * 0.0025 / 2)


@pytest.mark.parametrize("sort", SORTS)
def test_edge_margin_point_by_point(sort):
    case, p = Case(SORTS[sort]), Points(SORTS[sort])
    v, rooms = p.v, []
    clear = (
        v["pocket.width_end"]
        - v["neck.heel_width_end"]
        + v["pocket.width_mouth"]
        - v["neck.heel_width_mouth"]
        - 4 * v["finish.wall"]
    ) / 2
    for i in (0, p.count - 1):
        u = p.u(p.last, i)
        half = (
            v["neck.width_nut"]
            + (v["neck.width_end"] - v["neck.width_nut"])
            * u
            / (v["neck.nut_to_heel"] + v["neck.overhang"])
        ) / 2
        miss = clear / v["pocket.length"] * (p.saddle(i)[0] + v["pocket.length"] / 2)
        part = 1 - 2 ** (-p.last / 12)
        rooms.append(half - abs(p.y(i, u)) - miss * part)
    assert strings_edge.read(case).value == pytest.approx(min(rooms), abs=1e-9)


@pytest.mark.parametrize("sort", SORTS)
@pytest.mark.parametrize("cover", ["none", "surround", "treble side"])
def test_strings_over_the_top_point_by_point(sort, cover):
    job = {"plate.cover": cover, **SORTS[sort]}
    case, p = Case(job), Points(job)
    mean = sum(p.saddle(i)[0] for i in range(p.count)) / p.count
    x, rooms = (p.board_end() + mean) / 2, []
    for i in range(p.count):
        ua, ub = p.u(1, i), p.saddle_u(i)
        a, b = p.body(ua, p.open_z(i, ua)), p.body(ub, p.open_z(i, ub))
        t = (x - a[0]) / (b[0] - a[0])
        y, z = p.y(i, ua + t * (ub - ua)), a[1] + t * (b[1] - a[1])
        there = p.v["plate.cover"] == "surround" or (
            p.v["plate.cover"] == "treble side" and i <= (p.count - 1) / 2
        )
        there = there and 0.5 <= x <= 170.0
        rooms.append(z - p.top(x, y) - (2.4 if there else 0.0))
    reading = strings_top.read(case)
    assert reading.value == pytest.approx(min(rooms), abs=1e-9)
    assert reading.detail["X"] == pytest.approx(x, abs=1e-9)


def test_hand_may_be_stated():
    near, far = (strings_top.read(Case({"strings.hand": x})) for x in (60.0, 150.0))
    assert (near.place[0], far.place[0]) == (60.0, 150.0)
    assert far.value > near.value
    # Past the plate's end nothing of it counts.
    on = strings_top.read(Case({"strings.hand": 150.0, "plate.cover": "surround"})).value
    off = strings_top.read(
        Case({"strings.hand": 150.0, "plate.cover": "surround", "plate.reach": 140.0})
    ).value
    assert (far.value - on, far.value - off) == pytest.approx((2.4, 0.0))


RINGS = {"pickup_neck.fitted": True, "pickup_neck.ring": 3.0, "pickup_neck.mount": "top"}


@pytest.mark.parametrize("sort", SORTS)
@pytest.mark.parametrize(
    "more",
    [
        {"plate.cover": "surround"},
        {"plate.cover": "treble side"},
        {"plate.cover": "surround", "plate.under_overhang": False},
        RINGS,
        RINGS | {"plate.cover": "surround"},
    ],
)
def test_strings_over_plate_and_rings_by_dense_sampling(sort, more):
    job = {**SORTS[sort], **more}
    case, p = Case(job), Points(job)
    start = max(p.board_end() + (0.0 if p.v["plate.under_overhang"] else 0.5), 0.5)
    rooms = []
    for i in range(p.count):
        if "plate.cover" in more and (more["plate.cover"] == "surround" or i <= (p.count - 1) / 2):
            for x in np.linspace(start, 170.0, 400):
                y, z = p.fretted_at(i, x)
                rooms.append(z - p.top(x, y) - 2.4)
        if "pickup_neck.ring" in more:
            ring = p.top(34.0, 0.0) + 3.0
            rooms += [p.fretted_at(i, x)[1] - ring for x in np.linspace(23.0, 45.0, 3)]
    assert strings_plate.read(case).value == pytest.approx(min(rooms), abs=2e-4)


def test_plate_that_ends_before_the_strings_run_free_does_not_apply():
    reading = strings_plate.read(Case({"plate.cover": "surround", "plate.reach": 8.0}))
    assert not reading.applies
    assert not strings_plate.read(Case({})).applies


def test_random_jobs_point_by_point():
    for job in random_jobs(60):
        case, points = Case(job), Points(job)
        assert case.saddles.above == pytest.approx(points.above(), abs=1e-9)

"""Neck screws: how deep, how near to what, and whether they hold."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    screws_edge,
    screws_grip,
    screws_hole,
    screws_insert_bottom,
    screws_insert_engagement,
    screws_longest,
    screws_penetration,
    screws_pilots,
    screws_pull,
    screws_rod,
    screws_tip,
)
from freecad_neckfit.fit.screw_seat import screw_seat
from tests.fit.joint_by_points import heel, moved

ONE = {"screw.x": np.array([-14.0]), "screw.y": np.array([19.0])}
TIPPED = {"pocket.angle": 2.0, "finish.floor": 0.15, "shim.make": "wedge", "shim.wall": 0.6,
          "shim.mouth": 0.1, "body.contour_depth": 6.0, "body.contour_length": 60.0,
          "screws.head_seat": 0.7}  # fmt: skip


def read(module, stated):
    return module.CHECK.read(Case(stated))


def test_penetration_by_hand():
    # 45 - 44.45 + 15.875 - 2.0: body left under the pocket and the neck plate are used up.
    assert read(screws_penetration, {}).value == pytest.approx(45.0 - 28.575 - 2.0)
    bare = {"neck_plate.make": "none"}
    assert read(screws_penetration, bare).value == pytest.approx(16.425)
    ferrule = {"neck_plate.make": "ferrules", "neck_plate.ferrule_depth": 5.0}
    assert read(screws_penetration, ferrule).value == pytest.approx(21.425)
    sunk = {"screws.head_seat": 1.0}
    assert read(screws_penetration, sunk).value == pytest.approx(15.425)
    finish = {"finish.floor": 0.2}
    assert read(screws_penetration, finish).value == pytest.approx(14.225)


def test_penetration_as_the_trade_reckons_it():
    """length - (floor - head seat) - finish - shim, each at the screw's own place."""
    v = Case(TIPPED).values
    reading = read(screws_penetration, TIPPED)
    tan = math.tan(math.radians(2.0))
    for x, deep in zip(v["screw.x"], reading.detail["of each screw"], strict=True):
        floor = -15.875 + x * tan
        head = -44.45 + 6.0 * max(1 - (x + 76.0) / 60.0, 0.0) - 2.0 + 0.7
        shim = 0.6 + 0.5 * x / 76.0
        assert deep == pytest.approx(45.0 - (floor - head) - 0.15 - shim, abs=0.002)
    pilots = reading.detail["depth of the neck's pilot holes"]
    assert pilots == pytest.approx(reading.detail["of each screw"] + 1.5)


def test_a_deeper_pocket_pushes_the_same_screw_deeper():
    usual, deep = (read(screws_penetration, {"pocket.depth": d}).value for d in (15.875, 18.288))
    assert deep - usual == pytest.approx(18.288 - 15.875)


def screw_points(case, index):
    """Neck-frame points along a screw's axis within the heel, by undoing the seat's motion."""
    v = case.values
    x = v["screw.x"][index]
    head = -v["body.thickness"] - v["neck_plate.thickness"] + v["screws.head_seat"]
    share = 1 - (x + v["pocket.length"]) / v["body.contour_length"]
    head += v["body.contour_depth"] * min(max(share, 0.0), 1.0)
    points = np.zeros((20001, 4))
    points[:, 0], points[:, 3] = x, 1.0
    points[:, 2] = np.linspace(head, head + v["screws.length"], 20001)
    neck = points @ np.linalg.inv(case.seat.matrix()).T
    return neck[neck[:, 2] >= 0]


@pytest.mark.parametrize("stated", [{}, TIPPED, {"pocket.angle": -3.0}])
def test_tip_edge_and_rod_are_those_of_the_axis_in_the_neck(stated):
    stated = stated | {"neck.rod_end": 20.0, "screw.x": np.array([-14.0, -60.0, -5.0]),
                       "screw.y": np.array([-19.0, 2.0, 25.5])}  # fmt: skip
    case = Case(stated)
    tips, edges, rods, grips = [], [], [], []
    for i, y in enumerate(case["screw.y"]):
        neck = screw_points(case, i)
        tips.append(18.6 - neck[-1, 2])
        beside = heel(case.values).depth(neck[:, 0], y)
        edges.append(np.min(np.minimum(beside, neck[:, 0] + 78.0)))
        aside, before = max(abs(y) - 3.2, 0.0), np.maximum(neck[:, 0] + 20.0, 0.0)
        plan, up = np.hypot(aside, before) - 2.1, np.maximum(11.0 - neck[:, 2], 0.0)
        rods.append(np.min(np.where(plan > 0, np.hypot(np.maximum(plan, 0), up), up)))
        grips.append(min(np.linalg.norm(neck[-1] - neck[0]), 30.0) / 4.2)
    detail = screws_tip.CHECK.read(case).detail["of each screw"]
    assert detail == pytest.approx(tips, abs=1e-6)
    assert screws_edge.CHECK.read(case).detail["of each screw in mm"] == pytest.approx(
        edges, abs=1e-3
    )
    rod = screws_rod.CHECK.read(case).detail["of each screw"]
    assert np.where(rod > 0, rod, 0.0) == pytest.approx(rods, abs=0.02)
    assert rod[1] < 0  # this one runs into the channel: it is deeper than 11 mm
    grip = screws_grip.CHECK.read(case).detail["of each screw"]
    assert grip == pytest.approx(grips, abs=2e-3)


def test_rod_channel_by_hand():
    # |19| - 6.4/2 - 4.2/2; 14.425 deep against a channel 11 over the heel's bottom.
    assert read(screws_rod, ONE).value == pytest.approx(13.7)
    shallow = ONE | {"screws.length": 38.0, "screw.y": np.array([0.0])}
    assert read(screws_rod, shallow).value == pytest.approx(11.0 - 7.425)
    inside = ONE | {"screw.y": np.array([0.0])}
    assert read(screws_rod, inside).value == pytest.approx(-3.425)
    assert not read(screws_rod, {"neck.rod": "none"}).applies


def test_tip_of_a_neck_of_one_piece_lies_under_its_fret_slots():
    stated = ONE | {"neck.make": "one piece", "neck.radius_nut": 304.8}
    sag = 304.8 - math.sqrt(304.8**2 - 19.0**2)
    assert read(screws_tip, stated).value == pytest.approx(25.0 - sag - 2.5 - 14.425)
    conical = stated | {"neck.radius_nut": 254.0, "neck.radius_end": 406.4}
    end = 460.6 + Case(conical)["neck.overhang"]
    radius = 254.0 + 152.4 * (460.6 - 14.0) / end
    sag = radius - math.sqrt(radius**2 - 19.0**2)
    assert read(screws_tip, conical).value == pytest.approx(25.0 - sag - 2.5 - 14.425)


def test_grip_counts_the_thread_only():
    assert read(screws_grip, {}).value == pytest.approx(14.425 / 4.2)
    assert read(screws_grip, {"screws.threaded": 8.0}).value == pytest.approx(8.0 / 4.2)
    assert read(screws_grip, {"screws.length": 25.0}).value == 0.0
    assert not read(screws_grip, {"screws.fixing": "insert"}).applies


def test_edge_in_shank_diameters():
    side = math.cos(math.atan(0.25 / 76)) * (28.0 - 0.25 * 14.0 / 76 - 19.0)
    assert read(screws_edge, ONE).value == pytest.approx(side / 4.2)
    near = ONE | {"screw.x": np.array([-3.0])}
    assert read(screws_edge, near).value == pytest.approx(3.0 / 4.2)


@pytest.mark.parametrize(
    ("hole", "error", "fits"), [(4.5, 0.15, True), (4.5, 0.16, False), (4.35, 0.01, False),
                                (4.4, 0.1, True), (4.6, 0.2, True)]
)  # fmt: skip
def test_hole_must_clear_the_shank_and_take_up_the_position_error(hole, error, fits):
    stated = {"screws.body_hole": hole, "screws.position_error": error}
    assert (read(screws_hole, stated).value >= 0.2 - 1e-9) == fits


def test_longest_safe_screw_in_stock():
    stated = {"screws.lengths_stocked": np.array([40.0, 45.0, 47.5, 48.0, 50.0])}
    reading = read(screws_longest, stated)
    # 45 leaves 18.6 - 14.425 = 4.175 under the glue line; 1.5 must stay.
    assert reading.value == 47.5
    assert reading.detail["longest length that is safe"] == pytest.approx(47.675)
    assert reading.detail["next stocked length, too long"] == 48.0
    assert not read(screws_longest, {"screws.lengths_stocked": np.array([60.0])}).applies


@pytest.mark.parametrize("angle", [0.0, 3.0])
def test_the_longest_safe_screw_leaves_just_the_least(angle):
    most = read(screws_longest, {"pocket.angle": angle}).detail["longest length that is safe"]
    at_most = {"pocket.angle": angle, "screws.length": float(most)}
    assert read(screws_tip, at_most).value == pytest.approx(1.5)


def test_pull_by_moments():
    stated = {"strings.count": 4, "strings.pitch": np.full(4, 100.0), "neck.scale": 600.0,
              "strings.mass": np.full(4, 5.0), "neck.scale_bass": 600.0}  # fmt: skip
    tension = 4 * 0.005 * (2 * 0.6 * 100.0) ** 2
    lever = 25.0 + 1.1 + 1.8
    moment = tension * lever
    reading = read(screws_pull, stated)
    pulls = reading.detail["pull on each screw in N"]
    # Four screws, two at 14 and two at 58: their moments carry the strings' moment.
    assert np.sum(pulls * [14, 14, 58, 58]) == pytest.approx(moment)
    assert pulls[2] / pulls[0] == pytest.approx(58 / 14)
    holds = 108.25 * 0.63**2 * 4.2 * 14.425
    assert reading.value == pytest.approx(holds / (5.0 * pulls[2]))
    assert reading.detail["engineering estimate"] is True


def test_pull_of_a_wood_without_figures_is_not_known():
    reading = read(screws_pull, {"wood.neck": "mahogany"})
    assert not reading.known
    assert "mahogany" in reading.unknown_because
    assert not read(screws_pull, {"screws.fixing": "insert"}).applies


def pilots(*points):
    return {"old_pilot.x": np.array([p[0] for p in points]),
            "old_pilot.y": np.array([p[1] for p in points])}  # fmt: skip


def test_old_pilots():
    assert not read(screws_pilots, {}).applies
    assert read(screws_pilots, ONE | pilots((-14.0, 22.0))).value == pytest.approx(3.0 - 4.2)
    apart = read(screws_pilots, ONE | pilots((-22.0, 19.0), (-14.0, 29.0)))
    assert apart.value == pytest.approx(8.0 - 4.2)
    assert not read(screws_pilots, ONE | pilots((-14.1, 19.0))).applies
    both = read(screws_pilots, ONE | pilots((-14.1, 19.0), (-17.0, 19.0)))
    assert both.value == pytest.approx(3.0 - 4.2)


def test_inserts():
    stated = {"screws.fixing": "insert", "screws.insert_length": 12.0}
    # 14.425 deep: the whole insert is engaged, but 12 + 1.5 is all the hole there is.
    assert read(screws_insert_engagement, stated).value == pytest.approx(12.0 / 4.2)
    assert read(screws_insert_bottom, stated).value == pytest.approx(13.5 - 14.425)
    short = stated | {"screws.length": 36.0}
    assert read(screws_insert_engagement, short).value == pytest.approx(5.425 / 4.2)
    for check in (screws_insert_bottom, screws_insert_engagement):
        assert not read(check, {}).applies


def test_a_body_frame_place_lies_where_the_seat_puts_it():
    case = Case(TIPPED)
    seat = case.once(screw_seat)
    x, z = moved(case, seat.tip_x, seat.tip_z)
    assert x == pytest.approx(case["screw.x"])
    assert z == pytest.approx(seat.head + case["screws.length"])

"""Sides, end and corners of the heel in the pocket, against clouds of points."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    corner_entry,
    end_clearance,
    end_visible,
    plate_heel,
    side_bass,
    side_swing,
    side_treble,
)
from freecad_neckfit.fit.outline import pocket_outline
from tests.fit.joint_by_points import heel, moved, pocket
from tests.fit.joint_jobs import SORTS

CLOSE = 0.002


def read(module, stated):
    return module.CHECK.read(Case(stated))


def heights(case, x, *, low=None, high=0.0, count=60):
    """Neck heights of the heel's full section over each x up to ``high`` over the flat top."""
    v = case.values
    sin, cos = math.sin(case.seat.tilt), math.cos(case.seat.tilt)
    to = (high - case.seat.z0 - x * sin) / cos
    least = v["neck.heel_edge"]
    bottom = least if low is None else np.clip((low - case.seat.z0 - x * sin) / cos, least, 99)
    share = np.linspace(0.0, 1.0, count)[:, None]
    return bottom + share * (np.minimum(to, v["neck.glue_line"]) - bottom)


@pytest.mark.parametrize("sort", [s for s in SORTS if "carved" not in s and "domed" not in s])
def test_side_room_is_the_least_of_many_points_on_the_heels_side(sort):
    case = Case(SORTS[sort])
    v = case.values
    plan, walls = heel(v), pocket(v, grow=-v["finish.wall"])
    meet = plan.edge()[0][-1]
    x = np.linspace(-v["neck.heel_length"], meet, 20001)
    half = plan.half + plan.taper * x
    big_x = moved(case, x, heights(case, x))[0]
    wall = (walls.half + walls.taper * big_x - half) * walls.normal[1] + walls.grow
    common = (big_x >= -v["pocket.length"] - 1e-9) & (big_x <= pocket(v).edge()[0][-1] + 0.01)
    expected = np.min(np.where(common, wall, np.inf))
    for module in (side_treble, side_bass):
        assert module.CHECK.read(case).value == pytest.approx(expected, abs=CLOSE)


@pytest.mark.parametrize("sort", [s for s in SORTS if "carved" not in s and "domed" not in s])
def test_end_room_is_the_least_of_many_points_on_the_heels_end(sort):
    case = Case(SORTS[sort])
    v = case.values
    x, y = heel(v).edge()
    big_x, big_z = moved(case, x, heights(case, x))
    if v["pocket.wall"] == "floor":
        big_x = big_x + big_z * math.tan(case.seat.floor)
    y = np.broadcast_to(y, big_x.shape)
    if v["pocket.end_shape"] == "round":
        room = v["pocket.end_radius"] - np.hypot(big_x + v["pocket.end_radius"], y)
    else:
        room = -big_x
    expected = np.min(room) - v["finish.wall"]
    assert read(end_clearance, SORTS[sort]).value == pytest.approx(expected, abs=CLOSE)


@pytest.mark.parametrize("sort", [s for s in SORTS if "round pocket" not in s])
def test_corner_room_is_the_least_of_many_points_on_the_heels_corner(sort):
    reading = read(corner_entry, SORTS[sort])
    case = Case(SORTS[sort])
    v = case.values
    if v["pocket.end_shape"] == "round":
        assert not reading.applies
        return
    x, y = heel(v).edge()
    corner = slice(len(x) // 2, None) if v["neck.heel_end"] == "square" else slice(-1, None)
    big_x, big_z = moved(case, x[corner], v["neck.heel_edge"])
    if v["pocket.wall"] == "floor":
        big_x = big_x + big_z * math.tan(case.seat.floor)
    depth = pocket(v, grow=-v["finish.wall"]).depth(big_x, y[corner])
    assert reading.value == pytest.approx(np.min(depth), abs=CLOSE)


def test_a_square_heel_enters_a_round_corner_only_with_clearance():
    """c >= 0.293·(r_pocket - r_heel) where end and side have the same room c."""
    shape = {"pocket.corner_radius": 3.0, "neck.heel_corner_radius": 0.0,
             "neck.heel_width_mouth": 56.0}  # fmt: skip
    for c, enters in ((0.8, False), (0.87, False), (0.89, True), (1.0, True)):
        width = 56.0 + 2 * c
        stated = shape | {"seat.end_gap": c, "pocket.width_end": width,
                          "pocket.width_mouth": width}  # fmt: skip
        value = read(corner_entry, stated).value
        assert value == pytest.approx(3.0 - math.sqrt(2) * (3.0 - c), abs=1e-9)
        assert (value >= 0) == enters


def test_the_room_is_half_the_difference_of_the_widths_by_hand():
    stated = {"pocket.width_end": 56.3, "pocket.width_mouth": 55.3, "neck.heel_width_end": 56.0,
              "neck.heel_width_mouth": 55.0, "finish.wall": 0.04}  # fmt: skip
    # (56.3 - 56.0)/2 - 0.04; the heel lies 0.04 back along a side that narrows by 1/152 a mm.
    expected = 0.15 * math.cos(math.atan(1 / 152)) - 0.04 - 0.04 / 152
    assert read(side_treble, stated).value == pytest.approx(expected, abs=1e-6)


def test_the_gap_seen_at_the_top_grows_by_depth_times_the_angles_tangent():
    reading = read(end_visible, {"pocket.angle": 2.0, "seat.end_gap": 0.1})
    tan = math.tan(math.radians(2.0))
    # Heel bottom end at X = -0.1 lies at Z = -15.875 - 0.1·tan; its end leans back by tan.
    assert reading.value == pytest.approx(0.1 + (15.875 + 0.1 * tan) * tan)
    square = read(end_visible, {"pocket.angle": 2.0, "pocket.wall": "floor"})
    assert square.value == pytest.approx(0.0, abs=1e-9)
    sunk = read(end_visible, {"pocket.depth": 19.0})
    assert not sunk.applies
    assert "below the top" in sunk.because


def test_the_plate_keeps_its_clearance_beside_a_centred_heel():
    stated = {"plate.cover": "surround", "plate.clearance": 0.5, "pocket.depth": 15.0}
    usual = read(plate_heel, stated)
    assert usual.value == pytest.approx(0.5, abs=1e-6)  # at the end, which has no end gap
    gap = read(plate_heel, stated | {"seat.end_gap": 0.3})
    assert gap.value == pytest.approx(0.6 - 0.3 / 152, abs=1e-3)  # the sides: 0.1 + 0.5
    high = read(plate_heel, {"plate.cover": "surround", "pocket.depth": 9.0, "finish.top": 1.0})
    assert high.value == pytest.approx(0.5, abs=1e-6)
    gone = read(plate_heel, {"plate.cover": "surround", "neck.glue_line": 15.0,
                             "neck.underside": 19.5})  # fmt: skip
    # Heel too low to reach the plate; the fretboard sinks into the cut-out up to the heel end:
    # there the side is 28.1 + 0.5 less its taper to where the corner begins, at about -3.2.
    overhang = Case({})["neck.overhang"]
    slope, start = 7.0 / (460.6 + overhang), 3.2 + 3.7 / 304
    half = 28.0 - (overhang + start) * slope
    assert gone.value == pytest.approx(28.6 - start / 304 - half, abs=1e-3)


@pytest.mark.parametrize("angle", [0.0, 1.5, -1.0])
def test_plate_room_is_the_least_of_many_points_on_the_heel(angle):
    stated = {
        "plate.cover": "surround",
        "pocket.depth": 14.0,
        "pocket.angle": angle,
        "seat.end_gap": 0.2,
        "plate.clearance": 0.3,
        "neck.heel_corner_radius": 1.0,
    }
    case = Case(stated)
    v = case.values
    x, y = heel(v).edge()
    sides = np.linspace(-v["pocket.length"], x[-1], 2001)
    x = np.concatenate([x, sides])
    y = np.concatenate([y, heel(v).half + heel(v).taper * sides])
    low, high = v["finish.top"], v["finish.top"] + v["plate.thickness"]
    z = heights(case, x, low=low, high=high)
    big_x, big_z = moved(case, x, z)
    there = (big_z >= low - 1e-9) & (big_z <= high + 1e-9) & (big_x >= -v["pocket.length"])
    depth = pocket(v, grow=v["plate.clearance"]).depth(big_x, np.broadcast_to(y, big_x.shape))
    expected = np.min(np.where(there, depth, np.inf))
    assert read(plate_heel, stated).value == pytest.approx(expected, abs=CLOSE)


def test_a_plate_clear_of_the_overhang_is_farther_from_the_heels_end():
    stated = {"plate.cover": "surround", "plate.under_overhang": False, "pocket.depth": 14.0,
              "plate.clearance": 0.5, "neck.overhang": 11.0, "neck.heel_width_end": 55.0,
              "neck.heel_width_mouth": 55.0, "pocket.width_mouth": 56.2}  # fmt: skip
    # Sides: the opening is as wide as the pocket's own, 28.1 + 0.5, or the board's, 28 + 0.5.
    # The end is open and does not count.
    assert read(plate_heel, stated).value == pytest.approx(28.6 - 27.5, abs=1e-3)
    wide = stated | {"neck.width_end": 57.0}
    assert read(plate_heel, wide).value == pytest.approx(29.0 - 27.5)


@pytest.mark.parametrize("shape", [{}, {"pocket.end_shape": "round", "pocket.end_radius": 45.0}])
@pytest.mark.parametrize("grow", [0.0, 0.6])
def test_how_far_points_lie_outside_a_pocket(shape, grow):
    case = Case(shape)
    rng = np.random.default_rng(5)
    x, y = rng.uniform(-25.0, -0.05, 4000), rng.uniform(0.0, 28.0, 4000)
    outside = pocket_outline(case, offset=grow).farthest(x=x, y=y)
    depth = pocket(case.values, grow=grow).depth(x, y)
    near = np.abs(depth) < 2.0  # a wall nearby, not the middle
    assert near.sum() > 200
    assert -outside[near] == pytest.approx(depth[near], abs=1e-9)


def test_swing_at_the_bridge_by_hand():
    stated = {"pocket.width_mouth": 55.7, "neck.heel_width_mouth": 55.5}
    case = Case(stated)
    # c = 0.2 for both sides together.
    expected = 0.2 / 76.0 * (case.saddles.middle_x + 38.0)
    assert side_swing.CHECK.read(case).value == pytest.approx(expected)

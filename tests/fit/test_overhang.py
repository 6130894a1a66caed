"""The fretboard over top and plate, and around it, against clouds of points."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    overhang_binding_gap,
    overhang_corner_gap,
    overhang_gap,
    overhang_pickup,
    overhang_rock,
    overhang_side_room,
    overhang_trapped_plate,
    rod_access,
    strings_plate,
)
from tests.fit.joint_by_points import board_points, low_room, moved, pocket, top
from tests.fit.joint_jobs import SORTS

FINE = 0.004


def read(module, stated):
    return module.CHECK.read(Case(stated))


@pytest.mark.parametrize("sort", SORTS)
def test_room_beside_the_pocket_is_the_least_of_a_grid_of_points(sort):
    case = Case(SORTS[sort])
    expected = low_room(case, before_wall=True)
    reading = overhang_corner_gap.CHECK.read(case)
    assert bool(reading.applies) == math.isfinite(expected)
    if reading.applies:
        assert reading.value == pytest.approx(expected, abs=FINE)
        x, y, z = reading.place
        below = top(case.values, x, y) + case["finish.top"]
        if not case.plate_under_overhang:
            assert z - below == pytest.approx(reading.value)


@pytest.mark.parametrize("sort", SORTS)
def test_room_under_the_overhang_is_the_least_of_a_grid_of_points(sort):
    case = Case(SORTS[sort])
    expected = low_room(case, before_wall=False, past_wall=True)
    reading = overhang_gap.CHECK.read(case)
    assert bool(reading.applies) == math.isfinite(expected)
    if reading.applies:
        assert reading.value == pytest.approx(expected, abs=FINE)


BOUND = {"neck.binding_width": 1.6, "neck.binding": 0.5}


@pytest.mark.parametrize("sort", SORTS)
def test_room_under_the_binding_is_the_least_of_a_grid_of_points(sort):
    case = Case(SORTS[sort] | BOUND)
    expected = low_room(case, before_wall=False, binding=True)
    assert overhang_binding_gap.CHECK.read(case).value == pytest.approx(expected, abs=FINE)


def test_room_beside_the_pocket_by_hand():
    # Level over a flat top: glue line 18.6 - depth 15.875 - finish 0.25.
    assert read(overhang_corner_gap, {}).value == pytest.approx(2.475)
    plate = {"plate.cover": "surround", "plate.thickness": 2.4}
    assert read(overhang_corner_gap, plate).value == pytest.approx(0.075)
    clear = plate | {"plate.under_overhang": False}
    assert read(overhang_corner_gap, clear).value == pytest.approx(2.475)


def test_a_wide_board_is_lowest_at_the_mouth_of_an_angled_pocket():
    stated = {"pocket.angle": 1.0, "neck.width_end": 58.0, "neck.width_nut": 58.0}
    # Over the top at X = -76: lower than at X = 0 by 76·tan(1°).
    tan, cos = math.tan(math.radians(1.0)), math.cos(math.radians(1.0))
    expected = 18.6 / cos - 15.875 - 0.25 - 76.0 * tan
    assert read(overhang_corner_gap, stated).value == pytest.approx(expected)


def test_a_board_narrower_than_the_pocket_stands_nowhere_beside_it():
    stated = {"pocket.corner_radius": 0.0, "neck.overhang": 0.0, "neck.width_end": 55.0}
    reading = read(overhang_corner_gap, stated)
    assert not reading.applies
    assert "nowhere" in reading.because


def test_no_binding_is_not_applicable():
    assert not read(overhang_binding_gap, {}).applies


def sunk_room(case, *, grow, rise):
    """Least room to the straight sides of the pocket's plan, from many points of the low edge."""
    v = case.values
    plan, best = pocket(v, grow=grow), np.inf
    drop = v["neck.binding"] if v["neck.binding_width"] > 0 else 0.0
    # A corner's arc and the side move out together; a round end crosses the side elsewhere.
    meet = pocket(v).edge()[0][-1] + grow * plan.normal[0]
    if plan.round:
        far = np.linspace(-v["pocket.length"], 0.0, 400001)
        side = plan.half + plan.taper * far + grow / plan.normal[1]
        inside = plan.radius + grow >= np.hypot(far + plan.radius, side)
        meet = far[inside].max()
    heel, over = np.linspace(-v["pocket.length"] - 4, 0.0, 60001), np.linspace(0.0, 1.0, 20001)
    over *= v["neck.overhang"]
    for x, z in ((heel, v["neck.glue_line"]), (over, v["neck.underside"] - drop)):
        half = board_points(case, x=x, across=np.ones(1))[1]
        big_x, big_z = moved(case, x, z)
        sunk = (big_z < top(v, big_x, half) + rise - 0.0075) & (big_x >= -v["pocket.length"])
        side = plan.half * plan.normal[1] - big_x * plan.normal[0] - half * plan.normal[1] + grow
        best = min(best, np.min(side[sunk & (big_x <= meet)], initial=np.inf))
    return best


@pytest.mark.parametrize("sort", SORTS)
@pytest.mark.parametrize("deeper", [0.0, 3.2])
@pytest.mark.parametrize("cover", ["none", "surround", "treble side"])
def test_room_beside_a_sunk_board_is_the_least_of_many_points(sort, deeper, cover):
    stated = SORTS[sort] | {
        "pocket.depth": SORTS[sort].get("pocket.depth", 15.875) + deeper,
        "plate.cover": cover,
        "plate.under_overhang": True,
    }
    case = Case(stated)
    v = case.values
    best = sunk_room(case, grow=-v["finish.wall"], rise=v["finish.top"])
    if cover != "none":
        rise = v["finish.top"] + v["plate.thickness"]
        best = min(best, sunk_room(case, grow=v["plate.clearance"], rise=rise))
    reading = overhang_side_room.CHECK.read(case)
    assert bool(reading.applies) == math.isfinite(best)
    if reading.applies:
        assert reading.value == pytest.approx(best, abs=1e-4)


def test_a_board_that_only_touches_the_top_is_not_sunk():
    flush = {"pocket.depth": 18.35, "neck.glue_line": 18.6, "neck.underside": 18.6}
    assert not read(overhang_side_room, flush).applies
    assert read(overhang_side_room, flush | {"pocket.depth": 18.36}).applies


def test_an_overhang_sunk_into_the_plates_own_opening_keeps_its_clearance():
    stated = SORTS["plate kept clear"] | {"plate.clearance": 0.7}
    assert read(overhang_side_room, stated).value == pytest.approx(0.7, abs=1e-3)
    # Over the plate's corners and beyond its cut-out the overhang has no room beside it, but in
    # height: there it interferes.
    closed = stated | {"plate.under_overhang": True}
    assert read(overhang_side_room, closed).value > 0
    assert read(overhang_gap, closed).value < 0


def test_a_board_wider_than_the_plates_opening_for_it_touches_its_side():
    stated = SORTS["plate kept clear"] | {
        "plate.clearance": 0.1,
        "neck.width_nut": 58.0,
        "pocket.depth": 19.0,
        "pocket.width_end": 56.0,
        "pocket.width_mouth": 56.0,
        "pocket.angle": 0.0,
    }
    # The opening is 28.1 wide; toward the nut the board widens by 1/471.4 a mm.
    end = 460.6 + Case(stated)["neck.overhang"]
    half = 28.0 + (76.0 + end - 460.6) / end
    assert read(overhang_side_room, stated).value <= 28.1 - half + 1e-6


def test_a_plate_under_the_overhang_is_trapped():
    stated = {"plate.cover": "surround", "plate.clearance": 0.5, "neck.overhang": 11.0}
    assert read(overhang_trapped_plate, stated).value == pytest.approx(10.5)
    assert not read(overhang_trapped_plate, stated | {"plate.under_overhang": False}).applies
    assert not read(overhang_trapped_plate, {}).applies
    assert not read(overhang_trapped_plate, stated | {"neck.overhang": 0.2}).applies


def test_a_neck_of_one_piece_rocks_and_a_glued_one_does_not():
    stated = {"pocket.depth": 18.288, "plate.cover": "surround", "neck.overhang": 11.0}
    gap = read(overhang_gap, stated).value
    assert gap == pytest.approx(18.6 - 18.288 - 0.25 - 2.4)
    rock = read(overhang_rock, stated | {"neck.make": "one piece"})
    assert rock.value == pytest.approx(math.degrees(math.atan(2.338 / 87.0)))
    assert not read(overhang_rock, stated).applies
    assert not read(overhang_rock, {"neck.make": "one piece"}).applies


PICKUP = {"pickup_neck.fitted": True, "pickup_neck.x": 30.0, "pickup_neck.length": 22.0,
          "pickup_neck.mount": "top", "pickup_neck.low": 1.0, "pickup_neck.high": 5.0,
          "neck.overhang": 11.0}  # fmt: skip


def test_pickup_beside_the_fretboards_end_by_hand():
    # Poles at 0.25 + 3 over the top reach above the underside at 18.6 - 15.875 = 2.725.
    beside = read(overhang_pickup, PICKUP)
    assert beside.value == pytest.approx(30.0 - 11.0 - 11.0)
    # With its front at 9, under the overhang that ends at 11, only the height can free it.
    under = {"pickup_neck.x": 20.0, "pickup_neck.low": 0.2, "pickup_neck.high": 1.0}
    assert read(overhang_pickup, PICKUP | under).value == pytest.approx(2.725 - 0.25 - 0.6)
    ring = under | {"pickup_neck.ring": 3.0}
    assert read(overhang_pickup, PICKUP | ring).value == pytest.approx(2.725 - 0.25 - 3.0)
    far = PICKUP | {"pickup_neck.low": 0.2, "pickup_neck.high": 1.0}
    assert read(overhang_pickup, far).value == pytest.approx(8.0)
    bound = BOUND | under
    assert read(overhang_pickup, PICKUP | bound).value == pytest.approx(1.875 - 0.5)
    assert not read(overhang_pickup, {}).applies


@pytest.mark.parametrize("angle", [2.0, -2.0])
def test_pickup_beside_a_leaning_end_is_the_least_of_many_points(angle):
    case = Case(PICKUP | {"pocket.angle": angle, "pickup_neck.high": 11.0})
    z = np.linspace(case["neck.underside"], case["neck.height"], 5001)
    big_x, _ = moved(case, 11.0, z)
    expected = np.min(19.0 - big_x)
    assert overhang_pickup.CHECK.read(case).value == pytest.approx(expected, abs=1e-3)


ROD = {"neck.rod": "heel", "neck.rod_tool": 8.0, "neck.rod_tool_height": 22.0,
       "neck.rod_tool_length": 50.0}  # fmt: skip


def test_tool_path_over_top_plate_and_pickup_by_hand():
    assert not read(rod_access, {}).applies
    # Lowest line 22 - 4 = 18 over the heel's bottom; 18 - 15.875 - 0.25 over the top.
    assert read(rod_access, ROD).value == pytest.approx(1.875)
    plate = {"plate.cover": "surround", "plate.thickness": 2.4}
    assert read(rod_access, ROD | plate).value == pytest.approx(1.875 - 2.4)
    pickup = PICKUP | {"pickup_neck.low": 2.0, "pickup_neck.high": 4.0}
    assert read(rod_access, ROD | pickup).value == pytest.approx(1.875 - 3.0)
    short = pickup | {"neck.rod_tool_length": 15.0}
    assert read(rod_access, ROD | short).value == pytest.approx(1.875)


@pytest.mark.parametrize("body", [{}, {"body.top": "domed"}, {"body.top": "carved"}])
@pytest.mark.parametrize("angle", [1.7, -1.2])
def test_tool_path_is_the_least_of_many_points(body, angle):
    case = Case(ROD | body | {"pocket.angle": angle})
    across = np.linspace(-4.0, 4.0, 81)[:, None]
    x = np.linspace(0.0, 50.0, 5001)[None, :]
    big_x, big_z = moved(case, x, 22.0 - np.sqrt(16.0 - across**2))
    room = big_z - top(case.values, big_x, across) - 0.25
    expected = np.min(room[big_x >= 0])
    assert rod_access.CHECK.read(case).value == pytest.approx(expected, abs=1e-3)


@pytest.mark.parametrize("end", [{"pocket.end_shape": "round", "pocket.end_radius": 43.0}, {}])
def test_a_string_comes_over_the_plate_where_it_leaves_a_cut_out_that_holds_the_board(end):
    stated = {"plate.cover": "surround", "plate.clearance": 1.2, "neck.overhang": 0.0,
              "neck.heel_corner_radius": 0.0, "pocket.corner_radius": 6.0, "pocket.angle": 1.0,
              "strings.spread_nut": 47.0, "strings.spread_bridge": 52.0} | end  # fmt: skip
    case = Case(stated)
    x, y, _ = strings_plate.CHECK.read(case).place
    assert abs(y) > 24
    plan = pocket(case.values, grow=1.2)
    assert plan.depth(x, y) == pytest.approx(0.0, abs=2e-3)


def test_no_overhang_is_no_room_without_end():
    # The end face of a fretboard that ends with its heel passes X = 0 where the neck leans.
    stated = {"neck.overhang": 0.0, "neck.underside": 30.0, "pocket.angle": -2.0}
    case = Case(stated)
    assert case.overhang_end[0] > 0
    assert not bool(overhang_gap.CHECK.read(case).applies)


def test_beside_a_leaning_end_wall_under_a_dome_the_corners_room_is_a_bound():
    bent = {"body.top": "domed", "pocket.wall": "floor", "pocket.angle": -1.3}
    assert not overhang_corner_gap.CHECK.read(Case(bent)).exact
    for plain in ({"body.top": "flat"}, {"pocket.wall": "top"}, {"pocket.angle": 0.0}):
        assert overhang_corner_gap.CHECK.read(Case(bent | plain)).exact

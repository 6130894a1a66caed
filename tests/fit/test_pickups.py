"""Pickups under the strings fretted at the last fret."""

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import pickup_high, pickup_low
from freecad_neckfit.job.parameters import ROLES
from tests.fit.string_jobs import SORTS
from tests.fit.strings_by_points import Points

LOW = {check.id.partition(".")[0]: check for check in pickup_low.CHECKS}
HIGH = {check.id.partition(".")[0]: check for check in pickup_high.CHECKS}


def rooms(job, role="neck"):
    case = Case(job)
    name = f"pickup_{role}"
    return LOW[name].read(case).value, HIGH[name].read(case).value


def test_ids_and_measures_name_the_role():
    assert [check.id for check in pickup_low.CHECKS] == [f"pickup_{r}.low" for r in ROLES]
    assert [check.id for check in pickup_high.CHECKS] == [f"pickup_{r}.high" for r in ROLES]
    assert HIGH["pickup_bridge"].measure == "pickup_bridge_high"


@pytest.mark.parametrize("role", ROLES)
def test_absent_where_none_is_fitted(role):
    other = "neck" if role != "neck" else "bridge"
    case = Case({f"pickup_{other}.fitted": True})
    assert not LOW[f"pickup_{role}"].read(case).applies
    assert not HIGH[f"pickup_{role}"].read(case).applies
    assert LOW[f"pickup_{other}"].read(case).applies


@pytest.mark.parametrize("sort", SORTS)
@pytest.mark.parametrize("role", ROLES)
@pytest.mark.parametrize("mount", ["top", "plate", "cavity"])
def test_room_point_by_point(sort, role, mount):
    key = f"pickup_{role}"
    job = SORTS[sort] | {
        f"{key}.fitted": True, f"{key}.mount": mount, f"{key}.low": -1.0, f"{key}.high": 25.0,
        f"{key}.cavity_depth": 21.0,
    }  # fmt: skip
    p = Points(job)
    x = p.v[f"{key}.x"]
    top = p.top(x, 0.0)
    floor = top - p.v["finish.top"] - 21.0
    plate = p.v["plate.thickness"] if p.v["plate.cover"] != "none" else 0.0
    z_mount = {"top": top, "plate": top + plate, "cavity": floor}[mount]
    lowest = max(z_mount - 1.0, floor + 18.0 + 4.0)
    low, high = [], []
    for i, least, most in ((0, 1.6, 3.2), (p.count - 1, 2.0, 4.0)):
        string = p.fretted_at(i, x)[1]
        low.append(string - least - lowest)
        high.append(z_mount + 25.0 - (string - most))
    assert rooms(job, role) == pytest.approx((min(low), min(high)), abs=1e-9)


def test_room_worked_by_hand():
    # Flat board, straight neck, zero fret, action 2: the saddle lies 4 over the crowns, 16.0 in
    # front of it the strings fretted at the last fret hang 4·16/(L - u_N) lower. Crowns at
    # 25 + 1 - 16 = 10 over the bare top, 9.75 over the finished one.
    job = {
        "neck.relief": 0.0, "neck.radius_nut": 5000.0, "strings.zero_fret": True,
        "strings.spread_nut": 50.0, "strings.spread_bridge": 50.0, "strings.action_treble": 2.0,
        "strings.action_bass": 2.0, "strings.compensation_treble": 0.0,
        "strings.compensation_bass": 0.0, "neck.height": 25.0, "neck.fret_height": 1.0,
        "pocket.depth": 16.0, "neck.frets": 24, "neck.scale": 640.0, "neck.nut_to_heel": 470.0,
        "pickup_bridge.fitted": True, "pickup_bridge.x": 154.0, "pickup_bridge.mount": "top",
        "pickup_bridge.cavity_depth": 30.0,
    }  # fmt: skip
    sag = 5000 - (5000**2 - 25**2) ** 0.5
    string = 9.75 + 4.0 * (1 - 16.0 / 160.0) - sag
    # Lowered to 0.5 over the top; raised to 9.
    assert rooms(job, "bridge") == pytest.approx(
        (string - 2.0 - 0.5, 9.0 - (string - 3.2)), abs=1e-9
    )


def test_a_shallow_cavity_stops_the_pickup():
    job = {"pickup_neck.fitted": True, "pickup_neck.mount": "top"}
    deep = rooms(job | {"pickup_neck.cavity_depth": 40.0})
    # Body 18 and springs 4 stand on a floor 15 down: 7 over the bare top, 6.75 over the finish.
    shallow = rooms(job | {"pickup_neck.cavity_depth": 15.0})
    assert deep[0] - shallow[0] == pytest.approx(6.75 - 0.5)
    assert deep[1] == shallow[1]


def test_a_deeper_pocket_takes_from_lowering_what_it_gives_to_raising():
    job = {"pickup_middle.fitted": True, "pocket.angle": 0.7}
    low, high = rooms(job, "middle")
    deeper = rooms(job | {"pocket.depth": 17.0}, "middle")
    assert deeper == pytest.approx((low - 1.125, high + 1.125), abs=1e-9)


def test_plate_lifts_the_mount_but_not_the_strings():
    job = {"pickup_neck.fitted": True, "pickup_neck.cavity_depth": 40.0}
    low, high = rooms(job)
    with_plate = rooms(job | {"plate.cover": "surround"})
    assert with_plate == pytest.approx((low - 2.4, high + 2.4), abs=1e-9)


def test_place_lies_on_the_string_over_the_poles():
    reading = LOW["pickup_neck"].read(Case({"pickup_neck.fitted": True}))
    x, y, _ = reading.place
    assert x == 34.0
    assert abs(y) == pytest.approx(np.interp(494.6, [0, 647.7], [17.5, 26.25]), abs=0.05)

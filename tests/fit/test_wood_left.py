"""Wood under and beside the pocket, and how the heel seats."""

import math

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    seat_contact,
    seat_fillet,
    seat_flat_length,
    wood_floor,
    wood_wall_bass,
    wood_wall_treble,
    wood_web,
)


def read(module, stated):
    return module.CHECK.read(Case(stated))


def test_floor_is_thinnest_at_the_mouth_of_an_angled_pocket():
    assert read(wood_floor, {}).value == pytest.approx(44.45 - 15.875)
    tan = math.tan(math.radians(2.0))
    assert read(wood_floor, {"pocket.angle": 2.0}).value == pytest.approx(28.575 - 76 * tan)
    assert read(wood_floor, {"pocket.angle": -2.0}).value == pytest.approx(28.575)


CONTOUR = {"body.contour_depth": 9.0, "body.contour_length": 50.0}
FERRULES = {"neck_plate.make": "ferrules", "neck_plate.ferrule_depth": 6.0,
            "neck_plate.ferrule_diameter": 14.0}  # fmt: skip


@pytest.mark.parametrize("angle", [-5.0, 0.0, 1.5])
@pytest.mark.parametrize("make", [{}, FERRULES])
@pytest.mark.parametrize("contour", [{}, CONTOUR, CONTOUR | {"body.contour_length": 100.0}])
def test_floor_is_the_least_of_many_points(angle, make, contour):
    stated = contour | make | {"pocket.angle": angle}
    v = Case(stated).values
    x = np.linspace(-76.0, 0.0, 76001)
    floor = -15.875 + x * math.tan(math.radians(angle))
    back = np.full_like(x, -44.45)
    if contour:
        back = back + 9.0 * np.maximum(1 - (x + 76.0) / v["body.contour_length"], 0.0)
    wood = floor - back
    if make:
        for at in v["screw.x"]:
            seat = np.interp(at, x, back) + 6.0
            near = np.abs(x - at) <= 7.0 + 1e-9
            wood = np.where(near, np.minimum(wood, floor - seat), wood)
    assert read(wood_floor, stated).value == pytest.approx(np.min(wood), abs=1e-3)


def test_walls_to_the_cutaways_by_hand():
    # The pocket narrows toward the mouth, so the wall is thinnest at the cutaway's bottom.
    lean = math.cos(math.atan(1 / 304))
    treble = read(wood_wall_treble, {"body.block_treble": 36.0, "body.cutaway_treble": 19.0})
    assert treble.value == pytest.approx((36.0 - (28.1 - 19.0 / 304)) * lean)
    bass = read(wood_wall_bass, {"body.block_bass": 40.0, "body.cutaway_bass": -10.0})
    assert bass.value == pytest.approx((40.0 - 28.1) * lean)
    wider = {"pocket.width_mouth": 57.0, "body.block_treble": 36.0}
    expected = (36.0 - 28.5) * math.cos(math.atan(0.4 / 76))
    assert read(wood_wall_treble, wider).value == pytest.approx(expected)
    assert read(wood_wall_treble, {}).place[1] > 0 > read(wood_wall_bass, {}).place[1]
    left = {"strings.left_handed": True}
    assert read(wood_wall_treble, left).place[1] < 0


def test_walls_that_are_not_there():
    short = read(wood_wall_treble, {"pocket.length": 40.0, "body.cutaway_treble": 45.0})
    assert not short.applies
    assert not read(wood_wall_treble, {"body.outline": "file"}).applies


def cavity(**one):
    usual = {"x": 30.0, "y": 0.0, "length": 40.0, "width": 80.0}
    return {f"cavity.{k}": np.array([v]) for k, v in (usual | one).items()}


def test_web_to_a_cavity_by_hand():
    assert not read(wood_web, {}).applies
    assert read(wood_web, cavity()).value == pytest.approx(10.0)
    beside = cavity(x=-30.0, y=-50.0, width=30.0)
    assert read(wood_web, beside).value == pytest.approx(35.0 - 28.1)
    aslant = cavity(x=24.0, y=60.0, width=55.8)
    assert read(wood_web, aslant).value == pytest.approx(math.hypot(4.0, 4.0))
    assert read(wood_web, cavity(x=15.0)).value == pytest.approx(-5.0)
    pickup = {"pickup_neck.fitted": True, "pickup_neck.x": 20.0, "pickup_neck.length": 22.0}
    assert read(wood_web, pickup).value == pytest.approx(8.0)
    assert read(wood_web, pickup | cavity()).value == pytest.approx(8.0)
    assert not read(wood_web, pickup | {"pickup_neck.cavity_depth": 0.0}).applies
    two = {k: np.append(a, b) for (k, a), b in zip(cavity().items(), (24.0, 60.0, 40.0, 55.8),
                                                   strict=True)}  # fmt: skip
    assert read(wood_web, two).value == pytest.approx(math.hypot(4.0, 4.0))


def test_flat_heel_length():
    assert read(seat_flat_length, {}).value == pytest.approx(2.0)
    assert read(seat_flat_length, {"neck.heel_length": 70.0}).value == pytest.approx(-6.0)


def lifted(stated):
    """Height by which a fillet lifts the heel: its section against the heel's, point by point."""
    v = Case(stated).values
    f, edge = v["pocket.floor_fillet"], v["neck.heel_edge"]
    theta = math.radians(v["pocket.angle"]) if v["pocket.wall"] == "top" else 0.0
    lifts = []
    for gap, lean in ((0.1, 0.0), (v["seat.end_gap"] / math.cos(theta), theta)):
        s = np.linspace(gap, 12.0, 400001)
        # Ball of the fillet's radius, as far from the floor as from the wall.
        centre = f * math.tan(math.pi / 4 - lean / 2)
        height = np.where(s < centre, f - np.sqrt(np.maximum(f**2 - (centre - s) ** 2, 0.0)), 0.0)
        heel = np.maximum(edge - (s - gap), 0.0)
        lifts.append(np.max(height - heel))
    return max(*lifts, 0.0) / math.cos(math.radians(v["pocket.angle"]))


@pytest.mark.parametrize(
    "stated",
    [
        {"pocket.floor_fillet": 2.0},
        {"pocket.floor_fillet": 2.0, "neck.heel_edge": 1.0, "seat.end_gap": 0.2},
        {"pocket.floor_fillet": 2.0, "neck.heel_edge": 1.95, "seat.end_gap": 0.2},
        {"pocket.floor_fillet": 1.0, "neck.heel_edge": 0.3, "seat.end_gap": 0.5},
        {"pocket.floor_fillet": 1.5, "pocket.angle": 3.0, "pocket.wall": "floor",
         "seat.end_gap": 0.4},
    ],
)  # fmt: skip
def test_a_fillet_holds_the_heel_off(stated):
    stated = stated | {"pocket.corner_radius": 0.5, "neck.heel_corner_radius": 3.0,
                       "pocket.width_mouth": 56.2, "neck.heel_width_mouth": 56.0}  # fmt: skip
    expected = lifted(stated)
    value = read(seat_fillet, stated).value
    assert value == pytest.approx(expected, abs=1e-3)
    assert read(seat_contact, stated).value == (0.0 if value > 0 else 1.0)


def test_a_chamfers_mitre_may_ride_on_the_fillet_of_a_wider_corner():
    # Straight sides 0.1 mm off and a sharp heel corner, its chamfer's foot 1.5 mm further in.
    stated = {"pocket.floor_fillet": 1.0, "pocket.corner_radius": 8.0, "neck.heel_edge": 1.5,
              "neck.heel_corner_radius": 0.0, "seat.end_gap": 0.1, "pocket.width_end": 56.2,
              "pocket.width_mouth": 56.2, "neck.heel_width_end": 56.0,
              "neck.heel_width_mouth": 56.0}  # fmt: skip
    # The foot lies 8 - 1.6 from the arc's centre both ways: through the wall, on the whole fillet.
    assert math.hypot(6.4, 6.4) > 8.0
    found = read(seat_fillet, stated)
    assert found.value == pytest.approx(1.0)
    assert not found.exact
    # With corners 4 mm round it lies hypot(2.4, 2.4) off, 0.606 mm from the wall.
    found = read(seat_fillet, stated | {"pocket.corner_radius": 4.0})
    room = 4.0 - math.hypot(2.4, 2.4)
    assert found.value == pytest.approx(1.0 - math.sqrt(1 - (1 - room) ** 2))


def test_contact_by_hand():
    assert read(seat_contact, {}).value == 1.0
    assert read(seat_contact, {"shim.make": "wedge"}).value == 1.0
    strip = read(seat_contact, {"shim.make": "strip"})
    assert not strip.applies
    assert strip.because == (
        "a strip shim bears on two lines only, at its edge and at the pocket's mouth"
    )
    assert not read(seat_fillet, {}).applies
    # A shim is as wide as the heel and square: it meets the fillet, however thick it is.
    fillet = {"pocket.floor_fillet": 0.5, "neck.heel_edge": 0.6, "seat.end_gap": 0.1}
    assert read(seat_fillet, fillet).value == 0.0
    wedge = fillet | {"shim.make": "wedge", "shim.wall": 0.9, "shim.mouth": 0.9}
    assert read(seat_fillet, wedge).value > 0.1

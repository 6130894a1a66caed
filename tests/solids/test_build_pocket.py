"""The pocket's cutter, against volumes and positions worked out by hand."""

import math

import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.job.errors import CannotBuild
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build.pocket import pocket_cutter
from freecad_neckfit.solids.build.shapes import proven

pytestmark = pytest.mark.freecad

FAR = 81.0  # the cutter runs 5 mm past the mouth, which lies 76 mm from the end wall
STRAIGHT = {"pocket.width_end": 56.0, "pocket.width_mouth": 56.0, "pocket.depth": 16.0}


def cutter(**stated):
    values = complete(STRAIGHT | {key.replace("__", "."): x for key, x in stated.items()})
    return proven(pocket_cutter(values, front=-76.0, above=4.0), name="pocket")


def has_corner(solid, x, y, z, near=1e-6):
    return any(math.dist((p.X, p.Y, p.Z), (x, y, z)) < near for p in solid.Vertexes)


def test_a_square_pocket_with_sharp_corners_is_a_box():
    assert cutter(pocket__corner_radius=0.0).Volume == pytest.approx(FAR * 56 * 20)


def test_round_corners_leave_two_quarter_spandrels():
    lost = 2 * (1 - math.pi / 4) * 3.2**2 * 20
    assert cutter().Volume == pytest.approx(FAR * 56 * 20 - lost)


def test_corner_arcs_touch_tapered_sides():
    solid = cutter(pocket__width_mouth=50.0, pocket__corner_radius=5.0)
    arcs = [e for e in solid.Edges if hasattr(e.Curve, "Radius")]
    assert [e.Curve.Radius for e in arcs] == pytest.approx([5.0] * 4)
    slope = 3 / 76
    for edge in arcs:
        centre = edge.Curve.Center
        to_side = abs(28 + slope * centre.x - abs(centre.y)) / math.hypot(1, slope)
        assert to_side == pytest.approx(5.0)
        assert centre.x == pytest.approx(-5.0)


def test_a_round_end_is_half_a_disc_where_its_radius_is_half_the_width():
    solid = cutter(pocket__end_shape="round", pocket__end_radius=28.0)
    area = (FAR - 28) * 56 + math.pi * 28**2 / 2
    assert solid.Volume == pytest.approx(area * 20)
    assert has_corner(solid, -28, 28, 4)


def test_a_flatter_round_end_meets_the_sides_short_of_the_apex():
    solid = cutter(pocket__end_shape="round", pocket__end_radius=100.0)
    behind = 100 - math.sqrt(100**2 - 28**2)  # 4.0 mm
    assert has_corner(solid, -behind, 28, -16)


@pytest.mark.parametrize("angle", [2.0, -2.0])
def test_a_tilted_floor_is_deeper_where_the_angle_says(angle):
    solid = cutter(pocket__angle=angle, pocket__corner_radius=0.0)
    drop = math.tan(math.radians(angle))
    assert solid.Volume == pytest.approx(56 * (FAR * 20 + drop * FAR**2 / 2))
    assert has_corner(solid, 0, 28, -16)
    assert has_corner(solid, -FAR, 28, -16 - FAR * drop)


@pytest.mark.parametrize("angle", [2.0, -2.0])
def test_a_wall_square_to_the_floor_turns_about_its_top(angle):
    solid = cutter(pocket__angle=angle, pocket__corner_radius=0.0, pocket__wall="floor")
    tilt = math.radians(angle)
    assert has_corner(solid, 16 * math.sin(tilt) * math.cos(tilt), 28, -16 * math.cos(tilt) ** 2)
    assert solid.distToShape(_point(0, 0, 0))[0] == pytest.approx(0, abs=1e-9)
    assert not solid.isInside(_point(1e-4, 0, 0).Point, 1e-7, True)


def test_a_round_wall_square_to_the_floor_passes_the_origin():
    solid = cutter(pocket__angle=3.0, pocket__wall="floor", pocket__end_shape="round")
    assert solid.isInside(_point(-1e-4, 0, 0).Point, 1e-7, True)
    assert not solid.isInside(_point(1e-4, 0, 0).Point, 1e-7, True)


def test_a_floor_fillet_fills_the_foot_of_the_walls():
    sharp = cutter(pocket__corner_radius=0.0)
    solid = cutter(pocket__corner_radius=0.0, pocket__floor_fillet=2.0)
    # Per length (1 - pi/4)·r²; in both corners, where two fillets cross, it is counted twice.
    section = (1 - math.pi / 4) * 4
    crossing = 8 * (5 / 3 - math.pi / 2)
    assert sharp.Volume - solid.Volume == pytest.approx(section * (2 * FAR + 56) - 2 * crossing)


@pytest.mark.parametrize("corner", [0.5, 2.0, 3.2])
@pytest.mark.parametrize("wall", ["top", "floor"])
def test_a_floor_fillet_goes_with_every_corner(corner, wall):
    cutter(
        pocket__corner_radius=corner, pocket__floor_fillet=2.0, pocket__angle=1.0, pocket__wall=wall
    )


FILLETED_ROUND = {
    "level, small fillet": {"pocket__end_radius": 58.25, "pocket__floor_fillet": 0.755},
    "level, large fillet": {"pocket__end_radius": 65.0, "pocket__floor_fillet": 3.39},
    "tilted floor": {"pocket__end_radius": 40.0, "pocket__floor_fillet": 2.0,
                     "pocket__angle": 2.0},
    "wall square to the floor": {"pocket__end_radius": 65.0, "pocket__floor_fillet": 3.33,
                                 "pocket__angle": 4.44, "pocket__wall": "floor"},
    "nearly touching the sides": {"pocket__end_radius": 28.003, "pocket__floor_fillet": 3.0,
                                  "pocket__angle": 2.5, "pocket__wall": "floor"},
    "touching the sides": {"pocket__end_radius": 28.0, "pocket__floor_fillet": 3.0,
                           "pocket__angle": 2.5, "pocket__wall": "floor"},
}  # fmt: skip


@pytest.mark.parametrize("name", FILLETED_ROUND)
def test_a_floor_fillet_goes_with_every_round_end(name):
    stated = {"pocket__end_shape": "round"} | FILLETED_ROUND[name]
    sharp, solid = cutter(**stated | {"pocket__floor_fillet": 0.0}), cutter(**stated)
    radius, fillet = stated["pocket__end_radius"], stated["pocket__floor_fillet"]
    behind = radius - math.sqrt(radius**2 - 28**2)
    along = 2 * (FAR - behind) + 2 * radius * math.asin(28 / radius)
    # Mitres, tilt and the turn about the axis take a few hundredths from it.
    filled = (1 - math.pi / 4) * fillet**2 * along
    assert sharp.Volume - solid.Volume == pytest.approx(filled, rel=0.05)


def test_a_radius_at_which_the_kernel_fails_gives_way_a_little():
    stated = {
        "pocket.end_shape": "round", "pocket.end_radius": 69.4360767775715,
        "pocket.floor_fillet": 0.3784455718366212, "pocket.angle": 2.9203942128744242,
        "pocket.wall": "floor", "pocket.width_end": 57.72360873469336,
        "pocket.width_mouth": 56.51100414823047, "pocket.length": 82.32654590160988,
        "pocket.depth": 15.934202868936135,
    }  # fmt: skip
    solid = proven(pocket_cutter(complete(stated), front=-100.0, above=10.0), name="pocket")
    assert solid.Volume == pytest.approx(168162.431, abs=0.01)


def test_the_fillets_of_sides_and_a_round_end_meet_in_a_mitre():
    solid = cutter(
        pocket__end_shape="round", pocket__end_radius=65.0, pocket__floor_fillet=3.0,
        pocket__angle=4.0, pocket__wall="floor",
    )  # fmt: skip
    # Top, floor, mouth, end, two sides and the fillets of the last three: no patches between them.
    assert len(solid.Faces) == 9
    assert max(v.Tolerance for v in solid.Vertexes) < 1e-4


@pytest.mark.parametrize("angle", [0.0, 0.01])
def test_sides_run_on_past_a_round_wall_as_wide_as_stated(angle):
    solid = cutter(
        pocket__end_shape="round", pocket__end_radius=28.8, pocket__width_mouth=60.0,
        pocket__wall="floor", pocket__angle=angle,
    )  # fmt: skip
    assert solid.BoundBox.YMax == pytest.approx(28 + 2 * FAR / 76, abs=1e-6)


@pytest.mark.parametrize(
    "stated",
    [
        {"pocket__end_shape": "round", "pocket__end_radius": 27.9},
        {"pocket__end_shape": "round", "pocket__end_radius": 28.0, "pocket__width_mouth": 60.0},
    ],
)
def test_an_end_that_does_not_meet_its_sides_is_refused(stated):
    with pytest.raises(CannotBuild, match=r"round end of radius 2\d\.\d\d mm does not meet"):
        cutter(**stated)


def _point(x, y, z):
    import Part

    return Part.Vertex(x, y, z)

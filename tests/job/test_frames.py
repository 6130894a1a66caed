"""The seat against figures worked by hand from the conventions."""

import math

import numpy as np
import pytest

from freecad_neckfit.job.frames import seat
from freecad_neckfit.job.resolve import complete


def seated(**stated):
    return seat(complete({key.replace("__", "."): value for key, value in stated.items()}))


def test_a_flat_pocket_lays_the_heel_end_on_the_floor_at_the_end_wall():
    s = seated(pocket__depth=16.0)
    assert s.to_body(x=0.0, z=0.0) == (0.0, -16.0)
    assert s.to_body(x=10.0, z=18.6) == pytest.approx((10.0, 2.6))


def test_an_end_gap_moves_the_neck_toward_the_mouth_along_the_sloping_floor():
    s = seated(pocket__depth=16.0, pocket__angle=2.0, seat__end_gap=0.5)
    x, z = s.to_body(x=0.0, z=0.0)
    assert x == -0.5
    assert z == pytest.approx(-16.0 - 0.5 * math.tan(math.radians(2.0)))


def test_a_positive_angle_lets_the_string_plane_climb_toward_the_bridge():
    s = seated(pocket__angle=1.0)
    near, far = s.to_body(x=0.0, z=25.0), s.to_body(x=100.0, z=25.0)
    # 100 mm at one degree: 100 * sin 1 degree = 1.7452 (table of sines)
    assert far[1] - near[1] == pytest.approx(1.7452, abs=1e-4)
    assert seated(pocket__angle=1.0).to_body(x=-400.0, z=25.0)[1] < near[1]


def test_the_mouth_of_an_angled_pocket_is_deeper_by_length_times_tangent():
    s = seated(pocket__depth=16.0, pocket__angle=3.0, pocket__length=76.0)
    x, z = s.to_body(x=-76.0 / math.cos(math.radians(3.0)), z=0.0)
    assert (x, z) == pytest.approx((-76.0, -16.0 - 76.0 * math.tan(math.radians(3.0))))


def test_a_negative_angle_backs_the_heel_off_so_that_its_top_does_not_touch_the_wall():
    s = seated(pocket__depth=16.0, pocket__angle=-2.0, seat__end_gap=0.1)
    depth_along_wall = 16.0 / math.cos(math.radians(-2.0))
    top_x, top_z = s.to_body(x=0.0, z=depth_along_wall)
    assert -0.15 < top_x <= -0.08
    assert top_z > -0.05


def test_a_wedge_lifts_by_its_thickness_at_the_wall_and_tilts_by_its_taper():
    s = seated(
        pocket__depth=16.0, pocket__length=80.0, shim__make="wedge", shim__wall=1.0, shim__mouth=0.2
    )
    assert s.to_body(x=0.0, z=0.0)[1] == pytest.approx(-15.0)
    assert math.degrees(s.tilt) == pytest.approx(math.degrees(math.atan(0.8 / 80.0)))


def test_a_strip_bears_on_its_own_edge_and_on_the_floor_at_the_mouth():
    s = seated(
        pocket__depth=16.0,
        pocket__length=80.0,
        shim__make="strip",
        shim__strip=0.5,
        shim__strip_edge=10.0,
    )
    cos = math.cos(s.tilt)
    edge = s.to_body(x=s.x_to_neck(big_x=-10.0, z=0.0), z=0.0)
    mouth = s.to_body(x=s.x_to_neck(big_x=-80.0, z=0.0), z=0.0)
    assert edge[1] == pytest.approx(-15.5)
    assert mouth[1] == pytest.approx(-16.0, abs=1e-9)
    assert cos < 1


def test_a_wall_square_to_the_floor_keeps_the_end_gap_along_the_whole_heel_end():
    s = seated(pocket__depth=16.0, pocket__angle=3.0, pocket__wall="floor", seat__end_gap=0.2)
    wall = np.array([-math.sin(math.radians(3.0)), math.cos(math.radians(3.0))])
    normal = np.array([wall[1], -wall[0]])
    for z in (0.0, 8.0, 16.0):
        assert float(normal @ np.array(s.to_body(x=0.0, z=z))) == pytest.approx(-0.2)


def test_a_square_heel_in_a_round_pocket_is_held_off_by_its_corners():
    values = dict(
        pocket__end_shape="round",
        pocket__end_radius=60.0,
        pocket__width_end=56.2,
        neck__heel_width_end=56.0,
        neck__heel_corner_radius=0.0,
        seat__end_gap=0.1,
    )
    s = seated(**values)
    corner = math.hypot(60.0 + s.x0, 28.0)
    assert 60.0 - corner == pytest.approx(0.1)


def test_a_rounded_corner_lets_the_heel_further_into_a_round_pocket():
    values = dict(pocket__end_shape="round", pocket__end_radius=60.0)
    sharp = seated(neck__heel_corner_radius=0.0, **values)
    rounded = seated(neck__heel_corner_radius=6.0, **values)
    assert sharp.x0 < rounded.x0 < 0
    # the rounded corner touches the wall's arc from inside
    centre = math.hypot(60.0 + rounded.x0 - 6.0, 28.0 - 6.0)
    assert centre + 6.0 == pytest.approx(60.0)


def test_a_tighter_heel_arc_touches_the_wall_at_its_apex():
    s = seated(
        pocket__end_shape="round",
        pocket__end_radius=60.0,
        neck__heel_end="round",
        neck__heel_radius=40.0,
        seat__end_gap=0.1,
    )
    assert s.x0 == pytest.approx(-0.1)


def test_the_matrix_says_the_same_as_to_body():
    s = seated(pocket__angle=1.7, shim__make="wedge", seat__end_gap=0.2)
    moved = s.matrix() @ np.array([12.0, 5.0, 18.6, 1.0])
    x, z = s.to_body(x=12.0, z=18.6)
    assert moved == pytest.approx([x, 5.0, z, 1.0])
    assert np.linalg.det(s.matrix()[:3, :3]) == pytest.approx(1.0)


def test_x_to_neck_is_the_way_back():
    s = seated(pocket__angle=2.2, seat__end_gap=0.4, finish__floor=0.1)
    x, _ = s.to_body(x=7.3, z=18.6)
    assert s.x_to_neck(big_x=x, z=18.6) == pytest.approx(7.3)


def test_many_jobs_seat_as_each_alone():
    depths, angles = np.array([14.0, 16.0, 18.0]), np.array([-1.0, 0.0, 2.5])
    many = seated(pocket__depth=depths, pocket__angle=angles, seat__end_gap=0.1)
    for i in range(3):
        one = seated(pocket__depth=depths[i], pocket__angle=angles[i], seat__end_gap=0.1)
        assert many.x0[i] == pytest.approx(float(one.x0), abs=1e-12)
        assert many.z0[i] == pytest.approx(float(one.z0), abs=1e-12)

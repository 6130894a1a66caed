"""Rooms between faces seen along an axis: against dense rays, exact answers and each other."""

import numpy as np
import pytest

Part = pytest.importorskip("Part")
from FreeCAD import Placement, Rotation, Vector  # noqa: E402

from freecad_neckfit.solids.measure import columns  # noqa: E402
from freecad_neckfit.solids.measure.columns import highest  # noqa: E402
from freecad_neckfit.solids.measure.context import Context  # noqa: E402
from freecad_neckfit.solids.measure.facets import Facets  # noqa: E402
from freecad_neckfit.solids.measure.overlay import nearest, overlay, seen  # noqa: E402
from freecad_neckfit.solids.measure.surfaces import height_on  # noqa: E402

pytestmark = pytest.mark.freecad


def facets(shape, sign):
    return Context({"part": shape}, {}).facets("part").facing(axis=2, sign=sign)


def gap(upper, lower):
    return overlay(facets(upper, -1), facets(lower, 1)).least()


def box(size, at):
    return Part.makeBox(*size, Vector(*at))


def turned(shape, angles, at=(0, 0, 0)):
    return shape.copy().transformed(Placement(Vector(*at), Rotation(*angles)).toMatrix(), copy=True)


@pytest.mark.parametrize("seed", range(5))
def test_between_level_faces_the_place_does_not_hang_on_rounding(seed):
    upper, lower = (
        facets(box((20, 30, 5), (0, 0, 1)), -1),
        facets(box((50, 60, 10), (-9, -7, -10)), 1),
    )
    noise = np.random.default_rng(seed).normal(scale=1e-13, size=upper.points.shape)
    shaken = Facets(upper.points + noise, upper.normal, upper.face)
    room, place = overlay(shaken, lower).farthest_least()
    assert room == pytest.approx(1.0, abs=1e-9)
    assert place == pytest.approx((20.0, 0.0, 1.0), abs=1e-9)


def test_one_place_nearer_than_all_others_is_told_wherever_it_is():
    upper = facets(turned(box((20, 30, 5), (0, 0, 1)), (0, -1, 0)), -1)
    lower = facets(box((50, 60, 10), (-9, -7, -10)), 1)
    found, least = overlay(upper, lower).farthest_least(), overlay(upper, lower).least()
    assert found[0] == pytest.approx(least[0], abs=1e-9)
    assert found[1][0] == pytest.approx(least[1][0], abs=1e-9)
    assert overlay(upper, facets(box((1, 1, 1), (90, 90, -1)), 1)).farthest_least() is None


@pytest.mark.parametrize("room", [2.5, 0.02, 0.0, -0.02, -3.0])
def test_parallel_faces(room):
    value, _ = gap(box((20, 30, 5), (0, 0, room)), box((50, 60, 10), (-9, -7, -10)))
    assert value == pytest.approx(room, abs=1e-12)


def test_a_tilted_face_is_nearest_at_its_low_edge():
    slab = turned(box((20, 30, 5), (0, -15, 0)), (0, -2.0, 0), at=(0, 0, 0.4))
    value, place = gap(slab, box((50, 60, 10), (-9, -30, -10)))
    assert value == pytest.approx(0.4, abs=1e-9)
    assert place[0] == pytest.approx(0.0, abs=1e-9)


def test_parts_that_share_no_column_have_no_room():
    assert gap(box((5, 5, 5), (100, 0, 3)), box((50, 60, 10), (-9, -30, -10))) is None


@pytest.mark.parametrize("radius", [300.0, 1500.0, 4000.0])
def test_a_plane_over_a_dome(radius):
    dome = Part.makeSphere(radius, Vector(0, 0, -radius)).common(box((24, 24, 40), (-12, -12, -30)))
    value, place = gap(box((16, 14, 5), (-8, -7, 0.3)), dome)
    assert value == pytest.approx(0.3, abs=0.002)
    assert np.hypot(*place[:2]) < np.sqrt(2 * radius * 0.004) + 0.5


def test_least_room_agrees_with_dense_rays():
    """Random tilted prisms over random prisms, on a raster of rays worked out by plane formulas."""
    rng = np.random.default_rng(11)
    for _ in range(6):
        upper = turned(box((30, 20, 5), (-15, -10, 0)), (rng.uniform(0, 360), rng.uniform(-5, 5),
                       rng.uniform(-5, 5)), at=(*rng.uniform(-4, 4, 2), 6))  # fmt: skip
        lower = turned(box((40, 25, 5), (-20, -12, -5)), (rng.uniform(0, 360), rng.uniform(-5, 5),
                       rng.uniform(-5, 5)))  # fmt: skip
        value, _ = gap(upper, lower)
        x = np.linspace(-25, 25, 401)
        plan = np.stack(np.meshgrid(x, x), axis=-1).reshape(-1, 2)
        up, down = _planes(lower, 1), _planes(upper, -1)
        over, under = _face_height(down, plan), _face_height(up, plan)
        # The largest downward and upward faces alone: the others are sides on edge.
        rays = np.nanmin(over - under)
        assert value <= rays + 1e-9
        assert rays - value < 0.125 * 2 * np.tan(np.radians(10)) + 1e-9


def _planes(shape, sign):
    """Corner points and normal of the face that looks up or down most squarely."""
    face = max(shape.Faces, key=lambda f: sign * f.normalAt(0, 0).z)
    normal = face.normalAt(0, 0)
    wire = face.OuterWire.OrderedVertexes
    return np.array([(v.X, v.Y, v.Z) for v in wire]), np.array([normal.x, normal.y, normal.z])


def _face_height(plane, plan):
    corners, normal = plane
    inside = np.ones(len(plan), dtype=bool)
    turn = np.sign(normal[2])
    for here, there in zip(corners, np.roll(corners, -1, axis=0), strict=True):
        edge, off = there[:2] - here[:2], plan - here[:2]
        inside &= turn * (edge[0] * off[:, 1] - edge[1] * off[:, 0]) >= -1e-9
    if not inside.any():
        return _face_height((corners[::-1], normal), plan)
    height = corners[0, 2] - (plan - corners[0, :2]) @ normal[:2] / normal[2]
    return np.where(inside, height, np.nan)


def test_areas_of_common_parts_add_up():
    one, other = box((20, 30, 5), (0, 0, 1)), box((15, 60, 5), (5, 10, -5))
    found = overlay(facets(one, -1), facets(other, 1))
    assert found.area.sum() == pytest.approx(15 * 20, abs=1e-9)


def test_seen_along_x_and_y_as_along_z():
    one, other = box((4, 9, 6), (3.25, 1, 1)), box((3, 20, 20), (0, 0, 0))
    along_x = overlay(
        Context({"p": one}, {}).facets("p").facing(axis=0, sign=-1),
        Context({"p": other}, {}).facets("p").facing(axis=0, sign=1), axis=0,
    )  # fmt: skip
    value, place = along_x.least()
    assert value == pytest.approx(0.25, abs=1e-12)
    assert place[0] == pytest.approx(3.25)


def test_clipping_at_a_plane_keeps_the_right_side():
    part = facets(box((20, 30, 5), (-8, 0, 1)), -1)
    kept = part.clipped(axis=0, at=0.0, above=True)
    assert kept.points[:, :, 0].min() == pytest.approx(0.0, abs=1e-12)
    assert kept.points[:, :, 0].max() == pytest.approx(12.0)
    other = part.clipped(axis=0, at=0.0, above=False)
    area = sum(np.linalg.norm(np.cross(t[1] - t[0], t[2] - t[0])) / 2
               for t in (*kept.points, *other.points))  # fmt: skip
    assert area == pytest.approx(600.0)


def test_columns_find_the_highest_face():
    up = facets(box((10, 10, 4), (0, 0, 0)).fuse(box((5, 5, 9), (0, 0, 0))), 1)
    assert highest(up, np.array([[2.0, 2.0], [8.0, 8.0], [50.0, 0.0]])).tolist() == [9, 4, -np.inf]


@pytest.mark.parametrize("pairs", [4_000_000, 300])
def test_columns_meet_every_triangle_that_they_lie_in(monkeypatch, pairs):
    monkeypatch.setattr(columns, "PAIRS", pairs)
    rng = np.random.default_rng(1)
    spread = rng.choice([0.1, 3.0], (60, 1, 1))
    points = rng.uniform(0, 10, (60, 1, 3)) + rng.normal(0, 1, (60, 3, 3)) * spread
    plan = rng.uniform(0, 10, (500, 2))
    found = columns.crossings(Facets(points, points[:, 0], np.arange(60)), plan)
    every, at = (k.ravel() for k in np.indices((500, 60)))
    inside, height = seen(plan[every, None], points[at])
    expected = zip(every[inside[:, 0]], height[inside], strict=True)
    assert sorted(zip(*found, strict=True)) == sorted(expected)
    assert len(found[0]) > 100


def test_a_surface_is_carried_on_beyond_its_face():
    sphere = Part.makeSphere(1000, Vector(0, 0, -1000)).common(box((20, 20, 20), (-10, -10, -10)))
    face = max(sphere.Faces, key=lambda f: f.CenterOfMass.z)
    height = height_on(face, np.array([[0.0, 0.0], [30.0, 40.0]]))
    assert height[0] == pytest.approx(0.0, abs=1e-9)
    assert height[1] == pytest.approx(np.sqrt(1000**2 - 50**2) - 1000, abs=1e-9)


@pytest.mark.parametrize("seed", range(6))
def test_the_nearest_pairs_are_those_that_all_pairs_tell(seed):
    """Whatever is left out lies farther, and no sliver decides."""
    rng = np.random.default_rng(seed)
    upper, lower = (
        facets_at(rng.uniform(-20, 20, (60, 1, 3)) * (1, 1, 0.1) + rng.normal(0, 6, (60, 3, 3))
                  * (1, 1, 0.2) + (0, 0, z))
        for z in (3.0, 0.0)
    )  # fmt: skip
    whole = overlay(upper, lower)
    whole = whole.only(whole.thickness > 1e-6)
    some = nearest(upper, lower, within=0.01, thicker=1e-6)
    assert some.farthest_least()[0] == pytest.approx(whole.farthest_least()[0], abs=1e-12)
    assert some.farthest_least()[1] == pytest.approx(whole.farthest_least()[1], abs=1e-9)
    near = whole.only(whole.gap.min(axis=1) < whole.gap.min() + 0.01)
    kept = some.only(some.gap.min(axis=1) < some.gap.min() + 0.01)
    assert kept.upper.tolist() == near.upper.tolist()
    assert kept.lower.tolist() == near.lower.tolist()
    assert len(some.upper) < len(whole.upper)


def test_of_nothing_nothing_is_nearest():
    far = facets_at(np.array([[[100.0, 0, 0], [110, 0, 0], [100, 10, 0]]]))
    here = facets_at(np.array([[[0.0, 0, 0], [10, 0, 0], [0, 10, 0]]]))
    for one, other in ((far, here), (here, far), (far.where(far.face > 0), here)):
        assert nearest(one, other, within=0.01, thicker=1e-6).farthest_least() is None


def facets_at(points):
    across = np.cross(points[:, 1] - points[:, 0], points[:, 2] - points[:, 0])
    normal = across / np.linalg.norm(across, axis=1)[:, None]
    return Facets(points, normal, np.zeros(len(points), dtype=np.int64))


@pytest.mark.parametrize("seed", range(4))
def test_triangles_over_a_rectangle_are_those_that_a_cut_to_it_leaves(seed):
    rng = np.random.default_rng(seed)
    found = facets_at(rng.uniform(-60, 60, (200, 3, 3)))
    found = found.facing(axis=2, sign=1)
    bounds = (-10.0, 15.0, -4.0, 3.0)
    inside = Facets(found.points, found.normal, np.arange(len(found)))
    for axis, low, high in ((0, *bounds[:2]), (1, *bounds[2:])):
        inside = inside.clipped(axis=axis, at=low, above=True)
        inside = inside.clipped(axis=axis, at=high, above=False)
    kept = Facets(found.points, found.normal, np.arange(len(found))).over(bounds)
    assert sorted(kept.face) == sorted(set(inside.face))
    assert 0 < len(kept) < len(found)


def test_an_upright_triangle_over_a_rectangle_is_kept():
    points = np.array([[[-5.0, 1, 0], [5, 1, 0], [0, 1, 9]], [[-5.0, 9, 0], [5, 9, 0], [0, 9, 9]]])
    found = facets_at(points)
    assert found.over((-1.0, 1.0, 0.0, 2.0)).points.tolist() == points[:1].tolist()

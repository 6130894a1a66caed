"""Interference on constructed pairs whose depth, direction and volume are known exactly."""

import math

import numpy as np
import pytest

Part = pytest.importorskip("Part")
from FreeCAD import Placement, Rotation, Vector  # noqa: E402

from freecad_neckfit.solids.measure import clashes  # noqa: E402
from freecad_neckfit.solids.measure.clash import BAND, volume  # noqa: E402
from freecad_neckfit.solids.measure.context import Context  # noqa: E402
from freecad_neckfit.solids.measure.wood import distance_between  # noqa: E402

pytestmark = pytest.mark.freecad

SIZE = (20.0, 30.0, 10.0)


def box(size=SIZE, at=(0, 0, 0)):
    return Part.makeBox(*size, Vector(*at))


def clash_of(one, other):
    return clashes._clash(Context({"one": one, "other": other}, {}), "one", "other")


def beside(direction, overlap):
    """A second, smaller box that reaches ``overlap`` into the first from one of six sides."""
    size = (8.0, 9.0, 4.0)
    at = [6.0, 10.0, 3.0]
    axis, sign = direction
    at[axis] = SIZE[axis] - overlap if sign > 0 else overlap - size[axis]
    return box(size, at)


SIDES = [(axis, sign) for axis in range(3) for sign in (1, -1)]
TURNS = [(0, 0, 0), (17.3, 0, 0), (3.1, -2.7, 1.9), (41.0, 0.5, 0)]


def turned(shape, angles):
    """Turned by yaw, pitch and roll, written into the geometry, as the parts of a joint are."""
    return shape.copy().transformed(Placement(Vector(), Rotation(*angles)).toMatrix(), copy=True)


@pytest.mark.parametrize("angles", TURNS)
@pytest.mark.parametrize("direction", SIDES)
def test_interference_of_two_hundredths_is_seen_from_every_side(direction, angles):
    one, other = turned(box(), angles), turned(beside(direction, 0.02), angles)
    for a, b in ((one, other), (other, one)):
        depth = clash_of(a, b).depth
        # Along the axis that moves it free; a leaning face needs a little more along Z or level.
        assert 0.0199 <= depth <= 0.0202 + 0.02 * abs(math.sin(math.radians(3.2)))


@pytest.mark.parametrize("angles", TURNS)
@pytest.mark.parametrize("direction", SIDES)
def test_touching_faces_are_no_interference(direction, angles):
    one, other = turned(box(), angles), turned(beside(direction, 0.0), angles)
    assert clash_of(one, other).depth < BAND / 10
    assert clash_of(other, one).depth < BAND / 10


@pytest.mark.parametrize("direction", SIDES)
def test_a_gap_is_no_interference(direction):
    assert clash_of(box(), beside(direction, -0.02)).depth == 0


@pytest.mark.parametrize(
    ("direction", "move"),
    [((2, 1), "drop"), ((2, -1), "lift"), ((0, 1), "shift"), ((1, -1), "shift")],
)
def test_the_move_that_frees_is_named(direction, move):
    assert clash_of(box(), beside(direction, 0.3)).move == move


@pytest.mark.parametrize("offset", [(0, 0, 0), (-311.7, 54.3, 12.9), (1e4, -1e4, 500)])
def test_depth_does_not_depend_on_where_the_pair_lies(offset):
    one, other = box(), beside((0, 1), 0.37)
    for shape in (one, other):
        shape.translate(Vector(*offset))
    assert clash_of(one.copy(), other.copy()).depth == pytest.approx(0.37, abs=1e-6)


def test_a_side_strip_of_a_heel_has_its_exact_volume():
    pocket_side = box((100, 40, 30), (-90, 28, -30))
    heel = box((76, 56.2, 16), (-76, -28.1, -16))
    found = clash_of(heel, pocket_side)
    assert found.depth == pytest.approx(0.1, abs=1e-6)
    assert found.move == "shift"
    assert volume(heel, pocket_side, found) == pytest.approx(0.1 * 76 * 16, rel=1e-6)


def test_a_wedge_is_as_deep_as_its_deepest_edge():
    block = box((60, 60, 20), (-30, -30, -20))
    corners = [Vector(0, -10, -0.3), Vector(20, -10, 0.5), Vector(20, -10, 5), Vector(0, -10, 5)]
    wedge = Part.Face(Part.makePolygon([*corners, corners[0]])).extrude(Vector(0, 20, 0))
    found = clash_of(wedge, block)
    assert found.depth == pytest.approx(0.3, abs=1e-6)
    assert found.place[0] == pytest.approx(0.0, abs=0.01)
    assert found.place[2] == pytest.approx(-0.3, abs=1e-3)
    assert volume(wedge, block, found) == pytest.approx(0.3 * 7.5 / 2 * 20, rel=1e-5)


@pytest.mark.parametrize("into", [0.02, 0.5])
def test_a_lying_cylinder_pressed_into_a_plane(into):
    block = box((80, 80, 20), (-40, -40, -20))
    rod = Part.makeCylinder(5, 40, Vector(-20, 0, 5 - into), Vector(1, 0, 0))
    assert clash_of(rod, block).depth == pytest.approx(into, abs=2e-3)


def test_a_lying_cylinder_on_a_plane_touches():
    block = box((80, 80, 20), (-40, -40, -20))
    rod = Part.makeCylinder(5, 40, Vector(-20, 0, 5), Vector(1, 0, 0))
    assert clash_of(rod, block).depth <= BAND


@pytest.mark.parametrize("into", [0.02, 0.2])
def test_a_dome_pressed_into_a_plane_from_below(into):
    dome = Part.makeSphere(1500, Vector(0, 0, -1500)).common(box((30, 30, 30), (-15, -15, -20)))
    block = box((20, 16, 5), (-10, -8, -into))
    assert clash_of(block, dome).depth == pytest.approx(into, abs=2e-3)


def test_a_round_end_too_wide_for_its_pocket_by_two_hundredths():
    pocket = box((90, 90, 20), (-70, -45, -20))
    pocket = pocket.cut(_stadium(28.0, -16)).copy()
    assert clash_of(_stadium(28.02, -16), pocket).depth > BAND
    assert clash_of(_stadium(28.0, -16), pocket).depth < BAND


def _stadium(radius, bottom):
    end = Part.makeCylinder(radius, 60, Vector(-28, 0, bottom))
    return end.fuse(box((40, 2 * radius, 60), (-68, -radius, bottom))).removeSplitter()


def test_a_corner_that_bites_is_as_deep_as_the_smaller_move():
    other = box((5, 5, 5), (SIZE[0] - 0.05, SIZE[1] - 0.03, SIZE[2] - 0.08))
    # Free by 0.03 across; a shift never leaves the smaller edge distance.
    assert clash_of(other, box()).depth == pytest.approx(0.03, abs=1e-3)


def test_skew_cylinders_are_four_apart():
    one = Part.makeCylinder(2, 40, Vector(-20, 0, 0), Vector(1, 0, 0))
    other = Part.makeCylinder(3, 40, Vector(0, -20, 9), Vector(0, 1, 0))
    assert distance_between(one, other)[0] == pytest.approx(4.0, abs=1e-6)
    assert clash_of(other, one).depth == 0


def test_inputs_are_left_as_they_were():
    one, other = box(), beside((2, 1), 0.4)
    before = [_state(s) for s in (one, other)]
    found = clash_of(one, other)
    volume(one, other, found)
    assert [_state(s) for s in (one, other)] == before


def _state(shape):
    tolerances = [shape.getTolerance(k) for k in (-1, 0, 1)]
    return shape.ShapeType, shape.Volume, tolerances, len(shape.Faces)


def test_depth_agrees_with_a_dense_raster_of_columns():
    """Two tilted blocks: lift by an independent formula on a raster."""
    rng = np.random.default_rng(5)
    for _ in range(5):
        tilt, turn = rng.uniform(-2, 2), rng.uniform(0, 360)
        block = box((80, 80, 20), (-40, -40, -20))
        slab = turned(box((20, 30, 5), (-10, -15, 0)), (turn, tilt, 0))
        low = min(v.Z for v in slab.Vertexes)
        slab.translate(Vector(0, 0, -low - 0.25))
        assert clash_of(slab.copy(), block).depth == pytest.approx(0.25, abs=2e-3)

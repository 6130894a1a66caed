"""Regions where all of many functions hold: exact borders, and nothing thin is missed."""

import numpy as np
import pytest

from freecad_neckfit.decide.region import find_region


def region(*functions, x=(0.0, 1.0), y=(0.0, 1.0)):
    def margins(u, v, which):
        chosen = functions if which is None else [functions[k] for k in which]
        return np.array([np.broadcast_to(f(u, v), u.shape) for f in chosen], dtype=float)

    return find_region(margins, x=x, y=y)


def area(found):
    total = 0.0
    for polygon in found.polygons:
        x, y = polygon.T
        total += abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2
    return total


def test_a_triangle_between_three_straight_borders_is_exact():
    found = region(lambda x, y: x - 0.2, lambda x, y: y - 0.1, lambda x, y: 0.9 - x - y)
    assert area(found) == pytest.approx(0.6**2 / 2, abs=1e-12)
    assert sorted({border.row for border in found.borders}) == [0, 1, 2]


def test_a_disc_has_its_area_and_every_border_point_on_the_circle():
    found = region(lambda x, y: 100 * (0.3 - np.hypot(x - 0.45, y - 0.52)))
    assert area(found) == pytest.approx(np.pi * 0.09, rel=5e-6)
    (border,) = found.borders
    reached = np.hypot(*(border.points - (0.45, 0.52)).T)
    assert reached == pytest.approx(0.3, abs=1e-9)
    assert border.points[0] == pytest.approx(border.points[-1], abs=1e-9)


@pytest.mark.parametrize("width", [1e-2, 1e-4, 1e-6])
@pytest.mark.parametrize("slope", [0.0, 0.37, -2.3, 31.0])
def test_a_strip_far_thinner_than_a_step_is_found_whole(width, slope):
    offset = 0.137 - min(slope, 0) * 0.8 - max(slope, 0) * 0.4

    def low(x, y):
        return y - slope * x - offset

    found = region(low, lambda x, y: width - low(x, y))
    inside = np.clip(-offset / slope, 0, 1) if slope else 0.0
    outside = np.clip((1 - offset) / slope, 0, 1) if slope else 1.0
    assert area(found) == pytest.approx(width * abs(outside - inside), rel=2e-2)


def test_a_thin_crescent_is_found():
    # Between two circles that differ by 1e-4, one shifted: no lattice of a thousand steps sees it.
    found = region(
        lambda x, y: 0.35**2 - (x - 0.5) ** 2 - (y - 0.5) ** 2,
        lambda x, y: (x - 0.5 + 1e-4) ** 2 + (y - 0.5) ** 2 - 0.35**2,
    )
    assert not found.empty
    assert area(found) == pytest.approx(2 * 0.35 * 1e-4, rel=0.05)


def test_a_tiny_disc_between_the_nodes_is_found():
    found = region(lambda x, y: 0.003 - np.hypot(x - 0.3021, y - 0.7013))
    assert area(found) == pytest.approx(np.pi * 0.003**2, rel=0.02)


def test_the_point_of_a_thin_needle_between_two_columns_is_found():
    # Two borders that cross: what is left is a sliver 0.01 long and 1e-5 high, at no node.
    def narrow(x, y):
        return 5e-6 - np.abs(y - 0.4321) - 1e-3 * np.abs(x - 0.6543)

    assert not region(narrow).empty


def test_a_kinked_function_is_not_missed_between_nodes():
    # The least of two planes peaks along a line that no node meets, at 1e-3 above 0.
    found = region(
        lambda x, y: 1e-3 - np.abs(0.7 * (x - 0.5129) + 0.3 * (y - 0.5)),
        lambda x, y: 1e-3 - np.abs(y - 0.6917),
    )
    assert area(found) == pytest.approx(2e-3 * 2e-3 / 0.7, rel=1e-2)


def test_functions_that_shut_each_other_out_leave_nothing():
    assert region(lambda x, y: x + y - 1.0, lambda x, y: 0.9999 - x - y).empty
    assert region(lambda x, y: 0 * x - 1e-9).empty


def test_a_function_that_applies_only_in_a_part_bounds_only_that_part():
    found = region(lambda x, y: np.where(x > 0.31, 0.25 - y, np.inf))
    assert area(found) == pytest.approx(0.31 + 0.69 * 0.25, abs=2e-3)


def test_holds_agrees_with_the_functions_at_random_points():
    def wavy(x, y):
        return 100 * (0.2 + 0.1 * np.sin(6 * x) - np.abs(y - 0.5))

    def tilted(x, y):
        return 100 * (x - 0.13 - 0.2 * y * y)

    found = region(wavy, tilted)
    rng = np.random.default_rng(3)
    x, y = rng.random((2, 20000))
    truth = np.minimum(wavy(x, y), tilted(x, y))
    clear = np.abs(truth) > 1e-3
    assert np.array_equal(found.holds(x, y)[clear], truth[clear] >= 0)
    assert clear.mean() > 0.99


def test_functions_that_say_the_same_bound_it_as_one():
    # Equal, and equal along the border but steeper; the last is 0 everywhere and bounds nothing.
    found = region(
        lambda x, y: 0 * x,
        lambda x, y: 0.61 - 0.37 * x - y,
        lambda x, y: 1 * (0.61 - y - 0.37 * x),
        lambda x, y: 3 * (0.61 - 0.37 * x - y),
        lambda x, y: y - 0.1,
    )
    lines = [(border.row, len(border.points)) for border in found.borders if border.row >= 0]
    assert sorted(row for row, _ in lines) == [1, 4]
    assert area(found) == pytest.approx(0.51 - 0.37 / 2, abs=1e-12)


def test_a_thin_strip_of_functions_that_say_the_same_is_whole():
    def low(x, y):
        return y + x - 0.9371

    def high(x, y):
        return 1e-5 - low(x, y)

    found = region(low, lambda x, y: low(x, y) * (1 + 1e-12), high, lambda x, y: 2 * high(x, y))
    x = np.linspace(0.0, 0.937, 20001)
    assert found.holds(x, 0.9371 + 5e-6 - x).all()
    assert {border.row for border in found.borders if border.row >= 0} == {0, 2}


def test_a_point_on_a_seam_between_pieces_belongs_to_the_region():
    found = region(
        lambda x, y: y - 0.13 * x - 0.1 + 1e-4,
        lambda x, y: 0.13 * x + 0.1 + 1e-4 - y,
        lambda x, y: 25 - (x - 16) ** 2 - (y - 2) ** 2,
        x=(13.37, 18.91), y=(0.53, 3.97),
    )  # fmt: skip
    share = np.linspace(0.05, 0.95, 19)[:, None]
    for polygon in found.polygons:
        for start, end in zip(polygon, np.roll(polygon, -1, axis=0), strict=True):
            # Rounding puts some of these beyond both polygons that share the side.
            x, y = (start + share * (end - start)).T
            assert found.holds(x, y).all()
    beside = np.linspace(13.4, 18.9, 50)
    assert not found.holds(beside, 0.13 * beside + 0.1 + 1.01e-4).any()


def test_pieces_do_not_overlap():
    found = region(lambda x, y: 0.3 - np.hypot(x - 0.5, y - 0.5))
    rng = np.random.default_rng(4)
    x, y = rng.random((2, 5000))
    from freecad_neckfit.decide.region.region import _in_convex

    times = sum(_in_convex(p, x, y).astype(int) for p in found.polygons)
    assert times.max() == 1

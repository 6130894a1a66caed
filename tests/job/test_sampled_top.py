"""A top known by heights on a grid: exact for surfaces of second degree, and smooth between."""

import numpy as np
import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.job.top import top_height, top_tangent, x_of_slope

CARVED = complete({"body.top": "carved"})


def sampled(surface, step=10.0):
    x, y = np.arange(-80.0, 261.0, step), np.arange(-70.0, 71.0, step)
    return complete({
        "body.top": "sampled", "body.top_heights": surface(x[:, None], y).ravel(),
        "body.top_rows": len(y), "body.top_step": step,
    })  # fmt: skip


def bowl(x, y):
    return top_height(CARVED, x=x, y=y)


def test_a_bowl_is_met_exactly_everywhere_within_the_samples():
    v = sampled(bowl)
    rng = np.random.default_rng(5)
    x, y = rng.uniform(-80, 260, 500), rng.uniform(-70, 70, 500)
    assert np.abs(top_height(v, x=x, y=y) - bowl(x, y)).max() < 1e-12


def test_beyond_the_samples_the_border_goes_straight_on():
    v = sampled(bowl)
    slope = (bowl(260.0, 5.0) - bowl(259.99, 5.0)) / 0.01
    assert top_height(v, x=300.0, y=5.0) == pytest.approx(bowl(260.0, 5.0) + 40 * slope, abs=1e-4)


def test_values_broadcast_as_for_the_other_tops():
    v = sampled(bowl)
    found = top_height(v, x=np.zeros((4, 1)), y=np.linspace(-30, 30, 7))
    assert found.shape == (4, 7)


@pytest.mark.parametrize("slope", [0.0, 0.02, -0.01])
def test_a_line_touches_a_bowl_where_it_has_the_line_s_slope(slope):
    found = x_of_slope(sampled(bowl), slope=slope, y=np.array([0.0, 20.0]))
    assert found == pytest.approx(x_of_slope(CARVED, slope=slope, y=0.0), abs=1e-9)


def test_the_tangent_at_the_origin_is_the_bowl_s():
    assert top_tangent(sampled(bowl)) == pytest.approx(1.5, abs=1e-9)


@pytest.mark.parametrize("stated", [
    {}, {"body.top_heights": np.zeros(7), "body.top_rows": 3},
    {"body.top_heights": np.zeros(4), "body.top_rows": 2},
])  # fmt: skip
def test_what_is_no_grid_is_refused(stated):
    with pytest.raises(BadInput, match=r"body\.top_heights"):
        top_height(complete({"body.top": "sampled"} | stated), x=0.0, y=0.0)

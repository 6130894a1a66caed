"""The leaning screw and the truss rod's channel, against clouds of points on the screw."""

import numpy as np
import pytest

from freecad_neckfit.fit.rod_room import Shank, rod_room

RADIUS = 2.0


def by_points(*, lean, entry, tip, y, width, depth, end):
    """Least distance from points of the shank's end and side to the block."""
    axis = np.array([np.sin(lean), 0.0, np.cos(lean)])
    out, side = np.array([-np.cos(lean), 0.0, np.sin(lean)]), np.array([0.0, 1.0, 0.0])
    turn = np.linspace(0, 2 * np.pi, 721)[None, :, None]
    rim = out * np.cos(turn) + side * np.sin(turn)
    along = np.concatenate([np.linspace(0, tip, 241), np.full(40, tip)])
    radius = np.concatenate([np.full(241, RADIUS), np.linspace(0, RADIUS, 40)])
    points = np.array([entry, y, 0.0]) + along[:, None, None] * axis + radius[:, None, None] * rim
    off = np.stack([points[..., 0] + end, np.abs(points[..., 1]) - width / 2,
                    depth - points[..., 2]])  # fmt: skip
    return float(np.linalg.norm(np.maximum(off, 0.0), axis=0).min())


@pytest.mark.parametrize("seed", range(60))
def test_a_leaning_screw_beside_before_and_under_the_channel(seed):
    rng = np.random.default_rng(seed)
    lean, tip = np.radians(rng.uniform(-4, 4)), rng.uniform(8, 16)
    entry, y = -rng.uniform(5, 40), rng.choice([0.0, 3.0, rng.uniform(0, 19)])
    depth, end, width = 11.0, rng.choice([10.0, 25.0, 60.0]), 6.4
    shank = Shank(entry, entry + tip * np.sin(lean), tip * np.cos(lean), RADIUS,
                  np.sin(lean), np.cos(lean))  # fmt: skip
    found = rod_room(shank, aside=abs(y) - width / 2, depth=depth, end=end)
    expected = by_points(lean=lean, entry=entry, tip=tip, y=y, width=width, depth=depth, end=end)
    if expected > 0:
        assert found == pytest.approx(expected, abs=0.004)
    else:
        assert found <= 1e-9

"""What of an imported neck a ray meets, and which edges are drawn, on a block of known faces."""

import numpy as np
import pytest

from freecad_neckfit.gui.views.neck_mesh import hit, rims, span
from freecad_neckfit.solids.recognise.neck.patches import Patches

SIZE = np.array([4.0, 2.0, 1.0])


def block():
    """A block from the origin to ``SIZE``; patch 2·axis is its low face, the next its high one."""
    corners, owner = [], []
    for axis in range(3):
        u, v = (axis + 1) % 3, (axis + 2) % 3
        for high in (0, 1):
            square = np.zeros((4, 3))
            square[:, axis] = high * SIZE[axis]
            square[[1, 2], u] = SIZE[u]
            square[[2, 3], v] = SIZE[v]
            square = square if high else square[::-1]
            corners += [square[[0, 1, 2]], square[[0, 2, 3]]]
            owner += [2 * axis + high] * 2
    return Patches(np.array(corners), np.array(owner), np.zeros(6, dtype=int))


@pytest.mark.parametrize("axis", range(3))
@pytest.mark.parametrize("high", [0, 1])
def test_a_ray_meets_the_nearest_face(axis, high):
    start = SIZE * 0.37
    end = start.copy()
    start[axis], end[axis] = (50.0, -50.0) if high else (-50.0, 50.0)
    assert hit(block(), start, end) == 2 * axis + high


def test_a_ray_beside_the_block_meets_nothing():
    assert hit(block(), np.array([0.0, 5.0, 9.0]), np.array([0.0, 5.0, -9.0])) is None
    # What lies behind its end is not met.
    assert hit(block(), np.array([1.0, 1.0, 9.0]), np.array([1.0, 1.0, 2.0])) is None


def test_rims_are_the_edges_between_faces_and_no_diagonals():
    found = rims(block())
    assert len(found) == 12
    lengths = np.sort(np.linalg.norm(found[:, 1] - found[:, 0], axis=1))
    assert lengths == pytest.approx(np.sort(np.repeat(SIZE, 4)))


def test_the_span_of_a_face_is_its_middle_size_and_normal():
    middle, size, normal = span(block(), [5])
    assert middle == pytest.approx([2.0, 1.0, 1.0])
    assert size == pytest.approx([4.0, 2.0, 0.0])
    assert normal == pytest.approx([0.0, 0.0, 1.0])


def test_faces_that_look_apart_are_looked_at_from_the_first():
    _, _, normal = span(block(), [2, 3])
    assert normal == pytest.approx([0.0, -1.0, 0.0])

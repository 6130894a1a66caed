"""Picking and comparing without branches say the same as with them; places end with many jobs."""

from __future__ import annotations

import numpy as np
import pytest

from freecad_neckfit.fit.board_edge import Spot
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.lesser import lesser, place_of
from freecad_neckfit.fit.strings import FEW
from freecad_neckfit.job.arrays import difference, distance, pick, within

SPECIAL = np.array([0.0, -0.0, 1.5, -2.0, np.inf, -np.inf, np.nan, 1e-308])


@pytest.mark.parametrize("no", [SPECIAL[::-1], np.inf, 3, SPECIAL[:, None]])
@pytest.mark.parametrize("mask", [np.arange(8) % 3 == 0, np.zeros(8, bool), True, np.False_])
def test_picks_what_where_picks_to_the_last_bit(mask, no):
    expected = np.where(mask, SPECIAL, no)
    found = pick(mask, SPECIAL, no)
    assert np.shape(found) == np.shape(expected)
    assert np.asarray(found).tobytes() == expected.tobytes()


def test_picks_a_plain_number_of_plain_numbers():
    assert (pick(np.True_, 1.0, 2), pick(False, 1.0, 2)) == (1.0, 2.0)
    assert np.ndim(pick(np.True_, 1.0, 2)) == 0


def test_limits_and_distances_are_those_of_numpy():
    values = np.linspace(-3, 3, 13)
    assert np.array_equal(within(values, -1.0, 2.0), np.clip(values, -1.0, 2.0))
    assert distance(values, 2.0) == pytest.approx(np.hypot(values, 2.0), abs=1e-15)
    assert np.array_equal(difference(values[:, None], values[:4]), values[:, None] - values[:4])


def spot(count, *, seed):
    rng = np.random.default_rng(seed)
    return Spot(*rng.normal(size=(4, count)))


def test_of_few_jobs_room_and_place_come_from_the_same_finding():
    one, other = spot(FEW, seed=1), spot(FEW, seed=2)
    found = lesser(one, other)
    for i in range(FEW):
        expected = min(one, other, key=lambda s: s.room[i])
        assert [a[i] for a in found] == [a[i] for a in expected]


def test_of_many_jobs_only_the_room_is_told():
    one, other = spot(FEW + 1, seed=1), spot(FEW + 1, seed=2)
    found = lesser(one, other)
    assert np.array_equal(found.room, np.minimum(one.room, other.room))
    assert found[1:] == (None, None, None)
    assert place_of(Case({}), found) is None


def test_the_first_finding_stands_alone_and_a_place_follows_the_treble_side():
    one = Spot(1.0, 2.0, 3.0, 4.0)
    assert lesser(None, one) is one
    assert place_of(Case({"strings.left_handed": True}), one) == (2.0, -3.0, 4.0)

"""Many jobs at once give what each gives by itself; every check states what it reads."""

import importlib

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.job.parameters import ALL
from tests.fit.joint_jobs import many, one_of

COUNT = 6
NAMES = [
    "corner_entry",
    "end_clearance",
    "end_visible",
    "overhang_binding_gap",
    "overhang_corner_gap",
    "overhang_pickup",
    "overhang_rock",
    "overhang_side_room",
    "overhang_trapped_plate",
    "plate_heel",
    "rod_access",
    "screws_edge",
    "screws_grip",
    "screws_hole",
    "screws_insert_bottom",
    "screws_insert_engagement",
    "screws_longest",
    "screws_penetration",
    "screws_pilots",
    "screws_pull",
    "screws_rod",
    "screws_tip",
    "seasons_gap",
    "seasons_side",
    "seat_contact",
    "seat_fillet",
    "seat_flat_length",
    "side_bass",
    "side_swing",
    "side_treble",
    "wood_floor",
    "wood_wall_bass",
    "wood_wall_treble",
    "wood_web",
]
CHECKS = [importlib.import_module(f"freecad_neckfit.fit.checks.{name}").CHECK for name in NAMES]


@pytest.mark.parametrize("seed", range(40))
def test_many_jobs_at_once_equal_each_by_itself(seed):
    stated = many(seed, count=COUNT)
    together = Case(stated)
    ones = [Case(one_of(stated, i, count=COUNT)) for i in range(COUNT)]
    for check in CHECKS:
        all_at_once = check.read(together)
        for i, one in enumerate(ones):
            alone = check.read(one)
            applies, known = (
                bool(np.broadcast_to(a, COUNT)[i]) for a in (all_at_once.applies, all_at_once.known)
            )
            assert applies == bool(alone.applies), check.id
            assert known == bool(alone.known), check.id
            if applies and known:
                value = np.broadcast_to(all_at_once.value, COUNT)[i]
                assert np.ndim(alone.value) == 0
                assert np.isfinite(value), check.id
                assert value == pytest.approx(float(alone.value), abs=1e-9), check.id
                assert alone.place is None or np.isfinite(alone.place).all(), check.id


@pytest.mark.parametrize("check", CHECKS, ids=NAMES)
def test_a_check_names_declared_parameters_and_its_own_id(check):
    assert set(check.reads) <= set(ALL)
    for bound in (check.low, check.high, check.wish_low):
        assert not isinstance(bound, str) or bound in ALL
    assert check.id.replace(".", "_", 1) in NAMES


class Watched(dict):
    """Values that remember which of them were asked for."""

    def __init__(self, values):
        super().__init__(values)
        self.asked = set()

    def __getitem__(self, key):
        self.asked.add(key)
        return super().__getitem__(key)


ONLY_PLACE = {"strings.left_handed"}
"""Moves the place that is told to the other side, not the value."""


@pytest.mark.parametrize("seed", range(24))
def test_a_check_reads_no_more_than_it_states(seed):
    stated = one_of(many(seed, count=COUNT), 0, count=COUNT)
    for check in CHECKS:
        case = Case(stated)
        case.values = Watched(case.values)
        check.read(case)
        asked = {key for key in case.values.asked if not key.startswith("limits.")} - ONLY_PLACE
        assert asked <= set(check.reads), check.id

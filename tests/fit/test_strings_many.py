"""Many jobs at once are the same jobs one by one, for every check of the strings."""

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import (
    bridge_angle_needed,
    bridge_base_gap,
    bridge_break_angle,
    bridge_radius,
    pickup_high,
    pickup_low,
    saddle_high,
    saddle_low,
    scale_reach,
    strings_downforce,
    strings_edge,
    strings_fretted,
    strings_open,
    strings_plate,
    strings_pull,
    strings_top,
)
from freecad_neckfit.fit.strings import FEW
from freecad_neckfit.job.parameters import ALL
from tests.fit.string_jobs import SORTS

CHECKS = (
    scale_reach.CHECK, saddle_low.CHECK, saddle_high.CHECK, bridge_radius.CHECK,
    bridge_base_gap.CHECK, bridge_break_angle.CHECK, bridge_angle_needed.CHECK,
    strings_open.CHECK, strings_fretted.CHECK, strings_edge.CHECK, strings_top.CHECK,
    strings_plate.CHECK, strings_pull.CHECK, strings_downforce.CHECK,
    *pickup_low.CHECKS, *pickup_high.CHECKS,
)  # fmt: skip
FITTED = {f"pickup_{role}.fitted": True for role in ("neck", "middle", "bridge")} | {
    "pickup_neck.ring": 3.0
}
JOBS = 7


def body_arrays(job, draw):
    """Arrays of what the body and hardware may vary."""
    spread = {
        "pocket.depth": 1.5, "pocket.angle": 0.6, "bridge.low": 1.0, "bridge.front": 3.0,
        "plate.thickness": 0.2, "bridge.anchor_height": 3.0, "pickup_neck.low": 0.5,
        "bridge.saddle_radius": 40.0, "finish.top": 0.1,
    }  # fmt: skip
    base = Case(job).values
    return {key: base[key] + draw.uniform(-s, s, JOBS) for key, s in spread.items()}


def neck_arrays(job, draw):
    """Arrays of what the neck may vary, so that every job has its own neck."""
    spread = {
        "neck.relief": 0.1, "neck.nut_to_heel": 0.5, "pocket.length": 1.0, "neck.height": 0.4,
        "strings.action_treble": 0.3, "strings.compensation_bass": 0.5, "neck.radius_nut": 20.0,
        "neck.scale_bass": 0.5, "strings.spread_bridge": 1.0, "strings.nut_bass": 0.05,
        "neck.fall_away": 0.0,
    }  # fmt: skip
    base = Case(job).values
    return {key: base[key] + draw.uniform(-s, s, JOBS) for key, s in spread.items()}


@pytest.mark.parametrize("sort", SORTS)
@pytest.mark.parametrize("vary", [body_arrays, neck_arrays])
def test_many_jobs_equal_the_same_jobs_one_by_one(sort, vary):
    job = SORTS[sort] | FITTED
    arrays = vary(job, np.random.default_rng(2))
    many = Case(job | arrays)
    ones = [Case(job | {key: float(a[i]) for key, a in arrays.items()}) for i in range(JOBS)]
    for check in CHECKS:
        reading = check.read(many)
        singles = [check.read(one) for one in ones]
        applies = [bool(single.applies) for single in singles]
        assert np.all(np.broadcast_to(reading.applies, JOBS) == applies), check.id
        if not any(applies):
            continue
        values = np.broadcast_to(reading.value, JOBS)
        assert values == pytest.approx([float(s.value) for s in singles], abs=1e-9), check.id
        if reading.place is not None:
            for axis in range(3):
                found = np.broadcast_to(reading.place[axis], JOBS)
                assert found == pytest.approx([float(s.place[axis]) for s in singles]), check.id


def test_places_and_details_are_left_out_for_very_many():
    many = Case({"pocket.depth": np.linspace(14, 18, FEW + 1), **FITTED})
    few = Case({"pocket.depth": np.linspace(14, 18, FEW), **FITTED})
    for check in (scale_reach.CHECK, saddle_low.CHECK, strings_top.CHECK, pickup_low.CHECKS[0]):
        assert check.read(many).place is None
        assert check.read(few).place[0].shape == (FEW,)


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.id)
def test_what_a_check_says_it_reads_is_declared(check):
    assert set(check.reads) <= set(ALL)
    assert len(set(check.reads)) == len(check.reads)
    for bound in (check.low, check.high):
        assert bound is None or isinstance(bound, float) or bound in ALL


@pytest.mark.parametrize("check", CHECKS, ids=lambda check: check.id)
def test_a_check_reads_nothing_that_it_does_not_name(check):
    for sort, job in SORTS.items():
        case = Case(job | FITTED | {"strings.hand": 100.0, "plate.cover": "surround"})
        asked = set()
        values = case.values

        class Watched(dict):
            def __getitem__(self, key, asked=asked):
                asked.add(key)
                return super().__getitem__(key)

        case.values = Watched(values)
        check.read(case)
        assert asked <= set(check.reads), (sort, asked - set(check.reads))

"""Many depths or angles of a neck from a file at once, against a check of its own for each."""

import math
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

sys.path.insert(0, str(Path(__file__).parents[1] / "solids"))
sys.path.insert(0, str(Path(__file__).parent))

from test_neck_from_a_file import RECORDS, pocket_for, read

pytestmark = pytest.mark.freecad

HARDWARE = {
    "pickup_neck.fitted": True, "pickup_bridge.fitted": True, "plate.cover": "surround",
}  # fmt: skip
DEPTHS, ANGLES = (15.2, 16.7, 19.4), (-0.8, 0.6, 2.5)


def judged(found, stated):
    from freecad_neckfit.job.joint import Job
    from freecad_neckfit.run.neck_judged import judge_neck

    return judge_neck(replace(found, stated=stated), Job.of("joint", stated))


@pytest.fixture(scope="module", params=["parts", "bound"])
def joint(request, tmp_path_factory):
    """A neck recognised for a joint with plate and pickups, and the check of that joint."""
    from freecad_neckfit.run.neck_judged import recognise_for

    part = read(RECORDS[request.param]["files"][0], tmp_path_factory.mktemp("neck")).part
    stated = HARDWARE | pocket_for(recognise_for(part, HARDWARE).found)
    found = recognise_for(part, stated)
    return found, judged(found, found.stated)


@pytest.mark.parametrize(("key", "at"), [("pocket.depth", DEPTHS), ("pocket.angle", ANGLES)])
def test_a_series_says_what_single_checks_say(joint, key, at):
    from freecad_neckfit.run.finding import State
    from freecad_neckfit.run.neck_series import series

    found, first = joint
    told = series(first, found.stated, key=key, at=at)
    assert all(name.startswith("clash.") for name in told.left_out)
    for i, here in enumerate(at):
        single = judged(found, dict(found.stated) | {key: here})
        for finding in single.findings:
            if finding.id in told.left_out:
                continue
            value, where = told.values[finding.id][i], (finding.id, here)
            if finding.state is State.ABSENT:
                assert math.isnan(value), where
                assert not told.unknown[finding.id][i], where
                continue
            assert finding.state is not State.UNKNOWN, where
            assert value == pytest.approx(finding.value, abs=0.005), where
            if finding.margin is not None:
                assert told.margins[finding.id][i] == pytest.approx(finding.margin, abs=0.005)
        unmet = any(f.met is False for f in single.findings if f.id not in told.left_out)
        assert told.fits[i] == (not unmet)


def test_the_necks_own_solid_is_what_counts(joint):
    """A neck whose underside lies lower than stated: the series tells it as the solids do."""
    from freecad_neckfit.run.neck_series import series

    found, first = joint
    lower = dict(found.stated) | {"neck.underside": found.stated["neck.underside"] + 0.3}
    wrong = judged(found, lower)
    told = series(wrong, lower, key="pocket.depth", at=DEPTHS)
    right = series(first, found.stated, key="pocket.depth", at=DEPTHS)
    assert told.values["overhang.gap"] == pytest.approx(right.values["overhang.gap"], abs=0.005)


def test_what_a_check_could_not_tell_a_series_does_not_tell(joint):
    from freecad_neckfit.run.neck_series import series

    found, _ = joint
    wider = dict(found.stated) | {"neck.heel_width_end": found.stated["neck.heel_width_end"] + 0.2}
    told = series(judged(found, wider), wider, key="pocket.depth", at=DEPTHS)
    assert told.unknown["side.treble"].all()
    assert np.isnan(told.values["side.treble"]).all()
    assert not told.fits.any()


def test_rooms_between_those_asked_for_are_right_at_kinks_and_jumps_too():
    from freecad_neckfit.run.neck_series import between

    place = np.random.default_rng(3).permutation(np.linspace(-2.0, 3.0, 200))

    def room(x):
        kinked = min(0.35 * x, 0.2 - 0.3 * x + 0.02 * x * x)
        appears = kinked if x < 1.234 else kinked - 0.7
        lacks = np.nan if x > 2.2 else 0.1 * x
        return np.array([kinked, appears, lacks, np.inf if x > 2.61 else 1.0])

    asked = []

    def at(i):
        asked.append(i)
        return room(place[i])

    found = between(at, place)
    wanted = np.array([room(x) for x in place])
    assert np.allclose(found, wanted, rtol=0, atol=0.002, equal_nan=True)
    assert len(asked) == len(set(asked)) < 120
    assert between(lambda _: room(0.4), np.array([0.4])) == pytest.approx(room(0.4)[None])


def test_a_series_runs_along_depth_or_angle_only(joint):
    from freecad_neckfit.job.errors import BadInput
    from freecad_neckfit.run.neck_series import series

    found, first = joint
    with pytest.raises(BadInput, match=r"pocket\.depth or pocket\.angle"):
        series(first, found.stated, key="neck.height", at=[24.0])


def test_a_neck_carried_over_parts_that_were_not_looked_at_is_unknown(joint):
    from freecad_neckfit.solids.measure import Context
    from freecad_neckfit.solids.measure.carried import CARRIED, Carrier

    _, first = joint
    carrier = Carrier(Context(first.assembly.parts, first.values))
    motion = np.eye(4)
    motion[0, 3] = 2.0
    told = carrier.at(motion)
    assert set(told) == set(CARRIED)
    assert not any(measured.known for measured in told.values())

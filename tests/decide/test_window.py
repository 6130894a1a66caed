"""Windows of real joints against the full check, by closed forms and on solids."""

from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.decide.demands import DEMANDS, margins
from freecad_neckfit.decide.window import find_window
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import ALL
from freecad_neckfit.fit.seasons import equilibrium_moisture
from freecad_neckfit.fit.verdict import judge_many, margin
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.possible import refuse_impossible
from freecad_neckfit.job.read import read_job
from freecad_neckfit.job.resolve import complete
from tests import random_jobs

SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"
POINTS = 1000


@pytest.fixture(scope="module")
def sample():
    return read_job(SAMPLE)


def named(job, name):
    return next(joint for joint in job.options if joint.name == name).stated


def full_check(stated, field, x, y):
    """The verdict of every closed form, without the window's own margins."""
    moved = field.x.state(x) | field.y.state(y)
    return judge_many(Case({**stated, **moved}), checks=ALL, count=len(x))


def agree_at_random_points(stated, **options):
    window = find_window(stated, **options)
    rng = np.random.default_rng(17)
    # Half the points lie near the window, so that its inside and its borders are met often.
    x, y = (rng.uniform(axis.low, axis.high, POINTS) for axis in (window.x, window.y))
    if not window.empty:
        near = np.concatenate([edge.points for edge in window.edges])
        (left, low), (right, high) = near.min(axis=0), near.max(axis=0)
        grow = 0.1 * (right - left), 0.1 * (high - low)
        x[::2] = rng.uniform(left - grow[0], right + grow[0], len(x[::2]))
        y[::2] = rng.uniform(low - grow[1], high + grow[1], len(y[::2]))
        x = np.clip(x, window.x.low, window.x.high)
        y = np.clip(y, window.y.low, window.y.high)
    truth = full_check(stated, window.field, x, y).fits
    answer = window.holds(x, y)
    assert np.array_equal(answer, truth), np.flatnonzero(answer != truth)
    return truth


@pytest.mark.parametrize("second", ["angle", "shim", "plate"])
def test_the_sample_window_equals_the_full_check(sample, second):
    truth = agree_at_random_points(sample.base.stated, second=second)
    assert 50 < truth.sum() < POINTS - 50


def test_every_option_window_equals_the_full_check(sample):
    found = [agree_at_random_points(joint.stated).any() for joint in sample.options]
    assert any(found)
    assert not all(found)


SORTS = (
    {"body.top": "domed", "body.dome_radius": 5000.0},
    {"body.top": "carved", "body.carve_slope": 0.5},
    {"shim.make": "wedge", "shim.wall": 0.4, "shim.mouth": 0.1},
    {"shim.make": "strip", "shim.strip": 0.3},
    {"pocket.wall": "floor", "neck.binding_width": 1.5, "neck.binding": 0.2},
    {"pocket.end_shape": "round", "neck.heel_end": "round", "pocket.end_radius": 60.0,
     "neck.heel_radius": 60.0},
    {"body.contour_depth": 6.0, "neck_plate.make": "ferrules"},
    {"bridge.make": "floating", "bridge.low": 4.0, "bridge.high": 10.0},
)  # fmt: skip
WIDE = {"limits.gap_max": 1.6, "limits.side_max": 0.5, "limits.end_visible_max": 1.5}


@pytest.mark.parametrize("second", ["angle", "shim", "plate"])
def test_windows_of_many_sorts_of_joint_equal_the_full_check(sample, second):
    rng = np.random.default_rng(8)
    with_window = 0
    for sort in SORTS:
        drawn = {"body.thickness": rng.uniform(42, 47), "neck.height": rng.uniform(24.6, 25.4),
                 "finish.top": rng.uniform(0.1, 0.4), "plate.thickness": rng.uniform(1.5, 2.6),
                 "strings.left_handed": bool(rng.integers(2))}  # fmt: skip
        stated = sample.base.stated | WIDE | drawn | sort
        with_window += bool(agree_at_random_points(stated, second=second).any())
    assert with_window >= 4


def test_the_margins_decide_as_the_full_check_does():
    for seed in range(40):
        stated, _ = random_jobs.draw(seed)
        found = margins(stated, count=1)[:, 0]
        verdict = judge_many(Case(stated), checks=ALL, count=1)
        assert (found.min() >= -1e-9) == verdict.fits[0]
        if not verdict.unknown[0]:
            assert max(found.min(), -1e6) == pytest.approx(max(verdict.worst[0], -1e6), abs=0.011)


def test_borders_carry_the_demand_that_binds_there(sample):
    window = find_window(sample.base.stated)
    for edge in window.edges:
        values = window.field.at(*edge.points.T)
        row = DEMANDS.index(edge.demand)
        assert values[row] == pytest.approx(0.0, abs=2e-8)
        assert values.min() > -1e-4
    assert {e.demand.key for e in window.edges} == {
        "seasons.gap:low", "seasons.gap:high", "saddle.low:low", "saddle.high:low",
    }  # fmt: skip


def test_a_gap_that_must_be_exact_to_a_ten_thousandth_still_has_a_window(sample):
    damp = {"climate.humidity_dry": 40.0, "climate.humidity_damp": 40.0, "wood.moisture_cut": 7.72}
    tight = {"limits.gap_min": 0.3, "limits.gap_max": 0.30065}
    stated = sample.base.stated | damp | tight
    window = find_window(stated)
    assert not window.empty
    points = np.concatenate([edge.points for edge in window.edges])
    angles = np.linspace(points[:, 1].min() + 0.1, points[:, 1].max() - 0.1, 50)
    # Somewhere between the borders at each angle it fits; a raster of 0.01 mm would miss it.
    low = next(e for e in window.edges if e.demand.key.endswith("gap:low")).points
    high = next(e for e in window.edges if e.demand.key.endswith("gap:high")).points
    middle = (_at(low, angles) + _at(high, angles)) / 2
    assert full_check(stated, window.field, middle, angles).fits.all()
    assert np.abs(_at(low, angles) - _at(high, angles)).max() < 1e-3


def _at(points, angles):
    order = np.argsort(points[:, 1])
    return np.interp(angles, points[order, 1], points[order, 0])


def test_a_bridge_that_hardly_travels_leaves_a_thin_window(sample):
    # The saddles of this neck stand at different heights: with less travel no window is left.
    case = Case(sample.base.stated)
    above = [float(a) for a in case.saddles.above]
    spread = max(above) - min(above)
    stated = sample.base.stated | {"bridge.low": 11.0}
    assert find_window(stated | {"bridge.high": 11.0 + spread - 0.2}).empty
    thin = find_window(stated | {"bridge.high": 11.0 + spread + 0.002})
    assert {"saddle.low:low", "saddle.high:low"} <= {e.demand.key for e in thin.edges}
    points = np.concatenate([edge.points for edge in thin.edges])
    x, y = points.mean(axis=0)
    assert full_check(thin.field.stated, thin.field, np.array([x]), np.array([y])).fits.all()


def test_a_narrow_range_or_a_wrong_axis_is_refused_in_one_sentence(sample):
    with pytest.raises(BadInput, match="empty"):
        find_window(sample.base.stated, x_range=(17.0, 16.0))
    with pytest.raises(BadInput, match="no cover plate"):
        find_window(named(sample, "usual depth, no plate"), second="plate")
    with pytest.raises(BadInput, match="no axis"):
        find_window(sample.base.stated, second="width")


def test_the_joint_itself_is_marked_and_judged(sample):
    window = find_window(sample.base.stated)
    assert window.chosen == (15.5, 0.0)
    assert window.fits
    assert not find_window(named(sample, "deeper pocket with plate")).fits
    least = next(iter(window.chosen_margins))
    # A heel edge that is not chamfered touches no fillet: nothing to spare, and met.
    assert window.chosen_margins[least] == 0.0
    assert min(m for m in window.chosen_margins.values() if m > 0) == pytest.approx(0.05, abs=1e-3)


@pytest.mark.parametrize(("depth", "angle"), [(15.5, 0.0), (16.3, -0.3)])
def test_what_is_to_spare_is_what_the_check_tells(sample, depth, angle):
    window = find_window(sample.base.stated)
    case = Case(window.field.stated | {"pocket.depth": depth, "pocket.angle": angle})
    least = {}
    for demand, room in window.margins_at(depth, angle).items():
        least.setdefault(demand.check, room * demand.check.span)
    assert {"corner.entry", "end.clearance"} <= {check.id for check in least}
    for check, room in least.items():
        said = margin(check, case, value=check.read(case).value)
        assert room == pytest.approx(float(said), abs=1e-9), check.id


def test_a_shim_of_nothing_is_taken_over_as_no_shim(sample):
    window = find_window(sample.base.stated, second="shim")
    assert window.y.taken(0.0) == {"shim.make": "none"}
    assert window.y.taken(0.3) == {"shim.make": "wedge", "shim.wall": 0.3, "shim.mouth": 0.3}
    refuse_impossible(complete(sample.base.stated | window.y.taken(0.0)), "joint")


def test_all_that_is_permitted_may_be_looked_at_and_holds_nothing_impossible(sample):
    for name, second in (("21 frets, usual depth", "angle"), ("usual depth with plate", "plate")):
        stated = named(sample, name)
        window = find_window(stated, second=second, x_range=(0.0, 1000.0))
        assert (window.x.low, window.x.high) == (3.0, 60.0)
        assert agree_at_random_points(stated, second=second, x_range=(0.0, 1000.0)).any()
        x, y = np.concatenate([edge.points for edge in window.edges]).T
        inside = np.linspace(x.min(), x.max(), 40), np.linspace(y.min(), y.max(), 40)
        x, y = (a.ravel() for a in np.meshgrid(*inside))
        held = window.holds(x, y)
        assert held.any()
        for point in zip(x[held][::7], y[held][::7], strict=True):
            moved = window.x.taken(float(point[0])) | window.y.taken(float(point[1]))
            refuse_impossible(complete(stated | moved), "joint")


@pytest.mark.parametrize(
    ("second", "slope"), [("shim", 1.0), ("plate", -1.0)], ids=["shim", "plate"]
)
def test_a_thin_window_over_shim_or_plate_is_found_whole(sample, second, slope):
    # Level and without seasons the gap is 18.6 - depth + shim - plate - 0.25.
    damp = float(equilibrium_moisture(temperature=20.0, humidity=41.6))
    still = {"climate.humidity_dry": 41.6, "climate.humidity_damp": 41.6,
             "wood.moisture_cut": damp}  # fmt: skip
    tight = {"limits.gap_min": 0.4, "limits.gap_max": 0.4004}
    stated = sample.base.stated | still | tight
    window = find_window(stated, second=second)
    low = next(e for e in window.edges if e.demand and e.demand.key.endswith("gap:low")).points
    high = next(e for e in window.edges if e.demand and e.demand.key.endswith("gap:high")).points
    own = window.chosen[1]
    deepest = 18.6 - 0.25 - 2.286 - 0.4
    for points, depth in ((low, deepest), (high, deepest - 4e-4)):
        expected = depth + slope * (points[:, 1] - own)
        assert points[:, 0] == pytest.approx(expected, abs=1e-5)
    others = own + np.array([0.05, 0.1, 0.2, 0.35])
    middle = deepest - 2e-4 + slope * (others - own)
    assert full_check(stated, window.field, middle, others).fits.all()
    assert window.holds(middle, others).all()
    for beside in (middle - 4e-4, middle + 4e-4):
        assert not window.holds(beside, others).any()


@pytest.mark.freecad
@pytest.mark.parametrize("second", ["angle", "shim", "plate"])
def test_solids_agree_at_forty_points_of_the_borders(sample, second):
    from freecad_neckfit.solids.build import build
    from freecad_neckfit.solids.measure import measure_all

    still = {"climate.humidity_dry": 41.6, "climate.humidity_damp": 41.6,
             "wood.moisture_cut": 7.9729}  # fmt: skip
    jobs = [
        sample.base.stated,
        named(sample, "deeper pocket, plate cut away"),
        named(sample, "high bridge, usual depth at an angle"),
        # Without seasons the overhang itself binds.
        sample.base.stated | still,
    ]
    if second != "plate":
        jobs.append(named(sample, "21 frets, usual depth"))
    seen, bound = 0, set()
    for stated in jobs:
        window = find_window(stated, second=second)
        for point, demand in border_points(window, 16):
            check = demand.check
            values = stated | window.x.taken(float(point[0])) | window.y.taken(float(point[1]))
            case = Case(values)
            solid = measure_all(build(case.values), case.values, keys=[check.measure])
            limit = float(check.limit(case, demand.side))
            assert solid[check.measure].known, solid[check.measure].because
            assert solid[check.measure].value == pytest.approx(limit, abs=0.005), demand.key
            seen += 1
            bound.add(check.id)
    assert seen >= 40
    assert len(bound) >= 3


def border_points(window, most):
    """Points of those borders that solids can measure exactly, in turn, and what binds there."""
    edges = [e for e in window.edges if e.demand and e.demand.check.measure]
    edges = [e for e in edges if e.demand.check.exact]
    for n in range(most if edges else 0):
        edge = edges[n % len(edges)]
        yield edge.points[(5 * n + 2) % len(edge.points)], edge.demand

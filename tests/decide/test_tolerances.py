"""Tolerances against published figures, exact convolutions and independent sensitivities."""

import math
from pathlib import Path

import numpy as np
import pytest
from numpy.testing import assert_allclose

from freecad_neckfit.decide.demands import DEMANDS
from freecad_neckfit.decide.tolerances.dimension import Dimension, dimensions
from freecad_neckfit.decide.tolerances.joint import COSTLY, joint_margins
from freecad_neckfit.decide.tolerances.linear import linearise
from freecad_neckfit.decide.tolerances.shapes import Shape
from freecad_neckfit.decide.tolerances.simulate import draw, simulate, values_of, wilson
from freecad_neckfit.decide.tolerances.study import study
from freecad_neckfit.decide.tolerances.tighten import alone, narrowed, together
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import strings_fretted
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.joint import Job
from freecad_neckfit.job.read import read_job

SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"


@pytest.fixture(scope="module")
def base():
    return read_job(SAMPLE).base


def dim(half, nominal=0.0, shape=Shape.UNIFORM, key="pocket.depth"):
    return Dimension(key, nominal, -half, half, shape)


def planes(*rows):
    """Margins that are sums: each row is (constant, one factor for each dimension)."""

    def of(values, which):
        chosen = rows if which is None else [rows[n] for n in which]
        return np.array([c + np.array(k) @ values for c, *k in chosen])

    return of


def sampled(dims, margins, draws=1_000_000, seed=5):
    rng = np.random.default_rng(seed)
    return margins(values_of(dims, draw(dims, draws, rng)), None)[0]


def sum_of_uniforms_above(level, count):
    """P(sum of ``count`` uniforms on -1 … 1 > level), Irwin and Hall's sum, exact."""
    x = (level + count) / 2
    below = sum(
        (-1) ** k * math.comb(count, k) * (x - k) ** count for k in range(math.floor(x) + 1)
    )
    return 1 - below / math.factorial(count)


# --- worked chain: 40 ± 0.10 - 25 ± 0.05 - 2 ± 0.03 - 10 ± 0.05 = 3.00 ---------------------------

CHAIN = (dim(0.10, 40.0), dim(0.05, 25.0), dim(0.03, 2.0), dim(0.05, 10.0))


def test_the_worked_chain_in_worst_case_and_root_sum_square():
    found = linearise(CHAIN, planes((0.0, 1, -1, -1, -1)))
    assert found.middle == pytest.approx([3.0])
    assert found.middle - found.worst == pytest.approx([0.23])
    assert found.worst_linear == pytest.approx(found.worst)
    # sqrt(.10² + .05² + .03² + .05²) = .12610
    assert found.root_sum_square == pytest.approx([0.1261], abs=5e-5)
    assert found.shares[0] == pytest.approx(np.array([100, 25, 9, 25]) / 159)


def test_limits_to_one_side_move_the_middle():
    lopsided = (Dimension("pocket.depth", 10.0, 0.0, 0.2), dim(0.05, 4.0))
    found = linearise(lopsided, planes((0.0, 1, -1)))
    assert found.middle == pytest.approx([6.1])
    assert found.worst == pytest.approx([5.95])


# --- JCGM 101:2008, 9.2: additive model of four inputs -------------------------------------------


def coverage(values):
    """Half width of the shortest symmetric interval that holds 95 %."""
    return float(np.quantile(np.abs(values - values.mean()), 0.95))


def test_four_rectangular_inputs_of_jcgm_101_section_9_2_3():
    # Exact: 2·sqrt(3)·(2 - (3/5)^(1/4)) = 3.88, where a normal spread would say 3.92.
    four = tuple(dim(math.sqrt(3.0)) for _ in range(4))
    exact = 2 * math.sqrt(3) * (2 - 0.6**0.25)
    assert exact == pytest.approx(3.88, abs=0.005)
    values = sampled(four, planes((0.0, 1, 1, 1, 1)))
    assert coverage(values) == pytest.approx(exact, abs=0.01)
    assert values.std() == pytest.approx(2.0, abs=0.005)


def test_one_rectangular_input_ten_times_as_wide_of_jcgm_101_section_9_2_4():
    wide = (*(dim(math.sqrt(3.0)) for _ in range(3)), dim(10 * math.sqrt(3.0)))
    values = sampled(wide, planes((0.0, 1, 1, 1, 1)))
    assert values.std() == pytest.approx(math.sqrt(103), abs=0.02)
    # Monte Carlo ± 17.0; a normal spread would say ± 19.9.
    assert coverage(values) == pytest.approx(17.0, abs=0.05)


def test_four_normal_inputs_of_jcgm_101_section_9_2_2():
    normal = tuple(dim(3.0, shape=Shape.NORMAL) for _ in range(4))
    values = sampled(normal, planes((0.0, 1, 1, 1, 1)))
    assert coverage(values) == pytest.approx(3.92, abs=0.01)


# --- failure shares against exact convolutions ---------------------------------------------------


@pytest.mark.parametrize("count", [1, 2, 3, 4])
@pytest.mark.parametrize("level", [0.3, 0.8])
def test_failures_of_a_sum_of_rectangular_inputs_are_exact(count, level):
    level = level * count
    dims = tuple(dim(1.0) for _ in range(count))
    found = simulate(dims, planes((level, *[-1.0] * count)), draws=400_000)
    exact = sum_of_uniforms_above(level, count)
    low, high = found.interval()
    assert low - 1e-4 <= exact <= high + 1e-4


def test_failures_of_triangular_inputs_are_those_of_twice_as_many_rectangular_ones():
    dims = tuple(dim(1.0, shape=Shape.TRIANGULAR) for _ in range(2))
    found = simulate(dims, planes((0.9, -1.0, -1.0)), draws=400_000)
    # A triangle on -1 … 1 is the sum of two rectangles on -½ … ½.
    assert found.share == pytest.approx(sum_of_uniforms_above(1.8, 4), abs=0.002)


def test_failures_of_normal_inputs_follow_the_error_function():
    dims = (dim(3.0, shape=Shape.NORMAL), dim(4.0, shape=Shape.NORMAL))
    found = simulate(dims, planes((2.0, -1.0, -1.0)), draws=400_000)
    exact = 0.5 * math.erfc(2.0 / math.hypot(1.0, 4.0 / 3) / math.sqrt(2))
    assert found.share == pytest.approx(exact, abs=0.002)


@pytest.mark.parametrize("shape", list(Shape))
def test_a_shape_draws_what_it_says(shape):
    draws = shape.draw(np.random.default_rng(2), 200_000)
    assert draws.std() == pytest.approx(shape.deviation, rel=0.01)
    for t in (-0.7, 0.0, 0.4):
        assert np.mean(draws < t) == pytest.approx(float(shape.below(np.array([t]))[0]), abs=0.005)


# --- correlation: one draw of a dimension holds in every demand ----------------------------------


def test_demands_that_share_a_dimension_fail_together_or_never_together():
    dims = (dim(1.0), dim(1.0))
    same = simulate(dims, planes((0.5, 1, 0), (0.5, 1, 0)), draws=100_000)
    assert same.failed_joint == same.failed[0] == same.failed[1]
    # One fails at the lower end, the other at the upper: never both.
    ends = simulate(dims, planes((0.5, 1, 0), (0.5, -1, 0)), draws=100_000)
    assert ends.failed_joint == ends.failed.sum()
    apart = simulate(dims, planes((0.5, 1, 0), (0.5, 0, 1)), draws=400_000)
    p = 0.25
    assert apart.share == pytest.approx(1 - (1 - p) ** 2, abs=0.003)


def test_both_sides_of_the_heel_share_their_widths(base):
    dims = dimensions(base)
    found = simulate(dims, joint_margins(base.stated, dims), draws=50_000, costly=COSTLY)
    treble, bass = (
        next(n for n, d in enumerate(DEMANDS) if d.key == f"side.{side}:low")
        for side in ("treble", "bass")
    )
    assert found.failed[treble] == found.failed[bass] > 0
    # Taken as independent they would fail far more often together.
    assert found.share < found.failed[treble] / found.draws * 1.5


# --- sensitivities -------------------------------------------------------------------------------


def test_sensitivities_of_the_gap_agree_with_the_uncertainties_package(base):
    uncertainties = pytest.importorskip("uncertainties")
    umath = pytest.importorskip("uncertainties.umath")
    keys = ("pocket.depth", "pocket.angle", "neck.underside", "seat.end_gap")
    other = {"pocket.angle": 0.4, "plate.cover": "none"}
    tipped = Job.of("tipped", base.stated | other, tolerances=base.tolerances)
    dims = tuple(d for d in dimensions(tipped) if d.key in keys)
    found = linearise(dims, joint_margins(tipped.stated, dims))
    row = next(n for n, d in enumerate(DEMANDS) if d.key == "overhang.gap:low")
    u = {d.key: uncertainties.ufloat(d.middle, d.deviation, d.key) for d in dims}
    tilt = umath.radians(u["pocket.angle"])
    # Over the end wall, X = 0: an overhang that climbs is lowest where it begins.
    end = u["seat.end_gap"]
    x = (end + u["neck.underside"] * umath.sin(tilt)) / umath.cos(tilt)
    z = (
        -u["pocket.depth"] - end * umath.tan(tilt) + x * umath.sin(tilt)
        + u["neck.underside"] * umath.cos(tilt)
    )  # fmt: skip
    gap = z - 0.25 - 0.15
    assert found.middle[row] == pytest.approx(gap.nominal_value, abs=1e-9)
    for n, d in enumerate(dims):
        assert found.slopes[row, n] == pytest.approx(gap.derivatives[u[d.key]], rel=1e-5, abs=1e-7)
    assert found.deviation[row] == pytest.approx(gap.std_dev, rel=1e-5)


def test_sensitivities_agree_with_finer_differences(base):
    dims = dimensions(base)
    margins = joint_margins(base.stated, dims)
    found = linearise(dims, margins)
    middle = np.array([d.middle for d in dims])
    ids = ("overhang.gap", "saddle.high", "wood.floor", "screws.tip")
    smooth = [n for n, d in enumerate(DEMANDS) if d.check.id in ids]
    for n, d in enumerate(dims):
        step = np.zeros(len(dims))
        step[n] = d.half * 1e-4
        up, down = margins(np.stack([middle + step, middle - step], axis=1), None).T
        for row in smooth:
            if np.isfinite(up[row]):
                slope = (up[row] - down[row]) / (2 * step[n])
                assert found.slopes[row, n] == pytest.approx(slope, abs=2e-4)


# --- what is left out of a million draws changes nothing -----------------------------------------


def test_settled_and_costly_demands_give_the_same_failures_as_working_out_all(base):
    dims = dimensions(base)
    lowest = float(strings_fretted.CHECK.read(Case(base.stated)).value)
    tight = base.stated | {"limits.fretted_buzz_min": lowest - 0.005, "limits.tip_min": 4.2}
    margins = joint_margins(tight, dims)
    found = simulate(dims, margins, draws=60_000, seed=3, costly=COSTLY)
    rng = np.random.default_rng(3)
    failed = np.zeros(len(DEMANDS), dtype=int)
    joint = 0
    for size in (16_384, 16_384, 16_384, 60_000 - 3 * 16_384):
        bad = margins(values_of(dims, draw(dims, size, rng)), None) < -1e-9
        failed += bad.sum(axis=1)
        joint += int(bad.any(axis=0).sum())
    assert np.array_equal(found.failed, failed)
    assert found.failed_joint == joint
    assert found.settled.any()
    assert failed[list(COSTLY)].any()
    assert not failed[found.settled].any()


def test_the_same_seed_gives_the_same_failures_and_another_seed_others(base):
    dims = dimensions(base)
    margins = joint_margins(base.stated, dims)
    one, two, other = (simulate(dims, margins, draws=20_000, seed=s) for s in (7, 7, 8))
    assert np.array_equal(one.failed, two.failed)
    assert one.failed_joint != other.failed_joint


def test_wilson_interval_by_hand():
    # p = 0.1, n = 100: (0.1 + 3.8415/200 ± 1.96·sqrt(0.0009 + 3.8415/40000))/(1 + 0.038415)
    assert wilson(10, 100) == pytest.approx((0.0552, 0.1744), abs=1e-4)
    assert wilson(0, 1000)[0] == pytest.approx(0.0, abs=1e-12)
    assert wilson(0, 1000)[1] == pytest.approx(0.00383, abs=1e-5)


# --- drawing limits in ---------------------------------------------------------------------------


@pytest.mark.parametrize("shape", list(Shape))
@pytest.mark.parametrize("factor", [0.8, 0.5, 0.2])
def test_narrower_limits_read_off_the_draws_are_those_of_a_new_simulation(shape, factor):
    dims = (dim(1.0, shape=shape), dim(0.6, shape=shape))
    margins = planes((0.5, -1.0, -1.0), (0.7, 1.0, -0.4))
    found = simulate(dims, margins, draws=1_000_000)
    again = simulate((narrowed(dims[0], factor), dims[1]), margins, draws=1_000_000, seed=2)
    assert found.share_if(0, factor) == pytest.approx(again.share, abs=0.004)


def test_the_limits_that_alone_reach_a_wish_do_reach_it():
    dims = (dim(1.0), dim(0.3))
    margins = planes((0.7, -1.0, -1.0))
    found = simulate(dims, margins, draws=400_000)
    first, *_ = alone(found, wish=0.05)
    assert first.dimension is dims[0]
    again = simulate((narrowed(dims[0], first.factor), dims[1]), margins, draws=400_000, seed=9)
    assert again.share == pytest.approx(0.05, abs=0.004)
    assert alone(found, wish=found.share) == ()


def test_several_limits_are_drawn_in_where_none_alone_is_enough():
    dims = (dim(1.0), dim(1.0))
    margins = planes((0.6, -1.0, 0.0), (0.6, 0.0, -1.0))
    found = simulate(dims, margins, draws=200_000)
    assert all(step.share > 0.01 for step in alone(found, wish=0.01))
    steps = together(found, lambda narrower: simulate(narrower, margins, draws=200_000), wish=0.01)
    assert steps[-1].share <= 0.01
    assert {id(step.dimension) for step in steps[:2]} <= {id(d) for d in dims}


def test_influence_ranks_what_causes_the_failures():
    dims = (dim(1.0), dim(0.2), dim(1.0))
    found = simulate(dims, planes((0.6, -1.0, -1.0, 0.0)), draws=200_000)
    assert np.argmax(found.influence) == 0
    assert found.influence[1] > found.influence[2]
    assert found.influence[2] == pytest.approx(0.0, abs=2e-3)


# --- where limits come from ----------------------------------------------------------------------


def test_limits_are_stated_declared_or_general_in_this_order(base):
    found = {d.key: d for d in dimensions(base, general="m")}
    assert found["plate.thickness"].upper == pytest.approx(0.1016)
    assert found["pocket.width_end"].upper == pytest.approx(0.1)
    # 78 mm of flat heel, class m: ± 0.3; half a millimetre of cut-out: declared ± 0.2.
    assert found["neck.heel_length"].upper == pytest.approx(0.3)
    assert found["plate.clearance"].upper == pytest.approx(0.2)
    assert "neck.heel_length" not in {d.key for d in dimensions(base)}
    instead = dimensions(base, instead={"pocket.depth": (-0.02, 0.05)})
    depth = next(d for d in instead if d.key == "pocket.depth")
    assert (depth.middle, depth.half) == pytest.approx((15.515, 0.035))
    with pytest.raises(BadInput, match="no dimension"):
        dimensions(base, instead={"pocket.wide": (-1, 1)})
    with pytest.raises(BadInput, match="class"):
        dimensions(base, general="x")


def test_spreads_and_the_general_class_come_from_the_job(base):
    stated = base.stated | {"shop.general": "m", "shop.spread": "triangular"}
    limits = {**base.tolerances, "pocket.depth": (-0.05, 0.2)}
    own = Job.of("own", stated, tolerances=limits, spreads={"pocket.depth": "normal"})
    found = {d.key: d for d in dimensions(own)}
    assert found["pocket.depth"].shape is Shape.NORMAL
    assert (found["pocket.depth"].middle, found["pocket.depth"].half) == pytest.approx(
        (15.575, 0.125)
    )
    # Limits at three standard deviations.
    assert found["pocket.depth"].deviation == pytest.approx(0.125 / 3)
    assert found["plate.thickness"].shape is Shape.TRIANGULAR
    assert found["plate.thickness"].deviation == pytest.approx(0.1016 / math.sqrt(6))
    assert found["neck.heel_length"].upper == pytest.approx(0.3)
    # What is asked for in a command or window goes before what the job says.
    bare = {d.key: d for d in dimensions(own, general="none", shape=Shape.UNIFORM)}
    assert "neck.heel_length" not in bare
    assert bare["plate.thickness"].shape is Shape.UNIFORM
    assert bare["pocket.depth"].shape is Shape.NORMAL
    asked = dimensions(own, shapes={"pocket.depth": Shape.UNIFORM})
    assert next(d for d in asked if d.key == "pocket.depth").shape is Shape.UNIFORM


def test_lopsided_limits_of_each_shape_fail_as_often_as_calculated():
    # 10 +0.3/-0.1 may be at most 10.2: half a width above the middle 10.1.
    exact = {
        Shape.UNIFORM: 0.25,
        Shape.TRIANGULAR: 0.5**2 / 2,
        Shape.NORMAL: 0.5 * math.erfc(1.5 / math.sqrt(2)),
    }
    for shape, share in exact.items():
        lopsided = (Dimension("pocket.depth", 10.0, -0.1, 0.3, shape),)
        found = simulate(lopsided, planes((10.2, -1.0)), draws=1_000_000)
        # Four standard deviations of a share counted in a million draws.
        off = 4 * math.sqrt(share * (1 - share) / found.draws)
        assert found.share == pytest.approx(share, abs=off), shape


def test_class_m_on_the_widths_fails_the_side_window_in_nearly_half_the_joints(base):
    # Centred: 0.15 mm a side where 0.05 to 0.25 are asked, each width ± 0.3 (ISO 2768-1 m).
    stated = base.stated | {"pocket.width_end": 56.3, "pocket.width_mouth": 55.8}
    ends = (dim(0.3, 56.3, key="pocket.width_end"), dim(0.3, 56.0, key="neck.heel_width_end"))
    too_little = next(n for n, d in enumerate(DEMANDS) if d.key == "side.treble:low")
    found = simulate(ends, joint_margins(stated, ends), draws=100_000)
    # By hand: b - a > 0.2 of two rectangles ± 0.3: (1 - 0.2/0.6)² / 2 = 2/9; a little less, for
    # the sides end where the corners begin.
    assert found.failed[too_little] / found.draws == pytest.approx(2 / 9, abs=0.012)
    mouths = (dim(0.3, 55.8, key="pocket.width_mouth"), dim(0.3, 55.5, key="neck.heel_width_mouth"))
    four = (*ends, *mouths)
    found = simulate(four, joint_margins(stated, four), draws=100_000)
    too_much = next(n for n, d in enumerate(DEMANDS) if d.key == "side.treble:high")
    assert 0.40 < (found.failed[too_little] + found.failed[too_much]) / found.draws < 0.55


def test_screws_vary_each_by_itself(base):
    dims = dimensions(base, instead={"screw.x": (-0.5, 0.5)})
    screws = [d for d in dims if d.key == "screw.x"]
    assert [d.name for d in screws] == [f"screw x {n}" for n in (1, 2, 3, 4)]
    margins = joint_margins(base.stated, screws)
    moved = margins(np.array([[d.nominal + 0.4 * (n == 1)] for n, d in enumerate(screws)]), None)
    stated = base.stated | {"screw.x": base.values["screw.x"] + [0, 0.4, 0, 0]}
    assert_allclose(moved, joint_margins(stated, ())(np.zeros((0, 1)), None))


def test_a_study_of_the_sample_says_what_to_draw_in(base):
    found = study(base.stated, dimensions(base), wish=0.05, draws=50_000)
    assert 0.2 < found.simulation.share < 0.4
    assert found.steps
    assert found.steps[-1].share < found.simulation.share
    assert found.alone

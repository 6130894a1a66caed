"""Conflicts with known answers, and every conflict found against a dense raster."""

from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.decide.conflicts import find_conflicts
from freecad_neckfit.decide.demands import DEMANDS
from freecad_neckfit.decide.mending_text import conflict_lines
from freecad_neckfit.decide.window import find_window
from freecad_neckfit.fit import checks
from freecad_neckfit.fit.case import Case
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job

SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"
STILL = {"climate.humidity_dry": 41.6, "climate.humidity_damp": 41.6, "wood.moisture_cut": 7.9729}
"""A room in which wood keeps the size at which it was cut."""
LEVEL = {"y_range": (-1e-6, 1e-6)}


@pytest.fixture(scope="module")
def base():
    return read_job(SAMPLE).base.stated


def option(name):
    return next(o for o in read_job(SAMPLE).options if o.name == name).stated


def base_limit(stated):
    return float(checks.screws_hole.CHECK.limit(Case(stated), "low"))


def sets_of(conflicts):
    return {frozenset(d.key for d in c.demands) for c in conflicts}


def test_where_there_is_a_window_nothing_excludes_anything(base):
    assert find_conflicts(find_window(base)) == ()


def test_one_demand_that_no_depth_meets_stands_alone(base):
    # Holes of 4.5 mm are just wide enough, so those of 4.3 mm are 0.2 mm short.
    before = checks.screws_hole.CHECK.read(Case(base))
    assert float(before.value) == pytest.approx(base_limit(base), abs=1e-9)
    found = find_conflicts(find_window(base | {"screws.body_hole": 4.3}))
    assert sets_of(found) == {frozenset({"screws.hole:low"})}
    assert found[0].shortfalls == pytest.approx((0.2,), abs=1e-9)


def test_two_demands_that_exclude_each_other_by_a_known_amount(base):
    # Level, the gap asks for a depth of at most g, the highest saddle for at least s.
    still = base | STILL
    case = Case(still | {"pocket.depth": 15.5, "pocket.angle": 0.0})
    gap = 18.6 - 15.5 - 0.25 - 2.286
    deepest = 15.5 + gap - 0.15
    above = max(float(a) for a in case.saddles.above)
    # This bridge carries the strings 0.3 mm too low for the deepest pocket that leaves the gap.
    tight = still | {"bridge.high": above - (deepest - 15.5) - 0.3}
    found = find_conflicts(find_window(tight, **LEVEL))
    assert {d.key for d in found[0].demands} == {"overhang.gap:low", "saddle.high:low"}
    assert found[0].shortfalls == pytest.approx((0.3, 0.3), abs=2e-5)
    assert found[0].nearest[0] == pytest.approx(deepest + 0.15, abs=1e-3)
    # Whatever else shuts the saddles out at that depth does so with one other demand as well.
    assert all(len(c.demands) == 2 for c in found)
    assert frozenset({"seasons.gap:low", "saddle.high:low"}) in sets_of(found)
    free = tight | {"bridge.high": tight["bridge.high"] + 0.3 + 5e-4}
    assert find_conflicts(find_window(free, **LEVEL)) == ()


def test_three_demands_of_which_any_two_go_together(base):
    # Deep enough for the gap, tipped enough for a high bridge, and wood left at the mouth.
    stated = option("high bridge, usual depth at an angle") | STILL
    stated = stated | {"body.thickness": 29.3, "screws.length": 30.0, "screws.threaded": 25.0}
    found = find_conflicts(find_window(stated))
    wanted = {"overhang.gap:high", "saddle.low:low", "wood.floor:low"}
    assert frozenset(wanted) in sets_of(found)
    assert min(len(c.demands) for c in found) == 3
    # Each comes closest where both others just hold: found by Newton's rule, apart from the search.
    conflict = next(c for c in found if {d.key for d in c.demands} == wanted)
    field = find_window(stated).field
    rows = [DEMANDS.index(d) for d in conflict.demands]
    for row, short, demand in zip(rows, conflict.shortfalls, conflict.demands, strict=True):
        others = [r for r in rows if r != row]
        corner = where_both_are_zero(field, others, conflict.nearest)
        left = float(field.at(*corner[:, None], of=[row])[0, 0]) * demand.check.span
        assert short == pytest.approx(-left, abs=1e-5)


def where_both_are_zero(field, rows, start):
    """The point at which two demands just hold, by Newton's rule."""
    at = np.array(start)
    for _ in range(60):
        steps = at[:, None] + 1e-5 * np.array([[0.0, 1.0, -1.0, 0.0, 0.0], [0, 0, 0, 1, -1]])
        found = field.at(*steps, of=rows)
        slopes = np.stack([found[:, 1] - found[:, 2], found[:, 3] - found[:, 4]], axis=1) / 2e-5
        at = at - np.linalg.solve(slopes, found[:, 0])
        if np.abs(found[:, 0]).max() < 1e-9:
            break
    return at


@pytest.mark.parametrize("name", ["high bridge, deeper pocket", "hanging binding, deeper pocket"])
def test_a_conflict_is_minimal_by_a_dense_raster(name):
    window = find_window(option(name))
    found = find_conflicts(window)
    assert found
    x, y = (
        a.ravel()
        for a in np.meshgrid(
            np.linspace(window.x.low, window.x.high, 241),
            np.linspace(window.y.low, window.y.high, 241),
        )
    )
    values = window.field.at(x, y)
    for conflict in found:
        rows = [DEMANDS.index(d) for d in conflict.demands]
        spans = [d.check.span for d in conflict.demands]
        assert values[rows].min(axis=0).max() < 0
        for k, row in enumerate(rows):
            others = values[[r for r in rows if r != row]].min(axis=0) >= 0
            assert others.any()
            best = -values[row][others].max() * spans[k]
            # The raster misses the best point by a step, and never beats it.
            assert conflict.shortfalls[k] <= best + 1e-6
            assert conflict.shortfalls[k] == pytest.approx(best, abs=0.25)


def test_a_conflict_reads_as_a_sentence(base):
    found = find_conflicts(find_window(base | {"screws.body_hole": 4.3}))
    (line,) = conflict_lines(found, Units.MM)
    assert "body holes over the screws' shanks: too little, 0.20 mm short" in line
    found = find_conflicts(find_window(option("hanging binding, deeper pocket")))
    text = "\n".join(conflict_lines(found, Units.MM))
    assert "exclude one another" in text
    assert "0.02 mm short" in text

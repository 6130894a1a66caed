"""The smallest changes, against answers known by construction and by brute force."""

from itertools import product
from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.decide.mending import find_remedies
from freecad_neckfit.decide.mending_text import cost_line, headline, remedy_lines
from freecad_neckfit.decide.moves import KINDS, Stock, moves
from freecad_neckfit.decide.progress import Stopped
from freecad_neckfit.decide.shop import Steps
from freecad_neckfit.decide.toll import toll
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import ALL, saddle_low
from freecad_neckfit.fit.verdict import judge_many
from freecad_neckfit.job.parts import part_values
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job

SAMPLES = Path(__file__).parents[2] / "samples"
STILL = {"climate.humidity_dry": 41.6, "climate.humidity_damp": 41.6, "wood.moisture_cut": 7.9729}


def believed(_):
    return ""


@pytest.fixture(scope="module")
def job():
    return read_job(SAMPLES / "joint.toml")


def option(job, name):
    return next(o for o in job.options if o.name == name).stated


def fits(stated):
    return bool(judge_many(Case(stated), checks=ALL, count=1).fits[0])


def remedies(stated, *, steps=Steps(), stock=Stock(), prove=believed, **options):  # noqa: B008
    found = moves(stated, steps=steps, stock=stock, **options)
    return find_remedies(stated, found, prove=prove)


def test_a_joint_that_fits_needs_nothing(job):
    assert remedies(job.base.stated) == ()


def test_the_smallest_change_of_one_part_is_known(job):
    # 16.1 mm deep leaves -0.036 mm over the plate; 0.15 mm is asked: 0.186 mm, so two steps.
    stated = job.base.stated | STILL | {"pocket.depth": 16.1}
    found = remedies(stated)
    first = found[0]
    assert first.changes == {"pocket.depth": (16.1, 15.9)}
    assert first.steps == 2
    by_name = {r.moves[0].name: r for r in found}
    assert by_name["flat shim"].stated["shim.wall"] == 0.2
    assert by_name["thinner plate"].changes["plate.thickness"] == pytest.approx((2.286, 2.086))
    assert [r.rank for r in found] == sorted(r.rank for r in found)
    assert all(len(r.moves) == 1 for r in found)


def test_no_plate_is_proposed_that_is_thinner_than_plates_are(job):
    def least(own):
        stated = job.base.stated | {"plate.thickness": own}
        (plate,) = moves(stated, steps=Steps(), stock=Stock(), allowed=("plate thickness",))
        return plate.dials[0].values.min()

    assert 1.5 <= least(2.286) < 1.6
    # One that is thinner already is not asked to be thicker.
    assert least(1.2) == 1.2
    # 1.7 mm too deep would ask for a plate of 0.59 mm.
    stated = job.base.stated | STILL | {"pocket.depth": 17.6}
    assert all("plate.thickness" not in r.changes or r.changes["plate.thickness"][1] >= 1.5
               for r in remedies(stated))  # fmt: skip


def test_smaller_steps_of_the_shop_give_the_smaller_change(job):
    stated = job.base.stated | STILL | {"pocket.depth": 16.1}
    (first, *_) = remedies(stated, steps=Steps(depth=0.01), allowed=("depth",))
    assert first.changes["pocket.depth"][1] == pytest.approx(15.91)
    (stop,) = remedies(stated, steps=Steps(stops=(14.0, 15.6, 16.4)), allowed=("depth",))
    assert stop.changes["pocket.depth"][1] == 15.6


def test_what_must_stay_stays(job):
    stated = job.base.stated | {"pocket.depth": 16.1}
    found = remedies(stated, allowed=("shim",))
    assert found
    assert all(set(r.changes) <= {"shim.make", "shim.wall", "shim.mouth"} for r in found)
    assert remedies(stated, allowed=("screws",)) == ()


def test_two_parts_where_one_is_not_enough_by_brute_force(job):
    stated = option(job, "hanging binding, deeper pocket")
    allowed = ("depth", "binding")
    found = remedies(stated, allowed=allowed)
    depths = np.round(18.288 + np.arange(-60, 61) * 0.1, 9)
    hangs = np.round(0.6 - np.arange(0, 7) * 0.1, 9)
    best = np.inf
    for (n, depth), (m, hang) in product(enumerate(depths, start=-60), enumerate(hangs)):
        if fits(stated | {"pocket.depth": depth, "neck.binding": hang}):
            assert n != 0
            assert m != 0
            best = min(best, abs(n) + m)
    assert found[0].steps == best
    assert {m.part for m in found[0].moves} == {"pocket", "binding"}


def test_screws_that_are_too_long_are_exchanged_for_stocked_ones(job):
    stated = job.base.stated | {"screws.length": 50.0}
    found = remedies(stated, allowed=("screws",))
    assert found[0].changes["screws.length"] == (50.0, 45.0)


def test_another_bridge_from_the_shop_is_found_and_leaves_nothing_of_the_old(job):
    low = dict(part_values(SAMPLES / "parts" / "bridge-low.toml")[1])
    stated = option(job, "high bridge, deeper pocket") | {"pocket.depth": 18.0}
    stated = {k: v for k, v in stated.items() if not k.startswith("limits.")}
    found = remedies(stated, stock=Stock(bridges=(("flat bridge", low),)), allowed=("bridge",))
    assert [r.moves[0].name for r in found] == ["flat bridge"]
    after = {k: v for k, v in found[0].stated.items() if k.startswith("bridge.")}
    assert after == low


def test_a_pickup_too_high_is_exchanged(job):
    name, flat = "flat pickup", {"pickup_bridge.fitted": True, "pickup_bridge.x": 148.0,
                                 "pickup_bridge.mount": "cavity", "pickup_bridge.low": 20.0,
                                 "pickup_bridge.high": 37.0}  # fmt: skip
    stated = job.base.stated | {"pickup_bridge.low": 34.0}
    stock = Stock(pickups=(("bridge", name, flat),))
    assert not fits(stated)
    found = remedies(stated, stock=stock, allowed=("pickup",))
    assert [r.moves[0].name for r in found] == [name]


def test_a_proof_that_fails_is_not_shown(job):
    stated = job.base.stated | {"pocket.depth": 16.1}

    def doubtful(stated):
        return "wood gives way" if stated["pocket.depth"] != 16.1 else ""

    found = remedies(stated, prove=doubtful)
    assert found
    assert all("pocket.depth" not in r.changes for r in found)


def test_a_search_can_be_stopped(job):
    stated = job.base.stated | {"pocket.depth": 16.1}
    told = []

    def stop(share, what):
        told.append((share, what))
        return len(told) < 3

    with pytest.raises(Stopped):
        find_remedies(
            stated, moves(stated, steps=Steps(), stock=Stock()), prove=believed, progress=stop
        )
    assert len(told) == 3
    assert all(0 <= share <= 1 for share, _ in told)


def test_costs_tell_what_gets_worse_before_and_after(job):
    before = job.base.stated | {"pocket.depth": 16.1}
    costs = {c.check.id: c for c in toll(before, before | {"pocket.depth": 15.0})}
    assert costs["screws.grip"].after < costs["screws.grip"].before
    assert "overhang.gap" not in costs or costs["overhang.gap"].loss > 0
    deeper = {c.check.id: c for c in toll(before, before | {"pocket.depth": 16.6})}
    assert deeper["strings.top"].after == pytest.approx(deeper["strings.top"].before - 0.5)
    assert deeper["wood.floor"].after == pytest.approx(deeper["wood.floor"].before - 0.5)
    assert toll(before, before) == ()


def test_remedies_read_as_a_shop_would_say_them(job):
    stated = job.base.stated | STILL | {"pocket.depth": 16.1}
    found = {r.moves[0].name: headline(r, Units.MM) for r in remedies(stated)}
    assert found["depth"] == "pocket depth 16.10 mm -> 15.90 mm (-0.20 mm)"
    assert found["flat shim"] == "flat shim, 0.20 mm"
    lines = remedy_lines(remedies(stated), stated, Units.INCH)
    assert lines[1] == "1. pocket depth 0.634 in -> 0.626 in (-0.0079 in)"
    assert remedy_lines((), stated, Units.MM) == ["No change that is allowed mends it."]


def short_of_saddle(job, by):
    """The least saddle height that misses what this joint's strings leave by so much."""
    case = Case(job.base.stated)
    left = float(saddle_low.CHECK.read(case).value)
    return float(case["bridge.low"]) + left + by


def stock_of_the_shop():
    low = dict(part_values(SAMPLES / "parts" / "bridge-low.toml")[1])
    flat = {"pickup_bridge.fitted": True, "pickup_bridge.x": 148.0,
            "pickup_bridge.mount": "cavity", "pickup_bridge.low": 20.0,
            "pickup_bridge.high": 37.0}  # fmt: skip
    return Stock(bridges=(("flat bridge", low),), pickups=(("bridge", "flat pickup", flat),))


def made_to_need(job):
    """For each kind of change a joint that needs it, and what is turned: (key, direction, step).

    None where a part is exchanged or left out: then there is but one way.
    """
    base = job.base.stated
    # 14.25 mm to the pickup, 13.65 nearer: 0.6 where 1 is asked.
    near = float(Case(base)["pickup_neck.x"]) - 13.65
    deep, deeper = base | {"pocket.depth": 16.1}, base | {"pocket.depth": 17.9}
    high = base | {"bridge.low": short_of_saddle(job, 1.2), "bridge.high": 24.0}
    hanging = base | {"neck.binding": 0.5, "neck.binding_width": 1.5}
    return {
        "depth": (deep, ("pocket.depth", -1, 0.1)),
        # 0.2 mm at some 3 mm a degree.
        "angle": (base | {"bridge.low": short_of_saddle(job, 0.2)}, ("pocket.angle", 1, 0.1)),
        "shim": (deep, ("shim.wall", 1, 0.1)),
        "plate thickness": (deep, ("plate.thickness", -1, 0.1)),
        "no plate": (deeper, None),
        "plate cut away": (deeper, None),
        "recess": (high, ("bridge.recess", 1, 0.5)),
        "bridge": (high, None),
        "pickup": (base | {"pickup_bridge.low": 34.0}, None),
        "fretboard": (base | {"pickup_neck.x": near}, ("neck.overhang", -1, 0.5)),
        "binding": (hanging, ("neck.binding", -1, 0.1)),
        "screws": (base | {"screws.length": 50.0}, None),
    }


EXCHANGED = {
    "no plate": {"plate.cover": "none"},
    "plate cut away": {"plate.under_overhang": False},
    "bridge": {"bridge.high": 14.5},
    "pickup": {"pickup_bridge.low": 20.0},
    "screws": {"screws.length": 45.0},
}


def smallest_by_trying(stated, key, direction, step):
    """Turn one parameter step by step until every closed form holds."""
    own = 0.0 if key == "shim.wall" else float(Case(stated)[key])
    fixed = {"shim.wall": {"shim.make": "wedge"}, "bridge.recess": {"bridge.mount": "recess"}}
    for turns in range(1, 200):
        value = round(own + direction * turns * step, 9)
        both = {"shim.wall": value, "shim.mouth": value} if key == "shim.wall" else {key: value}
        if fits(stated | fixed.get(key, {}) | both):
            return value, turns
    raise AssertionError(key)


@pytest.mark.freecad
@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_of_change_mends_what_needs_it_by_the_smallest_amount(job, kind):
    from freecad_neckfit.run.chain import Verdict, check_values
    from freecad_neckfit.run.prove import prover

    stated, dial = made_to_need(job)[kind]
    outline = job.base.outline
    assert check_values(stated, outline=outline).verdict is Verdict.DOES_NOT_FIT
    found = remedies(
        stated, stock=stock_of_the_shop(), allowed=(kind,), prove=prover(outline=outline)
    )
    assert found
    first = found[0]
    if dial is None:
        assert first.steps == 10.0
        for key, value in EXCHANGED[kind].items():
            assert first.changes[key][1] == value
    else:
        value, turns = smallest_by_trying(stated, *dial)
        assert first.changes[dial[0]][1] == pytest.approx(value)
        assert first.steps == turns
    for remedy in found:
        assert check_values(remedy.stated, outline=outline).verdict is Verdict.FITS
        for cost in toll(stated, remedy.stated):
            assert cost.check.read is not None
            before, after = (float(cost.check.read(Case(s)).value) for s in (stated, remedy.stated))
            assert (cost.before, cost.after) == pytest.approx((before, after))


def test_every_kind_has_a_joint_that_needs_it(job):
    assert set(made_to_need(job)) == set(KINDS)


def test_costs_tell_of_strings_wood_and_break(job):
    """A deeper pocket brings strings nearer, leaves less wood, and flattens the break."""
    before = job.base.stated
    told = {cost.check.id: cost for cost in toll(before, before | {"pocket.depth": 15.8})}
    assert {"strings.top", "wood.floor", "bridge.break_angle"} <= set(told)
    lines = [cost_line(told[key], Units.MM) for key in ("strings.top", "wood.floor")]
    assert lines[0].startswith("costs: strings over the top under the hand 9.22 mm -> 8.92 mm")
    assert lines[1].startswith("costs: wood under the pocket 28.95 mm -> 28.65 mm")


@pytest.mark.freecad
@pytest.mark.parametrize(
    "name", ["deeper pocket, no plate", "21 frets, deeper pocket", "hanging binding, deeper pocket"]
)
def test_every_remedy_passes_the_full_check_on_solids(job, name):
    from freecad_neckfit.run.chain import Verdict, check_values
    from freecad_neckfit.run.prove import prover

    stated = option(job, name)
    outline = job.base.outline
    assert check_values(stated, outline=outline).verdict is Verdict.DOES_NOT_FIT
    found = remedies(stated, prove=prover(outline=outline))
    assert found
    for remedy in found:
        result = check_values(remedy.stated, outline=outline)
        assert result.verdict is Verdict.FITS, (headline(remedy, Units.MM), result.findings[0])

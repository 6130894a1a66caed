"""How two readings become one finding, and when the tool accuses itself."""

from dataclasses import dataclass, field

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.check import Check, Excess, Gravity
from freecad_neckfit.fit.reading import Reading
from freecad_neckfit.fit.verdict import judge_many
from freecad_neckfit.job.quantity import Kind, Units
from freecad_neckfit.run.finding import State, worst_first
from freecad_neckfit.run.judge import judge

CASE = Case({})


@dataclass
class Solid:
    value: float
    place: tuple | None = None
    known: bool = True
    because: str = ""
    applies: bool = True
    detail: dict = field(default_factory=dict)


def check(**changes):
    base = dict(
        id="test.room",
        title="room",
        unit=Kind.LENGTH,
        gravity=Gravity.BREAKS,
        reads=(),
        read=lambda _: Reading(0.0),
        low=0.1,
        high=1.0,
        contact=True,
        consequence="It hurts.",
        mending="Move by {short}.",
    )
    return Check(**(base | changes))


def finding(*, closed=None, solid=None, units=Units.MM, **changes):
    reading = closed if isinstance(closed, Reading) or closed is None else Reading(closed)
    return judge(check(**changes), CASE, reading=reading, measured=solid, units=units)


@pytest.mark.parametrize(
    ("value", "state", "met"),
    [
        (-0.02, State.INTERFERES, False),
        (-0.009, State.TOUCHES, False),
        (0.009, State.TOUCHES, False),
        (0.05, State.TOO_LITTLE, False),
        (0.1, State.FITS, True),
        (1.0, State.FITS, True),
        (1.2, State.TOO_MUCH, False),
    ],
)
def test_states_of_a_room(value, state, met):
    f = finding(closed=value)
    assert (f.state, f.met) == (state, met)


def test_parts_that_may_touch_are_met_by_touching():
    assert finding(closed=-0.003, low=0.0).met is True
    assert finding(closed=-0.003, low=0.0).state is State.TOUCHES
    assert finding(closed=-0.02, low=0.0).met is False


def test_a_room_of_nothing_is_no_room_of_less_than_nothing():
    touching = finding(closed=-4e-19, low=0.0)
    assert touching.state is State.TOUCHES
    assert (touching.value, str(touching.value)) == (0.0, "0.0")


def test_parts_apart_do_not_touch_where_only_their_overlap_is_told():
    apart = {"low": 0.0, "overlap": True}
    assert finding(closed=0.0, **apart).state is State.FITS
    assert finding(closed=-0.003, **apart).met is True
    assert finding(closed=-0.02, **apart).state is State.INTERFERES


def test_solids_win_and_both_readings_stay():
    f = finding(closed=0.500, solid=Solid(0.503, place=(1.0, 2.0, 3.0)))
    assert f.value == 0.503
    assert f.closed_form.value == 0.500
    assert f.place == (1.0, 2.0, 3.0)


def test_readings_further_apart_than_five_microns_accuse_the_tool():
    assert finding(closed=0.5, solid=Solid(0.5049)).state is State.FITS
    f = finding(closed=0.5, solid=Solid(0.5051))
    assert f.state is State.DISAGREES
    assert "fault of this tool" in f.reason


def test_a_simple_bound_may_differ_from_solids():
    assert finding(closed=0.5, solid=Solid(0.7), exact=False).state is State.FITS


def test_only_one_reading_that_applies_accuses_the_tool():
    assert finding(closed=Reading.absent("none"), solid=Solid(0.5)).state is State.DISAGREES
    assert finding(closed=0.5, solid=Solid(np.nan, applies=False)).state is State.DISAGREES


def test_disagreement_does_not_hide_an_unmet_demand():
    f = finding(closed=-1.0, solid=Solid(-2.0))
    assert f.state is State.DISAGREES
    assert f.met is False


def test_nothing_is_advised_where_the_tool_disagrees_with_itself():
    agreed = finding(closed=-1.0, solid=Solid(-1.001))
    assert agreed.mending
    torn = finding(closed=-1.0, solid=Solid(-2.0))
    assert torn.mending == ""
    assert torn.consequence == agreed.consequence


def test_a_failed_measurement_is_never_a_pass():
    f = finding(closed=0.5, solid=Solid(np.nan, known=False, because="the cut gave no solid"))
    assert f.state is State.UNKNOWN
    assert f.met is None
    assert "the cut gave no solid" in f.reason


def test_a_figure_that_is_not_finite_is_not_a_pass():
    assert finding(closed=np.nan).state is State.UNKNOWN
    assert finding(closed=np.inf).state is State.UNKNOWN


def test_absent_carries_its_reason():
    f = finding(closed=Reading.absent("no cover plate is fitted"))
    assert (f.state, f.met, f.reason) == (State.ABSENT, None, "no cover plate is fitted")


def test_the_mending_names_the_shortfall_in_the_units_asked_for():
    assert "2.10 mm" in finding(closed=-2.0).mending
    assert "0.083 in" in finding(closed=-2.0, units=Units.INCH).mending


def test_wishes_are_worth_a_look():
    f = finding(closed=0.2, wish_low=0.3)
    assert (f.state, f.met) == (State.WATCH, True)


def test_worst_comes_first():
    ugly = finding(closed=1.5, gravity=Gravity.UGLY)
    grave = finding(closed=-0.5)
    graver = finding(closed=-1.5)
    fine = finding(closed=0.5)
    absent = finding(closed=Reading.absent("none"))
    doubt = finding(closed=Reading.unknown("no figure"))
    told = finding(closed=0.5, gravity=Gravity.TELLS)
    shuffled = [absent, fine, told, ugly, doubt, grave, graver]
    assert worst_first(shuffled) == [graver, grave, ugly, doubt, fine, told, absent]


def test_many_joints_are_judged_as_each_alone():
    depths = np.array([0.05, 0.5, 0.99, 1.3])
    first = check(id="a.a", read=lambda _: Reading(depths), span=2.0)
    second = check(id="b.b", read=lambda _: Reading(np.array([0.9, 0.15, 0.5, 0.5])))
    third = check(id="c.c", read=lambda _: Reading.absent("none"))
    many = judge_many(CASE, checks=(first, second, third), count=4)
    assert many.fits.tolist() == [False, True, True, False]
    assert many.binding.tolist() == [0, 1, 0, 0]
    assert many.worst == pytest.approx([-0.025, 0.05, 0.005, -0.15])


def test_an_unknown_demand_keeps_a_joint_from_fitting():
    doubtful = check(read=lambda _: Reading(np.array([0.5, 0.5]), known=np.array([True, False])))
    many = judge_many(CASE, checks=(doubtful,), count=2)
    assert many.fits.tolist() == [True, False]
    assert many.unknown.tolist() == [False, True]


def test_too_much_may_cost_less_than_too_little():
    excess = Excess(gravity=Gravity.UGLY, consequence="It shows.", mending="Sink it by {short}.")
    over, under = finding(closed=1.5, excess=excess), finding(closed=0.05, excess=excess)
    assert (over.gravity, over.consequence) == (Gravity.UGLY, "It shows.")
    assert over.mending == "Sink it by 0.50 mm."
    assert (under.gravity, under.consequence) == (Gravity.BREAKS, "It hurts.")


def test_a_reading_that_calls_itself_a_bound_may_differ_from_solids():
    assert finding(closed=Reading(0.5, exact=False), solid=Solid(0.7)).state is State.FITS

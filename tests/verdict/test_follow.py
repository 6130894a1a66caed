"""One interference that several checks tell is read as one."""

from dataclasses import replace

import pytest

from freecad_neckfit.fit.check import Gravity
from freecad_neckfit.job.quantity import Kind, Units
from freecad_neckfit.run.chain import Result, check_values
from freecad_neckfit.run.finding import Finding, State
from freecad_neckfit.run.follow import told_once
from freecad_neckfit.run.overlap import is_overlap
from freecad_neckfit.run.table import Look, render

DEEP = {"pocket.depth": 18.288, "plate.cover": "surround", "plate.thickness": 2.4}
"""A deeper pocket whose overhang sinks into the plate."""
FINDING = Finding(
    "overhang.gap", "room under the overhang", Kind.LENGTH, Gravity.BREAKS, State.INTERFERES, False,
    -2.2, 0.15, 0.8, -2.35, -2.35, None, "", "It hurts.", "Move by 2.35 mm.", None, None,
)  # fmt: skip


def clash(value):
    """What the neck's and the plate's solids say."""
    is_met = value == 0
    return replace(
        FINDING, id="clash.neck_plate", title="interference of neck and cover plate", value=value,
        low=0.0, high=None, margin=value, weight=value, met=is_met,
        state=State.FITS if is_met else State.INTERFERES,
    )  # fmt: skip


def told(finding, *, beside=FINDING):
    """The finding as it is told beside another one."""
    return told_once([beside, finding])[1]


def test_the_same_interference_is_said_to_be_the_same():
    found = told(clash(-2.203))
    assert found.consequence.startswith('The same interference as in "room under the overhang"')
    assert not found.mending
    assert found.value == -2.203


def test_a_shorter_way_out_is_told_beside_the_lift():
    found = told(clash(-1.0))
    assert "shortest way out" in found.consequence
    assert "room under the overhang" in found.consequence
    assert not found.mending


@pytest.mark.parametrize(
    ("beside", "value"),
    [
        (FINDING, -3.0),
        (replace(FINDING, met=True, state=State.FITS, value=0.3, margin=0.15), -0.3),
        (replace(FINDING, state=State.DISAGREES), -2.2),
        (replace(FINDING, id="saddle.low"), -2.2),
    ],
)
def test_an_interference_of_its_own_keeps_its_own_words(beside, value):
    found = told(clash(value), beside=beside)
    assert (found.consequence, found.mending) == ("It hurts.", "Move by 2.35 mm.")


def test_what_is_met_follows_from_nothing():
    assert told(clash(0.0)) == clash(0.0)


def test_the_year_names_the_room_that_it_changes():
    result = check_values(DEEP, solids=False)
    room, year = result.find("overhang.gap"), result.find("seasons.gap")
    assert room.state is year.state is State.INTERFERES
    assert room.title in year.title
    assert f'"{room.title}" in the worst month' in year.consequence
    assert "that serves the whole year" in year.mending


def test_a_year_that_alone_closes_the_room_keeps_its_own_words():
    # In the dampest month 0.447 mm of 0.450 mm are left.
    stated = {"pocket.depth": 15.5, "plate.cover": "surround", "plate.thickness": 2.4}
    result = check_values(stated | {"limits.gap_min": 0.449}, solids=False)
    room, year = result.find("overhang.gap"), result.find("seasons.gap")
    assert (room.met, year.met) == (True, False)
    assert year.consequence.startswith("The overhang touches in one season")


def row(finding, units=Units.MM):
    text = render(Result("a joint", (finding,), {}), Look(96, units))
    return [line for line in text.splitlines() if finding.title in line][-1]


def test_no_interference_reads_as_none_and_none_is_wanted():
    words = row(clash(0.0)).split("plate")[1].split()
    assert words == ["none", "none"]
    assert row(clash(-2.2)).split("plate")[1].split() == ["-2.20", "mm", "none", "-2.20"]


def test_only_whole_parts_are_told_as_none():
    assert is_overlap("clash.neck_body")
    assert not is_overlap("overhang.gap")
    assert "none" not in row(replace(FINDING, value=0.0))


def test_what_mends_a_joint_is_told_in_the_units_of_its_table():
    finding = check_values(DEEP, solids=False).find("overhang.gap")
    text = render(Result("a joint", (finding,), {}), Look(96, Units.INCH))
    assert " mm" not in text

"""What the labels say, and how states look: nothing here needs a screen."""

from itertools import combinations

import pytest

from freecad_neckfit.fit.check import Gravity
from freecad_neckfit.gui.annotations import notes, palette
from freecad_neckfit.gui.annotations.pictures import headline_lines
from freecad_neckfit.job.quantity import Kind, Units
from freecad_neckfit.run.chain import Result
from freecad_neckfit.run.finding import Finding, State
from freecad_neckfit.run.record import record


def finding(state=State.INTERFERES, value=-1.55, **changes):
    fields = dict(
        id="overhang.gap", title="room under the overhang", unit=Kind.LENGTH,
        gravity=Gravity.BREAKS, state=state, met=False, value=value, low=0.15, high=0.8,
        margin=-1.7, weight=-1.7, place=(0.5, -25.0, 1.1), reason="", consequence="", mending="",
        closed_form=None, solids=None,
    )  # fmt: skip
    return Finding(**(fields | changes))


@pytest.mark.parametrize(
    ("state", "value", "units", "first", "wanted"),
    [
        (State.INTERFERES, -1.55, Units.MM, "X interferes by 1.55 mm", "0.15 to 0.80 mm"),
        (
            State.TOO_MUCH,
            2.475,
            Units.INCH,
            "> too much 0.097 in (3/32 +0.004)",
            "0.0059 to 0.031 in",
        ),
        (State.TOUCHES, -4.5e-19, Units.MM, "= touches 0.00 mm", "0.15 to 0.80 mm"),
        (State.UNKNOWN, None, Units.MM, "? not checked", "0.15 to 0.80 mm"),
    ],
)
def test_a_note_says_sign_word_value_and_unit(state, value, units, first, wanted):
    note = notes.note_of(finding(state, value), units=units)
    assert note.lines() == (first, "room under the overhang", f"wanted: {wanted}")
    assert note.lines(stale=True) == (*note.lines(), "out of date")


def test_of_a_whole_parts_interference_none_is_told_and_none_is_wanted():
    fields = {"id": "clash.neck_plate", "title": "interference of neck and plate"}
    fields |= {"low": 0.0, "high": None}
    free = notes.note_of(finding(State.FITS, 0.0, **fields), units=Units.MM)
    assert free.lines() == ("+ fits none", "interference of neck and plate")
    deep = notes.note_of(finding(State.INTERFERES, -2.2, **fields), units=Units.MM)
    assert deep.lines()[0] == "X interferes by 2.20 mm"
    assert deep.lines()[2] == "wanted: none"


def test_a_finding_and_its_record_give_the_same_note():
    angle = finding(State.WATCH, 14.35, unit=Kind.ANGLE, low=5.0, high=None, met=True)
    bare = finding(State.TOO_MUCH, 3.1, unit=Kind.NUMBER, low=None, high=3.0, place=None)
    findings = [finding(), angle, bare]
    joint = record([Result("joint", tuple(findings), {})], source="joint.toml")["joints"][0]
    for one, kept in zip(findings, joint["findings"], strict=True):
        for units in Units:
            assert notes.note_of(one, units=units) == notes.note_of(kept, units=units)


def test_what_matters_is_shown_and_the_rest_is_not():
    every = [notes.note_of(finding(state), units=Units.MM) for state in State]
    hidden = {State.FITS, State.TELLS, State.ABSENT}
    assert {note.state for note in notes.shown(every)} == set(State) - hidden


@pytest.mark.parametrize(
    ("states", "answer"),
    [
        ([(State.INTERFERES, False), (State.UNKNOWN, None)], "DOES NOT FIT"),
        ([(State.UNKNOWN, None), (State.FITS, True)], "COULD NOT BE DECIDED"),
        ([(State.FITS, True), (State.TOUCHES, True)], "FITS"),
        ([], "NOTHING WAS CHECKED"),
    ],
)
def test_the_headline_gives_the_verdict(states, answer):
    found = [notes.note_of(finding(s, met=met), units=Units.MM) for s, met in states]
    assert notes.headline(found)[0] == answer


def test_the_names_of_elements_lead_back_to_findings():
    for finding_id in ("overhang.gap", "pickup_neck.low"):
        assert "." not in notes.element_of(finding_id)
        assert notes.id_of(notes.element_of(finding_id)) == finding_id


def luminance(colour):
    # Relative luminance and contrast: Web Content Accessibility Guidelines 2.1, section 1.4.3.
    linear = [c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in colour]
    return sum(w * c for w, c in zip((0.2126, 0.7152, 0.0722), linear, strict=True))


def contrast(one, other):
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("state", State)
@pytest.mark.parametrize("stale", [False, True])
def test_words_stand_out_from_the_colour_behind_them(state, stale):
    look = palette.look_of(state, stale=stale)
    # Bold letters of a head need 3 to 1 by the guidelines, small ones 4.5 to 1.
    assert contrast(look.fill, look.ink) >= 3
    assert contrast(palette.PAPER, palette.FAINT) >= 4.5


def test_states_differ_in_sign_line_and_marker_besides_colour():
    told = [State.INTERFERES, State.TOO_LITTLE, State.UNKNOWN, State.TOUCHES, State.FITS]
    for one, other in combinations(told, 2):
        a, b = palette.look_of(one), palette.look_of(other)
        assert a.corners != b.corners
        assert (a.pattern, a.border) != (b.pattern, b.border)
        assert one.mark != other.mark


def test_the_gap_map_grows_lighter_with_the_room_and_is_warm_only_where_parts_interfere():
    shades = [luminance(palette.gap_colour(g / 10, widest=2.0)) for g in range(21)]
    assert shades == sorted(set(shades))
    assert palette.gap_colour(-0.01, widest=2.0) == palette.VERMILLION
    assert palette.gap_colour(0.0, widest=0.0) == palette.gap_colour(0.0, widest=2.0)


def test_an_answer_that_is_out_of_date_is_no_longer_said_large():
    fresh, stale = (headline_lines(("FITS", "38 fitting"), stale=s) for s in (False, True))
    assert [line.text for line in fresh] == ["FITS", "38 fitting"]
    assert stale[0].text.startswith("OUT OF DATE")
    assert [line.text for line in stale[1:]] == ["FITS", "38 fitting"]
    for first, *others in (fresh, stale):
        assert all(first.size > other.size for other in others)
        assert [other.bold for other in others] == [False] * len(others)

"""The deciding windows driven by real events under a virtual screen."""

import pytest

pytestmark = pytest.mark.gui


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in FreeCAD's window has seen."""
    return on_screen("decide_windows")


def test_the_window_tells_where_every_demand_holds(told):
    seen = told["window"]
    assert seen["notice"] == ""
    assert (
        seen["words"].startswith("Joint: within the window")
        or "within the window" in (seen["words"].splitlines()[0])
    )
    assert "Bounds of the window" in seen["words"]
    assert seen["axes"] == ["pocket angle", "shim", "plate thickness"]
    assert "plate 2.29 mm" in seen["over plate"]
    assert seen["bitmap"] == [2580, 1680]


def test_a_click_tries_a_place_and_the_document_rests(told):
    seen = told["window"]
    assert not seen["can take"]
    assert seen["tried"] == pytest.approx([15.6, 0.1])
    assert seen["tried words"].startswith("Tried: 15.60 mm deep, angle 0.10°")
    assert seen["document while trying"] == 15.5


def test_taking_over_is_one_step_of_undo(told):
    seen = told["window"]
    assert seen["taken"] == pytest.approx([15.6, 0.1])
    assert seen["undo steps"] == 1
    assert seen["undone"] == 15.5


def test_remedies_are_listed_with_their_cost_and_taken_over(told):
    seen = told["mend"]
    assert seen["notice"] == ""
    assert seen["list"][0].startswith("pocket depth 16.10 mm -> 15.")
    assert "flat shim" in " ".join(seen["list"])
    assert seen["depth"] < 16.0
    assert seen["undo steps"] == 1
    assert seen["after"] == "It fits; there is nothing to mend."


def test_options_of_the_document_stand_side_by_side(told):
    seen = told["options"]
    assert seen["notice"] == ""
    for word in ("verdict", "fits", "DOES NOT FIT", "deeper pocket, no plate", "pocket depth"):
        assert word in seen["text"]


def test_tolerances_tell_what_fails_and_a_long_study_can_be_stopped(told):
    seen = told["tolerances"]
    assert seen["notice"] == ""
    assert "of joints fail" in seen["words"]
    assert "What matters most" in seen["words"]
    assert seen["stopped"].startswith("Stopped")


def test_the_year_is_shown_by_month(told):
    seen = told["seasons"]
    assert seen["notice"] == ""
    assert "through the year" in seen["words"]
    assert "Jul" in seen["words"]


def test_every_command_opens_its_window(told):
    assert told["commands"] == {"Window": 1, "Options": 1, "Seasons": 1}

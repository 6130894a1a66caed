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


def test_a_place_and_a_remedy_are_kept_as_options_to_be_compared(told):
    sentence, steps, depth = told["window"]["kept"]
    assert sentence == "Kept as the option Pocket depth 15.60 mm, angle 0.10°."
    assert (steps, depth) == (1, 15.5)
    assert told["mend"]["kept"].startswith("Kept as the option pocket depth 16.10 mm -> 15.")
    for name in ("Pocket depth 15.60 mm, angle 0.10°", "pocket depth 16.10 mm -> 15."):
        assert name in told["options"]["text"]


def test_a_click_goes_to_the_steps_of_its_own_axis(told):
    seen = told["window"]
    assert seen["tried plate"] == pytest.approx([15.6, 2.1])
    # 1/64 in for the plate, and depths at the router's stops alone.
    assert seen["tried at a stop"] == pytest.approx([15.5, 5 * 25.4 / 64])


def test_what_the_shop_can_set_is_asked_and_kept_as_one_step(told):
    seen = told["window"]["shop"]
    assert seen["refused"].startswith("router's stop 2: ")
    assert "furlong" in seen["refused"]
    assert seen["step"] == pytest.approx(25.4 / 64)
    assert seen["stops"] == pytest.approx([15.5, 15.875])
    assert seen["undo steps"] == 1
    assert "router stop 15.5 mm" in seen["words"]


def test_remedies_are_listed_with_their_cost_and_taken_over(told):
    seen = told["mend"]
    assert seen["notice"] == ""
    assert seen["list"][0].startswith("pocket depth 16.10 mm -> 15.")
    assert "flat shim" in " ".join(seen["list"])
    assert all("cost" in each for each in seen["list"])
    assert "full check on solids" in seen["caption"]
    assert seen["depth"] < 16.0
    assert seen["undo steps"] == 1
    assert seen["after"] == "It fits; there is nothing to mend."


def test_options_of_the_document_stand_side_by_side(told):
    seen = told["options"]
    assert seen["notice"] == ""
    for word in (
        "verdict",
        "fits",
        "DOES NOT FIT",
        "deeper pocket, no plate",
        "pocket depth",
        "yes",
    ):
        assert word in seen["text"]
    assert not {"true", "false"} & set(seen["text"].split())


def test_limits_are_typed_in_any_unit_and_kept_with_undo(told):
    seen = told["tolerances"]["edits"]
    assert seen["first"] == [
        "plate thickness", "2.286 mm", "-0.102 mm", "+0.102 mm", "uniform (the shop's)", True,
    ]  # fmt: skip
    assert seen["stated"] == pytest.approx([-0.02, 25.4 / 64])
    assert seen["typed"][2:4] == ["-0.02 mm", "+0.397 mm"]
    assert seen["undo steps"] == 2
    assert seen["share after"] > seen["share"] + 0.1
    assert seen["both"] == pytest.approx([-0.05, 0.05])
    assert seen["default"] == [None, {}]
    assert seen["undone"] == [pytest.approx([-0.05, 0.05]), {}]


def test_a_spread_is_chosen_for_one_dimension(told):
    stated, cells = told["tolerances"]["edits"]["spread"]
    assert stated == {"plate.thickness": "normal"}
    assert cells[2:5] == ["-0.05 mm", "+0.05 mm", "normal"]


def test_limits_that_cannot_be_read_are_refused_in_one_sentence(told):
    sentence, cell = told["tolerances"]["edits"]["refused"]
    assert sentence.startswith("limits of plate thickness: ")
    assert "deg" in sentence
    assert "list" not in sentence
    assert cell == "+0.05 mm"


def test_a_value_typed_beside_its_limits_changes_the_joint_as_one_step(told):
    seen = told["tolerances"]["edits"]
    assert seen["value"] == [pytest.approx(0.61 * 25.4), "15.494 mm"]
    assert seen["value undone"] == pytest.approx(0.0)


def test_what_an_expression_drives_is_not_typed_over(told):
    sentence, cell = told["tolerances"]["edits"]["driven"]
    assert "driven by the expression" in sentence
    assert cell == "2.20 mm"


def test_another_dimension_may_vary_and_a_class_for_all_that_state_nothing(told):
    seen = told["tolerances"]["edits"]
    # 78 mm of flat heel, class m: ± 0.3.
    assert seen["added"][0] == pytest.approx([-0.3, 0.3])
    assert seen["general"][:2] == ["m", "normal"]
    assert seen["general"][2] > 5
    assert seen["general"][3] == "normal (the shop's)"


def test_columns_of_tolerances_are_explained(told):
    words = told["tolerances"]["words"]
    assert "root of the sum of the squares" in words
    assert told["tolerances"]["heads"] == [
        "Dimension", "Value", "Minus", "Plus", "Spread", "Explains",
    ]  # fmt: skip


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


def test_why_no_month_can_be_chosen_yet_is_said(told):
    seen = told["seasons"]
    assert seen["month"] == [False, seen["why"]]
    assert seen["why"].startswith("Choose the shop's room first")
    assert seen["month then"] == [True, "The wood has the moisture of this month when it is cut."]
    assert seen["why then"] == ""
    assert seen["cut in February"]


def test_every_command_opens_its_window(told):
    assert told["commands"] == {"Window": 1, "Options": 1, "Seasons": 1}

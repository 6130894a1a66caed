"""A designer's way through the commands, by buttons and by typing, as seen in FreeCAD's window."""

import pytest

from freecad_neckfit.gui.annotations.palette import DOTTED
from freecad_neckfit.job.show import compact_length
from freecad_neckfit.job.units import Units

DEEPER = 0.72 * 25.4
UNDERSIDE = 18.6
"""Heel's bottom to the overhang's underside [mm], of the sample's neck."""
PLATE_TOP = 0.09 * 25.4 + 0.25
"""Of the sample's cover plate over the bare top [mm]: 0.09 in of plate on 0.25 of finish."""
EDITOR = 0.0051
"""FreeCAD 0.20's property editor keeps as many decimals as it shows: two at first."""

pytestmark = [pytest.mark.gui, pytest.mark.slow]


@pytest.fixture(scope="module")
def told(on_screen):
    return on_screen("commands_way")


def label(stage, finding="overhang.gap"):
    text, pattern = stage["all"][finding]
    return text.splitlines(), pattern


def test_every_command_is_reached_by_button_menu_and_words(told):
    for command in told["words"]:
        assert command["reached"], command
        assert command["icon"], command
        assert "&" in command["menu"], command
        assert command["tip"], command
        assert len(command["status"]) > 10, command
    keys = [command["key"] for command in told["words"] if command["key"]]
    assert len(keys) >= 15
    assert len(set(keys)) == len(keys)
    # A key that begins another one would never be heard.
    assert not [(a, b) for a in keys for b in keys if a != b and b.startswith(a + ",")]


def test_commands_are_grey_where_they_are_not_possible(told):
    without = told["greyed"]["no document"]
    assert without == [
        "NeckFit_ImportNeck", "NeckFit_New", "NeckFit_OpenJob", "NeckFit_Sample",
    ]  # fmt: skip
    checked = told["greyed"]["checked"]
    assert {"NeckFit_Check", "NeckFit_ShowFits", "NeckFit_Next", "NeckFit_Compare"} <= set(checked)
    assert "NeckFit_Recheck" not in checked  # nothing is out of date
    assert "NeckFit_Reattach" not in checked


def test_the_sample_is_one_step_and_fits(told):
    way = told["way"]
    assert way["steps after the sample"] == ["Build the sample joint"]
    assert way["steps after a toggle"] == ["Show what fits", "Build the sample joint"]
    assert (way["sample"]["verdict"], way["sample"]["stale"]) == ("fits", False)
    lines, _ = label(way["sample"])
    assert lines == ["+ fits 0.56 mm", "room under the overhang"]
    assert way["sample"]["clash"] is None


def test_a_typed_depth_makes_the_check_stale_and_says_so(told):
    way = told["way"]
    assert way["typed"] == pytest.approx(DEEPER, abs=EDITOR)
    assert way["steps after typing"][0].startswith("Edit Pocket")
    assert way["stale"]["stale"]
    assert way["stale"]["icon"] == "check_stale.svg"
    lines, pattern = label(way["stale"])
    assert lines == ["+ fits 0.56 mm", "room under the overhang", "out of date"]
    assert pattern == DOTTED
    assert any("out of date" in words for words in way["says stale"])


def test_the_status_bar_says_out_of_date_just_as_long_as_it_is_so(told):
    way = told["way"]
    assert "out of date" not in way["says once checked"]
    assert "out of date" in way["says once undone"]
    assert "out of date" not in way["says of the former depth"]


def test_checked_again_the_label_says_by_how_much_they_interfere(told):
    deeper = told["way"]["deeper"]
    lines, _ = label(deeper)
    by = PLATE_TOP - (UNDERSIDE - told["way"]["typed"])
    assert lines[0] == f"X interferes by {compact_length(by, units=Units.MM)}"
    assert (deeper["verdict"], deeper["stale"]) == ("does not fit", False)
    assert deeper["clash"]["over"]
    assert deeper["shared"] > 100


def test_undo_brings_the_former_label_back_and_redo_the_later_one(told):
    way = told["way"]
    assert way["check undone"]["stale"]
    assert label(way["check undone"]) == label(way["stale"])
    assert not way["depth undone"]["stale"]
    assert way["depth undone"]["all"] == way["sample"]["all"]
    assert way["depth undone"]["clash"] is None
    assert way["redone"]["all"] == way["deeper"]["all"]
    assert way["redone"]["clash"] == way["deeper"]["clash"]


def test_a_reopened_document_holds_and_shows_the_same(told):
    way = told["way"]
    assert way["lost"] == []
    assert way["reopened"]["all"] == way["deeper"]["all"]
    assert way["reopened"]["labels"] == way["deeper"]["labels"]
    assert way["reopened"]["clash"] == way["deeper"]["clash"]
    assert not way["reopened"]["stale"]


def test_a_command_that_fails_leaves_nothing_and_says_why(told):
    failures = told["failures"]
    assert failures["changed"] == []
    assert failures["same steps"]
    assert not failures["pending"]
    (fault,), (refusal,) = failures["said"].values()
    assert "ZeroDivisionError: no" in fault
    assert refusal == "Not so deep."
    assert failures["detail"]


def test_the_findings_are_walked_through_worst_first_and_back(told):
    first, second, *_ = told["next"]["notes"]
    assert told["next"]["seen"] == [[first], [second], [first]]


def test_inch_users_read_and_type_inches(told):
    inches = told["inches"]
    assert inches["5/8 in"] == pytest.approx(15.875, abs=EDITOR)
    assert inches["in the editor"].endswith(("in", '"'))
    for text in inches["labels"].values():
        assert "mm" not in text
    assert inches["labels"]["wood.floor"].startswith("+ fits 1.12")
    assert "(1 1/8" in inches["labels"]["wood.floor"]


def test_a_job_file_goes_out_and_comes_back_by_dialogs(told):
    assert told["files"]["dialogs"] == [1, 1]
    assert told["files"]["depth"] == pytest.approx(told["inches"]["5/8 in"], abs=1e-9)
    assert told["files"]["same"]


def test_two_states_are_compared_and_only_what_changed_is_listed(told):
    compared = told["compared"]
    assert compared["saved"] == [["pocket depth", "18.29 mm", "15.88 mm"]]
    rows = {title: (before, after) for title, before, after in compared["findings"]}
    assert rows["room under the overhang"][0].startswith("X interferes by")
    assert rows["room under the overhang"][1].startswith("+ fits")
    assert "end clearance" not in rows
    assert compared["measured"] == [["pocket depth", "15.88 mm", "17.00 mm"]]
    assert "99 in" in compared["refused"]
    said, tells_verdicts = compared["before typing"]
    assert said.startswith("Nothing is measured yet")
    assert not tells_verdicts
    assert compared["tables before typing"] == []
    assert "measured: " in compared["once typed"]
    assert compared["depth stays"] == told["inches"]["5/8 in"]
    assert len(compared["documents"]) == 1


def test_what_freecad_recorded_runs_as_a_macro(told):
    assert told["macro"]["lines"] == [
        "import freecad_neckfit.features.acts",
        "freecad_neckfit.features.acts.build_sample(FreeCAD.ActiveDocument)",
    ]
    assert told["macro"]["verdict"] == "fits"


def test_preferences_are_kept_and_applied(told):
    seen = told["preferences"]
    assert seen["first"][:2] == ["", "colour"]
    assert "nowhere.toml: there is no such file" in seen["refused"]
    assert " 2 " in seen["remark"]
    # FreeCAD's editor rounds what is typed by version; the sample's room is 16.064 less the depth.
    room = (16.064 - told["inches"]["5/8 in"]) / 25.4
    assert seen["inch"].splitlines()[0].startswith(f"+ fits {room:.4f} in")
    assert all(red == green == blue for red, green, blue in seen["colours"])
    assert seen["new"] == [16.0, "Joint"]


def test_only_what_the_joint_has_is_asked_to_be_measured(told):
    measures = told["compared"]["measures"]
    assert "pocket corner radius" in measures
    assert "pocket end radius" not in measures
    assert "neck heel radius" not in measures
    assert not any("dome" in name or "carve" in name for name in measures)


def test_a_new_joint_says_what_comes_next(told):
    seen = told["preferences"]["next"]
    (sentence,) = seen["said"]
    assert sentence.startswith("Now state your own neck and pocket")
    assert sentence.endswith("then check the joint.")
    assert seen["selected"] == ["Neck"]
    assert seen["checked"]
    assert seen["closed"]
    assert seen["not again"]

"""The adoption panel driven under a virtual screen: a body two containers deep, turned."""

import pytest

pytestmark = pytest.mark.gui


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in FreeCAD's window has seen."""
    return on_screen("adopt_panel")


def test_no_dialog_tells_of_a_fault(told):
    assert told["dialogs"] == []


def test_it_opens_waiting_for_the_top_face(told):
    assert told["waits first"] == ["top"]
    assert told["says first"] == "Click the top of the body, in the 3D view."


def test_one_line_tells_what_the_next_click_does(told):
    ways = told["ways"]
    assert ways["neck"] == ["Click the neck, in the 3D view or in the tree.", ["solid"]]
    assert ways["cover plate"] == [
        "Click the cover plate, in the 3D view or in the tree.", ["solid"]
    ]  # fmt: skip
    assert ways["body"] == [told["says first"], ["top"]]
    assert ways["by figures"] == ["Click the body, in the 3D view or in the tree.", ["solid"]]
    assert ways["floor armed"] == ["Click the floor of the neck pocket.", ["floor"]]
    assert told["says second"].startswith("Click an edge or a line that runs along the middle")
    assert told["no face"] == f"That is no face. {told['says first']}"


def test_it_speaks_as_a_builder_does(told):
    assert told["ways"]["words"] == ["Turn the centreline round", "Place it by figures instead"]


def test_picking_the_top_picks_the_solid_and_goes_on(told):
    assert told["top"]["solid"] == "Ready"
    assert told["top"]["top"].startswith("Face")
    assert told["top"]["top"].endswith(", Ready")
    assert told["top"]["centreline"] == ""
    assert told["waits second"] == ["centreline"]


def test_the_frame_is_drawn_as_soon_as_it_is_known(told):
    said, at = told["with pocket"]
    assert said.startswith("Ready: press OK.")
    assert at is not None


def test_once_all_is_picked_a_further_click_changes_nothing(told):
    assert told["waits for nothing"] == []
    assert told["after a click too many"]


def test_a_pocket_that_is_there_is_not_passed_over(told):
    said, at = told["without pocket"]
    assert "has a neck pocket already" in said
    assert at is None


def test_until_ok_the_document_stays_as_it_is(told):
    assert told["untouched while picking"] == []
    assert told["objects while picking"]


def test_cancel_leaves_nothing(told):
    assert told["cancelled"] == {
        "open": False, "objects": True, "undo": told["undo before"], "arrows": None,
        "visible": True, "marked": [],
    }  # fmt: skip


def test_what_cannot_be_leaves_the_panel_open_with_a_sentence_and_no_step(told):
    said, is_open, steps = told["refused"]
    assert said.endswith(".")
    assert "\n" not in said
    assert is_open
    assert steps == told["undo before"]


def test_ok_adopts_in_one_step_and_hides_the_original(told):
    assert told["accepted"] == {
        "open": False, "adopts": "Ready", "depth": pytest.approx(17.2), "valid": True, "undo": 1,
        "visible": False, "arrows": None, "history": [],
    }  # fmt: skip


def test_a_solid_is_let_go_in_one_step_and_leaves_what_was_measured(told):
    assert told["let go"] == {
        "adopts": None, "depth": pytest.approx(17.2), "valid": True, "undo": "Let go of a solid",
        "visible": True, "possible again": False,
    }  # fmt: skip
    assert told["taken back"] == ["Ready", False]


def test_undo_takes_all_of_it_back(told):
    assert told["undone"] == [True, True]
    assert told["marked after one step"] == told["marked"] == []

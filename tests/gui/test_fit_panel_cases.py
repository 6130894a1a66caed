"""The Fit panel where a document is not the usual one, driven by real events."""

import pytest

pytestmark = pytest.mark.gui


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in FreeCAD's window has seen, by case."""
    return on_screen("fit_panel_cases")


def test_cancel_brings_former_findings_back_and_leaves_them_stale(told):
    seen = told["checked_before"]
    assert seen["stale before"]
    assert seen["fresh in the panel"]
    assert seen["changed"] != seen["before"]
    assert seen["after"] == seen["before"]
    assert seen["stale after"]


def test_a_depth_that_an_expression_drives_cannot_be_turned_and_says_so(told):
    seen = told["driven"]
    assert seen["enabled"] == [False, False]
    assert seen["note"] == (
        "Pocket.Depth is driven by the expression Measures.depth; change it there."
    )
    assert seen["value"] == pytest.approx(16.1)
    assert seen["still driven"] == "Measures.depth"


def test_beside_a_driven_depth_the_angle_is_turned(told):
    seen = told["driven"]
    assert seen["angle enabled"]
    assert seen["focus"]
    assert seen["angle"] == pytest.approx(0.3)


def test_the_selected_joint_is_turned_and_the_other_rests(told):
    seen = told["two_joints"]
    assert seen["selected"] == "Second"
    assert seen["title"] == "Fit: Second"
    assert seen["depths"] == [15.875, 16.5]


def test_without_a_selection_the_designer_is_asked_which_joint(told):
    seen = told["two_joints"]
    assert seen["asked"] == ["Joint (Joint)", "Second (Joint001)"]
    assert seen["answered"] == "Second"


def test_inches_are_shown_and_read(told):
    seen = told["inches"]
    assert (seen["at first"], seen["fraction"]) == ("0.625 in", "0.625 in (5/8)")
    assert seen["typed"] == pytest.approx(17.4625, abs=1e-9)
    assert (seen["shown"], seen["fraction of it"]) == ("0.6875 in", "0.688 in (11/16)")
    assert seen["look"]["rows"]["overhang.gap"][1] == (
        "X interferes | room under the overhang | by 0.060 in (1/16 -0.003) · 0.065 in short"
    )
    assert seen["short"]["overhang.gap"] == "by 0.060 in · 0.065 in short"


def test_a_tool_that_disagrees_with_itself_says_so(told):
    seen = told["disagreeing"]
    assert seen["rows"]["overhang.gap"][0] == "tool disagrees"
    assert seen["rows"]["overhang.gap"][1].startswith("? tool disagrees | ")
    assert "By calculation: 0.08 mm" in seen["details"]
    assert "Measured on the solids: 0.08 mm - the two disagree." in seen["details"]
    assert "a fault of this tool" in seen["details"]


def test_cancel_works_where_the_designer_keeps_no_undo(told):
    seen = told["no_undo"]
    assert seen["changed"] == 17
    assert seen["after"] == seen["before"]
    assert "Check" not in seen["objects"]


def test_a_shim_has_its_knobs_and_a_missing_plate_has_none(told):
    seen = told["shimmed"]
    assert seen["knobs"] == ["pocket.depth", "pocket.angle", "shim.wall", "shim.mouth"]
    assert seen["wall"] == pytest.approx(0.5)


def test_closing_the_document_closes_the_panel(told):
    assert told["closed"]["gone"]


def test_turned_into_what_cannot_be_built_the_last_good_value_stays(told):
    seen = told["refused_while_turning"]
    assert seen["turned to"] > 44.25
    assert "goes through the body" in seen["turning"]
    released = seen["released"]
    assert 43 < released["document"] <= 44.25
    assert released["value"] == released["document"]
    assert "goes through the body" in released["notice"]
    assert not released["stale"]


def test_ok_takes_an_entry_that_was_not_confirmed_and_not_one_that_is_refused(told):
    seen = told["by_ok"]
    assert seen["held"]
    assert "lies above what is permitted" in seen["notice"]
    assert seen["gone"]
    assert seen["value"] == pytest.approx(16.4)
    assert seen["undo"] == ["Fit"]
    assert not seen["stale"]


def test_the_command_opens_one_panel_and_whoever_closes_it_cancels(told):
    seen = told["by_command"]
    assert seen["possible"]
    assert seen["open"]
    assert not seen["possible while open"]
    assert seen["gone"]
    assert seen["depth"] == 15.875


def test_where_all_fits_the_closest_demands_are_listed_first(told):
    seen = told["all_fits"]
    assert seen["answer"] == "+ FITS"
    assert seen["filter"] == f"all fits; the closest first ({len(seen['rows'])})"
    assert len(seen["rows"]) == 8
    assert all(state in ("touches", "fits") for state, _ in seen["rows"])
    assert sum(spare.endswith("to spare") for _, spare in seen["rows"]) > 4
    assert seen["rows"][0][0] == "touches"
    assert "By calculation: " in seen["details"]
    assert seen["deeper"].startswith("what matters (")
    assert "interferes" in seen["states deeper"]

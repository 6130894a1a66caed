"""The Fit panel driven by real events under a virtual screen.

The joint is the default one with a plate all round, 2.4 thick on 0.25 of finish. The overhang's
underside lies 18.6 over the heel's bottom, so that at a depth d its room over the plate is
18.6 - d - 2.65 = 15.95 - d [mm].
"""

import pytest

from freecad_neckfit.gui.annotations import palette
from freecad_neckfit.run.finding import State

pytestmark = pytest.mark.gui
REMARK = "by calculation - solids are measured on release"
DEEP, SHALLOW = 15.95, 15.875


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in FreeCAD's window has seen."""
    return on_screen("fit_panel")


def test_it_opens_with_the_verdict_and_the_worst_first(told):
    seen = told["opened"]
    assert seen["verdict"] == "X DOES NOT FIT"
    assert seen["by"] == "by calculation and measured on the solids"
    states = [seen["rows"][name][0] for name in seen["order"]]
    unmet = [s in ("interferes", "too little", "too much") for s in states]
    assert unmet == sorted(unmet, reverse=True)
    assert sum(unmet) >= 2
    state, text = seen["rows"]["overhang.gap"]
    assert state == "too little"
    assert text == "< too little | room under the overhang | 0.08 mm · 0.08 mm short"
    assert seen["finding"]["overhang.gap"] == pytest.approx(DEEP - SHALLOW, abs=1e-6)
    title = seen["rows"][seen["order"][0]][1].split(" | ")[1]
    assert seen["details"].startswith(title)


def test_labels_keep_clear_of_the_panel(told):
    assert told["under the panel"]["labels"] == []
    assert told["under the panel"]["shown"] >= 6


@pytest.mark.parametrize("stage", ["half way", "before release"])
def test_while_the_slider_is_pulled_closed_forms_show_and_the_document_rests(told, stage):
    seen = told["drag"][stage]
    assert seen["value"] > SHALLOW + 0.3
    assert seen["document"] == SHALLOW
    assert not seen["stale"]
    by = seen["value"] - DEEP
    assert seen["rows"]["overhang.gap"][1].startswith("X interferes | room under the overhang | by")
    assert seen["labels"]["overhang.gap"].startswith(f"X interferes by {by:.2f} mm\n")
    assert seen["colours"]["overhang.gap"] == pytest.approx(palette.VERMILLION, abs=1e-6)
    assert REMARK in seen["by"]
    assert seen["headline"].splitlines()[-1] == REMARK
    assert seen["neck"] == pytest.approx(SHALLOW - seen["value"], abs=1e-4)


def test_what_only_solids_can_tell_waits_for_them(told):
    seen = told["drag"]["before release"]
    assert {"clash.neck_body", "clash.neck_plate"} <= set(seen["waits"])
    assert not any(name.startswith("clash.") for name in seen["labels"])
    assert seen["rows"]["clash.neck_plate"][1].startswith("waits for the solids | ")
    assert seen["clash"] == 0


def test_the_value_moves_with_the_mouse(told):
    half, full = (told["drag"][stage]["value"] for stage in ("half way", "before release"))
    assert SHALLOW < half < full < SHALLOW + 2
    assert told["drag"]["before release"]["box"] == f"{full:.2f} mm"


def test_on_release_the_document_takes_the_value_and_solids_prove_it(told):
    seen, turned = told["drag"]["released"], told["drag"]["before release"]
    assert seen["document"] == seen["value"] == turned["value"]
    assert seen["solids"]["overhang.gap"]
    assert seen["finding"]["overhang.gap"] == pytest.approx(DEEP - seen["value"], abs=1e-4)
    assert seen["rows"]["overhang.gap"] == turned["rows"]["overhang.gap"]
    assert seen["by"] == "by calculation and measured on the solids"
    assert REMARK not in seen["headline"]
    assert seen["waits"] == []
    assert seen["clash"] == 8
    assert seen["rows"]["clash.neck_plate"][0] == "interferes"
    assert seen["neck"] == 0
    assert not seen["stale"]


def test_escape_takes_everything_back(told):
    seen = told["cancelled by Esc"]
    assert seen["gone"]
    assert seen["state"] == told["before"]
    assert seen["undo"] == []
    # FreeCAD would show a mark on each, as if something were left to do.
    assert seen["touched"] == []


@pytest.mark.parametrize(
    ("entry", "value"), [("5/8 in", 15.875), ("1 1/4in", 31.75), ("17.5", 17.5)]
)
def test_entries_are_read_in_every_unit_of_the_trade(told, entry, value):
    seen = told["typed"][entry]
    assert seen["document"] == seen["value"] == pytest.approx(value, abs=1e-12)
    assert seen["notice"] == ""
    assert seen["finding"]["overhang.gap"] == pytest.approx(DEEP - value, abs=1e-4)


@pytest.mark.parametrize(
    ("entry", "reason"),
    [
        ("99", '"99" lies above what is permitted; state 3.00 mm to 60.00 mm.'),
        ("abc", '"abc" does not start with a number'),
        ("12,5", "has a decimal comma; write 12.5."),
        ("44.5", "goes through the body"),
    ],
)
def test_a_refused_entry_says_why_and_leaves_the_last_good_value(told, entry, reason):
    seen = told["typed"][entry]
    assert reason in seen["notice"]
    assert seen["notice"].count(". ") == 0
    assert (seen["box"], seen["document"]) == ("17.50 mm", 17.5)
    assert seen["rows"] == told["typed"]["17.5"]["rows"]


def test_the_angle_is_typed_too(told):
    assert told["typed"]["angle"] == pytest.approx(0.5)
    notice, shown = told["typed"]["angle refused"]
    assert "state -6.00° to 6.00°" in notice
    assert shown == "0.50°"


def test_arrow_keys_turn_the_slider_and_solids_run_when_they_rest(told):
    keys = told["keys"]
    assert keys["at once"]["document"] == keys["before"] == pytest.approx(16.2)
    assert keys["at once"]["value"] == pytest.approx(16.25)
    assert REMARK in keys["at once"]["by"]
    assert keys["settled"]
    assert keys["after"]["document"] == pytest.approx(16.25)
    assert REMARK not in keys["after"]["by"]
    assert keys["focus stays"]


def test_tab_leads_through_everything_in_the_order_of_sight(told):
    assert told["tab order"] == [
        "pocket.depth box", "pocket.depth slider", "pocket.angle box", "pocket.angle slider",
        "plate.thickness box", "plate.thickness slider", "filter", "list", "details",
    ]  # fmt: skip


def test_a_clicked_row_flies_the_camera_there_and_marks_the_label(told):
    seen = told["rows"]
    assert seen["flown"]
    assert seen["height"] == pytest.approx(110)
    middle = [size / 2 for size in seen["size"]]
    assert seen["on screen"] == pytest.approx(middle, abs=3)
    assert seen["picked"] == ["overhang.gap"]
    assert seen["selection"] == ["overhang__gap"]


def test_the_details_tell_cost_mending_and_both_readings(told):
    lines = told["rows"]["details"].splitlines()
    assert lines[0] == "room under the overhang (wanted: 0.15 to 0.80 mm)"
    assert lines[1].startswith("Tightened screws pry")
    assert lines[2].startswith("To mend it: Rout 1.20 mm shallower")
    assert lines[3:] == ["By calculation: -1.05 mm", "Measured on the solids: -1.05 mm"]


@pytest.mark.parametrize("row", ["next", "the one after"])
def test_the_keyboard_goes_on_to_the_next_row(told, row):
    following, picked, current = told["rows"][row]
    assert picked == [following]
    assert current == following


def test_a_label_clicked_in_the_view_selects_its_row(told):
    seen = told["picked in the view"]
    assert seen["under the mouse"] == "overhang__corner_gap"
    assert seen["selection"] == ["overhang__corner_gap"]
    assert seen["row"] == "overhang.corner_gap"
    assert "room under the fretboard beside the pocket" in seen["is selected"]
    assert seen["details"].startswith("room under the fretboard beside the pocket")


def test_each_filter_lists_its_kind_and_says_how_many(told):
    found = {words.rpartition(" (")[0]: states for words, states in told["filters"].items()}
    for words, states in told["filters"].items():
        assert words.endswith(f" ({len(states)})")
    assert set(found["interferes"]) == {"interferes"}
    assert set(found["fits"]) == {"fits"}
    assert set(found["too little, too much"]) <= {"too little", "too much"}
    assert not {"fits", "for information", "not applicable"} & set(found["what matters"])
    parts = [
        states for words, states in found.items() if words not in ("everything", "what matters")
    ]
    assert len(found["everything"]) == sum(map(len, parts))
    assert len(found["everything"]) > 40


def test_ok_keeps_all_as_one_step_of_undo(told):
    seen = told["kept"]
    assert seen["gone"]
    assert seen["after OK"] == seen["changed"] != told["before"]
    assert seen["steps"][1] == ["Fit"]
    assert seen["undone"] == told["before"]
    assert seen["redone"] == seen["after OK"]
    assert seen["marked once undone"] == seen["marked once redone"] == []


def test_signs_and_words_are_those_of_the_annotations(told):
    words = {f"{state.mark} {state.value}" for state in State}
    for _, text in told["opened"]["rows"].values():
        assert text.split(" | ")[0] in words

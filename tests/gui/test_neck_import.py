"""Necks from files imported under a virtual screen, by real dialogs, rows and clicks on faces."""

import json
from pathlib import Path

import pytest

from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.show import compact_length

pytestmark = pytest.mark.gui

FILES = Path(__file__).resolve().parents[1] / "necks" / "files"
MADE = {r["kind"]: r for r in json.loads((FILES / "necks.json").read_text())}
TRUTH = MADE["bound"]["truth"]
STRIP = TRUTH["neck.underside"] - TRUTH["neck.binding"]
"""Height of the binding's lower edge [mm]: what is clicked for the overhang's underside."""


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in FreeCAD's window has seen."""
    return on_screen("neck_import_way")


def mm(value):
    return f"{value:.2f} mm"


def test_no_dialog_tells_of_a_fault(told):
    assert told["dialogs"] == []


def test_what_is_no_neck_is_refused_in_one_sentence_and_changes_nothing(told):
    stick, short, other, empty = told["refused"]["said"]
    assert "is not a neck" in stick
    for sentence in (short, other):
        assert "cannot be read as STEP" in sentence
    assert "is empty" in empty
    for sentence in (stick, short, other, empty):
        assert sentence.endswith(".")
        assert "\n" not in sentence
    assert told["refused"]["changed"] == []
    assert not told["refused"]["open"]


def test_a_document_made_for_a_refused_file_goes_again(told):
    assert "is not a neck" in told["without a document"]["said"]
    assert told["without a document"]["documents"] == 0


def test_a_slow_reading_shows_a_bar_and_can_be_stopped(told):
    stopped = told["stopped"]
    assert stopped["panel"]
    assert stopped["seconds"] < 30
    (words,) = stopped["says"]
    assert "cylinder.step" in words
    assert "reading STEP" in words
    assert stopped["changed"] == []
    assert not stopped["open"]


def test_measures_are_listed_in_inches_where_those_are_preferred(told):
    row, head = told["inches"]
    assert row == [compact_length(TRUTH["neck.heel_width_end"], units=Units.INCH), "SURE"]
    assert head == "± in"


def test_a_document_of_freecad_is_read_without_being_left_open(told):
    made = told["document of FreeCAD"]
    assert made["width"] == [mm(TRUTH["neck.heel_width_end"]), "SURE"]
    assert made["documents"]
    assert made["active"] == "Unnamed"
    assert made["lit"]
    assert made["changed"] == []


def test_while_the_panel_is_open_only_the_neck_is_seen_and_nothing_is_changed(told):
    assert told["cancelled"]["while open"] == []
    assert told["cancelled"]["drawn while open"] == []
    assert told["cancelled"]["lit"] == 2  # the heel's two sides


def test_cancel_leaves_document_view_and_camera_as_they_were(told):
    left = told["cancelled"]
    assert left["turned"]
    assert (left["changed"], left["drawn"], left["camera"], left["open"]) == ([], True, True, False)
    assert left["nodes"] == told["cancelled"]["nodes before"]


def test_what_the_file_leaves_open_is_asked_before_ok(told):
    asked = told["asked"]
    assert asked["first"] == "neck.heel_width_end"
    assert "1 question is open" in asked["says"]
    assert "which of the two does the pocket follow?" in asked["detail"]
    assert asked["after OK"]["open"]
    assert "1 question is open" in asked["after OK"]["says"]
    assert asked["after OK"]["changed"] == []


def test_a_question_is_answered_by_typing_or_by_taking_what_was_recognised(told):
    said, row = told["asked"]["too small"]
    assert "lies below what is permitted" in said
    assert row[1] == "ASKED"
    row, said = told["asked"]["typed"]
    assert row == ["57.15 mm", "HAND"]
    assert "OK puts it into the pocket" in said
    row, said = told["asked"]["accepted"]
    assert row == ["57.04 mm", "HAND"]
    assert told["asked"]["changed"] == []


def test_an_item_that_is_not_found_is_picked_by_hand_before_anything_is_recognised(told):
    wanted = told["wanted"]
    assert "no straight upright side" in wanted["says"]
    assert wanted["row"] == "item heel sides"
    assert wanted["rows"]["item heel sides"] == ["none", "ASKED"]
    assert set(wanted["rows"]) == {r for r in wanted["rows"] if r.startswith("item ")}
    assert wanted["after OK"] == {"open": True, "changed": []}
    assert wanted["sides"] == 2
    first, second = wanted["after"]
    assert "no straight upright side" in first  # the other one
    assert "question" in second  # the heel's edge, which leaning sides leave uneven
    assert wanted["told"]["item heel sides"] == ["2 faces", "HAND"]
    assert wanted["told"]["neck.heel_width_end"][1] == "DOUBTFUL"
    assert wanted["told"]["neck.scale"] == [mm(MADE["bound"]["made"]["scale"]), "SURE"]
    assert wanted["changed"] == []


def test_each_measure_is_listed_with_its_value_and_how_sure_it_is(told):
    rows = told["taken"]["rows"]
    for key, value in TRUTH.items():
        if key in rows and isinstance(value, float):
            shown, standing = rows[key]
            assert float(shown.removesuffix(" mm")) == pytest.approx(value, abs=0.011), key
            assert standing == "SURE", key
    assert rows["neck.scale"] == [mm(MADE["bound"]["made"]["scale"]), "SURE"]
    assert rows["neck.frets"] == ["22", "SURE"]
    assert rows["neck.make"] == ["glued", "LIKELY"]
    assert rows["neck.rod"] == ["headstock", "ABSENT"]


def test_the_mouse_over_a_row_lights_its_faces_up(told):
    assert told["taken"]["pointed"] == [True, []]
    assert told["taken"]["sides"]


def test_a_face_clicked_in_the_view_tells_the_measure_anew(told):
    taken = told["taken"]
    assert taken["found"] == [mm(TRUTH["neck.underside"]), "SURE"]
    assert taken["under the mouse"]
    picked = taken["picked"]
    assert picked["row"] == [mm(STRIP), "HAND"]
    assert picked["item"] == ["1 face", "HAND"]
    assert picked["lit"]
    assert not picked["still picking"]
    assert picked["under"] is None
    row, lit = taken["given back"]
    assert row == taken["found"]
    assert lit == taken["faces found"]


def test_a_face_that_cannot_be_it_is_refused_and_all_stays(told):
    said, row = told["taken"]["no bottom"]
    assert said.startswith("<b>!</b>")
    assert row == ["1 face", "SURE"]


def test_what_the_file_cannot_show_is_chosen_from_a_list(told):
    chosen = told["taken"]["chosen"]
    rod, left = chosen["neck.rod"], chosen["strings.left_handed"]
    assert "unless you choose another below" in rod["detail"]
    assert rod["first"] == "headstock"
    assert set(rod["offered"]) > {"headstock", "heel"}
    assert rod["after"][0][1] == "HAND"
    assert rod["after"][0][0] == rod["after"][1] != "headstock"
    assert left["offered"] == ["yes", "no"]
    assert left["after"] == [["yes", "HAND"], "yes"]
    assert rod["can"]
    assert left["can"]
    assert not rod["field"]
    assert chosen["field again"] == [True, False]
    assert told["taken"]["accepted"]["left"] is True
    assert told["taken"]["accepted"]["rod"] == rod["after"][1]


def test_ok_seats_and_checks_the_neck_in_one_step(told):
    accepted = told["taken"]["accepted"]
    assert told["taken"]["untouched"]
    assert (accepted["steps"], accepted["count"]) == (["Import a neck"], 1)
    assert accepted["adopts"] == "bound"
    assert accepted["width"] == pytest.approx(TRUTH["neck.heel_width_end"], abs=0.01)
    assert accepted["underside"] == pytest.approx(STRIP, abs=0.01)
    assert accepted["valid"]
    assert accepted["findings"] > 40
    assert not accepted["stale"]
    # The solid itself is judged: its binding hangs into the cover plate.
    assert accepted["judged on solids"] == "interferes"


def test_undo_takes_all_of_it_back_and_redo_brings_it_again(told):
    assert told["taken"]["undone"] == []
    assert told["taken"]["redone"] == []


def test_a_reopened_document_judges_the_same(told):
    again = told["reopened"]
    assert again["adopts"] == "bound"
    assert again["underside"] == pytest.approx(STRIP, abs=0.01)
    assert again["same"] == {}


def test_a_mesh_is_taken_by_its_values(told):
    mesh = told["mesh"]
    assert "triangles only" in mesh["says"]
    assert mesh["lit"] >= 2
    assert mesh["adopts"]
    assert mesh["findings"] > 40


def test_a_view_that_is_closed_meanwhile_hurts_nothing(told):
    closed = told["view closed"]
    assert closed["new views"] == 1
    assert closed["hidden"] == []
    assert closed["back"]
    assert not closed["open"]


def test_the_recorded_line_imports_the_same_neck_again(told):
    again = told["replayed"]
    assert "picks={'underside': [" in again["line"]
    assert again["underside"] == pytest.approx(STRIP, abs=0.01)
    assert again["adopts"] == "bound"
    assert again["valid"]

"""The shop's commands under a virtual screen."""

import re

import pytest

from freecad_neckfit.sheets.package import CONTENTS, FILES

pytestmark = pytest.mark.gui


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in FreeCAD's window has seen."""
    return on_screen("shop_package")


def test_both_commands_are_there(told):
    assert told["possible"] == [True, True]


def test_the_package_is_written_whole_with_pictures_of_the_view(told):
    seen = told["package"]
    assert seen["files"] == sorted([*FILES, CONTENTS])
    assert seen["folder"].endswith(" package")
    assert seen["pictures"] == seen["printed pictures"] == seen["different pictures"] == 2
    assert seen["camera kept"]
    assert seen["options"]


def test_folder_cutter_and_units_are_asked(told):
    asks = told["package"]["asks"]
    assert asks["folder"].endswith(f"/{told['package']['folder']}")
    assert (asks["bit"], asks["bush"], asks["units"]) == ("6.35 mm", "", "millimetres")


def test_a_cutter_that_does_not_do_is_refused_in_one_sentence(told):
    said, is_written = told["package"]["refused"]
    assert said.startswith("bush: 4.76 mm is no larger than the bit of 6.35 mm")
    assert not is_written
    assert told["package"]["nowhere"].startswith("No folder is named")


def test_the_sheets_have_the_cutter_and_the_units_asked_for(told):
    seen = told["package"]
    assert "bit 5.00 mm in a guide bush 17.00 mm" in seen["contents"]
    assert seen["in inches"] == ["0.1969 in", "0.6693 in"]
    assert "bit 0.197 in in a guide bush 0.669 in" in seen["inch contents"]
    assert re.search(r"units +inch", seen["inch contents"])


def test_it_stays_said_where_the_package_is_with_a_link_to_it(told):
    seen = told["package"]
    text, is_shown = seen["written"]
    assert is_shown
    assert f'href="{seen["link"]}"' in text
    assert seen["links open"]
    assert seen["in the report"]


def test_a_warning_stands_there_where_the_joint_does_not_fit_or_changed(told):
    seen = {name: told["package"][name]["warning"] for name in (
        "asks", "fitting", "stale", "stale once written", "not fitting")}  # fmt: skip
    assert "has not been checked yet" in seen["asks"]
    assert seen["fitting"] == ""
    assert "changed since its last check" in seen["stale"]
    assert "does not fit" in seen["stale once written"]
    assert "does not fit" in seen["not fitting"]


def test_the_cutter_used_last_is_proposed(told):
    assert told["package"]["fitting"]["bit"] == "5.00 mm"
    assert told["package"]["fitting"]["bush"] == "17.00 mm"


def test_the_drawing_carries_the_documents_own_limits(told):
    assert "15.50 +0.03/-0.07" in told["package"]["drawing"]


def test_a_former_package_goes_only_if_the_designer_says_so(told):
    assert told["package"]["kept when refused"]
    assert told["package"]["replaced when wanted"]
    assert told["package"]["undo steps"] == 0


def test_the_drawings_page_is_opened(told):
    assert any("NeckFitDrawing" in title for title in told["page"]["open"])


def test_the_whole_page_is_seen_with_nothing_over_its_dimensions(told):
    assert told["page"]["whole page in sight"]
    assert not told["page"]["frames"]


def test_the_page_reads_what_was_stated_and_follows_an_edit(told):
    seen = told["page"]
    assert seen["values"]["pocket.depth"] == pytest.approx(15.5, abs=1e-4)
    assert seen["values"]["pocket.width_end"] == pytest.approx(56.2, abs=1e-4)
    assert seen["undo steps"] == 1
    assert seen["depth after edit"] == pytest.approx(15.7, abs=1e-4)
    assert seen["objects gone after undo"] >= 0

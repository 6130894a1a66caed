"""The shop's commands under a virtual screen."""

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

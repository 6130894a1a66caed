"""The annotations in FreeCAD's own 3D view, under a virtual screen: values of their Coin nodes."""

from itertools import combinations

import pytest

from freecad_neckfit.gui.annotations import palette
from freecad_neckfit.gui.annotations.boxes import Box
from freecad_neckfit.run.finding import State

VIEWS = ("Isometric", "Top", "Front", "Right")

pytestmark = pytest.mark.gui


@pytest.fixture(scope="module")
def told(on_screen):
    """What the script in the 3D view has seen."""
    return on_screen("annotated_check")


def box(label):
    return Box(**label["box"])


def test_a_label_says_state_value_and_what_it_is_about(told):
    label = told["views"]["Front"]["labels"]["overhang.gap"]
    assert label["text"].splitlines() == [
        "X interferes by 1.55 mm", "room under the overhang", "wanted: 0.15 to 0.80 mm",
    ]  # fmt: skip
    assert label["colour"] == pytest.approx(palette.VERMILLION, abs=1e-6)
    assert label["pattern"] == palette.SOLID
    assert told["headline"].startswith("DOES NOT FIT\n")


@pytest.mark.parametrize("view", VIEWS)
def test_the_leader_ends_at_the_place_itself(told, view):
    ends = told["views"][view]["labels"]["overhang.gap"]["leader"]
    x, _, z = ends[1]
    # The underside of the overhang, in the plan between pocket end and fretboard end.
    assert z == pytest.approx(18.6 - 17.5, abs=1e-4)
    assert 0 <= x <= 12


@pytest.mark.parametrize("view", VIEWS)
def test_no_label_covers_another_and_all_are_in_the_view(told, view):
    seen = told["views"][view]
    shown = [box(label) for label in seen["labels"].values() if label["is_shown"]]
    assert len(shown) >= 8
    for one, other in combinations(shown, 2):
        assert not one.overlaps(other)
    for one in shown:
        assert one.x >= 0
        assert one.y >= 0
        assert one.right <= seen["size"][0]
        assert one.top <= seen["size"][1]


@pytest.mark.parametrize("view", VIEWS)
def test_the_mouse_finds_the_finding_under_each_label(told, view):
    under = told["views"][view]["under the mouse"]
    assert under
    for finding, (name, element) in under.items():
        assert (name, element) == ("Check", finding.replace(".", "__"))


def test_only_what_matters_has_a_label(told):
    labels = told["views"]["Top"]["labels"]
    words = {label["text"].splitlines()[0].split(" ", 1)[0] for label in labels.values()}
    marks = {s.mark for s in State if s not in (State.FITS, State.TELLS, State.ABSENT)}
    assert "X" in words
    assert words <= marks


def test_labels_do_not_push_the_camera_back(told):
    first, *later = told["fit all"]
    assert later == pytest.approx([first] * len(later), rel=1e-3)


def test_text_grows_with_a_picture_for_print_and_comes_back(told):
    screen = told["views"]["Isometric"]["labels"]["overhang.gap"]
    printed = told["print"]["labels"]["overhang.gap"]
    assert told["print"]["size"] == [3000, 2000]
    assert box(printed).width > 2 * box(screen).width
    assert told["print"]["head"] == pytest.approx(palette.VERMILLION, abs=0.02)
    again = told["on the screen again"]["overhang.gap"]["box"]
    assert again == pytest.approx(screen["box"], abs=0.5)


def test_toggles_hide_what_they_name(told):
    left, corners = told["without interference"]
    assert "overhang.gap" not in left
    assert left
    assert (told["clash corners"], corners) == (8, 0)


def test_the_scale_bar_names_the_deepest_interference(told):
    title, *steps = told["scale bar"].splitlines()
    assert title == "room under the overhang"
    assert steps[-1] == "interferes, up to 1.55 mm"


def test_the_selection_marks_a_label(told):
    assert told["picked"] == ["overhang.gap"]
    assert told["picked after"] == []


def test_stale_labels_are_grey_and_say_so(told):
    for label in told["stale"].values():
        assert label["text"].splitlines()[-1] == "out of date"
        assert label["colour"] == pytest.approx(palette.look_of(State.FITS, stale=True).fill)
        assert label["pattern"] == palette.DOTTED
    assert told["stale headline"].startswith("DOES NOT FIT")


def test_annotations_follow_a_joint_that_is_moved(told):
    assert told["moved"]["laid out"] == pytest.approx(told["moved"]["projected"], abs=2)


def test_views_that_rest_are_not_drawn_again_and_again(told):
    redraws, views = told["redraws of two resting views"]
    assert views == 2
    assert redraws <= 4


def test_a_reopened_document_shows_the_same(told):
    before = told["views"]["Isometric"]["labels"]
    assert {i: label["text"] for i, label in told["reopened"].items()} == {
        i: label["text"] for i, label in before.items()
    }
    for finding, label in told["reopened"].items():
        assert label["colour"] == before[finding]["colour"]
        assert label["leader"][1:] == before[finding]["leader"][1:]
    assert told["reopened clash corners"] == 8

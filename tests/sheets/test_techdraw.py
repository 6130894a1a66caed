import math

import pytest

pytest.importorskip("FreeCAD")

import FreeCAD

from freecad_neckfit.job.errors import KernelFailure
from freecad_neckfit.sheets.drawing import draw
from freecad_neckfit.sheets.joint import Misprint
from freecad_neckfit.sheets.paper import A3, ANSI_B, Title
from freecad_neckfit.sheets.techdraw import (
    PAGE,
    PREFIX,
    add_page,
    check_page,
    raw_values,
    remove_page,
)
from freecad_neckfit.sheets.techdraw_layout import figures_at, layout_of
from freecad_neckfit.sheets.techdraw_sheet import FIELDS, sheet_file, sheet_svg
from tests.random_jobs import draw as draw_job
from tests.sheets.shop import joint_of, round_of_joints, sample

pytestmark = pytest.mark.freecad


@pytest.fixture
def document():
    made = FreeCAD.newDocument("drawing")
    name = made.Name
    yield made
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


def drawing_of(joint, paper=A3):
    return draw(joint, paper, title=Title(owner="A shop", revision="C"))


def agrees(document, drawing):
    values = raw_values(document)
    sizes = {p.what.key: p.what.value for v in drawing.views for p in v.placed}
    # Left out are only an angle of none, and rooms of none.
    assert set(values) == {key for key, size in sizes.items() if abs(size) > 1e-3}
    for key, value in values.items():
        assert value == pytest.approx(abs(sizes[key]), abs=1e-4), key


@pytest.mark.parametrize("paper", [A3, ANSI_B], ids=lambda p: p.name)
def test_every_dimension_reads_what_the_drawing_says(document, paper):
    drawing = drawing_of(sample(), paper)
    page = add_page(document, drawing)
    assert page.Name == PAGE
    # Four views with their titles, the notes, and the dimensions.
    assert len(page.Views) == 4 + 4 + 1 + len(raw_values(document))
    agrees(document, drawing)


def test_it_still_does_after_an_edit(document):
    add_page(document, drawing_of(sample()))
    count = len(document.Objects)
    deeper = drawing_of(
        joint_of({**sample().job.stated, "pocket.depth": 16.2, "pocket.angle": 1.0})
    )
    with pytest.raises(Misprint, match=r"reads|missing"):
        check_page(document, deeper)
    add_page(document, deeper)
    agrees(document, deeper)
    assert raw_values(document)["pocket.angle"] == pytest.approx(1.0, abs=1e-4)
    assert len(document.Objects) == count + 1  # the angle


def test_it_still_does_after_saving_and_opening(document, tmp_path):
    drawing = drawing_of(sample())
    add_page(document, drawing)
    path = tmp_path / "drawing.FCStd"
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)
    opened = FreeCAD.openDocument(str(path))
    try:
        opened.recompute()
        check_page(opened, drawing)
        agrees(opened, drawing)
        add_page(opened, drawing)
        agrees(opened, drawing)
    finally:
        FreeCAD.closeDocument(opened.Name)


@pytest.mark.parametrize("seed", [1, 2, 4, 6, 9, 19])
def test_any_joint_can_be_drawn(document, seed):
    drawing = drawing_of(joint_of(draw_job(seed)[0]))
    add_page(document, drawing)
    agrees(document, drawing)


def test_nothing_is_left_of_a_page_that_fails(document, monkeypatch):
    def fail(*_):
        raise KernelFailure("no")

    monkeypatch.setattr("freecad_neckfit.sheets.techdraw.check_page", fail)
    kept = document.addObject("Part::Feature", "mine")
    with pytest.raises(KernelFailure):
        add_page(document, drawing_of(sample()))
    assert [o.Name for o in document.Objects] == [kept.Name]


def test_removing_leaves_the_designers_own_objects(document):
    kept = document.addObject("Part::Feature", "mine")
    add_page(document, drawing_of(sample()))
    remove_page(document)
    assert [o.Name for o in document.Objects] == [kept.Name]


def test_the_title_block_can_be_edited(document):
    add_page(document, drawing_of(sample()))
    texts = document.getObject(f"{PREFIX}template").EditableTexts
    assert set(texts) == set(FIELDS)
    assert texts["owner"] == "A shop"
    assert texts["title"] == sample().name


@pytest.mark.parametrize("paper", [A3, ANSI_B], ids=lambda p: p.name)
def test_the_sheets_file_is_what_this_room_draws(paper):
    assert sheet_file(paper).read_text(encoding="utf-8") == sheet_svg(paper)


def figures(document):
    return {o.Label2: o for o in document.Objects if o.Name.startswith(f"{PREFIX}size_")}


def test_small_figures_are_printed_in_millimetres_on_every_freecad(document):
    """FreeCAD 1.1 prints what is below 0.1 mm in micrometres, without naming them."""
    joint = joint_of({**sample().job.stated, "pocket.width_end": 56.1, "pocket.width_mouth": 55.6})
    add_page(document, drawing_of(joint))
    found = figures(document)
    assert raw_values(document)["side_treble"] == pytest.approx(0.05, abs=0.001)
    assert found["side_treble"].Arbitrary
    assert found["side_treble"].FormatSpec == "0.05 [0.05 to 0.25] treble"
    assert not found["pocket.depth"].Arbitrary
    assert found["pocket.depth"].FormatSpecOverTolerance == "+0.10"


def test_interference_keeps_its_sign_and_warns(document):
    add_page(document, drawing_of(sample("deeper pocket with plate")))
    assert figures(document)["overhang_gap"].FormatSpec == "-%.2f [0.15 to 0.80]"
    notes = document.getObject(f"{PREFIX}notes").Text
    assert notes[0] == "NOT FOR THE SHOP: this joint does not fit; see the report."


def test_no_two_figures_stand_in_one_place(document):
    """Beside each other at least as far as one row, whatever letters a version uses."""
    for name in ("sample", "bass", "left-handed", "round-ended", "angled"):
        for paper in (A3, ANSI_B):
            drawing = drawing_of(round_of_joints(name), paper)
            layout = layout_of(drawing)
            spots = []
            for view in drawing.views:
                stand = layout.stands[view.name]
                for placed, (x, y) in figures_at(view, stand):
                    spot = stand.origin[0] + x, stand.origin[1] + y
                    assert paper.low[0] < spot[0] < paper.high[0], placed.what.key
                    assert paper.low[1] < spot[1] < paper.high[1], placed.what.key
                    spots.append(spot)
            apart = [math.dist(a, b) for i, a in enumerate(spots) for b in spots[:i]]
            assert min(apart) > 5.0

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
from freecad_neckfit.sheets.techdraw_sheet import FIELDS, sheet_file, sheet_svg
from tests.random_jobs import draw as draw_job
from tests.sheets.shop import joint_of, sample

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

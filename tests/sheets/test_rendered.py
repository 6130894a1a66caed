"""Drawings as a PDF reader shows them: whole, legible, nothing over anything else."""

from functools import cache

import pytest

pytest.importorskip("FreeCAD")
pytest.importorskip("pypdfium2", reason="tests/run installs it")

import numpy as np

from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets.cutter import chosen
from freecad_neckfit.sheets.drawing import draw, page_of
from freecad_neckfit.sheets.flow import A4, LETTER
from freecad_neckfit.sheets.package import Extras
from freecad_neckfit.sheets.paper import A3, ANSI_B, Title
from freecad_neckfit.sheets.pdf import pdf
from freecad_neckfit.sheets.report.content import report_of
from freecad_neckfit.sheets.report.decided import decided_sections
from freecad_neckfit.sheets.report.pages import report_pages
from freecad_neckfit.sheets.report.pictures import drawn_pictures
from freecad_neckfit.sheets.setup import setup_pages
from tests.sheets.rendered import seen
from tests.sheets.shop import NAMES, round_of_joints, sample

pytestmark = pytest.mark.freecad
SHEETS = {"A3": (A3, Units.MM, A4), "ANSI B": (ANSI_B, Units.INCH, LETTER)}
TITLE = Title(
    owner="A shop that makes bodies and necks", number="N-0007", revision="B", date="1 March",
    creator="somebody with a name", approver="somebody else",
)  # fmt: skip
ISO_WIDTHS = (0.25, 0.35, 0.5)
LEAST = 2.5
HAIR = 0.1
"""How near [mm] boxes of glyphs may come to each other's, and a line to them."""


@cache
def drawn(name, sheet):
    paper, units, _ = SHEETS[sheet]
    joint = round_of_joints(name, units)
    drawing = draw(joint, paper, title=TITLE)
    (page,) = seen(pdf([page_of(drawing)]))
    return drawing, page


@pytest.fixture(params=SHEETS)
def sheet(request):
    return request.param


@pytest.fixture(params=NAMES)
def name(request):
    return request.param


def test_the_paper_has_its_size(name, sheet):
    paper = SHEETS[sheet][0]
    assert drawn(name, sheet)[1].size == pytest.approx((paper.width, paper.height), abs=0.01)


def meeting(texts):
    """Pairs of texts whose boxes share more than a hair."""
    return [
        (a.words, b.words)
        for i, a in enumerate(texts)
        for b in texts[:i]
        if min(a.box[2], b.box[2]) - max(a.box[0], b.box[0]) > -HAIR
        and min(a.box[3], b.box[3]) - max(a.box[1], b.box[1]) > -HAIR
    ]


def test_no_two_texts_meet(name, sheet):
    texts = [t for t in drawn(name, sheet)[1].texts if t.words.strip()]
    assert len(texts) > 40
    assert meeting(texts) == []


def test_no_line_runs_through_a_text(name, sheet):
    page = drawn(name, sheet)[1]
    # Every line as points much closer to each other than any letter is wide.
    along = np.vstack([_steps(line.points) for line in page.lines])
    crossed = [
        text.words
        for text in page.texts
        if text.words.strip()
        and ((along > text.box[:2]) & (along < text.box[2:])).all(axis=1).any()
    ]
    assert crossed == []


def _steps(points):
    runs = np.hypot(*np.diff(points, axis=0).T)
    length = np.concatenate([[0.0], np.cumsum(runs)])
    at = np.linspace(0.0, length[-1], int(length[-1] / 0.2) + 2)
    return np.column_stack([np.interp(at, length, axis) for axis in points.T])


def test_texts_are_tall_enough_and_within_the_frame(name, sheet):
    paper = SHEETS[sheet][0]
    for text in drawn(name, sheet)[1].texts:
        assert text.height >= LEAST - 1e-3, text.words
        x0, y0, x1, y1 = text.box
        assert paper.low[0] < x0, text.words
        assert paper.low[1] < y0, text.words
        assert x1 < paper.high[0], text.words
        assert y1 < paper.high[1], text.words


def test_lines_have_the_widths_of_the_standard(name, sheet):
    widths = {round(line.width, 3) for line in drawn(name, sheet)[1].lines}
    assert widths == set(ISO_WIDTHS)


def test_nothing_but_centring_marks_lies_outside_the_frame(name, sheet):
    paper = SHEETS[sheet][0]
    page = drawn(name, sheet)[1]
    dark = np.argwhere(page.ink > 0.2) * page.step
    y, x = paper.height - dark[:, 0], dark[:, 1]
    spare = 0.5
    outside = (
        (x < paper.low[0] - spare) | (x > paper.high[0] + spare)
        | (y < paper.low[1] - spare) | (y > paper.high[1] + spare)
    )  # fmt: skip
    marks = (np.abs(x - paper.width / 2) < spare) | (np.abs(y - paper.height / 2) < spare)
    assert not (outside & ~marks).any()
    assert (outside & marks).any()


def test_every_dimension_is_read_by_another_program(name, sheet):
    drawing, page = drawn(name, sheet)
    words = [t.words.strip() for t in page.texts]
    for view in drawing.views:
        for placed in view.placed:
            assert placed.what.text(drawing.joint.units) in words


def test_set_up_sheet_and_report_are_whole(name, sheet):
    _, units, text_paper = SHEETS[sheet]
    joint = round_of_joints(name, units)
    cutter = chosen(joint.pocket, bit=None, bush=None, units=units)
    pages = seen(pdf(setup_pages(joint, cutter, text_paper)))
    assert len(pages) == 1
    pictures = drawn_pictures(drawn(name, sheet)[0])
    report = report_of(joint, pictures=pictures, more=Extras().sections)
    pages += seen(pdf(report_pages(report, text_paper)))
    for page in pages:
        assert page.size == pytest.approx((text_paper.width, text_paper.height), abs=0.01)
        for text in page.texts:
            x0, y0, x1, y1 = text.box
            margin = text_paper.margin
            assert margin - 0.5 < x0, text.words
            assert x1 < text_paper.width - margin + 0.5, text.words
            assert y0 > 5, text.words
            assert y1 < text_paper.height - 5, text.words
            assert text.height >= LEAST - 1e-3, text.words


@cache
def charted(sheet, option):
    """The report of a sample joint with all its charts."""
    _, units, text_paper = SHEETS[sheet]
    joint = sample(option, units)
    pictures = drawn_pictures(draw(joint, SHEETS[sheet][0], title=TITLE))
    report = report_of(joint, pictures=pictures, more=decided_sections(joint))
    return seen(pdf(report_pages(report, text_paper)))


@pytest.mark.parametrize("option", [None, "deeper pocket with plate"])
def test_charts_in_the_report_are_legible_on_paper(sheet, option):
    paper = SHEETS[sheet][2]
    texts = [text for page in charted(sheet, option) for text in page.texts]
    said = " ".join(text.words for text in texts)
    for words in ("What bounds it", "joints drawn", "when cut"):
        assert words in said
    for text in texts:
        assert text.height >= LEAST - 1e-3, (text.words, text.height)
        assert text.box[0] > paper.margin - 0.5, text.words
        assert text.box[2] < paper.width - paper.margin + 0.5, text.words
        assert text.box[1] > 5, text.words


@pytest.mark.parametrize("option", [None, "deeper pocket with plate"])
def test_no_two_texts_of_the_report_meet(sheet, option):
    for page in charted(sheet, option):
        boxes = [t for t in page.texts if t.words.strip()]
        assert meeting(boxes) == []

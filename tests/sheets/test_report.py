import re
from dataclasses import replace
from html.parser import HTMLParser

import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.words import name_of
from freecad_neckfit.sheets.drawing import draw
from freecad_neckfit.sheets.flow import A4, LETTER
from freecad_neckfit.sheets.paper import A3, Title
from freecad_neckfit.sheets.report.blocks import Columns, blocks
from freecad_neckfit.sheets.report.content import reason, report_of
from freecad_neckfit.sheets.report.decided import decided_sections
from freecad_neckfit.sheets.report.html import html
from freecad_neckfit.sheets.report.pages import report_pages
from freecad_neckfit.sheets.report.parts import Picture, Section
from freecad_neckfit.sheets.report.pictures import drawn_pictures
from tests.sheets.shop import joint_of, sample

pytestmark = pytest.mark.freecad
UNFIT = "deeper pocket with plate"


def report(joint, **more):
    pictures = drawn_pictures(draw(joint, A3, title=Title()))
    return report_of(joint, pictures=more.pop("pictures", pictures), **more)


class Tags(HTMLParser):
    """Checks that tags are closed in order, and keeps what was met."""

    VOID = ("meta", "img", "col")

    def __init__(self):
        super().__init__()
        self.open, self.met, self.attributes = [], [], []

    def handle_starttag(self, tag, attrs):
        self.met.append(tag)
        self.attributes += attrs
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.met.append(tag)
        self.attributes += attrs

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


def tags_of(text):
    parser = Tags()
    parser.feed(text)
    assert not parser.open
    return parser


def test_the_reason_says_which_way_a_demand_is_missed():
    wide, tight = sample("usual depth, no plate"), sample(UNFIT)
    assert "too much by" in reason(wide.result, wide.units)
    assert "short" not in reason(wide.result, wide.units)
    assert "interferes" in reason(tight.result, tight.units)
    assert "mm short" in reason(tight.result, tight.units)


def test_the_verdict_comes_first():
    text = html(report(sample(UNFIT)))
    body = text[text.index("<main>") :]
    assert body.index("Does not fit") < body.index("<svg") < body.index("Findings")
    assert "pry" in body


def test_it_needs_nothing_from_outside():
    tags = tags_of(html(report(sample())))
    assert not {"script", "link", "iframe", "object"} & set(tags.met)
    sources = [v for k, v in tags.attributes if k in ("src", "href")]
    assert not sources


def test_what_the_user_typed_is_escaped():
    name = '<script>alert("x")</script> & co'
    joint = joint_of({"pocket.depth": 15.5}, name=name)
    section = Section("<i>", words=["<b>"], pictures=[Picture('"><x>', png=b"abc")])
    text = html(report(joint, more=[section]))
    tags = tags_of(text)
    assert "script" not in tags.met
    assert not {"i", "b", "x"} & set(tags.met)
    assert "&lt;script&gt;" in text


def test_every_parameter_has_its_origin():
    joint = sample()
    text = html(report(joint))
    assert "Stated in joint.toml" in text
    assert "Stated in neck-22.toml" in text
    assert "From memory; set your own" in text
    assert "Common practice, no source" in html(report(joint_of({})))
    for words in ("Pocket depth", "Limits gap min", "Screw x", "Wood body"):
        assert f">{words}</td>" in text
    every = [f">{name_of(key).capitalize()}</td>" for key in ALL if not key.startswith("job.")]
    assert [words for words in every if words.lower() not in text.lower()] == []


def test_parameters_are_called_by_their_names_and_not_by_their_keys():
    text = html(report(sample()))
    assert not re.search(r">[a-z_]+\.[a-z_]+</td>", text)
    words = {w.text for page in report_pages(report(sample()), A4) for w in page.words}
    assert words >= {"Pocket depth", "15.50 mm, ±0.10 mm", "Stated in joint.toml"}
    assert not words & set(ALL)


def test_the_numbers_take_four_pages_at_most():
    short = report_of(sample(), pictures=[])
    listed = tuple(s for s in short.sections if s.title == "Every number and its origin")
    numbers = replace(short, sections=listed)
    for sheet in (A4, LETTER):
        assert len(report_pages(numbers, sheet)) <= 4


def test_the_failures_are_those_of_the_window():
    from freecad_neckfit.decide.tolerances.dimension import dimensions
    from freecad_neckfit.decide.tolerances.report import percent
    from freecad_neckfit.decide.tolerances.study import study

    job = sample().job
    # What the window draws at first: see its list of draws.
    seen = study(job.stated, dimensions(job), wish=0.01, draws=100_000).simulation
    told = next(s for s in decided_sections(sample()) if s.title == "Tolerances")
    assert f"{percent(seen.share)} of joints fail" in told.lines[0]
    assert "100,000 draws, seed 1" in told.lines[0]


def test_pictures_of_the_screen_are_held_within():
    text = html(report(sample(), pictures=[Picture("the joint", png=b"\x89PNG\r\n")]))
    assert 'src="data:image/png;base64,iVBORw0K"' in text
    assert 'alt="the joint"' in text


@pytest.mark.parametrize("sheet", [A4, LETTER], ids=lambda s: s.name)
@pytest.mark.parametrize("option", [None, UNFIT])
def test_the_pages_hold_all_within_their_margins(option, sheet):
    from freecad_neckfit.sheets.helvetica import width

    pages = report_pages(report(sample(option)), sheet)
    assert len(pages) > 2
    for page in pages:
        for words in page.words:
            if words.anchor == "start" and not words.turn:
                right = words.at[0] + width(words.text, height=words.height, bold=words.bold)
                assert right <= sheet.width - sheet.margin + 0.5
                assert 5 < words.at[1] < sheet.height - 5
    first = [w.text for w in pages[0].words[:3]]
    assert first[1] == ("Fits" if option is None else "Does not fit")


def test_a_whole_parts_interference_is_told_with_what_it_follows_from():
    (told,) = (s for s in report(sample(UNFIT)).sections if s.title == "Findings")
    clash = next(u for u in told.unmet if u.title == "Interference of neck and cover plate")
    assert clash.figures == "-2.22 mm; none is wanted"
    assert clash.consequence.startswith('The same interference as in "room under the overhang"')


@pytest.mark.parametrize("units", Units)
def test_the_tolerances_keep_their_columns(units):
    told = next(s for s in decided_sections(sample(UNFIT, units)) if s.title == "Tolerances")
    tables = [b for b in blocks(told.lines) if isinstance(b, Columns)]
    assert tables[0].head == ("demand", "fails", "middle", "RSS", "worst")
    assert len(tables[0].rows) >= 5

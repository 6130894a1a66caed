import re
from html.parser import HTMLParser

import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.sheets.drawing import draw
from freecad_neckfit.sheets.flow import A4, LETTER
from freecad_neckfit.sheets.paper import A3, Title
from freecad_neckfit.sheets.report.content import Picture, Section, reason, report_of
from freecad_neckfit.sheets.report.html import html
from freecad_neckfit.sheets.report.pages import report_pages
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
    assert "stated in joint.toml" in text
    assert "stated in neck-22.toml" in text
    assert "from memory; set your own" in text
    assert "common practice, no source" in html(report(joint_of({})))
    for key in ("pocket.depth", "limits.gap_min", "screw.x", "wood.body"):
        assert re.search(rf">{re.escape(key)}</td>", text)


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

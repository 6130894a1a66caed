"""The report as a browser shows it: on a desk, on a phone, on paper."""

import importlib.resources
import importlib.util
import re

import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.job.read import read_job
from freecad_neckfit.sheets.drawing import draw
from freecad_neckfit.sheets.package import Extras
from freecad_neckfit.sheets.paper import A3, Title
from freecad_neckfit.sheets.prepare import extras_of
from freecad_neckfit.sheets.report.content import report_of
from freecad_neckfit.sheets.report.html import html
from freecad_neckfit.sheets.report.pictures import drawn_pictures
from tests.sheets.browser import browser, tab
from tests.sheets.shop import SAMPLE, sample

pytestmark = [
    pytest.mark.freecad,
    pytest.mark.skipif(browser() is None, reason="no Chromium: tests/run installs it on the host"),
]
UNFIT = "deeper pocket with plate"
DESK, PHONE = 1280, 375
SERIOUS = ("serious", "critical")


def axe():
    """The source of the library that finds what shuts readers out."""
    if importlib.util.find_spec("axe_core_python") is None:
        pytest.skip("axe-core-python is not installed: tests/run installs it")
    return importlib.resources.files("axe_core_python").joinpath("axe.min.js").read_text()


@pytest.fixture(scope="module")
def files(tmp_path_factory):
    folder = tmp_path_factory.mktemp("report")
    written = {}
    for option in (None, UNFIT):
        joint = sample(option)
        extras: Extras = extras_of(read_job(SAMPLE), joint)
        pictures = drawn_pictures(draw(joint, A3, title=Title()))
        report = report_of(joint, pictures=pictures, options=extras.options, more=extras.sections)
        written[option] = folder / f"{len(written)}.html"
        written[option].write_text(html(report), encoding="utf-8")
    return written


@pytest.fixture(scope="module")
def page():
    with tab() as opened:
        yield opened


@pytest.fixture(params=[None, UNFIT], ids=["fits", "does not fit"])
def report(request, files, page):
    """The page with a report in it, and what it said and fetched since it was opened."""
    page.told.clear()
    page.fetched.clear()
    page.open(files[request.param].as_uri())
    return page


@pytest.mark.parametrize("wide", [DESK, PHONE])
def test_it_shows_whole_without_a_word_from_the_console(report, wide):
    report.width(wide, phone=wide == PHONE)
    shown, needed = report.run(
        "[document.documentElement.clientWidth, document.documentElement.scrollWidth]"
    )
    assert wide - 20 < shown <= wide  # a desk's scroll bar takes its share
    assert needed <= shown
    assert report.told == []
    assert all(url.startswith(("file:", "data:")) for url in report.fetched)
    # Nothing sticks out of its own column; wide pictures move within their frame.
    out = report.run(
        "[...document.querySelectorAll('main *')].filter(e => !e.closest('.wide, thead') && "
        "e.getBoundingClientRect().right > innerWidth + 1).map(e => e.outerHTML.slice(0, 90))"
    )
    assert out == []


@pytest.mark.parametrize("wide", [DESK, PHONE])
def test_nothing_serious_shuts_a_reader_out(report, wide):
    report.width(wide, phone=wide == PHONE)
    report.run(axe() + "; null")
    found = report.run("axe.run().then(r => ({passes: r.passes.length, faults: r.violations}))")
    assert found["passes"] > 10
    faults = [(f["id"], f["impact"], f["help"]) for f in found["faults"]]
    assert [fault for fault in faults if fault[1] in SERIOUS] == []


def test_the_watch_for_faults_sees_one(report):
    report.run("document.querySelector('img').removeAttribute('alt'); null")
    report.run(axe() + "; null")
    found = report.run("axe.run().then(r => r.violations.map(f => f.id))")
    assert "image-alt" in found
    report.run("console.error('planted'); document.body.style.minWidth = '3000px'; null")
    assert any("planted" in words for words in report.told)
    assert report.run("document.documentElement.scrollWidth") >= 3000


def test_a_phone_shows_text_large_enough_to_read(report):
    report.width(PHONE, phone=True)
    small = report.run(
        "Math.min(...[...document.querySelectorAll('main p, main td, main h2, main h3')]"
        ".map(e => parseFloat(getComputedStyle(e).fontSize)))"
    )
    assert small >= 13
    assert report.run("document.querySelector('.wide svg').getBoundingClientRect().width") > 500


@pytest.mark.parametrize(("wide", "high"), [(8.27, 11.69), (8.5, 11.0)], ids=["A4", "Letter"])
def test_it_prints_on_its_paper(report, wide, high):
    report.width(DESK, phone=False)
    data = report.printed(wide, high)
    boxes = re.findall(rb"/MediaBox \[0 0 ([0-9.]+) ([0-9.]+)\]", data)
    assert 5 < len(boxes) < 20
    for x, y in boxes:
        assert float(x) == pytest.approx(wide * 72, abs=1.5)
        assert float(y) == pytest.approx(high * 72, abs=1.5)

"""Options side by side: the verdict first, then what differs and by how much."""

import csv
import io
from html.parser import HTMLParser
from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.decide.options import column, compare
from freecad_neckfit.decide.options_write import as_csv, as_html, as_text
from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import ALL, overhang_gap
from freecad_neckfit.fit.verdict import judge_many
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job
from freecad_neckfit.run.chain import check_values

SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"


@pytest.fixture(scope="module")
def job():
    return read_job(SAMPLE)


@pytest.fixture(scope="module")
def columns(job):
    return [column(joint.name, joint.stated) for joint in (job.base, *job.options)]


@pytest.fixture(scope="module")
def table(columns):
    return compare(columns, units=Units.MM)


def row(table, title):
    return next(r for r in table.rows if r.title == title)


def test_the_first_line_is_the_verdict_and_it_is_that_of_the_full_check(job, columns, table):
    assert table.rows[0].title == "verdict"
    for joint, found, cell in zip((job.base, *job.options), columns, table.rows[0].cells,
                                  strict=True):  # fmt: skip
        fits = bool(judge_many(Case(joint.stated), checks=ALL, count=1).fits[0])
        assert (found.verdict == "fits") is fits
        assert (cell.text == "fits") is fits
        assert cell.unmet is not fits


def test_what_is_unmet_stands_in_the_order_of_the_full_check(job, columns):
    for joint, found in zip((job.base, *job.options), columns, strict=True):
        told = check_values(joint.stated, solids=False).findings
        assert [c.id for c in found.unmet] == [f.id for f in told if f.met is False]
    assert sum(len(found.unmet) > 1 for found in columns) > 3


def test_only_what_differs_is_shown(columns, table):
    titles = {r.title for r in table.rows}
    assert "pocket depth" in titles
    assert "body thickness" not in titles
    assert "side clearance, treble" not in titles
    alone = compare(columns[:1], units=Units.MM)
    assert [r.group for r in alone.rows] == ["verdict", "verdict"]
    twice = compare([columns[0], columns[0]], units=Units.MM)
    assert len(twice.rows) == 2


def test_every_row_shows_a_difference_in_words_that_a_builder_uses(table):
    for each in table.rows:
        if each.group != "verdict":
            assert len({(cell.text, cell.unmet) for cell in each.cells}) > 1, each.title
        assert not {"true", "false"} & {cell.text for cell in each.cells}, each.title
    under = row(table, "plate under overhang").cells
    assert [cell.text for cell in under[:3]] == ["yes", "-", "yes"]
    assert {cell.text for cell in under} == {"yes", "no", "-"}
    # A joint without a plate has no thickness of one.
    assert row(table, "plate thickness").cells[1].text == "-"
    # The plates that there are have one clearance, which is no difference.
    assert "plate clearance" not in {each.title for each in table.rows}


def test_differences_too_small_to_be_seen_are_no_rows(job):
    base = job.base.stated
    near = base | {"pocket.depth": base["pocket.depth"] + 0.0004}
    found = compare([column("one", base), column("other", near)], units=Units.MM)
    assert [each.title for each in found.rows] == ["verdict", "first reason"]


def test_lists_are_told_by_their_values(job):
    base = job.base.stated
    moved = base | {"strings.compensation": [1.0, 1.2, 1.6, 1.4, 2.0, 2.6],
                    "shop.stops": [15.0], "screws.lengths_stocked": [30.0, 35.0, 40.0]}  # fmt: skip
    moved = {k: np.array(v) if isinstance(v, list) else v for k, v in moved.items()}
    found = compare([column("one", base), column("other", moved)], units=Units.MM)
    strings = row(found, "strings compensation").cells
    assert strings[1].text == "1.00 mm, 1.20 mm, 1.60 mm, 1.40 mm, 2.00 mm, 2.60 mm"
    stock = row(found, "screws lengths stocked").cells
    assert [cell.text for cell in stock] == [
        "7 values, 35.00 mm to 55.00 mm", "30.00 mm, 35.00 mm, 40.00 mm",
    ]  # fmt: skip
    # What the shop can set is no difference between joints.
    assert not [each.title for each in found.rows if each.title.startswith("shop")]
    points = [(-60.0, -40.0), (300.0, -120.0), (300.0, 120.0), (-60.0, 40.0)]
    other = [(x, 0.9 * y if x < 0 else y) for x, y in points]
    first, second = (
        base | {"body.outline": "points", "body.outline_points": p} for p in (points, other)
    )
    found = compare([column("one", first), column("other", second)], units=Units.MM)
    outline = row(found, "body outline points").cells
    assert outline[1].text == f"{outline[0].text} (others)"


def test_figures_and_differences_are_those_of_the_checks(job, table):
    gaps = row(table, "room under the overhang").cells
    for joint, cell in zip((job.base, *job.options), gaps, strict=True):
        reading = overhang_gap.CHECK.read(Case(joint.stated))
        if not reading.applies:
            assert cell.text == "-"
            continue
        assert cell.number == pytest.approx(float(reading.value))
        assert cell.change == pytest.approx(cell.number - gaps[0].number)
    depth = row(table, "pocket depth").cells
    assert [c.delta for c in depth[:3]] == ["", "+0.38", "+0.38"]


def test_a_demand_that_is_not_met_is_marked_without_colour(table):
    text = as_text(table, width=100)
    assert text.splitlines()[3].startswith("-----")
    line = next(ln for ln in text.splitlines() if ln.startswith("verdict"))
    assert "fits" in line
    assert "X DOES NOT FIT" in line
    assert max(map(len, text.splitlines())) <= 106


def test_every_option_appears_whatever_the_width(table):
    for width in (40, 80, 120, 400):
        text = as_text(table, width=width)
        assert text.count("verdict") >= 1
        words = set(text.split())
        assert {"hanging", "surround", "bridge,"} & words


class Cells(HTMLParser):
    def __init__(self):
        super().__init__()
        self.rows, self.open = [], []

    def handle_starttag(self, tag, attrs):
        if tag == "tr":
            self.rows.append(0)
        if tag in ("td", "th"):
            self.rows[-1] += int(dict(attrs).get("colspan", 1))
        if tag not in ("meta", "br"):
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


def test_the_page_is_whole_and_every_row_as_wide(table):
    page = as_html(table, title="<Heron> & others")
    found = Cells()
    found.feed(page)
    assert found.open == []
    assert set(found.rows) == {len(table.names) + 1}
    assert "&lt;Heron&gt; &amp; others" in page


def test_the_spreadsheet_holds_numbers(table):
    rows = list(csv.reader(io.StringIO(as_csv(table))))
    assert len({len(r) for r in rows}) == 1
    depth = next(r for r in rows if r[1] == "pocket depth")
    assert depth[2] == "mm"
    assert float(depth[3]) == 15.5
    assert float(depth[5]) == 15.875
    assert float(depth[7]) == pytest.approx(0.375)


def test_inches_are_shown_as_inches(columns):
    text = as_text(compare(columns[:3], units=Units.INCH), width=120)
    assert "0.610 in" in text
    assert "(+0.0148)" in text


@pytest.mark.freecad
def test_columns_judged_on_solids_come_out_alike(job):
    from freecad_neckfit.run.whole import judged_joint

    joints = [job.base, job.options[3]]
    solid = compare([judged_joint(j, units=Units.MM) for j in joints], units=Units.MM)
    closed = compare([column(j.name, j.stated) for j in joints], units=Units.MM)
    assert solid.rows[0] == closed.rows[0]
    gap = "room under the overhang"
    for a, b in zip(row(solid, gap).cells, row(closed, gap).cells, strict=True):
        assert a.number == pytest.approx(b.number, abs=0.005)

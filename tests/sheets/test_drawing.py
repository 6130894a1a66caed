import re

import pytest

pytest.importorskip("FreeCAD")


from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets.drawing import draw, page_of
from freecad_neckfit.sheets.dxf import page_dxf
from freecad_neckfit.sheets.figures import figures_of
from freecad_neckfit.sheets.helvetica import width
from freecad_neckfit.sheets.ink import Pen, Stroke
from freecad_neckfit.sheets.joint import Misprint
from freecad_neckfit.sheets.paper import A3, ANSI_B, Angle, Title
from freecad_neckfit.sheets.pdf import pdf
from freecad_neckfit.sheets.proof import prove
from freecad_neckfit.sheets.svg import svg
from tests.random_jobs import draw as draw_job
from tests.sheets.shop import joint_of, sample

pytestmark = pytest.mark.freecad
SEEDS = range(12)


def files_of(page):
    return {"d.svg": svg(page).encode(), "d.pdf": pdf([page]), "d.dxf": page_dxf(page).encode()}


def proved(joint, paper):
    drawing = draw(joint, paper, title=Title())
    page = page_of(drawing)
    prove(
        files_of(page),
        figures_of(joint.result),
        units=joint.units,
        keys=drawing.dimensions,
        limits=joint.job.tolerances,
    )
    return drawing, page


def box(words):
    long, (x, y) = width(words.text, height=words.height, bold=words.bold), words.at
    back = {"start": 0.0, "middle": long / 2, "end": long}[words.anchor]
    if words.turn:
        return x - words.height, y - back, x, y - back + long
    return x - back, y, x - back + long, y + words.height


def overlap(a, b):
    return min(a[2], b[2]) - max(a[0], b[0]) > 0.05 and min(a[3], b[3]) - max(a[1], b[1]) > 0.05


@pytest.mark.parametrize("units", list(Units))
@pytest.mark.parametrize("paper", [A3, ANSI_B], ids=lambda p: p.name)
def test_the_sample_prints_what_the_solids_measure(paper, units):
    drawing, _ = proved(sample(units=units), paper)
    wanted = {
        "pocket.depth", "depth_mouth", "pocket.angle", "pocket.length", "pocket.width_end",
        "pocket.width_mouth", "pocket.corner_radius", "screws.body_hole", "saddle_treble",
        "saddle_bass", "overhang_gap", "end_gap", "side_treble", "side_bass", "plate.thickness",
        "body.thickness", "neck.overhang",
    }  # fmt: skip
    assert wanted <= set(drawing.dimensions)


@pytest.mark.parametrize("seed", SEEDS)
def test_any_joint_prints_what_the_solids_measure_and_can_be_read(seed):
    joint = joint_of(draw_job(seed)[0], units=list(Units)[seed % 2])
    paper = (A3, ANSI_B)[seed // 2 % 2]
    _, page = proved(joint, paper)
    legible(page, paper)


@pytest.mark.parametrize("paper", [A3, ANSI_B], ids=lambda p: p.name)
def test_the_sample_can_be_read(paper):
    legible(page_of(draw(sample(), paper, title=Title(owner="A shop", number="7"))), paper)


def legible(page, paper):
    words = page.words
    assert min(w.height for w in words) >= 2.5
    boxes = [box(w) for w in words if w.text]
    clashes = [
        (a.text, b.text)
        for i, a in enumerate(words)
        for b in words[:i]
        if a.text and b.text and overlap(box(a), box(b))
    ]
    assert not clashes
    for x0, y0, x1, y1 in boxes:
        assert paper.low[0] < x0 < x1 < paper.high[0]
        assert paper.low[1] < y0 < y1 < paper.high[1]
    pens = {item.pen for item in page.items if isinstance(item, Stroke)} - {Pen.NONE}
    assert {pen.width for pen in pens} <= {0.25, 0.35, 0.5}


@pytest.mark.parametrize("ending", [".svg", ".pdf", ".dxf"])
def test_a_misprint_stops_the_sheet(ending):
    joint = sample()
    drawing = draw(joint, A3, title=Title())
    files = {n: d for n, d in files_of(page_of(drawing)).items() if n.endswith(ending)}
    (name,) = files
    code = "cp1252" if ending == ".pdf" else "utf-8"
    files[name] = files[name].replace("15.50 ±".encode(code), "15.60 ±".encode(code))
    with pytest.raises(Misprint, match=r"pocket\.depth is printed as '15\.60.*measure 15\.5000"):
        prove(
            files,
            figures_of(joint.result),
            units=joint.units,
            keys=(),
            limits=joint.job.tolerances,
        )


def test_a_wrong_limit_stops_the_sheet():
    joint = sample()
    page = page_of(draw(joint, A3, title=Title()))
    limits = {**joint.job.tolerances, "pocket.depth": (-0.2, 0.1)}
    with pytest.raises(Misprint, match="tolerance set"):
        prove(files_of(page), figures_of(joint.result), units=joint.units, keys=(), limits=limits)


def test_a_dimension_left_out_stops_the_sheet():
    joint = sample()
    page = page_of(draw(joint, A3, title=Title()))
    with pytest.raises(Misprint, match="depth_at_noon is not printed"):
        prove(
            files_of(page),
            figures_of(joint.result),
            units=joint.units,
            keys=["depth_at_noon"],
            limits=joint.job.tolerances,
        )


def test_the_figures_are_measured_and_not_copied():
    """A body whose pocket was routed deeper than stated is found out."""
    joint = sample()
    deeper = joint_of({**joint.job.stated, "pocket.depth": 15.8})
    page = page_of(draw(joint, A3, title=Title()))
    with pytest.raises(Misprint, match=r"solids measure 15\.8000"):
        prove(
            {"d.svg": svg(page).encode()},
            figures_of(deeper.result),
            units=joint.units,
            keys=(),
            limits=joint.job.tolerances,
        )


def test_third_angle_puts_the_plan_above_the_section():
    def heights(angle):
        drawing = draw(sample(), A3, title=Title(), angle=angle)
        return {v.name: v.windows[0].at[1] for v in drawing.views}

    first, third = heights(Angle.FIRST), heights(Angle.THIRD)
    assert first["plan"] < first["along"]
    assert third["plan"] > third["along"]


def test_a_joint_that_does_not_fit_says_so_on_its_drawing():
    joint = sample("deeper pocket with plate")
    page = page_of(draw(joint, A3, title=Title()))
    assert any("NOT FOR THE SHOP" in w.text and "does not fit" in w.text for w in page.words)
    fitting = page_of(draw(sample(), A3, title=Title()))
    assert not any("NOT FOR THE SHOP" in w.text for w in fitting.words)


def test_the_drawing_states_scale_units_and_projection():
    page = page_of(draw(sample(), A3, title=Title(owner="<shop>", revision="B")))
    text = [w.text for w in page.words]
    assert {"1:1 (5:1)", "mm", "A3", "ISO 2768-m", "<shop>", "B"} <= set(text)
    assert any(re.search("100 mm long", t) for t in text)
    assert "&lt;shop&gt;" in svg(page)


def test_a_neck_that_nobody_has_triangulated_is_drawn_as_large_as_it_is():
    """The kernel's own bounds of a fretboard with a conical top hold metres of the cone."""
    joint = joint_of(draw_job(4)[0])
    loose, tight = joint.board.copy(False).BoundBox, joint.board_box
    assert tight.ZLength < 10.0 < loose.ZLength
    assert draw(joint, A3, title=Title()).scale == "1:2"

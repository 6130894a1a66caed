import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets.cutter import chosen
from freecad_neckfit.sheets.drawing import draw
from freecad_neckfit.sheets.figures import figures_of
from freecad_neckfit.sheets.flow import A4, LETTER
from freecad_neckfit.sheets.paper import A3, Title
from freecad_neckfit.sheets.pdf import pdf
from freecad_neckfit.sheets.proof import prove
from freecad_neckfit.sheets.setup import setup_pages, steps
from freecad_neckfit.sheets.setup_rows import seated_rows
from tests.random_jobs import draw as draw_job
from tests.sheets.shop import joint_of, sample

pytestmark = pytest.mark.freecad


def pages_of(joint, sheet=A4):
    cutter = chosen(joint.pocket, bit=None, bush=None, units=joint.units)
    return setup_pages(joint, cutter, sheet)


@pytest.mark.parametrize("seed", range(20, 32))
def test_it_is_one_page_that_agrees_with_the_solids(seed):
    joint = joint_of(draw_job(seed)[0], units=list(Units)[seed % 2])
    (page,) = pages_of(joint, (A4, LETTER)[seed % 2])
    prove(
        {"s.pdf": pdf([page])},
        figures_of(joint.result),
        units=joint.units,
        keys=("pocket.depth", "depth_mouth"),
        limits=joint.job.tolerances,
    )


def test_it_says_the_stops_in_order():
    (page,) = pages_of(sample())
    text = " ".join(w.text for w in page.words)
    assert "15.50 mm from the bare top, or 15.75 mm from the finished top" in text
    assert "3 passes: 5.17 mm, 10.33 mm, 15.50 mm" in text
    assert "Screws of 45.00 mm reach 14.05 mm" in text
    assert "depth stop at 15.55 mm" in text
    assert "The rules of your place and licensed practice come first." in text


@pytest.mark.parametrize("units", Units)
def test_it_accepts_the_same_limits_as_the_drawing(units):
    joint = sample(units=units)
    views = draw(joint, A3, title=Title()).views
    drawn = {p.what.key: p.what for v in views for p in v.placed if p.what.accept}
    assert set(drawn) >= {"overhang_gap", "side_treble", "end_gap"}
    for row in seated_rows(joint):
        _, _, low, high, _ = row.cells(units)
        assert f"[{low.text} to {high.text}]" in drawn[row.key].text(units)


def test_a_tilted_floor_and_a_shim_are_told():
    stated = {"pocket.angle": 1.5, "shim.make": "strip", "shim.strip": 0.4}
    words = " ".join(steps(joint_of(stated), None))
    assert "Tilt the router's base by 1.50°, so that it cuts deeper toward the mouth" in words
    assert "strip under it (0.40 mm thick" in words
    wedge = {"shim.make": "wedge", "shim.wall": 0.6, "shim.mouth": 0.1}
    assert "0.60 mm at the end wall, 0.10 mm at the mouth" in " ".join(steps(joint_of(wedge), None))


def test_each_figure_has_a_box_to_write_into():
    (page,) = pages_of(sample())
    boxes = [i for i in page.items if getattr(i, "closed", False) and i.pen.name == "SYMBOL"]
    assert len(boxes) == 13


def test_a_joint_that_does_not_fit_says_so_first():
    (page,) = pages_of(sample("deeper pocket with plate"))
    assert any(w.text.startswith("NOT FOR THE SHOP") for w in page.words[:4])

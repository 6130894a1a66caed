"""The window's picture and its words."""

from pathlib import Path
from xml.etree import ElementTree as ET

import numpy as np
import pytest

from freecad_neckfit.decide.conflicts import find_conflicts
from freecad_neckfit.decide.pictures.crosses import cross_labels
from freecad_neckfit.decide.pictures.shop_marks import named_depths
from freecad_neckfit.decide.pictures.window import draw_window
from freecad_neckfit.decide.pictures.zones import meet
from freecad_neckfit.decide.shop import Steps, sixty_fourths, whole_steps
from freecad_neckfit.decide.window import find_window
from freecad_neckfit.decide.window_text import window_lines, window_record
from freecad_neckfit.fit.case import Case
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.job.read import read_job

SAMPLE = Path(__file__).parents[2] / "samples" / "joint.toml"
TEXT = "{http://www.w3.org/2000/svg}text"


@pytest.fixture(scope="module")
def job():
    return read_job(SAMPLE)


@pytest.fixture(scope="module")
def window(job):
    return find_window(job.base.stated)


def words(svg):
    return " ".join(e.text for e in ET.fromstring(svg).iter(TEXT))


def test_the_picture_names_axes_units_bounds_and_the_joint(window):
    said = words(draw_window(window, name="Heron <&>").svg)
    for word in ("Heron <&>", "pocket depth [mm]", "pocket angle [°]", "as stated", "15.50 mm deep",
                 "usual pocket, 5/8 in", "39/64"):  # fmt: skip
        assert word in said
    assert "saddles cannot go low enough" in said


def test_the_same_window_gives_the_same_bytes(job, window):
    again = find_window(job.base.stated)
    assert draw_window(window, name="a").svg == draw_window(again, name="a").svg


def test_words_stay_on_the_sheet(window):
    root = ET.fromstring(draw_window(window, name="Heron").svg)
    for element in root.iter(TEXT):
        assert 0 <= float(element.get("x")) <= 860
        assert 0 <= float(element.get("y")) <= 560


@pytest.mark.parametrize("tried", [(15.6, 0.1), (15.5, 0.02), (15.42, 0.0), (15.5, -0.1)])
def test_words_of_crosses_and_named_depths_keep_clear_of_each_other(window, tried):
    frame = draw_window(window, name="a").frame
    taken = [box for *_, box in named_depths(frame, Steps(stops=(15.55,)), Units.MM)]
    assert len(taken) == 2
    depths = list(taken)
    cross_labels(frame, [(window.chosen, "as stated"), (tried, "tried")], taken)
    words = taken[:2]
    assert not meet(*words)
    assert not any(meet(box, other) for box in words for other in depths)


def test_a_click_leads_back_to_depth_and_angle(window):
    frame = draw_window(window, name="a").frame
    assert frame.values(frame.place(15.6, 0.3)) == pytest.approx((15.6, 0.3))
    assert frame.holds(*window.chosen)


def test_without_a_window_the_picture_says_so_and_what_is_wrong_where(job):
    stated = next(o for o in job.options if o.name == "high bridge, deeper pocket").stated
    window = find_window(stated)
    said = words(draw_window(window, name="high", conflicts=find_conflicts(window)).svg)
    assert "These exclude one another" in said
    assert "No depth and angle in this range meets every demand." in said
    assert "saddles cannot go low enough" in said


def test_router_stops_are_marked(window):
    steps = Steps(stops=(15.6,))
    assert "router stop 15.6 mm" in words(draw_window(window, name="a", steps=steps).svg)
    said = "\n".join(window_lines(window, name="a", units=Units.MM, steps=steps))
    assert "router stop 15.6 mm" in said


def test_the_picture_counts_in_the_units_of_the_reader(job, window):
    said = words(draw_window(window, name="a", units=Units.INCH).svg)
    assert "pocket depth [in]" in said
    assert "0.610 in deep" in said
    assert " mm" not in said
    plate = find_window(job.base.stated, second="plate")
    said = words(draw_window(plate, name="a", units=Units.INCH).svg)
    assert "cover plate's thickness [in]" in said


@pytest.mark.parametrize(
    ("second", "value", "set_to"), [("angle", 0.13, 0.15), ("shim", 0.33, 0.3), ("plate", 2.1, 2.0)]
)
def test_the_shop_has_a_step_along_each_axis(job, second, value, set_to):
    said = {"shop.step_depth": 0.25, "shop.step_angle": 0.05, "shop.step_shim": 0.15,
            "shop.step_plate": 0.4}  # fmt: skip
    window = find_window(job.base.stated | said, second=second)
    steps = Steps.of(Case(job.base.stated | said).values)
    assert window.y.name == second
    assert steps.nearest(second, value) == pytest.approx(set_to)
    assert steps.nearest("depth", 15.6) == pytest.approx(15.5)
    own = {"angle": "0.05°", "shim": "0.15 mm", "plate": "0.40 mm"}[second]
    said = words(draw_window(window, name="a", steps=steps).svg)
    assert f"steps of the shop, 0.25 mm and {own}" in said


def test_a_shop_with_stops_can_set_these_depths_alone(job):
    values = Case(job.base.stated | {"shop.stops": np.array([17.0, 15.3, 16.1])}).values
    steps = Steps.of(values)
    assert steps.stops == (15.3, 16.1, 17.0)
    assert steps.nearest("depth", 15.8) == 16.1
    assert Steps.of(Case(job.base.stated).values) == Steps()


def test_depths_that_the_shop_can_set():
    assert [m.name for m in sixty_fourths(15.3, 16.0)] == ["39/64 in", "5/8 in"]
    assert sixty_fourths(15.875, 15.875)[0].depth == 15.875
    assert whole_steps(15.35, 15.61, 0.1) == pytest.approx((15.4, 15.5, 15.6))


def test_the_depths_that_work_at_an_angle_are_those_of_the_full_check(window):
    for angle in (-0.9, -0.3, 0.0, 0.4):
        ((low, high),) = window.stretches(y=angle)
        x = np.array([low - 1e-4, low + 1e-4, high - 1e-4, high + 1e-4])
        margins = window.field.at(x, np.full(4, angle)).min(axis=0)
        assert (margins >= -1e-9).tolist() == [False, True, True, False]
    assert window.stretches(y=3.0) == ()


def test_the_record_holds_borders_and_margins(window):
    record = window_record(window, name="a")
    assert record["stated"] == {"x": 15.5, "y": 0.0, "fits": True}
    assert {b["demand"] for b in record["borders"]} == {e.demand.key for e in window.edges}

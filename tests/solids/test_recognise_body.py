"""Bodies built with known values, read back: back, heel contour, walls, top and outline."""

import math
import sys
from pathlib import Path

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector

sys.path.insert(0, str(Path(__file__).parents[1] / "benchmarks"))

from drawn import drawn_body

from freecad_neckfit.job.outline import Outline, outline_of
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.job.top import top_height
from freecad_neckfit.solids.build import build
from freecad_neckfit.solids.measure.facets import facets_of
from freecad_neckfit.solids.recognise.body import read_back, read_walls
from freecad_neckfit.solids.recognise.outline import front_at, outline_at
from freecad_neckfit.solids.recognise.pocket_faces import Body
from freecad_neckfit.solids.recognise.top import read_top, top_faces

pytestmark = pytest.mark.freecad

REGION = {"x": (-80.0, 260.0), "y": (-70.0, 70.0)}


def routed(stated):
    return Body(build(complete(stated), parts=["body"]).parts["body"])


def pocket_of(stated):
    v = complete(stated)
    return {f"pocket.{k}": float(v[f"pocket.{k}"])
            for k in ("length", "width_end", "width_mouth", "depth")}  # fmt: skip


@pytest.mark.parametrize("stated", [
    {},
    {"body.thickness": 40.0},
    {"body.contour_depth": 8.0},
    {"body.contour_depth": 12.0, "body.contour_length": 90.0},
    {"neck_plate.make": "ferrules", "neck_plate.ferrule_depth": 3.0},
    {"body.top": "domed"},
])  # fmt: skip
def test_thickness_and_contour_are_read(stated):
    v = complete(stated)
    found = read_back(routed(stated), mouth=-float(v["pocket.length"]))
    for key in ("body.thickness", "body.contour_depth"):
        assert found.values[key] == pytest.approx(float(v[key]), abs=1e-6), key
    if v["body.contour_depth"]:
        assert found.values["body.contour_length"] == pytest.approx(
            float(v["body.contour_length"]), abs=1e-6
        )
    assert max(found.residuals.values()) < 1e-6


@pytest.mark.parametrize("left_handed", [False, True])
def test_walls_beside_the_pocket_are_read(left_handed):
    stated = {"body.block_treble": 38.0, "body.block_bass": 44.0,
              "strings.left_handed": left_handed}  # fmt: skip
    found = read_walls(routed(stated), pocket_of(stated), left_handed=left_handed)
    assert found.values["body.block_treble"] == pytest.approx(38.0, abs=1e-6)
    assert found.values["body.block_bass"] == pytest.approx(44.0, abs=1e-6)
    # The wall leaves its straight course near the bottom of the cutaway.
    assert 10.0 < found.values["body.cutaway_treble"] < 45.0


def test_of_a_drawn_body_only_what_is_near_is_triangulated(monkeypatch):
    v = complete({"body.edge_round": 3.0})
    body, asked = Body(drawn_body(v)), []

    def counted(*args, **kw):
        asked.append(facets_of(*args, **kw))
        return asked[-1]

    monkeypatch.setattr("freecad_neckfit.solids.recognise.body.facets_of", counted)
    back = read_back(body, mouth=-float(v["pocket.length"]))
    assert back.values["body.thickness"] == pytest.approx(float(v["body.thickness"]), abs=1e-6)
    walls = read_walls(body, pocket_of({}), left_handed=False)
    assert set(walls.values) >= {"body.block_treble", "body.block_bass"}
    # All of its edges make more than half a million by the kernel.
    assert 0 < sum(len(facets) for facets in asked) < 50_000


def test_a_body_without_cutaways_says_so():
    block = Part.makeBox(400, 300, 44, Vector(-76, -150, -44))
    found = read_walls(Body(block), pocket_of({}), left_handed=False)
    assert not found.values
    assert len(found.notes) == 2


@pytest.mark.parametrize("stated", [
    {"body.top": "flat"},
    {"body.top": "domed", "body.dome_radius": 3000.0, "body.dome_centre": 80.0},
    {"body.top": "carved", "body.carve_slope": 2.0, "body.carve_radius_across": 1800.0,
     "body.edge_round": 0.0},
])  # fmt: skip
def test_the_top_s_shape_is_recognised(stated):
    body = routed(stated)
    found = read_top(body, faces=top_faces(body), **REGION)
    for key, value in stated.items():
        if key != "body.edge_round":
            assert found.values[key] == (
                value if isinstance(value, str) else pytest.approx(value, rel=1e-6)
            ), key
    assert found.residuals["body.top"] < 1e-6


def ridged(radius=150.0):
    """A block whose top is a cylinder along the centreline: no sphere and no parabola."""
    ridge = Part.makeCylinder(radius, 500, Vector(-100, 0, -radius), Vector(1, 0, 0))
    block = Part.makeBox(400, 200, 100, Vector(-76, -100, -44)).common(ridge)
    return Body(block.Solids[0])


def test_a_top_like_none_of_these_is_sampled():
    body = ridged()
    found = read_top(body, faces=top_faces(body), **REGION)
    v = found.values
    assert v["body.top"] == "sampled"
    x, y = np.array([-33.3, 12.3, 100.1]), np.array([0.0, 21.7, -48.9])
    real = np.sqrt(150.0**2 - y**2) - 150.0
    seen = top_height(v, x=x, y=y)
    assert np.abs(seen - real).max() <= v["body.top_error"] + 1e-9
    assert 0 < v["body.top_error"] < 0.005
    assert found.residuals["body.top"] == v["body.top_error"]
    assert v["body.carve_radius_across"] >= 1200.0  # the nearest bowl that can be stated


def test_the_outline_is_cut_at_half_the_thickness():
    body = build(complete({}), parts=["body"]).parts["body"]
    corners = outline_at(body, -22.0)
    drawn = outline_of(complete({}))
    assert Outline.of_points(corners).area == pytest.approx(drawn.area, rel=2e-4)
    assert front_at(corners) == pytest.approx(-76.0, abs=1e-6)
    far = max(math.hypot(*p) for p in corners)
    assert far == pytest.approx(float(np.hypot(*drawn.polyline(0.02).T).max()), abs=0.05)


def _plank():
    return Part.makeBox(430, 330, 45, Vector(-76, -165, -45))


def _rounded(radius):
    plank = _plank()
    return plank.makeFillet(radius, [e for e in plank.Edges if 40 < e.Length < 50])


@pytest.mark.parametrize(("solid", "area"), [
    (_plank(), 430.0 * 330.0),
    (_rounded(30.0), 430.0 * 330.0 - (4.0 - math.pi) * 30.0**2),
    (_plank().mirror(Vector(0, 0, 0), Vector(0, 1, 0)), 430.0 * 330.0),
    (Part.makeCylinder(150.0, 45.0, Vector(0, 0, -45)), math.pi * 150.0**2),
    (Part.makeCylinder(150.0, 45.0, Vector(0, 0, -45), Vector(0, 0, 1), 180.0),
     math.pi * 150.0**2 / 2),
], ids=["plank", "rounded plank", "mirrored plank", "disc", "half disc"])  # fmt: skip
def test_the_outline_of_a_plain_solid_goes_once_round_it(solid, area):
    # The kernel hands out edges either way round, the first one too.
    corners = outline_at(solid, -22.0)
    assert abs(Outline.of_points(corners).area) == pytest.approx(area, rel=5e-4)

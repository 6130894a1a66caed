"""Body, plate, shim, hardware: against volumes and positions worked out by hand."""

import math

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector

from freecad_neckfit.job.errors import BadInput, CannotBuild
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.job.top import top_height
from freecad_neckfit.solids.build.assembly import build
from tests.solids.outlines import box, guitar

pytestmark = pytest.mark.freecad

BOX = box((-76.0, 224.0), (-100.0, 100.0))
BARE = {
    "pocket.width_end": 56.0, "pocket.width_mouth": 56.0, "pocket.corner_radius": 0.0,
    "pocket.depth": 16.0, "body.thickness": 40.0, "body.edge_round": 0.0, "finish.top": 0.0,
    "screw.x": np.array([]), "screw.y": np.array([]),
}  # fmt: skip
POCKET = 76 * 56 * 16


def part(name, outline=BOX, **stated):
    values = complete(BARE | {key.replace("__", "."): x for key, x in stated.items()})
    return build(values, outline=outline, parts=[name]).parts.get(name)


def hit(shape, x, y, direction):
    """Z where a vertical line at (X, Y) first meets the shape from above (-1) or below (+1)."""
    line = Part.makeLine(Vector(x, y, -direction * 500), Vector(x, y, direction * 500))
    found = shape.copy().common(line)
    zs = [p.Z for p in found.Vertexes]
    return max(zs) if direction < 0 else min(zs)


def test_a_box_with_a_pocket():
    assert part("body").Volume == pytest.approx(300 * 200 * 40 - POCKET)


def test_the_outline_is_the_job_s_own_unless_another_is_given():
    corners = [(-76.0, -50.0), (200.0, -50.0), (200.0, 50.0), (-76.0, 50.0)]
    stated = complete(BARE | {"body.outline": "points", "body.outline_points": corners})
    solid = build(stated, parts=["body"]).parts["body"]
    assert solid.Volume == pytest.approx(276 * 100 * 40 - POCKET)


def test_the_pocket_at_the_end_wall_is_as_deep_as_stated():
    for angle in (0.0, 1.5, -1.5):
        solid = part("body", pocket__angle=angle, pocket__depth=18.288)
        just = 1e-3
        expected = -18.288 - just * math.tan(math.radians(angle))
        assert hit(solid, -just, 5.0, -1) == pytest.approx(expected, abs=1e-9)
        assert hit(solid, just, 5.0, -1) == pytest.approx(0.0, abs=1e-9)


def test_rounded_edges_leave_the_front_edge_sharp():
    # At a level where a round has moved the outline inward by d: (300 - d)·(200 - 2d), the front
    # edge staying; the round's d = r - √(r² - t²) has the sums (1 - pi/4)·r² and (5/3 - pi/2)·r³.
    once, twice = (1 - math.pi / 4) * 9, (5 / 3 - math.pi / 2) * 27
    lost = 2 * ((2 * 300 + 200) * once - 2 * twice)
    whole = part("body").Volume
    assert whole - part("body", body__edge_round=3.0).Volume == pytest.approx(lost)


def test_cavities_pickups_and_screw_holes_are_cut():
    whole = part("body").Volume
    cavity = {"cavity__x": np.array([120.0]), "cavity__y": np.array([50.0]),
              "cavity__corner_radius": np.array([0.0]), "cavity__length": np.array([40.0]),
              "cavity__width": np.array([30.0]), "cavity__depth": np.array([20.0])}  # fmt: skip
    assert whole - part("body", **cavity).Volume == pytest.approx(40 * 30 * 20)
    fitted = part("body", pickup_middle__fitted=True)
    spandrels = (4 - math.pi) * 3.2**2
    assert whole - fitted.Volume == pytest.approx((24 * 86 - spandrels) * 20)
    screws = {"screw__x": np.array([-14.0, -58.0]), "screw__y": np.array([-19.0, 19.0])}
    drilled = part("body", **screws)
    assert whole - drilled.Volume == pytest.approx(2 * math.pi * 2.25**2 * 24)
    ferrules = part("body", **screws, neck_plate__make="ferrules")
    assert drilled.Volume - ferrules.Volume == pytest.approx(2 * math.pi * (49 - 2.25**2) * 3)


def test_the_heel_contour_takes_a_wedge_off_the_block():
    values = complete(BARE)
    outline = guitar(values)
    whole = part("body", outline).Volume
    cut = part("body", outline, body__contour_depth=10.0, body__contour_length=16.0)
    # 16 mm from the mouth both cutaways still stand beside the block, 36 + 40 mm wide.
    assert whole - cut.Volume == pytest.approx(76 * 10 * 16 / 2)


@pytest.mark.parametrize("top", ["domed", "carved"])
def test_a_curved_top_is_as_high_as_its_formula(top):
    values = complete(BARE | {"body.top": top})
    solid = part("body", body__top=top)
    for x, y in ((0.5, 0.0), (60.0, -70.0), (200.0, 93.0), (-70.0, 60.0)):
        assert hit(solid, x, y, -1) == pytest.approx(float(top_height(values, x=x, y=y)), abs=1e-6)


def test_a_recess_is_as_deep_below_the_finished_top_as_stated():
    solid = part("body", bridge__mount="recess", bridge__recess=3.0, finish__top=0.25)
    assert hit(solid, 204.5, 0.0, -1) == pytest.approx(-2.75)


@pytest.mark.parametrize(
    ("stated", "sentence"),
    [
        ({"pocket__depth": 40.0}, "below the body's back"),
        ({"pocket__depth": 36.0, "body__contour_depth": 5.0}, "below the body's back"),
        ({"body__edge_round": 12.0, "body__thickness": 24.0}, "rounded edges need"),
        ({"pickup_neck__fitted": True, "pickup_neck__cavity_depth": 40.0}, "goes through the body"),
        ({"plate__cover": "surround", "plate__margin": 5.0, "pickup_neck__fitted": True}, "pieces"),
    ],
)
def test_what_cannot_be_built_is_refused_in_a_sentence(stated, sentence):
    with pytest.raises(CannotBuild, match=sentence) as refusal:
        part("plate" if "plate__cover" in stated else "body", **stated)
    assert "\n" not in str(refusal.value)


def test_a_plate_leaves_its_clearance_round_the_pocket():
    plate = part("plate", plate__cover="surround", plate__clearance=1.0, pocket__end_radius=28.0,
                 pocket__end_shape="round", plate__reach=100.0, plate__margin=20.0)  # fmt: skip
    cut_out = (76 - 28) * 58 + math.pi * 29**2 / 2
    assert plate.Volume == pytest.approx(((76 + 100) * 98 - cut_out) * 2.4)
    assert plate.BoundBox.ZMin == pytest.approx(0.0, abs=1e-6)


def test_a_plate_that_clears_the_overhang_ends_beyond_it():
    values = complete(BARE)
    end = values["neck.overhang"] + 0.5
    plate = part("plate", plate__cover="surround", plate__under_overhang=False, finish__top=0.25)
    assert plate.distToShape(Part.Vertex(end, 0, 0.25))[0] == pytest.approx(0.0, abs=1e-9)
    assert plate.distToShape(Part.Vertex(end, 28.5, 0.25))[0] == pytest.approx(0.0, abs=1e-9)
    assert plate.distToShape(Part.Vertex(end - 1, 27.0, 0.25))[0] == pytest.approx(1.0)


@pytest.mark.parametrize(("left", "sign"), [(False, 1), (True, -1)])
def test_a_partial_plate_lies_on_the_treble_side(left, sign):
    plate = part("plate", plate__cover="treble side", strings__left_handed=left)
    assert all(sign * p.Y > -1e-9 for p in plate.Vertexes)


def test_a_plate_follows_a_domed_top():
    values = complete(BARE | {"body.top": "domed", "finish.top": 0.25})
    plate = part("plate", body__top="domed", plate__cover="surround", finish__top=0.25)
    for x, y in ((150.0, 40.0), (50.0, -45.0)):
        top = float(top_height(values, x=x, y=y)) + 0.25
        assert hit(plate, x, y, -1) == pytest.approx(top + 2.4, abs=1e-6)
        assert hit(plate, x, y, 1) == pytest.approx(top, abs=1e-6)


@pytest.mark.parametrize(
    ("make", "volume"),
    [
        ({"shim__make": "wedge", "shim__wall": 0.5, "shim__mouth": 0.5}, 76 * 56 * 0.5),
        ({"shim__make": "wedge", "shim__wall": 0.8, "shim__mouth": 0.2}, 76 * 56 * 0.5),
        ({"shim__make": "wedge", "shim__wall": 1.0, "shim__mouth": 0.0}, 76 * 56 * 0.5),
        ({"shim__make": "wedge", "shim__wall": 0.0, "shim__mouth": 1.0}, 76 * 56 * 0.5),
        ({"shim__make": "strip", "shim__strip": 0.5, "shim__strip_edge": 12.0}, 12 * 56 * 0.5),
    ],
)
def test_a_shim_fills_what_lies_between_floor_and_heel(make, volume):
    shim = part("shim", **make, neck__heel_width_end=56.0, neck__heel_width_mouth=56.0,
                neck__heel_corner_radius=0.0)  # fmt: skip
    assert shim.Volume == pytest.approx(volume, rel=2e-2)


def test_there_is_no_shim_without_thickness():
    assert part("shim", shim__make="wedge", shim__wall=0.0, shim__mouth=0.0) is None
    assert part("shim") is None


def test_a_strip_past_the_mouth_is_refused():
    with pytest.raises(CannotBuild, match=r"shim\.strip_edge: 60\.00 mm reaches past"):
        part("shim", shim__make="strip", shim__strip_edge=60.0, pocket__length=50.0)


@pytest.mark.parametrize(
    ("make", "seat"),
    [("plate", -40.0 - 2.0 + 1.0), ("ferrules", -40.0 + 3.0), ("none", -40.0 + 1.0)],
)
def test_a_screw_reaches_from_its_head_s_seat_as_far_as_it_is_long(make, seat):
    screw = part("screw_1", neck_plate__make=make, screws__head_seat=1.0, screws__length=45.0,
                 screw__x=np.array([-20.0]), screw__y=np.array([10.0]))  # fmt: skip
    assert hit(screw, -20.0, 10.0, -1) == pytest.approx(seat + 45.0)
    assert hit(screw, -20.0, 13.0, -1) == pytest.approx(seat)


def test_inserts_lie_flush_with_the_heel_s_bottom():
    shape = part(
        "inserts", screws__fixing="insert", screw__x=np.array([-20.0]), screw__y=np.array([0.0])
    )
    assert shape.BoundBox.ZMin == pytest.approx(-16.0, abs=1e-6)
    assert shape.BoundBox.ZMax == pytest.approx(-4.0, abs=1e-6)


def test_a_neck_plate_follows_the_contour():
    plate = part("neck_plate", body__contour_depth=8.0, body__contour_length=40.0,
                 screw__x=np.array([-14.0, -58.0]), screw__y=np.array([0.0, 0.0]))  # fmt: skip
    assert hit(plate, -56.0, 0.0, -1) == pytest.approx(-40 + 8 * 0.5)
    assert hit(plate, -10.0, 0.0, -1) == pytest.approx(-40.0)


def test_pickups_stand_from_their_bottom_to_poles_or_ring():
    box = part("pickup_neck", pickup_neck__fitted=True, finish__top=0.25, pickup_neck__mount="top")
    poles = 0.25 + (0.5 + 9.0) / 2
    assert (box.BoundBox.ZMin, box.BoundBox.ZMax) == pytest.approx((poles - 18, poles), abs=1e-6)
    assert box.BoundBox.XMin == pytest.approx(34 - 11, abs=1e-6)
    ringed = part(
        "pickup_neck", pickup_neck__fitted=True, pickup_neck__ring=10.0, plate__cover="surround"
    )
    assert ringed.BoundBox.ZMax == pytest.approx(2.4 + 10, abs=1e-6)


def test_a_bridge_stands_on_its_mount():
    assert part("bridge", finish__top=0.25).BoundBox.ZMin == pytest.approx(0.25, abs=1e-6)
    plated = part("bridge", bridge__mount="plate", plate__cover="surround")
    assert plated.BoundBox.ZMin == pytest.approx(2.4, abs=1e-6)
    floating = part("bridge", bridge__make="floating")
    assert floating.BoundBox.ZMin == pytest.approx(2.5, abs=1e-6)
    assert len(part("saddles").Solids) == 6


def test_an_unknown_part_is_refused():
    with pytest.raises(BadInput, match="'lid' is no part of a joint"):
        part("lid")

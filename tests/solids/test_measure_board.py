"""Room beside and under the fretboard on plain boxes, whose figures are known without a formula."""

import numpy as np
import pytest

Part = pytest.importorskip("Part")
from FreeCAD import Placement, Rotation, Vector  # noqa: E402

from freecad_neckfit.fit.case import Case  # noqa: E402
from freecad_neckfit.fit.checks import ALL  # noqa: E402
from freecad_neckfit.solids.build import build  # noqa: E402
from freecad_neckfit.solids.measure import (  # noqa: E402
    Context,
    board_sides,
    measure_all,
    sides,
    strings_plate,
)
from tests.solids.test_measure_keys import body, box, measured, neck  # noqa: E402

pytestmark = pytest.mark.freecad

KEYS = ["overhang_side", "plate_heel", "overhang_gap"]
CUTOUT = box((-76, 0.5), (-28.6, 28.6), (0, 9))


def plate(*, y=(-60, 60)):
    return box((-76, 90), y, (0.25, 2.65)).cut(CUTOUT)


def test_a_sunk_board_has_the_room_that_the_pocket_leaves_beside_it():
    found = measured({"body": body()} | neck(lift=-2.6), ["overhang_side"])["overhang_side"]
    # Fretboard from 0.1 on, 56 wide, in a pocket of 56.2 up to where its corner begins.
    assert found.value == pytest.approx(0.1)
    assert found.place[0] <= -3.0 + 1e-6


def test_a_board_that_stands_over_its_corners_only_is_not_beside_anything():
    found = measured({"body": body()} | neck(lift=-2.44), ["overhang_side"])["overhang_side"]
    assert not found.applies


def test_finish_on_the_walls_narrows_the_pocket_for_the_board():
    found = measured({"body": body()} | neck(lift=-2.6), ["overhang_side"], **{"finish.wall": 0.04})
    assert found["overhang_side"].value == pytest.approx(0.06)


@pytest.mark.parametrize("y", [(-60, 60), (0, 60), (-60, 0)])
def test_a_plate_on_one_side_is_as_near_as_a_whole_one(y):
    found = measured({"body": body(), "plate": plate(y=y)} | neck(lift=-2.3), KEYS)
    assert found["overhang_side"].value == pytest.approx(0.6)
    assert found["plate_heel"].value == pytest.approx(0.6)


def test_a_board_over_a_cavity_has_room_as_if_the_top_were_whole():
    bare = body().cut(box((1, 40), (-40, 40), (-20, 5)))
    found = measured({"body": bare} | neck(lift=-2.0), ["overhang_gap"])["overhang_gap"]
    assert found.value == pytest.approx(2.7 - 2.0 - 0.25)


def test_a_board_over_a_pickups_opening_has_room_as_if_the_plate_were_whole():
    tilt = Placement(Vector(), Rotation(0, 0.6, 0), Vector(0, 0, 0)).toMatrix()
    parts = {k: s.copy().transformed(tilt, copy=True) for k, s in neck().items()}
    opened = plate().cut(box((8, 60), (-45, 45), (0, 9)))
    pickup = {"pickup_neck": box((9, 59), (-44, 44), (-10, 1))}
    whole, cut = (
        measured(parts | {"body": body(), "plate": p} | pickup, ["overhang_gap"])["overhang_gap"]
        for p in (plate(), opened)
    )
    assert cut.value == pytest.approx(whole.value, abs=1e-6)


def test_a_leaning_end_of_a_fretboard_without_overhang_is_no_overhang():
    tilt = Placement(Vector(), Rotation(0, 1.5, 0), Vector(0, 0, 0)).toMatrix()
    parts = neck() | {"fretboard": box((-400, -0.1), (-28, 28), (2.7, 9))}
    parts = {k: s.copy().transformed(tilt, copy=True) for k, s in parts.items()}
    assert parts["fretboard"].BoundBox.XMax > 0
    found = measured({"body": body()} | parts, ["overhang_gap"])["overhang_gap"]
    assert not found.applies


def test_the_lower_edges_of_a_bound_board_are_its_bindings():
    strips = {
        "binding_treble": box((-400, 20), (26, 28), (2.5, 9)),
        "binding_bass": box((-400, 20), (-28, -26), (2.5, 9)),
    }
    parts = {"body": body()} | neck() | strips | {"fretboard": box((-400, 20), (-26, 26), (2.7, 9))}
    context = Context(parts, {})
    for sign in (1, -1):
        edges = board_sides.lower_edges(context, sign=sign)
        assert edges.shape[0] == 1
        assert edges[0, :, 1] == pytest.approx([28.0 * sign] * 2)
        assert edges[0, :, 2] == pytest.approx([2.5] * 2)


def test_the_end_wall_is_carried_on_down_past_the_floors_fillet():
    pocket = box((-120, 0), (-28.1, 28.1), (-16, 10))
    foot = [e for e in pocket.Edges if e.BoundBox.ZMax < -15 and e.BoundBox.XMax > -1]
    filleted = box((-76, 300), (-150, 150), (-44, 0)).cut(pocket.makeFillet(2.0, foot))
    tilt = Placement(Vector(-0.1, 0, -16), Rotation(0, -2.0, 0)).toMatrix()
    heel = box((-78, 0), (-28, 28), (0, 18.7)).transformed(tilt, copy=True)
    found = measured(
        {"body": filleted, "heel": heel, "fretboard": box((-400, -1), (-28, 28), (2.7, 9))},
        ["end_clearance"],
    )["end_clearance"]
    # The end leans back from its foot, which stands 0.1 from the wall and below the fillet's top.
    assert found.value == pytest.approx(0.1, abs=1e-6)


def test_a_point_on_a_round_ends_axis_is_its_radius_away():
    end = Part.Cylinder()
    end.Radius = 29.4
    room = sides.room_in_cylinder(np.array([[0.0, 0.0, 1.0], [9.4, 0.0, 1.0]]), end)
    assert room == pytest.approx([29.4, 20.0])


@pytest.mark.parametrize("y", [(0, 60), (-60, 0)])
def test_a_string_along_the_edge_of_a_plate_on_one_side_lies_over_it(y):
    top = Context({"plate": box((10, 90), y, (0.25, 2.65))}, {}).facets("plate")
    start, stop = np.array([5.0, 0.0, 9.0]), np.array([150.0, 1e-15, 12.0])
    found = strings_plate._crossings(top.facing(axis=2, sign=1).points, start, stop)
    assert sorted({round(x, 6) for x in found[:, 0]}) == [10.0, 90.0]
    assert found[:, 2] == pytest.approx(2.65)


def test_a_string_that_ends_where_the_plate_is_cut_off_lies_over_it_to_its_end():
    top = Context({"plate": box((10, 90), (-60, 60), (0.25, 2.65))}, {}).facets("plate")
    start, stop = np.array([5.0, 1.0, 9.0]), np.array([90.0 - 1e-12, 2.0, 8.0])
    found = strings_plate._crossings(top.facing(axis=2, sign=1).points, start, stop)
    assert found[:, 0].max() == pytest.approx(90.0)


NEAR = {
    "body.block_treble": 46.0,
    "body.block_bass": 46.0,
    "pickup_neck.fitted": True,
    "pickup_neck.x": 27.0,
}
"""A neck pickup that, long enough, reaches into the pocket."""
MENDED = {
    "a leaning end beside a fillet": ("corner_entry", "corner.entry", {
        "pocket.wall": "floor", "pocket.angle": 2.4, "pocket.floor_fillet": 0.36,
        "neck.heel_end": "round", "neck.heel_radius": 66.0}),
    "a fillet at the deep end of a floor": ("end_clearance", "end.clearance", {
        "pocket.angle": -1.1, "pocket.floor_fillet": 0.7, "pocket.end_shape": "round",
        "pocket.end_radius": 60.0}),
    "an upright end over a fillet": ("corner_entry", "corner.entry", {
        "pocket.angle": 0.4, "pocket.floor_fillet": 1.2, "seat.end_gap": 0.145,
        "pocket.length": 83.0}),
    "strongly tapered sides beside a leaning end": ("corner_entry", "corner.entry", {
        "pocket.wall": "floor", "pocket.angle": 3.0, "pocket.width_mouth": 51.0,
        "neck.heel_width_mouth": 50.5}),
    "a heel's edge wider than its corner's radius": ("corner_entry", "corner.entry", {
        "neck.heel_edge": 1.463, "neck.heel_corner_radius": 1.061, "pocket.angle": 1.2}),
    "ferrules in a contoured heel": ("corner_gap", "overhang.corner_gap", {
        "neck_plate.make": "ferrules", "body.contour_depth": 5.0, "pocket.angle": 0.7,
        "neck.width_end": 58.0}),
    "strings over a pickup's opening": ("plate_string", "strings.plate", {
        "plate.cover": "treble side", "plate.clearance": 1.5, "neck.overhang": 18.0,
        "pocket.angle": 1.4, "pickup_neck.fitted": True, "pickup_neck.x": 27.0,
        "pickup_neck.mount": "cavity"}),
    "a plate that reaches past the saddles": ("plate_string", "strings.plate", {
        "plate.cover": "surround", "plate.reach": 200.0, "pocket.angle": -1.2}),
    "a heel's foot far before the wall's": ("end_clearance", "end.clearance", {
        "seat.end_gap": 4.2, "pocket.angle": 3.2}),
    "corners of a heel that widens fast": ("corner_entry", "corner.entry", {
        "neck.heel_width_mouth": 103.3, "neck.heel_corner_radius": 9.95,
        "pocket.corner_radius": 4.0}),
    "a heel that widens fast beside a fillet": ("side_bass", "side.bass", {
        "neck.heel_width_mouth": 90.2, "pocket.floor_fillet": 1.34, "shim.make": "wedge",
        "shim.wall": 1.0}),
    "a corner cut level by the top before a round end": ("end_clearance", "end.clearance", {
        "pocket.end_shape": "round", "pocket.end_radius": 64.2, "pocket.angle": -3.65,
        "pocket.depth": 19.5, "neck.heel_corner_radius": 2.0, "seat.end_gap": 0.34}),
    "a thin wall before the pocket's mouth": ("end_clearance", "end.clearance", {
        "pocket.depth": 44.23}),
    "strings over a bent plate with an opening": ("plate_string", "strings.plate", {
        "plate.cover": "surround", "body.top": "domed", "body.dome_radius": 1500.0,
        "pickup_neck.fitted": True, "pickup_neck.x": 38.0, "pickup_neck.mount": "cavity",
        "pickup_neck.ring": 0.0, "pocket.angle": 2.5}),
    "a glued face that ends past the top's edge": ("overhang_gap", "overhang.gap", {
        "pocket.wall": "floor", "pocket.angle": 2.2, "pocket.depth": 21.7,
        "neck.underside": 19.4}),
    "widely fanned frets": ("string_open", "strings.open", {
        "neck.scale": 624.4, "neck.scale_bass": 560.5, "neck.nut_to_heel": 462.0,
        "neck.frets": 23}),
    "a screw's head close under a short rod": ("screw_rod", "screws.rod", {
        "pocket.depth": 30.0, "pocket.angle": 2.6, "neck.rod_end": 104.7,
        "body.contour_depth": 7.8, "neck_plate.make": "ferrules", "screws.length": 40.0,
        "body.thickness": 42.0, "screw.x": np.array([-58.0]), "screw.y": np.array([-19.0])}),
    "a plate whose openings leave nothing under the strings": ("plate_string", "strings.plate", {
        "plate.cover": "surround", "plate.under_overhang": False, "neck.overhang": 49.8,
        "neck.scale": 560.5, "neck.nut_to_heel": 462.9, "neck.scale_bass": 560.5,
        "pickup_neck.fitted": True, "pickup_neck.x": 30.0, "pickup_neck.mount": "top",
        "pickup_middle.fitted": True, "pickup_middle.mount": "top",
        "pickup_middle.length": 85.3}),
    "a heel's side that ends where a plate's opening widens": ("plate_heel", "plate.heel", {
        "plate.cover": "surround", "plate.under_overhang": False, "plate.clearance": 1.7,
        "pocket.corner_radius": 5.77, "pocket.wall": "floor", "pocket.angle": 4.5,
        "pocket.width_end": 58.3, "pocket.width_mouth": 57.4, "neck.heel_width_end": 57.97,
        "neck.heel_width_mouth": 57.27, "neck.width_end": 57.53, "neck.glue_line": 19.67,
        "neck.underside": 19.67, "neck.height": 26.0, "pocket.depth": 16.1,
        "neck.heel_corner_radius": 3.4}),
    "a corner under a dome before a round end": ("end_clearance", "end.clearance", {
        "pocket.end_shape": "round", "pocket.end_radius": 34.5, "pocket.angle": -5.0,
        "pocket.depth": 18.7, "body.top": "domed", "body.dome_radius": 2938.0,
        "neck.heel_corner_radius": 6.0, "seat.end_gap": 0.37}),
    "sides that a cavity takes down to the corners": ("corner_entry", "corner.entry", NEAR | {
        "pickup_neck.x": 20.0, "pickup_neck.length": 80.0, "pickup_neck.cavity_depth": 14.0,
        "neck.heel_end": "round", "neck.heel_radius": 40.0, "pocket.corner_radius": 0.0}),
    "a rod's tool over an opening in the cut-out's end": ("rod_access", "rod.access", NEAR | {
        "pickup_neck.x": 11.4, "plate.cover": "surround", "plate.clearance": 1.5,
        "pocket.angle": 1.2, "pocket.wall": "floor", "neck.rod": "heel", "seat.end_gap": 0.0,
        "pickup_neck.mount": "cavity"}),
    "a fretboard that ends with a round heel, leaning forward": ("overhang_gap", "overhang.gap", {
        "neck.overhang": 0.0, "neck.heel_end": "round", "neck.heel_radius": 40.0,
        "pocket.angle": -1.9, "pocket.depth": 14.2}),
    "a heel that leans forward into a close cut-out's end": ("plate_heel", "plate.heel", {
        "plate.cover": "surround", "plate.clearance": 0.02, "pocket.angle": -1.2,
        "pocket.depth": 16.0, "neck.glue_line": 19.5, "neck.underside": 19.2,
        "neck.height": 26.2, "seat.end_gap": 0.0, "pocket.corner_radius": 6.4,
        "neck.heel_corner_radius": 0.0}),
    "a corner that a cavity leaves the foot of": ("corner_entry", "corner.entry", NEAR | {
        "pickup_neck.x": 9.2, "pickup_neck.cavity_depth": 14.5, "pocket.corner_radius": 6.2,
        "neck.heel_corner_radius": 0.0}),
    "an end wall that a cavity leaves the foot of": ("end_visible", "end.visible", NEAR | {
        "pickup_neck.x": 10.0, "pickup_neck.cavity_depth": 15.2}),
    "an end wall of which nothing is left before the heel": (
        "end_clearance", "end.clearance", NEAR | {
            "pickup_neck.x": 10.0, "pickup_neck.cavity_depth": 15.2, "neck.heel_edge": 1.3}),
    "corners over a tilted floor's fillet in a round end": ("floor_lift", "seat.fillet", {
        "pocket.end_shape": "round", "pocket.end_radius": 58.2, "pocket.angle": 3.94,
        "pocket.wall": "floor", "pocket.floor_fillet": 0.52, "neck.heel_corner_radius": 3.5,
        "neck.heel_edge": 0.54, "seat.end_gap": 0.09}),
    "a ring's piece before a round wall that leans over the pocket": (
        "end_clearance", "end.clearance", {
            "pocket.end_shape": "round", "pocket.end_radius": 56.0, "pocket.angle": -3.9,
            "pocket.wall": "floor", "pocket.floor_fillet": 0.83, "neck.heel_edge": 1.37}),
    "a wide heel over the corner of a wall that leans over the pocket": (
        "corner_entry", "corner.entry", {
            "pocket.wall": "floor", "pocket.angle": -3.0, "pocket.corner_radius": 0.0,
            "neck.heel_corner_radius": 0.0, "neck.heel_width_end": 84.0,
            "neck.heel_width_mouth": 83.0}),
    "a wide heel past a leaning wall between tapered sides": ("corner_entry", "corner.entry", {
        "pocket.wall": "floor", "pocket.angle": -3.46, "pocket.corner_radius": 0.0,
        "neck.heel_corner_radius": 0.0, "neck.heel_edge": 1.26, "neck.heel_width_end": 70.0,
        "finish.floor": 0.131, "finish.wall": 0.035, "pocket.depth": 20.5,
        "pocket.length": 89.5, "pocket.width_end": 57.93, "pocket.width_mouth": 57.23,
        "seat.end_gap": 0.0}),
    "an overhang whose underside goes on from the glue line": (
        "overhang_pickup", "overhang.pickup", {
            "neck.radius_nut": 304.8, "neck.radius_end": 92_900.0, "neck.glue_line": 18.9,
            "neck.underside": 18.9, "neck.height": 26.1, "neck.overhang": 18.1,
            "pocket.angle": 1.7, "pickup_neck.fitted": True, "pickup_neck.mount": "cavity",
            "pickup_neck.x": 28.8}),
    "finish on sides that narrow fast toward the mouth": ("side_bass", "side.bass", {
        "pocket.wall": "floor", "pocket.width_end": 99.3, "pocket.width_mouth": 53.7,
        "pocket.length": 73.9, "finish.wall": 0.084, "neck.heel_width_end": 55.0,
        "neck.heel_width_mouth": 53.6, "neck.heel_length": 81.3}),
    "finish on sides that widen fast": ("side_treble", "side.treble", {
        "pocket.width_end": 56.1, "pocket.width_mouth": 73.2, "pocket.corner_radius": 5.45,
        "finish.wall": 0.37, "neck.heel_width_end": 67.5, "neck.heel_width_mouth": 55.0,
        "neck.heel_corner_radius": 0.0}),
    "a glue line that crosses a carved plate's edge at a flat angle": (
        "plate_heel", "plate.heel", {
            "body.top": "carved", "body.carve_slope": 0.863, "finish.top": 0.047,
            "neck.glue_line": 17.8, "neck.underside": 17.8, "neck.heel_width_end": 86.96,
            "neck.heel_width_mouth": 54.76, "neck.height": 23.5, "plate.clearance": 1.935,
            "plate.cover": "surround", "pocket.angle": -1.436, "pocket.depth": 19.02,
            "pocket.length": 69.96, "pocket.width_end": 56.4, "pocket.width_mouth": 54.84,
            "shim.make": "wedge", "shim.mouth": 0.21, "shim.wall": 0.864,
            "seat.end_gap": 0.0435}),
    "a heel on a wedge before a round wall square to the floor": (
        "end_clearance", "end.clearance", {
            "pocket.end_shape": "round", "pocket.end_radius": 36.0, "pocket.angle": 2.9,
            "pocket.wall": "floor", "shim.make": "wedge", "shim.wall": 0.56,
            "neck.heel_corner_radius": 12.7, "seat.end_gap": 0.0}),
    "a hand between the pocket and the plate": ("top_string", "strings.top", {
        "plate.cover": "surround", "plate.clearance": 0.6, "strings.hand": 0.04}),
    "a hand over a fretboard with a plate under it": ("top_string", "strings.top", {
        "plate.cover": "surround", "plate.clearance": 0.6, "strings.hand": 3.5}),
    "a hand between a fretboard and the plate clear of it": ("top_string", "strings.top", {
        "plate.cover": "surround", "plate.under_overhang": False, "strings.hand": 16.0,
        "neck.overhang": 18.0, "pickup_neck.fitted": True, "pickup_neck.x": 30.0,
        "pickup_neck.mount": "top", "pickup_neck.length": 25.0}),
    "a wedge's foot on the fillet": ("floor_lift", "seat.fillet", {
        "shim.make": "wedge", "shim.wall": 1.4, "pocket.floor_fillet": 1.25,
        "finish.wall": 0.06, "pocket.width_end": 58.0, "pocket.width_mouth": 57.0}),
    "a screw leaning from the rod": ("screw_rod", "screws.rod", {
        "pocket.angle": 2.0, "neck.rod_end": 129.0}),
    "a heel nearer to the plate's rim than to its cut-out": ("plate_heel", "plate.heel", {
        "neck.heel_width_end": 108.0, "plate.cover": "surround"}),
    "a heel nearer to the rim of a plate on one side": ("plate_heel", "plate.heel", {
        "neck.heel_width_end": 94.0, "plate.cover": "treble side"}),
    "a heel nearer to a pickup's opening than to the cut-out": ("plate_heel", "plate.heel", {
        "neck.heel_width_end": 111.0, "plate.cover": "surround", "pickup_neck.fitted": True,
        "pickup_neck.mount": "top"}),
    "a leaning heel that ends beside a widening cut-out": ("plate_heel", "plate.heel", {
        "neck.heel_width_end": 96.9, "pocket.length": 89.9, "pocket.end_shape": "round",
        "pocket.end_radius": 35.8, "pocket.angle": 0.93, "plate.cover": "surround",
        "neck.heel_corner_radius": 0.0, "plate.thickness": 2.7}),
    "a heel under the plate beside its cut-out only": ("plate_heel", "plate.heel", {
        "neck.heel_width_mouth": 78.0, "pocket.length": 78.0, "neck.glue_line": 17.3,
        "pocket.depth": 19.5, "body.top": "carved", "body.carve_slope": 1.2,
        "plate.cover": "surround"}),
    "a corner under a domed plate": ("plate_heel", "plate.heel", {
        "body.top": "domed", "plate.cover": "treble side", "pocket.angle": -6.0}),
    "a round end before a carved plate": ("plate_heel", "plate.heel", {
        "neck.heel_end": "round", "pocket.angle": 3.0, "pocket.wall": "floor",
        "body.top": "carved", "plate.cover": "treble side"}),
    "a plate that dips under a heel too wide for it": ("plate_heel", "plate.heel", {
        "pocket.width_end": 56.0, "pocket.width_mouth": 49.0, "pocket.depth": 17.0,
        "pocket.angle": 1.0, "body.top": "carved", "body.carve_slope": -0.9,
        "plate.cover": "treble side"}),
    "a hair's breadth of fretboard over a plate's corner": ("corner_gap", "overhang.corner_gap", {
        "plate.cover": "treble side", "plate.clearance": 0.933, "neck.width_end": 55.3227}),
    "a hair's breadth of fretboard over a large corner": ("corner_gap", "overhang.corner_gap", {
        "pocket.corner_radius": 2.636, "neck.width_end": 51.138, "neck.width_nut": 43.0}),
    "strips that splay over a carved top": ("binding_gap", "overhang.binding_gap", {
        "neck.width_end": 72.0, "neck.overhang": 15.0, "neck.binding_width": 1.7,
        "neck.binding": 1.3, "body.top": "carved", "body.carve_slope": 4.1}),
    "strips over the body's round edge": ("binding_gap", "overhang.binding_gap", {
        "neck.width_end": 106.0, "neck.overhang": 17.0, "neck.binding_width": 1.9,
        "neck.binding": 0.8, "pocket.angle": -0.1, "body.top": "domed", "body.dome_centre": 5.0}),
    "a fretboard wider than a plate's clear cut-out": ("corner_gap", "overhang.corner_gap", {
        "neck.width_nut": 74.8, "plate.cover": "surround", "plate.under_overhang": False,
        "body.top": "carved", "body.carve_slope": 2.5}),
    "an overhang wider than a plate's clear cut-out": ("overhang_gap", "overhang.gap", {
        "neck.width_nut": 75.0, "neck.overhang": 30.0, "plate.cover": "surround",
        "plate.under_overhang": False, "plate.clearance": 0.1}),
    "a binding wider than a plate's clear cut-out": ("binding_gap", "overhang.binding_gap", {
        "neck.width_nut": 68.2, "neck.binding_width": 2.0, "neck.binding": 1.1,
        "pocket.angle": 2.3, "plate.cover": "surround", "plate.under_overhang": False}),
    "a binding that hangs into a plate's clear cut-out": ("binding_gap", "overhang.binding_gap", {
        "neck.binding_width": 1.7, "neck.binding": 1.0, "pocket.angle": 1.1,
        "plate.cover": "surround", "plate.under_overhang": False, "plate.clearance": 0.0}),
    "a fretboard sunk beside a heel much too wide": ("overhang_side", "overhang.side_room", {
        "neck.heel_width_end": 115.0, "neck.width_end": 54.0, "pocket.depth": 19.5}),
    "an overhang sunk beside a pickup's opening": ("overhang_side", "overhang.side_room", {
        "neck.underside": 16.1, "neck.glue_line": 17.4, "neck.overhang": 19.0,
        "pocket.depth": 14.7, "plate.cover": "treble side", "pickup_neck.fitted": True,
        "pickup_neck.x": 27.0, "pickup_neck.width": 73.0}),
    "a leaning end without overhang": ("overhang_gap", "overhang.gap", {
        "neck.overhang": 0.0, "neck.frets": 20, "pocket.angle": -0.5}),
    "a round end that is higher at its corners": ("end_visible", "end.visible", {
        "neck.heel_end": "round", "neck.heel_radius": 48.5, "pocket.angle": -3.8,
        "pocket.depth": 18.8}),
    "a square end that is higher at its corners": ("end_visible", "end.visible", {
        "neck.heel_corner_radius": 3.2, "pocket.angle": -0.73, "pocket.depth": 18.606}),
    "an end flush with the top": ("end_visible", "end.visible", {"pocket.depth": 18.6}),
    "a cavity in place of a round end wall": ("end_clearance", "end.clearance", NEAR | {
        "pocket.end_shape": "round", "pocket.end_radius": 62.7, "pickup_neck.length": 68.0}),
    "the gap before a cavity in place of a wall": ("end_visible", "end.visible", NEAR | {
        "pickup_neck.length": 68.0}),
    "the gap before a shallow cavity through the wall": ("end_visible", "end.visible", NEAR | {
        "pickup_neck.length": 68.0, "pickup_neck.cavity_depth": 10.0, "pocket.angle": 1.0}),
    "an end before what a cavity leaves of its wall": ("end_clearance", "end.clearance", NEAR | {
        "pickup_neck.length": 68.0, "pickup_neck.cavity_depth": 10.0, "pocket.angle": -1.0}),
    "corners that a pickup's opening cuts off": ("corner_gap", "overhang.corner_gap", NEAR | {
        "pocket.end_shape": "round", "pocket.end_radius": 62.7, "pickup_neck.length": 57.0,
        "plate.cover": "surround", "body.top": "domed"}),
    "corners that a cavity takes away": ("corner_entry", "corner.entry", NEAR | {
        "pickup_neck.length": 68.0}),
    "a pocket's side that a cavity cuts off": ("side_bass", "side.bass", NEAR | {
        "pickup_neck.length": 80.0, "pocket.width_mouth": 56.5,
        "neck.heel_width_mouth": 55.0}),
    "a plate's cut-out that a pickup's opening cuts off": ("plate_heel", "plate.heel", NEAR | {
        "pickup_neck.length": 80.0, "plate.cover": "surround", "pocket.width_mouth": 56.5,
        "neck.heel_width_mouth": 55.0}),
    "a fretboard sunk beside a cavity": ("overhang_side", "overhang.side_room", NEAR | {
        "pickup_neck.length": 80.0, "pickup_neck.cavity_depth": 10.0, "pocket.depth": 19.5,
        "neck.width_end": 55.5}),
    "an overhang over an opening in the cut-out's end": ("overhang_gap", "overhang.gap", NEAR | {
        "pickup_neck.length": 51.0, "plate.cover": "surround", "plate.clearance": 1.5,
        "pocket.angle": 2.0}),
    "a round end before a round wall's fillet": ("floor_lift", "seat.fillet", {
        "pocket.end_shape": "round", "pocket.end_radius": 62.7, "neck.heel_end": "round",
        "neck.heel_radius": 60.0, "pocket.floor_fillet": 1.2, "seat.end_gap": 0.02}),
    "round corners before a round wall's fillet": ("floor_lift", "seat.fillet", {
        "pocket.end_shape": "round", "pocket.end_radius": 34.5, "neck.heel_corner_radius": 6.0,
        "pocket.floor_fillet": 1.2, "seat.end_gap": 0.01}),
    "a heel that nears a leaning wall when lifted": ("floor_lift", "seat.fillet", {
        "pocket.wall": "floor", "pocket.angle": 3.3, "pocket.floor_fillet": 1.0,
        "seat.end_gap": 0.2, "pocket.width_end": 59.0, "pocket.width_mouth": 58.5,
        "neck.heel_corner_radius": 8.0, "pocket.corner_radius": 0.5}),
    "a fillet whose foot is a point round a corner": ("floor_lift", "seat.fillet", {
        "pocket.wall": "floor", "pocket.angle": 3.3, "pocket.floor_fillet": 1.0,
        "pocket.width_end": 59.0, "pocket.width_mouth": 58.5, "seat.end_gap": 0.2,
        "neck.heel_corner_radius": 8.0, "pocket.corner_radius": 1.0}),
    "a chamfered heel wider than its pocket": ("floor_lift", "seat.fillet", {
        "neck.heel_width_mouth": 59.0, "neck.heel_edge": 0.5, "pocket.floor_fillet": 0.4}),
    "a wedge's foot that leans from a round wall": ("floor_lift", "seat.fillet", {
        "pocket.end_shape": "round", "pocket.end_radius": 62.7, "neck.heel_end": "round",
        "neck.heel_radius": 40.0, "pocket.wall": "floor", "pocket.floor_fillet": 0.94,
        "seat.end_gap": 0.3, "shim.make": "wedge", "shim.wall": 1.1, "shim.mouth": 3.5,
        "pocket.width_end": 58.0, "pocket.width_mouth": 57.5}),
    "a heel held off by less than what bears": ("contact_share", "seat.contact", {
        "pocket.floor_fillet": 1.0, "neck.heel_edge": 0.7, "pocket.width_end": 56.4,
        "pocket.width_mouth": 56.4, "neck.heel_width_mouth": 56.0, "seat.end_gap": 0.21,
        "pocket.corner_radius": 0.5}),
    "a tool over a plate's cut-out round a short board": ("rod_access", "rod.access", {
        "neck.rod": "heel", "neck.overhang": 0.0, "neck.frets": 20, "seat.end_gap": 1.6,
        "pocket.angle": 1.5, "plate.cover": "surround", "plate.under_overhang": False,
        "plate.clearance": 5.0}),
    "a tool that ends over a pickup's cavity": ("rod_access", "rod.access", {
        "neck.rod": "heel", "neck.rod_tool_length": 35.0, "pocket.angle": -1.7,
        "pickup_neck.fitted": True, "pickup_neck.x": 30.0, "pickup_neck.mount": "cavity"}),
    "a sharp corner in the corner of a leaning wall": ("corner_entry", "corner.entry", {
        "pocket.wall": "floor", "pocket.angle": 4.8, "pocket.depth": 21.6,
        "pocket.width_mouth": 55.4, "neck.heel_corner_radius": 0.0, "pocket.corner_radius": 3.2,
        "shim.make": "wedge", "shim.wall": 0.68, "shim.mouth": 0.47}),
    "a round corner in the corner of a leaning wall": ("corner_entry", "corner.entry", {
        "pocket.wall": "floor", "pocket.angle": 5.8, "pocket.depth": 21.6,
        "pocket.width_mouth": 55.4, "neck.heel_corner_radius": 2.0, "pocket.corner_radius": 6.2,
        "shim.make": "wedge", "shim.wall": 0.68, "shim.mouth": 0.47}),
    "a corner much rounder than the heel's": ("corner_entry", "corner.entry", {
        "pocket.wall": "floor", "pocket.angle": -4.8, "pocket.depth": 21.6,
        "pocket.width_mouth": 57.4, "neck.heel_corner_radius": 2.0,
        "pocket.corner_radius": 12.2}),
    "a screw past the end of a fretboard": ("screw_tip", "screws.tip", {
        "neck.make": "one piece", "pocket.angle": 1.5, "screw.x": np.array([40.0, -58.0]),
        "screw.y": np.array([19.0, -19.0])}),
    "a screw beside a conical fretboard": ("screw_tip", "screws.tip", {
        "neck.make": "one piece", "neck.radius_nut": 240.0, "neck.radius_end": 400.0,
        "screw.x": np.array([-14.0, -58.0]), "screw.y": np.array([30.0, -19.0])}),
    "a recess for the bridge in a carved top": ("top_string", "strings.top", {
        "body.top": "carved", "body.carve_slope": 2.5, "bridge.mount": "recess",
        "bridge.recess": 3.5}),
    "a deeply sunk overhang level with what is glued": ("overhang_gap", "overhang.gap", {
        "pocket.wall": "floor", "pocket.angle": 2.5, "pocket.depth": 28.6,
        "neck.glue_line": 17.5, "neck.underside": 17.5, "neck.height": 24.0}),
    "a heel whose corners alone reach up to a plate": ("plate_heel", "plate.heel", {
        "plate.cover": "surround", "plate.clearance": 1.6, "body.top": "carved",
        "pocket.depth": 19.0, "neck.glue_line": 19.12, "neck.underside": 19.12,
        "finish.top": 0.16, "seat.end_gap": 0.0, "pocket.width_end": 56.0,
        "pocket.width_mouth": 56.0, "neck.heel_width_end": 55.9,
        "neck.heel_width_mouth": 55.9, "neck.heel_corner_radius": 0.0,
        "pocket.corner_radius": 0.0}),
    "a heel too wide to go in far, its end far before a plate": ("plate_heel", "plate.heel", {
        "plate.cover": "surround", "plate.clearance": 1.9, "pocket.depth": 18.8,
        "neck.glue_line": 19.2, "neck.underside": 19.2, "pocket.end_shape": "round",
        "pocket.end_radius": 46.3, "neck.heel_width_end": 90.6, "neck.heel_width_mouth": 54.0,
        "neck.heel_corner_radius": 8.9}),
    "a bent top past a wall that leans over the pocket": ("corner_gap", "overhang.corner_gap", {
        "pocket.wall": "floor", "pocket.angle": -0.3, "body.top": "carved",
        "neck.width_end": 57.0, "pocket.corner_radius": 5.6}),
    "a domed top past a wall that leans over the pocket": ("corner_gap", "overhang.corner_gap", {
        "pocket.wall": "floor", "pocket.angle": -2.0, "body.top": "domed",
        "body.dome_radius": 2000.0, "neck.width_end": 57.0, "pocket.corner_radius": 5.6}),
    "a plate's lower edge that rises along a dome": ("plate_heel", "plate.heel", {
        "plate.cover": "surround", "plate.under_overhang": False, "plate.clearance": 2.0,
        "body.top": "domed", "body.dome_radius": 2600.0, "finish.top": 0.14,
        "pocket.depth": 18.6, "neck.glue_line": 17.9, "neck.underside": 17.9,
        "neck.heel_width_end": 84.0, "neck.heel_width_mouth": 57.4, "pocket.length": 61.0,
        "seat.end_gap": 0.0}),
}  # fmt: skip


@pytest.mark.parametrize("name", MENDED)
def test_solids_and_closed_form_read_the_same(name):
    key, check_id, stated = MENDED[name]
    check = next(c for c in ALL if c.id == check_id)
    case = Case(stated)
    found = measure_all(build(case.values), case.values, keys=[key])[key]
    assert found.known, found.because
    reading = check.read(case)
    assert found.applies == bool(reading.applies)
    if found.applies:
        assert found.value == pytest.approx(float(reading.value), abs=0.005)

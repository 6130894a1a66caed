"""What cannot be built is refused in one sentence; what merely does not fit is not."""

import numpy as np
import pytest

from freecad_neckfit.job.errors import BadInput, CannotBuild
from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.possible import refuse_impossible
from freecad_neckfit.job.quantity import Kind
from freecad_neckfit.job.resolve import complete

ONE_CAVITY = {"cavity.x": np.array([150.0]), "cavity.y": np.array([0.0])}
PICKUP = {"pickup_neck.fitted": True}


def refusal(stated):
    with pytest.raises(CannotBuild) as found:
        refuse_impossible(complete(stated), "the joint")
    sentence = str(found.value)
    assert sentence.startswith("the joint: ")
    assert sentence.endswith(".")
    assert "\n" not in sentence
    assert len(sentence) < 400
    return sentence


@pytest.mark.parametrize(
    "stated",
    [
        {},
        {"neck.heel_width_end": 61.2, "neck.width_end": 61.2},  # 5 mm too wide
        {"pocket.depth": 30.0},
        {"pocket.depth": 5.0},
        {"neck.overhang": 50.0},
        {"screws.length": 100.0},
        {"screws.body_hole": 3.0},
        {"bridge.front": 600.0},
        {"pocket.angle": 6.0},
        {"seat.end_gap": 5.0},
        {"plate.cover": "surround", "plate.thickness": 6.0},
        {"neck.heel_length": 30.0},
        {"pickup_neck.fitted": True, "pickup_neck.x": 10.0},
        {"pocket.end_shape": "round", "neck.heel_end": "round"},
        {"pocket.end_shape": "round"},
        {"strings.left_handed": True, "plate.cover": "treble side"},
        {"neck.scale_bass": 668.0, "neck.square_fret": 7.0},
        {"neck.overhang": 0.0, "neck.frets": 21},
        ONE_CAVITY,
        {"body.top": "domed"},
        {"body.top": "carved", "body.thickness": 50.0},
        {"screw.x": np.array([]), "screw.y": np.array([])},
    ],
)
def test_what_merely_does_not_fit_is_left_to_the_checks(stated):
    refuse_impossible(complete(stated), "the joint")


@pytest.mark.parametrize(
    ("stated", "words"),
    [
        ({"pocket.depth": 45.0}, ("pocket.depth", "through", "45.00 mm")),
        ({"pocket.depth": 38.0, "pocket.angle": 5.0}, ("through", "76.00 mm from the end wall")),
        ({"pocket.depth": 30.0, "body.contour_depth": 15.0}, ("through", "contour")),
        ({"pocket.depth": 6.0, "pocket.angle": -6.0}, ("pocket.angle", "-6")),
        ({"pocket.end_shape": "round", "pocket.end_radius": 20.0}, ("pocket.end_radius", "20.00")),
        ({"pocket.end_shape": "round", "pocket.width_end": 56.0, "pocket.width_mouth": 66.0,
          "pocket.end_radius": 28.0}, ("pocket.end_radius",)),
        ({"pocket.end_shape": "round", "pocket.width_end": 62, "pocket.width_mouth": 62,
          "pocket.length": 30.0, "screw.x": np.array([]), "screw.y": np.array([])},
         ("pocket.end_radius", "deeper")),
        ({"neck.heel_width_end": 35.0, "neck.heel_width_mouth": 35.0,
          "neck.heel_corner_radius": 20.0}, ("neck.heel_corner_radius", "20.00 mm")),
        ({"pocket.floor_fillet": 5.0}, ("pocket.floor_fillet", "pocket.corner_radius")),
        ({"pocket.width_end": 80.0, "pocket.width_mouth": 80.0}, ("body.block_treble",)),
        ({"body.waist_width": 300.0}, ("body.waist_width",)),
        ({"body.cutaway_bass": 70.0, "pocket.length": 70.0}, ("body.cutaway_bass",)),
        ({"body.outline": "points", "body.outline_points": [(0., 0.), (9., 0.), (9., 9.)]},
         ("outline",)),
        ({"body.top": "carved", "body.thickness": 20.0, "pocket.depth": 8.0,
          "body.carve_radius_across": 1200.0, "body.edge_round": 6.0}, ("body.thickness",)),
        ({"body.outline": "points", "body.edge_round": 12.0, "body.thickness": 20.0,
          "pocket.depth": 5.0,
          "body.outline_points": [(-76., -60.), (300., -150.), (300., 150.), (-76., 60.)]},
         ("edge",)),
        ({"neck.heel_end": "round", "neck.heel_radius": 20.0}, ("neck.heel_radius",)),
        ({"neck.heel_width_end": 110.0, "neck.heel_width_mouth": 35.0, "neck.heel_length": 150.0},
         ("heel", "close")),
        ({"neck.heel_length": 150.0, "neck.nut_to_heel": 155.0}, ("neck.nut_to_heel",)),
        ({"neck.heel_edge": 5.0, "neck.heel_corner_radius": 20.0, "neck.heel_width_end": 45.0},
         ("neck.heel_edge",)),
        ({"neck.glue_line": 24.5}, ("neck.height", "neck.glue_line")),
        ({"neck.underside": 24.0}, ("neck.height", "neck.underside")),
        ({"neck.radius_nut": 120.0, "neck.glue_line": 22.0, "neck.underside": 22.0},
         ("neck.height",)),
        ({"neck.binding": 1.0}, ("neck.binding_width",)),
        ({"neck.binding_width": 6.0, "neck.width_nut": 17.0}, ("third",)),
        ({"neck.rod_depth": 19.0}, ("neck.rod_depth", "glue line")),
        ({"neck.frets": 24, "neck.overhang": 10.0}, ("neck.frets", "fret 24")),
        ({"neck.overhang": 0.0}, ("neck.frets", "fret 22")),
        ({"neck.scale": 420.0}, ("neck.nut_to_heel", "saddles")),
        ({"neck.scale_bass": 800.0, "neck.square_fret": 24.0}, ("neck.square_fret", "fret 1")),
        ({"neck.scale_bass": 660.0, "neck.square_fret": 7.0, "strings.zero_fret": True},
         ("neck.square_fret", "fret 0")),
        ({"neck.scale_bass": 1000.0}, ("neck.",)),
        ({"neck.fret_width": 4.0, "neck.scale": 380.0, "neck.scale_bass": 380.0,
          "neck.frets": 30, "neck.nut_to_heel": 320.0}, ("neck.fret_width",)),
        ({"strings.spread_nut": 45.0}, ("strings.spread_nut",)),
        ({"strings.spread_bridge": 90.0}, ("strings.spread_bridge",)),
        ({"bridge.low": 20.0}, ("bridge.low", "bridge.high")),
        ({"bridge.base_low": 9.0}, ("bridge.base_low",)),
        ({"pickup_middle.low": 20.0}, ("pickup_middle.low",)),
        ({"screws.threaded": 50.0}, ("screws.threaded",)),
        ({"climate.humidity_dry": 80.0}, ("climate.humidity_dry", "80.0 %")),
        ({"limits.gap_min": 2.0}, ("limits.gap_min",)),
        (ONE_CAVITY | {"cavity.depth": np.array([45.0])}, ("cavity 1", "through")),
        (ONE_CAVITY | {"cavity.corner_radius": np.array([30.0])}, ("cavity 1", "corner")),
        (ONE_CAVITY | {"cavity.width": np.array([300.0])}, ("cavity 1", "side")),
        (ONE_CAVITY | {"cavity.x": np.array([-60.0]), "cavity.width": np.array([20.0]),
                       "cavity.depth": np.array([35.0]), "body.contour_depth": np.float64(12.0)},
         ("cavity 1", "through")),
        (PICKUP | {"pickup_neck.cavity_depth": 50.0}, ("pickup_neck.cavity_depth",)),
        (PICKUP | {"pickup_neck.x": 400.0}, ("pickup_neck", "side")),
        (PICKUP | {"pickup_middle.fitted": True, "pickup_middle.x": 40.0}, ("in each other",)),
        ({"bridge.mount": "recess", "bridge.recess": 25.0, "body.thickness": 24.0,
          "pocket.depth": 10.0}, ("bridge.recess", "through")),
        ({"plate.cover": "surround", "plate.reach": 20.0, "plate.under_overhang": False,
          "neck.overhang": 30.0}, ("plate.reach",)),
        ({"plate.cover": "surround", "plate.clearance": 8.5}, ("plate.clearance",)),
        (PICKUP | {"plate.cover": "surround", "plate.margin": 5.0}, ("plate.margin",)),
        ({"shim.make": "strip", "shim.strip_edge": 60.0, "pocket.length": 60.0}, ("strip_edge",)),
        ({"shim.make": "strip", "shim.strip_edge": 3.0}, ("strip_edge", "3.00")),
        ({"shim.make": "strip", "shim.strip": 0.0}, ("shim.strip", "none")),
        ({"shim.make": "wedge", "shim.wall": 0.0}, ("shim.wall",)),
        ({"screw.x": np.array([-14.0, -90.0]), "screw.y": np.array([0.0, 0.0])}, ("screw 2",)),
        ({"screw.x": np.array([-14.0, -15.0]), "screw.y": np.array([0.0, 0.0])}, ("screw 2",)),
        ({"neck_plate.make": "ferrules", "neck_plate.ferrule_depth": 20.0, "pocket.depth": 26.0},
         ("ferrule_depth", "through")),
        ({"neck_plate.make": "ferrules", "neck_plate.ferrule_diameter": 5.0,
          "screws.body_hole": 6.0}, ("ferrule_diameter",)),
        ({"screws.head_seat": 3.0}, ("screws.head_seat", "neck plate")),
        ({"neck_plate.make": "none", "screws.head_seat": 20.0, "pocket.depth": 26.0},
         ("screws.head_seat", "through")),
        ({"neck_plate.width": 20.0}, ("neck_plate", "screw 1")),
        ({"screws.fixing": "insert", "screws.insert_length": 20.0}, ("insert_length",)),
    ],
)  # fmt: skip
def test_what_cannot_be_made_is_refused_in_one_sentence(stated, words):
    sentence = refusal(stated)
    for word in words:
        assert word in sentence


def test_figures_are_told_in_the_units_of_the_job():
    assert "1.772 in" in refusal({"pocket.depth": 45.0, "job.units": "inch"})


def test_a_missing_drawing_is_bad_input_and_no_impossible_joint():
    stated = {"body.outline": "file", "body.outline_file": "/nowhere/o.dxf"}
    with pytest.raises(BadInput, match="no such file") as found:
        refuse_impossible(complete(stated), "the joint")
    assert not isinstance(found.value, CannotBuild)


@pytest.mark.parametrize("key", [p.key for p in ALL.values() if p.low is not None and not p.many])
def test_each_parameter_at_either_limit_is_judged_or_refused_but_never_breaks(key):
    p = ALL[key]
    for value in (p.low, p.high):
        number = int(value) if p.kind is Kind.COUNT else value
        refused = told(complete({key: number}))
        assert refused == "" or refused.startswith("the joint: ")


def told(values):
    try:
        refuse_impossible(values, "the joint")
    except CannotBuild as refusal:
        return str(refusal)
    return ""

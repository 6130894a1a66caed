"""Jobs of many sorts for the tests of seat, sides, overhang, wood and screws."""

import numpy as np

SORTS = {
    "as usual": {},
    "tipped back": {"pocket.angle": 1.3, "seat.end_gap": 0.1},
    "tipped forward": {"pocket.angle": -1.1},
    "wall square to the floor": {"pocket.angle": 1.6, "pocket.wall": "floor"},
    "wedge": {"shim.make": "wedge", "shim.wall": 0.6, "shim.mouth": 0.1},
    "strip": {"shim.make": "strip", "shim.strip": 0.7, "seat.end_gap": 0.2},
    "plate": {"plate.cover": "surround", "pocket.depth": 15.7},
    "plate, wide board": {"plate.cover": "surround", "neck.width_end": 58.5, "pocket.angle": 0.8},
    "plate, narrow board": {"plate.cover": "surround", "neck.width_end": 53.9, "pocket.angle": 2.6,
                            "plate.clearance": 1.5, "pocket.corner_radius": 0.9},
    "plate kept clear": {"plate.cover": "surround", "plate.under_overhang": False,
                         "pocket.depth": 17.9, "pocket.angle": 0.4},
    "wide board": {"neck.width_end": 57.4, "neck.width_nut": 55.0, "pocket.angle": 0.9},
    "low underside": {"neck.underside": 18.0, "pocket.angle": 2.0, "seat.end_gap": 0.4},
    "binding": {"neck.binding_width": 1.6, "neck.binding": 0.8, "pocket.angle": 0.7},
    "round pocket": {"pocket.end_shape": "round", "pocket.end_radius": 40.0, "seat.end_gap": 0.3},
    "both round": {"pocket.end_shape": "round", "neck.heel_end": "round", "pocket.angle": 1.5,
                   "pocket.end_radius": 60.0, "neck.heel_radius": 45.0},
    "both round, heel flatter": {"pocket.end_shape": "round", "neck.heel_end": "round",
                                 "pocket.end_radius": 50.0, "neck.heel_radius": 70.0},
    "round pocket, tipped far forward": {
        "pocket.end_shape": "round", "pocket.end_radius": 64.2, "pocket.angle": -3.65,
        "pocket.depth": 19.5, "neck.heel_corner_radius": 2.0, "seat.end_gap": 0.34},
    "round heel": {"neck.heel_end": "round", "neck.heel_radius": 90.0},
    "sharp heel": {"neck.heel_corner_radius": 0.0, "seat.end_gap": 0.2},
    "sharp pocket": {"pocket.corner_radius": 0.0, "finish.wall": 0.05},
    "large pocket corners": {"pocket.corner_radius": 6.0, "seat.end_gap": 0.3,
                             "pocket.angle": -2.0, "finish.wall": 0.03},
    "strong taper": {"pocket.width_mouth": 53.0, "neck.heel_width_mouth": 52.0,
                     "pocket.angle": 3.0, "neck.heel_edge": 0.8},
    "widening to the mouth": {"pocket.width_mouth": 57.4, "neck.heel_width_mouth": 56.0,
                              "neck.heel_length": 70.0},
    "wide mouth": {"neck.heel_width_mouth": 92.6, "neck.heel_edge": 0.98, "pocket.angle": 2.6},
    "wide mouth, large corners": {"neck.heel_width_mouth": 103.3, "pocket.corner_radius": 4.0,
                                  "neck.heel_corner_radius": 9.95},
    "carved": {"body.top": "carved", "pocket.angle": 1.0, "body.carve_radius_across": 1300.0},
    "carved, round": {"body.top": "carved", "pocket.end_shape": "round", "pocket.angle": 1.8,
                      "body.carve_radius_along": 2600.0, "body.carve_radius_across": 9000.0},
    "domed": {"body.top": "domed", "pocket.angle": 1.9, "plate.cover": "surround"},
    "no overhang": {"neck.overhang": 0.0, "pocket.angle": 0.5},
    "no overhang, sunk": {"neck.overhang": 0.0, "pocket.depth": 19.5, "neck.width_end": 55.6,
                          "seat.end_gap": 0.3, "pocket.angle": 0.3},
    "sunk toward the mouth": {"pocket.angle": 3.0, "pocket.depth": 17.0},
    "finish on floor and walls": {"finish.floor": 0.2, "finish.wall": 0.1, "pocket.angle": 0.6},
}  # fmt: skip

VARIED = (
    "pocket.depth", "pocket.angle", "pocket.length", "pocket.width_end", "pocket.width_mouth",
    "pocket.corner_radius", "neck.glue_line", "neck.underside", "neck.height", "neck.overhang",
    "neck.heel_width_end", "neck.heel_width_mouth", "neck.heel_corner_radius", "neck.heel_length",
    "neck.heel_edge", "neck.width_end", "seat.end_gap", "plate.thickness", "plate.clearance",
    "finish.top", "finish.wall", "finish.floor", "body.thickness", "screws.length", "screws.shank",
    "climate.humidity_dry", "climate.humidity_damp", "pocket.floor_fillet", "neck.rod_tool_height",
)  # fmt: skip
OPTIONS = {
    "plate.cover": ("none", "surround"), "plate.under_overhang": (True, False),
    "pocket.end_shape": ("square", "round"), "neck.heel_end": ("square", "round"),
    "body.top": ("flat", "domed", "carved"), "pocket.wall": ("top", "floor"),
    "shim.make": ("none", "wedge", "strip"), "neck.make": ("glued", "one piece"),
    "neck.rod": ("headstock", "heel", "none"), "screws.fixing": ("wood screw", "insert"),
    "neck_plate.make": ("plate", "ferrules", "none"), "pickup_neck.fitted": (False, True),
    "pickup_neck.mount": ("top", "plate", "cavity"), "strings.left_handed": (False, True),
    "neck.binding_width": (0.0, 1.5),
}  # fmt: skip
SPREAD = {"pocket.angle": 2.0, "neck.overhang": 5.0, "pocket.depth": 2.0, "screws.length": 6.0,
          "climate.humidity_dry": 8.0, "climate.humidity_damp": 12.0}  # fmt: skip


def many(seed, *, count):
    """``count`` random jobs with one choice of options, as one set of stated values."""
    from freecad_neckfit.fit.case import Case  # late: the tables are read by tests alone

    rng = np.random.default_rng(seed)
    usual = Case({}).values
    stated = {key: rng.choice(np.array(words, dtype=object)) for key, words in OPTIONS.items()}
    stated["neck.binding"] = 0.4
    stated["old_pilot.x"], stated["old_pilot.y"] = np.array([-15.0, -40.0]), np.array([-17.0, 3.0])
    stated["cavity.x"], stated["cavity.y"] = np.array([30.0, 40.0]), np.array([0.0, 60.0])
    for key in VARIED:
        wide = SPREAD.get(key, 0.3)
        stated[key] = np.maximum(usual[key] + rng.uniform(-wide, wide, count),
                                 -9.0 if key == "pocket.angle" else 0.0)  # fmt: skip
    return stated


def one_of(stated, index, *, count):
    """The job at ``index`` of many, as values of its own."""
    return {
        key: float(value[index])
        if isinstance(value, np.ndarray) and value.shape == (count,)
        else value
        for key, value in stated.items()
    }

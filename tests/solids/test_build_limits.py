"""Every parameter at both limits, and random joints: valid closed solids, or one sentence."""

from contextlib import nullcontext

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.job.errors import CannotBuild
from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.quantity import Kind
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build.assembly import build

pytestmark = pytest.mark.freecad

NECK = ("heel", "shaft", "fretboard", "binding_treble", "binding_bass", "frets", "rod", "rod_tool")
HARDWARE = ("plate", "bridge", "saddles", "pickup_neck", "neck_plate", "screw_1", "inserts", "shim")
# Group -> the parts that read it.
READ_BY = {
    "body": ("body", "plate", "neck_plate", "screw_1"),
    "pocket": ("body", "plate", "heel", "frets", "shim"),
    "neck": (*NECK, "plate", "shim"),
    "strings": ("frets", "saddles", "binding_treble"),
    "seat": ("heel", "shim"),
    "plate": ("plate", "pickup_neck", "bridge"),
    "bridge": ("body", "bridge", "saddles"),
    "pickup_neck": ("body", "plate", "pickup_neck"),
    "pickup_middle": ("plate", "pickup_middle"),
    "pickup_bridge": ("plate", "pickup_bridge"),
    "screws": ("body", "screw_1", "inserts"),
    "neck_plate": ("body", "neck_plate", "screw_1"),
    "shim": ("heel", "shim"),
    "finish": ("heel", "plate", "shim", "bridge"),
}
SAMPLES = {
    "body.top_heights": (0.0,) * 676, "body.top_rows": 26, "body.top_step": 30.0,
    "body.top_from_x": -200.0, "body.top_from_y": -375.0,
}  # fmt: skip
"""A top that lies flat wherever it was sampled."""
# What must be chosen for a parameter to be read at all.
CHOSEN = {
    "body.dome": {"body.top": "domed"},
    "body.carve": {"body.top": "carved"},
    "body.contour": {"body.contour_depth": 8.0},
    "pocket.end_radius": {"pocket.end_shape": "round"},
    "neck.heel_radius": {"neck.heel_end": "round"},
    "neck.binding": {"neck.binding_width": 1.5},
    "neck.rod": {"neck.rod": "heel"},
    "shim.strip": {"shim.make": "strip"},
    "shim.wall": {"shim.make": "wedge"},
    "shim.mouth": {"shim.make": "wedge"},
    "bridge.base": {"bridge.make": "floating"},
    "bridge.recess": {"bridge.mount": "recess"},
    "neck_plate.ferrule": {"neck_plate.make": "ferrules"},
    "screws.insert": {"screws.fixing": "insert"},
}


def joint(stated, parts=None):
    return build(complete(stated), parts=parts)


def ends(parameter):
    if parameter.kind is Kind.CHOICE:
        return parameter.choices
    if parameter.kind is Kind.FLAG:
        return (False, True)
    if parameter.low is None:
        return ()
    bounds = (parameter.low, parameter.high)
    return tuple(int(b) for b in bounds) if parameter.kind is Kind.COUNT else bounds


def cases():
    for key, parameter in ALL.items():
        # Where the outline comes from is no measure.
        if parameter.group in READ_BY and not parameter.many and not key.startswith("body.outline"):
            for value in ends(parameter):
                yield pytest.param(key, value, id=f"{key}={value}")


# Limits that cannot be combined with the other parameters' defaults.
REFUSED = {
    "body.lower_width=220.0", "body.waist_width=320.0", "body.upper_width=240.0",
    "pocket.length=30.0", "pickup_neck.length=100.0",
    "pocket.depth=60.0", "pocket.end_radius=15.0", "pocket.width_end=110.0", "neck.height=12.0",
    "neck.glue_line=8.0", "neck.glue_line=45.0", "neck.underside=45.0", "neck.heel_radius=15.0",
    "neck.rod_depth=40.0", "plate.margin=5.0", "pickup_neck.x=-20.0", "pickup_neck.width=160.0",
    "pickup_neck.cavity_depth=60.0", "pickup_middle.x=-20.0", "pickup_middle.width=160.0",
    "pickup_bridge.x=-20.0", "pickup_bridge.width=160.0",
    "body.thickness=20.0",
}  # fmt: skip


@pytest.mark.parametrize(("key", "value"), list(cases()))
def test_a_parameter_at_its_limit_gives_valid_solids_or_a_sentence(key, value):
    group = key.partition(".")[0]
    stated = {"plate.cover": "surround", "pickup_neck.fitted": True}
    for start, chosen in CHOSEN.items():
        stated |= chosen if key.startswith(start) else {}
    if group.startswith("pickup_"):
        stated[f"{group}.fitted"] = True
    if group != "body":
        stated["body.edge_round"] = 0.0  # the rounds take most of the time, and are the body's own
    stated[key] = value
    stated |= SAMPLES if value == "sampled" else {}
    refused = f"{key}={value}" in REFUSED
    with pytest.raises(CannotBuild) if refused else nullcontext():
        # The build proves every solid valid, closed and of positive volume.
        assert joint(stated, READ_BY[group]).parts


def random_joint(seed):
    rng = np.random.default_rng(seed)
    stated = {}
    for key, p in ALL.items():
        outline = {"body.tail", "body.lower_width", "body.waist_width", "body.upper_width"}
        if p.group not in READ_BY or p.many or key.startswith("body.outline") or key in outline:
            continue
        if p.kind is Kind.CHOICE:
            stated[key] = str(rng.choice(p.choices)) if rng.random() < 0.5 else p.default
        elif p.kind is Kind.FLAG:
            stated[key] = bool(rng.random() < 0.5)
        elif p.kind is not Kind.COUNT and p.default is not None and rng.random() < 0.3:
            reach = (p.high - p.low) * float(rng.choice([0.02, 0.1]))
            stated[key] = float(np.clip(p.default + rng.uniform(-reach, reach), p.low, p.high))
    # Half the width, which is meant where none is stated, is too small where the sides widen.
    stated["pocket.end_radius"], stated["neck.heel_radius"] = rng.uniform(40, 200, 2)
    if rng.random() < 0.3:
        stated["neck.scale_bass"] = stated.get("neck.scale", 647.7) + rng.uniform(5, 30)
    if rng.random() < 0.3:
        stated["neck.radius_end"] = rng.uniform(250, 600)
    if stated.get("body.top") == "sampled":  # of a body that keeps the edges it has
        stated |= SAMPLES | {"body.edge_round": 0.0}
    return stated


@pytest.mark.parametrize("seed", range(12))
def test_a_random_joint_gives_valid_solids(seed):
    assert joint(random_joint(seed)).parts


@pytest.mark.parametrize(
    "stated",
    [
        {"body.dome_radius": 19148.8, "body.edge_round": 1.884},
        {"body.dome_radius": 9590.0, "body.edge_round": 0.927, "pocket.length": 70.0},
    ],
)
def test_edges_are_rounded_up_to_the_front_under_a_nearly_level_dome(stated):
    stated = {"body.top": "domed", "body.block_treble": 46.5, "body.block_bass": 43.8} | stated
    body = joint(stated, ("body",)).parts["body"]
    whole = joint(stated | {"body.edge_round": 0.0}, ("body",)).parts["body"]
    foremost = [min(p.X for p in solid.Vertexes) for solid in (body, whole)]
    assert foremost[0] == pytest.approx(foremost[1])
    length = sum(e.Length for e in whole.Edges if e.BoundBox.ZMax < -40.0)
    section = (1 - np.pi / 4) * stated["body.edge_round"] ** 2
    lost = whole.Volume - body.Volume
    assert 1.5 * section * length < lost < 2.5 * section * length

"""How the parts come together: names, frames, copies and time."""

import math
import time

import pytest

pytest.importorskip("FreeCAD")

from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build.assembly import build

pytestmark = pytest.mark.freecad

FULL = {
    "plate.cover": "surround", "pickup_neck.fitted": True, "pickup_middle.fitted": True,
    "pickup_bridge.fitted": True, "neck.rod": "heel", "neck.binding_width": 1.5,
    "screws.fixing": "insert", "shim.make": "wedge",
}  # fmt: skip


def assembled(stated=None, parts=None):
    return build(complete(stated or {}), parts=parts)


def lowest_at_heel_end(heel):
    """The two corners at the heel end's bottom, as (X, Z)."""
    point = min((p.Point for p in heel.Vertexes), key=lambda p: (round(-p.x + p.z, 6), p.y))
    return point.x, point.z


def test_every_part_is_there_under_its_name():
    names = set(assembled(FULL).parts)
    assert names == {
        "body", "heel", "shaft", "fretboard", "binding_treble", "binding_bass", "frets", "inserts",
        "plate", "shim", "bridge", "saddles", "pickup_neck", "pickup_middle", "pickup_bridge",
        "neck_plate", "screw_1", "screw_2", "screw_3", "screw_4", "rod", "rod_tool",
    }  # fmt: skip


def test_what_a_job_has_not_is_absent():
    names = set(assembled().parts)
    assert names.isdisjoint(
        {"plate", "shim", "inserts", "rod_tool", "binding_treble", "pickup_neck"}
    )


def test_only_the_parts_asked_for_are_built():
    assert set(assembled(FULL, ["heel", "screw_2", "binding_bass"]).parts) == {
        "heel", "screw_2", "binding_bass"
    }  # fmt: skip


def test_no_part_carries_a_placement():
    for shape in assembled(FULL | {"pocket.angle": 2.0}).parts.values():
        assert shape.Placement.isIdentity()
        assert all(solid.Placement.isIdentity() for solid in shape.Solids)


@pytest.mark.parametrize(
    ("stated", "expected"),
    [
        ({}, (0.0, -15.875)),
        ({"seat.end_gap": 0.3, "finish.wall": 0.1, "finish.floor": 0.2}, (-0.4, -15.675)),
        # X = -E, Z = -d - E·tan θ: 2° over 0.3 mm is 0.010476 mm.
        ({"pocket.angle": 2.0, "seat.end_gap": 0.3}, (-0.3, -15.885476)),
        # θ < 0: E = d·tan 2° = 0.554367, Z = -d + E·tan 2° = -15.855641.
        ({"pocket.angle": -2.0}, (-0.554367, -15.855641)),
        # A wedge of 0.5 mm everywhere lifts square to the floor.
        ({"shim.make": "wedge", "shim.wall": 0.5, "shim.mouth": 0.5}, (0.0, -15.375)),
    ],
)
def test_the_heel_end_lands_where_the_seat_says(stated, expected):
    heel = assembled({"neck.heel_corner_radius": 0.0} | stated, ["heel"]).parts["heel"]
    assert lowest_at_heel_end(heel) == pytest.approx(expected, abs=2e-6)


def test_a_tilted_neck_climbs_toward_the_bridge():
    heel = assembled({"pocket.angle": 3.0, "neck.heel_corner_radius": 0.0}, ["heel"]).parts["heel"]
    bottom = min(heel.Faces, key=lambda f: f.CenterOfMass.z - 0.1 * f.CenterOfMass.x)
    normal = bottom.normalAt(0.5, 0.5)
    assert abs(normal.x / normal.z) == pytest.approx(math.tan(math.radians(3.0)))
    far = min(bottom.Vertexes, key=lambda p: p.X)
    assert pytest.approx(-15.875 - 78 * math.sin(math.radians(3.0))) == far.Z


def test_heel_and_floor_and_fretboard_touch_without_overlap():
    parts = assembled({"seat.end_gap": 0.1}).parts
    assert parts["heel"].distToShape(parts["body"])[0] == pytest.approx(0.0, abs=1e-7)
    assert parts["heel"].distToShape(parts["fretboard"])[0] == pytest.approx(0.0, abs=1e-7)
    assert parts["heel"].copy().common(parts["fretboard"].copy()).Solids == []
    assert parts["heel"].copy().common(parts["shaft"].copy()).Solids == []


def test_building_does_not_depend_on_what_was_built_before():
    first, again = assembled(FULL), assembled(FULL)
    for name, shape in first.parts.items():
        assert again.parts[name].Volume == pytest.approx(shape.Volume, rel=1e-12), name


def test_a_joint_is_built_in_the_time_that_a_slider_leaves():
    assembled(FULL)
    began = time.perf_counter()
    assembled(FULL)
    # 0.3 s on two quiet cores; the bound leaves room for a busy machine.
    assert time.perf_counter() - began < 2.0

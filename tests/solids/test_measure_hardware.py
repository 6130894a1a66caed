"""Strings over level frets, screws, rod and pickup on boxes: answers by plain proportion."""

from types import SimpleNamespace

import numpy as np
import pytest

Part = pytest.importorskip("Part")
from FreeCAD import Vector  # noqa: E402

from freecad_neckfit.job.resolve import complete  # noqa: E402
from freecad_neckfit.solids import measure  # noqa: E402

pytestmark = pytest.mark.freecad

SCALE, HEEL, FLOOR, CREST, RADIUS = 600.0, 400.0, -16.0, 10.0, 250.0


def box(x, y, z):
    return Part.makeBox(x[1] - x[0], y[1] - y[0], z[1] - z[0], Vector(x[0], y[0], z[0]))


def place(fret):
    return SCALE * (1 - 2.0 ** (-fret / 12)) - HEEL


STATED = {
    "neck.scale": SCALE, "neck.nut_to_heel": HEEL, "neck.frets": 20, "finish.top": 0.25,
    "strings.compensation_treble": 0.0, "strings.compensation_bass": 0.0,
    "strings.action_treble": 1.6, "strings.action_bass": 1.6,
    "strings.nut_treble": 0.4, "strings.nut_bass": 0.4, "bridge.low": 9.0, "bridge.high": 14.0,
    "pickup_bridge.fitted": True, "pickup_bridge.x": 150.0, "pickup_bridge.mount": "top",
    "pickup_bridge.body_height": 5.0,
}  # fmt: skip


def gable(x, top):
    corners = [Vector(x - 1, -30, CREST - 1), Vector(x + 1, -30, CREST - 1), Vector(x, -30, top)]
    return Part.Face(Part.makePolygon([*corners, corners[0]])).extrude(Vector(0, 60, 0))


def joint(*, tip=-2.0, screw_y=15.0, raised=None):
    frets = [gable(place(n), CREST + (raised or {}).get(n, 0.0)) for n in range(1, 21)]
    body = box((-76, 400), (-150, 150), (-44, 0)).cut(box((-120, 0), (-28.1, 28.1), (FLOOR, 5)))
    return {
        "body": body,
        "heel": box((-78, 0), (-28, 28), (FLOOR, 2.7)),
        "fretboard": box((-400, 20), (-28, 28), (2.7, CREST - 1)),
        "frets": Part.Compound(frets),
        "screw_1": Part.makeCylinder(2.1, tip + 46, Vector(-30, screw_y, -46)),
        "rod": box((-400, -6), (-3.2, 3.2), (-5, 2.7)),
        "rod_tool": Part.makeCylinder(4, 60, Vector(0, 0, -3), Vector(1, 0, 0)),
        "pickup_neck": box((32, 50), (-40, 40), (-5, 4)),
        "pickup_bridge": box((140, 160), (-40, 40), (-5, 4)),
    }


def measured(key, parts=None, **more):
    values = complete(STATED | more)
    return measure.measure_all(SimpleNamespace(parts=parts or joint()), values, keys=[key])[key]


def climb():
    return (1.6 - 0.4) / (place(12) - place(1))


def height(x):
    """Open string over the level crowns."""
    return CREST + 0.4 + climb() * (x - place(1))


def test_open_strings_are_nearest_over_fret_one():
    found = measured("string_open")
    assert found.value == pytest.approx(0.4, abs=1e-6)
    assert found.detail["fret"] == 1


def test_a_high_crown_makes_the_fretted_string_touch():
    found = measured("string_fretted", joint(raised={16: 0.3}))
    saddle = SCALE - HEEL
    # Fretted at 15 the string rises evenly to its saddle.
    rise = (height(saddle) - CREST) * (place(16) - place(15)) / (saddle - place(15))
    assert found.value == pytest.approx(rise - 0.3, abs=1e-3)
    assert found.detail["fret"] == 16


@pytest.mark.parametrize(
    ("key", "sign", "limit"), [("saddle_low", 1, 9.0), ("saddle_high", -1, 14.0)]
)
def test_saddles_follow_the_string(key, sign, limit):
    above = height(SCALE - HEEL) - 0.25
    assert measured(key).value == pytest.approx(sign * (above - limit), abs=1e-6)


def test_a_travel_that_ends_lowers_the_open_string():
    low = height(SCALE - HEEL) - 0.25 - 0.5
    found = measured("string_open", **{"bridge.low": low - 3, "bridge.high": low})
    assert found.value < 0.4 - 1e-4


def test_strings_over_the_pickup():
    start, saddle = place(20), SCALE - HEEL
    string = CREST + (height(saddle) - CREST) * (150.0 - start) / (saddle - start)
    lowest = max(0.5, 5.0 + 4.0 - 20.0 - 0.25)
    found = measured("pickup_bridge_low")
    assert found.value == pytest.approx(string - 0.25 - 2.0 - lowest, abs=1e-3)
    found = measured("pickup_bridge_high")
    assert found.value == pytest.approx(9.0 - (string - 0.25 - 3.2), abs=1e-3)


def test_strings_over_the_top_under_the_hand():
    middle = (20 + SCALE - HEEL) / 2
    assert measured("top_string").value == pytest.approx(height(middle) - 0.25, abs=1e-6)


@pytest.mark.parametrize(("key", "value"), [
    ("screw_penetration", 14.0), ("screw_tip", 4.7), ("screw_edge", 13.0 / 4.2),
    ("screw_rod", 15.0 - 3.2 - 2.1),
])  # fmt: skip
def test_a_screw(key, value):
    assert measured(key).value == pytest.approx(value, abs=1e-6)


def test_a_screw_into_the_rod_is_negative():
    assert measured("screw_rod", joint(screw_y=5.0)).value == pytest.approx(-0.3, abs=1e-6)


def test_a_one_piece_neck_counts_to_the_slots():
    found = measured("screw_tip", **{"neck.make": "one piece", "limits.fret_slot_depth": 2.5})
    assert found.value == pytest.approx(CREST - 1 - 2.5 + 2.0, abs=1e-6)


def test_the_rod_tool_needs_a_channel():
    found = measured("rod_access")
    # Its lowest line lies at -7; the pickup reaches up to 4.
    assert found.value == pytest.approx(-11.0, abs=0.002)
    assert found.detail["over"] == "pickup"


def test_overhang_and_pickup_meet_in_height_or_along():
    above = measured("overhang_pickup", **{"pickup_neck.mount": "top"})
    # Underside at 2.7, pickup up to 4: along X from 20 to 32.
    assert above.value == pytest.approx(12.0, abs=1e-6)
    parts = joint()
    parts["pickup_neck"] = box((15, 50), (-40, 40), (-5, 1.5))
    under = measured("overhang_pickup", parts, **{"pickup_neck.mount": "top"})
    assert under.value == pytest.approx(1.2, abs=1e-6)


def bent(x, section):
    """A fret of the given section (x, height over its foot), bent about the neck's length."""
    axis, first = Vector(x, 0, CREST - RADIUS), np.arcsin(30.0 / RADIUS)
    out = Vector(0, -np.sin(first), np.cos(first))
    corners = [axis + Vector(a, 0, 0) + out * (RADIUS - 1 + up) for a, up in section]
    face = Part.Face(Part.makePolygon([*corners, corners[0]]))
    return face.revolve(axis, Vector(-1, 0, 0), 2 * np.degrees(first))


def with_frets(make):
    return joint() | {"frets": Part.Compound([make(place(n)) for n in range(1, 21)])}


def test_bent_gables_are_read_on_their_crests():
    values = complete(STATED)
    parts = with_frets(lambda x: bent(x, [(-1, 0), (1, 0), (0, 1)]))
    found = measure.Context(parts, values).strings
    share = (found.x - found.x_nut[:, None]) / (found.x_saddle - found.x_nut)[:, None]
    y = found.y_nut[:, None] + (found.y_saddle - found.y_nut)[:, None] * share
    assert found.x[0] == pytest.approx([place(n) for n in range(1, 21)], abs=1e-7)
    assert found.z == pytest.approx(CREST - RADIUS + np.sqrt(RADIUS**2 - y**2) - FLOOR, abs=1e-7)


def test_a_bent_fret_that_is_flat_on_top_has_no_crest():
    bar = measured("string_open", with_frets(lambda x: bent(x, [(-1, 0), (1, 0), (1, 1), (-1, 1)])))
    assert not bar.known
    assert "flat on top" in bar.because


def test_a_missing_crown_is_unknown():
    parts = joint()
    parts["frets"] = Part.Compound([gable(place(n), CREST) for n in range(1, 20)])
    found = measured("string_open", parts)
    assert not found.known
    assert "crosses no crown" in found.because

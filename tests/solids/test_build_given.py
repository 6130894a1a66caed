"""Solids that exist already, checked in place of those that would be built from the values."""

from types import SimpleNamespace

import numpy as np
import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Rotation, Vector

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.outline import outline_of
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.run.chain import check_values
from freecad_neckfit.run.finding import State
from freecad_neckfit.solids.build import Given, build
from freecad_neckfit.solids.build import body as body_room
from freecad_neckfit.solids.build.outline import segments_of
from freecad_neckfit.solids.build.shapes import moved
from freecad_neckfit.solids.measure import measure_all

pytestmark = pytest.mark.freecad

SAME = 1e-6


def blank_of(stated):
    """The body before anything is routed."""
    v = complete(stated)
    segments = segments_of(outline_of(v))
    return body_room._rounded(v, segments)


def wood_of(stated, *names):
    """Named neck parts in the neck frame, as one solid."""
    built = build(complete(stated), parts=names)
    back = np.linalg.inv(built.neck_frame)
    first, *rest = (moved(built.parts[name], back) for name in names)
    return first.fuse(rest).removeSplitter().Solids[0] if rest else first


def same_findings(one, other, within=SAME):
    for finding in one.findings:
        twin = other.find(finding.id)
        assert twin.state is finding.state, (finding.id, finding.reason, twin.reason)
        if finding.solids is not None:
            assert twin.solids.value == pytest.approx(finding.solids.value, abs=within), finding.id


@pytest.mark.parametrize("stated", [
    {},
    {"pocket.angle": 1.5, "pocket.depth": 17.0},
    {"body.top": "carved", "body.edge_round": 0.0},
])  # fmt: skip
def test_a_given_body_is_routed_and_found_like_the_built_one(stated):
    given = Given(body=blank_of(stated))
    same_findings(check_values(stated), check_values(stated, given=given))


def test_a_given_body_is_not_changed():
    blank = blank_of({})
    before = blank.Volume, len(blank.Faces), blank.ShapeType
    check_values({}, given=Given(body=blank))
    assert (blank.Volume, len(blank.Faces), blank.ShapeType) == before


def test_a_routed_body_is_taken_as_it_is():
    routed = build(complete({}), parts=["body"]).parts["body"]
    deeper = {"pocket.depth": 20.0}  # stated wrongly on purpose: nothing may be cut again
    found = check_values(deeper, given=Given(body=routed, is_routed=True))
    assert found.assembly.parts["body"].Volume == pytest.approx(routed.Volume)
    assert found.find("wood.floor").solids.value == pytest.approx(44.45 - 15.875)


@pytest.mark.parametrize("stated", [
    {"neck.shaft_thickness": 22.0},
    {"neck.shaft_thickness": 22.0, "neck.heel_end": "round", "pocket.end_shape": "round"},
    {"neck.shaft_thickness": 22.0, "neck.underside": 17.0, "neck.heel_end": "round",
     "pocket.end_shape": "round"},
    {"neck.shaft_thickness": 22.0, "neck.underside": 19.5},
    {"neck.shaft_thickness": 22.0, "pocket.angle": 2.0, "neck.radius_nut": 184.0,
     "neck.radius_end": 300.0},
])  # fmt: skip
def test_a_neck_of_one_solid_is_told_apart(stated):
    neck = wood_of(stated, "heel", "shaft", "fretboard")
    found = check_values(stated, given=Given(neck={"neck": neck}))
    assert not found.assembly.missing
    # An overhang of one piece with the heel is split off a tenth of a micron past it, and a round
    # end is triangulated anew: either shows in the last digits.
    plain = stated.get("neck.underside", 18.6) >= 18.6 and "neck.heel_end" not in stated
    same_findings(check_values(stated), found, within=SAME if plain else 5e-4)


def test_a_fused_binding_is_told_apart():
    stated = {"neck.shaft_thickness": 22.0, "neck.binding": 0.3, "neck.binding_width": 1.5}
    names = ("heel", "shaft", "fretboard", "binding_treble", "binding_bass")
    found = check_values(stated, given=Given(neck={"neck": wood_of(stated, *names)}))
    assert not found.assembly.missing
    same_findings(check_values(stated), found, within=2e-4)


def test_given_bindings_are_measured_also_in_several_strips():
    stated = {"neck.shaft_thickness": 22.0, "neck.binding": 0.3, "neck.binding_width": 1.5}
    names = ("heel", "shaft", "fretboard", "binding_treble", "binding_bass")
    neck = {name: wood_of(stated, name) for name in names}
    same_findings(check_values(stated), check_values(stated, given=Given(neck=neck)))
    near = Part.makeBox(1000, 200, 100, Vector(-100, -100, 0))
    for name in ("binding_treble", "binding_bass"):
        strips = [neck[name].common(near).Solids[0], neck[name].cut(near).Solids[0]]
        strips[1].translate(Vector(-0.5, 0, 0))
        neck[name] = Part.Compound(strips)
    found = check_values(stated, given=Given(neck=neck))
    assert len(found.assembly.parts["binding_bass"].Solids) == 2
    same_findings(check_values(stated), found)


def test_wood_and_fretboard_may_be_given_apart():
    stated = {"neck.shaft_thickness": 22.0}
    neck = {"wood": wood_of(stated, "heel", "shaft"), "fretboard": wood_of(stated, "fretboard")}
    same_findings(check_values(stated), check_values(stated, given=Given(neck=neck)))


def test_what_is_not_told_apart_could_not_be_checked():
    neck = {"heel": wood_of({}, "heel")}
    found = check_values({}, given=Given(neck=neck))
    gap = found.find("overhang.gap")
    assert gap.state is State.UNKNOWN
    assert "no fretboard" in gap.reason
    assert found.find("side.treble").state is not State.UNKNOWN


def test_a_given_plate_counts_instead_of_the_stated_one():
    stated = {"plate.cover": "surround"}
    plate = build(complete(stated), parts=["plate"]).parts["plate"]
    same_findings(check_values(stated), check_values(stated, given=Given(plate=plate)))
    thicker = plate.copy()
    thicker.translate(Vector(0, 0, 0.5))
    raised = check_values(stated, given=Given(plate=thicker)).find("overhang.gap")
    assert raised.state is State.DISAGREES or raised.solids.value < -1.0


@pytest.mark.parametrize(("shape", "words"), [
    (Part.makeBox(1, 1, 1).Shells[0], "0 solids"),
    (Part.Compound([Part.makeBox(1, 1, 1), Part.makeBox(1, 1, 1, Vector(5, 0, 0))]), "2 solids"),
])  # fmt: skip
def test_what_is_no_solid_is_refused_in_one_sentence(shape, words):
    with pytest.raises(BadInput, match=words):
        check_values({}, given=Given(body=shape))


def test_a_body_glued_of_two_pieces_is_one():
    blank = blank_of({})
    box = Part.makeBox(600, 300, 100, Vector(-200, 0, -80))
    halves = Part.Compound([blank.copy().common(box), blank.copy().cut(box)])
    same_findings(check_values({}), check_values({}, given=Given(body=halves)))


def test_a_solid_that_is_inside_out_is_turned():
    turned = blank_of({})
    turned.reverse()
    same_findings(check_values({}), check_values({}, given=Given(body=turned)))


def test_parts_that_touch_do_not_interfere_by_the_last_digit_of_a_turn():
    """Turned and turned back, the end wall lies a rounding before or behind the heel's end."""
    stated = {"body.edge_round": 0.0}
    built = build(complete(stated))
    rng = np.random.default_rng(1)
    for _ in range(10):
        motion = np.eye(4)
        turn = rng.normal(size=4)
        motion[:3, :3] = np.array(Rotation(*turn / np.linalg.norm(turn)).toMatrix().A).reshape(
            4, 4
        )[:3, :3]
        motion[:3, 3] = rng.uniform(-400, 400, 3)
        there = moved(built.parts["body"], motion)
        parts = built.parts | {"body": moved(there, np.linalg.inv(motion))}
        found = measure_all(SimpleNamespace(parts=parts), built.values, keys=["clash_neck_body"])[
            "clash_neck_body"
        ]
        assert found.value == 0.0
        assert found.detail["depth"] < 1e-6

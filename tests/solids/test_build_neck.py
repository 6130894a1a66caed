"""Heel, fretboard, binding and frets, against figures worked out by hand, in the neck frame."""

import math
from dataclasses import replace
from itertools import pairwise

import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector
from numpy.polynomial.legendre import leggauss

from freecad_neckfit.job.errors import CannotBuild
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build.fretboard import fretboard
from freecad_neckfit.solids.build.frets import crown_shift, fret_positions, frets
from freecad_neckfit.solids.build.neck import heel, heel_plan, shaft
from freecad_neckfit.solids.build.plan import face
from freecad_neckfit.solids.build.rod import channel, tool_path
from freecad_neckfit.solids.build.shapes import proven

pytestmark = pytest.mark.freecad

CONE = {"neck.radius_nut": 184.0, "neck.radius_end": 400.0}


def by_formula(v, x, y):
    """Top of the board: a circle about each section's own centre, its radius straight in x."""
    share = (x + v["neck.nut_to_heel"]) / (v["neck.nut_to_heel"] + v["neck.overhang"])
    radius = v["neck.radius_nut"] + (v["neck.radius_end"] - v["neck.radius_nut"]) * share
    return v["neck.height"] - (radius - math.sqrt(radius**2 - y**2))


def off(shape, x, y, z):
    return shape.distToShape(Part.Vertex(x, y, z))[0]


def test_a_straight_heel_is_a_block_without_its_corners():
    v = complete({"neck.heel_width_end": 56.0, "neck.heel_width_mouth": 56.0})
    area = 78 * 56 - 2 * (1 - math.pi / 4) * 3.2**2
    assert proven(heel(v), name="heel").Volume == pytest.approx(area * 18.6)


def test_a_round_heel_ends_in_a_half_disc():
    v = complete({"neck.heel_width_mouth": 56.0, "neck.heel_end": "round"})
    area = 50 * 56 + math.pi * 28**2 / 2
    assert proven(heel(v), name="heel").Volume == pytest.approx(area * 18.6)


@pytest.mark.parametrize("size", [0.3, 1.0, 3.2, 5.0])
@pytest.mark.parametrize(
    "end", ["square 0", "square 1", "square 3.2", "square 20", "round 28.2", "round 200"]
)
def test_a_chamfer_leaves_at_each_height_the_plan_moved_inward(size, end):
    shape, radius = end.split()
    key = "neck.heel_corner_radius" if shape == "square" else "neck.heel_radius"
    v = complete({"neck.heel_end": shape, key: float(radius), "neck.heel_edge": size})
    plan = heel_plan(v)

    def area(inward):
        moved = replace(plan.outward(-inward), corner=max(plan.corner - inward, 0.0))
        return face(moved.segments(-78.0), 0.0).Area

    points, weights = leggauss(8)
    steps = sorted({0.0, min(plan.corner, size), size})
    chamfered = sum(
        w * area((a + b) / 2 + (b - a) / 2 * p) * (b - a) / 2
        for a, b in pairwise(steps)
        for p, w in zip(points, weights, strict=True)
    )
    expected = chamfered + area(0.0) * (18.6 - size)
    # Where a cone crosses a plane at a slant the kernel's curve is good to some 0.2 mm³.
    assert proven(heel(v), name="heel").Volume == pytest.approx(expected, rel=3e-6)


def test_a_cylindrical_board_has_the_volume_of_its_sections():
    v = complete({"neck.width_nut": 56.0, "neck.overhang": 20.0})
    segment = 304.8**2 * math.asin(28 / 304.8) - 28 * math.sqrt(304.8**2 - 28**2)
    low = 25 - (304.8 - math.sqrt(304.8**2 - 28**2))  # the top at the edges
    section = 56 * (low - 18.6) + segment
    board = fretboard(v)["fretboard"]
    assert proven(board, name="fretboard").Volume == pytest.approx(section * 480.6)


def test_the_sagitta_at_the_edge_of_the_board():
    # Sagitta of radius 304.8 over a chord of 56: 1.28881, by R - √(R² - 28²).
    board = fretboard(complete({"neck.width_nut": 56.0}))["fretboard"]
    assert off(board, -100.0, 28.0, 25 - 1.288812) < 1e-5


def test_a_conical_top_is_the_formula_at_every_section():
    v = complete(CONE)
    board = fretboard(v)["fretboard"]
    top = max(board.Faces, key=lambda f: f.CenterOfMass.z)
    for x in (-455.0, -300.0, -150.5, 0.0, 10.0):
        for y in (-20.0, -7.0, 0.0, 13.0, 20.9):
            assert off(top, x, y, by_formula(v, x, y)) < 1e-6


def test_a_top_far_flatter_at_its_end_than_at_the_nut_is_still_the_boards_top():
    v = complete({"neck.radius_nut": 180.0, "neck.radius_end": 3600.0})
    board = proven(fretboard(v)["fretboard"], name="fretboard")
    for x in (-400.0, -100.0, v["neck.overhang"] - 1):
        z = by_formula(v, x, 15.0)
        assert off(board, x, 15.0, z) == pytest.approx(0.0, abs=1e-6)
        assert board.isInside(Vector(x, 15.0, z - 0.5), 1e-6, False)


@pytest.mark.parametrize("radii", [(222.0, 95_000.0), (99_500.0, 428.0), (120.0, 100_000.0)])
@pytest.mark.parametrize("binding", [0.0, 1.1])
def test_a_top_almost_flat_at_one_end_only_is_the_boards_and_its_bindings_top(radii, binding):
    v = complete({
        "neck.radius_nut": radii[0], "neck.radius_end": radii[1], "neck.binding_width": binding,
    })  # fmt: skip
    parts = [proven(part, name=name) for name, part in fretboard(v).items()]
    assert len(parts) == (3 if binding else 1)
    start, end = -v["neck.nut_to_heel"], v["neck.overhang"]
    whole = Part.Compound(parts)
    for share in (0.001, 0.01, 0.1, 0.5, 0.9, 0.99, 0.999):
        x = start + (end - start) * share
        half = v["neck.width_nut"] + (v["neck.width_end"] - v["neck.width_nut"]) * share
        for y in (0.0, 0.2 * half, 0.48 * half, -0.48 * half):
            assert off(whole, x, y, by_formula(v, x, y)) < 1e-4
            assert off(whole, x, y, by_formula(v, x, y) + 1.0) > 0.7


@pytest.mark.parametrize("underside", [15.0, 18.6, 20.0])
def test_the_board_steps_at_the_heel_end(underside):
    board = fretboard(complete({"neck.underside": underside, "neck.overhang": 20.0}))["fretboard"]
    lowest = {
        round(f.CenterOfMass.z, 6)
        for f in board.Faces
        if f.normalAt(0, 0).z < -0.5 or f.normalAt(0, 0).z > 1 - 1e-9
    }
    assert {18.6, underside} <= lowest


def test_binding_makes_up_the_board_s_width_and_hangs_below():
    plain = fretboard(complete({}))["fretboard"].Volume
    v = complete({"neck.binding_width": 1.5, "neck.binding": 1.0})
    parts = fretboard(v)
    assert set(parts) == {"fretboard", "binding_treble", "binding_bass"}
    hanging = 2 * 1.5 * 1.0 * v["neck.overhang"]
    assert sum(p.Volume for p in parts.values()) == pytest.approx(plain + hanging)
    assert parts["binding_treble"].BoundBox.ZMin == pytest.approx(17.6, abs=1e-3)
    assert parts["binding_treble"].CenterOfMass.y > 0 > parts["binding_bass"].CenterOfMass.y


def test_a_left_handed_neck_has_its_treble_binding_on_the_other_side():
    v = complete({"neck.binding_width": 1.5, "strings.left_handed": True})
    assert fretboard(v)["binding_treble"].CenterOfMass.y < 0


def test_a_board_without_overhang_ends_at_the_heel():
    board = fretboard(complete({"neck.overhang": 0.0}))["fretboard"]
    assert max(p.X for p in board.Vertexes) == pytest.approx(0.0)


def test_a_board_too_round_for_its_thickness_is_refused():
    with pytest.raises(CannotBuild, match="leaves no wood at the edges"):
        fretboard(
            complete({"neck.radius_nut": 120.0, "neck.width_end": 110.0, "neck.height": 24.0})
        )


def test_past_the_heel_a_board_may_be_rounder_than_its_glue_line_lies_high():
    v = complete({
        "neck.radius_nut": 200.0, "neck.radius_end": 150.0, "neck.width_end": 62.0,
        "neck.overhang": 40.0, "neck.height": 25.0, "neck.glue_line": 21.95,
        "neck.underside": 17.0,
    })  # fmt: skip
    end, edge = v["neck.overhang"], v["neck.width_end"] / 2
    assert v["neck.underside"] < by_formula(v, end, edge) < v["neck.glue_line"]
    board = proven(fretboard(v)["fretboard"], name="fretboard")
    assert off(board, end, edge, by_formula(v, end, edge)) < 1e-4


def crests(shape):
    """Of each fret the edge that its flanks share: the highest."""
    return [max(s.Edges, key=lambda e: e.CenterOfMass.z) for s in shape.Solids]


def test_there_is_one_crown_for_each_fret_where_equal_temperament_puts_it():
    v = complete({"neck.relief": 0.0})
    shape = frets(v)
    proven(shape, name="frets")
    found = sorted(c.CenterOfMass.x for c in crests(shape))
    assert len(found) == 22
    expected = [647.7 * (1 - 2 ** (-n / 12)) - 460.6 for n in range(1, 23)]
    assert found == pytest.approx(expected)


def test_a_zero_fret_is_one_more():
    shape = frets(complete({"strings.zero_fret": True}))
    assert len(shape.Solids) == 23
    assert min(c.CenterOfMass.x for c in crests(shape)) == pytest.approx(-460.6)


@pytest.mark.parametrize("fanned", [False, True])
@pytest.mark.parametrize("top", [{}, CONE])
def test_a_crest_follows_the_board_at_its_height(fanned, top):
    more = {"neck.scale_bass": 670.0, "neck.square_fret": 7.0} if fanned else {}
    v = complete({"neck.relief": 0.0, **top, **more})
    for crest in crests(frets(v)):
        for p in crest.discretize(9):
            assert p.z == pytest.approx(by_formula(v, p.x, p.y) + 1.1, abs=1e-9)


def test_fanned_frets_stand_where_each_outer_string_needs_them():
    v = complete({"neck.scale_bass": 670.0, "neck.square_fret": 7.0})
    u = 2.0 ** (-7 / 12)
    centre = (647.7 + 670) / 2 * (1 - u)
    for scale in (647.7, 670.0):
        expected = [centre + scale * (u - 2.0 ** (-n / 12)) for n in range(23)]
        assert fret_positions(v, scale) == pytest.approx(expected)
    across = [c for c in crests(frets(v)) if abs(c.CenterOfMass.x + 460.6 - centre) < 0.01]
    assert len(across) == 1
    ends = [p.X for p in across[0].Vertexes]
    assert ends[0] == pytest.approx(ends[1], abs=0.01)


def test_relief_is_the_deepest_place_under_the_chord_of_the_crowns():
    v = complete({"neck.relief": 0.3})
    u, bow = fret_positions(v, 647.7), crown_shift(v)

    def depth(a):
        chord = bow[1] + (bow[-1] - bow[1]) * (a - u[1]) / (u[-1] - u[1])
        joint = 460.6 - 76
        k = bow[1] / (joint - u[1]) ** 2
        return chord - k * max(joint - a, 0.0) ** 2

    deepest = max(depth(u[1] + (u[-1] - u[1]) * i / 5000) for i in range(5001))
    assert deepest == pytest.approx(0.3, abs=1e-6)
    assert bow[-1] == 0.0


def test_fall_away_lowers_the_last_crown_by_all_and_fret_12_by_nothing():
    v = complete({"neck.relief": 0.0, "neck.fall_away": 0.2})
    shift = crown_shift(v)
    assert shift[12] == pytest.approx(0.0)
    assert shift[22] == pytest.approx(-0.2)


def test_rod_channel_and_tool_path():
    v = complete({"neck.rod": "heel"})
    assert channel(v).Volume == pytest.approx((460.6 - 6) * 6.4 * (18.6 - 11))
    assert tool_path(v).Volume == pytest.approx(math.pi * 25 * 60)
    assert tool_path(complete({})) is None
    assert channel(complete({"neck.rod": "none"})) is None


def test_the_shaft_runs_from_nut_to_heel_under_the_glue_line():
    v = complete({"neck.width_nut": 56.0})
    assert shaft(v).Volume == pytest.approx((460.6 - 78) * 56 * (18.6 - 5))
    assert (
        shaft(complete({"neck.shaft_thickness": 10.0, "neck.height": 30.0, "neck.glue_line": 19.0}))
        is None
    )


def test_a_symmetric_neck_is_built_symmetric():
    v = complete({"neck.heel_edge": 1.0})
    for shape in (heel(v), fretboard(v)["fretboard"], frets(v)):
        centre = shape.CenterOfGravity if hasattr(shape, "CenterOfGravity") else shape.CenterOfMass
        assert abs(Vector(centre).y) < 1e-4

"""FreeCAD's kernel itself on solids whose volumes and distances are known exactly.

The figures follow from the formulas beside them; where a build of the kernel gets one of these
wrong, nothing measured on solids can be trusted.
"""

import math

import pytest

pytest.importorskip("FreeCAD")

import Part
from FreeCAD import Vector

pytestmark = pytest.mark.freecad


def ball(radius, x):
    return Part.makeSphere(radius, Vector(x, 0, 0))


def lens(r1, r2, d):
    """Overlap of two spheres: pi·(r1 + r2 - d)²·(d² + 2d(r1 + r2) - 3(r1 - r2)²)/12d."""
    return (
        math.pi * (r1 + r2 - d) ** 2 * (d * d + 2 * d * (r1 + r2) - 3 * (r1 - r2) ** 2) / (12 * d)
    )


def test_two_cylinders_crossing_square_share_16_r_cubed_over_3():
    along = Part.makeCylinder(10, 60, Vector(-30, 0, 0), Vector(1, 0, 0))
    across = Part.makeCylinder(10, 60, Vector(0, -30, 0), Vector(0, 1, 0))
    assert along.common(across).Volume == pytest.approx(5333.3333, abs=1e-3)


@pytest.mark.parametrize(
    ("r1", "r2", "d", "volume"), [(10, 10, 10, 1308.996939), (10, 6, 12, 167.551608)]
)
def test_two_balls_share_a_lens(r1, r2, d, volume):
    assert lens(r1, r2, d) == pytest.approx(volume, abs=1e-6)
    assert ball(r1, 0).common(ball(r2, d)).Volume == pytest.approx(volume, rel=1e-6)


def test_a_cap_of_a_ball_is_pi_h_squared_times_3r_minus_h_over_3():
    below = Part.makeBox(40, 40, 40, Vector(-20, -20, 6))
    cap = ball(10, 0).common(below)
    assert cap.Volume == pytest.approx(435.634181, rel=1e-6)
    assert math.pi * 16 * (30 - 4) / 3 == pytest.approx(435.634181, abs=1e-6)


def test_two_boxes_share_a_thin_slab():
    one = Part.makeBox(76, 56, 16)
    other = Part.makeBox(76, 56, 16, Vector(0, 55.9, 0))
    assert one.common(other).Volume == pytest.approx(0.1 * 76 * 16)


def test_touching_boxes_share_no_solid_and_have_no_distance():
    one, other = Part.makeBox(76, 56, 16), Part.makeBox(76, 56, 16, Vector(0, 56, 0))
    assert one.common(other).Solids == []
    assert one.distToShape(other)[0] == 0.0


def test_skew_cylinders_lie_their_axes_distance_less_their_radii_apart():
    one = Part.makeCylinder(2, 60, Vector(-30, 0, 0), Vector(1, 0, 0))
    other = Part.makeCylinder(3, 60, Vector(0, -30, 9), Vector(0, 1, 0))
    assert one.distToShape(other)[0] == pytest.approx(4.0, abs=1e-6)


def test_the_sagitta_of_a_fretboard():
    # R - √(R² - (c/2)²) for R = 304.8 (12 in) over a chord of 56: 1.28881.
    arc = Part.Circle(Vector(0, 0, 0), Vector(1, 0, 0), 304.8)
    half = math.asin(28 / 304.8)
    edge = Part.ArcOfCircle(arc, -half, half).toShape()
    ends = [p.Point for p in edge.Vertexes]
    middle = edge.valueAt(sum(edge.ParameterRange) / 2)
    assert (ends[0] - ends[1]).Length == pytest.approx(56.0)
    assert ((ends[0] + ends[1]) * 0.5 - middle).Length == pytest.approx(1.28881, abs=5e-6)

"""What is left of a face within a rectangle of the plan, beside what the kernel's cut leaves."""

import sys
from pathlib import Path

import numpy as np
import pytest

Part = pytest.importorskip("Part")

sys.path.insert(0, str(Path(__file__).parents[1] / "benchmarks"))

from drawn import drawn_body  # noqa: E402
from FreeCAD import Vector  # noqa: E402

from freecad_neckfit.job.resolve import complete  # noqa: E402
from freecad_neckfit.solids.build import build  # noqa: E402
from freecad_neckfit.solids.measure.context import Context  # noqa: E402
from freecad_neckfit.solids.measure.facets import facets_of  # noqa: E402
from freecad_neckfit.solids.measure.poles import Net  # noqa: E402
from freecad_neckfit.solids.measure.window import Reach  # noqa: E402

pytestmark = pytest.mark.freecad

AT_THE_MOUTH = (-115.0, 20.0, -60.0, 60.0)
BEHIND = (150.0, 260.0, -200.0, 200.0)
ALL_ROUND = (-200.0, 500.0, -300.0, 300.0)
OUTSIDE = (600.0, 700.0, -50.0, 50.0)
NOWHERE_NEAR = (40.0, 90.0, -20.0, 20.0)
"""Rectangles: X from and to, Y from and to [mm]."""


@pytest.fixture(scope="module")
def edges():
    """Rounded edges of a body drawn as one curve, above and below."""
    body = drawn_body(complete({"body.edge_round": 3.0}))
    return [f for f in body.Faces if type(f.Surface).__name__ == "BSplineSurface"]


def by_kernel(face, bounds):
    size = [bounds[1] - bounds[0], bounds[3] - bounds[2]]
    box = face.BoundBox
    window = Part.makeBox(*size, box.ZLength + 2, Vector(bounds[0], bounds[2], box.ZMin - 1))
    return face.copy().common(window)


def test_a_drawn_bodys_rounded_edge_is_a_strip(edges):
    assert len(edges) == 2
    assert all(Reach.of(face).strip is not None for face in edges)


@pytest.mark.parametrize("bounds", [AT_THE_MOUTH, BEHIND])
@pytest.mark.parametrize("which", [0, 1])
def test_all_of_it_that_the_rectangle_shows_is_there_and_nothing_else(edges, which, bounds):
    pieces, cut = (
        Reach.of(edges[which]).within(bounds),
        by_kernel(edges[which], bounds),
    )
    assert cut.Area > 1
    points = np.concatenate([facets_of(p, 0, fine=0.05).points for p in pieces]).reshape(-1, 3)
    for point in points[::211]:
        assert edges[which].distToShape(Part.Vertex(Vector(*point)))[0] < 1e-3
    whole = Part.Compound(pieces)
    for piece in cut.Faces:
        for point in facets_of(piece, 0, fine=0.05).points.reshape(-1, 3)[::211]:
            assert whole.distToShape(Part.Vertex(Vector(*point)))[0] < 1e-3


@pytest.mark.parametrize("bounds", [OUTSIDE, NOWHERE_NEAR])
def test_where_it_cannot_be_nothing_is_cut(edges, bounds, monkeypatch):
    from freecad_neckfit.solids.measure import window

    monkeypatch.setattr(window, "_cut", lambda *_: pytest.fail("cut"))
    assert [Reach.of(face).within(bounds) for face in edges] == [[], []]


def test_a_rectangle_round_all_leaves_all(edges):
    for face in edges:
        assert sum(p.Area for p in Reach.of(face).within(ALL_ROUND)) == pytest.approx(
            face.Area, rel=1e-3
        )


def test_the_pieces_look_out_of_the_wood_as_the_face_does(edges):
    for face in edges:
        up = face.BoundBox.ZMax > -10
        for piece in Reach.of(face).within(AT_THE_MOUTH):
            rise = facets_of(piece, 0, fine=0.006).normal[:, 2]
            assert np.all(rise > 0) if up else np.all(rise < 0)


def test_other_faces_are_cut_by_the_kernel():
    face = Part.makeCylinder(50, 20).Faces[0]
    bounds = (0.0, 60.0, -60.0, 60.0)
    assert Reach.of(face).strip is None
    found = Part.Compound(Reach.of(face).within(bounds))
    assert found.Area == pytest.approx(20 * 2 * 50 * (np.pi / 2 + np.arcsin(1 / 50)), rel=1e-6)


@pytest.mark.parametrize("measure", ["wall_treble", "wall_bass", "wood_floor"])
def test_wood_by_drawn_faces_is_what_the_whole_faces_tell(measure, monkeypatch):
    from freecad_neckfit.solids.measure import wood

    values = complete({"body.edge_round": 3.0})
    parts = build(values).parts | {"body": drawn_body(values)}
    measured = getattr(wood, measure)
    found = measured(Context(parts, values))
    monkeypatch.setattr(Context, "is_cut", lambda *_: False)
    assert found.value > 1
    assert found.value == pytest.approx(measured(Context(parts, values)).value, abs=1e-4)


def test_a_drawn_wall_is_a_strip_and_its_lengths_lie_on_it():
    body = drawn_body(complete({"body.edge_round": 3.0}))
    (wall,) = (f for f in body.Faces if type(f.Surface).__name__ == "SurfaceOfExtrusion")
    pieces = Reach.of(wall).within(BEHIND)
    assert 0 < sum(p.Area for p in pieces) < wall.Area / 2
    for point in np.concatenate([facets_of(p, 0, fine=0.05).points for p in pieces])[::31, 0]:
        assert wall.distToShape(Part.Vertex(Vector(*point)))[0] < 1e-3
    assert Part.Compound(pieces).distToShape(by_kernel(wall, BEHIND))[0] < 1e-6
    assert Reach.of(wall).within(NOWHERE_NEAR) == []


def test_a_range_that_reaches_past_its_surface_by_rounding_is_held(edges):
    class Face:
        """A face whose parameters the kernel tells a little too wide."""

        Surface = edges[0].Surface
        ParameterRange = tuple(
            end + away for end, away in zip(Surface.bounds(), (-1e-7, 1e-7) * 2, strict=True)
        )

    assert Net.of(Face).poles.shape == (edges[0].Surface.NbUPoles, edges[0].Surface.NbVPoles, 3)


@pytest.mark.parametrize("points", [6, 40])
def test_all_of_a_face_within_a_rectangle_lies_in_the_runs_told_by_its_poles(points):
    around = np.linspace(0, 2 * np.pi, points, endpoint=False)
    curve = Part.BSplineCurve()
    curve.interpolate([Vector(90 * np.cos(a), 60 * np.sin(a), 0) for a in [*around, 2 * np.pi]])
    wall = curve.toShape().extrude(Vector(2, 1, 30)).Faces[0]
    net, (first, last) = Net.of(wall), wall.ParameterRange[:2]
    rng = np.random.default_rng(points)
    for x, y in rng.uniform((-100, -70), (100, 70), (60, 2)):
        bounds = (x - 6, x + 6, y - 6, y + 6)
        runs = net.near(wall, 0, (first, last), bounds)
        u, v = np.meshgrid(np.linspace(first, last, 500), (0.0, 0.5, 1.0))
        v = wall.ParameterRange[2] + v * (wall.ParameterRange[3] - wall.ParameterRange[2])
        spots = [
            wall.Surface.value(float(a), float(b)) for a, b in zip(u.flat, v.flat, strict=True)
        ]
        within = [
            k for s, k in zip(spots, u.flat, strict=True)
            if bounds[0] <= s.x <= bounds[1] and bounds[2] <= s.y <= bounds[3]
        ]  # fmt: skip
        assert all(any(a - 1e-9 <= k <= b + 1e-9 for a, b in runs) for k in within)
        length = sum(curve.length(a, b) for a, b in runs)
        assert length < 60  # the rectangle's own lengths and some spans of 5 mm

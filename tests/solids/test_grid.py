"""Free-form fillets laid out as a grid, and the nearest part of a level section."""

import numpy as np
import pytest

Part = pytest.importorskip("Part")
from FreeCAD import Vector  # noqa: E402

from freecad_neckfit.job.resolve import complete  # noqa: E402
from freecad_neckfit.solids.build import build  # noqa: E402
from freecad_neckfit.solids.grid import grid_of  # noqa: E402
from freecad_neckfit.solids.measure.context import Context  # noqa: E402
from freecad_neckfit.solids.measure.facets import Facets  # noqa: E402
from freecad_neckfit.solids.measure.nearest_section import Bundles  # noqa: E402
from freecad_neckfit.solids.measure.sections import section  # noqa: E402
from freecad_neckfit.solids.recognise.neck.from_part import triangles_of  # noqa: E402

pytestmark = pytest.mark.freecad


@pytest.fixture(scope="module")
def fillet():
    """The fillet along the foot of a round end, over a tilted floor: no torus."""
    values = complete({"pocket.end_shape": "round", "pocket.end_radius": 46.8,
                       "pocket.angle": 2.0, "pocket.floor_fillet": 0.6})  # fmt: skip
    context = Context(build(values).parts, values)
    faces = [context.faces("body")[i] for i in context.body_faces.fillets]
    return max(faces, key=lambda f: f.BoundBox.YLength)


def test_a_fillet_along_an_arc_takes_few_triangles_that_leave_it_by_a_thousandth(fillet):
    triangles = grid_of(fillet)
    assert len(triangles) < 10_000
    spots = np.concatenate([triangles.mean(axis=1), triangles[:, :2].mean(axis=1)])[::40]
    off = [Part.Vertex(Vector(*p.tolist())).distToShape(fillet)[0] for p in spots]
    assert max(off) < 0.0015


def test_a_grids_triangles_look_out_of_the_wood(fillet):
    triangles = grid_of(fillet)
    across = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    assert across[:, 2].min() > -1e-9  # a fillet at a floor looks up
    assert across[:, 2].max() > 0


def tipped(shape):
    shape.rotate(Vector(), Vector(1, 2, 0.5), 63)
    return shape


ROUND = {
    "cone": tipped(Part.makeCone(30, 26, 12, Vector(), Vector(0, 0, 1), 70)),
    "bore": tipped(Part.makeBox(40, 40, 8).cut(Part.makeCylinder(25, 8))),
    "rim": tipped(Part.makeCylinder(20, 9, Vector(), Vector(0, 0, 1), 100)),
    "ring": tipped(Part.makeTorus(20, 4, Vector(), Vector(0, 0, 1), -40, 70, 120)),
    "cut aslant": tipped(Part.makeCylinder(20, 30, Vector(), Vector(0, 0, 1), 100).cut(
        Part.makeBox(90, 90, 40, Vector(-45, -45, 12), Vector(0.3, 0.2, 1)))),
}  # fmt: skip


def curved(name):
    return [f for f in ROUND[name].Faces if type(f.Surface).__name__ != "Plane"]


@pytest.mark.parametrize("sag", [0.1, 0.001])
@pytest.mark.parametrize("name", ROUND)
def test_a_round_face_is_laid_out_with_its_corners_on_it(name, sag):
    assert curved(name)
    for face in curved(name):
        triangles = grid_of(face, sag=sag)
        for corner in triangles.reshape(-1, 3)[:: max(1, len(triangles) // 20)].tolist():
            on = face.Surface.parameter(Vector(*corner))
            assert (face.Surface.value(*on) - Vector(*corner)).Length < 1e-6
        across = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
        size = np.linalg.norm(across, axis=1)
        assert size.sum() / 2 == pytest.approx(face.Area, rel=0.012 if sag > 0.01 else 1e-3)
        for middle, out in zip(triangles.mean(axis=1), across / size[:, None], strict=True):
            on = face.Surface.parameter(Vector(*middle.tolist()))
            normal = face.normalAt(*on)
            assert np.dot(out, (normal.x, normal.y, normal.z)) > 0.95
            assert (face.Surface.value(*on) - Vector(*middle.tolist())).Length < sag


def test_the_corners_along_an_edge_lie_on_the_edge():
    (face,) = curved("cut aslant")
    aslant = next(e for e in face.Edges if type(e.Curve).__name__ == "Ellipse")
    corners = np.unique(grid_of(face, sag=0.1).reshape(-1, 3).round(9), axis=0)
    off = [aslant.distToShape(Part.Vertex(Vector(*c.tolist())))[0] for c in corners]
    assert sum(o < 1e-6 for o in off) > 8


def bumped(height, *, knots=40):
    """A flat free-form sheet of 450 mm with one bump, narrower than a twelfth of it."""
    poles = [[Vector(450 * i / knots, 10 * j, height if (i, j) == (13, 2) else 0.0)
              for j in range(6)] for i in range(knots + 1)]  # fmt: skip
    surface = Part.BSplineSurface()
    along = [float(k) for k in range(knots - 1)]
    surface.buildFromPolesMultsKnots(poles, [4, *[1] * (knots - 3), 4], [4, 1, 1, 4], along,
                                     [0.0, 1.0, 2.0, 3.0], False, False, 3, 3)  # fmt: skip
    return surface.toShape()


@pytest.mark.parametrize("sag", [0.1, 0.002])
@pytest.mark.parametrize("height", [1.0, 5.0])
def test_a_bump_between_few_steps_is_not_left_out(height, sag):
    face = bumped(height)
    triangles = grid_of(face, sag=sag)
    if triangles is None:
        triangles = triangles_of(face, sag)
    u0, u1, v0, v1 = face.ParameterRange
    top = max(face.valueAt(u, v).z
              for u in np.linspace(u0, u1, 400) for v in np.linspace(v0, v1, 40))  # fmt: skip
    assert triangles[..., 2].max() == pytest.approx(top, abs=2 * sag)


def test_a_whole_cylinder_has_not_four_edges_and_gets_no_grid():
    assert [grid_of(f) for f in Part.makeCylinder(3, 5).Faces if len(f.Edges) == 3] == [None]


def test_a_face_that_is_not_bounded_by_four_edges_gets_no_grid():
    face = Part.makeBox(10, 10, 10).cut(Part.makeCylinder(2, 30)).Faces
    assert all(grid_of(f) is None for f in face if len(f.Edges) != 4)
    assert any(len(f.Edges) != 4 for f in face)


def test_a_fillet_one_edge_of_which_is_a_point_gets_no_grid():
    values = complete({"pocket.corner_radius": 0.8, "pocket.floor_fillet": 0.8,
                       "pocket.angle": 2.0})  # fmt: skip
    context = Context(build(values, parts=("body", "heel")).parts, values)
    faces = [context.faces("body")[i] for i in context.body_faces.fillets]
    pointed = [f for f in faces if any(e.Degenerated for e in f.Edges)]
    assert len(pointed) == 2
    assert all(grid_of(f) is None for f in pointed)


def test_the_nearest_part_of_a_section_is_that_of_all_triangles():
    rng = np.random.default_rng(4)
    points = rng.uniform(-20, 20, (300, 1, 3)) + rng.normal(0, 3, (300, 3, 3))
    normal = np.cross(points[:, 1] - points[:, 0], points[:, 2] - points[:, 0])
    normal /= np.linalg.norm(normal, axis=1)[:, None]
    facets = Facets(points, normal, np.arange(300) // 50)
    spots = rng.uniform(-30, 30, (80, 3))
    expected = []
    for spot in spots:
        segments, _ = section(facets, float(spot[2]))
        start, along = segments[:, 0], segments[:, 1] - segments[:, 0]
        share = ((spot[:2] - start) * along).sum(axis=1) / (along**2).sum(axis=1)
        foot = start + np.clip(share, 0, 1)[:, None] * along
        expected.append(np.linalg.norm(spot[:2] - foot, axis=1).min(initial=np.inf))
    bundles = Bundles(facets)
    assert bundles.distance(spots) == pytest.approx(np.array(expected), abs=1e-9)
    rough = bundles.distance(spots, enough=3.0)
    far = np.array(expected) > 3.0
    assert far.any()
    assert rough[far] == pytest.approx(np.array(expected)[far], abs=1e-9)
    assert (rough[~far] <= 3.0).all()

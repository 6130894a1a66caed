"""Interference of the solids against another kernel: meshes in ``manifold3d`` (Apache-2.0)."""

import numpy as np
import pytest

FreeCAD = pytest.importorskip("FreeCAD", reason="needs FreeCAD's modules")
manifold3d = pytest.importorskip("manifold3d", reason="tests/run installs it where it is published")

import Part  # noqa: E402

from freecad_neckfit.run.chain import check_values  # noqa: E402

pytestmark = pytest.mark.freecad

CHORDS = (0.05, 0.0125, 0.003)
"""Largest distance [mm] of the meshes from their surfaces; a limit on angles rules above 0.05."""


def mesh(shape, chord):
    """A closed mesh of the shape in the other kernel."""
    copy = shape.copy()
    points, triangles = copy.tessellate(chord)
    solid = manifold3d.Manifold(
        manifold3d.Mesh(
            vert_properties=np.array([(p.x, p.y, p.z) for p in points], dtype=np.float32),
            tri_verts=np.array(triangles, dtype=np.uint32),
        )
    )
    assert solid.status() == manifold3d.Error.NoError
    return solid


def overlap(first, second, chord):
    return (mesh(first, chord) ^ mesh(second, chord)).volume()


@pytest.fixture(scope="module")
def sunk():
    """A domed body with its fretboard's round corners sunk in a plate."""
    return check_values({
        "pocket.depth": 18.288, "plate.cover": "surround", "pocket.angle": 0.5,
        "neck.heel_end": "round", "neck.heel_radius": 60.0, "neck.radius_end": 400.0,
    })  # fmt: skip


def test_the_volume_differs_less_the_finer_the_other_kernels_mesh():
    """A heel too wide for its round pocket bites the round wall: the finer, the nearer."""
    joint = check_values({
        "pocket.end_shape": "round", "pocket.end_radius": 45.0, "neck.heel_end": "round",
        "neck.heel_radius": 45.0, "neck.heel_width_end": 58.0, "neck.heel_width_mouth": 57.5,
        "seat.end_gap": 0.0,
    }).assembly.parts  # fmt: skip
    box = FreeCAD.BoundBox(-80.0, -40.0, -20.0, 10.0, 40.0, -1.0)
    corner = FreeCAD.Vector(box.XMin, box.YMin, box.ZMin)
    crop = Part.makeBox(box.XLength, box.YLength, box.ZLength, corner)
    heel, body = joint["heel"].copy().common(crop), joint["body"].copy().common(crop)
    exact = heel.copy().common(body.copy()).Volume
    assert exact > 100
    off = [abs(overlap(heel, body, chord) - exact) for chord in CHORDS]
    assert off[0] > off[1] > off[2]
    assert off[2] < 1e-2 * exact


def test_the_reported_volume_is_that_of_the_other_kernel(sunk):
    clash = sunk.find("clash.neck_plate")
    parts = sunk.assembly.parts
    other = sum(overlap(parts[name], parts["plate"], CHORDS[-1]) for name in ("heel", "fretboard"))
    assert clash.solids.detail["volume"] == pytest.approx(other, rel=2e-3)


def test_the_depth_is_the_lift_that_frees_the_other_kernels_meshes(sunk):
    """Lifted by the depth the meshes are free; lifted by 0.02 mm less they still meet."""
    parts = sunk.assembly.parts
    depth = -sunk.find("overhang.gap").value
    plate, board = mesh(parts["plate"], CHORDS[-1]), mesh(parts["fretboard"], CHORDS[-1])
    assert (board.translate((0, 0, depth + 0.005)) ^ plate).volume() == pytest.approx(0, abs=1e-3)
    assert (board.translate((0, 0, depth - 0.02)) ^ plate).volume() > 0.1

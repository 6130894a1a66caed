"""Rounds put together directly are those of the kernel, and left to it where they are not."""

from __future__ import annotations

import math

import pytest

from freecad_neckfit.host import load_freecad

if load_freecad():
    pytest.skip("FreeCAD is not installed", allow_module_level=True)

from freecad_neckfit.job.outline import outline_of
from freecad_neckfit.job.resolve import complete
from freecad_neckfit.solids.build.outline import front_edge, segments_of
from freecad_neckfit.solids.build.plan import prism, rounded_rectangle
from freecad_neckfit.solids.build.rounds import rounded_slab
from freecad_neckfit.solids.build.shapes import proven

Z = (-40.0, 0.0)


def own(**stated):
    return segments_of(outline_of(complete({k.replace("__", "."): x for k, x in stated.items()})))


def by_the_kernel(outline, radius, front):
    slab = prism(outline, *Z)
    ends = [] if front is None else [front[0], front[2]]

    def is_sharp(edge):
        at_front = [any(math.dist((p.X, p.Y), e) < 1e-6 for e in ends) for p in edge.Vertexes]
        return all(at_front) or abs(edge.BoundBox.ZLength) > 1

    return slab.makeFillet(radius, [e for e in slab.Edges if not is_sharp(e)]).Solids[0]


STADIUM = [
    ((-40.0, -20.0), None, (40.0, -20.0)), ((40.0, -20.0), (60.0, 0.0), (40.0, 20.0)),
    ((40.0, 20.0), None, (-40.0, 20.0)), ((-40.0, 20.0), (-60.0, 0.0), (-40.0, -20.0)),
]  # fmt: skip
OUTLINES = {
    "own": own(), "own, other sizes": own(body__waist_width=200.0, body__block_treble=38.0),
    "left-handed": own(strings__left_handed=True), "stadium": STADIUM,
    "rectangle": rounded_rectangle((-80, 90), (-50, 60), corner=12.5),
}  # fmt: skip


@pytest.mark.parametrize("radius", [1.0, 3.2, 6.0])
@pytest.mark.parametrize("name", OUTLINES)
def test_it_is_the_kernels_own_solid(name, radius):
    outline = OUTLINES[name]
    front = front_edge(outline) if name.startswith(("own", "left")) else None
    assert (front is not None) == name.startswith(("own", "left"))
    found = proven(rounded_slab(outline, Z, radius, front), name=name)
    expected = by_the_kernel(outline, radius, front)
    assert found.Volume == pytest.approx(expected.Volume, rel=1e-9)
    assert found.Area == pytest.approx(expected.Area, rel=1e-9)
    assert len(found.Faces) == len(expected.Faces)
    assert found.copy().cut(expected.copy()).Volume == pytest.approx(0.0, abs=1e-3)
    kinds = {type(f.Surface).__name__ for f in found.Faces}
    assert kinds == {"Plane", "Cylinder", "Toroid"}


def test_a_stadiums_rounds_take_what_the_rings_own_theorem_says():
    radius = 3.0
    found = rounded_slab(STADIUM, Z, radius, None)
    # A corner's spandrel (1 - pi/4)·r² runs along two straight sides and round the full circle,
    # on the circle about its centre of gravity (Pappus), at the upper edge and at the lower.
    spandrel = (1 - math.pi / 4) * radius**2
    inward = radius * (1 - (10 - 3 * math.pi) / (12 - 3 * math.pi)) - radius
    lost = 2 * spandrel * (2 * 80.0 + 2 * math.pi * (20.0 - (-inward)))
    assert 40.0 * (80 * 40 + math.pi * 400) - found.Volume == pytest.approx(lost, rel=1e-6)


def corner_cut(outline, front):
    """The front's neighbour leans: it is not square to the front any more."""
    at = outline.index(front)
    (x, y), through, end = outline[(at + 1) % len(outline)]
    return [*outline[:at], (front[0], None, (x, y - 2.0)), ((x, y - 2.0), through, end),
            *outline[at + 2 :]]  # fmt: skip


@pytest.mark.parametrize(
    ("outline", "radius", "front"),
    [
        (rounded_rectangle((-80, 90), (-50, 60), corner=0.0), 3.0, None),
        (rounded_rectangle((-80, 90), (-50, 60), corner=3.0), 3.0, None),
        (rounded_rectangle((-80, 90), (-3.2, 3.2), corner=3.2), 3.0, None),
        (rounded_rectangle((-80, 90), (-50, 60), corner=12.0), 6.0, None),
    ],
    ids=["corners", "bulge as narrow as the round", "narrow as the rounds", "ring without hole"],
)
def test_other_outlines_are_left_to_the_kernel(outline, radius, front):
    assert rounded_slab(outline, Z, radius, front) is None


def test_a_front_that_is_not_square_is_left_to_the_kernel():
    outline = own()
    leaning = corner_cut([*outline[-1:], *outline[:-1]], outline[-1])
    assert front_edge(leaning) is not None
    assert rounded_slab(leaning, Z, 3.0, front_edge(leaning)) is None


def peanut(waist):
    """Two circles of radius 40 joined by hollows that touch them, ``waist`` wide between."""
    wide, apart, half = 40.0, 60.0, waist / 2
    hollow = (apart**2 + half**2 - wide**2) / (2 * (wide - half))
    (x, y), scale = (apart, half + hollow), wide / (wide + hollow)
    right, left = (apart - x * scale, y * scale), (x * scale - apart, y * scale)
    ends = [right, left, (left[0], -left[1]), (right[0], -right[1])]
    ways = [(0.0, half), (-apart - wide, 0.0), (0.0, -half), (apart + wide, 0.0)]
    return list(zip(ends, ways, [*ends[1:], ends[0]], strict=True))


@pytest.mark.parametrize(("waist", "fits"), [(30.0, True), (14.0, True), (12.0, False), (8, False)])
def test_a_waist_as_narrow_as_its_rounds_is_left_to_the_kernel(waist, fits):
    found = rounded_slab(peanut(waist), Z, 6.0, None)
    assert (found is not None) == fits
    if fits:
        expected = by_the_kernel(peanut(waist), 6.0, None)
        assert proven(found, name="peanut").Volume == pytest.approx(expected.Volume, rel=1e-9)

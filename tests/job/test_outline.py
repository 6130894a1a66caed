"""The body's outline: the workbench's own, given points, and DXF drawings."""

import math

import numpy as np
import pytest

from freecad_neckfit.job.errors import BadInput, CannotBuild
from freecad_neckfit.job.outline import Outline, Segment, outline_of
from freecad_neckfit.job.outline.sound import check_outline, first_crossing
from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.resolve import complete

OWN = [
    "body.tail", "body.lower_width", "body.waist_width", "body.upper_width", "body.block_treble",
    "body.block_bass", "body.cutaway_treble", "body.cutaway_bass", "pocket.length",
]  # fmt: skip
LARGEST_EDGE = ALL["body.edge_round"].high


def closed(outline):
    ends = [s.end for s in outline.segments]
    starts = [s.start for s in outline.segments[1:] + outline.segments[:1]]
    assert np.allclose(ends, starts, atol=1e-9)


def directions(segment):
    """Unit directions at start and end of a segment."""
    if segment.through is None:
        along = np.subtract(segment.end, segment.start)
        return (along / np.hypot(*along),) * 2
    (x, y), _ = segment.circle
    sign = np.sign(segment.span[1])
    found = []
    for p in (segment.start, segment.end):
        out = np.array([-(p[1] - y), p[0] - x]) * sign
        found.append(out / np.hypot(*out))
    return tuple(found)


def test_the_own_outline_is_tangent_but_at_the_corners_of_the_mouth():
    outline = outline_of(complete({}))
    kinks = []
    for one, after in zip(
        outline.segments, outline.segments[1:] + outline.segments[:1], strict=True
    ):
        if directions(one)[1] @ directions(after)[0] < 1 - 1e-9:
            kinks.append(one.end)
    assert sorted(kinks) == [(-76.0, -40.0), (-76.0, 36.0)]


def test_the_own_outline_has_the_measures_stated():
    x, y = outline_of(complete({})).polyline(0.001).T
    assert x.max() == pytest.approx(310.0)
    assert y.max() == pytest.approx(162.5)
    assert y.min() == pytest.approx(-162.5)
    at_waist = np.abs(y[np.abs(x - 0.39 * 310) < 5])
    assert at_waist.min() == pytest.approx(117.5, abs=0.01)


def test_the_walls_beside_the_pocket_run_straight_to_the_cutaways_bottom():
    lines = {(s.start, s.end) for s in outline_of(complete({})).segments if s.through is None}
    flat = {frozenset((*a, *b)) for a, b in lines}
    assert frozenset((-76.0, 36.0, -18.0)) in flat  # treble: y = 36 from x = -76 to x = -18
    assert frozenset((-76.0, -40.0, -34.0)) in flat


def test_a_left_handed_body_is_mirrored():
    right = outline_of(complete({})).polyline(0.5)
    left = outline_of(complete({"strings.left_handed": True})).polyline(0.5)
    mirrored = {(round(x, 6), round(-y, 6)) for x, y in left}
    assert {(round(x, 6), round(y, 6)) for x, y in right} == mirrored


def test_the_own_outline_is_sound_wherever_it_is_not_refused():
    rng = np.random.default_rng(7)
    drawn = refused = 0
    for turn in range(600):
        stated = {
            key: float(
                rng.choice([ALL[key].low, ALL[key].high, rng.uniform(ALL[key].low, ALL[key].high)])
            )
            for key in OWN
        }
        stated |= {"pocket.width_end": 50.0, "pocket.width_mouth": 50.0}
        stated["strings.left_handed"] = bool(turn % 2)
        values = complete(stated)
        try:
            outline = outline_of(values)
        except CannotBuild:
            refused += 1
            continue
        drawn += 1
        closed(outline)
        check_outline(outline, values, name="own")
        bulges = [s.circle[1] for s in outline.segments if s.through and s.span[1] > 0]
        assert min(bulges) > LARGEST_EDGE
    assert drawn > 100
    assert refused > 100


def circle(radius=10.0):
    halves = [
        ((radius, 0.0), (0.0, radius), (-radius, 0.0)),
        ((-radius, 0.0), (0.0, -radius), (radius, 0.0)),
    ]
    return Outline.of_triples([(a, b, c) for a, b, c in halves])


def test_the_polyline_strays_from_an_arc_by_no_more_than_asked():
    for chord in (1.0, 0.1, 0.01):
        corners = circle().polyline(chord)
        middles = (corners + np.roll(corners, -1, axis=0)) / 2
        sagitta = 10 - np.hypot(*middles.T)
        assert sagitta.max() <= chord
        assert np.allclose(np.hypot(*corners.T), 10.0)


def test_area_distance_and_side_of_a_circle():
    outline = circle()
    assert outline.area == pytest.approx(math.pi * 100, rel=1e-2)
    points = np.array([(0.0, 0.0), (3.0, 4.0), (20.0, 0.0), (0.0, -13.0)])
    assert outline.distance(points) == pytest.approx([10, 5, 10, 3])
    assert outline.depth(points) == pytest.approx([10, 5, -10, -3])
    assert list(outline.contains(points)) == [True, True, False, False]


def test_distance_agrees_with_a_fine_polygon():
    outline = outline_of(complete({}))
    rng = np.random.default_rng(1)
    points = rng.uniform((-120, -170), (320, 170), (40, 2))
    corners = outline.polyline(1e-5)
    ends = np.roll(corners, -1, axis=0) - corners
    for point, found in zip(points, outline.distance(points), strict=True):
        share = np.clip(np.sum((point - corners) * ends, 1) / np.sum(ends**2, 1), 0, 1)[:, None]
        assert np.hypot(*(corners + share * ends - point).T).min() == pytest.approx(found, abs=2e-5)


def test_an_outline_run_clockwise_is_turned_round():
    clockwise = Outline.of_points([(0, 0), (0, 10), (10, 10), (10, 0)])
    assert clockwise.area == pytest.approx(100.0)
    closed(clockwise)
    arcs = Outline.of_segments(
        [
            Segment((10.0, 0.0), (-10.0, 0.0), (0.0, -10.0)),
            Segment((-10.0, 0.0), (10.0, 0.0), (0.0, 10.0)),
        ]
    )
    assert arcs.area > 0
    closed(arcs)


BODY = [(-76, -60), (300, -150), (300, 150), (-76, 60)]


def given_points(points, **more):
    return outline_of(complete({"body.outline": "points", "body.outline_points": points} | more))


def test_given_points_are_taken_as_they_are_closed_or_not():
    assert len(given_points(BODY).segments) == 4
    assert len(given_points([*BODY, BODY[0]]).segments) == 4


@pytest.mark.parametrize(
    ("points", "words"),
    [
        ([(-76, -60), (300, 150), (300, -150), (-76, 60)], ("crosses", "X =")),
        ([(-76, -60), (300, -150), (300, 150), (400, 150), (300, 150), (-76, 60)], ("crosses",)),
        ([(-76, -60), (300, -150), (300, 150), (-76, 60), (-76, 61)], ("crosses",)),
        ([(-76, -20), (300, -20), (300, 20), (-76, 20)], ("end wall", "56.20")),
        ([(100, -60), (300, -150), (300, 150)], ("end wall",)),
        ([(-70, -60), (300, -150), (300, 150), (-70, 60)], ("pocket.length", "-70.00", "-76.00")),
        ([(-76, -60), (3000, -150), (300, 150), (-76, 60)], ("2000 mm",)),
        ([(-76, -60), (-76, -60.005), (300, -150), (300, 150), (-76, 60)], ("0.0050 mm",)),
        ([(0, 0), (1, 0), (1, 1)], ("no body",)),
    ],
)
def test_points_that_make_no_body_are_refused(points, words):
    with pytest.raises(CannotBuild) as refusal:
        given_points([(float(x), float(y)) for x, y in points])
    sentence = str(refusal.value)
    assert sentence.startswith("body.outline_points")
    assert sentence.endswith(".")
    for word in words:
        assert word in sentence


def test_a_crossing_is_found_wherever_it_is():
    rng = np.random.default_rng(3)
    angles = np.sort(rng.uniform(0, math.tau, 700))
    star = np.stack([np.cos(angles), np.sin(angles)], axis=1) * rng.uniform(50, 60, 700)[:, None]
    assert first_crossing(star) is None
    for i in (0, 300, 650):
        bad = star.copy()
        bad[[i, i + 40]] = bad[[i + 40, i]]
        assert first_crossing(bad) is not None


@pytest.mark.parametrize(
    ("stated", "words"),
    [
        ({"body.outline": "points"}, ("body.outline_points", "missing")),
        ({"body.outline": "file"}, ("body.outline_file", "missing")),
        ({"body.outline": "file", "body.outline_file": "a.svg"}, ("a.svg", "neither")),
        ({"body.outline": "file", "body.outline_file": "a.FCStd"}, ("a.FCStd", "FreeCAD")),
        (
            {"body.outline": "file", "body.outline_file": "/nowhere/a.dxf"},
            ("a.dxf", "no such file"),
        ),
    ],
)
def test_an_outline_that_is_not_there_is_refused(stated, words):
    with pytest.raises(BadInput) as refusal:
        outline_of(complete(stated))
    for word in words:
        assert word in str(refusal.value)


def test_a_sketch_is_read_by_the_hook_given():
    asked = []

    def sketch(path):
        asked.append(path.name)
        corners = [(float(x), float(y)) for x, y in BODY]
        return [(a, None, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)]

    values = complete({"body.outline": "file", "body.outline_file": "a.FCStd"})
    assert len(outline_of(values, sketch=sketch).segments) == 4
    assert asked == ["a.FCStd"]

"""Parameters of the body and of the pocket routed into it."""

from __future__ import annotations

from ..parameter import COMMON, DERIVED, MEMORY, PROJECT, declare
from ..quantity import Kind

L, A, C = Kind.LENGTH, Kind.ANGLE, Kind.CHOICE

BODY = declare(
    "body",
    (
        "thickness",
        L,
        44.45,
        "thickness of the body, back to top, at the pocket's end wall",
        dict(low=20.0, high=90.0, where="calipers at the pocket's end wall", tolerance=(-0.3, 0.3)),
    ),
    (
        "outline",
        C,
        "own",
        "where the outline comes from: this workbench, points, a file, or a section of a solid",
        dict(choices=("own", "points", "file", "section"), origin=PROJECT),
    ),
    (
        "outline_points",
        Kind.POINTS,
        None,
        "corners of the outline as [X, Y] pairs in the body frame",
        dict(origin=DERIVED),
    ),
    (
        "outline_file",
        Kind.PATH,
        "",
        "DXF or FCStd file with one closed outline in the body frame",
        dict(origin=PROJECT),
    ),
    ("tail", L, 310.0, "own outline: end wall to the body's tail", dict(low=250.0, high=450.0)),
    (
        "lower_width",
        L,
        325.0,
        "own outline: widest part behind the bridge",
        dict(low=220.0, high=420.0),
    ),
    (
        "waist_width",
        L,
        235.0,
        "own outline: narrowest part at the waist",
        dict(low=160.0, high=320.0),
    ),
    ("upper_width", L, 285.0, "own outline: widest part at the horns", dict(low=240.0, high=380.0)),
    (
        "block_treble",
        L,
        36.0,
        "own outline: centreline to the cutaway's wall beside the pocket, treble side",
        dict(low=28.0, high=65.0),
    ),
    (
        "block_bass",
        L,
        40.0,
        "own outline: centreline to the cutaway's wall beside the pocket, bass side",
        dict(low=28.0, high=65.0),
    ),
    (
        "cutaway_treble",
        L,
        18.0,
        "own outline: end wall to the bottom of the treble cutaway, toward the mouth",
        dict(low=-20.0, high=70.0),
    ),
    (
        "cutaway_bass",
        L,
        34.0,
        "own outline: end wall to the bottom of the bass cutaway, toward the mouth",
        dict(low=-20.0, high=70.0),
    ),
    (
        "edge_round",
        L,
        3.0,
        "radius of the rounded outer edges, top and back",
        dict(low=0.0, high=12.0),
    ),
    (
        "top",
        C,
        "flat",
        "shape of the top: flat, domed (a sphere), carved (a bowl of two radii) or sampled",
        dict(choices=("flat", "domed", "carved", "sampled"), origin=PROJECT),
    ),
    ("dome_radius", L, 4000.0, "domed top: radius of the sphere", dict(low=1500.0, high=20000.0)),
    ("dome_centre", L, 120.0, "domed top: X of the highest point", dict(low=-100.0, high=300.0)),
    (
        "carve_slope",
        A,
        1.5,
        "carved top: climb toward the bridge at the origin",
        dict(low=-3.0, high=5.0),
    ),
    (
        "carve_radius_along",
        L,
        5000.0,
        "carved top: radius along the centreline at the origin",
        dict(low=2500.0, high=50000.0),
    ),
    (
        "carve_radius_across",
        L,
        2500.0,
        "carved top: radius square to the centreline at the origin",
        dict(low=1200.0, high=50000.0),
    ),
    (
        "top_heights",
        L,
        None,
        "sampled top: heights over the origin, row by row across the centreline",
        dict(low=-100.0, high=100.0, origin=DERIVED, many="sample"),
    ),
    ("top_rows", Kind.COUNT, 2, "sampled top: number of samples across", dict(low=2, high=200)),
    ("top_step", L, 10.0, "sampled top: from sample to sample", dict(low=0.5, high=50.0)),
    ("top_from_x", L, -80.0, "sampled top: X of the first row", dict(low=-400.0, high=400.0)),
    ("top_from_y", L, -70.0, "sampled top: Y of a row's first", dict(low=-400.0, high=400.0)),
    (
        "top_error",
        L,
        0.0,
        "sampled top: largest error found between the samples",
        dict(low=0.0, high=20.0, origin=PROJECT),
    ),
    (
        "contour_depth",
        L,
        0.0,
        "heel contour: wood taken off the back at the pocket's mouth",
        dict(low=0.0, high=25.0),
    ),
    (
        "contour_length",
        L,
        40.0,
        "heel contour: mouth to where the slope has run out to nothing",
        dict(low=10.0, high=120.0),
    ),
)

POCKET = declare(
    "pocket",
    (
        "depth",
        L,
        15.875,
        "depth of the pocket in bare wood, at the end wall, square to the datum",
        dict(
            low=3.0,
            high=60.0,
            origin=COMMON,
            tolerance=(-0.1, 0.1),
            where="depth gauge from the top at the end wall",
        ),
    ),
    (
        "angle",
        A,
        0.0,
        "tilt of the floor; positive tips the headstock back",
        dict(low=-6.0, high=6.0, tolerance=(-0.1, 0.1)),
    ),
    (
        "length",
        L,
        76.0,
        "end wall to the body's edge where the neck leaves",
        dict(low=30.0, high=140.0, tolerance=(-0.2, 0.2), where="rule along the centreline"),
    ),
    (
        "width_end",
        L,
        56.2,
        "width of the pocket at the end wall",
        dict(
            low=35.0,
            high=110.0,
            tolerance=(-0.1, 0.1),
            where="inside calipers close to the end wall, above the corner radii",
        ),
    ),
    (
        "width_mouth",
        L,
        55.7,
        "width of the pocket at the mouth",
        dict(
            low=35.0, high=110.0, tolerance=(-0.1, 0.1), where="inside calipers at the body's edge"
        ),
    ),
    (
        "end_shape",
        C,
        "square",
        "shape of the end wall in plan",
        dict(choices=("square", "round"), origin=PROJECT),
    ),
    (
        "end_radius",
        L,
        None,
        "round end: radius of the end wall in plan",
        dict(low=15.0, high=400.0, origin=DERIVED),
    ),
    (
        "corner_radius",
        L,
        3.2,
        "radius of the corners between end wall and sides, left by the cutter",
        dict(low=0.0, high=15.0, tolerance=(-0.1, 0.1)),
    ),
    (
        "wall",
        C,
        "top",
        "the end wall is square to the top or to the floor",
        dict(choices=("top", "floor"), origin=PROJECT),
    ),
    (
        "floor_fillet",
        L,
        0.0,
        "radius left between the floor and the walls",
        dict(low=0.0, high=6.0),
    ),
)

CAVITY = declare(
    "cavity",
    ("x", L, None, "X of the cavity's centre", dict(low=-200.0, high=450.0)),
    ("y", L, 0.0, "Y of the cavity's centre", dict(low=-200.0, high=200.0)),
    ("length", L, 40.0, "size along the centreline", dict(low=3.0, high=300.0)),
    ("width", L, 90.0, "size square to the centreline", dict(low=3.0, high=300.0)),
    ("depth", L, 20.0, "depth from the top at the cavity's centre", dict(low=1.0, high=90.0)),
    ("corner_radius", L, 3.2, "radius of its corners in plan", dict(low=0.0, high=40.0)),
    many="cavity",
    origin=MEMORY,
)

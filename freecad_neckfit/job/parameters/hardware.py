"""Parameters of the cover plate, bridge, pickups, screws, neck plate and shim."""

from __future__ import annotations

from ..parameter import COMMON, DERIVED, MEMORY, PROJECT, Parameter, declare
from ..quantity import Kind

L, A, C = Kind.LENGTH, Kind.ANGLE, Kind.CHOICE

PLATE = declare(
    "plate",
    (
        "cover",
        C,
        "none",
        "cover plate: none, all round the pocket, or on the treble side only",
        dict(choices=("none", "surround", "treble side"), origin=PROJECT),
    ),
    (
        "thickness",
        L,
        2.4,
        "thickness of the cover plate",
        dict(
            low=0.5,
            high=6.0,
            origin=COMMON,
            tolerance=(-0.1, 0.1),
            where="calipers at the cut-out's edge",
        ),
    ),
    (
        "under_overhang",
        Kind.FLAG,
        True,
        "the plate runs under the fretboard's overhang",
        dict(origin=PROJECT),
    ),
    (
        "clearance",
        L,
        0.5,
        "cut-out beyond the pocket's edge, all round",
        dict(low=0.0, high=10.0, tolerance=(-0.2, 0.2)),
    ),
    ("margin", L, 25.0, "how far the plate reaches beyond its cut-out", dict(low=5.0, high=90.0)),
    (
        "reach",
        L,
        170.0,
        "end wall to the plate's end toward the bridge",
        dict(low=20.0, high=300.0),
    ),
)

BRIDGE = declare(
    "bridge",
    (
        "make",
        C,
        "separate saddles",
        "separate saddles, one fixed radius on two posts, or floating",
        dict(choices=("separate saddles", "fixed radius", "floating"), origin=PROJECT),
    ),
    (
        "mount",
        C,
        "top",
        "the bridge stands on the top, on the cover plate, or in a recess",
        dict(choices=("top", "plate", "recess"), origin=PROJECT),
    ),
    ("recess", L, 0.0, "depth of the recess under the bridge", dict(low=0.0, high=25.0)),
    (
        "front",
        L,
        184.5,
        "X of the saddle's string rest with the saddle fully forward",
        dict(low=20.0, high=600.0, where="rule from the end wall"),
    ),
    ("travel", L, 10.0, "saddle travel along the strings", dict(low=0.0, high=40.0)),
    (
        "low",
        L,
        9.5,
        "string's underside above the mount (floating: above the base), saddle at its lowest",
        dict(low=1.0, high=40.0),
    ),
    (
        "high",
        L,
        14.5,
        "string's underside above the mount (floating: above the base), saddle at its highest",
        dict(low=1.5, high=60.0),
    ),
    (
        "base_low",
        L,
        2.5,
        "floating: lowest height of the base above the mount",
        dict(low=0.0, high=20.0),
    ),
    (
        "base_high",
        L,
        6.0,
        "floating: highest height of the base above the mount",
        dict(low=0.0, high=30.0),
    ),
    (
        "saddle_radius",
        L,
        304.8,
        "fixed radius: radius over the strings' undersides",
        dict(low=120.0, high=100_000.0),
    ),
    (
        "post_spacing",
        L,
        74.0,
        "fixed radius: distance between the two posts",
        dict(low=30.0, high=140.0),
    ),
    ("anchor_back", L, 30.0, "saddle to string anchor, along X", dict(low=1.0, high=150.0)),
    (
        "anchor_height",
        L,
        2.0,
        "string anchor above the mount; negative for strings through the body",
        dict(low=-60.0, high=40.0),
    ),
    ("length", L, 70.0, "length of the bridge's base along X", dict(low=5.0, high=160.0)),
    ("width", L, 82.0, "width of the bridge's base", dict(low=30.0, high=180.0)),
)

PICKUP_ROWS = (
    ("fitted", Kind.FLAG, False, "a pickup is fitted here", dict(origin=PROJECT)),
    ("x", L, None, "X of the pickup's pole line", dict(low=-20.0, high=500.0)),
    (
        "mount",
        C,
        "plate",
        "what its height is set from: top, cover plate or cavity floor",
        dict(choices=("top", "plate", "cavity"), origin=PROJECT),
    ),
    ("cavity_depth", L, 20.0, "depth of its cavity from the top", dict(low=0.0, high=60.0)),
    (
        "body_height",
        L,
        18.0,
        "height of the pickup, poles included, over its springs' seat",
        dict(low=3.0, high=45.0),
    ),
    ("spring", L, 4.0, "height of its springs fully compressed", dict(low=0.0, high=25.0)),
    (
        "low",
        L,
        0.5,
        "pole tops above the mount at the lowest the hardware allows",
        dict(low=-20.0, high=45.0),
    ),
    ("high", L, 9.0, "pole tops above the mount at the highest", dict(low=-15.0, high=60.0)),
    ("length", L, 22.0, "size along the centreline, ring included", dict(low=5.0, high=100.0)),
    ("width", L, 84.0, "size square to the centreline", dict(low=20.0, high=160.0)),
    ("ring", L, 0.0, "height of its ring above the mount", dict(low=0.0, high=15.0)),
)
ROLES = ("neck", "middle", "bridge")
PICKUP_DEFAULTS = {"neck": 34.0, "middle": 88.0, "bridge": 142.0}


def _pickup(role: str) -> tuple[Parameter, ...]:
    rows = [r if r[0] != "x" else (*r[:2], PICKUP_DEFAULTS[role], *r[3:]) for r in PICKUP_ROWS]
    return declare(f"pickup_{role}", *rows)


PICKUPS = tuple(p for role in ROLES for p in _pickup(role))

SCREWS = declare(
    "screws",
    ("length", L, 45.0, "length under the head", dict(low=10.0, high=120.0)),
    ("shank", L, 4.2, "shank (outer thread) diameter", dict(low=2.0, high=10.0)),
    ("threaded", L, 30.0, "length of the threaded part, from the tip", dict(low=5.0, high=120.0)),
    ("body_hole", L, 4.5, "clearance hole through the body", dict(low=2.0, high=14.0)),
    (
        "head_seat",
        L,
        0.0,
        "depth of the head's seat below the neck plate's outer face or ferrule rim",
        dict(low=0.0, high=20.0),
    ),
    (
        "fixing",
        C,
        "wood screw",
        "wood screws, or machine screws into threaded inserts",
        dict(choices=("wood screw", "insert"), origin=PROJECT),
    ),
    (
        "insert_length",
        L,
        12.0,
        "length of the threaded insert, flush with the heel's bottom",
        dict(low=3.0, high=40.0),
    ),
    (
        "position_error",
        L,
        0.15,
        "how far a hole may lie from where it should",
        dict(low=0.0, high=2.0),
    ),
    (
        "lengths_stocked",
        L,
        None,
        "screw lengths the shop has",
        dict(low=10.0, high=120.0, many="stock", origin=DERIVED),
    ),
)
SCREW = declare(
    "screw",
    ("x", L, None, "X of the screw in the body frame at the floor", dict(low=-150.0, high=0.0)),
    ("y", L, None, "Y of the screw", dict(low=-60.0, high=60.0)),
    many="screw",
    origin=MEMORY,
)
OLD_PILOT = declare(
    "old_pilot",
    (
        "x",
        L,
        None,
        "x of an old pilot hole in the heel, from the heel end (neck frame, negative)",
        dict(low=-150.0, high=0.0),
    ),
    ("y", L, None, "y of an old pilot hole in the heel", dict(low=-60.0, high=60.0)),
    many="pilot",
    origin=MEMORY,
)
NECK_PLATE = declare(
    "neck_plate",
    (
        "make",
        C,
        "plate",
        "heads bear on a neck plate, in ferrules, or on the bare wood",
        dict(choices=("plate", "ferrules", "none"), origin=PROJECT),
    ),
    ("thickness", L, 2.0, "thickness of the neck plate", dict(low=0.5, high=6.0)),
    ("length", L, 64.0, "length of the neck plate", dict(low=20.0, high=140.0)),
    ("width", L, 51.0, "width of the neck plate", dict(low=15.0, high=90.0)),
    (
        "ferrule_depth",
        L,
        3.0,
        "depth of the ferrule's seat below the back",
        dict(low=0.0, high=20.0),
    ),
    ("ferrule_diameter", L, 14.0, "diameter of the ferrule", dict(low=5.0, high=30.0)),
)
SHIM = declare(
    "shim",
    (
        "make",
        C,
        "none",
        "no shim, a full wedge, or a strip at the end wall or at the mouth",
        dict(choices=("none", "wedge", "strip"), origin=PROJECT),
    ),
    ("wall", L, 0.5, "full wedge: thickness at the end wall", dict(low=0.0, high=5.0)),
    ("mouth", L, 0.0, "full wedge: thickness at the mouth", dict(low=0.0, high=5.0)),
    ("strip", L, 0.5, "strip: its thickness", dict(low=0.0, high=5.0)),
    (
        "strip_edge",
        L,
        12.0,
        "strip: end wall to the strip's mouth-side edge",
        dict(low=2.0, high=60.0),
    ),
)

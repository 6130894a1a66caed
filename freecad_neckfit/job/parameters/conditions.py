"""Finish, woods, climate and the limits that decide."""

from __future__ import annotations

from ..parameter import DERIVED, MEMORY, PROJECT, declare
from ..quantity import Kind

L, A, C = Kind.LENGTH, Kind.ANGLE, Kind.CHOICE

FINISH = declare(
    "finish",
    (
        "floor",
        L,
        0.0,
        "finish built up on the pocket's floor (0 where it is masked)",
        dict(low=0.0, high=1.5),
    ),
    ("wall", L, 0.0, "finish built up on each pocket wall", dict(low=0.0, high=1.5)),
    ("top", L, 0.25, "finish built up on the top", dict(low=0.0, high=1.5)),
)
WOOD = declare(
    "wood",
    ("body", Kind.TEXT, "red alder", "wood of the body, as named in the table of woods", {}),
    ("neck", Kind.TEXT, "sugar maple", "wood of the neck", {}),
    (
        "body_ring",
        A,
        45.0,
        "body: angle of the rings to the width (0 quartersawn, 90 flatsawn)",
        dict(low=0.0, high=90.0),
    ),
    (
        "neck_ring",
        A,
        90.0,
        "neck: angle of the rings to the heel's width (0 quartersawn, 90 flatsawn)",
        dict(low=0.0, high=90.0),
    ),
    (
        "moisture_cut",
        Kind.MOISTURE,
        8.0,
        "moisture of both woods when pocket and heel were measured",
        dict(low=0.0, high=30.0),
    ),
    origin=MEMORY,
)
CLIMATE = declare(
    "climate",
    ("temperature", Kind.TEMPERATURE, 20.0, "the owner's room", dict(low=-10.0, high=50.0)),
    ("humidity_dry", Kind.HUMIDITY, 35.0, "driest month indoors", dict(low=0.0, high=100.0)),
    ("humidity_damp", Kind.HUMIDITY, 60.0, "dampest month indoors", dict(low=0.0, high=100.0)),
    origin=MEMORY,
)


def _limit(
    name: str,
    kind: Kind,
    default: float | None,
    meaning: str,
    high: float = 100.0,
    low: float = -20.0,
    **opt: object,
) -> tuple[object, ...]:
    return (name, kind, default, meaning, dict(low=low, high=high) | opt)


LIMITS = declare(
    "limits",
    _limit("gap_min", L, 0.15, "least gap under the overhang"),
    _limit("gap_max", L, 0.80, "largest gap under the overhang"),
    _limit("side_min", L, 0.05, "least side clearance, per side"),
    _limit("side_max", L, 0.25, "largest side clearance, per side"),
    _limit("end_min", L, 0.0, "least end clearance"),
    _limit("end_max", L, 0.30, "largest end clearance"),
    _limit("end_visible_max", L, 0.80, "largest gap seen at the top of the end wall"),
    _limit("plate_heel_min", L, 0.10, "least clearance between cover plate and heel"),
    _limit("floor_wood_min", L, 12.0, "least wood under the pocket"),
    _limit("wall_min", L, 4.0, "least wood between pocket and cutaway"),
    _limit("web_min", L, 3.0, "least wood between pocket and a cavity"),
    _limit("pickup_gap_min", L, 1.0, "least distance from fretboard end to pickup or ring"),
    _limit("pole_treble_min", L, 1.6, "string at the last fret over the poles, treble, least"),
    _limit("pole_treble_max", L, 3.2, "string at the last fret over the poles, treble, largest"),
    _limit("pole_bass_min", L, 2.0, "string at the last fret over the poles, bass, least"),
    _limit("pole_bass_max", L, 4.0, "string at the last fret over the poles, bass, largest"),
    _limit("plate_string_min", L, 2.0, "fretted string over plate and rings, least"),
    _limit(
        "top_string_min",
        L,
        None,
        "wish: strings over the top under the hand, least",
        origin=DERIVED,
    ),
    _limit("open_buzz_min", L, 0.10, "open string over every fret, least"),
    _limit("fretted_buzz_min", L, 0.02, "fretted string over every later fret, least"),
    _limit("radius_error_max", L, 0.15, "fixed radius: action error of a middle string, largest"),
    _limit("base_gap_min", L, 2.5, "floating bridge: base over the mount, least"),
    _limit("break_min", A, 5.0, "break angle over the saddle, least"),
    _limit("edge_min", L, 2.5, "outer string to fretboard edge at the last fret, least"),
    _limit(
        "contact_min", Kind.NUMBER, 0.80, "share of the heel that must bear on the floor", 1.0, 0.0
    ),
    _limit("grip_min", Kind.NUMBER, 3.0, "screw grip in shank diameters, least"),
    _limit("insert_min", Kind.NUMBER, 1.5, "engagement in an insert in screw diameters, least"),
    _limit("tip_min", L, 1.5, "screw tip under the glue line (one piece: under the slots), least"),
    _limit("tip_wish", L, 3.0, "screw tip under the glue line, wished"),
    _limit("fret_slot_depth", L, 2.5, "one piece: depth of the fret slots under the fretboard top"),
    _limit(
        "edge_distance_min", Kind.NUMBER, 1.5, "screw axis to heel edge in shank diameters, least"
    ),
    _limit("rod_distance_min", L, 1.0, "screw to truss-rod channel, least"),
    _limit("hole_clearance_min", L, 0.2, "body hole over shank, least"),
    _limit("pilot_extra", L, 1.5, "pilot hole deeper than the screw"),
    _limit(
        "pull_safety",
        Kind.NUMBER,
        5.0,
        "withdrawal capacity per handbook divided by this",
        50.0,
        1.0,
    ),
    origin=MEMORY,
)
JOB = declare(
    "job",
    ("name", Kind.TEXT, "unnamed joint", "what the shop calls this joint", dict(origin=PROJECT)),
    (
        "units",
        C,
        "mm",
        "unit of bare numbers in the file and of what is shown",
        dict(choices=("mm", "inch"), origin=PROJECT),
    ),
    ("note", Kind.TEXT, "", "anything worth remembering", dict(origin=PROJECT)),
)
END_GAP = declare(
    "seat",
    (
        "end_gap",
        L,
        0.0,
        "e: least distance between heel end and end wall as assembled",
        dict(low=0.0, high=5.0, tolerance=(0.0, 0.1)),
    ),
)

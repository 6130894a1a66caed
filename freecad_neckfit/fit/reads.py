"""Parameters that many checks of the strings read, listed once."""

from __future__ import annotations

SCALE = (
    "neck.scale", "neck.scale_bass", "neck.square_fret", "neck.nut_to_heel", "strings.count",
    "strings.compensation", "strings.compensation_treble", "strings.compensation_bass",
)  # fmt: skip
"""What decides how long a string is, and where along the neck."""
SEAT = (
    "pocket.depth", "pocket.angle", "pocket.length", "pocket.wall", "pocket.end_shape",
    "pocket.end_radius", "neck.heel_end", "neck.heel_radius", "neck.heel_corner_radius",
    "neck.heel_width_end", "seat.end_gap", "finish.floor", "finish.wall", "shim.make",
    "shim.wall", "shim.mouth", "shim.strip", "shim.strip_edge",
)  # fmt: skip
"""What decides how the neck lies in the body."""
CROWNS = (
    "neck.height", "neck.fret_height", "neck.radius_nut", "neck.radius_end", "neck.overhang",
    "neck.frets", "neck.end_margin", "neck.fall_away", "neck.relief", "pocket.length",
    "strings.spread_nut", "strings.spread_bridge", "strings.left_handed",
)  # fmt: skip
"""What decides how high the crowns lie under each string."""
SETUP = (
    "strings.action_treble",
    "strings.action_bass",
    "strings.nut_treble",
    "strings.nut_bass",
    "strings.zero_fret",
)
"""How the strings are set up over the crowns."""
STRINGS = tuple(dict.fromkeys(SCALE + CROWNS + SETUP))
"""The open strings in the neck frame."""
TOP = (
    "body.top", "body.dome_radius", "body.dome_centre", "body.carve_slope",
    "body.carve_radius_along", "body.carve_radius_across", "finish.top",
)  # fmt: skip
"""The finished top."""
MOUNT = (*TOP, "plate.cover", "plate.thickness", "bridge.mount", "bridge.recess")
"""What the bridge stands on."""
TRAVEL = (
    "bridge.make", "bridge.low", "bridge.high", "bridge.base_low", "bridge.base_high",
    "bridge.saddle_radius", "bridge.post_spacing",
)  # fmt: skip
"""How high and low the bridge carries the strings."""
SADDLES = tuple(dict.fromkeys(STRINGS + SEAT + MOUNT))
"""Saddle string heights over the mount."""


def together(*groups: tuple[str, ...]) -> tuple[str, ...]:
    """The keys of all groups, each once, in order."""
    return tuple(dict.fromkeys(key for group in groups for key in group))

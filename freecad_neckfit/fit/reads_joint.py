"""Parameters that many checks of the neck's seat read, listed once."""

from __future__ import annotations

from ..job.parameters import ROLES
from .reads import SEAT, TOP, together

PLANS = together(SEAT, (
    "pocket.width_end", "pocket.width_mouth", "pocket.corner_radius", "neck.heel_width_mouth",
    "neck.heel_length", "neck.heel_edge", "neck.glue_line",
))  # fmt: skip
"""Pocket and heel in the plan, the neck seated."""
BOARD = (
    "neck.overhang", "neck.frets", "neck.end_margin", "neck.scale", "neck.scale_bass",
    "neck.nut_to_heel", "neck.width_nut", "neck.width_end", "neck.underside", "neck.glue_line",
)  # fmt: skip
"""The fretboard's plan and its downward faces."""
BINDING = ("neck.binding", "neck.binding_width")
"""The fretboard's binding."""
COVER = (
    "plate.cover", "plate.thickness", "plate.under_overhang", "plate.clearance", "neck.height",
)  # fmt: skip
"""The cover plate and its cut-out."""
OVER_TOP = together(PLANS, BOARD, TOP)
"""The fretboard over the finished top."""
CAVITIES = ("pocket.floor_fillet", *(
    f"pickup_{role}.{name}"
    for role in ROLES
    for name in ("fitted", "x", "length", "width", "cavity_depth")
))  # fmt: skip
"""Where pickups and their cavities reach into the pocket."""
SCREW_SEATS = together(SEAT, (
    "screws.length", "screws.head_seat", "screw.x", "screw.y", "neck_plate.make",
    "neck_plate.thickness", "neck_plate.ferrule_depth", "body.thickness", "body.contour_depth",
    "body.contour_length",
))  # fmt: skip
"""How deep the screws reach into the heel."""
CLIMATE = (
    "wood.body", "wood.neck", "wood.body_ring", "wood.neck_ring", "wood.moisture_cut",
    "climate.temperature", "climate.humidity_dry", "climate.humidity_damp",
)  # fmt: skip
"""Woods, and the owner's year."""
PICKUP = tuple(f"pickup_neck.{name}" for name in (
    "fitted", "x", "mount", "cavity_depth", "low", "high", "length", "ring",
))  # fmt: skip
"""The neck pickup as an obstacle."""

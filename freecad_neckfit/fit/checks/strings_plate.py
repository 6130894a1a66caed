"""Strings fretted at the last fret over the cover plate and the pickup rings."""

from __future__ import annotations

from ...job.parameters import ROLES
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..over_top import has_rings, over_plate_and_rings
from ..reading import Reading
from ..reads import SADDLES, together
from ..reads_joint import BINDING
from ..strings import is_few, least, place_of_least


def read(case: Case) -> Reading:
    """Least height [mm] of a string fretted at the last fret over the plate and every ring."""
    if not (case.plate_there or has_rings(case)):
        return Reading.absent("there is neither a cover plate nor a pickup ring")
    rooms, found = over_plate_and_rings(case)
    if not rooms:
        return Reading.absent("neither the cover plate nor a ring lies under the strings")
    value = least(rooms)
    place = None
    if is_few(rooms):
        points = tuple((x, line.across(x), line.height(x)) for line, x in found)
        place = place_of_least(rooms, points)
    return Reading(
        value=value,
        applies=value < float("inf"),
        because="plate and rings do not reach under the strings",
        place=place,
    )


CHECK = Check(
    id="strings.plate",
    title="fretted strings over plate and rings",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(
        SADDLES,
        BINDING,
        (
            "neck.glue_line",
            "neck.underside",
            "plate.under_overhang",
            "plate.clearance",
            "plate.reach",
        ),
        # The cut-out, within which there is no plate.
        ("pocket.width_end", "pocket.width_mouth", "pocket.corner_radius"),
        tuple(
            f"pickup_{role}.{name}"
            for role in ROLES
            for name in ("fitted", "x", "mount", "cavity_depth", "length", "ring")
        ),
    ),
    read=read,
    low="limits.plate_string_min",
    measure="plate_string",
    consequence="Strings fretted high up touch the plate or a pickup's ring.",
    mending="Make the pocket shallower by {short}, tip it back, use a thinner plate, or choose "
    "lower rings.",
)

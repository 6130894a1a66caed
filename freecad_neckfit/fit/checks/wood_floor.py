"""Wood left under the pocket."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..wood_left import floor_height, under_floor


def read(case: Case) -> Reading:
    """Least wood [mm] under the floor: at the mouth of an angled pocket T_b - d - L_p·tan θ.

    A heel contour and ferrules' seats count; rounded outer edges do not.
    """
    wood, x = under_floor(case)
    return Reading(value=wood, place=(x, 0.0, floor_height(case, x=x)))


CHECK = Check(
    id="wood.floor",
    title="wood under the pocket",
    unit=Kind.LENGTH,
    gravity=Gravity.BREAKS,
    reads=(
        "body.thickness",
        "pocket.depth",
        "pocket.angle",
        "pocket.length",
        "body.contour_depth",
        "body.contour_length",
        "neck_plate.make",
        "neck_plate.ferrule_depth",
        "neck_plate.ferrule_diameter",
        "screw.x",
        "limits.floor_wood_min",
    ),
    read=read,
    low="limits.floor_wood_min",
    measure="wood_floor",
    exact=False,
    consequence="The floor gives way or cracks under the screws.",
    mending="Make the pocket shallower by {short}, use less angle, contour or counterbore, or a "
    "thicker body.",
)

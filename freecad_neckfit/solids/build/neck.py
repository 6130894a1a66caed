"""The neck's wood without its fretboard: heel and shaft, in the neck frame."""

from __future__ import annotations

from ...job.resolve import Values
from .chamfer import chamfered
from .fretboard import board_half_width
from .plan import Plan, prism
from .shapes import Solid


def heel_plan(v: Values) -> Plan:
    """Plan of the heel in the neck frame; its end (the apex of a round one) is at x = 0."""
    end, mouth = v["neck.heel_width_end"] / 2, v["neck.heel_width_mouth"] / 2
    is_round = v["neck.heel_end"] == "round"
    return Plan(
        name="heel",
        half=end,
        slope=(end - mouth) / v["pocket.length"],
        corner=0.0 if is_round else v["neck.heel_corner_radius"],
        radius=v["neck.heel_radius"] if is_round else None,
    )


def heel(v: Values) -> Solid:
    """The heel from its bottom to the glue line, its bottom edges chamfered by ``heel_edge``.

    Raises CannotBuild where end and sides do not meet.
    """
    plan, far = heel_plan(v), -v["neck.heel_length"]
    size, top = v["neck.heel_edge"], v["neck.glue_line"]
    if size <= 0:
        return prism(plan.segments(far), 0.0, top)
    return chamfered(plan, far=far, size=size, top=top)


def shaft(v: Values) -> Solid | None:
    """The neck beyond the heel, as wide as the fretboard, or None where the board is all of it.

    A plain block, for nothing touches it. It ends where the heel begins.
    """
    bottom = v["neck.height"] - v["neck.shaft_thickness"]
    top = v["neck.glue_line"]
    if bottom >= top:
        return None
    nut, heel_end = -v["neck.nut_to_heel"], -v["neck.heel_length"]
    at_nut, at_heel = board_half_width(v, nut), board_half_width(v, heel_end)
    corners = [(nut, -at_nut), (heel_end, -at_heel), (heel_end, at_heel), (nut, at_nut)]
    sides = zip(corners, [*corners[1:], corners[0]], strict=True)
    return prism([(a, None, b) for a, b in sides], bottom, top)

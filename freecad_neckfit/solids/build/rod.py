"""The truss rod's channel and the path of its tool: room to be kept free, in the neck frame."""

from __future__ import annotations

import Part
from FreeCAD import Vector

from ...job.errors import CannotBuild
from ...job.resolve import Values
from .shapes import Solid, box


def channel(v: Values) -> Solid | None:
    """The channel from its bottom to the glue line, nut to ``neck.rod_end``; None without a rod."""
    if v["neck.rod"] == "none":
        return None
    depth, top = float(v["neck.rod_depth"]), float(v["neck.glue_line"])
    if depth >= top:
        raise CannotBuild(
            f"neck.rod_depth: {depth:.2f} mm lies above the glue line at {top:.2f} mm, so there is "
            "no channel; make it smaller."
        )
    half = float(v["neck.rod_width"]) / 2
    along = -float(v["neck.nut_to_heel"]), -float(v["neck.rod_end"])
    return box(along, (-half, half), (depth, top))


def tool_path(v: Values) -> Solid | None:
    """The cylinder that the tool of a heel-adjusted rod needs past the heel end, or None."""
    if v["neck.rod"] != "heel":
        return None
    foot = Vector(0, 0, float(v["neck.rod_tool_height"]))
    length, radius = float(v["neck.rod_tool_length"]), float(v["neck.rod_tool"]) / 2
    return Part.makeCylinder(radius, length, foot, Vector(1, 0, 0))

"""The body frame that picks would give, without anything being changed."""

from __future__ import annotations

from collections.abc import Sequence
from types import SimpleNamespace
from typing import Any

from .adopt import remembered
from .adopt_frame import picked_frame, system_frame
from .adopt_shape import matrix_of, own_shape, placed, placement_of


def preview(
    solid: Any,
    *,
    length: float,
    path: str = "",
    top: str = "",
    centreline: str = "",
    centreline_of: Any = None,
    system: Any = None,
    frame: Sequence[float] = (),
    reverse: bool = False,
    has_pocket: bool = False,
    floor: str = "",
) -> Any:
    """Global placement of the body frame, as ``adopt_body`` would find it with the same picks.

    ``length``: the pocket's length [mm]. Raises BadInput as ``adopt_body`` and the object that it
    makes would.
    """
    import FreeCAD

    body = SimpleNamespace(
        Label=solid.Label, Name="Preview", Document=solid.Document, Adopted=solid, AdoptedPath=path,
        CentrelineOf=centreline_of, CoordinateSystem=system, Reversed=reverse, HasPocket=has_pocket,
        PocketBehind=SimpleNamespace(Length=SimpleNamespace(Value=length)),
    )  # fmt: skip
    shape = own_shape(body)
    body.TopFace, body.FloorFace, body.Centreline = remembered(
        shape, solid, top=top, floor=floor, centreline=centreline, centreline_of=centreline_of
    )
    there = matrix_of(placed(body))
    if system is not None:
        return placement_of(there @ system_frame(body))
    if top:
        return placement_of(there @ picked_frame(body, shape).frame)
    x, y, z, *turn = frame or (0.0,) * 6
    typed = FreeCAD.Placement(FreeCAD.Vector(x, y, z), FreeCAD.Rotation(*turn))
    return placement_of(there @ matrix_of(typed))

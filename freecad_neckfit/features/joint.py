"""The document object that ties body, pocket, neck, cover plate and hardware to one joint."""

from __future__ import annotations

from typing import Any

from .proxy import StatedProxy


class JointProxy(StatedProxy):
    """States finish, woods, climate and limits, and holds the body frame as its placement.

    Where the body is adopted the placement follows it. Its shape is the frame to be seen: the
    centreline and the line of the end wall, in the top.
    """

    role = "joint"

    def execute(self, obj: Any) -> None:
        """Build all parts; raise BadInput with one sentence where that cannot be."""
        super().execute(obj)
        from .assemblies import assembly_of
        from .frame_lines import frame_lines
        from .seated import seat_of

        values = assembly_of(obj).values
        placement = seat_of(obj)
        obj.Shape = frame_lines(values)
        obj.Placement = placement

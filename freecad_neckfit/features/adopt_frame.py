"""The body frame of an adopted body, worked out anew whenever its model changes."""

from __future__ import annotations

from typing import Any

from ..job.errors import BadInput
from .adopt_shape import global_placement, matrix_of, placed

ENDLESS = 1e9
"""Beyond this parameter a line has no end."""


def system_frame(obj: Any) -> Any:
    """The linked coordinate system as a frame (4, 4) in the adopted object's own coordinates.

    Raises BadInput where none is linked.
    """
    import numpy as np

    system = obj.CoordinateSystem
    if system is None:
        raise BadInput(f"{obj.Label}.CoordinateSystem links nothing; link one, or pick faces.")
    there = matrix_of(global_placement(system))
    return np.linalg.inv(matrix_of(placed(obj))) @ there


def picked_frame(body: Any, solid: Any) -> Any:
    """The body frame by picked faces (``solids.recognise.frame.Placed``).

    Raises BadInput where a picked face or edge is not found again.
    """
    from ..solids.recognise.frame import place
    from ..solids.recognise.signature import find

    floor = find(solid, body.FloorFace, what="pocket's floor face") if body.FloorFace else None
    return place(
        solid,
        top=find(solid, body.TopFace, what="top face"),
        line=centreline(body, solid),
        length=pocket_length(body),
        has_pocket=body.HasPocket,
        floor=floor,
        reverse=body.Reversed,
    )


def pocket_length(body: Any) -> float:
    """Mouth to end wall [mm] as the pocket states it; of no matter where the pocket is read."""
    pocket = body.PocketBehind
    return float(pocket.Length.Value) if pocket is not None else 0.0


def centreline(body: Any, solid: Any) -> Any:
    """The picked centreline (``solids.recognise.frame.Line``) in the adopted's own coordinates.

    Raises BadInput where it is not found again, or is not straight.
    """
    import numpy as np

    from ..solids.recognise.frame import Line

    other = body.CentrelineOf
    if other is None or other == body.Adopted:
        return _straight(solid, body.Centreline)
    line = _axis(other) if not body.Centreline else _straight(own_of(other), body.Centreline)
    there = np.linalg.inv(matrix_of(placed(body))) @ matrix_of(global_placement(other))
    return Line(there[:3, :3] @ line.point + there[:3, 3], there[:3, :3] @ line.way)


def _straight(shape: Any, signature: str) -> Any:
    from ..solids.recognise.frame import Line
    from ..solids.recognise.signature import find

    edge = shape.Edges[find(shape, signature, what="centreline")]
    return Line(*_ends(edge))


def _ends(edge: Any) -> tuple[Any, Any]:
    import numpy as np

    if type(edge.Curve).__name__ not in ("Line", "LineSegment"):
        raise BadInput("The centreline is no straight edge; pick a straight one.")
    way = edge.Curve.Direction if hasattr(edge.Curve, "Direction") else edge.tangentAt(0.0)
    # A datum line has no ends.
    first = edge.FirstParameter
    point = edge.valueAt(first if abs(first) < ENDLESS else 0.0)
    return np.array([point.x, point.y, point.z]), np.array([way.x, way.y, way.z])


def _axis(line: Any) -> Any:
    """A datum line or an origin's axis, in its own coordinates."""
    import numpy as np

    from ..solids.recognise.frame import Line

    shape = getattr(line, "Shape", None)
    if shape is not None and not shape.isNull() and shape.Edges:
        return Line(*_ends(own_of(line).Edges[0]))
    # An origin's axis runs along its own X; what the attacher makes, along its own Z.
    way = (1.0, 0.0, 0.0) if line.TypeId == "App::Line" else (0.0, 0.0, 1.0)
    return Line(np.zeros(3), np.array(way))


def own_of(obj: Any) -> Any:
    """An object's shape in its own coordinates, before its placement."""
    shape = obj.Shape.copy()
    shape.Placement = obj.Placement.inverse().multiply(shape.Placement)
    return shape

"""The part of a face within a rectangle of the plan, so that only that much is triangulated.

The kernel cuts any face, but a free-form one that runs all round a drawn body is dear to cut. Its
poles tell what is needed of it without a cut: each span lies within the hull of its own poles.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from .bounds import FREE
from .facets import Bounds
from .poles import Net
from .strips import Strip

FREE_CURVES = ("BSplineCurve", "BezierCurve")
"""Kinds of edges whose triangles cost by their length."""
BEYOND = 1.0
"""What is left away lies at least so far [mm] beyond the rectangle."""


@dataclass(frozen=True)
class Reach:
    """Where a face is, told by the poles of its surface, if it has any, and as a strip."""

    face: Any
    net: Net | None
    strip: Strip | None

    @classmethod
    def of(cls, face: Any) -> Reach:
        """What the face is, told once for all rectangles."""
        net = Net.of(face)
        return cls(face, net, Strip.of(face, net))

    def within(self, bounds: Bounds) -> list[Any]:
        """Pieces of the face that hold all of it within the rectangle ``bounds`` of the plan [mm].

        Those of a strip may reach a span past the rectangle.
        """
        wider = (bounds[0] - BEYOND, bounds[1] + BEYOND, bounds[2] - BEYOND, bounds[3] + BEYOND)
        if self.strip is not None:
            return self.strip.within(wider)
        return _cut(self.face, wider) if self._may_be_near(wider) else []

    def _may_be_near(self, bounds: Bounds) -> bool:
        """Whether some of the face can lie there: its bounds hold far more than a bow."""
        if self.net is None:
            return True
        axis = self.net.longer
        reach = self.face.ParameterRange[2 * axis : 2 * axis + 2]
        return bool(self.net.near(self.face, axis, reach, bounds))


def is_free(face: Any) -> bool:
    """Whether the face or an edge of it is free-form: along all of it triangles are dear."""
    return type(face.Surface).__name__ in FREE or any(
        type(edge.Curve).__name__ in FREE_CURVES for edge in face.Edges
    )


def _cut(face: Any, bounds: Bounds) -> list[Any]:
    import Part
    from FreeCAD import Vector

    box = face.BoundBox
    corner = Vector(bounds[0], bounds[2], box.ZMin - 1)
    window = Part.makeBox(bounds[1] - bounds[0], bounds[3] - bounds[2], box.ZLength + 2, corner)
    return list(face.copy().common(window).Faces)

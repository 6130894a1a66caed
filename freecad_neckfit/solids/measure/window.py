"""The part of a face within a rectangle of the plan, so that only that much is triangulated.

The kernel cuts any face, but a free-form one that runs all round a drawn body is dear to cut. Its
poles tell what is needed of it without a cut: each span lies within the hull of its own poles.
"""

from __future__ import annotations

from typing import Any

from .facets import Bounds
from .poles import Net
from .strips import Strip

BEYOND = 1.0
"""What is left away lies at least so far [mm] beyond the rectangle."""


def cropped(face: Any, strip: Strip | None, bounds: Bounds) -> list[Any]:
    """Pieces of the face that hold all of it within the rectangle ``bounds`` of the plan [mm].

    ``strip``: the face as one, where it is one. Its pieces may reach a span past the rectangle.
    """
    wider = (bounds[0] - BEYOND, bounds[1] + BEYOND, bounds[2] - BEYOND, bounds[3] + BEYOND)
    if strip is not None:
        return strip.within(wider)
    return _cut(face, wider) if _may_be_near(face, wider) else []


def _may_be_near(face: Any, bounds: Bounds) -> bool:
    """Whether some of the face can lie within the rectangle: its bounds hold far more of a bow."""
    net = Net.of(face)
    if net is None:
        return True
    reach = face.ParameterRange[2 * net.longer : 2 * net.longer + 2]
    return bool(net.near(face, net.longer, reach, bounds))


def _cut(face: Any, bounds: Bounds) -> list[Any]:
    import Part
    from FreeCAD import Vector

    box = face.BoundBox
    corner = Vector(bounds[0], bounds[2], box.ZMin - 1)
    window = Part.makeBox(bounds[1] - bounds[0], bounds[3] - bounds[2], box.ZLength + 2, corner)
    return list(face.copy().common(window).Faces)

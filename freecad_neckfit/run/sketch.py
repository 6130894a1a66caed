"""Reads a body's outline from a sketch in a FreeCAD document."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import FreeCAD
import Part

from ..job.errors import BadInput
from ..solids.build.plan import Segment

FLAT = 1e-6
"""How far [mm] a sketch may stray from one level."""


def outline_segments(path: Path) -> list[Segment]:
    """The lines and arcs of the only sketch in a FCStd file, as (start, point on the way, end).

    Points are (X, Y) [mm] in the body frame, through the sketch's place in the document; a line has
    None on its way. Raises BadInput where the file cannot be opened, holds no sketch or several, or
    where the sketch is not one closed wire of lines and arcs parallel to the XY plane.
    """
    with opened(path) as document:
        sketches = [o for o in document.Objects if o.isDerivedFrom("Sketcher::SketchObject")]
        if len(sketches) != 1:
            raise BadInput(f"{path}: holds {len(sketches)} sketches; leave the outline's only.")
        return _segments(path, sketches[0])


@contextmanager
def opened(path: Path) -> Iterator[Any]:
    """The document of a file that no screen shows, closed in the end; raises BadInput."""
    if not path.is_file():
        raise BadInput(f"{path}: there is no such file.")
    active = FreeCAD.ActiveDocument
    try:
        document = FreeCAD.openDocument(str(path), hidden=True)
    except Exception as error:  # FreeCAD raises many kinds; all mean the same here
        raise BadInput(f"{path}: FreeCAD cannot open it; save it again as a document.") from error
    try:
        yield document
    finally:
        FreeCAD.closeDocument(document.Name)
        if active is not None:
            FreeCAD.setActiveDocument(active.Name)


def _segments(path: Path, sketch: Any) -> list[Segment]:
    shape = sketch.Shape.copy()
    shape.Placement = sketch.getGlobalPlacement()
    if len(shape.Wires) != 1 or not shape.Wires[0].isClosed():
        raise BadInput(
            f"{path}: {sketch.Label} is not one closed outline; close it, and leave one."
        )
    levels = {round(p.Z / FLAT) for p in shape.Vertexes}
    if max(levels) - min(levels) > 1:
        raise BadInput(f"{path}: {sketch.Label} does not lie flat; put it on the XY plane.")
    found: list[Segment] = []
    for edge in shape.Wires[0].OrderedEdges:
        found += _of_edge(path, sketch.Label, edge)
    return found


def _of_edge(path: Path, label: str, edge: Any) -> list[Segment]:
    first, last = edge.ParameterRange
    steps = [edge.valueAt(first + (last - first) * share / 4) for share in range(5)]
    points = [(p.x, p.y) for p in (reversed(steps) if edge.Orientation == "Reversed" else steps)]
    if isinstance(edge.Curve, Part.Line | Part.LineSegment):
        return [(points[0], None, points[4])]
    if not isinstance(edge.Curve, Part.Circle | Part.ArcOfCircle):
        raise BadInput(f"{path}: {label} has a curve that is neither line nor arc; use arcs.")
    # In halves: a whole circle has no point between its ends that would tell its way round.
    return [(points[0], points[1], points[2]), (points[2], points[3], points[4])]

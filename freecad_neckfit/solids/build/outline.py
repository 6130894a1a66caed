"""The body's outline as the kernel takes it."""

from __future__ import annotations

from typing import NamedTuple

from ...job.outline import Outline
from .plan import Segment, face
from .shapes import Point

Segments = list[Segment]
"""A closed outline of lines and arcs, each beginning where the one before ends."""


class Bounds(NamedTuple):
    """Least and largest X and Y [mm]."""

    x: Point
    y: Point


def segments_of(outline: Outline) -> Segments:
    """The outline's lines and arcs as (start, point on the way or None, end)."""
    return [(s.start, s.through, s.end) for s in outline.segments]


def bounds_of(outline: Segments) -> Bounds:
    """The rectangle of the plan that holds the outline."""
    box = face(outline, 0.0).optimalBoundingBox()
    return Bounds((box.XMin, box.XMax), (box.YMin, box.YMax))


def front_edge(outline: Segments) -> Segment | None:
    """The straight part of the outline that the pocket's mouth opens through, at Y = 0 and X < 0.

    None where the outline is curved there.
    """
    for start, through, end in outline:
        if through is None and min(start[1], end[1]) < 0 < max(start[1], end[1]):
            share = start[1] / (start[1] - end[1])
            if start[0] + (end[0] - start[0]) * share < 0:
                return start, through, end
    return None

"""Joins loose lines and arcs, in any order and direction, into one closed outline."""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Sequence

from ..errors import BadInput
from .chain import Outline, Point, Segment

GAP = 0.01
"""Ends closer than this [mm] are joined."""


def joined(pieces: Sequence[Segment], *, name: str) -> Outline:
    """Return the one closed outline that the pieces form; ``name`` is the file they come from.

    Raises BadInput where there is none, where ends lie open or three meet, or where there are
    several outlines.
    """
    snapped = _snapped(pieces)
    if not snapped:
        raise BadInput(f"{name}: it holds no outline; draw one closed outline.")
    at: dict[Point, list[int]] = defaultdict(list)
    for i, piece in enumerate(snapped):
        at[piece.start].append(i)
        at[piece.end].append(i)
    _refuse_loose_ends(at, name=name)
    chain = _walk(snapped, at)
    if len(chain) != len(snapped):
        raise BadInput(f"{name}: it holds more than one closed outline; leave only the body's.")
    return Outline.of_segments(chain)


def _snapped(pieces: Sequence[Segment]) -> list[Segment]:
    """Return the pieces with ends that nearly meet brought together, without those of no length."""
    grid: dict[tuple[int, int], Point] = {}

    def snap(p: Point) -> Point:
        column, row = math.floor(p[0] / GAP), math.floor(p[1] / GAP)
        for cell in ((column + i, row + j) for i in (0, -1, 1) for j in (0, -1, 1)):
            known = grid.get(cell)
            if known is not None and math.dist(known, p) <= GAP:
                return known
        grid[column, row] = p
        return p

    found = [Segment(snap(s.start), snap(s.end), s.through) for s in pieces]
    return [s for s in found if s.start != s.end]


def _refuse_loose_ends(at: dict[Point, list[int]], *, name: str) -> None:
    for (x, y), pieces in at.items():
        if len(pieces) != 2:
            what = "is open" if len(pieces) == 1 else f"has {len(pieces)} lines that meet"
            raise BadInput(
                f"{name}: the outline {what} at X = {x:.3f}, Y = {y:.3f} mm; make it one closed "
                "loop."
            )


def _walk(pieces: Sequence[Segment], at: dict[Point, list[int]]) -> list[Segment]:
    chain = [pieces[0]]
    last = 0
    while chain[-1].end != chain[0].start:
        here = chain[-1].end
        one, other = at[here]
        last = other if one == last else one
        piece = pieces[last]
        chain.append(piece if piece.start == here else piece.reversed())
    return chain

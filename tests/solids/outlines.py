"""Outlines of bodies for tests: a plain box, and one with cutaways, a waist and round corners."""

import math
from dataclasses import dataclass


@dataclass(frozen=True)
class Segment:
    start: tuple[float, float]
    end: tuple[float, float]
    through: tuple[float, float] | None = None


@dataclass(frozen=True)
class Outline:
    segments: tuple[Segment, ...]


def box(x, y):
    corners = [(x[0], y[0]), (x[1], y[0]), (x[1], y[1]), (x[0], y[1])]
    return rounded([(*corner, 0.0) for corner in corners])


def guitar(v, *, treble=None):
    """Two cutaways beside the block, a waist, and a sharp corner on each side of the mouth."""
    mouth = -v["pocket.length"]
    treble = v["body.block_treble"] if treble is None else treble
    bass = v["body.block_bass"]
    return rounded([
        (mouth, -bass, 0), (-34, -bass, 4), (-34, -bass - 20, 4), (-134, -bass - 35, 8),
        (-134, -132, 8), (-30, -142, 30), (90, -117, 40), (210, -162, 60), (310, -97, 40),
        (310, 97, 40), (210, 162, 60), (90, 117, 40), (-30, 142, 30), (-98, 132, 8),
        (-98, treble + 35, 8), (-18, treble + 20, 4), (-18, treble, 4), (mouth, treble, 0),
    ])  # fmt: skip


def rounded(corners):
    """A closed outline through (x, y, radius) corners; radius 0 leaves a corner sharp."""
    arcs = [
        _arc(corners[i - 1], corner, corners[(i + 1) % len(corners)])
        for i, corner in enumerate(corners)
    ]
    segments = []
    for i, (start, through, end) in enumerate(arcs):
        if through:
            segments.append(Segment(start, end, through))
        segments.append(Segment(end, arcs[(i + 1) % len(arcs)][0]))
    return Outline(tuple(segments))


def _arc(before, corner, after):
    x, y, radius = corner
    if radius == 0:
        return (x, y), None, (x, y)
    back, ahead = _unit(before[0] - x, before[1] - y), _unit(after[0] - x, after[1] - y)
    angle = math.acos(back[0] * ahead[0] + back[1] * ahead[1])
    inward = _unit(back[0] + ahead[0], back[1] + ahead[1])
    touch, deep = radius / math.tan(angle / 2), radius / math.sin(angle / 2) - radius
    return tuple(
        (x + d[0] * r, y + d[1] * r) for d, r in ((back, touch), (inward, deep), (ahead, touch))
    )


def _unit(x, y):
    return x / math.hypot(x, y), y / math.hypot(x, y)

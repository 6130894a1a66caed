"""The fretboard in the neck frame: top, width, overhang, underside, glue line and binding."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from ....job.arrays import FloatArray
from ....job.quantity import Kind
from .fits import Line2, Top, plane_through, top_through
from .found import Confidence, Findings
from .frame import edges_of
from .heel import Heel
from .patches import Patches, slice_at

EXACT, MESHED = 0.004, 0.01
"""A top's shape is taken for one within this [mm]: of true surfaces, of a mesh."""
STRAYS = 0.05
"""A top that strays farther [mm] from every shape is asked about."""
PARALLEL = 0.0005
"""A crest that rises more per mm than this is not parallel to the heel's bottom: 0.03°."""
THIN = 21.0
"""A neck thinner [mm] at its heel may lack its fretboard."""
DOWN = -0.999
LEVEL = 0.02
"""Underside pieces within this height [mm] of each other are one level."""


@dataclass(frozen=True)
class Board:
    """``top``: its surface; ``start``, ``end``: x of its ends; ``low``, ``high``: its edges."""

    top: Top
    start: float
    end: float
    low: Line2
    high: Line2

    def half(self, x: float) -> float:
        """Half its width [mm] at x."""
        return (self.high.y(x) - self.low.y(x)) / 2


def whole_top(p: Patches, known: Sequence[int]) -> tuple[int, ...]:
    """The top with whatever lies on the same surface beside it, such as binding."""
    points = p.points_of(known)
    top = top_through(points, within=EXACT if p.exact else MESHED)
    start, end = points[:, 0].min() - 2, points[:, 0].max() + 2
    near = (p.normal[:, 2] > 0.85) & (p.low[:, 0] > start) & (p.high[:, 0] < end) & (p.area > 1)
    near &= np.abs(p.centre[:, 2] - top.height) < 15
    near &= (p.low[:, 1] > points[:, 1].min() - 8) & (p.high[:, 1] < points[:, 1].max() + 8)
    beside = np.array([i for i in np.flatnonzero(near) if int(i) not in known], dtype=np.int64)
    if not len(beside):
        return tuple(known)
    spots, first = p.each_point_of(beside)
    off = np.abs(spots[:, 2] - top.z(spots[:, 0], spots[:, 1]))
    same = np.maximum.reduceat(off, first) < max(0.01, 2 * top.residual)
    return (*known, *(int(i) for i in beside[same]))


def read_board(p: Patches, rough_top: Sequence[int], found: Findings, name: str) -> Board:
    """Read the top; x of everything is as in the frame whose origin is the heel's end."""
    points = p.points_of(rough_top)
    top = top_through(points, within=EXACT if p.exact else MESHED)
    edges = edges_of(points, name)
    board = Board(top, float(points[:, 0].min()), float(points[:, 0].max()), *edges)
    off = max(edge.residual for edge in edges)
    if off > 0.05:
        found.ask("neck.width_end", f"the fretboard's edges are not straight: they stray {off:.2f} "
                  "mm; measure its width at nut and end.")  # fmt: skip
    _tell_top(top, found)
    return board


def _tell_top(top: Top, found: Findings) -> None:
    trust = Confidence.SURE if top.residual < 0.01 else Confidence.LIKELY
    if top.residual > STRAYS:
        trust = Confidence.DOUBTFUL
        found.ask(
            "fretboard top",
            f"the fretboard's top is neither flat nor evenly round: it strays {top.residual:.2f} "
            "mm from the nearest shape; state neck.radius_nut and neck.radius_end.",
        )
    found.tell("neck.height", top.height, f"the crest of the fretboard's top ({top.shape})",
               residual=top.residual, confidence=trust)  # fmt: skip
    if abs(top.slope) > PARALLEL:
        found.ask(
            "neck.height",
            "the fretboard's top is not parallel to the heel's bottom: it "
            f"{'rises' if top.slope > 0 else 'falls'} {np.degrees(np.arctan(abs(top.slope))):.2f}° "
            "toward the bridge, and a job knows parallel ones only.",
            by_value=False,
        )
    if top.height < THIN:
        found.ask(
            "neck.height",
            f"the heel is only {top.height:.2f} mm thick up to what looks like the fretboard's "
            "top: is the fretboard missing from the file?",
            by_value=False,
        )
    lean = top.lean
    if abs(top.middle) > 0.05 or abs(lean) * 500 > 0.1:
        found.notes.append(
            f"the top's crest lies {top.middle:+.2f} mm beside the centreline at the heel's end"
        )


def read_overhang(
    p: Patches, board: Board, found: Findings, *, underside: Sequence[int] | None = None
) -> float:
    """The overhang's length, underside and binding; returns x of the fretboard's end."""
    upper = (p.centre[:, 2] > 0.3 * board.top.height) & (p.low[:, 2] < board.top.height + 0.05)
    over = p.corners[upper[p.owner]].reshape(-1, 3)
    end = float(over[:, 0].max())
    length = end if end > 0.02 else 0.0
    found.tell("neck.overhang", max(length, 0.0), "heel end to the fretboard's end",
               residual=abs(end - board.end) if abs(end - board.end) < 3 else 0.0)  # fmt: skip
    if end < -0.02 or board.end < -0.1:
        found.notes.append(f"the fretboard ends {-board.end:.2f} mm before the heel's end")
    if length == 0:
        return end
    hanging = (p.normal[:, 2] < DOWN) & (p.spread > 0.999) & (p.centre[:, 0] > 0.2)
    hanging &= (p.low[:, 0] > -1.0) & (p.centre[:, 2] < board.top.height - 0.5)
    pieces = [int(i) for i in np.flatnonzero(hanging) if p.area[i] > 0.5]
    if underside is not None:
        pieces = list(underside)
    # A piece may start behind the heel's end where the heel's corners are rounded.
    pieces += _reaching_past(p, board, length, pieces) if underside is None else []
    if not pieces:
        found.ask("neck.underside", "the overhang has no level underside; measure it by caliper.")
        return end
    _tell_underside(p, board, pieces, length, found)
    return end


def _reaching_past(p: Patches, board: Board, length: float, known: Sequence[int]) -> list[int]:
    down = (p.normal[:, 2] < DOWN) & (p.spread > 0.999) & (p.high[:, 0] > 0.5 * length)
    down &= (p.centre[:, 2] < board.top.height - 0.5) & (p.low[:, 2] > 5)
    return [int(i) for i in np.flatnonzero(down) if int(i) not in known]


def _tell_underside(
    p: Patches, board: Board, pieces: Sequence[int], length: float, found: Findings
) -> None:
    height = {i: float((p.low[i, 2] + p.high[i, 2]) / 2) for i in pieces}
    main = max(pieces, key=lambda i: _past(p, i))
    level = [i for i in pieces if abs(height[i] - height[main]) < LEVEL]
    points = p.points_of(level)
    points = points[points[:, 0] > -1.0] if (points[:, 0] > -1.0).sum() > 3 else points
    plane = plane_through(points, toward=np.array([0.0, 0.0, -1.0]))
    middle = float(points[:, 2].min() + points[:, 2].max()) / 2
    tilt = float(np.ptp(points[:, 2]))
    found.tell("neck.underside", middle, "the level face under the overhang",
               residual=max(plane.residual, tilt / 2))  # fmt: skip
    found.items["underside"] = tuple(level)
    if tilt > 0.05:
        found.ask("neck.underside", f"the overhang's underside is not parallel to the heel's "
                  f"bottom: it rises or falls {tilt:.2f} mm.")  # fmt: skip
    lower = [i for i in pieces if height[i] < middle - LEVEL and _past(p, i) > 0.5]
    _tell_binding(p, board, lower, middle, length, found)


def _past(p: Patches, i: int) -> float:
    """Area [mm²] of a patch past the heel's end, roughly."""
    share = (p.high[i, 0] - max(p.low[i, 0], 0.0)) / max(p.high[i, 0] - p.low[i, 0], 1e-9)
    return float(p.area[i] * max(share, 0.0))


def _tell_binding(
    p: Patches, board: Board, lower: Sequence[int], under: float, length: float, found: Findings
) -> None:
    strips = [i for i in lower if p.low[i, 2] > under - 8 and _at_edge(p, board, i)]
    others = [i for i in lower if i not in strips]
    if others:
        deepest = min(float(p.low[i, 2]) for i in others)
        found.ask(
            "neck.underside",
            f"the overhang's underside has several levels, {under:.2f} and {deepest:.2f} mm above "
            "the heel's bottom; which one is it?",
        )
    if not strips:
        return
    z = [float(p.centre[i, 2]) for i in strips]
    x = min(length / 2, 5.0)
    widths = []
    for i in strips:
        cut = _across(p.triangles_of([i]), x)
        if len(cut):
            widths.append(float(np.ptp(cut)))
    found.tell("neck.binding", under - min(z), "the strips that hang along the overhang's edges",
               residual=(max(z) - min(z)) / 2)  # fmt: skip
    if widths:
        found.tell("neck.binding_width", sum(widths) / len(widths), "width of the hanging strips",
                   residual=float(np.ptp(widths)) / 2)  # fmt: skip
    found.items["binding"] = tuple(strips)


def _at_edge(p: Patches, board: Board, i: int) -> bool:
    edge = board.half(float(p.centre[i, 0]))
    outer = max(abs(p.low[i, 1]), abs(p.high[i, 1]))
    inner = min(abs(p.low[i, 1]), abs(p.high[i, 1]))
    return bool(outer > edge - 1.0 and inner > edge - 7.0)


def _across(triangles: FloatArray, x: float) -> FloatArray:
    """Y of where triangles cross the plane of that x."""
    swapped = triangles[:, :, [1, 0, 2]]
    return slice_at(swapped, y=x)[:, :, 0]


def read_glue_line(
    p: Patches, board: Board, rough_top: Sequence[int], heel: Heel, found: Findings
) -> None:
    """The glue line where wood and fretboard are solids of their own, or where sides end on it."""
    owners = {int(p.solid[i]) for i in rough_top}
    down = (p.normal[:, 2] < DOWN) & (p.spread > 0.999) & (p.centre[:, 0] < -100)
    down &= np.isin(p.solid, list(owners)) & (p.centre[:, 2] > 0.4 * board.top.height)
    down &= (p.high[:, 0] - p.low[:, 0]) > 150
    faces = [int(i) for i in np.flatnonzero(down) if p.centre[i, 2] < board.top.height - 1]
    wood = set(map(int, p.solid)) - owners
    if not faces or not wood:
        _tell_sides_end(p, board, heel, found)
        return
    z = [float(p.centre[i, 2]) for i in faces]
    main = max(faces, key=lambda i: p.area[i])
    found.tell("neck.glue_line", float(p.centre[main, 2]), "the fretboard's own bottom",
               residual=max(z) - min(z))  # fmt: skip
    found.tell("neck.make", "glued", "wood and fretboard are solids of their own",
               kind=Kind.CHOICE, confidence=Confidence.LIKELY)  # fmt: skip


def _tell_sides_end(p: Patches, board: Board, heel: Heel, found: Findings) -> None:
    """In one solid the heel's sides may still end level, where a board of other width starts."""
    ends = []
    for wall in heel.walls:
        points = p.points_of([wall])
        upper = points[points[:, 2] > 0.4 * board.top.height, 2]
        ends += [float(upper.min()), float(upper.max())] if len(upper) else [np.nan]
    level = bool(ends) and float(np.ptp(ends)) < LEVEL
    if level and ends[0] < 0.95 * board.top.height:
        found.tell("neck.glue_line", ends[0], "the level on which the heel's sides end",
                   residual=float(np.ptp(ends)) / 2, confidence=Confidence.LIKELY)  # fmt: skip
        return
    found.notes.append(
        "the glue line does not show, for wood and fretboard are one solid: the job's stands"
    )

"""The heel in plan: its end, its corners and its sides, in a frame whose up is exact."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from ....job.arrays import FloatArray
from ....job.quantity import Kind
from .fits import Circle2, Line2, circle_through, line_through
from .found import Confidence, Findings, PickWanted
from .patches import Mask, Patches, different, slice_at

UPRIGHT = 0.01
"""Largest part of an upright wall's normal along up."""
REACH = 30.0
"""How far [mm] from the flat bottom's end the heel's end may lie (chamfer, round end)."""
LOW = 5.0
"""Walls of the heel come down to this height [mm] at least."""
SQUARE = np.cos(np.radians(2.0))
OFF = 1e-3
"""Points closer [mm] to a wall's line than this lie on it."""
CHORD, ON_ARC = 0.4, 0.02
"""A chord of a faceted end is at most this share of its width; its corners lie on it [mm]."""
ASKED = 0.03
"""A heel that lies more beside the board's centreline [mm] is asked about."""


@dataclass(frozen=True)
class Heel:
    """``end``: x of its end (apex of a round one); ``low``, ``high``: its side lines by y."""

    end: float
    is_round: bool
    low: Line2
    high: Line2
    walls: tuple[int, ...]

    def half(self, x: float) -> float:
        """Half its width [mm] between the straight sides."""
        return (self.high.y(x) - self.low.y(x)) / 2

    def middle(self, x: float) -> float:
        """Y [mm] halfway between the sides."""
        return (self.high.y(x) + self.low.y(x)) / 2


def read_heel(
    p: Patches,
    bottom: Sequence[int],
    found: Findings,
    name: str,
    *,
    sides: Sequence[int] | None = None,
    end: Sequence[int] | None = None,
) -> Heel:
    """Read the heel; ``sides`` and ``end`` may be picked by hand.

    Raises PickWanted where it has no sides or no end.
    """
    flat = p.points_of(bottom)
    far, near = float(flat[:, 0].min()), float(flat[:, 0].max())
    upright = (p.leaning < UPRIGHT) & (p.low[:, 2] < LOW) & (p.high[:, 2] > 1.0)
    upright &= p.high[:, 2] < 60
    lines = [_side(p, upright, sign, far, near, sides, name) for sign in (-1.0, 1.0)]
    low, high = (line for line, _ in lines)
    walls = tuple(i for _, patches in lines for i in patches)
    ends = _end_walls(p, upright, near) if end is None else list(end)
    ends = [i for i in ends if i not in walls]
    outline = _outline(p, [*ends, *walls], far)
    at, is_round, circle = _end(p, ends, found, name)
    heel = Heel(at, is_round, low, high, walls)
    found.items["heel sides"] = walls
    found.items["heel end"] = tuple(ends)
    _tell_end(heel, circle, outline, found)
    _tell_sides(heel, found)
    return heel


def _side(
    p: Patches, upright: Mask, sign: float, far: float, near: float,
    picked: Sequence[int] | None, name: str,
) -> tuple[Line2, list[int]]:  # fmt: skip
    facing = upright & (p.normal[:, 1] * sign > 0.99) & (p.spread > 0.999)
    facing &= (p.centre[:, 1] * sign > 12) & (p.high[:, 0] > far + 2) & (p.low[:, 0] < near)
    patches = [int(i) for i in np.flatnonzero(facing)]
    if picked is not None:
        patches = [i for i in picked if p.normal[i, 1] * sign > 0.9]
    # The shaft's side may carry on into the board's: it comes down beside the heel only.
    patches = [i for i in patches if _overlap(p, i, far, near) > 5.0 and _comes_down(p, i, far)]
    if not patches:
        raise PickWanted(
            f"{name}: the heel has no straight upright side at "
            f"{'positive' if sign > 0 else 'negative'} y; pick it by hand.",
            item="heel sides",
        )
    # Where several lie side by side (a cutaway's wall behind it), the longest is the heel's.
    main = max(patches, key=lambda i: _overlap(p, i, far, near))
    level = p.centre[main, 1]
    same = [i for i in patches if abs(p.centre[i, 1] - level) < 2.0]
    points = p.points_of([main])
    line = line_through(points[:, 0], points[:, 1])
    same = [i for i in same if np.abs(p.points_of([i])[:, 1] - line.y(0) - line.slope
                                      * p.points_of([i])[:, 0]).max() < 0.02]  # fmt: skip
    points = p.points_of(same or [main])
    return line_through(points[:, 0], points[:, 1]), same or [main]


def _comes_down(p: Patches, i: int, far: float) -> bool:
    points = p.points_of([i])
    beside = points[points[:, 0] > far + 2.0]
    return bool(len(beside) and beside[:, 2].min() < LOW)


def _overlap(p: Patches, i: int, far: float, near: float) -> float:
    return float(min(p.high[i, 0], near) - max(p.low[i, 0], far))


def _end_walls(p: Patches, upright: Mask, near: float) -> list[int]:
    forward = upright & (p.high[:, 0] > near - 1.0) & (p.high[:, 0] < near + REACH)
    forward &= p.low[:, 0] > near - 2.5 * REACH
    # A hole's wall goes all round and has no mean normal; corners look forward and aside.
    forward &= p.normal[:, 0] > 0.05
    return [int(i) for i in np.flatnonzero(forward)]


def _outline(p: Patches, walls: Sequence[int], far: float) -> FloatArray:
    """(k, 2) different points of the walls' plan within the heel."""
    points = p.points_of(walls)
    keep = (points[:, 0] > far - 1.0) & (points[:, 2] < 30.0)
    return different(np.round(points[keep, :2], 7))


def _end(
    p: Patches, ends: Sequence[int], found: Findings, name: str
) -> tuple[float, bool, Circle2 | None]:  # fmt: skip
    square = [i for i in ends if p.normal[i, 0] > SQUARE and p.spread[i] > 0.9999]
    widths = [float(np.ptp(p.points_of([i])[:, 1])) for i in square]
    if square and max(widths) > 4.0 and not _is_faceted_arc(p, ends, max(widths)):
        points = p.points_of([i for i, w in zip(square, widths, strict=True) if w > 1.0])
        x = points[:, 0]
        at = float(x.max() + x.min()) / 2
        skew = float(np.ptp(x))
        if skew > 0.02:
            found.ask(
                "neck.heel_end",
                f"the heel's end is not square to the centreline: one corner lies {skew:.2f} mm "
                "before the other; is that the heel's end?",
                by_value=False,
            )
        return at, False, None
    curved = p.points_of(ends)[:, :2] if ends else np.zeros((0, 2))
    curved = different(np.round(curved, 7))
    if len(curved) < 5:
        raise PickWanted(f"{name}: the heel's end was not found; pick it by hand.", item="heel end")
    circle = circle_through(curved)
    return float(circle.centre[0] + circle.radius), True, circle


def _is_faceted_arc(p: Patches, ends: Sequence[int], widest: float) -> bool:
    """Whether a mesh's end, one facet of which is square, is an arc's chords all the same."""
    if p.exact:
        return False
    corners = different(np.round(p.points_of(ends)[:, :2], 5))
    if len(corners) < 5 or widest > CHORD * np.ptp(corners[:, 1]):
        return False
    return circle_through(corners).residual < ON_ARC


def _tell_end(heel: Heel, circle: Circle2 | None, outline: FloatArray, found: Findings) -> None:
    if circle is not None:
        found.tell("neck.heel_end", "round", "the heel's end wall in plan", kind=Kind.CHOICE,
                   residual=circle.residual)  # fmt: skip
        found.tell("neck.heel_radius", circle.radius, "circle through the heel's end wall",
                   residual=circle.residual, confidence=trust(circle.residual))  # fmt: skip
        if circle.residual > 0.05:
            found.ask("neck.heel_end", f"the heel's end is no arc: it strays {circle.residual:.2f} "
                      "mm from a circle; is that the heel's end?")  # fmt: skip
        beside = float(circle.centre[1])
        if abs(beside) > ASKED:
            found.ask("neck.heel_end", f"the round end's middle lies {beside:.2f} mm beside the "
                      "centreline; which of the two is right?")  # fmt: skip
        return
    found.tell("neck.heel_end", "square", "the heel's end wall in plan", kind=Kind.CHOICE)
    radii = [_corner(outline, heel, side) for side in (heel.low, heel.high)]
    real = [r for r in radii if r is not None]
    if not real:
        found.tell("neck.heel_corner_radius", 0.0, "the heel's sides meet its end in corners")
        return
    radius = sum(c.radius for c in real) / len(real)
    off = max(c.residual for c in real)
    apart = abs(real[0].radius - real[-1].radius) if len(real) == 2 else radius
    found.tell("neck.heel_corner_radius", radius, "circles through the heel's corners in plan",
               residual=max(off, apart / 2), confidence=trust(off))  # fmt: skip
    if apart > 0.05 or off > 0.05:
        found.ask("neck.heel_corner_radius", "the heel's two corners differ or are no arcs; state "
                  "the radius that the pocket must take.")  # fmt: skip


def trust(residual: float) -> Confidence:
    """How far a measure of the heel can be trusted by its residual [mm]."""
    if residual < 0.01:
        return Confidence.SURE
    return Confidence.LIKELY if residual < 0.05 else Confidence.DOUBTFUL


def _corner(outline: FloatArray, heel: Heel, side: Line2) -> Circle2 | None:
    """The arc between end and side, or None where they meet in a corner."""
    sign = 1.0 if side is heel.high else -1.0
    x, y = outline.T
    in_corner = (x > heel.end - 25) & (y * sign > heel.half(heel.end) - 25)
    off_side = np.abs(y - side.at - side.slope * x) / np.hypot(1, side.slope)
    off_end = np.abs(x - heel.end)
    free = outline[in_corner & (off_side > OFF) & (off_end > OFF)]
    if len(free) < 2:
        return None
    tangent = [
        group[np.argmin(np.hypot(*(group - free.mean(axis=0)).T))]
        for group in (outline[in_corner & (off_side <= OFF)], outline[in_corner & (off_end <= OFF)])
        if len(group)
    ]
    return circle_through(np.vstack([free, *tangent]))


def _tell_sides(heel: Heel, found: Findings) -> None:
    off = max(heel.low.residual, heel.high.residual)
    width = 2 * heel.half(heel.end)
    found.tell("neck.heel_width_end", width, "the heel's sides carried on to its end",
               residual=off, confidence=trust(off))  # fmt: skip
    beside = heel.middle(heel.end)
    askew = heel.middle(heel.end - 70.0)
    if max(abs(beside), abs(askew)) > ASKED:
        found.ask(
            "neck.heel_width_end",
            f"the heel's middle lies {beside:+.2f} mm beside the fretboard's centreline at its end "
            f"and {askew:+.2f} mm 70 mm before it; which of the two does the pocket follow?",
            by_value=False,
        )
    uneven = abs(heel.high.slope + heel.low.slope)
    if uneven * 70 > 2 * ASKED and max(abs(beside), abs(askew)) <= ASKED:
        found.notes.append("the heel tapers more on one side than on the other")


def mouth_width(heel: Heel, pocket_length: float) -> float:
    """Width [mm] of the heel one pocket length before its end."""
    return 2 * heel.half(heel.end - pocket_length)


def flat_length(p: Patches, bottom: Sequence[int], end: float) -> tuple[float, float]:
    """How far [mm] the bottom stays flat behind the heel's end, and how uneven that line is."""
    triangles = p.triangles_of(bottom)
    half = np.abs(triangles[:, :, 1]).max() * 0.8
    reach = []
    for y in np.linspace(-half, half, 9):
        cut = slice_at(triangles, y=float(y))
        if len(cut):
            reach.append(float(cut[:, :, 0].min()))
    return end - max(reach), float(np.ptp(reach))

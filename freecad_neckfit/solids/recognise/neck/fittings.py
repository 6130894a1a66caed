"""The truss rod's channel and the screw holes, where they are modelled."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from ....job.quantity import Kind
from .board import Board
from .fits import circle_through
from .found import Confidence, Findings, Hole
from .heel import Heel
from .patches import Patches, different

LONG = 100.0
"""A channel is at least so long [mm]."""
NARROW = (2.0, 15.0)
"""Widths of channels [mm]."""
OPEN = 0.05
"""A channel that comes this near [mm] to the heel's end opens there."""
HOLES = (0.8, 6.5)
"""Radii of screw holes [mm]."""


def read_rod(p: Patches, board: Board, found: Findings) -> None:
    """The truss rod's channel: a groove with a flat bottom, or a round hole along the neck."""
    flat, bored = _grooves(p, board), _bores(p, board)
    if not flat and not bored:
        found.notes.append("no truss-rod channel is modelled: the job's stands")
        return
    if flat:
        points = p.points_of(flat)
        end, width = float(points[:, 0].max()), float(np.ptp(points[:, 1]))
        depth, axis = float(np.median(points[:, 2])), None
        how, off = "the channel's flat bottom", float(np.ptp(points[:, 2])) / 2
        found.items["rod"] = tuple(flat)
    else:
        points = p.points_of(bored)
        circle = circle_through(different(points[:, 1:]))
        end, width = float(points[:, 0].max()), 2 * circle.radius
        axis, off = float(circle.centre[1]), circle.residual
        depth, how = axis - circle.radius, "the round channel along the neck"
        found.items["rod"] = tuple(bored)
    found.tell("neck.rod_width", width, how, residual=off)
    found.tell("neck.rod_depth", depth, how, residual=off)
    found.tell("neck.rod_end", max(-end, 0.0), f"{how}: its end", residual=off)
    at_heel = end > -OPEN
    found.tell(
        "neck.rod", "heel" if at_heel else "headstock",
        "the channel opens in the heel's end" if at_heel else "the channel stops before the heel's "
        "end", kind=Kind.CHOICE, confidence=Confidence.SURE if at_heel else Confidence.LIKELY,
    )  # fmt: skip
    if at_heel and axis is not None:
        found.tell("neck.rod_tool_height", axis, "the round channel's axis", residual=off)


def _grooves(p: Patches, board: Board) -> list[int]:
    up = (p.normal[:, 2] > 0.9999) & (p.spread > 0.9999)
    up &= (p.centre[:, 2] > 1.0) & (p.centre[:, 2] < board.top.height - 3)
    up &= (p.high[:, 0] - p.low[:, 0] > LONG) & (np.abs(p.centre[:, 1]) < 4)
    width = p.high[:, 1] - p.low[:, 1]
    up &= (width > NARROW[0]) & (width < NARROW[1])
    return [int(i) for i in np.flatnonzero(up)]


def _bores(p: Patches, board: Board) -> list[int]:
    along = (p.high[:, 0] - p.low[:, 0] > LONG / 2) & (p.high[:, 0] < 1.0)
    along &= (p.high[:, 1] - p.low[:, 1] < NARROW[1]) & (np.abs(p.centre[:, 1]) < 4)
    along &= (p.low[:, 2] > 0.5) & (p.high[:, 2] < board.top.height - 1)
    found = []
    for i in np.flatnonzero(along):
        if p.spread[i] > 0.9:
            continue
        circle = circle_through(different(p.points_of([int(i)])[:, 1:]))
        if circle.residual < 0.02 and NARROW[0] < 2 * circle.radius < NARROW[1]:
            found.append(int(i))
    return found


def read_holes(p: Patches, bottom: Sequence[int], heel: Heel, found: Findings) -> None:
    """Round holes that start in the heel's bottom, in order along the heel."""
    flat = p.points_of(bottom)
    upright = (p.low[:, 2] > -0.5) & (p.low[:, 2] < 0.5) & (p.high[:, 2] > 1.5)
    upright &= (p.low[:, 0] > flat[:, 0].min()) & (p.high[:, 0] < heel.end + 1e-6)
    size = p.high - p.low
    upright &= (size[:, 0] < 2.2 * HOLES[1]) & (size[:, 1] < 2.2 * HOLES[1])
    spots: dict[tuple[float, float], list[int]] = {}
    for i in np.flatnonzero(upright):
        points = p.points_of([int(i)])
        if len(points) < 6 or not _inward(p, int(i)):
            continue
        circle = circle_through(different(points[:, :2]))
        if circle.residual < 0.02 and HOLES[0] < circle.radius < HOLES[1]:
            spot = (round(float(circle.centre[0]), 2), round(float(circle.centre[1]), 2))
            spots.setdefault(spot, []).append(int(i))
    for patches in spots.values():
        points = p.points_of(patches)
        circle = circle_through(different(points[:, :2]))
        found.holes.append(
            Hole(float(circle.centre[0]), float(circle.centre[1]), 2 * circle.radius,
                 float(points[:, 2].max()))
        )  # fmt: skip
    found.holes.sort(key=lambda h: (round(-h.x, 3), h.y))


def _inward(p: Patches, i: int) -> bool:
    """Whether a wall's normals point to its middle: a hole, not a pin."""
    mine = p.owner == i
    middle = p.corners[mine].mean(axis=1)
    out = middle - middle.mean(axis=0)
    return bool((out[:, :2] * p.triangle_normal[mine][:, :2]).sum() < 0)

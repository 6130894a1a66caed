"""The neck frame, exactly: up from the heel's bottom, along and centre from the board's edges."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from ....job.arrays import FloatArray
from .fits import Line2, line_through, plane_through
from .found import Findings, PickWanted
from .patches import Patches
from .rough import Rough

EDGE = 0.002
"""Points this near [mm] to the longest side of the hull are taken to lie on it."""
STEEP = np.radians(6.0)
"""Largest angle of a fretboard's edge to the centreline."""


@dataclass(frozen=True)
class Frame:
    """Axes (rows of ``rows``: along, across, up) and origin in the file's space."""

    rows: FloatArray
    origin: FloatArray

    def matrix(self) -> FloatArray:
        """(4, 4) motion from the file's space to the neck frame."""
        found = np.eye(4)
        found[:3, :3] = self.rows
        found[:3, 3] = -self.rows @ self.origin
        return found


def rough_frame(p: Patches, rough: Rough, found: Findings) -> Frame:
    """Up from the heel's bottom; the origin on it, anywhere. Its flatness is told."""
    points = p.points_of(rough.bottom)
    plane = plane_through(points, toward=-rough.up)
    flatness = plane.residual
    if flatness > 0.02:
        found.ask(
            "heel bottom",
            f"the heel's bottom is not flat: it strays {flatness:.2f} mm from a plane; is that the "
            "heel's bottom?",
        )
    found.tell("heel bottom", flatness, "flatness of the heel's bottom", residual=flatness)
    return _with_up(-plane.normal, rough.along, plane.point)


def _with_up(up: FloatArray, along: FloatArray, origin: FloatArray) -> Frame:
    flat = along - (along @ up) * up
    flat = flat / np.linalg.norm(flat)
    return Frame(np.array([flat, np.cross(up, flat), up]), origin)


def turned(frame: Frame, *, angle: float, shift: FloatArray) -> Frame:
    """The frame turned about its own up by ``angle`` [radians] and moved by ``shift`` in it."""
    cos, sin = np.cos(angle), np.sin(angle)
    turn = np.array([[cos, sin, 0.0], [-sin, cos, 0.0], [0.0, 0.0, 1.0]])
    return Frame(turn @ frame.rows, frame.origin + shift @ frame.rows)


def on_centreline(p: Patches, rough: Rough, frame: Frame, name: str) -> Frame:
    """The frame with x along the bisector of the board's edges."""
    top, corners = p.points_of(rough.top), None
    for _ in range(3):
        points = (top - frame.origin) @ frame.rows.T
        # Turned within the plan, the same points are the hull's corners.
        corners = convex_hull(points[:, :2]) if corners is None else corners
        near, far = _edges(points, corners, name)
        angle = (np.arctan(near.slope) + np.arctan(far.slope)) / 2
        at = 0.0
        middle = (near.y(at) + far.y(at)) / 2
        frame = turned(frame, angle=float(angle), shift=np.array([0.0, middle, 0.0]))
    return frame


def edges_of(points: FloatArray, name: str) -> tuple[Line2, Line2]:
    """The board's two long edges in plan, lower y first. Raises PickWanted where there are none."""
    return _edges(points, convex_hull(points[:, :2]), name)


def _edges(points: FloatArray, corners: NDArray[np.int64], name: str) -> tuple[Line2, Line2]:
    plan = points[:, :2]
    return (
        _long_edge(plan, plan[corners], -1.0, name), _long_edge(plan, plan[corners], 1.0, name),
    )  # fmt: skip


def _long_edge(points: FloatArray, hull: FloatArray, sign: float, name: str) -> Line2:
    after = np.roll(hull, -1, axis=0)
    step = after - hull
    size = np.hypot(step[:, 0], step[:, 1])
    # Counter-clockwise: the lower side runs along +x, the upper one along -x.
    level = (np.abs(step[:, 1]) < np.tan(STEEP) * np.abs(step[:, 0])) & (step[:, 0] * -sign > 0)
    if not level.any():
        raise PickWanted(
            f"{name}: the fretboard's long edges were not found; pick its top by hand.",
            item="fretboard top",
        )
    best = int(np.argmax(np.where(level, size, 0.0)))
    slope = step[best, 1] / step[best, 0]
    at = hull[best, 1] - slope * hull[best, 0]
    on = np.abs(points[:, 1] - at - slope * points[:, 0]) < EDGE
    line = line_through(points[on, 0], points[on, 1])
    # What stands back from the edge (a fret's end) says nothing; a bow outward does.
    side = np.concatenate([hull[level], after[level]])
    off = float(np.abs(side[:, 1] - line.at - line.slope * side[:, 0]).max())
    return replace(line, residual=off)


def convex_hull(points: FloatArray) -> NDArray[np.int64]:
    """Which of points (n, 2) are the corners of their convex hull, counter-clockwise."""
    order = np.lexsort((points[:, 1], points[:, 0]))
    places = points.tolist()  # plain numbers: the chain takes them one by one

    def half(rows: list[int]) -> list[int]:
        chain: list[int] = []
        for row in rows:
            x, y = places[row]
            while len(chain) > 1:
                (ax, ay), (bx, by) = places[chain[-2]], places[chain[-1]]
                if (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0:
                    break
                chain.pop()
            chain.append(row)
        return chain[:-1]

    return np.array(half(order.tolist()) + half(order[::-1].tolist()))

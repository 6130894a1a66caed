"""How far the fillets round a floor stand over the heel's lower edges, off their exact surfaces.

At the wall a fillet is upright: a thousandth aside, as triangles are, is some hundredths in height.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .measured import Place, place_at

Rise = Callable[[FloatArray], FloatArray]
"""How far [mm, along Z] a fillet stands over points (k, 3); minus infinite where it is not."""

STEPS = 48
"""Parts that an edge is looked at in before its high places are closed in on."""
FINER = 8
"""Parts that what lies beside a high place is looked at in, again and again."""
PASSES = 12
"""So often: 1 mm is closed in on to 1e-7 mm, for each pass leaves a quarter."""
SAME = 1e-7
"""How far [mm, radians] past its ends a fillet still counts."""
LEANS = 0.5
"""Z of an axis along the floor is less than this, of one square to it more."""
UP = np.array([0.0, 0.0, 1.0])
DIGITS = 9
"""Heights that are the same to so many digits are the same."""


def rise_of(face: Any) -> Rise | None:
    """How far a fillet stands over points, along a line or round a level turn; None for others."""
    kind, surface = type(face.Surface).__name__, face.Surface
    if kind == "Cylinder" and abs(surface.Axis.z) < LEANS:
        return _straight(face)
    return _round(face) if kind == "Toroid" and abs(surface.Axis.z) > LEANS else None


def highest(rises: Iterable[Rise], edges: Iterable[Any]) -> tuple[float, Place] | None:
    """Most that any fillet stands over any edge [mm], and the place on the edge; None if none is.

    Fillets are hollow and edges' faces ruled: between the edges nothing is higher.
    """
    rises = list(rises)

    def over(points: FloatArray) -> FloatArray:
        return np.asarray(np.max([rise(points) for rise in rises], axis=0))

    found = [peak for edge in edges for peak in _peaks(over, edge)] if rises else []
    return max(found, key=lambda f: f[0], default=None)


def _peaks(over: Rise, edge: Any) -> Iterator[tuple[float, Place]]:
    """The high places along an edge, each closed in on."""
    at = np.linspace(edge.FirstParameter, edge.LastParameter, STEPS + 1)
    height = np.round(over(_points(edge, at)), DIGITS)
    if not np.isfinite(height.max()):
        return
    beside = np.pad(height, 1, constant_values=-np.inf)
    for k in np.flatnonzero((height > beside[:-2]) & (height >= beside[2:])):
        yield _closed_in(over, edge, at[max(k - 1, 0)], at[min(k + 1, STEPS)])


def _closed_in(over: Rise, edge: Any, low: float, high: float) -> tuple[float, Place]:
    for _ in range(PASSES):
        at = np.linspace(low, high, FINER + 1)
        points = _points(edge, at)
        height = over(points)
        k = int(height.argmax())
        low, high = at[max(k - 1, 0)], at[min(k + 1, FINER)]
    return float(height[k]), place_at(points[k])


def _points(edge: Any, at: FloatArray) -> FloatArray:
    return np.array([(p.x, p.y, p.z) for p in map(edge.valueAt, at.tolist())])


def _straight(face: Any) -> Rise:
    """A fillet along a line, which may lean as the floor does."""
    surface = face.Surface
    axis, centre = np.array(surface.Axis), np.array(surface.Center)
    first, last = face.ParameterRange[2:]
    across = _unit(np.cross(axis, UP))
    if (_at(face, 0.5, 0.5) - centre) @ across < 0:
        across = -across
    up = np.cross(axis, across)
    up *= np.sign(up[2])
    ends = [_angle(_at(face, u, 0.5) - centre, across, up) for u in (0.0, 1.0)]

    def rise(points: FloatArray) -> FloatArray:
        off = points - centre
        height, there = _arc(off @ across, off @ up, (0.0, up[2]), surface.Radius, ends)
        along = off @ axis + height * axis[2]
        there &= (along >= first - SAME) & (along <= last + SAME)
        return np.where(there, height, -np.inf)

    return rise


def _round(face: Any) -> Rise:
    """A fillet round a corner or end, about an axis square to the floor."""
    surface = face.Surface
    axis, centre = np.array(surface.Axis), np.array(surface.Center)
    axis *= np.sign(axis[2])
    ahead = _at(face, 0.5, 0.5) - centre
    ahead = _unit(ahead - axis * (ahead @ axis))
    aside = np.cross(axis, ahead)
    half = (face.ParameterRange[1] - face.ParameterRange[0]) / 2
    ring = centre + surface.MajorRadius * ahead
    ends = [_angle(_at(face, 0.5, v) - ring, ahead, axis) for v in (0.0, 1.0)]

    def rise(points: FloatArray) -> FloatArray:
        off, height = points - centre, np.zeros(len(points))
        for _ in range(2):  # under an axis that leans, what lies above a point lies aside of it
            above = off + height[:, None] * UP
            x, y = above @ ahead, above @ aside
            away = np.hypot(x, y)
            out_z = (x * ahead[2] + y * aside[2]) / away
            out = away - surface.MajorRadius
            upward = out_z, axis[2]
            more, there = _arc(out, above @ axis, upward, surface.MinorRadius, ends)
            height = height + more
        there &= np.abs(np.arctan2(y, x)) <= half + SAME
        return np.where(there, height, -np.inf)

    return rise


def _arc(
    out: FloatArray,
    over: FloatArray,
    upward: tuple[Any, Any],
    radius: float,
    ends: list[float],
) -> tuple[FloatArray, NDArray[np.bool_]]:
    """How far a fillet's arc stands over points, seen along the fillet, and whether it does.

    ``out``, ``over``: from the arc's centre toward the wall and square to the floor [mm];
    ``upward``: the parts of Z along both; ``ends``: directions of the arc's ends from its centre
    [radians]. Beyond the wall it stands as high as at the wall, before its foot nowhere.
    """
    length, turn = np.hypot(*upward), np.arctan2(*upward)
    sin, cos = np.sin(turn), np.cos(turn)
    across, up = out * cos - over * sin, out * sin + over * cos
    foot, top = min(ends) + turn, max(ends) + turn
    farthest = radius * np.where(top < 0, np.cos(top), 1.0)
    reach = np.minimum(across, farthest)
    low = np.sqrt(np.maximum(radius**2 - reach**2, 0.0))
    return (-up - low) / length, across >= radius * np.cos(foot)


def _at(face: Any, first: float, second: float) -> FloatArray:
    """The point of a face's surface at shares of its parameters' ranges."""
    u0, u1, v0, v1 = face.ParameterRange
    return np.array(face.valueAt(u0 + (u1 - u0) * first, v0 + (v1 - v0) * second), dtype=float)


def _angle(off: FloatArray, out: FloatArray, over: FloatArray) -> float:
    return float(np.arctan2(off @ over, off @ out))


def _unit(vector: FloatArray) -> FloatArray:
    return np.asarray(vector / np.linalg.norm(vector))

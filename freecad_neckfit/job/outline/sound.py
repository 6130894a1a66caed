"""Whether an outline can be a body's: closed, free of crossings, round the pocket."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from ..arrays import FloatArray
from ..errors import CannotBuild
from .chain import Outline, Point

CHORD = 0.05
"""How far [mm] the polygon may stray that is searched for crossings."""
LARGEST = 2000.0
"""Farthest a body reaches from the pocket [mm]."""
SHORTEST = 0.01
"""Shortest segment [mm]: the kernel loses shorter edges."""
MOST_CORNERS = 20_000
FRONT_ERROR = 0.5
"""How far [mm] the outline's front may lie from where ``pocket.length`` puts the mouth."""
_ROWS = 256


def check_outline(outline: Outline, v: Mapping[str, Any], *, name: str) -> Outline:
    """Return the outline, or raise CannotBuild where no body of this pocket can have it.

    ``name`` is the file or parameter that states it.
    """
    _check_size(outline, name)
    corners = outline.polyline(CHORD)
    if len(corners) > MOST_CORNERS:
        raise CannotBuild(f"{name}: the outline has too many curves; draw it with fewer.")
    crossing = first_crossing(corners)
    if crossing is not None:
        raise CannotBuild(
            f"{name}: the outline crosses or touches itself near X = {crossing[0]:.1f}, "
            f"Y = {crossing[1]:.1f} mm; part its lines there."
        )
    _check_pocket(outline, v, name)
    return outline


def _check_size(outline: Outline, name: str) -> None:
    for s in outline.segments:
        if not all(abs(c) <= LARGEST for p in (s.start, s.through, s.end) if p for c in p):
            raise CannotBuild(
                f"{name}: the outline reaches more than {LARGEST:g} mm from the origin; place "
                "its end "
                "wall at the origin, and check its units."
            )
        if s.length < SHORTEST:
            raise CannotBuild(
                f"{name}: the outline has a piece of {s.length:.4f} mm near X = {s.start[0]:.1f}, "
                f"Y = {s.start[1]:.1f} mm; leave it out."
            )
    if len(outline.segments) < 2 or outline.area < 100.0:
        raise CannotBuild(f"{name}: the outline encloses no body; draw it round the pocket.")


def _check_pocket(outline: Outline, v: Mapping[str, Any], name: str) -> None:
    half, mouth = float(v["pocket.width_end"]) / 2, -float(v["pocket.length"])
    if not all(outline.contains(np.array([(0.0, half), (0.0, 0.0), (0.0, -half)]))):
        raise CannotBuild(
            f"{name}: the outline does not hold the pocket's end wall, {2 * half:.2f} mm wide at "
            "the "
            "origin; place it so that the end wall's middle is the origin and X points to the "
            "bridge."
        )
    front = front_on_centreline(outline)
    if front is None or abs(front - mouth) > FRONT_ERROR:
        where = "nowhere" if front is None else f"at X = {front:.2f} mm"
        raise CannotBuild(
            f"{name}: the outline's front crosses the centreline {where}, but pocket.length puts "
            "the "
            f"mouth at X = {mouth:.2f} mm; make them agree."
        )


def front_on_centreline(outline: Outline) -> float | None:
    """X [mm] where the outline crosses Y = 0 next before the origin, or None."""
    x, y = outline.polyline(0.001).T
    x1, y1 = np.roll(x, -1), np.roll(y, -1)
    crosses = (y > 0) != (y1 > 0)
    at = x[crosses] - y[crosses] * (x1[crosses] - x[crosses]) / (y1[crosses] - y[crosses])
    before = at[at < 0]
    return float(before.max()) if len(before) else None


def first_crossing(corners: FloatArray) -> Point | None:
    """A point where a closed polygon (n, 2) crosses, touches or doubles itself, or None."""
    ends = np.roll(corners, -1, axis=0)
    folded = _first_fold(corners, ends)
    if folded is not None:
        return folded
    for first in range(0, len(corners), _ROWS):
        rows = np.arange(first, min(first + _ROWS, len(corners)))
        hits = _crossings(corners, ends, rows)
        if hits.any():
            row = rows[int(np.argmax(hits.any(axis=1)))]
            return float(corners[row, 0]), float(corners[row, 1])
    return None


def _first_fold(corners: FloatArray, ends: FloatArray) -> Point | None:
    along = (ends - corners) / np.hypot(*(ends - corners).T)[:, None]
    after = np.roll(along, -1, axis=0)
    back = np.einsum("ij,ij->i", along, after) < -1 + 1e-9
    if not back.any():
        return None
    x, y = ends[int(np.argmax(back))]
    return float(x), float(y)


def _crossings(corners: FloatArray, ends: FloatArray, rows: Any) -> Any:
    """Whether edges ``rows`` meet each edge that is no neighbour; shape (rows, edges)."""
    p, q = corners[rows, None, :], ends[rows, None, :]
    r, s = corners[None, :, :], ends[None, :, :]
    # Bounding boxes first: nearly all pairs lie apart.
    near = np.all(
        (np.minimum(p, q) <= np.maximum(r, s)) & (np.minimum(r, s) <= np.maximum(p, q)), axis=2
    )
    count = len(corners)
    step = (np.arange(count)[None, :] - rows[:, None]) % count
    neighbours = (step <= 1) | (step >= count - 1)
    apart = (_side(p, q, r) * _side(p, q, s) > 0) | (_side(r, s, p) * _side(r, s, q) > 0)
    return near & ~neighbours & ~apart


def _side(a: FloatArray, b: FloatArray, c: FloatArray) -> FloatArray:
    ahead = (b[..., 0] - a[..., 0]) * (c[..., 1] - a[..., 1])
    aside = (b[..., 1] - a[..., 1]) * (c[..., 0] - a[..., 0])
    return np.asarray(np.subtract(ahead, aside), dtype=float)

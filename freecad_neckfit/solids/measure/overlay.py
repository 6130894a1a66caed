"""Two triangulations laid over each other: the exact distance between them along one axis.

Over the common part of two flat triangles the distance is linear, so it is least (and largest)
at a corner of that part: a corner of either triangle that lies in the other one's view, or a
crossing of two edges.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .facets import Facets

INSIDE = 1e-9
"""How far [mm] a corner may lie outside a triangle and still count as on its edge."""
SAME = 1e-9
"""Distances and places that differ by less than this [mm] are one."""
CHUNK = 200_000
"""Pairs of triangles looked at in one go."""
FIRST = 64
"""So many of the pairs that may be nearest are looked at first: all that is farther is left out."""
STEEP = 1e6
"""A triangle whose plane rises more [mm per mm] stands upright."""


@dataclass(frozen=True)
class Overlay:
    """Corners of the common parts of pairs of triangles, seen along ``axis``.

    ``upper``, ``lower``: (p,) triangle indices of each pair. ``plan``: (p, 15, 2) corners in the
    plane of view; ``high``, ``low``: (p, 15) coordinates along the axis on the upper and the
    lower triangle; ``valid``: (p, 15) which of the 15 candidates are corners.
    """

    axis: int
    upper: NDArray[np.int64]
    lower: NDArray[np.int64]
    plan: FloatArray
    high: FloatArray
    low: FloatArray
    valid: NDArray[np.bool_]

    @cached_property
    def gap(self) -> FloatArray:
        """(p, 15) distance from lower to upper triangle [mm]; infinite where not a corner."""
        return np.where(self.valid, self.high - self.low, np.inf)

    def least(self) -> tuple[float, tuple[float, float, float]] | None:
        """The least distance [mm] and the point on the upper triangle, or None without overlap."""
        if not self.valid.any():
            return None
        pair, corner = np.unravel_index(np.argmin(self.gap), self.gap.shape)
        place = self.point(self.plan[pair, corner], self.high[pair, corner])
        return float(self.gap[pair, corner]), place

    def farthest_least(self) -> tuple[float, tuple[float, float, float]] | None:
        """As ``least``; of equal distances the farthest along the view's first axis is told.

        Between level faces all are equal: which of them rounding makes the least says nothing.
        """
        if not self.valid.any():
            return None
        pair, corner = np.nonzero(self.gap <= self.gap.min() + SAME)
        plan = self.plan[pair, corner]
        k = int(np.lexsort((plan[:, 1], np.round(-plan[:, 0] / SAME)))[0])
        place = self.point(plan[k], self.high[pair[k], corner[k]])
        return float(self.gap[pair[k], corner[k]]), place

    def point(self, plan: FloatArray, height: float) -> tuple[float, float, float]:
        """A point of the view back in body-frame order."""
        turned = (float(plan[0]), float(plan[1]), float(height))
        back = [0.0, 0.0, 0.0]
        for k, axis in enumerate(order(self.axis)):
            back[axis] = turned[k]
        return back[0], back[1], back[2]

    @cached_property
    def centre(self) -> FloatArray:
        """(p, 2) a point within each common part."""
        count = np.maximum(self.valid.sum(axis=1), 1)
        total = np.where(self.valid[:, :, None], self.plan, 0.0).sum(axis=1)
        return np.asarray(total / count[:, None])

    @cached_property
    def area(self) -> FloatArray:
        """(p,) area [mm2] of each common part in the plane of view."""
        from_centre = self.plan - self.centre[:, None, :]
        angle = np.arctan2(from_centre[:, :, 1], from_centre[:, :, 0])
        turn = np.argsort(np.where(self.valid, angle, np.inf), axis=1)
        ring = np.take_along_axis(from_centre, turn[:, :, None], axis=1)
        real = np.take_along_axis(self.valid, turn, axis=1)
        ring = np.where(real[:, :, None], ring, ring[:, :1])
        after = np.roll(ring, -1, axis=1)
        return np.asarray(np.abs(_det(ring, after).sum(axis=1)) / 2)

    @cached_property
    def thickness(self) -> FloatArray:
        """(p,) area over length [mm] of each common part: about half its width where it is long."""
        low, high = (
            f(np.where(self.valid[:, :, None], self.plan, e), axis=1)
            for f, e in ((np.min, np.inf), (np.max, -np.inf))
        )
        length = np.hypot(*_xy(high - low))
        return np.asarray(self.area / np.maximum(length, 1e-300))

    def only(self, mask: NDArray[Any]) -> Overlay:
        """The pairs where ``mask`` is true, or at these indices."""
        return Overlay(self.axis, self.upper[mask], self.lower[mask], self.plan[mask],
                       self.high[mask], self.low[mask], self.valid[mask])  # fmt: skip


def order(axis: int) -> tuple[int, int, int]:
    """Body axes in the order of a view: two in its plane, then the axis of view."""
    return (axis + 1) % 3, (axis + 2) % 3, axis


def overlay(upper: Facets, lower: Facets, *, axis: int = 2) -> Overlay:
    """Lay the triangles of ``upper`` over those of ``lower``, seen along an axis (0 X, 1 Y, 2 Z).

    Triangles seen on edge must have been left out (``Facets.facing``). ``high - low`` is signed:
    negative where ``upper`` lies below ``lower``.
    """
    a, b = (f.points[:, :, list(order(axis))] for f in (upper, lower))
    return _laid(a, b, *_near(a, b), axis=axis)


def _laid(
    a: FloatArray, b: FloatArray, first: NDArray[np.int64], second: NDArray[np.int64], *, axis: int
) -> Overlay:
    """Pairs of triangles laid over each other; those that share nothing are left out."""
    parts = [
        _corners(a[first[s : s + CHUNK]], b[second[s : s + CHUNK]])
        for s in range(0, max(len(first), 1), CHUNK)
    ]
    plan, high, low, valid = (np.concatenate(c) for c in zip(*parts, strict=True))
    found = Overlay(axis, first, second, plan, high, low, valid)
    return found.only(valid.any(axis=1))


def nearest(upper: Facets, lower: Facets, *, within: float, thicker: float) -> Overlay:
    """As ``overlay`` along Z, but only what is needed to know where the distance is least.

    That is every pair whose common part is thicker than ``thicker`` [mm] and that comes within
    ``within`` [mm] of the least distance of them, and some farther ones. Pairs are laid over each
    other from the nearest on, by how near they may come at most.
    """
    a, b = (f.points[:, :, list(order(2))] for f in (upper, lower))
    first, second = _bounds_meet(a, b)
    bound = _least_between(a, b, first, second)
    likely = np.zeros(len(bound), dtype=bool)
    likely[np.argsort(bound, kind="stable")[:FIRST]] = True
    some = _laid(a, b, *_meeting(a, b, first[likely], second[likely]), axis=2)
    best = float(_thick(some, within, thicker).gap.min(initial=np.inf))
    more = ~likely & (bound <= best + within)
    rest = _laid(a, b, *_meeting(a, b, first[more], second[more]), axis=2)
    return _thick(_together(some, rest), within, thicker)


def _thick(laid: Overlay, within: float, thicker: float) -> Overlay:
    """The pairs thick enough that come within ``within`` of their least distance, and some more.

    Thickness costs as much as all else: it is asked for among the nearest first.
    """
    least = laid.gap.min(axis=1)
    most = float(least.min(initial=np.inf)) + within
    while True:
        near = laid.only(least <= most)
        near = near.only(near.thickness > thicker)
        enough = float(near.gap.min(initial=np.inf)) + within
        if enough <= most or most >= least.max(initial=-np.inf):
            return near
        most = min(enough, most + 10 * (most - float(least.min())))


def _least_between(
    a: FloatArray, b: FloatArray, first: NDArray[np.int64], second: NDArray[np.int64]
) -> FloatArray:
    """(p,) least distance [mm] that pairs of triangles can have where their bounds overlap."""
    low_a, high_b = _least(a), _most(b)
    by_level = low_a[first, 2] - high_b[second, 2]
    slopes = [_slopes(t) for t in (a, b)]
    low = np.maximum(low_a[first, :2], _least(b)[second, :2])
    high = np.minimum(_most(a)[first, :2], high_b[second, :2])
    middle, half = (low + high) / 2, np.abs(high - low) / 2
    slope_a, slope_b = slopes[0][first], slopes[1][second]
    with np.errstate(invalid="ignore"):
        there = a[first, 0, 2] + ((middle - a[first, 0, :2]) * slope_a).sum(axis=1)
        there -= b[second, 0, 2] + ((middle - b[second, 0, :2]) * slope_b).sum(axis=1)
        by_slope = there - (np.abs(slope_a - slope_b) * half).sum(axis=1)
    return np.asarray(np.fmax(by_level, by_slope)) - INSIDE


def _slopes(t: FloatArray) -> FloatArray:
    """(n, 2) rise of the planes of triangles (n, 3, 3) along x and y; NaN of upright ones."""
    ab, ac = t[:, 1] - t[:, 0], t[:, 2] - t[:, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        twice = _det(ab, ac)
        x = (ab[:, 2] * ac[:, 1] - ac[:, 2] * ab[:, 1]) / twice
        y = (ac[:, 2] * ab[:, 0] - ab[:, 2] * ac[:, 0]) / twice
    return np.where(np.abs(np.stack([x, y], axis=1)) < STEEP, np.stack([x, y], axis=1), np.nan)


def _together(one: Overlay, other: Overlay) -> Overlay:
    """All pairs of both, in the order in which ``overlay`` has them."""
    fields = ("upper", "lower", "plan", "high", "low", "valid")
    both = [np.concatenate([getattr(o, name) for o in (one, other)]) for name in fields]
    return Overlay(one.axis, *both).only(np.lexsort((both[1], both[0])))


def _near(a: FloatArray, b: FloatArray) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Pairs of triangles that may meet in the plane of view."""
    return _meeting(a, b, *_bounds_meet(a, b))


def _meeting(
    a: FloatArray, b: FloatArray, i: NDArray[np.int64], j: NDArray[np.int64]
) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Of pairs those of which neither lies wholly beyond an edge of the other."""
    sides_a, sides_b = _sides(a), _sides(b)
    meet = ~_beside(sides_a, i, b, j)
    i, j = i[meet], j[meet]
    meet = ~_beside(sides_b, j, a, i)
    return i[meet], j[meet]


def _bounds_meet(a: FloatArray, b: FloatArray) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Pairs of triangles whose bounds overlap in the plane of view."""
    firsts, seconds = [np.zeros(0, np.int64)], [np.zeros(0, np.int64)]
    low_b, high_b = _least(b)[:, :2].T - INSIDE, _most(b)[:, :2].T + INSIDE
    low_a, high_a = _least(a)[:, :2], _most(a)[:, :2]
    step = max(1, 4_000_000 // max(len(b), 1))
    for start in range(0, len(a), step):
        low, high = low_a[start : start + step, :, None], high_a[start : start + step, :, None]
        hit = (low[:, 0] <= high_b[0]) & (high[:, 0] >= low_b[0])
        hit &= (low[:, 1] <= high_b[1]) & (high[:, 1] >= low_b[1])
        i, j = np.nonzero(hit)
        firsts.append(i + start)
        seconds.append(j)
    return np.concatenate(firsts), np.concatenate(seconds)


def _least(t: FloatArray) -> FloatArray:
    """(n, …) least coordinates of the three corners; quicker than a reduction over so few."""
    return np.asarray(np.minimum(np.minimum(t[:, 0], t[:, 1]), t[:, 2]))


def _most(t: FloatArray) -> FloatArray:
    return np.asarray(np.maximum(np.maximum(t[:, 0], t[:, 1]), t[:, 2]))


def _sides(t: FloatArray) -> tuple[FloatArray, FloatArray, FloatArray]:
    """(n, 3) x and y of unit vectors into triangles, square to each edge in the plane of view.

    And (n, 3) how far [mm] along them the edges lie; an edge seen on end has none.
    """
    start = t[:, :, :2]
    along = np.roll(start, -1, axis=1) - start
    length = np.hypot(*_xy(along)) * np.sign(_det(along[:, 0], along[:, 1]))[:, None]
    scale = np.divide(1.0, length, out=np.zeros_like(length), where=length != 0)
    x, y = -along[..., 1] * scale, along[..., 0] * scale
    return x, y, x * start[..., 0] + y * start[..., 1]


def _beside(
    sides: tuple[FloatArray, FloatArray, FloatArray], i: NDArray[np.int64],
    other: FloatArray, j: NDArray[np.int64],
) -> NDArray[np.bool_]:  # fmt: skip
    """(p,) whether triangles ``j`` of the other lie wholly beyond an edge of triangles ``i``."""
    (x, y, at), place = (side[i] for side in sides), other[j]
    into = [x * place[:, k, :1] + y * place[:, k, 1:2] for k in range(3)]
    farthest = np.maximum(np.maximum(into[0], into[1]), into[2])
    beyond = farthest < at - INSIDE
    return np.asarray(beyond[:, 0] | beyond[:, 1] | beyond[:, 2])


def _corners(
    a: FloatArray, b: FloatArray
) -> tuple[FloatArray, FloatArray, FloatArray, NDArray[np.bool_]]:
    """Candidates of every pair: corners of a in b, of b in a, and nine crossings of edges."""
    in_b, on_b = seen(a[:, :, :2], b)
    in_a, on_a = seen(b[:, :, :2], a)
    cross, high, low, meets = _crossings(a, b)
    plan = np.concatenate([a[:, :, :2], b[:, :, :2], cross], axis=1)
    return (
        plan,
        np.concatenate([a[:, :, 2], on_a, high], axis=1),
        np.concatenate([on_b, b[:, :, 2], low], axis=1),
        np.concatenate([in_b, in_a, meets], axis=1),
    )


def seen(p: FloatArray, t: FloatArray) -> tuple[NDArray[np.bool_], FloatArray]:
    """Whether points (n, k, 2) lie in the view of triangles (n, 3, 3); the height there, or 0."""
    a, b, c = (t[:, None, k] for k in range(3))
    ab, ac, ap = b - a, c - a, p - a[..., :2]
    twice = _det(ab, ac)
    with np.errstate(divide="ignore", invalid="ignore"):
        v, w = _det(ap, ac) / twice, _det(ab, ap) / twice
        height = a[..., 2] + v * ab[..., 2] + w * ac[..., 2]
        # Distances [mm] inside the three edges: each share times the triangle's height over it.
        size = np.abs(twice)
        rooms = (
            (1 - v - w) * size / np.hypot(*_xy(c - b)),
            v * size / np.hypot(*_xy(ac)),
            w * size / np.hypot(*_xy(ab)),
        )
        inside = (rooms[0] >= -INSIDE) & (rooms[1] >= -INSIDE) & (rooms[2] >= -INSIDE)
    inside &= np.isfinite(height)
    return inside, np.where(inside, height, 0.0)


def _crossings(
    a: FloatArray, b: FloatArray
) -> tuple[FloatArray, FloatArray, FloatArray, NDArray[np.bool_]]:
    along_a, along_b = np.roll(a, -1, axis=1) - a, np.roll(b, -1, axis=1) - b
    (ax, ay, az), (alx, aly, alz) = ([t[:, :, None, k] for k in range(3)] for t in (a, along_a))
    (bx, by, bz), (blx, bly, blz) = ([t[:, None, :, k] for k in range(3)] for t in (b, along_b))
    dx, dy = bx - ax, by - ay
    with np.errstate(divide="ignore", invalid="ignore"):
        across = alx * bly - aly * blx
        s, t = (dx * bly - dy * blx) / across, (dx * aly - dy * alx) / across
        meets = (s >= 0) & (s <= 1) & (t >= 0) & (t <= 1)
        x, y = ax + s * alx, ay + s * aly
        # Of nearly parallel edges rounding makes two different points: their corners suffice.
        meets &= np.abs(x - (bx + t * blx)) <= INSIDE
        meets &= np.abs(y - (by + t * bly)) <= INSIDE
        places = (np.where(meets, p, 0.0) for p in (x, y, az + s * alz, bz + t * blz))
    x, y, high, low = (p.reshape(len(a), 9) for p in places)
    return np.stack([x, y], axis=2), high, low, meets.reshape(len(a), 9)


def _det(a: FloatArray, b: FloatArray) -> FloatArray:
    return a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0]


def _xy(a: FloatArray) -> tuple[FloatArray, FloatArray]:
    return a[..., 0], a[..., 1]

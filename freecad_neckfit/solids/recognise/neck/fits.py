"""Planes, lines, circles and fretboard tops laid through points, with what they leave over."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from ....job.arrays import FloatArray

STEPS = 30
ALIKE = 1.25
"""A shape that strays so many times as far as another is as good."""
FLAT_SAG = 1e-5
"""A top bent less than this [1/mm] is flat: 4 µm of sag on the widest board."""


@dataclass(frozen=True)
class Line2:
    """y = at + slope·x, and the largest distance [mm] of a point from it."""

    at: float
    slope: float
    residual: float

    def y(self, x: float) -> float:
        """Y [mm] at x."""
        return self.at + self.slope * x


@dataclass(frozen=True)
class Circle2:
    """A circle in a plane [mm], and the largest distance of a point from it."""

    centre: FloatArray
    radius: float
    residual: float


@dataclass(frozen=True)
class Plane:
    """A plane: unit normal, a point on it, and the largest distance [mm] of a point from it."""

    normal: FloatArray
    point: FloatArray
    residual: float


def plane_through(points: FloatArray, *, toward: FloatArray) -> Plane:
    """The plane that fits points (n, 3) best, its normal on the side of ``toward``."""
    middle = points.mean(axis=0)
    normal = np.linalg.svd(points - middle, full_matrices=False)[2][2]
    normal = normal if normal @ toward > 0 else -normal
    return Plane(normal, middle, float(np.abs((points - middle) @ normal).max()))


def line_through(x: FloatArray, y: FloatArray) -> Line2:
    """The line y(x) that fits best; of one x only, a level one."""
    if np.ptp(x) < 1e-9:
        return Line2(float(y.mean()), 0.0, float(np.ptp(y)))
    slope, at = np.polyfit(x, y, 1)
    off = np.abs(y - at - slope * x).max() / np.hypot(1, slope)
    return Line2(float(at), float(slope), float(off))


def circle_through(points: FloatArray) -> Circle2:
    """The circle that fits points (n, 2) best: algebraic start, then by distance."""
    middle = points.mean(axis=0)
    p = points - middle
    rows = np.column_stack([2 * p, np.ones(len(p))])
    fit = np.linalg.lstsq(rows, (p**2).sum(axis=1), rcond=None)[0]
    radius = float(np.sqrt(max(fit[2] + fit[:2] @ fit[:2], 1e-12)))

    def off(a: FloatArray) -> FloatArray:
        return np.asarray(np.hypot(p[:, 0] - a[0], p[:, 1] - a[1]) - a[2])

    best = least_squares(off, np.array([fit[0], fit[1], radius]))
    return Circle2(best[:2] + middle, float(abs(best[2])), float(np.abs(off(best)).max()))


def least_squares(off: Callable[[FloatArray], FloatArray], start: FloatArray) -> FloatArray:
    """Gauss and Newton's way, damped where a full step overshoots; slopes by differences."""
    at, here = start.astype(float), off(start.astype(float))
    damping = 1e-9
    for _ in range(STEPS):
        slopes = _slopes(off, at, here)
        size = np.maximum(np.linalg.norm(slopes, axis=0), 1e-30)
        for _ in range(12):
            rows = np.vstack([slopes / size, np.sqrt(damping) * np.eye(len(at))])
            change = np.linalg.lstsq(rows, -np.append(here, np.zeros(len(at))), rcond=None)[0]
            there = off(at + change / size)
            if np.isfinite(there).all() and there @ there <= here @ here:
                break
            damping *= 10
        else:
            return at
        at, here, damping = at + change / size, there, max(damping / 30, 1e-14)
        if np.abs(change).max() < 1e-11:
            break
    return at


def _slopes(
    off: Callable[[FloatArray], FloatArray], at: FloatArray, here: FloatArray
) -> FloatArray:
    slopes = np.empty((len(here), len(at)))
    for k in range(len(at)):
        step = 1e-6 * max(abs(at[k]), 1e-3)
        moved = at.copy()
        moved[k] += step
        slopes[:, k] = (off(moved) - here) / step
    return slopes


@dataclass(frozen=True)
class Top:
    """A fretboard's top over the neck frame: z = crest(x) - sag of the local radius.

    ``height``: z [mm] of the crest at x = 0; ``slope``: its rise per mm; ``middle``, ``lean``: y of
    the crest at x = 0 and its change per mm; ``radius``: at x = 0 [mm], infinite where flat;
    ``grow``: change of the radius per mm. ``shape``: "plane", "cylinder", "cone" (round, its axis
    leaning) or "ruled" (a circle in every section square to the centreline). ``residual``: the
    largest distance [mm] of a point.
    """

    shape: str
    height: float
    slope: float
    middle: float
    lean: float
    radius: float
    grow: float
    residual: float

    def z(self, x: FloatArray, y: FloatArray) -> FloatArray:
        """Height [mm] at points of the plan."""
        crest = self.height + self.slope * np.asarray(x)
        if not np.isfinite(self.radius):
            return np.asarray(crest + 0 * np.asarray(y))
        across = np.asarray(y) - self.middle - self.lean * np.asarray(x)
        radius = self.radius + self.grow * np.asarray(x)
        return np.asarray(crest - radius + np.sqrt(np.maximum(radius**2 - across**2, 0.0)))

    def radius_at(self, x: float) -> float:
        """Radius [mm] of the crest at x."""
        return self.radius + self.grow * x


def top_through(points: FloatArray, *, within: float) -> Top:
    """The simplest top that lies within ``within`` [mm] of all points (n, 3).

    Else the simplest that strays no more than ``ALIKE`` times as far as the closest: the chords of
    a coarse mesh make no cone of a cylinder.
    """
    tops = [_plane_top(points)]
    if tops[0].residual <= within:
        return tops[0]
    start = _start(points)
    if not np.isfinite(start).all() or abs(start[4]) < 30:
        return tops[0]
    tops.append(_ruled(points, start, grows=False))
    if tops[1].residual <= within:
        return tops[1]
    tops += [_ruled(points, start, grows=True), _cone(points, start)]
    closest = min(top.residual for top in tops)
    return next(top for top in tops if top.residual <= ALIKE * closest)


def _plane_top(p: FloatArray) -> Top:
    rows = np.column_stack([np.ones(len(p)), p[:, 0], p[:, 1]])
    fit = np.linalg.lstsq(rows, p[:, 2], rcond=None)[0]
    off = float(np.abs(rows @ fit - p[:, 2]).max())
    # A flat top that leans sideways is none of the shapes here; its lean shows as residual.
    level = float(np.abs(fit[0] + fit[1] * p[:, 0] - p[:, 2]).max())
    return Top("plane", float(fit[0]), float(fit[1]), 0.0, 0.0, np.inf, 0.0, max(off, level))


def _start(p: FloatArray) -> FloatArray:
    """Height, slope, middle, lean, radius, growth from z ≈ a + b x + c y + (q + g x) y²."""
    x, y, z = p.T
    rows = np.column_stack([np.ones(len(p)), x, y, y**2, x * y**2])
    a, b, c, q, g = np.linalg.lstsq(rows, z, rcond=None)[0]
    ends = [q + g * x.min(), q + g * x.max()]
    if max(ends) > -FLAT_SAG:
        return np.full(6, np.nan)
    near, far = (-0.5 / e for e in ends)
    grow = (far - near) / max(np.ptp(x), 1e-9)
    return np.array([a, b, c / (-2 * q) if q else 0.0, 0.0, near - grow * x.min(), grow])


def _ruled(p: FloatArray, start: FloatArray, *, grows: bool) -> Top:
    x, y, z = p.T

    def off(a: FloatArray) -> FloatArray:
        radius = a[4] + (a[5] * x if grows else 0.0)
        across = y - a[2] - a[3] * x
        return np.asarray(
            a[0] + a[1] * x - radius + np.sqrt(np.maximum(radius**2 - across**2, 0.0)) - z
        )

    first = start if grows else np.append(start[:5], 0.0)[: 6 if grows else 5]
    if not grows:
        first = first.copy()
        first[4] = np.median(start[4] + start[5] * x)
    best = least_squares(off, first)
    grow = float(best[5]) if grows else 0.0
    height, slope, middle, lean, radius = (float(v) for v in best[:5])
    shape, grow = ("ruled", float(best[5])) if grows else ("cylinder", 0.0)
    return Top(shape, height, slope, middle, lean, radius, grow, float(np.abs(off(best)).max()))


def _cone(p: FloatArray, start: FloatArray) -> Top:
    """A round cone whose crest is straight; its radius at the crest is measured square to it."""

    def off(a: FloatArray) -> FloatArray:
        height, slope, middle, lean, radius, grow = a
        along = np.array([1.0, lean, slope])
        along /= np.linalg.norm(along)
        up = np.array([0.0, 0.0, 1.0]) - along[2] * along
        up /= np.linalg.norm(up)
        from_apex = p - np.array([0.0, middle, height]) + radius / grow * along
        axis = along - grow * up
        axis /= np.linalg.norm(axis)
        far = from_apex @ axis
        square = np.linalg.norm(from_apex - far[:, None] * axis, axis=1)
        steep = abs(grow)
        return np.asarray((square - np.abs(far) * steep) / np.hypot(1, steep))

    first = start.copy()
    if abs(first[5]) < 1e-6:
        first[5] = 1e-6
    best = least_squares(off, first)
    height, slope, middle, lean, radius, grow = (float(v) for v in best)
    return Top("cone", height, slope, middle, lean, radius, grow, float(np.abs(off(best)).max()))

"""What a face is in truth: a plane or a cylinder, whatever surface the kernel keeps for it.

Other programs write planes and cylinders as free-form surfaces, and a loft between parallel
edges is one too. Such a face is recognised by points on it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from ...job.arrays import FloatArray

WITHIN = 2e-3
"""A free-form face whose points lie within this [mm] of a plane or cylinder is taken for it."""
STEPS = 7
"""Points looked at along each parameter of a free-form face."""
WIDEST = 5000.0
"""A cylinder of a larger radius [mm] is a bent plane."""


@dataclass(frozen=True)
class Flat:
    """A plane: unit ``normal`` out of the material, a ``point`` on it, how far ``off`` it is."""

    normal: FloatArray
    point: FloatArray
    off: float = 0.0

    @property
    def level(self) -> float:
        """Distance [mm] of the plane from the origin, along its normal."""
        return float(self.normal @ self.point)


@dataclass(frozen=True)
class Round:
    """A cylinder: unit ``axis``, a point at its ``centre``, ``radius`` [mm]; hollow or convex."""

    axis: FloatArray
    centre: FloatArray
    radius: float
    hollow: bool
    off: float = 0.0


@dataclass(frozen=True)
class Ring:
    """A torus, of which only the radius [mm] of its section matters here."""

    radius: float


class Free:
    """Any other surface."""


Kind = Flat | Round | Ring | Free


def kind_of(face: Any) -> Kind:
    """Recognise one face."""
    surface = face.Surface
    name = type(surface).__name__
    if name == "Plane":
        return Flat(_array(face.normalAt(*_middle(face))), _array(surface.Position))
    if name == "Cylinder":
        axis, centre = _array(surface.Axis), _array(surface.Center)
        return Round(axis, centre, float(surface.Radius), _is_hollow(face, axis, centre))
    if name == "Toroid":
        return Ring(float(surface.MinorRadius))
    if name in ("Cone", "Sphere"):
        return Free()
    return _by_points(face)


def _by_points(face: Any) -> Kind:
    points, normals = samples(face)
    flat = _as_plane(points, normals)
    if flat is not None:
        return flat
    return _as_cylinder(face, points, normals) or Free()


def samples(face: Any) -> tuple[FloatArray, FloatArray]:
    """Points (n, 3) [mm] of a face's surface within its parameter range, and unit normals."""
    u0, u1, v0, v1 = face.ParameterRange
    share = np.linspace(0.01, 0.99, STEPS)  # at a border the surface may shrink to a point
    spots = [(u0 + (u1 - u0) * a, v0 + (v1 - v0) * b) for a in share for b in share]
    surface = face.Surface
    places = [(surface.value(u, v), face.normalAt(u, v)) for u, v in spots]
    return (
        np.array([(point.x, point.y, point.z) for point, _ in places]),
        np.array([(normal.x, normal.y, normal.z) for _, normal in places]),
    )


def _as_plane(points: FloatArray, normals: FloatArray) -> Flat | None:
    middle = points.mean(axis=0)
    normal = np.linalg.svd(points - middle)[2][2]
    if normal @ normals.mean(axis=0) < 0:
        normal = -normal
    off = float(np.abs((points - middle) @ normal).max())
    return Flat(normal, middle, off) if off <= WITHIN else None


def _as_cylinder(face: Any, points: FloatArray, normals: FloatArray) -> Round | None:
    """Square to all normals lies the axis; square to the axis the points lie on a circle."""
    _, size, rows = np.linalg.svd(normals)
    if size[2] > 1e-3 * size[0]:
        return None
    axis, across = rows[2], rows[:2]
    plan = points @ across.T
    fit, *_ = np.linalg.lstsq(
        np.column_stack([2 * plan, np.ones(len(plan))]), (plan**2).sum(axis=1), rcond=None
    )
    radius = float(np.sqrt(max(fit[2] + fit[:2] @ fit[:2], 0.0)))
    off = float(np.abs(np.linalg.norm(plan - fit[:2], axis=1) - radius).max())
    if off > WITHIN or not 0 < radius < WIDEST:
        return None
    centre = fit[:2] @ across + (points.mean(axis=0) @ axis) * axis
    return Round(axis, centre, radius, _is_hollow(face, axis, centre), off)


def _is_hollow(face: Any, axis: FloatArray, centre: FloatArray) -> bool:
    """Whether the material lies outside: its normals point to the axis."""
    u, v = _middle(face)
    out = _array(face.Surface.value(u, v)) - centre
    out = out - (out @ axis) * axis
    return bool(out @ _array(face.normalAt(u, v)) < 0)


def _middle(face: Any) -> tuple[float, float]:
    u0, u1, v0, v1 = face.ParameterRange
    return (u0 + u1) / 2, (v0 + v1) / 2


def _array(vector: Any) -> FloatArray:
    return np.array([vector.x, vector.y, vector.z])

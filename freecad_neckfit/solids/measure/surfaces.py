"""Heights of a face's surface, also beyond the face's edges."""

from __future__ import annotations

from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from .failures import NotFound

CLOSE = 1e-9
"""The plan point is met to within this [mm]."""
STEPS = 30


def height_on(face: Any, plan: FloatArray) -> FloatArray:
    """(k,) Z [mm] of the face's surface over plan points (k, 2); the surface must look up.

    Beyond the edges the surface is carried on as its kind allows. Raises NotFound where Newton's
    method does not settle.
    """
    surface = face.Surface
    if type(surface).__name__ == "Plane":
        n, p = surface.Axis, surface.Position
        off = np.asarray(plan, dtype=float) - (p.x, p.y)
        return np.asarray(p.z - (off @ np.array([n.x, n.y])) / n.z)
    return np.array([_height(face, surface, float(x), float(y)) for x, y in plan])


def _height(face: Any, surface: Any, x: float, y: float) -> float:
    u0, u1, v0, v1 = face.ParameterRange
    u, v = (u0 + u1) / 2, (v0 + v1) / 2
    du, dv = 1e-5 * (u1 - u0), 1e-5 * (v1 - v0)
    for _ in range(STEPS):
        p = surface.value(u, v)
        ex, ey = x - p.x, y - p.y
        if abs(ex) < CLOSE and abs(ey) < CLOSE:
            return float(p.z)
        a, b = surface.value(u + du, v), surface.value(u, v + dv)
        ax, ay, bx, by = (a.x - p.x) / du, (a.y - p.y) / du, (b.x - p.x) / dv, (b.y - p.y) / dv
        det = ax * by - bx * ay
        if det == 0:
            break
        u += (ex * by - bx * ey) / det
        v += (ax * ey - ex * ay) / det
    raise NotFound(f"no height of the surface was found at X {x:.3f}, Y {y:.3f} mm")

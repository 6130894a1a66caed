"""The shape of a body's top, recognised as one of those that the closed forms know."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ...job.parameters import ALL
from ..measure.columns import highest
from ..measure.facets import facets_of
from ..measure.failures import NotFound
from ..measure.surfaces import height_on
from .kinds import Flat
from .pocket_faces import Body
from .reading import NotRead, Shown

LEVEL = 1e-6
"""A plane top whose normal leans less than this [radians] out of Z is flat."""
COARSE = 0.1
"""Accuracy [mm] of the triangles that tell where a face lies; its surface tells how high."""
SHEET = 0.5
"""A height on the surface this far [mm] from its triangles belongs to another sheet of it."""
MEETS = 1e-3
"""A top within this [mm] of a sphere or a bowl is taken for it."""


def top_faces(body: Body, *, picked: Sequence[int] = ()) -> list[int]:
    """Indices of the faces that make up the top: the picked ones, or all that nothing covers.

    Raises NotRead where no face looks up at all.
    """
    if picked:
        return list(picked)
    up = [i for i, n in enumerate(body.normals) if n[:, 2].min() > 0.5]
    if not up:
        raise NotRead("The body has no face that looks up; pick its top face.")
    largest = max(up, key=lambda i: float(body.faces[i].Area))
    if isinstance(body.kind(largest), Flat):
        return [largest]
    # A carve may be pieced together of several faces; floors of cavities lie below all of them.
    floor = body.box[largest, 2]
    return [largest, *(i for i in up if i != largest and body.box[i, 5] >= floor
                       and not isinstance(body.kind(i), Flat))]  # fmt: skip


def read_top(body: Body, *, faces: Sequence[int], plan: FloatArray) -> Shown:
    """Which top it is: flat, domed or carved, as seen at plan points (n, 2) [mm].

    ``body``: in the body frame. The residual says how far the top strays from that shape at most;
    a note says so where it is more than the closed forms can bear. Raises NotRead where the top
    is not over the points.
    """
    first = body.kind(faces[0])
    if len(faces) == 1 and isinstance(first, Flat):
        lean = math.hypot(float(first.normal[0]), float(first.normal[1]))
        if lean < LEVEL:
            return Shown({"body.top": "flat"}, {"body.top": abs(first.level)})
    dome = _as_dome(body, faces)
    if dome is not None:
        return dome
    return _as_bowl(plan, heights(body, faces, plan))


def heights(body: Body, faces: Sequence[int], plan: FloatArray) -> FloatArray:
    """(n,) Z [mm] of the top over plan points (n, 2); NaN where none of the faces lies there."""
    best = np.full(len(plan), np.nan)
    for index in faces:
        face = body.faces[index]
        seen = highest(facets_of(face, index, fine=COARSE), plan)
        for k in np.flatnonzero(np.isfinite(seen) & ~(best > seen)):
            best[k] = _exactly(face, plan[k], float(seen[k]))
    return best


def _exactly(face: Any, at: FloatArray, near: float) -> float:
    """Height on the surface itself; the triangles' where Newton's method finds another sheet."""
    try:
        z = float(height_on(face, at[None])[0])
    except NotFound:
        return near
    return z if abs(z - near) < SHEET else near


def _as_dome(body: Body, faces: Sequence[int]) -> Shown | None:
    surface = body.faces[faces[0]].Surface
    if len(faces) != 1 or type(surface).__name__ != "Sphere":
        return None
    radius, centre = float(surface.Radius), surface.Center
    values = {"body.top": "domed", "body.dome_radius": radius, "body.dome_centre": centre.x}
    off = abs(centre.z + math.sqrt(max(radius**2 - centre.x**2 - centre.y**2, 0.0)))
    off = max(off, abs(float(centre.y)) * 100.0 / radius)  # over 100 mm across the centreline
    return Shown(values, {"body.top": off}) if off < MEETS and _permitted(values) else None


def _as_bowl(plan: FloatArray, z: FloatArray) -> Shown:
    """Least squares of X·tan(slope) - X²/2R_along - Y²/2R_across."""
    there = np.isfinite(z)
    if there.sum() < 12:
        raise NotRead("The body's top does not lie over the pocket and behind it; pick it.")
    x, y = plan[there].T
    fit, *_ = np.linalg.lstsq(np.column_stack([x, -(x**2) / 2, -(y**2) / 2]), z[there], rcond=None)
    off = float(np.abs(np.column_stack([x, -(x**2) / 2, -(y**2) / 2]) @ fit - z[there]).max())
    flattest = 1.0 / ALL["body.carve_radius_along"].high  # type: ignore[operator]
    values = {
        "body.top": "carved",
        "body.carve_slope": math.degrees(math.atan(float(fit[0]))),
        "body.carve_radius_along": 1.0 / max(float(fit[1]), flattest),
        "body.carve_radius_across": 1.0 / max(float(fit[2]), flattest),
    }
    if off > MEETS or not _permitted(values):
        raise Unlike(off)
    return Shown(values, {"body.top": off})


class Unlike(NotRead):
    """A top that is neither flat nor dome nor bowl; ``off`` [mm] the bowl nearest to it misses."""

    def __init__(self, off: float) -> None:
        super().__init__(f"The top is neither flat nor dome nor bowl: it strays by {off:.2f} mm.")
        self.off = off


def _permitted(values: dict[str, Any]) -> bool:
    def fits(key: str, value: Any) -> bool:
        p = ALL[key]
        return p.low is None or p.high is None or p.low <= value <= p.high

    return all(fits(key, value) for key, value in values.items() if not isinstance(value, str))

"""The shape of a body's top, recognised as one of those that the closed forms know."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ...job.parameters import ALL
from ...job.sampled_top import sampled_height
from ..measure.columns import highest
from ..measure.facets import facets_of
from ..measure.failures import NotFound
from ..measure.surfaces import height_on
from .kinds import Flat
from .pocket_faces import Body
from .reading import NotRead, Shown

Bounds = tuple[float, float]
FLATTEST = 1.0 / 50_000.0
"""Bend [1/mm] of the flattest bowl that can be stated."""
BOWL_STEP = 15.0
STEPS = (10.0, 5.0)
"""Grids [mm] that a top is sampled on, the coarser first."""
ENOUGH = 2e-3
"""A grid that misses the top by less than this [mm] is fine enough."""
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


def read_top(body: Body, *, faces: Sequence[int], x: Bounds, y: Bounds) -> Shown:
    """Which top it is: flat, domed, carved, or none of these and sampled, over a rectangle [mm].

    ``body``: in the body frame. The residual says how far the top strays from what is stated at
    most. Raises NotRead where the top is not over the rectangle.
    """
    first = body.kind(faces[0])
    if len(faces) == 1 and isinstance(first, Flat):
        lean = math.hypot(float(first.normal[0]), float(first.normal[1]))
        if lean < LEVEL:
            return Shown({"body.top": "flat"}, {"body.top": abs(first.level)})
    dome = _as_dome(body, faces)
    if dome is not None:
        return dome
    plan = _grid(x, y, BOWL_STEP).reshape(-1, 2)
    bowl, off = _bowl(plan, heights(body, faces, plan))
    if off < MEETS and _permitted(bowl):
        return Shown({"body.top": "carved"} | bowl, {"body.top": off})
    return _as_samples(body, faces, (x, y), _within(bowl))


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


def _bowl(plan: FloatArray, z: FloatArray) -> tuple[dict[str, float], float]:
    """Least squares of X·tan(slope) - X²/2R_along - Y²/2R_across, and how far it misses [mm]."""
    there = np.isfinite(z)
    if there.sum() < 12:
        raise NotRead("The body's top does not lie over the pocket and behind it; pick it.")
    x, y = plan[there].T
    terms = np.column_stack([x, -(x**2) / 2, -(y**2) / 2])
    fit, *_ = np.linalg.lstsq(terms, z[there], rcond=None)
    off = float(np.abs(terms @ fit - z[there]).max())
    return {
        "body.carve_slope": math.degrees(math.atan(float(fit[0]))),
        "body.carve_radius_along": 1.0 / max(float(fit[1]), FLATTEST),
        "body.carve_radius_across": 1.0 / max(float(fit[2]), FLATTEST),
    }, off


def _as_samples(
    body: Body, faces: Sequence[int], over: tuple[Bounds, Bounds], bowl: dict[str, float]
) -> Shown:
    """Heights on a grid, and the largest error at the middles between them.

    A finer grid is taken where the
    coarser one misses the top by more than the closed forms can bear.
    """
    for step in STEPS:
        plan = _grid(*over, step)
        z = heights(body, faces, plan.reshape(-1, 2))
        values: dict[str, Any] = bowl | {
            "body.top": "sampled",
            "body.top_heights": _filled(plan.reshape(-1, 2), z),
            "body.top_rows": plan.shape[1],
            "body.top_step": step,
            "body.top_from_x": float(plan[0, 0, 0]),
            "body.top_from_y": float(plan[0, 0, 1]),
        }
        between = (plan[:-1, :-1] + step / 2).reshape(-1, 2)
        real = heights(body, faces, between)
        off = np.abs(sampled_height(values, x=between[:, 0], y=between[:, 1]) - real)
        error = float(np.nanmax(off, initial=0.0))
        if error < ENOUGH:
            break
    values["body.top_error"] = error
    return Shown(values, {"body.top": error})


def _grid(x: Bounds, y: Bounds, step: float) -> FloatArray:
    """(n, m, 2) plan points a step apart from the lower bounds on."""
    along, across = (a + step * np.arange(round((b - a) / step) + 1) for a, b in (x, y))
    return np.stack(np.meshgrid(along, across, indexing="ij"), axis=-1)


def _filled(plan: FloatArray, z: FloatArray) -> FloatArray:
    """Where there is no wood: a smooth surface through what there is, met at the nearest sample."""
    there = np.isfinite(z)
    terms = _powers(plan)
    smooth = terms @ np.linalg.lstsq(terms[there], z[there], rcond=None)[0]
    filled, known = z.copy(), np.flatnonzero(there)
    for k in np.flatnonzero(~there):
        nearest = known[np.hypot(*(plan[known] - plan[k]).T).argmin()]
        filled[k] = smooth[k] + z[nearest] - smooth[nearest]
    return filled


def _powers(plan: FloatArray) -> FloatArray:
    """(n, 15) products of powers up to the fourth degree, of coordinates near 1."""
    x, y = plan.T / 100.0
    return np.column_stack([x**a * y**b for a in range(5) for b in range(5 - a)])


def _within(values: dict[str, float]) -> dict[str, float]:
    """Values brought into their permitted ranges."""
    return {
        key: float(np.clip(value, ALL[key].low, ALL[key].high)) for key, value in values.items()
    }


def _permitted(values: dict[str, Any]) -> bool:
    def fits(key: str, value: Any) -> bool:
        p = ALL[key]
        return p.low is None or p.high is None or p.low <= value <= p.high

    return all(fits(key, value) for key, value in values.items() if not isinstance(value, str))

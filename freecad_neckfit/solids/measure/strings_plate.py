"""Strings fretted at the last fret over the cover plate and the pickups' rings."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from ...job.arrays import FloatArray
from .context import Context
from .cutout import ROLES, over_opening
from .facets import Facets
from .measured import Measured
from .mount import pickup_mount
from .strings import at_x, clear_end, last_fretted, of_two
from .surfaces import height_on

ON_EDGE = 1e-6
"""A string this near [mm] to an edge of the plate in the plan runs along it."""
ALONG = 60
"""Places along a string at which a bent plate is asked for."""


def plate_string(context: Context) -> Measured:
    """Least height [mm] of a string fretted at the last fret over the plate and pickup rings."""
    rooms = [*_over_plate(context), *_over_rings(context)]
    if not rooms:
        return Measured.absent("neither plate nor ring lies under the strings")
    return min(rooms, key=lambda m: m.value)


def _over_plate(context: Context) -> list[Measured]:
    """Over the plate from the fretboard's end on; its openings for pickups count as unbroken."""
    if not context.has("plate"):
        return []
    plate = _plate_along(context)
    end = float(context.near("fretboard", context.neck_bounds, tops=False).points[:, :, 0].max())
    open_plate = plate.clipped(axis=0, at=end, above=True)
    found = []
    for start, stop in zip(*last_fretted(context), strict=True):
        under = open_plate.clipped(axis=0, at=float(stop[0]), above=False)
        crossing = _crossings(under.points, start, stop)
        crossing = np.concatenate([crossing, _on_openings(context, end, start, stop)])
        if len(crossing):
            crossing = np.concatenate([crossing, _over_bent_plate(context, crossing)])
            on_string = at_x(start[None], stop[None], 0.0)[0]
            climb = (stop - start) / (stop[0] - start[0])
            z = on_string[2] + climb[2] * crossing[:, 0]
            room = z - crossing[:, 2]
            k = int(room.argmin())
            at = float(crossing[k, 0]), float(crossing[k, 1]), float(z[k])
            found.append(Measured(float(room[k]), at))
    return found


def _on_openings(context: Context, end: float, start: FloatArray, stop: FloatArray) -> FloatArray:
    """The plate's top under a string's two ends over it, where a pickup's opening is there.

    A string's part over the plate begins before the fretboard and ends at its saddle.
    """
    if not context.values["plate.under_overhang"]:
        end = clear_end(context)
    ends = np.concatenate([at_x(start[None], stop[None], x) for x in (end, float(stop[0]))])
    points = ends[over_opening(context, ends[:, 0]) & _over(context.boxes("plate"), ends[:, :2])]
    points[:, 2] = height_on(context.faces("plate")[context.plate_face], points[:, :2])
    return np.asarray(points)


def _over(box: FloatArray, plan: FloatArray) -> NDArray[np.bool_]:
    low, high = box[:, :2].min(axis=0) - ON_EDGE, box[:, 3:5].max(axis=0) + ON_EDGE
    return np.asarray(((plan >= low) & (plan <= high)).all(axis=1))


def _over_bent_plate(context: Context, crossing: FloatArray) -> FloatArray:
    """The top of a plate that is bent along a string, carried on over its openings."""
    face = context.faces("plate")[context.plate_face]
    if type(face.Surface).__name__ == "Plane":
        return np.zeros((0, 3))
    first, last = crossing[crossing[:, 0].argmin()], crossing[crossing[:, 0].argmax()]
    share = np.linspace(0.0, 1.0, ALONG)[:, None]
    points = first * (1 - share) + last * share
    points[:, 2] = height_on(face, points[:, :2])
    return np.asarray(points)


def _plate_along(context: Context) -> Facets:
    """Upward triangles of the plate under the strings."""
    box = context.boxes("plate")
    half = float(context.values["strings.spread_bridge"]) / 2 + 1
    bounds = (float(box[:, 0].min()), float(box[:, 3].max()), -half, half)
    return context.near("plate", bounds, sign=1)


def _crossings(p: FloatArray, start: FloatArray, stop: FloatArray) -> FloatArray:
    """(m, 3) points of triangles' edges under a string, between its ends."""
    if not len(p):
        return np.zeros((0, 3))
    slope = (stop[1] - start[1]) / (stop[0] - start[0])
    side = p[:, :, 1] - start[1] - slope * (p[:, :, 0] - start[0])
    side[np.abs(side) < ON_EDGE] = 0.0  # a string along the plate's edge lies over it
    a, b = p.reshape(-1, 3), np.roll(p, -1, axis=1).reshape(-1, 3)
    s, t = side.reshape(-1), np.roll(side, -1, axis=1).reshape(-1)
    cut = ((s >= 0) != (t >= 0)) | ((s <= 0) != (t <= 0))
    share = (s[cut] / (s[cut] - t[cut]))[:, None]
    found = a[cut] * (1 - share) + b[cut] * share
    between = (found[:, 0] >= start[0] - ON_EDGE) & (found[:, 0] <= stop[0] + ON_EDGE)
    return np.asarray(found[between])


def _over_rings(context: Context) -> list[Measured]:
    found, v = [], context.values
    for role in ROLES:
        ring = float(v[f"pickup_{role}.ring"]) if context.has(f"pickup_{role}") else 0.0
        if ring <= 0:
            continue
        box = context.facets(f"pickup_{role}").points[:, :, 0]
        top = pickup_mount(context, role) + ring
        for x in (float(box.min()), float(box.max())):
            points = at_x(*last_fretted(context), x)
            found.append(of_two(points[:, 2] - top, points))
    return found

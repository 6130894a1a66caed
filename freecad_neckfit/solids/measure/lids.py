"""Top and cover plate as if cavities and pickup openings were not there.

A fretboard that reaches over a cavity is held to the same room as beside it: what is routed away
under it may be filled, or its pickup moved, and its rim is near.
"""

from __future__ import annotations

import numpy as np

from ...job.arrays import FloatArray
from .context import Context
from .cutout import AROUND, ROLES, first_ahead
from .facets import Facets, joined
from .measured import Measured
from .surfaces import height_on

STEP = 3.0
"""How far apart [mm] heights over a curved top are looked up: it bends by 0.001 between."""


def over_cavities(context: Context, over: Facets) -> Measured | None:
    """Least room [mm] along Z to the top carried on over cavities, for parts with X >= 0."""
    over = over.clipped(axis=0, at=0.0, above=True)
    box = context.boxes("body")[sorted(context.body_faces.cavity_floors)]
    if not len(over) or not len(box):
        return None
    low, high = (f(f(over.points, axis=0), axis=0) for f in (np.min, np.max))
    if not np.any(np.all((box[:, :2] <= high[:2]) & (box[:, 3:5] >= low[:2]), axis=1)):
        return None
    face = context.faces("body")[context.top_face]
    room, place = _least(over, face)
    return Measured(room - float(context.values["finish.top"]), place, detail={"over": "top"})


def over_openings(context: Context, over: Facets) -> Measured | None:
    """Least room [mm] along Z to the cover plate carried on over its openings for pickups.

    None where the plate is kept clear of the overhang.
    """
    if not context.values["plate.under_overhang"]:
        return None
    return over_plate_openings(context, over)


def over_plate_openings(context: Context, over: Facets) -> Measured | None:
    """As ``over_openings``, for what passes over a plate that is kept clear of the overhang too."""
    if not context.has("plate"):
        return None
    box = context.boxes("plate")
    low, high = box[:, :3].min(axis=0), box[:, 3:].max(axis=0)
    end = first_ahead(context, past=float(context.frame.origin[0]))
    start = max(end[1] if end else 0.0, float(low[0]))
    over = _within(over, (start, high[0]), (low[1], high[1]))
    parts = [_over_pickup(context, over, f"pickup_{r}") for r in ROLES
             if context.has(f"pickup_{r}")]  # fmt: skip
    found = joined(parts)
    if not len(found):
        return None
    return Measured(*_least(found, context.faces("plate")[context.plate_face]),
                    detail={"over": "plate"})  # fmt: skip


def _over_pickup(context: Context, over: Facets, name: str) -> Facets:
    box = context.boxes(name)
    low, high = box[:, :3].min(axis=0), box[:, 3:].max(axis=0)
    return _within(over, (low[0] - AROUND, high[0] + AROUND), (low[1] - AROUND, high[1] + AROUND))


def _within(facets: Facets, x: tuple[float, float], y: tuple[float, float]) -> Facets:
    for axis, (low, high) in ((0, x), (1, y)):
        facets = facets.clipped(axis=axis, at=low, above=True)
        facets = facets.clipped(axis=axis, at=high, above=False)
    return facets


def _least(over: Facets, face: object) -> tuple[float, tuple[float, float, float]]:
    flat = type(face.Surface).__name__ == "Plane"  # type: ignore[attr-defined]
    points = over.points.reshape(-1, 3) if flat else _spread(over.points)
    room = points[:, 2] - height_on(face, points[:, :2])
    k = int(room.argmin())
    return float(room[k]), (float(points[k, 0]), float(points[k, 1]), float(points[k, 2]))


def _spread(triangles: FloatArray) -> FloatArray:
    """Points over triangles (n, 3, 3), at most ``STEP`` apart."""
    found = []
    for a, b, c in triangles:
        n = int(np.ceil(max(np.linalg.norm(b - a), np.linalg.norm(c - a)) / STEP))
        v, w = (k[np.add.outer(range(n + 1), range(n + 1)) <= n] / n
                for k in np.meshgrid(range(n + 1), range(n + 1), indexing="ij"))  # fmt: skip
        found.append(a + v[:, None] * (b - a) + w[:, None] * (c - a))
    return np.concatenate(found)

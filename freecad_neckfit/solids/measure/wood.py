"""Wood left under and beside the pocket: distances between faces by the kernel."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from ...job.errors import KernelFailure
from .context import Context
from .facets import Bounds
from .measured import Measured
from .sides import treble_sign

Point = tuple[float, float, float]
REACH = 10.0
"""So much farther [mm] than two faces' bounds are apart it is looked first."""


def wood_floor(context: Context) -> Measured:
    """Least wood [mm] between the pocket's floor and the back, contour and seats included."""
    found = context.body_faces
    return _least(context, found.floor, found.bottoms) or Measured.unknown(
        "the body has no back under the pocket"
    )


def wall_treble(context: Context) -> Measured:
    """Least wood [mm] between the pocket's treble side and the outline beside it."""
    return _wall(context, treble_sign(context))


def wall_bass(context: Context) -> Measured:
    """Least wood [mm] between the pocket's bass side and the outline beside it."""
    return _wall(context, -treble_sign(context))


def web(context: Context) -> Measured:
    """Least wood [mm] between the pocket's walls and the nearest cavity's."""
    found = context.body_faces
    nearest = _least(context, found.walls, found.cavity_walls)
    return nearest or Measured.absent("the body has no cavity")


def _wall(context: Context, sign: int) -> Measured:
    """Outline faces count that look away from the pocket and run beside its side wall.

    The edges' rounds do not count: toward an edge every wall runs out.
    """
    faces, box = context.body_faces, context.boxes("body")
    own = [f for f in faces.walls if (faces.normals[f][:, 1] * sign).min() < -0.7]
    if not own:
        return Measured.unknown("the pocket has no side wall there")
    low, high = min(box[f, 0] for f in own), max(box[f, 3] for f in own)
    outer = [
        f for f in faces.outer
        if (faces.normals[f][:, 1] * sign).max() > 0.5 and box[f, 0] < high and box[f, 3] > low
        and (box[f, 4] if sign > 0 else -box[f, 1]) > 0
    ]  # fmt: skip
    return _least(context, own, outer) or Measured.absent("no cutaway runs beside the pocket")


def _least(context: Context, one: Iterable[int], other: Iterable[int]) -> Measured | None:
    """Least distance between two groups of faces, pair by pair, those whose bounds are near first.

    Most pairs are never asked for: their bounds lie farther apart than the nearest found.
    """
    box = context.boxes("body")
    pairs = sorted((_apart(box[i], box[j]), i, j) for i in one for j in other)
    best: Measured | None = None
    for at_least, i, j in pairs:
        if best is not None and at_least >= best.value:
            break
        distance, places = _distance(context, i, j)
        if best is None or distance < best.value:
            best = Measured(distance, places[0])
    return best


def _distance(context: Context, i: int, j: int) -> tuple[float, tuple[Point, Point]]:
    """Distance [mm] between two of the body's faces, of the second only what can be near enough.

    Whatever is left away lies farther off than the distance found: along all of a drawn outline
    some kernels take seconds.
    """
    faces, box = context.faces("body"), context.boxes("body")
    one, other = faces[i], faces[j]
    reach = _apart(box[i], box[j]) + REACH
    while context.is_cut("body", j, window := _round(box[i], reach)):
        pieces = context.reach("body", j).within(window)
        found = [distance_between(one, piece) for piece in pieces]
        least = min(found, default=None)
        if least is not None and least[0] <= reach:
            return least
        reach = 2 * reach if least is None else least[0]
    return distance_between(one, other)


def _round(box: FloatArray, reach: float) -> Bounds:
    low, high = box[:2] - reach, box[3:5] + reach
    return float(low[0]), float(high[0]), float(low[1]), float(high[1])


def _apart(one: FloatArray, other: FloatArray) -> float:
    """Distance [mm] between two bounds: no distance between what they hold is smaller."""
    gap = np.maximum(one[:3] - other[3:], other[:3] - one[3:])
    return float(np.linalg.norm(np.maximum(gap, 0.0)))


def distance_between(one: Any, other: Any) -> tuple[float, tuple[Point, Point]]:
    """Least distance [mm] between two shapes and a point on each, by the kernel.

    Raises KernelFailure where the kernel gives none.
    """
    distance, pairs, _ = one.distToShape(other)
    if distance < 0 or not pairs:
        raise KernelFailure("the kernel gave no distance between two faces")
    first, second = pairs[0]
    return float(distance), ((first.x, first.y, first.z), (second.x, second.y, second.z))

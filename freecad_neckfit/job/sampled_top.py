"""A top that is known by heights on a square grid, and runs smoothly between them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np

from .arrays import Array, FloatArray
from .errors import BadInput

INWARD = 1e-3
"""So far from the border, in samples, its slope is taken."""
LEAST = 3
"""Samples each way that a smooth surface needs."""


def sampled_height(v: Mapping[str, Any], *, x: Array, y: Array) -> Array:
    """Height [mm] at (x, y) [mm], which broadcast; beyond the samples straight on.

    Between samples by cubic convolution, which meets every surface of second degree exactly
    (R. Keys, 1981, with a = -1/2; named from memory, the exactness is tested). Raises BadInput
    where the samples are no grid.
    """
    grid = samples(v)
    step = float(v["body.top_step"])
    at = [
        (np.asarray(x, dtype=float) - v["body.top_from_x"]) / step,
        (np.asarray(y, dtype=float) - v["body.top_from_y"]) / step,
    ]
    near = [np.clip(a, 0.0, count - 1.0) for a, count in zip(at, grid.shape, strict=True)]
    found = _between(grid, near[0], near[1])
    for axis in (0, 1):
        beyond = at[axis] - near[axis]
        if np.any(beyond):
            inner = list(near)
            inner[axis] = near[axis] - np.sign(beyond) * INWARD
            rise = (found - _between(grid, inner[0], inner[1])) / INWARD
            found = found + np.abs(beyond) * rise
    return found


def _between(grid: FloatArray, x: FloatArray, y: FloatArray) -> FloatArray:
    """Heights at places counted in samples, within the grid."""
    i, u = _cell(x, grid.shape[0])
    j, w = _cell(y, grid.shape[1])
    around = _widened(_widened(grid).T).T
    total: Array = 0.0
    for a, along in enumerate(_weights(u)):
        for b, across in enumerate(_weights(w)):
            total = total + along * across * around[i + a, j + b]
    return np.asarray(total)


def sampled_touch(v: Mapping[str, Any], *, slope: Array, y: Array) -> Array:
    """X [mm] where a line that climbs by ``slope`` over the line at ``y`` touches the top first."""
    grid, step = samples(v), float(v["body.top_step"])
    x = float(v["body.top_from_x"]) + step * np.arange(grid.shape[0])
    slope, y = (np.asarray(a, dtype=float)[..., None] for a in (slope, y))
    over = sampled_height(v, x=x, y=y) - slope * x
    k = np.clip(over.argmax(axis=-1), 1, grid.shape[0] - 2)[..., None]
    below, here, above = (np.take_along_axis(over, k + d, -1) for d in (-1, 0, 1))
    bend = below - 2 * here + above
    shift = np.where(bend < 0, (below - above) / (2 * np.where(bend < 0, bend, -1.0)), 0.0)
    found = x[k] + step * np.clip(shift, -1.0, 1.0)
    return found[..., 0]


def samples(v: Mapping[str, Any]) -> FloatArray:
    """(n, m) heights [mm], X along the first axis. Raises BadInput where they are no grid."""
    heights, rows = v["body.top_heights"], int(v["body.top_rows"])
    if heights is None:
        raise BadInput(
            'body.top_heights is missing, though body.top is "sampled"; state the heights.'
        )
    found = np.asarray(heights, dtype=float)
    if rows < LEAST or found.size < LEAST * rows or found.size % rows:
        raise BadInput(
            f"body.top_heights: {found.size} heights are no grid of {rows} across (body.top_rows); "
            f"state at least {LEAST} rows of at least {LEAST} each, all of one length."
        )
    return found.reshape(-1, rows)


def _cell(at: FloatArray, count: int) -> tuple[Any, FloatArray]:
    """Index of the sample before, and the share of the way to the next."""
    index = np.minimum(at.astype(int), count - 2)
    return index, at - index


def _weights(t: FloatArray) -> tuple[FloatArray, ...]:
    """Of the samples one before, at, one after and two after the cell's beginning."""
    return (
        t * (-0.5 + t * (1.0 - 0.5 * t)),
        1.0 + t * t * (-2.5 + 1.5 * t),
        t * (0.5 + t * (2.0 - 1.5 * t)),
        t * t * (-0.5 + 0.5 * t),
    )


def _widened(grid: FloatArray) -> FloatArray:
    """One more row at each end, carried on with the bend that is there."""
    first = 3 * grid[0] - 3 * grid[1] + grid[2]
    last = 3 * grid[-1] - 3 * grid[-2] + grid[-3]
    return np.concatenate([first[None], grid, last[None]])

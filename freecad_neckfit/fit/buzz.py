"""Clearance of the strings over the crowns, open and fretted, with what the saddles can do.

A string between two points rises straight, so its height over one crown is linear in the
height of its saddle, and the least clearance is the lower edge of a bundle of straight lines.
Where all jobs share one neck the bundle is worked out once per string, and each job only
looks up the few lines that can be least.
"""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from ..job.arrays import Array, FloatArray
from .strings import String

if TYPE_CHECKING:
    from .case import Case

CHUNK = 4096
"""Jobs worked through at a time where every job has its own neck: about what a cache holds."""


def open_room(case: Case, string: String, *, saddle: Array) -> Array:
    """Least clearance [mm] of the open string over frets 1 … N.

    The string lies at the nut where its set-up puts it and at neck height ``saddle`` [mm] on
    its saddle. With a zero fret it starts on that crown.
    """
    low = string.height(string.nut) - case.frets.crest
    climb = saddle - case.frets.crest - low
    share, rise = _shares(case, string), string.rise(case.frets.numbers)
    if case.frets.one_neck:
        return low + least_line(-rise, slope=share, at=climb)
    return low + np.min(climb * share - rise, axis=0)


def fretted_room(case: Case, string: String, *, saddle: Array) -> Array:
    """Least clearance [mm] over every later fret m of the string fretted at each n = 1 … N - 1.

    The string runs straight from the crown of n to neck height ``saddle`` [mm] on its saddle.
    """
    numbers = case.frets.numbers
    u, rise = string.fret(numbers), string.rise(numbers)
    height = saddle - case.frets.crest
    if case.frets.one_neck:
        constant, slope = pairs(u, rise, saddle_u=string.saddle)
        return least_line(constant, slope=slope, at=height)
    return _fretted_each(u, rise, saddle_u=string.saddle, height=height)


def open_worst(case: Case) -> tuple[int, int]:
    """Index of the string and number of the fret where the open strings lie lowest, for one job."""
    rooms = []
    for string, saddle in zip(case.strings, case.bridge.reached, strict=True):
        low, share = string.height(string.nut), _shares(case, string)
        rooms.append(low + (saddle - low) * share - string.crown(case.frets.numbers))
    index, fret = np.unravel_index(np.argmin(rooms), np.shape(rooms))
    return int(index), int(fret) + 1


def fretted_worst(case: Case) -> tuple[int, int, int]:
    """Index of the string, fret pressed and later fret with the least clearance, for one job."""
    rooms, numbers = [], case.frets.numbers
    for string, saddle in zip(case.strings, case.bridge.reached, strict=True):
        u, rise = string.fret(numbers), string.rise(numbers)
        constant, slope = pairs(u, rise, saddle_u=string.saddle)
        rooms.append(constant + slope * (saddle - case.frets.crest))
    index, pair = np.unravel_index(np.argmin(rooms), np.shape(rooms))
    n, m = _every_later(case.frets.count)
    return int(index), int(n[pair]) + 1, int(m[pair]) + 1


def _shares(case: Case, string: String) -> Array:
    """Where each fret lies on the way from nut to saddle, 0 … 1."""
    return (string.fret(case.frets.numbers) - string.nut) / (string.saddle - string.nut)


def pairs(u: FloatArray, rise: FloatArray, *, saddle_u: Array) -> tuple[FloatArray, FloatArray]:
    """Constant [mm] and slope of the clearance over fret m, fretted at n, for all n < m.

    In the order (1, 2), (1, 3) … (N - 1, N); linear in the saddle's height over the crest.
    """
    n, m = _every_later(len(u))
    share = (u[m] - u[n]) / (saddle_u - u[n])
    return rise[n] * (1 - share) - rise[m], share


@lru_cache(maxsize=8)
def _every_later(count: int) -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Indices of all pairs of a fret and a later one, in the order of ``pairs``."""
    n, m = np.triu_indices(count, k=1)
    return n, m


def least_line(constant: FloatArray, *, slope: FloatArray, at: Array) -> Array:
    """Least of the lines constant + slope·at, for one abscissa or for many."""
    at = np.asarray(at)
    if at.ndim == 0:
        return np.min(constant + slope * at)
    order, crossings = lower_edge(constant.tobytes(), slope.tobytes())
    first, last = np.searchsorted(crossings, (np.min(at), np.max(at)))
    lines = order[first : last + 1]
    result = constant[lines[0]] + slope[lines[0]] * at
    for line in lines[1:]:
        np.minimum(result, constant[line] + slope[line] * at, out=result)
    return result


@lru_cache(maxsize=64)
def lower_edge(constant: bytes, slope: bytes) -> tuple[list[int], list[float]]:
    """Indices of the lines that are least somewhere, steepest first, and where each next begins.

    Walks along the edge from crossing to crossing; each next line is flatter, so the walk ends.
    Remembered, for many jobs come in parts that share one neck; the numbers come as bytes, which
    can be remembered by.
    """
    a, b = np.frombuffer(constant), np.frombuffer(slope)
    order = [int(np.lexsort((a, -b))[0])]
    crossings: list[float] = []
    while True:
        now = order[-1]
        flatter = np.flatnonzero(b < b[now])
        if not flatter.size:
            return order, crossings
        crossing = (a[flatter] - a[now]) / (b[now] - b[flatter])
        nearest = int(np.lexsort((b[flatter], crossing))[0])
        crossings.append(float(crossing[nearest]))
        order.append(int(flatter[nearest]))


def _fretted_each(u: FloatArray, rise: FloatArray, *, saddle_u: Array, height: Array) -> FloatArray:
    """The same for necks that differ: arrays of (frets, jobs), some jobs at a time."""
    jobs = np.broadcast_shapes(u.shape[1:], rise.shape[1:], np.shape(saddle_u), np.shape(height))[0]
    u, rise = (np.broadcast_to(a, (len(a), jobs)) for a in (u, rise))
    saddle_u, height = np.broadcast_to(saddle_u, jobs), np.broadcast_to(height, jobs)
    result = np.empty(jobs)
    for start in range(0, jobs, CHUNK):
        part = slice(start, start + CHUNK)
        result[part] = _fretted_part(
            u[:, part], rise[:, part], saddle_u=saddle_u[part], height=height[part]
        )
    return result


def _fretted_part(
    u: FloatArray, rise: FloatArray, *, saddle_u: FloatArray, height: FloatArray
) -> FloatArray:
    result = np.full(u.shape[1], np.inf)
    for n in range(len(u) - 1):
        share = (u[n + 1 :] - u[n]) / (saddle_u - u[n])
        room = rise[n] + (height - rise[n]) * share - rise[n + 1 :]
        np.minimum(result, np.min(room, axis=0), out=result)
    return result

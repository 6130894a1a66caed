"""A neck carried from where it lies to other seats, over a body that stays: no solid is cut anew.

Only what a deeper or tilted pocket leaves as it was may be measured so: top, cover plate, pickups,
bridge and screws, each against the neck. Pocket walls and floor stay where they were.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

import numpy as np

from ...job.arrays import FloatArray
from . import beside, rooms
from .context import NECK, REACH, Context
from .facets import Bounds, Facets
from .failures import KERNEL_FAILURES, NotFound
from .measured import Measured
from .neck_frame import NeckFrame

Measure = Callable[[Context], Measured]
ROOMS: dict[str, Measure] = {
    "overhang_gap": rooms.overhang_gap,
    "corner_gap": rooms.corner_gap,
    "binding_gap": rooms.binding_gap,
}
"""Rooms in height, by key, that need nothing of the pocket itself."""
BESIDE: dict[str, Measure] = {"overhang_pickup": beside.overhang_pickup}
"""Rooms in height or along X, by key, that need nothing of the pocket itself."""
CARRIED = ROOMS | BESIDE
STRAIGHT = 1e-9
"""A motion that differs no more than this from one along Z is one."""


class Carried(Context):
    """A context whose neck has moved by ``motion`` (4, 4), in the body frame; the body shared."""

    def __init__(self, base: Context, motion: FloatArray) -> None:
        """Raises NotFound for a motion that is far."""
        bounds = base.neck_bounds
        for once in ("body_faces", "top", "top_face", "plate_top", "heel_walls"):
            getattr(base, once)
        self.__dict__.update(base.__dict__)
        self._turn, self._shift = motion[:3, :3], motion[:3, 3]
        frame = base.frame
        self.__dict__["frame"] = NeckFrame(
            self._turn @ frame.origin + self._shift, self._turn @ frame.along,
            self._turn @ frame.up, frame.bottom,
        )  # fmt: skip
        self.__dict__["heel_walls"] = self._moved(base.heel_walls)
        end = max(float(base.boxes(n)[:, 3].max()) for n in NECK if base.has(n))
        reach = self._turn @ np.array([end, 0.0, 0.0]) + self._shift
        if float(reach[0]) > bounds[1] - REACH / 2:
            raise NotFound("the neck moves so far that other parts lie under it")

    def _moved(self, facets: Facets) -> Facets:
        points = facets.points @ self._turn.T + self._shift
        return Facets(points, facets.normal @ self._turn.T, facets.face)

    def facets(self, name: str, faces: Any = None) -> Facets:
        """As the base has them, the neck's moved."""
        found = super().facets(name, faces)
        return self._moved(found) if name in NECK else found

    def near(self, name: str, bounds: Bounds, **more: Any) -> Facets:
        """As the base has them, the neck's moved; looked up once for all seats."""
        found = super().near(name, bounds, **more)
        return self._moved(found) if name in NECK else found


class Carrier:
    """Measures a neck at one seat after the other."""

    def __init__(self, base: Context) -> None:
        self._base = base
        self._start: dict[str, Measured] = {}

    def at(self, motion: FloatArray) -> dict[str, Measured]:
        """The measurements in ``CARRIED`` with the neck moved by ``motion`` (4, 4).

        What cannot be answered is told as unknown, as in ``measure_all``.
        """
        straight = np.abs(motion - _lift(float(motion[2, 3]))).max() < STRAIGHT
        if not straight:
            return self._measured(motion, CARRIED)
        if not self._start:
            self._start = self._measured(np.eye(4), ROOMS)
        lifted = {key: _raised(m, float(motion[2, 3])) for key, m in self._start.items()}
        return lifted | self._measured(motion, BESIDE)

    def _measured(self, motion: FloatArray, wanted: Mapping[str, Measure]) -> dict[str, Measured]:
        try:
            context = Carried(self._base, motion)
            return {key: measure(context) for key, measure in wanted.items()}
        except KERNEL_FAILURES as error:
            return {key: Measured.unknown(str(error) or type(error).__name__) for key in wanted}


def _lift(height: float) -> FloatArray:
    motion = np.eye(4)
    motion[2, 3] = height
    return motion


def _raised(measured: Measured, height: float) -> Measured:
    """A room in height with the neck raised: every room grows by as much."""
    if not measured.applies or not measured.known:
        return measured
    return replace(measured, value=measured.value + height, place=None)

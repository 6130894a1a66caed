"""A joint through the year: side clearance, room under the overhang and the screws' grip."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from ..fit.case import Case
from ..fit.checks import seasons_side
from ..fit.checks.overhang_gap import read as overhang_gap
from ..fit.screw_seat import screw_seat
from ..fit.seasons import (
    DAMPEST,
    DRIEST,
    Season,
    across_thickness,
    gap_change,
    side_change,
)
from ..fit.sides import pocket_sides
from ..fit.verdict import ROUNDING
from ..job.arrays import FloatArray
from ..job.woods import wood
from .climate import Climate


@dataclass(frozen=True)
class Curve:
    """One figure through twelve months, NaN in months that could not be checked.

    ``short``: the title in a word.
    ``now``: when the joint was cut. ``low``, ``high``: its limits, or None.
    """

    title: str
    short: str
    unit: str
    now: float
    values: FloatArray
    low: float | None
    high: float | None

    @property
    def met(self) -> bool | None:
        """Whether every month that could be checked keeps the limits; None where none could."""
        known = self.values[np.isfinite(self.values)]
        if not known.size:
            return None
        low_met = self.low is None or bool(known.min() >= self.low - ROUNDING)
        return low_met and (self.high is None or bool(known.max() <= self.high + ROUNDING))


@dataclass(frozen=True)
class Year:
    """The owner's year: moisture [%] by month, where coefficients hold, and the curves.

    ``cut``: moisture [%] when pocket and heel were measured.
    """

    cut: float
    moisture: FloatArray
    known: NDArray[np.bool_]
    curves: tuple[Curve, ...]

    @property
    def met(self) -> bool | None:
        """All curves within their limits; None where they are, but some month is unknown."""
        if any(curve.met is False for curve in self.curves):
            return False
        return True if bool(self.known.all()) else None


def find_year(stated: Mapping[str, Any], owner: Climate, *, cut: float | None = None) -> Year:
    """Follow one joint through the ``owner``'s year.

    ``cut``: moisture [%] when it was cut, where the job's own is not meant. Months (or a cut)
    outside 6 … 14 %, where no coefficient holds, are not checked. The wood is taken to follow the
    room month by month; under finish it follows later and less.
    """
    values = dict(stated) if cut is None else {**stated, "wood.moisture_cut": cut}
    case = Case(values)
    own = float(case["wood.moisture_cut"])
    moisture = owner.moisture
    within = (moisture >= DRIEST) & (moisture <= DAMPEST)
    known = within & (DRIEST <= own <= DAMPEST)
    season = Season(moisture, np.where(known, moisture - own, np.nan))
    curves = [_sides(case, season), _gap(case, season), _grip(case, season)]
    return Year(own, moisture, known, tuple(curve for curve in curves if curve is not None))


def _sides(case: Case, season: Season) -> Curve:
    now = float(case.once(pocket_sides).value)
    values = now + np.asarray(side_change(case, season))
    high = float(case["limits.side_max"])
    return Curve("side clearance, each side", "side", "mm", now, values, seasons_side.JAMS, high)


def _gap(case: Case, season: Season) -> Curve | None:
    gap = overhang_gap(case)
    if not bool(gap.applies):
        return None
    now = float(gap.value)
    values = now + np.asarray(gap_change(case, season))
    low, high = float(case["limits.gap_min"]), float(case["limits.gap_max"])
    return Curve("room under the overhang", "gap", "mm", now, values, low, high)


def _grip(case: Case, season: Season) -> Curve | None:
    """The body between head and heel swells and shrinks, and the screws reach less or more deep."""
    screws = case.once(screw_seat)
    if not screws.count or case["screws.fixing"] != "wood screw":
        return None
    kind = wood(case["wood.body"], key="wood.body")
    rate = float(across_thickness(kind=kind, ring=case["wood.body_ring"]))
    through = np.asarray(case["screws.length"] - screws.penetration)
    if case["neck_plate.make"] == "plate":
        through = through - case["neck_plate.thickness"]  # steel does not swell
    swell = np.outer(season.change, np.broadcast_to(through, (screws.count,)) * rate)
    deep = np.asarray(screws.penetration)[None, :] - swell
    threaded = float(case["screws.threaded"])
    shank = float(case["screws.shank"])
    values = np.min(np.clip(deep, 0.0, threaded), axis=1) / shank
    now = float(np.min(screws.grip)) / shank
    low = float(case["limits.grip_min"])
    return Curve("screws' grip", "grip", "shank diameters", now, values, low, None)

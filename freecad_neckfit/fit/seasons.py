"""How side clearance and the gap under the overhang change through a year indoors."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array, pick
from ..job.woods import Wood, wood
from .reading import Reading

if TYPE_CHECKING:
    from .case import Case

DRIEST, DAMPEST = 6.0, 14.0
"""Moisture [%] between which the coefficients hold (Wood Handbook, table 13-5)."""
OUTSIDE = (
    "wood moisture of the owner's driest or dampest month, or when cut, lies outside 6 … 14 %, "
    "where no coefficient of change holds"
)
AS_CUT = 'This is "{room}" in the worst month of the year; that is out of its limits as cut.'
"""What is said where a season's finding follows from the joint as it is cut."""


def equilibrium_moisture(*, temperature: Array, humidity: Array) -> Array:
    """Moisture [%] that wood takes on at ``temperature`` [°C] and relative ``humidity`` [%].

    FPL-RN-0268 (USDA Forest Products Laboratory), as in the Wood Handbook, chapter 4.
    """
    t, h = np.asarray(temperature, dtype=float), np.asarray(humidity, dtype=float) / 100
    w = 349 + 1.29 * t + 0.0135 * t**2
    k = (0.805 + 0.000736 * t - 0.00000273 * t**2) * h
    k1 = 6.27 - 0.00938 * t - 0.000303 * t**2
    k2 = 1.91 + 0.0407 * t - 0.000293 * t**2
    first, second = k1 * k, k1 * k2 * k**2
    return 1800 / w * (k / (1 - k) + (first + 2 * second) / (1 + first + second))


def across_width(*, kind: Wood, ring: Array) -> Array:
    """Change per size and per cent, along the width: C_R·cos²φ + C_T·sin²φ.

    ``ring`` [degrees]: 0 for quartersawn wood (the width runs radially), 90 for flatsawn.
    """
    share = np.square(np.sin(np.radians(ring)))
    return kind.radial + (kind.tangential - kind.radial) * share


def across_thickness(*, kind: Wood, ring: Array) -> Array:
    """Change per size and per cent, along the thickness: the width's with rings turned by 90°."""
    return across_width(kind=kind, ring=90.0 - np.asarray(ring))


class Season(NamedTuple):
    """Moisture [%] of the wood in one month, and its change since pocket and heel were measured."""

    moisture: Array
    change: Array


def seasons(case: Case) -> tuple[Season, Season]:
    """The driest and the dampest month of the owner's room."""
    return _season(case, "dry"), _season(case, "damp")


def _season(case: Case, month: str) -> Season:
    moisture = equilibrium_moisture(
        temperature=case["climate.temperature"], humidity=case[f"climate.humidity_{month}"]
    )
    return Season(moisture, moisture - case["wood.moisture_cut"])


def _known(case: Case) -> Array:
    known = _within(case["wood.moisture_cut"])
    for season in case.once(seasons):
        known = known & _within(season.moisture)
    return known


def _within(moisture: Array) -> Array:
    return (np.asarray(moisture) >= DRIEST) & (np.asarray(moisture) <= DAMPEST)


def side_change(case: Case, season: Season) -> Array:
    """Change [mm] of the clearance of one side: half of W_pocket·C_b·ΔM - W_heel·C_n·ΔM."""
    body = across_width(kind=_wood(case, "body"), ring=case["wood.body_ring"])
    neck = across_width(kind=_wood(case, "neck"), ring=case["wood.neck_ring"])
    grown = case["pocket.width_end"] * body - case["neck.heel_width_end"] * neck
    return grown * season.change / 2


def gap_change(case: Case, season: Season) -> Array:
    """Change [mm] of the gap under the overhang: h_o·C_n·ΔM - d·C_b·ΔM, along the thickness."""
    body = across_thickness(kind=_wood(case, "body"), ring=case["wood.body_ring"])
    neck = across_thickness(kind=_wood(case, "neck"), ring=case["wood.neck_ring"])
    grown = case["neck.underside"] * neck - case["pocket.depth"] * body
    return grown * season.change


def _wood(case: Case, part: str) -> Wood:
    return wood(case[f"wood.{part}"], key=f"wood.{part}")


def reading(
    case: Case, *, now: Array, changes: tuple[Array, Array], low: Array, high: Array
) -> Reading:
    """The value of the worse month: the one nearer to its limit, or farther past it.

    ``low``, ``high``: the limits [mm].
    """
    dry, damp = now + changes[0], now + changes[1]
    middle = (low + high) / 2
    worse = pick(np.abs(dry - middle) >= np.abs(damp - middle), dry, damp)
    moistures = tuple(season.moisture for season in case.once(seasons))
    return Reading(
        value=worse,
        known=_known(case),
        unknown_because=OUTSIDE,
        extremes=(np.minimum(dry, damp), np.maximum(dry, damp)),
        detail={
            "in the driest month": dry, "in the dampest month": damp,
            "moisture in the driest month": moistures[0],
            "moisture in the dampest month": moistures[1],
        },
    )  # fmt: skip

"""Published tables of sizes: general tolerances, fits' grades, wood screws' shanks."""

from __future__ import annotations

from functools import cache

from .errors import BadInput
from .published import number, rows

INCH = 25.4
CLASSES = {"f": "fine", "m": "medium", "c": "coarse", "v": "very_coarse"}


@cache
def _table(name: str) -> tuple[dict[str, str], ...]:
    return tuple(rows(name))


def general_tolerance(*, size: float, tolerance_class: str) -> float:
    """Permissible deviation ± [mm] of a length of ``size`` [mm], class f, m, c or v (ISO 2768-1).

    Valid from 0.5 to 1000 mm; raises BadInput outside, and for a class without a value there.
    """
    return _general("length", size, tolerance_class, unit="mm")


def general_angle_tolerance(*, shorter_side: float, tolerance_class: str) -> float:
    """Permissible deviation ± [degrees] of an angle by its shorter side [mm], class f or m."""
    minutes = _general("angle", shorter_side, tolerance_class, unit="mm along its shorter side")
    return minutes / 60


def _general(kind: str, size: float, tolerance_class: str, *, unit: str) -> float:
    column = CLASSES.get(tolerance_class)
    if column is None:
        raise BadInput(
            f"tolerance class {tolerance_class!r} is none of f, m, c and v of ISO 2768-1"
        )
    for row in _table("general_tolerances"):
        if row["kind"] == kind and _within(row, size, lowest=kind == "length"):
            if not row[column]:
                break
            return number(row[column])
    raise BadInput(
        f"the table of ISO 2768-1 gives no {kind} of {size:g} {unit} in class {tolerance_class}"
    )


def it_grade(*, size: float, grade: int) -> float:
    """Width [mm] of the tolerance interval IT6 to IT13 for ``size`` [mm] over 50 up to 120.

    ISO 286-1. Raises BadInput outside these.
    """
    return _fit_figure(size, f"IT{grade}")


def shaft_deviation(*, size: float, letter: str) -> float:
    """Upper deviation [mm] of a shaft f or g for ``size`` [mm] over 50 up to 120 (ISO 286-1)."""
    return _fit_figure(size, letter)


def _fit_figure(size: float, column: str) -> float:
    for row in _table("it_grades"):
        if _within(row, size):
            if column not in row:
                break
            return number(row[column])
    raise BadInput(f"the table of ISO 286-1 kept here gives no {column} for {size:g} mm")


def _within(row: dict[str, str], size: float, *, lowest: bool = False) -> bool:
    """Whether ``over`` < size ≤ ``up_to``; the first row of lengths begins at its own bound."""
    over, up_to = number(row["over"]), number(row["up_to"] or "inf")
    return over < size <= up_to or (lowest and size == over == 0.5)


def screw_shank(*, gauge: int) -> float:
    """Shank diameter [mm] of a wood screw by its gauge number (ASME B18.6.1).

    Raises BadInput for numbers that the table does not have.
    """
    for row in _table("screw_shanks"):
        if int(row["number"]) == gauge:
            return number(row["diameter_in"]) * INCH
    known = ", ".join(row["number"] for row in _table("screw_shanks"))
    raise BadInput(f"screw number {gauge} is not in the table of ASME B18.6.1 (it has {known})")

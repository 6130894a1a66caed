"""Size first: a neck is some 450 to 900 mm long, and a file's unit may be a lie."""

from __future__ import annotations

from ...job.errors import BadInput
from .part import Part3D

SHORTEST, LONGEST = 430.0, 960.0
"""Lengths [mm] of necks, headstock and overhang included."""
FACTORS = {
    25.4: "its numbers are inches read as millimetres (25.4)",
    1000.0: "its numbers are metres read as millimetres (1000)",
    10.0: "its numbers are centimetres read as millimetres",
    1 / 25.4: "its numbers are 25.4 times too large",
    1 / 1000.0: "its numbers are 1000 times too large",
}
SLENDER = 4.0
"""A neck is longer than this times its width."""


def in_neck_size(part: Part3D) -> Part3D:
    """The part as it is, or brought to a neck's size where one unit alone explains its size.

    Raises BadInput where no unit makes a neck of it.
    """
    size = part.size()
    length = float(size[0])
    if length < SLENDER * float(size[1]):
        raise BadInput(
            f"{part.name}: is not a neck: {_extents(size)} is no neck's shape{_hint(size)}."
        )
    if SHORTEST <= length <= LONGEST:
        return part
    for factor, why in FACTORS.items():
        if SHORTEST <= length * factor <= LONGEST:
            return part.scaled(factor).noting(
                f"its length reads {_mm(length)}: {why}, so it was brought to "
                f"{_mm(length * factor)}"
            )
    raise BadInput(
        f"{part.name}: is not a neck, or not one alone: it is {_mm(length)} long, and a neck 450 "
        f"to 900 mm{_hint(size)}."
    )


def _hint(size: object) -> str:
    """Whether all extents are round numbers of inches: the unit may be a lie."""
    inches = [float(s) for s in size if s > 1]  # type: ignore[attr-defined]
    if max(inches) > LONGEST and all(abs(s / 25.4 - round(s / 25.4)) < 1e-6 for s in inches):
        shown = " x ".join(f"{s / 25.4:.0f}" for s in inches)
        return (
            f"; its unit is suspicious too: divided by 25.4 it measures {shown}, round numbers of "
            "millimetres"
        )
    return ""


def _extents(size: object) -> str:
    return " x ".join(_mm(float(s)) for s in size)  # type: ignore[attr-defined]


def _mm(length: float) -> str:
    return f"{length:.4g} mm" if length < 1000 else f"{length:.0f} mm"

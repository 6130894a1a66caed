"""Kinds of value, the two unit systems, and every unit that can be written."""

from __future__ import annotations

import enum
import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Self


class Units(enum.Enum):
    """The unit system of lengths that carry no unit of their own, or of a printed table."""

    MM = "mm"
    INCH = "in"


class Kind(enum.Enum):
    """What kind of value a parameter or result is; ``unit`` is the unit used inside."""

    unit: str
    """Symbol of the unit used inside; empty where there is none."""
    example: str
    """How such a value is written, for messages."""

    LENGTH = ("length", "mm", "15.875 mm or 5/8 in")
    ANGLE = ("angle", "°", "1.5 deg or 1°30'")
    FORCE = ("force", "N", "75 N or 17 lbf")
    MOISTURE = ("moisture content", "%", "8 %")
    TEMPERATURE = ("temperature", "°C", "20 °C or 68 °F")
    HUMIDITY = ("relative humidity", "%", "45 %")
    FREQUENCY = ("frequency", "Hz", "82.41 Hz")
    LINEAR_DENSITY = ("mass per length", "g/m", "0.4 g/m")
    PRESSURE = ("pressure", "kPa", "101.3 kPa")
    NUMBER = ("number without a unit", "", "1.5")
    COUNT = ("whole number", "", "21")
    FLAG = ("yes-or-no value", "", "true or false")
    CHOICE = ("choice", "", '"round"')
    TEXT = ("text", "", '"walnut body"')
    PATH = ("path of a file", "", '"outline.dxf"')
    POINTS = ("list of points", "", "[[0, 0], [80, 0], [80, 60]]")

    def __new__(cls, word: str, unit: str, example: str) -> Self:
        """Make the word the value, so that ``Kind("length")`` finds the kind."""
        kind = object.__new__(cls)
        kind._value_ = word
        kind.unit = unit
        kind.example = example
        return kind

    @property
    def word(self) -> str:
        """The kind in plain words, without an article."""
        return str(self.value)

    @property
    def phrase(self) -> str:
        """The kind in plain words, with its article."""
        return f"an {self.word}" if self.word[0] in "aeiou" else f"a {self.word}"

    @property
    def is_measured(self) -> bool:
        """Whether a value is a real number, with limit deviations around it."""
        return self in _MEASURED


_MEASURED = frozenset(
    {
        Kind.LENGTH,
        Kind.ANGLE,
        Kind.FORCE,
        Kind.MOISTURE,
        Kind.TEMPERATURE,
        Kind.HUMIDITY,
        Kind.FREQUENCY,
        Kind.LINEAR_DENSITY,
        Kind.PRESSURE,
        Kind.NUMBER,
    }
)


@dataclass(frozen=True)
class Unit:
    """One unit: a value inside is ``number * scale + offset``; differences drop the offset."""

    scale: Fraction
    offset: Fraction = Fraction(0)


# Exact, by the definitions of the international inch, pound and standard gravity.
INCH_MM = Fraction("25.4")
_POUND_G = Fraction("453.59237")
_GRAVITY = Fraction("9.80665")
_POUND_FORCE_N = _POUND_G * _GRAVITY / 1000
FAHRENHEIT = Unit(Fraction(5, 9), Fraction(-160, 9))
POUND_FORCE = Unit(_POUND_FORCE_N)
_ONE = Unit(Fraction(1))


def _scaled(scale: Fraction | int | str, *spellings: str) -> dict[str, Unit]:
    return dict.fromkeys(spellings, Unit(Fraction(scale)))


# Spelt as they stand after `number.tidy`: one kind of quote, micro and degree sign.
_LENGTHS = {
    **_scaled(1, "mm", "millimeter", "millimeters", "millimetre", "millimetres"),
    **_scaled(10, "cm"),
    **_scaled(1000, "m"),
    **_scaled(Fraction(1, 1000), "µm", "um"),
    **_scaled(INCH_MM, "in", "in.", "inch", "inches", '"', "''"),
    **_scaled(INCH_MM * 12, "ft", "ft.", "foot", "feet"),
    **_scaled(INCH_MM / 1000, "thou"),
}
_ANGLES = {
    **_scaled(1, "°", "deg", "degree", "degrees"),
    **_scaled(Fraction(180 / math.pi), "rad", "radian", "radians"),
}
_FORCES = {
    **_scaled(1, "N", "newton", "newtons"),
    **_scaled(1000, "kN"),
    # String tension is stated in pounds throughout the trade: pounds of force.
    **_scaled(_POUND_FORCE_N, "lbf", "lb", "lbs"),
    **_scaled(_GRAVITY, "kgf"),
}
_PER_CENTS = {**_scaled(1, "%")}
_TEMPERATURES = {
    **dict.fromkeys(("°C", "C", "degC"), _ONE),
    **dict.fromkeys(("°F", "F", "degF"), FAHRENHEIT),
    "K": Unit(Fraction(1), Fraction("-273.15")),
}
_FREQUENCIES = {**_scaled(1, "Hz"), **_scaled(1000, "kHz")}
_LINEAR_DENSITIES = {
    **_scaled(1, "g/m", "mg/mm"),
    **_scaled(100, "g/cm"),
    **_scaled(1000, "g/mm", "kg/m"),
    **_scaled(_POUND_G / INCH_MM * 1000, "lb/in"),
    **_scaled(_POUND_G / INCH_MM * 1000 / 12, "lb/ft"),
}
_PRESSURES = {
    **_scaled(1, "kPa"),
    **_scaled(Fraction(1, 1000), "Pa"),
    **_scaled(Fraction(1, 10), "hPa", "mbar"),
    **_scaled(100, "bar"),
    **_scaled(1000, "MPa"),
    # Pound of force per square inch: N/mm² is 1000 kPa.
    **_scaled(_POUND_FORCE_N / INCH_MM**2 * 1000, "psi"),
}
_UNITS: dict[Kind, dict[str, Unit]] = {
    Kind.LENGTH: _LENGTHS,
    Kind.ANGLE: _ANGLES,
    Kind.FORCE: _FORCES,
    Kind.MOISTURE: _PER_CENTS,
    Kind.TEMPERATURE: _TEMPERATURES,
    Kind.HUMIDITY: _PER_CENTS,
    Kind.FREQUENCY: _FREQUENCIES,
    Kind.LINEAR_DENSITY: _LINEAR_DENSITIES,
    Kind.PRESSURE: _PRESSURES,
}


def spellings(kind: Kind) -> tuple[str, ...]:
    """Return every spelling of the units of a kind; empty where it has no unit."""
    return tuple(_UNITS.get(kind, {}))


def find_unit(spelling: str, *, kind: Kind) -> Unit | None:
    """Return the unit of that spelling for the kind, or None.

    Capitals are forgiven (``MM``, ``Inch``), but not where they carry the meaning: in single
    letters (``N``, ``m``, ``C``) and in pressures (``MPa`` against ``mPa``).
    """
    units = _UNITS.get(kind, {})
    if spelling in units:
        return units[spelling]
    if len(spelling) < 2 or kind is Kind.PRESSURE:
        return None
    folded = {known.casefold(): unit for known, unit in units.items() if len(known) > 1}
    return folded.get(spelling.casefold())


def inner_unit(kind: Kind, bare: Units) -> Unit:
    """Return the unit of a bare number: mm or inch for a length, else the unit used inside."""
    if kind is Kind.LENGTH and bare is Units.INCH:
        return Unit(INCH_MM)
    return _ONE


def kind_of_unit(spelling: str) -> str | None:
    """Return in words which kind the unit belongs to, or None for an unknown unit."""
    if spelling == "%":
        return "moisture or humidity"
    for kind in _UNITS:
        if find_unit(spelling, kind=kind):
            return kind.word
    return None

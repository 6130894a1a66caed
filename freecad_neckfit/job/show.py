"""Formatting: values as a builder reads them, in millimetres or in inches.

Numbers are rounded half away from zero. A value that is not zero never reads as zero: where the
usual decimals would leave nothing, one more is written, and beyond that ``<0.001 mm``. Zero has
no sign. The minus sign is the plain hyphen, so that a shown value can be pasted into a job.

Inches have three decimals and, where there is room, the nearest 64th with its error: that is how a
length is laid out with a rule. A length below 1/32 in is no business of a rule but of feeler gauge
and caliper: it has four decimals and no fraction.
"""

from __future__ import annotations

import math
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction

from .quantity import Kind, Points, Units, Value
from .units import FAHRENHEIT, INCH_MM, POUND_FORCE

_MM_PLACES = 2
_INCH_PLACES = 3
_SMALL_INCH, _SMALL_INCH_PLACES = 1 / 32, 4
_FINEST_FRACTION = 64
_TOO_LARGE_FOR_PLACES = 1e9

_PLACES = {
    Kind.ANGLE: 2,
    Kind.FORCE: 1,
    Kind.MOISTURE: 1,
    Kind.TEMPERATURE: 1,
    Kind.HUMIDITY: 1,
    Kind.FREQUENCY: 2,
    Kind.LINEAR_DENSITY: 3,
    Kind.PRESSURE: 1,
}
_CUSTOMARY = {Kind.FORCE: ("lbf", POUND_FORCE), Kind.TEMPERATURE: ("°F", FAHRENHEIT)}
"""Units that go with inches; the other kinds keep the unit used inside."""
_WORDS = {Kind.CHOICE, Kind.TEXT, Kind.PATH}


def show_length(mm: float, *, units: Units, signed: bool = False) -> str:
    """Return a length [mm] to 0.01 mm, or in inches with the nearest 64th where it helps.

    ``0.720 in (23/32 +0.001)`` reads as a sum: the fraction is the nearest 64th, reduced, and
    what follows is value minus fraction [in], left out where it rounds to zero. Where the
    nearest 64th is whole, and below 1/32 in, the decimals say as much and there is no bracket.
    ``signed`` writes a plus before positive values.
    """
    compact = compact_length(mm, units=units, signed=signed)
    if units is Units.MM or not math.isfinite(mm) or abs(mm) >= _TOO_LARGE_FOR_PLACES:
        return compact
    bracket = _inch_fraction(mm / float(INCH_MM), signed=signed)
    return f"{compact} ({bracket})" if bracket else compact


def compact_length(mm: float, *, units: Units, signed: bool = False) -> str:
    """Return a length [mm] as ``show_length`` does, without the fraction, for narrow tables."""
    if units is Units.MM:
        return _with_unit(mm, "mm", places=_MM_PLACES, signed=signed)
    inches = mm / float(INCH_MM)
    if 0 < abs(inches) < _SMALL_INCH:
        places = _SMALL_INCH_PLACES
        return _with_unit(inches, "in", places=places, finest=places, signed=signed)
    return _with_unit(inches, "in", places=_INCH_PLACES, signed=signed)


def show_value(value: Value, *, kind: Kind, units: Units, signed: bool = False) -> str:
    """Return a value of any kind, given in the unit used inside, with the unit it is shown in.

    ``signed`` writes a plus before positive numbers and marks a difference: 5 °C more is 9 °F
    more, not 41 °F. With inches go pounds of force and °F; other kinds have one unit.
    Raises TypeError for a value that is not of the kind.
    """
    if isinstance(value, list):
        if kind is not Kind.POINTS:
            raise TypeError(f"a list is no {kind.word}")
        return _show_points(value, units=units)
    if isinstance(value, str):
        if kind not in _WORDS:
            raise TypeError(f"a text is no {kind.word}")
        return value
    if kind is Kind.FLAG:
        return "true" if value else "false"
    if kind is Kind.COUNT:
        return f"{int(value):+d}" if signed and value else f"{int(value):d}"
    if not kind.is_measured:
        raise TypeError(f"a number is no {kind.word}")
    return _show_measure(float(value), kind=kind, units=units, signed=signed)


def entry_value(value: float, *, kind: Kind, units: Units) -> str:
    """Return a measured value as it stands in a field to be typed over, without a fraction.

    To 0.001 mm, 0.0001 in, 0.001°: one place finer than ``show_value`` where that place counts,
    so that 15.875 mm does not stand there as 15.88 mm.
    """
    if kind is Kind.LENGTH:
        factor = 1.0 if units is Units.MM else float(INCH_MM)
        symbol, places = units.value, _MM_PLACES if units is Units.MM else _INCH_PLACES
    else:
        factor, symbol, places = 1.0, kind.unit, _PLACES.get(kind, _MM_PLACES)
    number = value / factor
    finer = _rounded(number, places=places + 1)
    if finer != _rounded(number, places=places):
        places += 1
    return _with_unit(number, symbol, places=places, signed=False)


def _show_measure(value: float, *, kind: Kind, units: Units, signed: bool) -> str:
    if kind is Kind.LENGTH:
        return show_length(value, units=units, signed=signed)
    if kind is Kind.NUMBER:
        return _significant(value, signed=signed)
    if units is Units.INCH and kind in _CUSTOMARY:
        symbol, unit = _CUSTOMARY[kind]
        offset = 0.0 if signed else float(unit.offset)
        # Taking the offset away leaves noise where the answer is zero.
        number = round((value - offset) / float(unit.scale), 9) or 0.0
        return _with_unit(number, symbol, places=_PLACES[kind], signed=signed)
    return _with_unit(value, kind.unit, places=_PLACES[kind], signed=signed)


def _show_points(points: Points, *, units: Units) -> str:
    x_extent = max(x for x, _ in points) - min(x for x, _ in points)
    y_extent = max(y for _, y in points) - min(y for _, y in points)
    size = " x ".join(compact_length(extent, units=units) for extent in (x_extent, y_extent))
    return f"{len(points)} points, {size}"


def _with_unit(
    value: float, symbol: str, *, places: int, signed: bool, finest: int | None = None
) -> str:
    number = _fixed(value, places=places, finest=finest or places + 1, signed=signed)
    if not math.isfinite(value):
        return number
    return f"{number}{symbol}" if symbol == "°" else f"{number} {symbol}"


def _fixed(value: float, *, places: int, finest: int, signed: bool) -> str:
    if not math.isfinite(value) or abs(value) >= _TOO_LARGE_FOR_PLACES:
        return _significant(value, signed=signed)
    if value == 0:
        return f"{0:.{places}f}"
    for more in range(places, finest + 1):
        rounded = _rounded(value, places=more)
        if rounded:
            return f"{rounded:+f}" if signed else f"{rounded:f}"
    sign = "-" if value < 0 else "+" if signed else ""
    return f"{sign}<{Decimal(1).scaleb(-finest):f}"


def _significant(value: float, *, signed: bool) -> str:
    if math.isnan(value):
        return "not a number"
    if math.isinf(value):
        return "infinite" if value > 0 else "-infinite"
    if value == 0:
        return "0"
    return f"{value:+.6g}" if signed else f"{value:.6g}"


def _rounded(value: float, *, places: int) -> Decimal:
    # Twelve digits drop the noise of floats, so that 5/16 in rounds as 0.3125 and not below it.
    tidy = Decimal(f"{value:.12g}")
    return tidy.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_UP)


def _inch_fraction(inches: float, *, signed: bool) -> str:
    """Return the nearest 64th and the error, or nothing where that 64th tells nothing."""
    size = abs(inches)
    if size < _SMALL_INCH:
        return ""
    nearest = Fraction(math.floor(size * _FINEST_FRACTION + 0.5), _FINEST_FRACTION)
    if nearest.denominator == 1:
        return ""
    whole, part = divmod(nearest, 1)
    sign = "-" if inches < 0 else "+" if signed else ""
    text = f"{sign}{whole} {part}" if whole else f"{sign}{part}"
    error = _rounded(inches - math.copysign(nearest, inches), places=_INCH_PLACES)
    return f"{text} {error:+f}" if error else text

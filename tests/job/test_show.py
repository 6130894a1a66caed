"""Formatting values for tables, and reading them back."""

from __future__ import annotations

import math
import random
import re

import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.quantity import Kind, Units, Value, read_length, read_value
from freecad_neckfit.job.show import compact_length, entry_value, show_length, show_value

MM, INCH = Units.MM, Units.INCH


@pytest.mark.parametrize(
    ("mm", "in_mm", "in_inch"),
    [
        (15.875, "15.88 mm", "0.625 in (5/8)"),
        (18.288, "18.29 mm", "0.720 in (23/32 +0.001)"),
        (44.45, "44.45 mm", "1.750 in (1 3/4)"),
        (44.0, "44.00 mm", "1.732 in (1 47/64 -0.002)"),
        (-0.3, "-0.30 mm", "-0.0118 in"),
        (0.79, "0.79 mm", "0.0311 in"),
        (0.15, "0.15 mm", "0.0059 in"),
        (0.79375, "0.79 mm", "0.031 in (1/32)"),
        (1.0, "1.00 mm", "0.039 in (3/64 -0.008)"),
        (647.7, "647.70 mm", "25.500 in (25 1/2)"),
        (635.0, "635.00 mm", "25.000 in"),
        (7.9375, "7.94 mm", "0.313 in (5/16)"),
        (0.0, "0.00 mm", "0.000 in"),
        (-0.0, "0.00 mm", "0.000 in"),
        (0.05, "0.05 mm", "0.0020 in"),
        (0.01, "0.01 mm", "0.0004 in"),
        (0.005, "0.01 mm", "0.0002 in"),
        (0.004, "0.004 mm", "0.0002 in"),
        (-0.004, "-0.004 mm", "-0.0002 in"),
        (0.0004, "<0.001 mm", "<0.0001 in"),
        (-1e-17, "-<0.001 mm", "-<0.0001 in"),
        (1e12, "1e+12 mm", "3.93701e+10 in"),
        (math.nan, "not a number", "not a number"),
        (-math.inf, "-infinite", "-infinite"),
    ],
)
def test_lengths_as_a_builder_reads_them(mm: float, in_mm: str, in_inch: str) -> None:
    """Two decimals of a millimetre, three of an inch, and the nearest 64th with its error.

    Below 1/32 in, which no rule shows, four decimals alone.
    """
    assert show_length(mm, units=MM) == in_mm
    assert show_length(mm, units=INCH) == in_inch


def test_signed_lengths() -> None:
    """Zero carries no sign, every other value does."""
    assert show_length(18.288, units=INCH, signed=True) == "+0.720 in (+23/32 +0.001)"
    assert show_length(-0.1, units=MM, signed=True) == "-0.10 mm"
    assert show_length(0.0, units=MM, signed=True) == "0.00 mm"
    assert show_length(1e-6, units=MM, signed=True) == "+<0.001 mm"


def test_narrow_tables_leave_the_fraction_out() -> None:
    """The decimals are the same as beside the fraction."""
    assert compact_length(18.288, units=INCH) == "0.720 in"
    assert compact_length(18.288, units=MM) == "18.29 mm"


def _random_length(rng: random.Random) -> float:
    size = rng.choice(
        [rng.uniform(0, 1000), rng.randrange(2000) * 25.4 / 64, 10 ** rng.uniform(-9, 8)]
    )
    return rng.choice([-1, 1]) * size


@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("signed", [False, True])
def test_a_shown_length_reads_back_within_rounding(units: Units, signed: bool) -> None:
    """What is too small to show is refused when read back, never taken as zero."""
    rng = random.Random(64)
    scale, finest = (1.0, 0.01) if units is MM else (25.4, 0.001)
    too_small = 0
    for _ in range(3000):
        mm = _random_length(rng)
        for text in (
            show_length(mm, units=units, signed=signed),
            compact_length(mm, units=units, signed=signed),
        ):
            if "<" in text:
                too_small += 1
                assert abs(mm) < finest / 20 * scale
                with pytest.raises(BadInput):
                    read_length(text, bare=MM, name="x")
                continue
            back = read_length(text, bare=MM, name="x")
            assert abs(back - mm) <= finest / 2 * scale * (1 + 1e-9) + abs(mm) * 1e-11
    assert too_small > 100


@pytest.mark.parametrize("units", Units)
def test_nothing_but_zero_reads_as_zero(units: Units) -> None:
    """A sign stands before a negative value, and never before a row of zeros."""
    rng = random.Random(5)
    for _ in range(3000):
        mm = _random_length(rng) or 1.0
        text = compact_length(mm, units=units)
        assert "<" in text or re.search("[1-9]", text)
        assert text.startswith("-") is (mm < 0)


def test_the_fraction_and_its_error_add_up_to_the_value() -> None:
    """The error is value minus fraction, never more than half a 64th."""
    rng = random.Random(23)
    with_error = 0
    for _ in range(3000):
        inches = rng.uniform(-30, 30)
        match = re.search(
            r"\((\S+(?: \d+/\d+)?)(?: ([+-]0\.\d+))?\)", show_length(inches * 25.4, units=INCH)
        )
        if not match:
            assert abs(inches) < 1 / 32 or abs(inches - round(inches)) <= 1 / 128 + 1e-9
            continue
        error = float(match[2] or 0)
        with_error += bool(match[2])
        fraction = read_length(match[1], bare=INCH, name="x") / 25.4
        assert fraction + error == pytest.approx(inches, abs=0.000501)
        assert abs(error) <= 0.008
        assert int(match[1].rpartition("/")[2]) in {2, 4, 8, 16, 32, 64}
    assert with_error > 1000


@pytest.mark.parametrize(
    ("kind", "value", "in_mm", "in_inch"),
    [
        (Kind.LENGTH, 15.875, "15.88 mm", "0.625 in (5/8)"),
        (Kind.ANGLE, 1.5, "1.50°", "1.50°"),
        (Kind.ANGLE, -0.001, "-0.001°", "-0.001°"),
        (Kind.FORCE, 75.0, "75.0 N", "16.9 lbf"),
        (Kind.MOISTURE, 8, "8.0 %", "8.0 %"),
        (Kind.HUMIDITY, 45.0, "45.0 %", "45.0 %"),
        (Kind.TEMPERATURE, 20.0, "20.0 °C", "68.0 °F"),
        (Kind.TEMPERATURE, -160 / 9, "-17.8 °C", "0.0 °F"),
        (Kind.TEMPERATURE, math.nextafter(-160 / 9, 0), "-17.8 °C", "0.0 °F"),
        (Kind.FREQUENCY, 82.407, "82.41 Hz", "82.41 Hz"),
        (Kind.LINEAR_DENSITY, 0.3955, "0.396 g/m", "0.396 g/m"),
        (Kind.PRESSURE, 101.325, "101.3 kPa", "101.3 kPa"),
        (Kind.NUMBER, 0.00263, "0.00263", "0.00263"),
        (Kind.NUMBER, -0.0, "0", "0"),
        (Kind.COUNT, 123456789, "123456789", "123456789"),
        (Kind.FLAG, True, "true", "true"),
        (Kind.CHOICE, "round", "round", "round"),
        (Kind.TEXT, "walnut", "walnut", "walnut"),
        (Kind.PATH, "a/b.dxf", "a/b.dxf", "a/b.dxf"),
        (
            Kind.POINTS,
            [(0.0, 0.0), (254.0, 0.0), (0.0, -25.4)],
            "3 points, 254.00 mm x 25.40 mm",
            "3 points, 10.000 in x 1.000 in",
        ),
    ],
)
def test_every_kind_is_shown(kind: Kind, value: Value, in_mm: str, in_inch: str) -> None:
    """Pounds of force and °F go with inches; the other kinds have one unit."""
    assert show_value(value, kind=kind, units=MM) == in_mm
    assert show_value(value, kind=kind, units=INCH) == in_inch


@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("kind", [k for k in Kind if k.is_measured and k is not Kind.NUMBER])
def test_measured_values_read_back(kind: Kind, units: Units) -> None:
    """The unit shown is one that is understood, whatever unit bare numbers have."""
    text = show_value(37.5, kind=kind, units=units)
    assert read_value(text, kind=kind, bare=INCH, name="x") == pytest.approx(37.5, abs=0.25)


def test_signed_values_are_differences() -> None:
    """Five °C more is nine °F more."""
    assert show_value(5.0, kind=Kind.TEMPERATURE, units=INCH, signed=True) == "+9.0 °F"
    assert show_value(2, kind=Kind.COUNT, units=MM, signed=True) == "+2"
    assert show_value(0.5, kind=Kind.NUMBER, units=MM, signed=True) == "+0.5"


@pytest.mark.parametrize(
    ("kind", "value"),
    [(Kind.LENGTH, "5"), (Kind.LENGTH, [(0.0, 0.0)]), (Kind.TEXT, 5.0), (Kind.POINTS, 1.0)],
)
def test_a_value_of_another_kind_is_an_error_of_the_program(kind: Kind, value: Value) -> None:
    """It is not shown as if nothing were wrong."""
    with pytest.raises(TypeError, match=f"is no {kind.word}"):
        show_value(value, kind=kind, units=MM)


@pytest.mark.parametrize(
    ("value", "kind", "units", "text"),
    [
        (15.875, Kind.LENGTH, Units.MM, "15.875 mm"),
        (17.5, Kind.LENGTH, Units.MM, "17.50 mm"),
        (15.875, Kind.LENGTH, Units.INCH, "0.625 in"),
        (17.4625, Kind.LENGTH, Units.INCH, "0.6875 in"),
        (-0.005, Kind.ANGLE, Units.MM, "-0.005°"),
        (0.5, Kind.ANGLE, Units.INCH, "0.50°"),
        (0.0, Kind.LENGTH, Units.MM, "0.00 mm"),
    ],
)
def test_a_field_shows_one_place_more_where_it_counts(
    value: float, kind: Kind, units: Units, text: str
) -> None:
    assert entry_value(value, kind=kind, units=units) == text
    assert read_value(text, kind=kind, bare=units, name="field") == pytest.approx(value, abs=1e-9)

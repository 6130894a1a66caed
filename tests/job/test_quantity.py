"""Reading lengths and every other kind of value that the designer states."""

from __future__ import annotations

import datetime as dt
import math
import random
import string

import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.quantity import Kind, Units, read_length, read_limits, read_value

MM, INCH = Units.MM, Units.INCH


def read(raw: object, kind: Kind = Kind.LENGTH, bare: Units = MM) -> object:
    return read_value(raw, kind=kind, bare=bare, name="pocket.depth")


def refusal(raw: object, kind: Kind = Kind.LENGTH, bare: Units = MM) -> str:
    with pytest.raises(BadInput) as caught:
        read(raw, kind, bare)
    return str(caught.value)


@pytest.mark.parametrize(
    ("raw", "mm"),
    [
        ("0.625 in", 15.875),
        ("5/8 in", 15.875),
        ("1 3/4 in", 44.45),
        ("1-3/4 in", 44.45),
        ("44.45 mm", 44.45),
        ("4.4 cm", 44.0),
        ("0.02 m", 20.0),
        ("20 µm", 0.02),
        ("20 \u03bcm", 0.02),
        ("1 ft", 304.8),
        ("10 thou", 0.254),
        ('0.625"', 15.875),
        ('5/8"', 15.875),
        ("1 3/4\u2033", 44.45),
        ("1 3/4\u201d", 44.45),
        ("5/8 inch", 15.875),
        ("25.5 Inches", 647.7),
        ("5/8 in.", 15.875),
        ("15 MM", 15.0),
        ("-0.3 mm", -0.3),
        ("\u22120.3 mm", -0.3),
        ("+0.1", 0.1),
        ("- 5/8 in", -15.875),
        ("-1 3/4 in", -44.45),
        (".5", 0.5),
        ("5.", 5.0),
        ("1e1 mm", 10.0),
        ("½ in", 12.7),
        ("1½ in", 38.1),
        ("1 ¼ in", 31.75),
        ("1-¾ in", 44.45),
        ('⅛"', 3.175),
        ("5\u20448 in", 15.875),
        ("  44.45\u00a0mm ", 44.45),
        (15, 15.0),
        (15.875, 15.875),
        ("0.720 in (23/32 +0.001)", 18.288),
        ("-0.625 in (-5/8)", -15.875),
    ],
)
def test_lengths_are_read_as_makers_write_them(raw: object, mm: float) -> None:
    """Each spelling gives exactly the float nearest to the true length."""
    assert read_length(raw, bare=MM, name="x") == mm


@pytest.mark.parametrize(
    ("raw", "mm"), [(1, 25.4), (0.1, 2.54), ("5/8", 15.875), ("½", 12.7), ("10 mm", 10.0)]
)
def test_bare_numbers_are_inches_where_the_job_is_in_inches(raw: object, mm: float) -> None:
    """A unit of its own still wins over the job's unit system."""
    assert read_length(raw, bare=INCH, name="x") == mm


def test_zero_has_no_sign() -> None:
    """Minus zero would print a sign that nobody stated."""
    assert [math.copysign(1, read_length(raw, bare=MM, name="x")) for raw in ("-0", -0.0)] == [1, 1]


def test_fractions_of_an_inch_are_exact() -> None:
    """Every 64th up to 2 in is the float nearest to n·25.4/64, however it is written."""
    for n in range(1, 129):
        whole, part = divmod(n, 64)
        mixed = f"{whole} {part}/64 in" if whole else f"{part}/64 in"
        assert read(mixed) == read(f"{n}/64 in") == read(n / 64, bare=INCH) == n * 254 / 640


def test_a_decimal_is_read_alike_with_and_without_quotes() -> None:
    """A TOML float means the decimal that was written, not the binary number beside it."""
    for thousandths in range(1, 3000):
        decimal = thousandths / 1000
        assert read(decimal, bare=INCH) == read(f"{decimal!r} in") == thousandths * 254 / 10000


@pytest.mark.parametrize(
    ("raw", "sentence"),
    [
        ("15,875 mm", 'pocket.depth: "15,875 mm" has a decimal comma; write 15.875 mm.'),
        ("15,8 in.", 'pocket.depth: "15,8 in." has a decimal comma; write 15.8 in.'),
        (",5", 'pocket.depth: ",5" has a decimal comma; write .5.'),
        (
            "15 deg",
            (
                'pocket.depth: "15 deg" is in deg, a unit of angle; '
                "write a length such as 15.875 mm or 5/8 in."
            ),
        ),
        (True, "pocket.depth: true is no length; write a length such as 15.875 mm or 5/8 in."),
        ("１５ mm", 'pocket.depth: "１５ mm" has digits other than the plain 0 to 9; write 15 mm.'),
    ],
)
def test_refusals_in_full(raw: object, sentence: str) -> None:
    """The sentence names parameter, value and fault, and ends with what to do."""
    assert refusal(raw) == sentence


@pytest.mark.parametrize(
    ("raw", "part"),
    [
        ("1,234,567", "decimal comma"),
        ("1,3/4 in", "decimal comma"),
        ("8 %", "is in %, a unit of moisture"),
        ("20 °C", "a unit of temperature"),
        ("15 mn", "(nearest known unit: mm)"),
        ("15 furlongs", 'unknown unit "furlongs"'),
        ("5/0 in", "divides by zero"),
        ("1 5/4 in", "not below 1"),
        ("", "is empty"),
        ("   ", "is empty"),
        ("deep", "does not start with a number"),
        ("mm 15", "does not start with a number"),
        ("<0.001 mm", "does not start with a number"),
        ("1 000 mm", "not one number and one unit"),
        ("1 ft 2 in", "not one number and one unit"),
        ("1.5/2 in", "not one number and one unit"),
        ("10-20 mm", "not one number and one unit"),
        ("1..2", "not one number and one unit"),
        ("1_000", "unit"),
        ("1²", "digits other than"),
        ("٣ mm", "write 3 mm"),
        ("⅟8 in", "digits other than"),
        ("1e999 mm", "too large"),
        ("1e-999 mm", "too small"),
        ("1e9999999", "exponent"),
        ("9" * 65, "65 characters"),
        ("0.72 in (3/4)", "differs"),
        ("18 mm (3/4)", "brackets"),
        ("0.625 in (5/8 mm)", "brackets"),
        ("0.625 in (a guess)", "does not start with a number"),
        (10**400, "about 401 digits is too large"),
        (float("nan"), "not a finite number"),
        (float("-inf"), "not a finite number"),
        (1e308, "too large"),
        (None, "nothing is no length"),
        ([], "a list is no length"),
        ({}, "a table is no length"),
        (dt.date(2020, 1, 1), "a date or time is no length"),
        (b"5", "neither number nor text"),
        (5j, "neither number nor text"),
    ],
)
def test_unreadable_lengths_are_refused(raw: object, part: str) -> None:
    """What is no single length is refused for its own reason, in inches too."""
    assert part in refusal(raw, bare=INCH)


def test_a_long_text_is_shown_shortened() -> None:
    """A message stays one readable line whatever was pasted into the job."""
    sentence = refusal("7" * 5000)
    assert "7…" in sentence
    assert "has 5000 characters" in sentence
    assert len(sentence) < 220


@pytest.mark.parametrize(
    ("kind", "raw", "value"),
    [
        (Kind.ANGLE, 1.5, 1.5),
        (Kind.ANGLE, "1.5 deg", 1.5),
        (Kind.ANGLE, "1 1/2°", 1.5),
        (Kind.ANGLE, "1°30'", 1.5),
        (Kind.ANGLE, "1° 30\u2032 36\u2033", 1.51),
        (Kind.ANGLE, "-0°30'", -0.5),
        (Kind.ANGLE, "1 rad", math.degrees(1)),
        (Kind.FORCE, 75, 75.0),
        (Kind.FORCE, "1 lbf", 4.4482216152605),
        (Kind.FORCE, "1 kgf", 9.80665),
        (Kind.TEMPERATURE, "68 °F", 20.0),
        (Kind.TEMPERATURE, "-40 F", -40.0),
        (Kind.TEMPERATURE, "20℃", 20.0),
        (Kind.TEMPERATURE, "273.15 K", 0.0),
        (Kind.MOISTURE, "8 %", 8.0),
        (Kind.HUMIDITY, 45, 45.0),
        (Kind.FREQUENCY, "82.41 Hz", 82.41),
        (Kind.LINEAR_DENSITY, "1 g / cm", 100.0),
        (Kind.LINEAR_DENSITY, "1 lb/in", 453.59237 / 0.0254),
        (Kind.PRESSURE, "1 MPa", 1000.0),
        (Kind.NUMBER, "1/4", 0.25),
        (Kind.COUNT, 21, 21),
        (Kind.COUNT, 21.0, 21),
        (Kind.COUNT, "21", 21),
        (Kind.FLAG, True, True),
        (Kind.FLAG, "false", False),
        (Kind.CHOICE, " round ", "round"),
        (Kind.TEXT, "", ""),
        (Kind.TEXT, "Nußbaum ½", "Nußbaum ½"),
        (Kind.PATH, "outlines/body.dxf", "outlines/body.dxf"),
        (Kind.POINTS, [[0, 0], ["1 in", 2], (3, "-4 mm")], [(0, 0), (25.4, 2), (3, -4)]),
    ],
)
def test_every_kind_is_read(kind: Kind, raw: object, value: object) -> None:
    """Values arrive in the unit used inside, and with its type."""
    got = read(raw, kind)
    assert got == (pytest.approx(value, rel=1e-15) if isinstance(value, float) else value)
    assert type(got) is type(value)


def test_pound_per_square_inch() -> None:
    """One psi is 6.894757 kPa (NIST SP 811, appendix B.8; from memory)."""
    assert read("1 psi", Kind.PRESSURE) == pytest.approx(6.894757, abs=5e-7)


@pytest.mark.parametrize("kind", [kind for kind in Kind if kind.is_measured])
def test_bare_inches_concern_lengths_only(kind: Kind) -> None:
    """A bare number of any other kind is in the unit used inside, in both unit systems."""
    assert (read(2, kind, INCH) == read(2, kind, MM)) is (kind is not Kind.LENGTH)


@pytest.mark.parametrize(
    ("kind", "raw", "part"),
    [
        (Kind.ANGLE, '5/8"', "a unit of length; write an angle"),
        (Kind.ANGLE, "30'", "unknown unit"),
        (Kind.ANGLE, "1°60'", "60 and more"),
        (Kind.ANGLE, "1°30", "not one number"),
        (Kind.ANGLE, "1°30.5'10\"", "part of a minute"),
        (Kind.ANGLE, "1,5°", "write 1.5°."),
        (Kind.FORCE, "75 n", "nearest known unit: N"),
        (Kind.TEMPERATURE, "20 deg", "a unit of angle"),
        (Kind.PRESSURE, "1 mPa", "nearest known unit: MPa"),
        (Kind.NUMBER, "5 mm", "a unit of length"),
        (Kind.NUMBER, "5 x", "takes no unit"),
        (Kind.COUNT, 21.5, "21.5 is not whole"),
        (Kind.COUNT, "43/2", "is not whole"),
        (Kind.COUNT, "21 mm", "counts things"),
        (Kind.COUNT, True, "true is no whole number"),
        (Kind.COUNT, 10**400, "too large"),
        (Kind.COUNT, float("inf"), "not a finite number"),
        (Kind.FLAG, 1, "1 is neither true nor false; write true or false."),
        (Kind.FLAG, "yes", "write true or false."),
        (Kind.CHOICE, " ", "is empty"),
        (Kind.CHOICE, 3, "3 is no choice"),
        (Kind.TEXT, "x" * 201, "write at most 200."),
        (Kind.TEXT, "a\nb", '"a\\u000ab" has a line break'),
        (Kind.TEXT, "a\x1b[31m", "control character"),
        (Kind.TEXT, "\u202eabc", "reading direction"),
        (Kind.TEXT, "\ud800", "control character"),
        (Kind.PATH, "a\x00b", "control character"),
        (Kind.PATH, 5, "5 is no path"),
        (Kind.POINTS, "x", "is no list of points"),
        (Kind.POINTS, [[0, 0], [1, 1]], "write three points or more"),
        (Kind.POINTS, [[0, 0], [1, 1], [2]], "pocket.depth, point 3: a list is no pair"),
        (Kind.POINTS, [[0, 0], [1, "2,5"], [2, 2]], "point 2, y:"),
    ],
)
def test_every_kind_refuses_what_it_is_not(kind: Kind, raw: object, part: str) -> None:
    """The reason fits the kind."""
    assert part in refusal(raw, kind)


def test_the_longest_text_is_allowed() -> None:
    """The limit of 200 characters is inclusive."""
    assert read("x" * 200, Kind.TEXT) == "x" * 200


_PIECES = [
    *string.printable,
    *"½⅟５²°′″’”µ−±⁄\u00a0\u202e\x00\ud800",
    "in",
    "mm",
    "deg",
    "1/2",
    "15",
]


def _random_raw(rng: random.Random, depth: int = 0) -> object:
    text = "".join(rng.choices(_PIECES, k=rng.randrange(12)))
    simple = [
        text,
        rng.gauss(0, 1e3),
        rng.randrange(-(10**6), 10**6),
        10**5000,
        None,
        True,
        b"",
        {},
    ]
    simple += [math.nan, math.inf, 5e-324, 1.7e308, object(), dt.time(), text * 30]
    if depth < 3 and rng.random() < 0.2:
        return [_random_raw(rng, depth + 1) for _ in range(rng.randrange(5))]
    return rng.choice([text, text, *simple])


@pytest.mark.parametrize("kind", Kind)
def test_any_raw_object_is_read_or_refused_in_one_sentence(kind: Kind) -> None:
    """Neither a traceback nor an unprintable or endless message comes of any input."""
    rng = random.Random(kind.value)
    refused = 0
    for _ in range(1000):
        raw, bare = _random_raw(rng), rng.choice([MM, INCH])
        for reader in (read_value, read_limits):
            try:
                value = reader(raw, kind=kind, bare=bare, name="a.b")
            except BadInput as error:
                refused += 1
                sentence = str(error)
                assert sentence.startswith("a.b")
                assert sentence.endswith(".")
                assert sentence.isprintable()
                assert len(sentence) < 300
            else:
                numbers = value if isinstance(value, tuple) else (value,)
                assert all(math.isfinite(n) for n in numbers if isinstance(n, float))
    assert refused > 500

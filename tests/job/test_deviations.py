"""Reading limit deviations, and refusing those that read two ways."""

from __future__ import annotations

import pytest

from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.quantity import Kind, Units, read_limits

MM, INCH = Units.MM, Units.INCH


@pytest.mark.parametrize(
    ("raw", "limits"),
    [
        ("±0.1 mm", (-0.1, 0.1)),
        ("± 1/64 in", (-0.396875, 0.396875)),
        ("+-0.1", (-0.1, 0.1)),
        ("+/- 0.1", (-0.1, 0.1)),
        ("+0.2/-0.1 mm", (-0.1, 0.2)),
        ("-0.1/+0.2 mm", (-0.1, 0.2)),
        ("+0.2 mm / \u22120.1 mm", (-0.1, 0.2)),
        ("+0.2 -0", (0.0, 0.2)),
        ("+0.2/0 mm", (0.0, 0.2)),
        ("0/-0.1", (-0.1, 0.0)),
        ("+ 0.2 / - 0.1", (-0.1, 0.2)),
        ("+0.3 +0.1", (0.1, 0.3)),
        ("+1/64/-1/128 in", (-0.1984375, 0.396875)),
        ([-0.1, 0.2], (-0.1, 0.2)),
        ([0.2, -0.1], (-0.1, 0.2)),
        (["-0.1 mm", "0.01 in"], (-0.1, 0.254)),
        (0.1, (-0.1, 0.1)),
        (0, (0.0, 0.0)),
        ("0.1", (-0.1, 0.1)),
    ],
)
def test_limit_deviations_are_read(raw: object, limits: tuple[float, float]) -> None:
    """The lower deviation comes first, in whatever order they were written."""
    assert read_limits(raw, kind=Kind.LENGTH, bare=MM, name="x") == limits


@pytest.mark.parametrize("raw", ["+0.2 mm -0.1", "+0.2 / -0.1 mm", ["0.2 mm", -0.1]])
def test_a_unit_written_once_holds_for_both_deviations(raw: object) -> None:
    """In an inch job, half of a pair in millimetres must not be taken as inches."""
    assert read_limits(raw, kind=Kind.LENGTH, bare=INCH, name="x") == (-0.1, 0.2)


def test_deviations_are_differences() -> None:
    """A deviation of nine °F is five °C: the zero point of the scale plays no part."""
    limits = read_limits("±9 °F", kind=Kind.TEMPERATURE, bare=INCH, name="x")
    assert limits == (-5.0, 5.0)
    assert read_limits("±0°30'", kind=Kind.ANGLE, bare=MM, name="x") == (-0.5, 0.5)


@pytest.mark.parametrize(
    ("raw", "part"),
    [
        (-0.1, "is negative"),
        ("+0.2", "only one of two"),
        ("-0.2 mm", "only one of two"),
        ("0.2 -0.1", "without its sign"),
        ("±-0.1", "second sign"),
        ("+1-3/4", "hyphen"),
        ("+0.2-0.1", "hyphen"),
        ("+0.2 -0.1 -0.3", "more than two"),
        ("+0,2/-0,1 mm", "decimal comma; use a decimal point and write limit deviations"),
        ("±0.1 deg", "a unit of angle"),
        ("", "is empty"),
        ("±", "is empty"),
        ("h7", "does not start with a number"),
        ([0.1], "of 1 entries"),
        ([True, 1], "gives no limit deviations"),
        ([[1], 2], "gives no limit deviations"),
        ([float("nan"), 0.1], "not a finite number"),
        (None, "gives no limit deviations"),
        (True, "gives no limit deviations"),
        (float("inf"), "not a finite number"),
        (10**400, "too large"),
    ],
)
def test_doubtful_limit_deviations_are_refused(raw: object, part: str) -> None:
    """Nothing that reads two ways is guessed at."""
    with pytest.raises(BadInput) as caught:
        read_limits(raw, kind=Kind.LENGTH, bare=MM, name="x")
    assert part in str(caught.value)
    assert str(caught.value).endswith(" such as ±0.1 mm or +0.2/-0.1 mm.")


def test_kinds_without_limit_deviations() -> None:
    """A yes-or-no value cannot deviate."""
    with pytest.raises(BadInput, match=r"which a yes-or-no value does not have; leave it out\."):
        read_limits(0.1, kind=Kind.FLAG, bare=MM, name="x")

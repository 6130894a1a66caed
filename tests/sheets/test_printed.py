import pytest

from freecad_neckfit.job.quantity import Kind, Units
from freecad_neckfit.sheets.dimension import Dimension, read_printed


@pytest.mark.parametrize(
    ("what", "units", "text"),
    [
        (dict(value=56.2, limits=(-0.1, 0.1)), Units.MM, "56.20 ±0.10"),
        (dict(value=15.875, limits=(-0.1, 0.1)), Units.MM, "15.875 ±0.10"),
        (dict(value=15.875), Units.INCH, "0.6250"),
        (dict(value=18.288, limits=(-0.1, 0.1)), Units.INCH, "0.7200 ±0.0039"),
        (dict(value=2.286, limits=(-0.1016, 0.1016)), Units.MM, "2.286 ±0.101"),
        (dict(value=0.1, limits=(0.0, 0.1)), Units.MM, "0.10 +0.10/0.00"),
        (dict(value=10.0, limits=(-0.3, -0.1)), Units.MM, "10.00 -0.10/-0.30"),
        (dict(value=3.2, prefix="R", count=2), Units.MM, "2× R3.20"),
        (dict(value=10.845, reference=True), Units.MM, "(10.85)"),
        (dict(value=0.564, accept=(0.15, 0.8)), Units.MM, "0.56 [0.15 to 0.80]"),
        (dict(value=0.564, accept=(0.15, None)), Units.MM, "0.56 [at least 0.15]"),
        (dict(value=1.5, kind=Kind.ANGLE, limits=(-0.1, 0.1)), Units.INCH, "1.50° ±0.10°"),
        (dict(value=-2.2, accept=(0.15, 0.8)), Units.MM, "-2.20 [0.15 to 0.80]"),
        (dict(value=0.564, accept=(0.15, 0.8)), Units.INCH, "0.0222 [0.0060 to 0.0314]"),
        (dict(value=15.5, limits=(-0.05, 0.15)), Units.INCH, "0.6102 +0.0059/-0.0019"),
        (dict(value=1.0, accept=(0.1501, 0.1502)), Units.MM, "1.00 [0.15 to 0.15]"),
        (dict(value=-1e-12), Units.MM, "0.00"),
    ],
)
def test_a_dimension_is_printed_and_read_again(what, units, text):
    dimension = Dimension(key="k", **what)
    assert dimension.text(units) == text
    printed = read_printed(text, units)
    assert abs(printed.value - dimension.value) <= printed.step / 2 + 1e-9
    if dimension.limits is not None:
        assert printed.limits == pytest.approx(dimension.limits, abs=0.0026)


def test_words_are_no_dimension():
    assert read_printed("Plan of the pocket", Units.MM) is None

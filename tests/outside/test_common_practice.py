"""What the trade holds to be so: common practice, no source. "About" is ± 0.5 mm."""

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import overhang_binding_gap, overhang_gap, pickup_low, saddle_low
from freecad_neckfit.fit.verdict import margin

USUAL, DEEPER = 15.875, 18.288
"""Depths of the usual pocket (5/8 in) and the deeper one (0.720 in): common practice, no source."""
PLATE = {"plate.cover": "surround", "plate.thickness": 2.4}
"""A cover plate of about 0.1 in: common practice, no source."""
ABOUT = 0.5


def gap(**stated):
    return overhang_gap.CHECK.read(Case({k.replace("__", "."): v for k, v in stated.items()}))


def test_usual_depth_without_plate_leaves_about_one_plate():
    assert gap(pocket__depth=USUAL).value == pytest.approx(2.4, abs=ABOUT)


def test_usual_depth_with_plate_leaves_about_none():
    assert gap(pocket__depth=USUAL, **PLATE).value == pytest.approx(0.0, abs=ABOUT)


def test_deeper_pocket_without_plate_leaves_about_none():
    assert gap(pocket__depth=DEEPER).value == pytest.approx(0.0, abs=ABOUT)


def test_deeper_pocket_with_plate_interferes_by_about_one_plate():
    case = Case({"pocket.depth": DEEPER} | PLATE)
    value = overhang_gap.CHECK.read(case).value
    assert value == pytest.approx(-2.4, abs=ABOUT)
    assert margin(overhang_gap.CHECK, case, value=value) < 0


@pytest.mark.parametrize("thickness", [2.286, 2.4, 2.54])
def test_the_same_with_any_usual_plate(thickness):
    plate = PLATE | {"plate.thickness": thickness}
    assert gap(pocket__depth=USUAL, **plate).value == pytest.approx(0.0, abs=ABOUT)
    assert gap(pocket__depth=DEEPER, **plate).value == pytest.approx(-thickness, abs=ABOUT)


def test_a_fretboard_that_ends_at_the_heel_interferes_at_no_depth():
    depths = np.linspace(3.0, 40.0, 371)
    reading = overhang_gap.CHECK.read(Case({"neck.overhang": 0.0, "pocket.depth": depths} | PLATE))
    assert not np.any(reading.applies)


def test_a_hanging_binding_makes_the_deeper_pocket_unacceptable():
    bound = {"neck.binding_width": 1.5, "neck.binding": 1.0}
    for depth, fits in ((USUAL, True), (DEEPER, False)):
        case = Case(bound | {"pocket.depth": depth})
        value = overhang_binding_gap.CHECK.read(case).value
        assert (margin(overhang_binding_gap.CHECK, case, value=value) >= 0) == fits


def test_deepening_lowers_strings_and_so_bridge_and_pickups_by_as_much():
    for check in (saddle_low.CHECK, pickup_low.CHECKS[0]):
        usual, deep = (
            check.read(Case({"pocket.depth": d, "pickup_neck.fitted": True})).value
            for d in (USUAL, DEEPER)
        )
        # Room to lower saddle and pickup shrinks with the strings' height.
        assert usual - deep == pytest.approx(DEEPER - USUAL, abs=1e-6)

"""Wood: published coefficients, worked examples and strengths."""

import csv
from pathlib import Path

import numpy as np
import pytest

from freecad_neckfit.fit.seasons import across_width, equilibrium_moisture
from freecad_neckfit.fit.withdrawal import (
    lag_screw_allowable,
    lag_screw_withdrawal,
    wood_screw_withdrawal,
)
from freecad_neckfit.job.woods import wood, woods

# Wood Handbook, USDA Forest Products Laboratory GTR-282 (2021), Table 13-5: C_R, C_T.
TABLE_13_5 = {
    "sugar maple": (0.00165, 0.00353),
    "red maple": (0.00137, 0.00289),
    "bigleaf maple": (0.00126, 0.00248),
    "red alder": (0.00151, 0.00256),
    "white ash": (0.00169, 0.00274),
    "black ash": (0.00172, 0.00274),
    "basswood": (0.00230, 0.00330),
    "black walnut": (0.00190, 0.00274),
    "black cherry": (0.00126, 0.00248),
    "eastern white pine": (0.00071, 0.00212),
    "mahogany": (0.00172, 0.00238),
}


@pytest.mark.parametrize("name", TABLE_13_5)
def test_coefficients_of_change(name):
    found = wood(name, key="wood.body")
    assert (found.radial, found.tangential) == TABLE_13_5[name]


def test_worked_example_of_a_flatsawn_walnut_panel():
    # 800 mm of flatsawn black walnut over 4 points of moisture: 8.77 mm (printed as 8.8;
    # Wood Handbook, chapter 13).
    walnut = wood("black walnut", key="wood.body")
    assert 800 * across_width(kind=walnut, ring=90.0) * 4 == pytest.approx(8.77, abs=0.005)


# Total shrinkage in per cent, radial and tangential (Wood Handbook, table 4-3).
@pytest.mark.parametrize(
    ("name", "shrinkage"), [("sugar maple", (4.8, 9.9)), ("red alder", (4.4, 7.3))]
)
def test_coefficients_follow_from_total_shrinkage(name, shrinkage):
    # Wood Handbook, chapter 13: C = (S/100) / (30 - 20·S/100) = S/(3000 - 20·S).
    found = wood(name, key="wood.body")
    for c, s in zip((found.radial, found.tangential), shrinkage, strict=True):
        assert c == pytest.approx(s / (3000 - 20 * s), abs=5.1e-6)


@pytest.mark.parametrize(
    ("humidity", "moisture"), [(30, 6.19), (40, 7.72), (50, 9.27), (65, 12.00), (80, 16.04)]
)
def test_equilibrium_moisture(humidity, moisture):
    # FPL-RN-0268 (Simpson 1998) at 20 °C, worked out from its formula.
    found = equilibrium_moisture(temperature=20.0, humidity=humidity)
    assert found == pytest.approx(moisture, abs=0.005)


@pytest.mark.parametrize(("name", "force"), [("sugar maple", 4546), ("red alder", 1925)])
def test_withdrawal_of_a_number_8_wood_screw(name, force):
    # Wood Handbook, chapter 8: 108.25·G²·D·L N; No. 8 (ASME B18.6.1: 4.1656 mm), 25.4 mm deep.
    gravity = wood(name, key="wood.neck").specific_gravity
    found = wood_screw_withdrawal(gravity=gravity, diameter=4.1656, grip=25.4)
    assert found == pytest.approx(force, abs=0.6)


def test_metric_and_inch_withdrawal_agree():
    # The same chapter in lb and in: 15 700·G²·D·L for wood screws, 8 100·G^1.5·D^0.75·L for lags.
    pound = 4.4482216
    screw = wood_screw_withdrawal(gravity=0.5, diameter=25.4, grip=25.4)
    assert screw == pytest.approx(15700 * 0.25 * pound, rel=0.002)
    lag = lag_screw_withdrawal(gravity=0.5, diameter=25.4, grip=25.4)
    assert lag == pytest.approx(8100 * 0.5**1.5 * pound, rel=0.002)


@pytest.mark.parametrize(
    ("gravity", "diameter", "pounds"),
    [(0.73, 1 / 4, 397), (0.67, 1 / 4, 349), (0.55, 1 / 4, 260), (0.50, 3 / 8, 305),
     (0.50, 1 / 2, 378), (0.42, 1 / 4, 173)],
)  # fmt: skip
def test_allowable_withdrawal_of_lag_screws(gravity, diameter, pounds):
    # National Design Specification for Wood Construction, table of lag screw withdrawal.
    found = lag_screw_allowable(gravity=gravity, diameter_in=diameter)
    assert found == pytest.approx(pounds, abs=0.75)


# Wood Handbook, table 5-3b (side compression in psi), as far as published with the woods here.
@pytest.mark.parametrize(
    ("name", "psi"),
    [("red alder", 440), ("white ash", 1160), ("basswood", 370), ("black cherry", 690),
     ("bigleaf maple", 750)],
)  # fmt: skip
def test_side_compression(name, psi):
    found = wood(name, key="wood.neck").side_compression
    assert found == pytest.approx(psi * 6.894757, rel=0.005)


def test_every_row_of_every_table_names_its_source(checkout):
    tables = sorted(Path(checkout, "freecad_neckfit", "data").glob("*.csv"))
    assert len(tables) >= 4
    for table in tables:
        with table.open(encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                assert len(row["source"]) > 5, table.name


def test_what_no_source_says_is_empty():
    assert np.isnan(woods()["mahogany"].specific_gravity)
    assert np.isnan(woods()["red maple"].side_compression)

"""Side clearance and gap through the owner's year."""

import numpy as np
import pytest

from freecad_neckfit.fit.case import Case
from freecad_neckfit.fit.checks import overhang_gap, seasons_gap, seasons_side, side_treble
from freecad_neckfit.fit.seasons import (
    across_thickness,
    across_width,
    equilibrium_moisture,
)
from freecad_neckfit.job.errors import BadInput
from freecad_neckfit.job.woods import wood, woods

MAPLE = wood("sugar maple", key="wood.neck")


def read(module, stated):
    return module.CHECK.read(Case(stated))


def test_rings_turn_the_coefficient_from_radial_to_tangential():
    assert across_width(kind=MAPLE, ring=0.0) == pytest.approx(0.00165)
    assert across_width(kind=MAPLE, ring=90.0) == pytest.approx(0.00353)
    assert across_width(kind=MAPLE, ring=45.0) == pytest.approx((0.00165 + 0.00353) / 2)
    assert across_width(kind=MAPLE, ring=30.0) == pytest.approx(0.75 * 0.00165 + 0.25 * 0.00353)
    assert across_thickness(kind=MAPLE, ring=0.0) == pytest.approx(0.00353)
    assert across_thickness(kind=MAPLE, ring=90.0) == pytest.approx(0.00165)


def moistures(stated):
    case = Case(stated)
    return tuple(
        float(equilibrium_moisture(temperature=case["climate.temperature"],
                                   humidity=case[f"climate.humidity_{month}"]))
        for month in ("dry", "damp")
    )  # fmt: skip


def test_side_clearance_by_hand():
    stated = {"wood.body_ring": 0.0, "wood.neck_ring": 90.0, "wood.moisture_cut": 8.0}
    reading = read(seasons_side, stated)
    now = read(side_treble, stated).value
    for name, m in zip(("driest", "dampest"), moistures(stated), strict=True):
        # Alder quartersawn .00151 on 56.2, maple flatsawn .00353 on 56; half for each side.
        change = (56.2 * 0.00151 - 56.0 * 0.00353) * (m - 8.0) / 2
        assert reading.detail[f"in the {name} month"] == pytest.approx(now + change)
    damp = now + (56.2 * 0.00151 - 56.0 * 0.00353) * (moistures(stated)[1] - 8.0) / 2
    assert damp < now
    assert reading.value == pytest.approx(damp)


def test_a_heel_may_close_up_in_a_season_but_not_jam():
    assert seasons_side.CHECK.low == 0.0


def test_gap_by_hand():
    stated = {"wood.body_ring": 90.0, "wood.neck_ring": 0.0, "wood.moisture_cut": 9.0}
    reading = read(seasons_gap, stated)
    now = read(overhang_gap, stated).value
    for name, m in zip(("driest", "dampest"), moistures(stated), strict=True):
        # Along the thickness rings lie the other way round: maple .00353, alder .00151.
        change = (18.6 * 0.00353 - 15.875 * 0.00151) * (m - 9.0)
        assert reading.detail[f"in the {name} month"] == pytest.approx(now + change)


def test_the_worse_month_is_the_one_nearer_to_a_limit():
    tight = {"pocket.width_end": 56.2, "pocket.width_mouth": 55.7}
    assert (
        read(seasons_side, tight).value == read(seasons_side, tight).detail["in the dampest month"]
    )
    loose = {"pocket.width_end": 56.5, "pocket.width_mouth": 56.0}
    assert (
        read(seasons_side, loose).value == read(seasons_side, loose).detail["in the driest month"]
    )


@pytest.mark.parametrize(
    ("stated", "known"),
    [
        ({}, True),
        ({"climate.humidity_dry": 20.0}, False),
        ({"climate.humidity_damp": 75.0}, False),
        ({"wood.moisture_cut": 5.0}, False),
        ({"wood.moisture_cut": 14.0}, True),
    ],
)
def test_outside_6_to_14_per_cent_could_not_be_checked(stated, known):
    for module in (seasons_side, seasons_gap):
        reading = read(module, stated)
        assert bool(reading.known) == known
        assert "6 … 14 %" in reading.unknown_because


def test_no_overhang_has_no_gap_in_any_season():
    assert not read(seasons_gap, {"neck.overhang": 0.0}).applies


def test_an_unknown_wood_is_refused_with_the_nearest():
    with pytest.raises(BadInput, match=r"wood\.neck.*sugar maple"):
        read(seasons_side, {"wood.neck": "suger maple"})
    with pytest.raises(BadInput, match="known: sugar maple"):
        wood("granite", key="wood.body")
    assert wood(" Sugar Maple", key="wood.body") is MAPLE


def test_every_wood_says_where_its_figures_stand():
    for kind in woods().values():
        assert "Wood Handbook" in kind.source or "from memory" in kind.source, kind.name
        assert 0 < kind.radial < kind.tangential < 0.01
        assert np.isnan(kind.specific_gravity) or 0.3 < kind.specific_gravity < 1.2

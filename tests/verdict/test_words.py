"""A kept finding's mending in the units of whoever reads it."""

import pytest

from freecad_neckfit.job.quantity import Units
from freecad_neckfit.run.chain import check_values
from freecad_neckfit.run.record import finding_record
from freecad_neckfit.run.words import mending_in


def records(stated, units):
    found = check_values(stated, name="joint", units=units, solids=False).findings
    return {f.id: finding_record(f) for f in found}


@pytest.mark.parametrize("depth", [12.0, 14.0, 16.0, 18.3])
def test_words_kept_in_one_unit_read_as_if_found_in_the_other(depth):
    stated = {"pocket.depth": depth, "plate.cover": "surround"}
    kept, inch = records(stated, Units.MM), records(stated, Units.INCH)
    unmet = [name for name, record in kept.items() if record["mending"]]
    assert unmet
    for name in unmet:
        assert mending_in(kept[name], Units.INCH) == inch[name]["mending"]
        assert mending_in(inch[name], Units.MM) == kept[name]["mending"]


def test_a_finding_that_this_version_does_not_know_keeps_its_words():
    kept = {"id": "neck.of_tomorrow", "mending": "Wait 3.00 mm.", "value": 1.0, "high": None}
    assert mending_in(kept | {"margin": -1.0}, Units.INCH) == "Wait 3.00 mm."


def test_what_a_bare_number_misses_is_told_to_the_hundredth():
    from types import SimpleNamespace

    from freecad_neckfit.job.quantity import Kind
    from freecad_neckfit.run.finding import State
    from freecad_neckfit.run.table import complaint

    finding = SimpleNamespace(margin=-2.01877, unit=Kind.NUMBER, state=State.TOO_LITTLE)
    assert complaint(finding, units=Units.MM) == "too little, 2.02 short"

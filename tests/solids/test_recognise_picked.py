"""Faces picked by hand where recognition finds none, or finds another."""

import sys
from pathlib import Path

import numpy as np
import pytest

sys.path.insert(0, str(Path(__file__).parent))

from necks_in_files import unpacked

pytestmark = pytest.mark.freecad


@pytest.fixture(scope="module")
def leaning(tmp_path_factory):
    """A neck with leaning heel sides, its patches, and what it was before."""
    from drafted_neck import drafted

    from freecad_neckfit.features.neck_import import patches_of
    from freecad_neckfit.run.neck_file import read_neck_file

    folder = tmp_path_factory.mktemp("leaning")
    before = drafted(unpacked("bound.step.xz", folder), folder / "leaning.step")
    part = read_neck_file(folder / "leaning.step")
    return part, patches_of(part), before.found


def sides_of(p):
    leans = (np.abs(p.normal[:, 1]) > 0.99) & (np.abs(p.normal[:, 2]) > 0.02)
    found = np.flatnonzero(leans & (p.area > 800) & (p.low[:, 2] < 1.0))
    return [int(i) for i in found if abs(p.normal[i, 0]) < 0.05]


def test_an_item_that_is_not_found_is_asked_for_by_name(leaning):
    from freecad_neckfit.solids.recognise.neck import PickWanted, recognise_neck

    part, p, _ = leaning
    with pytest.raises(PickWanted, match="no straight upright side") as wanted:
        recognise_neck(part)
    assert wanted.value.item == "heel sides"
    one, _ = sides_of(p)
    with pytest.raises(PickWanted) as wanted:
        recognise_neck(part, picks={"heel sides": [one]})
    assert wanted.value.item == "heel sides"


def test_picked_sides_are_read_with_their_lean_as_doubt(leaning):
    from drafted_neck import HIGH, LOW

    from freecad_neckfit.solids.recognise.neck import Confidence, recognise_neck

    part, p, before = leaning
    found = recognise_neck(part, picks={"heel sides": sides_of(p)})
    told = {d.key: d for d in found.dimensions}
    for key in ("neck.heel_width_end", "neck.heel_width_mouth"):
        off = before[key] - told[key].value
        assert 2 * HIGH < off < 2 * LOW, key
        assert told[key].residual > 0.2
        assert told[key].confidence is Confidence.DOUBTFUL
    # All else is as it was.
    for key in ("neck.height", "neck.overhang", "neck.underside", "neck.scale", "neck.heel_length"):
        assert told[key].value == pytest.approx(before[key], abs=0.001), key


def test_a_piece_of_the_top_between_frets_stands_for_all(tmp_path):
    from freecad_neckfit.features.neck_import import patches_of
    from freecad_neckfit.run.neck_file import read_neck_file
    from freecad_neckfit.solids.recognise.neck import recognise_neck
    from freecad_neckfit.solids.recognise.neck.rough import top_around

    part = read_neck_file(unpacked("many-faces.brep.xz", tmp_path))
    p, before = patches_of(part), recognise_neck(part)
    pieces = before.items["fretboard top"]
    assert len(pieces) > 20
    largest = max(pieces, key=lambda i: p.area[i])
    around = top_around(p, largest)
    assert set(around) <= set(pieces)
    assert len(around) > 20
    picked = recognise_neck(part, picks={"fretboard top": around})
    for key in ("neck.height", "neck.width_end", "neck.width_nut", "neck.scale", "neck.overhang"):
        assert picked[key] == pytest.approx(before[key], abs=0.01), key
    (bottom,) = before.items["heel bottom"]
    assert top_around(p, bottom) == (bottom,)

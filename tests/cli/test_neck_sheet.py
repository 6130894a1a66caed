"""The work sheet: every measure that is declared with a place, once, on one page."""

import re
import xml.etree.ElementTree as ET

import pytest

from freecad_neckfit.cli import main
from freecad_neckfit.job.parameters import ALL
from freecad_neckfit.job.quantity import Units
from freecad_neckfit.sheets.measuring import HIGH, PLACES, WIDE, measured, measuring_sheet

SVG = "{http://www.w3.org/2000/svg}"


def words(page):
    return ["".join(t.itertext()) for t in ET.fromstring(page).iter(f"{SVG}text")]


def test_every_declared_place_is_shown_and_no_other():
    assert set(PLACES) == {p.key for p in ALL.values() if p.where}
    said = words(measuring_sheet(units=Units.MM))
    for number, p in enumerate(measured(), start=1):
        assert said.count(p.key) == 1
        assert said.count(str(number)) == 2  # on its arrow and in the table
        assert p.where[:20] in " ".join(said)


def test_it_fits_one_page():
    root = ET.fromstring(measuring_sheet(units=Units.INCH, stated={"neck.height": 25.0}))
    for text in root.iter(f"{SVG}text"):
        x, y, size = (float(text.get(k)) for k in ("x", "y", "font-size"))
        length = 0.54 * size * len("".join(text.itertext()))
        left = x - length / 2 if text.get("text-anchor") == "middle" else x
        assert left > 20, "".join(text.itertext())
        assert left + length < WIDE - 10, "".join(text.itertext())
        assert y < HIGH - 20
    numbers = [float(n) for p in root.iter(f"{SVG}path") for n in re.findall(r"[\d.]+", p.get("d"))]
    assert max(numbers) < HIGH


def test_arrows_are_told_apart():
    middles = [((a[0] + b[0]) / 2, (a[1] + b[1]) / 2) for a, b in PLACES.values()]
    for i, one in enumerate(middles):
        for other in middles[:i]:
            assert max(abs(one[0] - other[0]), abs(one[1] - other[1])) > 18


def test_the_command_writes_what_a_job_states(tmp_path, capsys, checkout):
    out = tmp_path / "sheet.svg"
    assert main(["neck-sheet", str(out), "--job", str(checkout / "samples" / "joint.toml")]) == 0
    assert any("stated 25.00 mm" in text for text in words(out.read_text()))
    assert str(out) in capsys.readouterr().out


def test_a_folder_that_is_not_there_is_refused(tmp_path, capsys):
    assert main(["neck-sheet", str(tmp_path / "none" / "sheet.svg")]) == 2
    assert capsys.readouterr().err.count("\n") == 1


@pytest.mark.parametrize("units", list(Units))
def test_the_same_page_has_the_same_bytes(units):
    assert measuring_sheet(units=units) == measuring_sheet(units=units)


def test_a_name_of_another_kind_is_refused(tmp_path, capsys):
    assert main(["neck-sheet", str(tmp_path / "sheet.pdf")]) == 2
    assert "sheet.pdf: the sheet is written as SVG" in capsys.readouterr().err
    assert not (tmp_path / "sheet.pdf").exists()

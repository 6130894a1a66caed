"""All that the screen says follows FreeCAD's language at once, and comes back from it."""

import re

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.slow]

GERMAN = r"[äöüßÄÖÜ]|\b(der|die|das|und|nicht|zu|mit|des|im|ist)\b"
UNCHANGED = {
    "X", "Y", "Z", "NeckFit", "Minus", "Plus", "Joint", "RSS", "Apr", "Aug", "Feb", "Jan", "Jul",
    "Jun", "Nov", "Sep", "ISO 2768-c", "ISO 2768-f", "ISO 2768-m",
}  # fmt: skip
"""Words that are the same in both languages, and names."""
FIGURES = re.compile(r"[-+±X< ]*[\d.]+ ?(mm|%|°|N|in)?|\[mm\]")
FREECADS_OWN = re.compile(r"Label \| |Placement \| |Enter an expression")
TABLE = re.compile(r" *[A-Z][a-z]{2}  .*")
"""A line of the table of months: month and figures."""


@pytest.fixture(scope="module")
def told(on_screen):
    return on_screen("language_way")


@pytest.fixture(scope="module")
def windows(on_screen):
    return on_screen("language_windows")


def test_the_compiled_file_holds_what_is_written(told):
    count, other = told["compiled"]
    assert count > 2000
    assert other == []


def test_german_is_spoken_at_once(told):
    german = told["words"][1]
    assert german["menu"] == "&Verbindung prüfen"
    assert "durch Rechnung und an den Volumenkörpern" in german["tip"]
    assert german["toggle"] == "Passen&des zeigen"
    assert german["state"] == "passt nicht"
    assert german["sentence"] == "Die Löcher im Korpus um 0.2 mm weiter bohren."
    assert german["refusal"] == (
        'joint.toml: pocket.depth: "15" hat ein Dezimalkomma; 15.5 schreiben.'
    )


def test_english_is_back_at_once(told):
    before, _, after = told["words"]
    assert before["menu"] == "&Check the joint"
    assert after == before


def test_labels_in_the_3d_view_are_told_anew(told):
    before, german, after = told["labels"]
    assert before[0] == "DOES NOT FIT"
    assert german[0] == "PASST NICHT"
    assert left(before, german) == []
    assert any(line.startswith("X stößt an um ") for line in german)
    assert "Luft unter dem Überstand" in german
    assert "veraltet" in german
    assert "gewünscht: 0.15 bis 0.80 mm" in german
    assert after == before


def test_the_property_editor_speaks_along(told):
    before, german, after = told["editor"]
    depth = next(text for text in german if "Name: Depth\n" in text)
    assert depth.startswith("Taschentiefe | ")
    assert "Tiefe der Tasche im rohen Holz, an der Stirnwand" in depth
    assert left(before, german) == []
    assert after == before


@pytest.mark.parametrize("place", ["fit", "adopt", "import", "preferences"])
def test_an_open_panel_follows(told, place):
    before, german, after = told[place]
    assert left(before, german) == []
    assert sum(bool(re.search(GERMAN, text)) for text in german) > 3
    assert after == before


@pytest.mark.parametrize("place", ["compare", "window", "mend", "options", "tolerances", "seasons"])
def test_an_open_window_follows(windows, place):
    before, german, after = windows[place]
    assert left(before, german) == []
    assert sum(bool(re.search(GERMAN, text)) for text in german) > 3
    assert after == before


def left(before, german):
    """Texts that stayed as they were, though they hold words."""
    return [
        text
        for text in dict.fromkeys(german)
        if text in set(before)
        and text not in UNCHANGED
        and not FIGURES.fullmatch(text)
        and not TABLE.fullmatch(text)
        and not FREECADS_OWN.match(text)
    ]

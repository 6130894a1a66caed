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
FIGURES = re.compile(r"[-+±X< ]*[\d.,]+ ?(mm|%|°|N|in)?|\[mm\]")
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
    assert german["sentence"] == "Die Löcher im Korpus um 0,2 mm weiter bohren."
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
    assert "gewünscht: 0,15 bis 0,80 mm" in german
    assert after == before


def test_the_property_editor_speaks_along(told):
    before, german, after = told["editor"]
    depth = next(text for text in german if "Name: Depth\n" in text)
    assert depth.startswith("Taschentiefe | ")
    assert "Tiefe der Tasche im rohen Holz, an der Stirnwand" in depth
    assert "3,00 mm bis 60,00 mm" in depth
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


@pytest.mark.parametrize("place", ["labels", "fit", "adopt", "import", "preferences"])
def test_figures_in_a_panel_have_a_decimal_comma(told, place):
    assert with_points(told[place][1]) == []


@pytest.mark.parametrize("place", ["compare", "window", "mend", "options", "tolerances", "seasons"])
def test_figures_in_a_window_have_a_decimal_comma(windows, place):
    assert any(re.search(r"\d,\d", text) for text in windows[place][1])
    assert with_points(windows[place][1]) == []


def test_the_objects_of_a_joint_made_in_german_have_german_names(told):
    tree = told["german"]["tree"]
    assert tree[0] == "Verbindung"
    assert {"Korpus", "Tasche", "Hals", "Schlagbrett", "Gefräster Korpus"} <= set(tree)
    assert not {"Body", "Pocket", "Neck", "Joint", "Routed body", "Seated neck"} & set(tree)


def test_a_comma_may_be_typed_where_figures_have_one(told):
    seen = told["german"]
    assert seen["field"] == "15,55 mm"
    assert seen["typed"] == ["15,60 mm", pytest.approx(15.6), ""]
    assert seen["typed with a point"] == ["15,50 mm", pytest.approx(15.5)]
    assert '"99,5"' in seen["refused"]
    assert "3,00 mm bis 60,00 mm" in seen["refused"]
    assert with_points(seen["rows"]) == []


def test_job_files_stay_with_points(told):
    assert re.search(r'depth = "?15\.5', told["german"]["job"])
    assert not re.search(r"\d,\d", told["german"]["job"])


def test_only_figures_are_written_anew(told):
    seen = told["german"]
    assert seen["figures"] == {
        "0.15 to 0.80 mm": "0,15 to 0,80 mm",
        "+0.03/-0.07": "+0,03/-0,07",
        "<0.001 mm": "<0,001 mm",
        "100,000 Verbindungen gezogen": "100.000 Verbindungen gezogen",
        "files/1.5/x": "files/1.5/x",
        "joint 1.5.toml": "joint 1.5.toml",
        '"15.5" ist 0.5 zu viel.': '"15.5" ist 0,5 zu viel.',
        "1.125 in": "1,125 in",
        "FreeCAD 0.20.2": "FreeCAD 0.20.2",
        "0.72 in (23/32)": "0,72 in (23/32)",
    }
    assert seen["svg"] == '<text x="1.5" style="a:0.5px">1,50 mm</text>'


def test_freecads_own_setting_of_figures_is_heeded(told):
    assert told["german"]["by FreeCAD's setting"] == ["0.15 mm", "0,5"]
    assert told["german"]["in English"] == ["0.15 mm", "0,5"]


def with_points(texts):
    """Texts in which a figure has a decimal point; what is quoted was typed so."""
    figure = re.compile(r"(?<![\w./])\d+\.\d+(?!\w|\.\w)")
    others = re.compile(r'"[^"]*"|\d{1,3}\.\d{3} (Verbindungen|Ziehungen)')
    return [text for text in texts if figure.search(others.sub("", text))]


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

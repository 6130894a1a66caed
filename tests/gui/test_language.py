"""The words of commands, states and sentences follow FreeCAD's language at once."""

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.slow]


@pytest.fixture(scope="module")
def told(on_screen):
    return on_screen("language_way")


def test_german_is_spoken_at_once(told):
    german = told["german"]
    assert german["menu"] == "&Verbindung prüfen"
    assert "nach Formeln und an Volumenkörpern" in german["tip"]
    assert german["state"] == "passt nicht"
    assert german["sentence"] == "Die Löcher im Korpus um 0.2 mm weiter bohren."


def test_english_is_back_at_once(told):
    assert told["before"]["menu"] == "&Check the joint"
    assert told["after"] == told["before"]

"""Random steps of a designer: no value is lost, and no stale finding is shown as fresh.

``NECKFIT_STEPS=300 tests/run tests/gui/test_long_way.py`` takes the long way;
``NECKFIT_FIRST_SEED`` names another draw.
"""

import os

import pytest

pytestmark = [pytest.mark.gui, pytest.mark.slow]


@pytest.fixture(scope="module")
def told(on_screen):
    return on_screen("long_way")


def test_every_step_leaves_what_it_should(told):
    assert told["wrong"] == []
    assert len(told["steps"]) == int(os.environ.get("NECKFIT_STEPS", "60"))


def test_the_draw_has_every_kind_of_step(told):
    assert set(told["steps"]) == {"edit", "check", "undo", "redo", "reopen", "toggle"}
    assert told["fresh"] >= 5
    assert told["stale"] >= 5

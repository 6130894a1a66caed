"""The translations are complete, in step with the code, and keep what has to be kept."""

import importlib
import re
import subprocess
import sys
from collections import Counter
from pathlib import Path
from types import ModuleType

import pytest

FOLDER = Path(__file__).parents[2] / "resources" / "translations"
SLOT = re.compile(r"\{\w*\}")
LETTER = re.compile(r"&(\w)")
Words = dict[tuple[str, str], str]


@pytest.fixture(scope="module")
def collect() -> ModuleType:
    sys.path.insert(0, str(FOLDER))
    try:
        return importlib.import_module("collect")
    finally:
        sys.path.remove(str(FOLDER))


@pytest.fixture(scope="module")
def found(collect: ModuleType) -> dict[str, set[str]]:
    return collect.texts()  # type: ignore[no-any-return]


@pytest.fixture(scope="module")
def german(collect: ModuleType) -> Words:
    return collect.read(FOLDER / "neckfit_de.ts")  # type: ignore[no-any-return]


def test_every_text_of_the_screen_is_in_german(found: dict[str, set[str]], german: Words) -> None:
    assert len(found["NeckFit"]) > 1000
    assert len(found) > 25  # one context for each command
    wanted = {(context, text) for context, texts in found.items() for text in texts if text}
    assert sorted(key for key in wanted if not german.get(key)) == []


def test_what_is_unfinished_is_none() -> None:
    text = (FOLDER / "neckfit_de.ts").read_text(encoding="utf-8")
    assert "<translation>" in text
    assert 'type="unfinished"' not in text


def test_the_files_are_in_step_with_the_code(
    collect: ModuleType, found: dict[str, set[str]], german: Words
) -> None:
    assert collect.SENTENCES.read_text(encoding="utf-8") == collect.templates(found)
    file = FOLDER / "neckfit_de.ts"
    assert file.read_text(encoding="utf-8") == collect.updated(german, found, "de")[0]


def test_a_text_that_nobody_translated_is_noticed(
    collect: ModuleType, found: dict[str, set[str]], german: Words
) -> None:
    more = found | {"NeckFit": found["NeckFit"] | {"A text of tomorrow {}."}}
    text, missing = collect.updated(german, more, "de")
    assert missing == 1
    assert "A text of tomorrow" in text
    assert "A text of tomorrow {}." in collect.templates(more)


def test_the_collector_says_that_nothing_would_change() -> None:
    done = subprocess.run(
        [sys.executable, str(FOLDER / "collect.py"), "--check"],
        capture_output=True, text=True, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stdout + done.stderr
    assert "neckfit_de.ts: 0 of " in done.stdout


def test_slots_are_kept(german: Words) -> None:
    assert german
    for (_, source), told in german.items():
        slots, kept = SLOT.findall(source), SLOT.findall(told)
        if any(slot[1:-1].isdigit() for slot in kept):
            slots = [f"{{{n}}}" for n in range(len(slots))]
        assert Counter(slots) == Counter(kept), source
        assert ("&" in source) == ("&" in told), source
        assert source.endswith("…") == told.endswith("…"), source


def test_no_letter_picks_two_commands(german: Words) -> None:
    letters = Counter(
        found.group(1).lower()
        for (context, _), told in german.items()
        if context.startswith("NeckFit_") and (found := LETTER.search(told))
    )
    assert len(letters) > 25
    assert [letter for letter, times in letters.items() if times > 1] == []

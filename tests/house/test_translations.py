"""The translations are in step with the code, and keep what has to be kept."""

import importlib.util
import re
from collections import Counter
from pathlib import Path
from types import ModuleType

import pytest

FOLDER = Path(__file__).parents[2] / "resources" / "translations"
SLOT = re.compile(r"\{\w*\}")
LETTER = re.compile(r"&(\w)")


@pytest.fixture(scope="module")
def collect() -> ModuleType:
    spec = importlib.util.spec_from_file_location("collect", FOLDER / "collect.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def german(collect: ModuleType) -> dict[tuple[str, str], str]:
    return {key: told for key, told in collect.read(FOLDER / "neckfit_de.ts").items() if told}


def test_every_command_is_translated_in_its_own_context(
    collect: ModuleType, german: dict[tuple[str, str], str]
) -> None:
    words = [
        (name, text)
        for file in sorted((collect.PACKAGE / "gui" / "commands").glob("*.py"))
        for name, texts in collect.commands(collect.ast.parse(file.read_text(encoding="utf-8")))
        for text in texts
        if not SLOT.search(name)
    ]
    assert len(words) > 30
    assert [key for key in words if key not in german] == []


def test_slots_are_kept(german: dict[tuple[str, str], str]) -> None:
    assert german
    for (_, source), told in german.items():
        assert len(SLOT.findall(source)) == len(SLOT.findall(told)), source
        assert ("&" in source) == ("&" in told), source


def test_no_letter_picks_two_commands(german: dict[tuple[str, str], str]) -> None:
    letters = Counter(
        found.group(1).lower()
        for (context, _), told in german.items()
        if context.startswith("NeckFit_") and (found := LETTER.search(told))
    )
    assert letters
    assert [letter for letter, times in letters.items() if times > 1] == []

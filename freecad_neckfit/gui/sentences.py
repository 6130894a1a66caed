"""Sentences with figures in them, in the designer's language.

Findings and refusals are worded in English by rooms that know no screen. What they say follows
templates, which ``resources/translations/collect.py`` gathers from the code; here a finished
sentence finds its template again, and the template's translation is filled with its figures.
"""

from __future__ import annotations

import re
from functools import cache, lru_cache
from pathlib import Path

from .translate import tr

TEMPLATES = Path(__file__).parents[1] / "data" / "sentences.txt"
SLOT = re.compile(r"\{\w*\}")
DEEPEST = 3
"""Templates within slots of templates: more than this is no sentence of ours."""


def say(sentence: str) -> str:
    """``sentence`` in the designer's language; in English as far as no translation is known."""
    return _say(sentence, tr("en"), DEEPEST)


@lru_cache(maxsize=4096)
def _say(sentence: str, language: str, depth: int) -> str:
    # The language is part of the key, so that a switch of language is seen at once.
    told = tr(sentence)
    if told != sentence or not depth or language == "en":
        return told
    for template, pattern in _patterns():
        if template not in _translated(language):
            continue
        match = pattern.fullmatch(sentence)
        if match:
            slots = [_say(text, language, depth - 1) for text in match.groups()]
            return fill(_translated(language)[template], slots)
    head, colon, rest = sentence.partition(": ")
    return f"{head}{colon}{_say(rest, language, depth - 1)}" if colon else sentence


def fill(template: str, slots: list[str]) -> str:
    """``template`` with its slots filled: by number where it has one, else in their order."""
    waiting = iter(slots)

    def filled(match: re.Match[str]) -> str:
        inner = match.group()[1:-1]
        return slots[int(inner)] if inner.isdigit() else next(waiting)

    return SLOT.sub(filled, template)


@cache
def _patterns() -> tuple[tuple[str, re.Pattern[str]], ...]:
    """Each template with its pattern, the most telling first."""
    templates = TEMPLATES.read_text(encoding="utf-8").splitlines()
    templates.sort(key=lambda t: -len(SLOT.sub("", t)))
    return tuple((t, _pattern(t)) for t in templates)


def _pattern(template: str) -> re.Pattern[str]:
    return re.compile("(.*?)".join(re.escape(part) for part in SLOT.split(template)), re.DOTALL)


@lru_cache(maxsize=8)
def _translated(_language: str) -> dict[str, str]:
    known = ((template, tr(template)) for template, _ in _patterns())
    return {template: told for template, told in known if told != template}

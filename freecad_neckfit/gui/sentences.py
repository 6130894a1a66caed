"""Sentences with figures in them, in the designer's language.

Findings and refusals are worded in English by rooms that know no screen. What they say follows
templates, which ``resources/translations/collect.py`` gathers from the code; here a finished
sentence finds its template again, and the template's translation is filled with its figures.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import cache, lru_cache
from pathlib import Path

from .figures import local
from .translate import language, remember, translated

TEMPLATES = Path(__file__).parents[1] / "data" / "sentences.txt"
SLOT = re.compile(r"\{\w*\}")
REFUSED = re.compile(r"""("[^"]*"|'[^']*'|\S+) ([^;]+); (.+)\.""")
"""What was written, what is wrong with it, and what to do."""
OF_JOB_FILES = "has a decimal comma; write"
"""What is refused in job files, where points are written in every language."""
DEEPEST = 3
"""Templates within slots of templates: more than this is no sentence of ours."""


def say(sentence: str) -> str:
    """``sentence`` in the designer's language; in English as far as no translation is known."""
    told = _say(sentence, language(), DEEPEST)
    if OF_JOB_FILES not in sentence:
        told = local(told)
    remember(told, sentence)
    return told


def say_lines(lines: Iterable[str]) -> list[str]:
    """Each line in the designer's language; what it is indented by stays."""
    told = []
    for line in lines:
        bare = line.lstrip()
        told.append(line[: len(line) - len(bare)] + (say(bare) if bare else ""))
    return told


@lru_cache(maxsize=4096)
def _say(sentence: str, language: str, depth: int) -> str:
    # The language is part of the key, so that a switch of language is seen at once.
    told = translated(sentence)
    if told != sentence or not depth or language == "en":
        return told
    for template, pattern in _patterns():
        if template not in _translated(language):
            continue
        match = pattern.fullmatch(sentence)
        if match:
            slots = [_say(text, language, depth - 1) for text in match.groups()]
            return fill(_translated(language)[template], slots)
    return _in_parts(sentence, language, depth)


def _in_parts(sentence: str, language: str, depth: int) -> str:
    """What is named first stays; then what was written, what is wrong with it and what to do."""
    head, colon, rest = sentence.partition(": ")
    if colon:
        return f"{translated(head)}{colon}{_say(rest, language, depth)}"
    refused = REFUSED.fullmatch(sentence)
    if refused is None:
        return sentence
    written, reason, advice = refused.groups()
    reason, advice = (_say(text, language, depth - 1) for text in (reason, advice))
    return f"{written} {reason}; {advice}."


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
    known = ((template, translated(template)) for template, _ in _patterns())
    return {template: told for template, told in known if told != template}

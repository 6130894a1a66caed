"""Values without a unit: whole numbers, yes or no, choices, texts and paths."""

from __future__ import annotations

import unicodedata

from .entry import Entry
from .number import exact, split_number, tidy
from .words import shown

LONGEST_TEXT = 200
"""Longest text that fits a title block or a note [characters]."""
LONGEST_PATH = 4096
"""Longest path of a file on common systems [characters]."""
LARGEST_COUNT = 10**9

_LINE_BREAKING = frozenset({"Cc", "Cs", "Zl", "Zp"})
_TURNING = frozenset({"LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"})


def read_count(raw: object, *, entry: Entry) -> int:
    """Return a whole number; 21.0 and "21" are whole, 21.5 is refused with BadInput."""
    if isinstance(raw, bool) or not isinstance(raw, int | float | str):
        raise entry.wrong_type()
    if isinstance(raw, str):
        number, unit = split_number(tidy(raw, entry=entry), entry=entry)
        if unit:
            raise entry.refusal(f"has {shown(unit)} after the number, but counts things")
    else:
        number = exact(raw, entry=entry)
    if number.denominator != 1:
        raise entry.refusal("is not whole")
    if abs(number) > LARGEST_COUNT:
        raise entry.refusal("is too large to count anything")
    return int(number)


def read_flag(raw: object, *, entry: Entry) -> bool:
    """Return true or false, also from the words themselves; anything else is BadInput."""
    if isinstance(raw, bool):
        return raw
    if isinstance(raw, str) and raw in {"true", "false"}:
        return raw == "true"
    raise entry.refusal("is neither true nor false")


def read_choice(raw: object, *, entry: Entry) -> str:
    """Return the word chosen, without spaces around it; whether it is offered is not checked."""
    word = _clean_text(raw, longest=LONGEST_TEXT, entry=entry).strip()
    if not word:
        raise entry.refusal("is empty")
    return word


def read_text(raw: object, *, entry: Entry) -> str:
    """Return a text of one line, at most 200 characters; it may be empty."""
    return _clean_text(raw, longest=LONGEST_TEXT, entry=entry)


def read_path(raw: object, *, entry: Entry) -> str:
    """Return the path as written; empty means no file. Whether it exists is not checked."""
    return _clean_text(raw, longest=LONGEST_PATH, entry=entry)


def _clean_text(raw: object, *, longest: int, entry: Entry) -> str:
    if not isinstance(raw, str):
        raise entry.wrong_type()
    if len(raw) > longest:
        raise entry.refusal(f"has {len(raw)} characters", f"write at most {longest}")
    if any(unicodedata.category(character) in _LINE_BREAKING for character in raw):
        raise entry.refusal("has a line break or control character", "write it in one line")
    # Marks that turn the reading direction make a drawing say something else than the file.
    if any(unicodedata.bidirectional(character) in _TURNING for character in raw):
        raise entry.refusal("has marks that turn the reading direction", "write it without them")
    return str(raw)

"""Words for messages: the nearest known word, and a raw value shown safely in one line."""

from __future__ import annotations

import datetime as dt
import difflib
from collections.abc import Iterable

LONGEST_SHOWN = 64
"""Longest text that a message repeats whole [characters]."""

_LEAST_RATIO = 0.5
_ALIKE = 0.7
_HUGE_INT_BITS = 100


def nearest(word: str, known: Iterable[str]) -> str | None:
    """Return the known word most like ``word``, or None where none is like it.

    Capitals do not count: ``Pocket`` is as near to ``pocket`` as ``pocket`` itself.
    """
    # Only the head of a long word: it cannot be a slip for a short one, and would take long.
    folded = word[:LONGEST_SHOWN].casefold()
    likeness = {candidate: _likeness(folded, candidate.casefold()) for candidate in known}
    best = max(likeness, key=lambda candidate: likeness[candidate], default=None)
    return best if best is not None and likeness[best] >= _ALIKE else None


def shown(raw: object) -> str:
    """Return any raw value as a short, printable, one-line phrase for a message.

    Never calls ``repr`` or ``str`` of a foreign object, so that it cannot fail.
    """
    if isinstance(raw, str):
        return _quoted(raw)
    if raw is None:
        return "nothing"
    if isinstance(raw, bool):
        return "true" if raw else "false"
    if isinstance(raw, int):
        return _shown_int(int(raw))
    if isinstance(raw, float):
        return repr(float(raw))
    return _described(raw)


def _likeness(word: str, candidate: str) -> float:
    """Return difflib's ratio, and more for an equal length and first letter.

    The ratio alone finds a missing letter likelier than a wrong one: ``m`` for ``mn``, not ``mm``.
    """
    ratio = difflib.SequenceMatcher(None, word, candidate).ratio()
    same_length, same_start = len(word) == len(candidate), word[:1] == candidate[:1]
    return ratio + 0.2 * same_length + 0.1 * same_start if ratio >= _LEAST_RATIO else 0.0


def _quoted(text: str) -> str:
    printable = "".join(c if c.isprintable() else _escaped(c) for c in text[: LONGEST_SHOWN + 1])
    if len(text) > LONGEST_SHOWN or len(printable) > LONGEST_SHOWN:
        printable = printable[: LONGEST_SHOWN - 1] + "…"
    # The inch sign is the quotation mark itself.
    mark = "'" if '"' in printable and "'" not in printable else '"'
    return f"{mark}{printable}{mark}"


def _escaped(character: str) -> str:
    return f"\\u{ord(character):04x}"


def _shown_int(number: int) -> str:
    # Python refuses to write out integers of several thousand digits.
    if number.bit_length() <= _HUGE_INT_BITS:
        return str(number)
    return f"a whole number of about {int(number.bit_length() * 0.30103) + 1} digits"


def _described(raw: object) -> str:
    if isinstance(raw, list | tuple):
        return "a list"
    if isinstance(raw, dict):
        return "a table"
    if isinstance(raw, dt.date | dt.time):
        return "a date or time"
    return "a value that is neither number nor text"


def name_of(key: str) -> str:
    """A parameter's key in plain words: ``neck.heel_length`` is the neck heel length."""
    return key.replace(".", " ").replace("_", " ")

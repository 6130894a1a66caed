"""Who words what is said: as it is written here, or a translator that the screen names.

Rooms that know no screen say their texts and templates through ``say``; figures are filled in
afterwards, so that a translator meets what it knows.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar

Say = Callable[[str], str]
"""From a text or template to the same in a reader's language."""
_speaker: ContextVar[Say] = ContextVar("speaker", default=str)


def say(text: str) -> str:
    """``text`` in the words of whoever speaks; as it is where nobody does."""
    return _speaker.get()(text)


@contextmanager
def spoken_by(speaker: Say) -> Iterator[None]:
    """Let ``speaker`` word what is said meanwhile."""
    before = _speaker.set(speaker)
    try:
        yield
    finally:
        _speaker.reset(before)

"""Commands as one step of undo."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any


@contextmanager
def one_step(document: Any, name: str) -> Iterator[None]:
    """Make all that happens within one step that is undone by ``name``; an exception undoes it."""
    document.openTransaction(name)
    try:
        yield
    except BaseException:
        document.abortTransaction()
        raise
    document.commitTransaction()

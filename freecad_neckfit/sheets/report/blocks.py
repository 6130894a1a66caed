"""Parts lines of a terminal's text into sentences and tables, so that paper and phone set both."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

Row = tuple[str, ...]
_APART = re.compile(r"\s{2,}")
_FIGURE = re.compile(r"[0-9]")
GOES_ON = 4
"""So many letters deeper a line goes on with the one before."""


@dataclass(frozen=True)
class Sentence:
    """A line of words; ``deep``: how many steps it is set in."""

    text: str
    deep: int = 0


@dataclass(frozen=True)
class Columns:
    """Lines that stood in columns; ``head`` is empty where they had none."""

    head: Row
    rows: tuple[Row, ...]

    @property
    def shares(self) -> tuple[float, ...]:
        """Each column's share of the width, by its longest words."""
        every = [self.head, *self.rows] if self.head else self.rows
        return tuple(max(map(len, column)) + 3.0 for column in zip(*every, strict=True))


Block = Sentence | Columns


def blocks(lines: Iterable[str]) -> list[Block]:
    """Lines one under the other with the same number of columns become one table.

    Columns are what two spaces or more keep apart, unless a colon does ("word:   its meaning"). The
    first row is the head where it alone has no figure in it. A line set in much deeper than the
    sentence before it goes on with that sentence.
    """
    found: list[Block] = []
    rows: list[Row] = []
    for line in [*lines, ""]:
        cells, deep = _cells(line), len(line) - len(line.lstrip())
        last = found[-1] if found and not rows else None
        if len(cells) == 1 and isinstance(last, Sentence) and deep >= 2 * last.deep + GOES_ON:
            found[-1] = Sentence(f"{last.text} {cells[0]}", last.deep)
            continue
        if rows and len(cells) != len(rows[0]):
            found += _told(rows)
            rows = []
        if len(cells) > 1:
            rows.append(cells)
        elif cells[0]:
            found.append(Sentence(cells[0], deep // 2))
    return found


def _cells(line: str) -> Row:
    cells = tuple(_APART.split(line.strip()))
    return (" ".join(cells),) if cells[0].endswith(":") else cells


def _told(rows: Sequence[Row]) -> list[Block]:
    has_head = len(rows) > 1 and not any(map(_FIGURE.search, rows[0]))
    head, body = (rows[0], rows[1:]) if has_head else ((), rows)
    return [Columns(head, tuple(body))]

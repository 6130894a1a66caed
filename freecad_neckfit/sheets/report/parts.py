"""What a report is made of, before it becomes HTML or PDF."""

from __future__ import annotations

from dataclasses import dataclass, field

from ..ink import Page

Rows = list[tuple[str, ...]]


@dataclass(frozen=True)
class Table:
    """A table: headings, rows of words, and each column's share of the width.

    ``title`` stands over it. ``beside``: so many rows may stand side by side on paper.
    """

    head: tuple[str, ...]
    rows: Rows
    shares: tuple[float, ...]
    title: str = ""
    beside: int = 1


@dataclass(frozen=True)
class Picture:
    """A drawn picture, one taken from the screen as PNG, or one that came as SVG.

    ``title`` says what it shows.
    """

    title: str
    page: Page | None = None
    png: bytes = b""
    svg: str = ""


@dataclass(frozen=True)
class Unmet:
    """One demand that is not met."""

    title: str
    state: str
    figures: str
    consequence: str
    mending: str


@dataclass
class Section:
    """A heading and what stands under it, in this order."""

    title: str
    words: list[str] = field(default_factory=list)
    lines: list[str] = field(default_factory=list)
    """Lines that keep their columns."""
    pictures: list[Picture] = field(default_factory=list)
    unmet: list[Unmet] = field(default_factory=list)
    tables: list[Table] = field(default_factory=list)
    closing: str = ""
    """What stands after all that."""


@dataclass(frozen=True)
class Report:
    """The whole report; ``verdict`` is what a hurried reader reads."""

    name: str
    verdict: str
    fits: bool
    reason: str
    sections: tuple[Section, ...]

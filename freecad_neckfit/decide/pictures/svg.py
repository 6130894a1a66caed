"""A sheet of SVG: lines, areas and words, in the plain subset that every reader shows alike."""

from __future__ import annotations

from collections.abc import Iterable
from xml.sax.saxutils import escape, quoteattr

Point = tuple[float, float]

INK, FAINT, PAPER = "#222222", "#8A8A8A", "#FFFFFF"
WITHIN = "#CFE8F7"
OUTSIDE = "#F1F1F1"
LINES = ("#0072B2", "#D55E00", "#009E73", "#CC79A7", "#000000", "#E69F00", "#56B4E9")
"""Okabe and Ito's colours, which colour-blind eyes tell apart."""
DASHES = ("", "9 4", "3 3", "12 3 3 3", "6 2", "2 5", "14 5")
"""One pattern with each colour, so that no line is told by colour alone."""
SCREEN_WIDE, PAPER_WIDE = 860.0, 640.0
"""Widths of a sheet. Shrunk to the 186 mm that a page of text has, the narrower one's least letters
(of 12 points) keep capitals of 2.5 mm."""
LEAST_SIZE = 12.0
FONT = "Arial, Helvetica, sans-serif"


class Sheet:
    """A sheet of ``width`` by ``height`` points; y runs downward."""

    def __init__(self, width: float, height: float, *, title: str) -> None:
        """``title`` is read aloud by screen readers and shown by browsers."""
        self.width, self.height = width, height
        head = (
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}" height="{height:g}" '
            f'viewBox="0 0 {width:g} {height:g}" font-family={quoteattr(FONT)}>'
        )
        self._parts: list[str] = [head, f"<title>{escape(title)}</title>"]
        self.box(0, 0, width, height, fill=PAPER)

    def box(
        self, x: float, y: float, width: float, height: float, *, fill: str, line: str = "none"
    ) -> None:
        """A rectangle from its upper left corner."""
        self._parts.append(
            f'<rect x="{x:.2f}" y="{y:.2f}" width="{width:.2f}" height="{height:.2f}" '
            f'fill="{fill}" stroke="{line}"/>'
        )

    def areas(self, outlines: Iterable[Iterable[Point]], *, fill: str) -> None:
        """Areas that touch each other without a seam."""
        path = " ".join(f"M{_points(outline)}Z" for outline in outlines)
        if path:
            self._parts.append(
                f'<path d="{path}" fill="{fill}" stroke="{fill}" stroke-width="0.8" '
                'stroke-linejoin="round"/>'
            )

    def line(
        self, points: Iterable[Point], *, colour: str = INK, width: float = 1.0, dash: str = ""
    ) -> None:
        """A line through points."""
        dashed = f' stroke-dasharray="{dash}"' if dash else ""
        self._parts.append(
            f'<path d="M{_points(points)}" fill="none" stroke="{colour}" '
            f'stroke-width="{width:g}" stroke-linejoin="round"{dashed}/>'
        )

    def dot(
        self, at: Point, radius: float, *, fill: str, line: str = INK, width: float = 1.0
    ) -> None:
        """A disc."""
        self._parts.append(
            f'<circle cx="{at[0]:.2f}" cy="{at[1]:.2f}" r="{radius:g}" fill="{fill}" '
            f'stroke="{line}" stroke-width="{width:g}"/>'
        )

    def words(
        self, at: Point, text: str, *, size: float = 12, anchor: str = "start",
        colour: str = INK, bold: bool = False, turn: float = 0.0, halo: str = "",
    ) -> None:  # fmt: skip
        """A line of words; ``anchor`` is start, middle or end. ``halo``: a colour behind them."""
        turned = f' transform="rotate({turn:g} {at[0]:.2f} {at[1]:.2f})"' if turn else ""
        weight = ' font-weight="bold"' if bold else ""
        start = (
            f'<text x="{at[0]:.2f}" y="{at[1]:.2f}" font-size="{size:g}" '
            f'text-anchor="{anchor}"{weight}{turned}'
        )
        said = escape(text)
        if halo:
            self._parts.append(
                f'{start} fill="{halo}" stroke="{halo}" stroke-width="4" '
                f'stroke-linejoin="round">{said}</text>'
            )
        self._parts.append(f'{start} fill="{colour}">{said}</text>')

    def text(self) -> str:
        """The whole sheet as SVG."""
        return "\n".join([*self._parts, "</svg>"]) + "\n"


def _points(points: Iterable[Point]) -> str:
    return " ".join(f"{x:.2f},{y:.2f}" for x, y in points)


def wrapped(text: str, letters: int) -> list[str]:
    """``text`` in lines of at most so many letters, broken between words."""
    lines: list[str] = []
    for word in text.split():
        if lines and len(lines[-1]) + 1 + len(word) <= letters:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    return lines

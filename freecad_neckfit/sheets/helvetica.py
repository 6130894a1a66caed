"""How wide text runs in Helvetica, which every PDF reader has, and what it can print."""

from __future__ import annotations

import unicodedata
from functools import lru_cache

CAPITALS = 0.718
"""Height of capitals in font sizes."""

# Advance widths in thousandths of the font size for codes 32 to 255 of Windows code page 1252, as
# the font's public metrics file states them; 0 where the code page has no character.
_REGULAR = (
    278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
    1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556,
    333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
    556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584, 0,
    556, 0, 222, 556, 333, 1000, 556, 556, 333, 1000, 667, 333, 1000, 0, 611, 0,
    0, 222, 222, 333, 333, 350, 556, 1000, 333, 1000, 500, 333, 944, 0, 500, 667,
    278, 333, 556, 556, 556, 556, 260, 556, 333, 737, 370, 556, 584, 333, 737, 333,
    400, 584, 333, 333, 333, 556, 537, 278, 333, 333, 365, 556, 834, 834, 834, 611,
    667, 667, 667, 667, 667, 667, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278,
    722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
    556, 556, 556, 556, 556, 556, 889, 500, 556, 556, 556, 556, 278, 278, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 584, 611, 556, 556, 556, 556, 500, 556, 500,
)  # fmt: skip
"""Upright."""
_BOLD = (
    278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278,
    556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611,
    975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778,
    667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556,
    333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611,
    611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584, 0,
    556, 0, 278, 556, 500, 1000, 556, 556, 333, 1000, 667, 333, 1000, 0, 611, 0,
    0, 278, 278, 500, 500, 350, 556, 1000, 333, 1000, 556, 333, 944, 0, 500, 667,
    278, 333, 556, 556, 556, 556, 280, 556, 333, 737, 370, 556, 584, 333, 737, 333,
    400, 584, 333, 333, 333, 611, 556, 278, 333, 333, 365, 556, 834, 834, 834, 611,
    722, 722, 722, 722, 722, 722, 1000, 722, 667, 667, 667, 667, 278, 278, 278, 278,
    722, 722, 778, 778, 778, 778, 778, 584, 778, 722, 722, 722, 722, 667, 667, 611,
    556, 556, 556, 556, 556, 556, 889, 556, 556, 556, 556, 556, 278, 278, 278, 278,
    611, 611, 611, 611, 611, 611, 611, 584, 611, 611, 611, 611, 611, 556, 611, 556,
)  # fmt: skip
"""Bold."""


def width(text: str, *, height: float, bold: bool = False) -> float:
    """Length [mm] of a line of text whose capitals are ``height`` [mm] high."""
    widths = _BOLD if bold else _REGULAR
    units = sum(widths[code - 32] for code in encoded(text) if code >= 32)
    return units / 1000 * height / CAPITALS


def printable(text: str) -> str:
    """The text in characters that the font has.

    Control characters become spaces, letters of other alphabets lose their marks where that helps
    ("ő" becomes "o"), and what is left becomes "?".
    """
    return encoded(text).decode("cp1252")


@lru_cache(maxsize=4096)
def encoded(text: str) -> bytes:
    """The printable text as bytes of code page 1252."""
    out = bytearray()
    for sign in unicodedata.normalize("NFC", text):
        if unicodedata.category(sign).startswith(("C", "Z")):
            out += b" "
            continue
        out += _one(sign)
    return bytes(out)


def _one(sign: str) -> bytes:
    try:
        return sign.encode("cp1252")
    except UnicodeEncodeError:
        pass
    plain = unicodedata.normalize("NFKD", _SPELLED.get(sign, sign))
    kept = "".join(c for c in plain if not unicodedata.combining(c))
    return kept.encode("cp1252", errors="replace") or b"?"


_SPELLED = {
    "\u2212": "-", "\u2300": "\xd8", "\u0142": "l", "\u0141": "L", "\u0111": "d", "\u0110": "D",
    "\u2264": "<=", "\u2265": ">=", "\u2192": "->", "\u00ad": "-", "\u2010": "-", "\u2011": "-",
}  # fmt: skip


def wrapped(text: str, *, limit: float, height: float, bold: bool = False) -> list[str]:
    """The text in lines no longer than ``limit`` [mm]; a longer word is broken."""
    lines, line = [], ""
    for word in printable(text).split():
        longer = f"{line} {word}".strip()
        if width(longer, height=height, bold=bold) <= limit:
            line = longer
            continue
        if line:
            lines.append(line)
        line = word
        while width(line, height=height, bold=bold) > limit and len(line) > 1:
            fits = max(
                (
                    n
                    for n in range(1, len(line))
                    if width(line[:n], height=height, bold=bold) <= limit
                ),
                default=1,
            )
            lines.append(line[:fits])
            line = line[fits:]
    return [*lines, line] if line else lines


def shortened(text: str, *, limit: float, height: float, bold: bool = False) -> str:
    """The text, or as much of it as fits ``limit`` [mm] with an ellipsis."""
    text = printable(text)
    if width(text, height=height, bold=bold) <= limit:
        return text
    while text and width(f"{text}…", height=height, bold=bold) > limit:
        text = text[:-1]
    return f"{text.rstrip()}…"

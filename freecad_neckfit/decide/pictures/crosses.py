"""Crosses at places in a window, and where their words stand."""

from __future__ import annotations

from collections.abc import Sequence

from .frame import Frame
from .svg import INK, PAPER, Point, Sheet
from .zones import Box, meet

BOLD_LETTER = 7.6
"""Width of a letter of bold words."""


def cross_labels(
    frame: Frame, crosses: Sequence[tuple[tuple[float, float], str]], taken: list[Box]
) -> list[tuple[Point, str]]:
    """Where each cross's words stand and which end of them; what they take is added to ``taken``.

    To the right and above where that is clear, else at another side.
    """
    for at, _ in crosses:
        taken.append((*frame.place(*at), 11.0, 11.0))
    found = []
    for number, (at, said) in enumerate(crosses):
        x, y = frame.place(*at)
        wide = len(said) * BOLD_LETTER / 2
        sides = [
            ((x + side * 12, y + down), "start" if side > 0 else "end",
             (x + side * (12 + wide), y + down - 4, wide, 8.0))
            for down in (-8.0, 18.0) for side in (1, -1)
        ]  # fmt: skip
        others = [box for n, box in enumerate(taken) if n != len(taken) - len(crosses) + number]
        place, anchor, box = min(sides, key=lambda side: _crowded(side[2], frame, others))
        taken.insert(0, box)
        found.append((place, anchor))
    return found


def _crowded(box: Box, frame: Frame, others: Sequence[Box]) -> int:
    """How much a box has in its way; the frame's ends count most."""
    x, _, wide, _ = box
    is_out = x - wide < frame.left or x + wide > frame.left + frame.width
    return sum(meet(box, other) for other in others) + len(others) * is_out


def draw_cross(sheet: Sheet, frame: Frame, at: Point, said: str, label: tuple[Point, str]) -> None:
    """Draw a cross, and its words where ``cross_labels`` put them."""
    if not frame.holds(*at):
        return
    x, y = frame.place(*at)
    for colour, width in ((PAPER, 6.0), (INK, 2.5)):
        sheet.line([(x - 9, y), (x + 9, y)], colour=colour, width=width)
        sheet.line([(x, y - 9), (x, y + 9)], colour=colour, width=width)
    place, anchor = label
    sheet.words(place, said, size=12, bold=True, anchor=anchor, halo=PAPER)

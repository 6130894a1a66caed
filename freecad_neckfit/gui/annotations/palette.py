"""How each state looks: colours, line style and marker.

The colours are those of Okabe and Ito ("Color Universal Design", 2008), which people with any usual
kind of colour-blindness tell apart. None of them carries a meaning alone: word, sign, line style
and the marker's corners say the same.
"""

from __future__ import annotations

from dataclasses import dataclass

from ...run.finding import State

Colour = tuple[float, float, float]
"""Red, green, blue from 0 to 1."""


def _hex(code: int) -> Colour:
    return (code >> 16) / 255, (code >> 8 & 255) / 255, (code & 255) / 255


BLACK, WHITE, GREY = _hex(0x000000), _hex(0xFFFFFF), _hex(0x9A9A9A)
PAPER, INK, FAINT = _hex(0xFFFFFF), _hex(0x1A1A1A), _hex(0x555555)
VERMILLION, ORANGE, YELLOW = _hex(0xD55E00), _hex(0xE69F00), _hex(0xF0E442)
GREEN, BLUE, SKY, PURPLE = _hex(0x009E73), _hex(0x0072B2), _hex(0x56B4E9), _hex(0xCC79A7)

SOLID, DASHED, DOTTED, DASH_DOT = 0xFFFF, 0xFFC0, 0xCCCC, 0xFE38
"""Sixteen pixels of a line, drawn where the bit is set."""


@dataclass(frozen=True)
class Look:
    """``fill`` of the label's head and of the marker, ``ink`` on it, leader and border ``pattern``.

    ``corners``: of the marker. ``border``: width in pixels on the screen.
    """

    fill: Colour
    ink: Colour
    pattern: int
    corners: int
    border: int


_CIRCLE = 16
_LOOKS = {
    State.INTERFERES: Look(VERMILLION, WHITE, SOLID, 4, 3),
    State.TOO_LITTLE: Look(ORANGE, BLACK, DASHED, 3, 2),
    State.TOO_MUCH: Look(ORANGE, BLACK, DASHED, 3, 2),
    State.DISAGREES: Look(PURPLE, BLACK, DOTTED, 5, 2),
    State.UNKNOWN: Look(PURPLE, BLACK, DOTTED, 5, 2),
    State.TOUCHES: Look(YELLOW, BLACK, DASH_DOT, 6, 2),
    State.WATCH: Look(YELLOW, BLACK, DASH_DOT, 6, 2),
    State.FITS: Look(BLUE, WHITE, SOLID, _CIRCLE, 1),
    State.TELLS: Look(SKY, BLACK, SOLID, _CIRCLE, 1),
    State.ABSENT: Look(GREY, BLACK, SOLID, _CIRCLE, 1),
}
_STALE_FILL = _hex(0xC8C8C8)
_DARK, _LIGHT = _hex(0x4A4A4A), _hex(0xD9D9D9)
_GREYS = {
    State.INTERFERES: (BLACK, WHITE),
    State.TOO_LITTLE: (_DARK, WHITE),
    State.TOO_MUCH: (_DARK, WHITE),
    State.TOUCHES: (_LIGHT, BLACK),
    State.WATCH: (_LIGHT, BLACK),
}
"""Fill and ink without colour, for print: the worse, the darker; all others white."""
PALETTES = ("colour", "grey")
_chosen = [PALETTES[0]]


def choose(name: str) -> None:
    """Use a palette of ``PALETTES`` from now on; an unknown name counts as the first."""
    _chosen[0] = name if name in PALETTES else PALETTES[0]


def look_of(state: State, *, stale: bool = False) -> Look:
    """The look of a state; a finding that is out of date is grey and dotted, whatever it said."""
    look = _LOOKS[state]
    if _chosen[0] == "grey":
        fill, ink = _GREYS.get(state, (WHITE, BLACK))
        look = Look(fill, ink, look.pattern, look.corners, look.border)
    if not stale:
        return look
    return Look(_STALE_FILL, INK, DOTTED, look.corners, 2)


_RAMP = (_hex(0x08306B), BLUE, SKY, _hex(0xBFE0F5))
"""From dark to light: its lightness alone orders it, so that a grey print reads the same.

The lightest is blue enough to be seen on pale wood where the whole room is alike.
"""


def gap_colour(gap: float, *, widest: float) -> Colour:
    """Colour of a room [mm]: dark blue at 0 to pale blue at ``widest``; vermillion below 0."""
    if gap < 0:
        return VERMILLION
    share = min(gap / widest, 1.0) if widest > 0 else 0.0
    step = share * (len(_RAMP) - 1)
    index = min(int(step), len(_RAMP) - 2)
    low, high, part = _RAMP[index], _RAMP[index + 1], step - index
    red, green, blue = (a + (b - a) * part for a, b in zip(low, high, strict=True))
    return red, green, blue

"""Frets that fit their fretboard, and strings that run over it."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from typing import NamedTuple

from ..resolve import Values
from .neck import half_width
from .words import mm

STEEPEST = 1.0
"""Largest slant of a fret: dx/dy, 45 degrees."""
APART = 0.1
"""Least gap [mm] between two crowns' feet."""
ON_BOARD = 1e-6


class Fret(NamedTuple):
    """Where a fret crosses the two outer strings: u from the nut and |y| [mm]."""

    number: int
    u_treble: float
    u_bass: float
    y_treble: float
    y_bass: float

    @property
    def slant(self) -> float:
        """Change of u per mm of y, toward the treble side."""
        return (self.u_treble - self.u_bass) / (self.y_treble + self.y_bass)

    def at(self, y: float) -> float:
        """U [mm] at ``y`` [mm], positive toward the treble side."""
        return self.u_bass + self.slant * (y + self.y_bass)


def frets_of(v: Values) -> list[Fret]:
    """All crowns from the nut on; the zero fret is the first where there is one."""
    first = 0 if v["strings.zero_fret"] else 1
    return [_fret(v, n) for n in range(first, int(v["neck.frets"]) + 1)]


def _fret(v: Values, number: int) -> Fret:
    middle = (float(v["neck.scale"]) + float(v["neck.scale_bass"])) / 2
    behind = 2.0 ** (-float(v["neck.square_fret"]) / 12)
    found = []
    for scale, index in ((float(v["neck.scale"]), 0), (float(v["neck.scale_bass"]), -1)):
        nut = middle * (1 - behind) + scale * (behind - 1)
        u = middle * (1 - behind) + scale * (behind - 2.0 ** (-number / 12))
        saddle = nut + scale + float(v["strings.compensation"][index])
        spread, wide = float(v["strings.spread_nut"]), float(v["strings.spread_bridge"])
        found.append((u, (spread + (wide - spread) * (u - nut) / (saddle - nut)) / 2))
    (u_treble, y_treble), (u_bass, y_bass) = found
    return Fret(number, u_treble, u_bass, y_treble, y_bass)


def complaints(v: Values) -> Iterator[str]:
    """Say which fret or string has no place on the fretboard."""
    frets = frets_of(v)
    yield from _on_the_board(v, frets)
    yield from _slants(frets)
    yield from _apart(v, frets)
    yield from _strings(v, frets)
    yield from _before_the_saddles(v)


def _on_the_board(v: Values, frets: list[Fret]) -> Iterator[str]:
    end = float(v["neck.nut_to_heel"]) + float(v["neck.overhang"])
    last = frets[-1]
    over = max(last.u_treble, last.u_bass) - end
    if over > ON_BOARD:
        yield (
            f"neck.frets: fret {last.number} lies {mm(v, over)} past the fretboard's end; state a "
            "longer neck.overhang, fewer frets or another neck.nut_to_heel."
        )
    first = frets[0]
    if min(first.u_treble, first.u_bass) < -ON_BOARD:
        yield (
            f"neck.square_fret: fret {first.number} stands so aslant that it leaves the "
            "fretboard at "
            "the nut; state a smaller number, scales closer together, or no zero fret."
        )


def _slants(frets: list[Fret]) -> Iterator[str]:
    for fret in frets:
        if abs(fret.slant) > STEEPEST:
            yield (
                f"neck.scale_bass: fret {fret.number} would stand more than 45° aslant; bring the "
                "scales closer together."
            )
            return


def _apart(v: Values, frets: list[Fret]) -> Iterator[str]:
    width, nut = float(v["neck.fret_width"]), float(v["neck.nut_to_heel"])
    for fret, after in pairwise(frets):
        reach = half_width(v, fret.u_bass - nut) + abs(fret.slant) * width
        need = width * (1 + max(abs(fret.slant), abs(after.slant))) + APART
        gap = min(after.at(y) - fret.at(y) for y in (-reach, reach))
        if gap < need:
            yield (
                f"neck.fret_width: frets {fret.number} and {after.number} are {mm(v, gap)} apart "
                "at "
                f"the fretboard's edge, too close for crowns {mm(v, width)} wide; state narrower "
                "crowns, fewer frets, or scales closer together."
            )
            return


def _strings(v: Values, frets: list[Fret]) -> Iterator[str]:
    nut = float(v["neck.nut_to_heel"])
    for fret in (frets[0], frets[-1]):
        for u, y in ((fret.u_treble, fret.y_treble), (fret.u_bass, fret.y_bass)):
            half = half_width(v, u - nut)
            if y >= half:
                end = "nut" if fret is frets[0] else "bridge"
                yield (
                    f"strings.spread_{end}: the outer strings run beside the fretboard at fret "
                    f"{fret.number} ({mm(v, y)} from the centreline, the edge at {mm(v, half)}); "
                    "make "
                    "it smaller."
                )
                return


def _before_the_saddles(v: Values) -> Iterator[str]:
    end = float(v["neck.nut_to_heel"]) + float(v["neck.overhang"])
    scale = min(float(v["neck.scale"]), float(v["neck.scale_bass"]))
    if end > scale - 10.0:
        yield (
            f"neck.nut_to_heel: the fretboard would end {mm(v, end)} from the nut, at or past the "
            f"saddles of a scale of {mm(v, scale)}; make it shorter."
        )

"""Frets and nut where they are modelled, and the scale length that they follow."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np

from ....job.arrays import FloatArray
from ....job.quantity import Kind
from .board import Board
from .fits import line_through
from .found import Confidence, Findings
from .patches import Patches, slice_at

LEAST, MOST = 0.25, 8.0
"""What stands out of the top by less or more than this [mm] is neither fret nor nut."""
FACET = 0.02
"""A crown's lowest facet reaches at least so high [mm] over the top."""
TOUCH = 1e-3
"""Patches whose bounds come so near [mm] go on to each other."""
FOOT = 0.15
"""A crown's foot, cut through its chords, lies within this [mm] of the top."""
APART = 2.0
"""Frets stand farther apart than this [mm], foot to foot."""
SIDEWAYS = 14.0
"""A second line beside the centreline [mm]: whether frets lean."""
LEANS = 1e-4
"""Frets that lean more than this [mm per mm] fan out."""
SLOT = (0.25, 1.4)
"""Widths of fret slots [mm]."""
FEWEST = 12
STRAYS = 0.05
"""Frets that stray farther [mm] from equal temperament are asked about."""
BEFORE_NUT = 16.0
"""A fretboard starts at most this far [mm] before the nut's front face."""
Heights = Callable[[float, float], float]
"""Exact height of what stands over the top at y = 0 between two x [mm]."""


@dataclass(frozen=True)
class Bar:
    """One fret, slot or nut on a line along the board: from, to and height over the top [mm]."""

    start: float
    end: float
    height: float

    @property
    def middle(self) -> float:
        """X [mm] of its middle."""
        return (self.start + self.end) / 2

    @property
    def width(self) -> float:
        """Extent along the line [mm]."""
        return self.end - self.start


def standing(p: Patches, board: Board) -> list[int]:
    """Patches that stand on the fretboard's top: crowns, nut."""
    near = (p.low[:, 2] > board.top.height - 12) & (p.high[:, 2] < board.top.height + 2 * MOST)
    near &= (p.high[:, 0] > board.start - 12) & (p.low[:, 0] < board.end + 3)
    maybe = np.flatnonzero(near)
    if not len(maybe):
        return []
    points, first = p.each_point_of(maybe)
    height = points[:, 2] - board.top.z(points[:, 0], points[:, 1])
    least, most = np.minimum.reduceat(height, first), np.maximum.reduceat(height, first)
    stands = np.maximum.reduceat(np.abs(points[:, 1]), first) < board.half(0.0) + 4
    stands &= (most > FACET) & (most < MOST) & (least > -0.05)
    found = [int(i) for i in maybe[stands & (most > LEAST)]]
    low = [int(i) for i in maybe[stands & (most <= LEAST)]]
    return found + _beside(p, low, found)


def _beside(p: Patches, low: list[int], standing: list[int]) -> list[int]:
    """Low patches that go on to standing ones: the lowest facets of a crown made of many."""
    kept: list[int] = []
    reached = standing
    while reached and low:
        start, end = p.low[reached], p.high[reached]
        reached = [
            i for i in low
            if ((p.low[i] < end + TOUCH) & (p.high[i] > start - TOUCH)).all(axis=1).any()
        ]  # fmt: skip
        kept += reached
        low = [i for i in low if i not in reached]
    return kept


def bars_on(board: Board, cut: FloatArray) -> list[Bar]:
    """Frets and nut on one line along the board, from its section (m, 2, 3), nut first."""
    if not len(cut):
        return []
    height = cut[:, :, 2] - board.top.z(cut[:, :, 0], cut[:, :, 1])
    keep = (height.max(axis=1) > -FOOT) & (height.max(axis=1) < MOST) & (height.min(axis=1) > -FOOT)
    cut, height = cut[keep], height[keep]
    start, end = cut[:, :, 0].min(axis=1), cut[:, :, 0].max(axis=1)
    order = np.argsort(start, kind="stable")
    reach = np.maximum.accumulate(end[order])
    apart = np.flatnonzero(start[order][1:] > reach[:-1] + APART) + 1
    bars = []
    for group in np.split(order, apart):
        x, h = cut[group][:, :, 0], height[group]
        if h.max() > LEAST:
            bars.append(Bar(float(x.min()), float(x.max()), float(h.max())))
    return bars


def slots_on(p: Patches, top: tuple[int, ...], y: float) -> list[Bar]:
    """Gaps in the fretboard's top as wide as fret slots, on the line of that y."""
    cut = slice_at(p.triangles_of(top), y=y)
    spans = sorted((float(s[:, 0].min()), float(s[:, 0].max())) for s in cut)
    found, reach = [], None
    for start, end in spans:
        if reach is not None and SLOT[0] < start - reach < SLOT[1]:
            found.append(Bar(reach, start, 0.0))
        reach = end if reach is None else max(reach, end)
    return found


@dataclass(frozen=True)
class Scale:
    """Frets on one line: x of the nut, scale [mm], number of the first one, what strays most."""

    nut: float
    length: float
    first: int
    count: int
    residual: float


def scale_of(x: FloatArray, start: float) -> Scale | None:
    """The equal temperament that positions ``x`` (nut first) follow on a board from ``start``."""
    best: Scale | None = None
    for first in (1, 0, 2, 3):
        number = first + np.arange(len(x))
        rows = np.column_stack([np.ones(len(x)), 1 - 2.0 ** (-number / 12)])
        nut, length = np.linalg.lstsq(rows, x, rcond=None)[0]
        off = float(np.abs(rows @ [nut, length] - x).max())
        if -0.6 < nut - start < BEFORE_NUT and (best is None or off < best.residual - 1e-6):
            best = Scale(float(nut), float(length), first, int(number[-1]), off)
    return best


def read_frets(
    p: Patches, board: Board, top: tuple[int, ...], up: Sequence[int], height: Heights,
    found: Findings, *, spread: tuple[float, float] | None,
) -> float:  # fmt: skip
    """Tell frets, scale and nut; returns x of the nut's front face.

    ``up``: the patches that stand on the top. ``spread``: distance of the outer strings at nut and
    bridge [mm], needed where frets fan.
    """
    crowns = p.triangles_of(up)
    bars = bars_on(board, slice_at(crowns, y=0.0))
    nut_bar, frets = _told_apart(bars, board)
    how = "the crowns of the frets"
    if not frets:
        frets, how = slots_on(p, top, 0.0), "the fret slots"
    if len(frets) < FEWEST:
        return _nut_alone(board, nut_bar, len(frets), found)
    scale = scale_of(np.array([f.middle for f in frets]), board.start)
    if scale is None or scale.residual > STRAYS:
        _ask_scale(scale, frets, found)
        return nut_bar.end if nut_bar else board.start
    if nut_bar is not None and abs(nut_bar.end - scale.nut) > STRAYS:
        found.ask(
            "neck.nut_to_heel",
            "the nut's front face and the frets disagree by "
            f"{abs(nut_bar.end - scale.nut):.2f} mm about where the scale begins.",
        )
    if scale.first == 0:
        found.tell("strings.zero_fret", True, "a fret where the scale begins", kind=Kind.FLAG)
    _tell_frets(frets, scale, how, board, height, found)
    leans = _leans(frets, board, p, top, crowns)
    if leans is not None and np.abs(leans).max() > LEANS:
        _tell_fan(frets, scale, leans, how, found, spread)
    where = "the nut's front face" if nut_bar else f"worked out from {how}"
    _tell_nut(scale.nut, where, scale.residual, found)
    return scale.nut


def _told_apart(bars: list[Bar], board: Board) -> tuple[Bar | None, list[Bar]]:
    """The nut, if the first bar is one, and the frets."""
    if not bars:
        return None, []
    if len(bars) == 1:
        return (bars[0], []) if bars[0].start < board.start + BEFORE_NUT else (None, bars)
    height = float(np.median([b.height for b in bars[1:]]))
    width = float(np.median([b.width for b in bars[1:]]))
    first = bars[0]
    is_nut = first.height > 1.3 * height or first.width > 1.35 * width
    return (first, bars[1:]) if is_nut else (None, bars)


def _nut_alone(board: Board, nut_bar: Bar | None, frets: int, found: Findings) -> float:
    if frets:
        found.ask("neck.frets", f"only {frets} frets or slots were told apart; state neck.frets "
                  "and neck.scale.")  # fmt: skip
    if nut_bar is not None:
        _tell_nut(nut_bar.end, "the nut's front face", 0.0, found)
        return nut_bar.end
    found.notes.append(
        "neither frets nor nut are modelled: frets and scale are the job's, and the fretboard's "
        "start is taken for the nut's front face"
    )
    _tell_nut(board.start, "the fretboard's start, for there is no nut", 0.0, found,
              trust=Confidence.LIKELY)  # fmt: skip
    return board.start


def _tell_nut(
    x: float, how: str, residual: float, found: Findings, trust: Confidence = Confidence.SURE
) -> None:
    found.tell("neck.nut_to_heel", -x, how, residual=residual, confidence=trust)


def _ask_scale(scale: Scale | None, frets: list[Bar], found: Findings) -> None:
    if scale is None:
        text = f"{len(frets)} frets were found, but no scale that begins where the fretboard does"
    else:
        text = (
            f"{len(frets)} frets were found, but they stray {scale.residual:.2f} mm from equal "
            "temperament"
        )
    # A job states a scale for whatever neck it was written for.
    found.ask("neck.scale", f"{text}; state neck.scale, neck.frets and neck.nut_to_heel.",
              by_value=False)  # fmt: skip


def _tell_frets(
    frets: list[Bar], scale: Scale, how: str, board: Board, height: Heights, found: Findings
) -> None:
    off = scale.residual
    found.tell("neck.frets", scale.count, how, kind=Kind.COUNT)
    found.tell("neck.scale", scale.length, f"equal temperament through {how}", residual=off)
    last = scale.nut + scale.length * (1 - 2.0 ** (-scale.count / 12))
    found.tell("neck.end_margin", board.end - last, "the last fret to the fretboard's end",
               residual=off)  # fmt: skip
    if frets[0].height > 0:
        heights = [height(f.start, f.end) for f in (frets[0], frets[len(frets) // 2], frets[-1])]
        if np.isfinite(heights).all():
            found.tell("neck.fret_height", float(np.median(heights)), "crowns over the top",
                       residual=float(np.ptp(heights)) / 2)  # fmt: skip
        else:
            found.ask("neck.fret_height", "no crown stands on the centreline; state "
                      "neck.fret_height.")  # fmt: skip
        widths = [f.width for f in frets]
        found.tell("neck.fret_width", float(np.median(widths)), "the crowns' feet",
                   residual=float(np.ptp(widths)) / 2)  # fmt: skip


def _tell_fan(
    frets: list[Bar], scale: Scale, leans: FloatArray, how: str, found: Findings,
    spread: tuple[float, float] | None,
) -> None:  # fmt: skip
    """Where frets lean, the scales of the outer strings follow from where those run."""
    number = scale.first + np.arange(len(frets))
    if spread is None:
        found.ask("neck.scale", "the frets fan out, so each outer string has its own scale: state "
                  "strings.spread_nut and strings.spread_bridge in the job.")  # fmt: skip
        return
    share = 1 - 2.0 ** (-number / 12)
    apart = spread[0] + (spread[1] - spread[0]) * share
    # Treble minus bass, fret by fret: D·(kept - here), with D the difference of the scales.
    fit = line_through(2.0 ** (-number / 12), leans * apart)
    grow, kept = -fit.slope, fit.at / -fit.slope
    left = grow > 0  # the longer scale, the bass, lies at negative y unless left-handed
    difference = abs(grow)
    square = -12 * np.log2(max(kept, 1e-6))
    width = "neck.fret_width" in found
    if width:
        cos = 1 / np.hypot(1, leans)
        upright = [f.width * c for f, c in zip(frets, cos, strict=True)]
        found.tell("neck.fret_width", float(np.median(upright)), "the crowns' feet, square to them",
                   residual=float(np.ptp(upright)) / 2)  # fmt: skip
    how = f"{how}, which fan out, under strings as far apart as the job states"
    found.tell("neck.scale", scale.length - difference / 2, how, residual=scale.residual)
    found.tell("neck.scale_bass", scale.length + difference / 2, how, residual=scale.residual)
    found.tell("neck.square_fret", float(square), how, kind=Kind.NUMBER, residual=fit.residual)
    found.tell("strings.left_handed", bool(left), "the longer scale is the bass side's",
               kind=Kind.FLAG)  # fmt: skip


def _leans(
    frets: list[Bar], board: Board, p: Patches, top: tuple[int, ...], crowns: FloatArray
) -> FloatArray | None:
    """Change of x per mm of y for each fret; None where the lines do not pair up."""
    sides = []
    for y in (-SIDEWAYS, SIDEWAYS):
        bars = _told_apart(bars_on(board, slice_at(crowns, y=y)), board)[1] or slots_on(p, top, y)
        # Near the ends a leaning fret may miss one of the lines.
        at = np.array([b.middle for b in bars])
        if len(at) != len(frets):
            return None
        sides.append(at)
    return np.asarray((sides[1] - sides[0]) / (2 * SIDEWAYS))

"""First look: which patches are the fretboard's top and which the heel's bottom, in any pose."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from ....job.arrays import FloatArray
from ....job.errors import BadInput
from .patches import Patches

SLANT = 0.17
"""Cosine up to which a normal counts as square to the neck's length."""
BENT = np.cos(np.radians(15.0))
"""Normals of a fretboard's top stay within this of their mean."""
LEVEL = np.cos(np.radians(3.0))
"""Normals of a heel's bottom stay within this of their mean, and so does it of the board's."""
GAP, STEP = 9.0, 0.4
"""Pieces of one surface lie closer than this along and in height [mm]: frets stand between."""
BOARD = (270.0, 34.0, 0.55)
"""Least length [mm], mean width [mm] and covered share of a fretboard's top."""
HEEL = (25.0, 150.0, 25.0)
"""Least and most length, and least width of a heel's flat bottom [mm]."""
THICK = (12.0, 50.0)
"""Heel bottom to fretboard top [mm]."""
BEYOND = 70.0
"""Farthest that a fretboard runs past its heel's bottom [mm]."""


@dataclass(frozen=True)
class Strip:
    """Patches that follow each other along the neck as one surface facing ``normal``."""

    patches: tuple[int, ...]
    normal: FloatArray
    start: float
    end: float
    height: float
    area: float

    @property
    def length(self) -> float:
        """Extent along the neck [mm]."""
        return self.end - self.start

    @property
    def width(self) -> float:
        """Mean width [mm]."""
        return self.area / max(self.length, 1e-9)


@dataclass(frozen=True)
class Rough:
    """The board's top, the heel's bottom, and the axes they suggest (unit vectors)."""

    top: tuple[int, ...]
    bottom: tuple[int, ...]
    along: FloatArray
    up: FloatArray


def first_look(
    p: Patches,
    name: str,
    *,
    top: Sequence[int] | None = None,
    bottom: Sequence[int] | None = None,
) -> Rough:
    """Find top and bottom; either may be picked by hand instead.

    Raises BadInput where there is no fretboard's top or no heel's bottom under it.
    """
    along = long_axis(p)
    boards = [_picked(p, along, top)] if top else _boards(p, along)
    if not boards:
        raise BadInput(
            f"{name}: is not a neck, or its fretboard is missing: nothing on it is a fretboard's "
            "top, flat or evenly rounded, some 35 to 115 mm wide and more than 270 mm long."
        )
    found = []
    for board in boards:
        heels = [_picked(p, along, bottom)] if bottom else _heels(p, along, board)
        found += [(board, heel) for heel in heels]
    if not found:
        raise BadInput(
            f"{name}: is not a neck, or its heel is incomplete: it has a surface like a "
            "fretboard's top, but no flat heel bottom 12 to 50 mm under its end."
        )
    board, heel = max(found, key=lambda pair: _likelihood(p, along, *pair))
    outward = 1.0 if (heel.start + heel.end) > (board.start + board.end) else -1.0
    return Rough(board.patches, heel.patches, outward * along, -heel.normal)


def long_axis(p: Patches) -> FloatArray:
    """The direction in which the part's surface is longest."""
    middles = p.corners.mean(axis=1)
    weight = p.triangle_area
    middle = (middles * weight[:, None]).sum(axis=0) / weight.sum()
    off = middles - middle
    spread = (off * weight[:, None]).T @ off
    return np.asarray(np.linalg.eigh(spread)[1][:, 2])


def top_around(p: Patches, patch: int) -> tuple[int, ...]:
    """All patches of the long surface that one belongs to, as frets and seams part a board's top.

    The patch alone where it belongs to none.
    """
    strips = _long_strips(p, long_axis(p))
    return next((s.patches for s in strips if patch in s.patches), (patch,))


def _long_strips(p: Patches, along: FloatArray) -> list[Strip]:
    flat = (np.abs(p.normal @ along) < SLANT) & (p.spread > BENT) & (p.area > 40)
    long = [s for s in _strips(p, along, np.flatnonzero(flat)) if s.length > BOARD[0]]
    return _joined(p, along, long)


def _boards(p: Patches, along: FloatArray) -> list[Strip]:
    _, width, covered = BOARD
    found = []
    for strip in _long_strips(p, along):
        extent = _extent(p, along, strip)
        if extent > width and strip.width > covered * extent:
            found.append(strip)
    return found


def _joined(p: Patches, along: FloatArray, strips: list[Strip]) -> list[Strip]:
    """Strips that lie side by side as one: a seam may run along the crest of a rounded top."""
    start, end = _spans(p, along)
    left, found = list(strips), []
    while left:
        one = left.pop(0)
        mine = _spots(p, one)
        beside = [s for s in left if s.normal @ one.normal > BENT and len(mine & _spots(p, s)) > 1]
        for strip in beside:
            left.remove(strip)
        patches = [i for s in (one, *beside) for i in s.patches]
        found.append(_strip(p, patches, start, end) if beside else one)
    return found


def _spots(p: Patches, strip: Strip) -> set[tuple[float, ...]]:
    return {tuple(row) for row in np.round(p.points_of(strip.patches), 5)}


def _extent(p: Patches, along: FloatArray, strip: Strip) -> float:
    across = np.cross(strip.normal, along)
    spans = p.points_of(strip.patches) @ across
    return float(np.ptp(spans))


def _heels(p: Patches, along: FloatArray, board: Strip) -> list[Strip]:
    facing = p.normal @ board.normal < -LEVEL
    flat = facing & (p.spread > LEVEL) & (p.area > 20)
    shortest, longest, width = HEEL
    middle = (board.start + board.end) / 2
    found = []
    for strip in _strips(p, along, np.flatnonzero(flat)):
        under = board.height + strip.height  # their normals are opposite
        if not THICK[0] <= under <= THICK[1] or not shortest <= strip.length <= longest:
            continue
        inside = min(strip.end, board.end + BEYOND) - max(strip.start, board.start - BEYOND)
        near_end = max(strip.end - middle, middle - strip.start) > board.length / 2 - BEYOND
        over = min(strip.end, board.end) - max(strip.start, board.start)
        if (
            over > 0.5 * strip.length
            and near_end
            and inside > 0
            and _extent(p, along, strip) > width
        ):
            found.append(strip)
    return found


def _likelihood(p: Patches, along: FloatArray, board: Strip, heel: Strip) -> float:
    """Prefer the board farthest from the heel's bottom (the glue line lies between), then size.

    A board is wider at its heel's end.
    """
    thick = board.height + heel.height
    points = p.points_of(board.patches)
    across = np.cross(board.normal, along)
    s, y = points @ along, points @ across
    quarter = board.length / 8
    wide = [
        np.ptp(y[part]) if part.any() else 0.0
        for part in (s < board.start + quarter, s > board.end - quarter)
    ]
    heel_is_last = heel.start + heel.end > board.start + board.end
    grows = wide[1] - wide[0] if heel_is_last else wide[0] - wide[1]
    return float(thick + (20.0 if grows > -0.5 else 0.0) + heel.area / 1000)


def _strips(p: Patches, along: FloatArray, patches: Iterable[int]) -> list[Strip]:
    """Group patches that face the same way and follow each other along the neck."""
    left = sorted((int(i) for i in patches), key=lambda i: -p.area[i])
    start, end = _spans(p, along)
    found: list[Strip] = []
    while left:
        normal = p.normal[left[0]]
        alike = [i for i in left if p.normal[i] @ normal > LEVEL]
        # Along and height are seen from one common direction.
        found += [
            _strip(p, chain, start, end) for chain in _chains(alike, start, end, p.centre @ normal)
        ]
        taken = set(alike)
        left = [i for i in left if i not in taken]
    return found


def _spans(p: Patches, along: FloatArray) -> tuple[FloatArray, FloatArray]:
    points, start = p.vertices
    s = points @ along
    return np.minimum.reduceat(s, start[:-1]), np.maximum.reduceat(s, start[:-1])


def _chains(
    patches: Sequence[int], start: FloatArray, end: FloatArray, height: FloatArray
) -> list[list[int]]:
    """Split at steps in height first, then at gaps along."""
    by_height = sorted(patches, key=lambda i: height[i])
    layers: list[list[int]] = [[by_height[0]]]
    for a, b in pairwise(by_height):
        if height[b] - height[a] > STEP:
            layers.append([])
        layers[-1].append(b)
    chains: list[list[int]] = []
    for layer in layers:
        in_order = sorted(layer, key=lambda i: start[i])
        chains.append([in_order[0]])
        reach = end[in_order[0]]
        for i in in_order[1:]:
            if start[i] > reach + GAP:
                chains.append([])
            chains[-1].append(i)
            reach = max(reach, end[i])
    return chains


def _strip(p: Patches, chain: Sequence[int], start: FloatArray, end: FloatArray) -> Strip:
    index = np.array(chain)
    area = p.area[index]
    mean = (p.normal[index] * area[:, None]).sum(axis=0)
    mean /= np.linalg.norm(mean)
    height = float((p.centre[index] @ mean * area).sum() / area.sum())
    return Strip(tuple(chain), mean, float(start[index].min()), float(end[index].max()), height,
                 float(area.sum()))  # fmt: skip


def _picked(p: Patches, along: FloatArray, patches: Sequence[int]) -> Strip:
    start, end = _spans(p, along)
    return _strip(p, list(patches), start, end)

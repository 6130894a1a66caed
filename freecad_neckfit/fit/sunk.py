"""Room beside a fretboard that sinks below the top, or below the cover plate's top.

Counted are the fretboard's two long lower edges against the straight sides of what they sink
into, neck centred. Ends and corners are not: what stands over the top or the plate there has its
own room in height, see the overhang's room.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array, pick
from .board_edge import Level, Stretch
from .board_low import bound_levels
from .cutout import Wall, straight_sides
from .dips import dip
from .lesser import lesser
from .opened import side_end
from .outline import pocket_outline

if TYPE_CHECKING:
    from .case import Case

FLUSH = 0.0075
"""How deep [mm] an edge must lie below the top to count as sunk; touching it is not."""


class Sunk(NamedTuple):
    """Least plan room [mm], infinite where nothing sinks, and the body-frame X, Y, Z of it.

    The place is None for many jobs, see ``lesser``.
    """

    value: Array
    x: Array
    y: Array
    z: Array


def around_board(case: Case) -> Sunk:
    """Least plan room [mm] from the fretboard's sides to the pocket's and the plate's cut-out's.

    Square to those sides, finish on the pocket's walls taken off. Counted where the fretboard's
    lower edge, binding included, lies more than ``FLUSH`` below the finished top, or below the
    plate's top. Negative: the fretboard is as much too wide on each side.
    """
    found = _beside(case, case.once(_pocket_sides), rise=case["finish.top"])
    return lesser(found, case.once(board_in_cutout)) if case.plate_there else found


def board_in_cutout(case: Case) -> Sunk:
    """Least plan room [mm] from the fretboard's sides to the cut-out's, where it sinks into it."""
    rise = case["finish.top"] + case["plate.thickness"]
    return _beside(case, case.once(straight_sides), rise=rise)


def _pocket_sides(case: Case) -> tuple[Wall, ...]:
    plan = pocket_outline(case)
    half = plan.half - case["finish.wall"] * plan.stretch
    return (
        Wall(half, plan.taper, Stretch(-case["pocket.length"], side_end(case, plan, wood=True))),
    )


def _beside(case: Case, walls: tuple[Wall, ...], *, rise: Array) -> Sunk:
    best: Sunk | None = None
    for level in case.once(bound_levels):
        sunk = dip(case, foot=level.foot, edge=level.edge, rise=rise - FLUSH)
        low, high = np.maximum(sunk.first, level.low), np.minimum(sunk.last, level.high)
        for wall in walls:
            best = lesser(best, _least(case, wall, level, low=low, high=high))
    assert best is not None  # noqa: S101  (a fretboard has a level, a pocket has sides)
    return best


def _least(case: Case, wall: Wall, level: Level, *, low: Array, high: Array) -> Sunk:
    """Room changes evenly along a straight side, so it is least at one end."""
    first, last = np.maximum(low, wall.there.first), np.minimum(high, wall.there.last)
    there = first < last
    if not np.any(there):
        return Sunk(np.full(np.shape(there), np.inf), 0.0, 0.0, 0.0)
    spare, rate = wall.half - level.edge.half, wall.taper - level.edge.taper
    x = pick(there, pick(rate < 0, last, first), 0.0)
    room = pick(there, (spare + rate * x) / np.sqrt(1 + np.square(wall.taper)), np.inf)
    return Sunk(room, x, level.edge.at(x), level.foot + x * case.seated.tan)

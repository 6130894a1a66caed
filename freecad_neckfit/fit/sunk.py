"""Room around a fretboard that sinks below the top, or below the cover plate's top."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from .board_edge import board_edge, cutout_outline, top_outline
from .mount import bare_top
from .outline import Outline

if TYPE_CHECKING:
    from .case import Case


class Sunk(NamedTuple):
    """Least plan room [mm] (infinite where nothing sinks) and the neck-frame x and z of it."""

    value: Array
    x: Array
    z: Array


class Opening(NamedTuple):
    """What the fretboard sinks into: an outline, perhaps widened by a box for the overhang.

    ``box``: half width and end X of that box [mm], or None.
    """

    outline: Outline
    box: tuple[Array, Array] | None


def around_board(case: Case) -> Sunk:
    """Least plan room [mm] from the fretboard to the pocket's edge and to the plate's cut-out.

    Counted only where the fretboard's lowest level, binding included, lies below the finished
    top, or below the plate's top. Negative: the shift in the plan that would free it.
    """
    found = _into(case, Opening(case.once(top_outline), None), rise=case["finish.top"])
    if not case.plate_there:
        return found
    return _smaller(found, board_in_cutout(case))


def board_in_cutout(case: Case) -> Sunk:
    """Least plan room [mm] from the fretboard to the plate's cut-out, where it sinks into it."""
    rise = case["finish.top"] + case["plate.thickness"]
    return _into(case, case.once(cutout), rise=rise)


def cutout(case: Case) -> Opening:
    """The cover plate's cut-out; it also clears the overhang unless the plate runs under that."""
    outline = case.once(cutout_outline)
    if case.plate_under_overhang:
        return Opening(outline, None)
    clearance = case["plate.clearance"]
    top, under = (
        case.seat.to_body(x=case["neck.overhang"], z=case[key])[0]
        for key in ("neck.height", "neck.underside")
    )
    return Opening(outline, (case["neck.width_end"] / 2 + clearance,
                             np.maximum(top, under) + clearance))  # fmt: skip


def _into(case: Case, opening: Opening, *, rise: Array) -> Sunk:
    mouth = case.seat.x_to_neck(big_x=-case["pocket.length"], z=case["neck.glue_line"])
    hang = case["neck.binding"] if np.any(case["neck.binding_width"] > 0) else 0.0
    hang = np.where(case["neck.binding_width"] > 0, hang, 0.0)
    end = case["neck.overhang"]
    heel = _over_stretch(case, opening, z=case["neck.glue_line"], first=mouth,
                         last=np.zeros(()), rise=rise)  # fmt: skip
    over = _over_stretch(case, opening, z=case["neck.underside"] - hang, first=np.zeros(()),
                         last=end, rise=rise)  # fmt: skip
    return _smaller(heel, over._replace(value=np.where(end > 0, over.value, np.inf)))


def _over_stretch(
    case: Case, opening: Opening, *, z: Array, first: Array, last: Array, rise: Array
) -> Sunk:
    """One level from ``first`` to ``last``: the part that lies lower than ``rise`` over the top.

    Its depth is taken as even between the ends, which is exact over a flat top.
    """
    at_first, at_last = (_depth(case, x=x, z=z, rise=rise) for x in (first, last))
    sinks = (at_first > 0) | (at_last > 0)
    if not np.any(sinks):
        return Sunk(np.full(np.shape(sinks), np.inf), last, z)
    fall = at_first - at_last
    share = at_first / np.where(fall == 0, 1.0, fall)
    crossing = first + (last - first) * np.clip(share, 0.0, 1.0)
    begin = np.where(at_first > 0, first, crossing)
    stop = np.where(at_last > 0, last, crossing)
    best = _smaller(
        Sunk(_room(case, opening, x=begin, z=z), begin, z),
        Sunk(_room(case, opening, x=stop, z=z), stop, z),
    )
    return best._replace(value=np.where(sinks, best.value, np.inf))


def _depth(case: Case, *, x: Array, z: Array, rise: Array) -> Array:
    big_x, big_z = case.seated.to_body(x=x, z=z)
    return bare_top(case, x=big_x, y=0.0) + rise - big_z


def _room(case: Case, opening: Opening, *, x: Array, z: Array) -> Array:
    """Plan room at the fretboard's edge; toward the bridge of the opening it is negative."""
    big_x = case.seated.to_body(x=x, z=z)[0]
    edge = board_edge(case, z=z).at(big_x)
    room = -opening.outline.farthest(x=big_x, y=edge)
    if opening.box is None:
        return room
    half, end = opening.box
    return np.maximum(room, np.minimum(half - edge, end - big_x))


def _smaller(one: Sunk, other: Sunk) -> Sunk:
    less = other.value < one.value
    return Sunk(*(np.where(less, b, a) for a, b in zip(one, other, strict=True)))

"""The cover plate's cut-out: round the pocket, and round the overhang where it is kept clear."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

import numpy as np

from ..job.arrays import Array
from .board_edge import Stretch, cutout_outline, end_foot
from .opened import cut_at, into_cut_out, side_end
from .outline import Outline

if TYPE_CHECKING:
    from .case import Case


class Box(NamedTuple):
    """The rectangle that clears the overhang: half its width, and X of its end [mm]."""

    half: Array
    end: Array


class Opening(NamedTuple):
    """The plate's cut-out: the pocket's plan offset outward, perhaps widened by a box."""

    outline: Outline
    box: Box | None


def cutout(case: Case) -> Opening:
    """The cover plate's cut-out; it also clears the overhang unless the plate runs under that."""
    return Opening(case.once(cutout_outline), case.once(clear_box))


def clear_half(case: Case) -> Array:
    """Half width [mm] of a cut-out that is kept clear of the overhang, beside the fretboard."""
    return case["neck.width_end"] / 2 + case["plate.clearance"]


def clear_box(case: Case) -> Box | None:
    """The rectangle that a plate leaves round the overhang, or None where it runs under that."""
    if case.plate_under_overhang:
        return None
    clearance = case["plate.clearance"]
    top, foot = (
        case.seat.to_body(x=case["neck.overhang"], z=z)[0]
        for z in (case["neck.height"], case.once(end_foot))
    )
    return Box(clear_half(case), np.maximum(top, foot) + clearance)


class Wall(NamedTuple):
    """A straight side of the cut-out: half width ``half`` + ``taper``·X [mm], where it is."""

    half: Array
    taper: Array
    there: Stretch


def straight_sides(case: Case) -> tuple[Wall, ...]:
    """The cut-out's straight sides, each as far as it is the outermost: pocket's, then box's.

    The corner's arc between them is neither. A box that ends within the pocket's own part is
    told as far as it is wider.
    """
    outline, box = case.once(cutout)
    mouth, meet = -case["pocket.length"], side_end(case, outline, wood=False)
    if box is None:
        return (Wall(outline.half, outline.taper, Stretch(mouth, meet)),)
    half, taper = outline.half, outline.taper
    widens, narrows = taper > 0, taper < 0
    same = (box.half - half) / np.where(taper == 0, 1.0, taper)
    wider = np.where(taper == 0, half > box.half, False)
    first = np.where(widens, np.maximum(same, mouth), np.where(narrows | wider, mouth, np.inf))
    last = np.where(narrows, np.minimum(same, meet), meet)
    before = Stretch(mouth, np.where(widens, np.minimum(np.minimum(same, outline.meet), box.end),
                                     -np.inf))  # fmt: skip
    past = np.square(outline.radius) - np.square(np.maximum(box.half - outline.arc_y, 0.0))
    on_arc = outline.arc_x + np.sqrt(np.maximum(past, 0.0))
    beside = np.where(narrows, np.maximum(same, mouth), mouth)
    emerges = np.where(outline.side(outline.meet) > box.half, on_arc, beside)
    if case.once(into_cut_out):  # a pickup's opening may begin before the box does
        emerges = np.where(cut_at(case, outline, wood=False) < emerges, np.inf, emerges)
    return (
        Wall(half, taper, Stretch(first, last)),
        Wall(box.half, np.zeros(()), before),
        Wall(box.half, np.zeros(()), Stretch(emerges, box.end)),
    )

"""Room in the plan between the heel and the cover plate's cut-out."""

from __future__ import annotations

from typing import TYPE_CHECKING

import numpy as np

from ..job.arrays import Array
from .outline import heel_outline
from .sides import corner_room, end_room, height_at, side_room
from .sunk import board_in_cutout, cutout

if TYPE_CHECKING:
    from .case import Case


def plate_room(case: Case) -> Array:
    """Least signed room [mm] from the plate's cut-out to the heel, and to a fretboard sunk into it.

    Infinite where neither reaches down to the plate.
    """
    low = case["finish.top"]
    high = low + case["plate.thickness"]
    z_low, z_high = (height_at(case, x=0.0, rise=rise) for rise in (low, high))
    reaches = z_low < case["neck.glue_line"]
    heel = np.where(reaches, _heel_room(case, low=low, high=high, levels=(z_low, z_high)), np.inf)
    return np.minimum(heel, case.once(board_in_cutout).value)


def _heel_room(case: Case, *, low: Array, high: Array, levels: tuple[Array, Array]) -> Array:
    """Room to the cut-out; where it also clears the overhang, to the pocket's outline and a box.

    Where box and outline cross beside the heel's corner the room is told on the safe side.
    """
    opening = case.once(cutout)
    side = side_room(case, around=opening.outline, low=low, high=high).value
    end = end_room(case, around=opening.outline, levels=levels, leaning=False).value
    corner = np.minimum(*(
        corner_room(case, around=opening.outline, z=z, leaning=False) for z in levels
    ))  # fmt: skip
    if opening.box is None:
        return np.minimum(np.minimum(side, end), corner)
    half, box_end = opening.box
    heel = case.once(heel_outline)
    beside = half - np.maximum(heel.side(heel.meet), heel.side(-case["pocket.length"]))
    before = box_end - np.maximum(*(case.seated.to_body(x=0.0, z=z)[0] for z in levels))
    sides = np.maximum(side, beside)
    return np.minimum(np.minimum(sides, np.maximum(end, before)),
                      np.maximum(corner, np.minimum(beside, before)))  # fmt: skip

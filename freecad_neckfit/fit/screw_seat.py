"""Where each neck screw's head seats, where it enters the heel, and where its tip lies.

Screws run along Z, square to the body's datum. All figures have the screws on their last axis.
"""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Any

import numpy as np

from ..job.arrays import Array, along
from .outline import heel_outline
from .rod_room import Shank, rod_room
from .wood_left import seats_on_back

if TYPE_CHECKING:
    from .case import Case


class ScrewSeat:
    """The neck screws of a case, worked out as far as they are asked for."""

    def __init__(self, case: Case) -> None:
        """``case`` states screws, neck plate and the seat that they hold together."""
        self.case = case
        self.x: Array = case["screw.x"]
        self.y: Array = case["screw.y"]
        self.count: int = int(np.shape(self.x)[-1])

    @cached_property
    def sin(self) -> Array:
        """Sine of the neck's tilt."""
        return along(self.case.seated.sin)

    @cached_property
    def cos(self) -> Array:
        """Cosine of the neck's tilt."""
        return along(self.case.seated.cos)

    @cached_property
    def ahead(self) -> Array:
        """Screw axis before the heel end's bottom, along X [mm]; negative toward the mouth."""
        return self.x - along(self.case.seated.x0)

    @cached_property
    def head(self) -> Array:
        """Z [mm] of the surface that the head bears on: neck plate, ferrule seat or bare back.

        On a heel contour the neck plate's outer face and the ferrule's seat are the local ones.
        """
        case, back = self.case, seats_on_back(self.case)
        if case["neck_plate.make"] == "ferrules":
            return back + along(case["neck_plate.ferrule_depth"])
        seat = back + along(case["screws.head_seat"])
        if case["neck_plate.make"] == "plate":
            return seat - along(case["neck_plate.thickness"])
        return seat

    @cached_property
    def entry_x(self) -> Array:
        """Neck-frame x [mm] where the axis enters the heel's bottom."""
        return self.ahead / self.cos

    @cached_property
    def penetration(self) -> Array:
        """Depth [mm] in the heel along the screw: length - (heel bottom - head seat)."""
        heel = along(self.case.seated.z0) + self.ahead * (self.sin / self.cos)
        return along(self.case["screws.length"]) - (heel - self.head)

    @cached_property
    def tip_x(self) -> Array:
        """Neck-frame x [mm] of the tip."""
        return self.entry_x + self.penetration * self.sin

    @cached_property
    def tip_z(self) -> Array:
        """Neck-frame z [mm] of the tip, over the heel's bottom."""
        return self.penetration * self.cos

    @cached_property
    def grip(self) -> Array:
        """Threaded length [mm] within the heel."""
        return np.minimum(np.maximum(self.penetration, 0.0), along(self.case["screws.threaded"]))

    @cached_property
    def tip_room(self) -> Array:
        """Tip under the glue line [mm]; in a neck of one piece under the fret slots there."""
        case = self.case
        if case["neck.make"] == "glued":
            return along(case["neck.glue_line"]) - self.tip_z
        share = (along(case["neck.nut_to_heel"]) + self.tip_x) / along(case.frets.board_end)
        nut, end = along(case["neck.radius_nut"]), along(case["neck.radius_end"])
        radius, across = nut + (end - nut) * share, np.square(self.y)
        sag = across / (radius + np.sqrt(np.square(radius) - across))
        slots = along(case["neck.height"]) - sag - along(case["limits.fret_slot_depth"])
        return slots - self.tip_z

    @cached_property
    def edge(self) -> Array:
        """Axis to the heel's edge [mm], at the bottom and at the tip, whichever is less."""
        return np.minimum(self._to_edge(self.entry_x), self._to_edge(self.tip_x))

    def _to_edge(self, x: Array) -> Array:
        heel = self.case.once(heel_outline)
        spread = type(heel)(*(along(getattr(heel, name)) for name in heel.__dataclass_fields__))
        # Toward the nut the heel ends too: there it steps up to the thinner shaft.
        inner = x + along(self.case["neck.heel_length"])
        return np.minimum(-spread.farthest(x=x, y=np.abs(self.y)), inner)

    @cached_property
    def rod(self) -> Array:
        """Screw's surface to the truss-rod channel [mm]; negative where it would cut into it."""
        case, radius = self.case, along(self.case["screws.shank"]) / 2
        one, again = self._mirrored
        entry, tip_x, tip_z = (a[..., one] for a in (self.entry_x, self.tip_x, self.tip_z))
        shank = Shank(entry, tip_x, tip_z, radius, self.sin, self.cos)
        aside = np.abs(self.y[..., one]) - along(case["neck.rod_width"]) / 2
        depth, end = along(case["neck.rod_depth"]), along(case["neck.rod_end"])
        return rod_room(shank, aside=aside, depth=depth, end=end)[..., again]

    @cached_property
    def _mirrored(self) -> tuple[Any, Any]:
        """One of each pair of screws alike on both sides, and which stands for each screw."""
        if np.ndim(self.x) > 1 or np.ndim(self.y) > 1:
            return slice(None), slice(None)
        places = np.stack([self.x, np.abs(self.y)])
        _, one, again = np.unique(places, axis=1, return_index=True, return_inverse=True)
        return one, np.ravel(again)

    @cached_property
    def longest(self) -> Array:
        """Length [mm] that leaves the least tip room at every screw; one per job."""
        spare = np.min(self.tip_room, axis=-1) - self.case["limits.tip_min"]
        return self.case["screws.length"] + spare / self.case.seated.cos

    @cached_property
    def old_pilots(self) -> Array:
        """Wood [mm] between each old pilot hole and the nearest new one, both as wide as the shank.

        Old pilots on the last axis. Holes that lie no farther apart than the position error are
        one and the same: used again.
        """
        case = self.case
        apart = np.hypot(
            self.entry_x[..., :, None] - case["old_pilot.x"][..., None, :],
            self.y[..., :, None] - case["old_pilot.y"][..., None, :],
        )
        again = apart <= along(along(case["screws.position_error"]))
        wood = apart - along(along(case["screws.shank"]))
        return np.min(np.where(again, np.inf, wood), axis=-2)


def screw_seat(case: Case) -> ScrewSeat:
    """The neck screws of a case."""
    return ScrewSeat(case)

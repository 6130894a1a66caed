"""Where each neck screw's head seats, where it enters the heel, and where its tip lies.

Screws run along Z, square to the body's datum. All figures have the screws on their last axis.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property
from typing import TYPE_CHECKING, Any

import numpy as np

from ..job.arrays import Array, along, difference
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
        return difference(self.x, along(self.case.seated.x0))

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
        return self._of_each(
            lambda screw: np.minimum(
                self._to_edge(self.entry_x, screw), self._to_edge(self.tip_x, screw)
            )
        )

    def _to_edge(self, along_axis: Array, screw: int) -> Array:
        heel, x = self.case.once(heel_outline), along_axis[..., screw]
        # Toward the nut the heel ends too: there it steps up to the thinner shaft.
        inner = x + self.case["neck.heel_length"]
        return np.minimum(-heel.farthest(x=x, y=np.abs(self.y[..., screw])), inner)

    @cached_property
    def rod(self) -> Array:
        """Screw's surface to the truss-rod channel [mm]; negative where it would cut into it."""
        return self._of_each(self._to_rod)

    def _to_rod(self, screw: int) -> Array:
        case, seated = self.case, self.case.seated
        entry, tip_x, tip_z = (a[..., screw] for a in (self.entry_x, self.tip_x, self.tip_z))
        shank = Shank(entry, tip_x, tip_z, case["screws.shank"] / 2, seated.sin, seated.cos)
        aside = np.abs(self.y[..., screw]) - case["neck.rod_width"] / 2
        return rod_room(shank, aside=aside, depth=case["neck.rod_depth"], end=case["neck.rod_end"])

    def _of_each(self, figure: Callable[[int], Array]) -> Array:
        """A figure for each screw, worked out once for two that mirror each other."""
        found: dict[Any, Array] = {}
        keys = [self._mirrored(screw) for screw in range(self.count)]
        for screw, key in enumerate(keys):
            if key not in found:
                found[key] = figure(screw)
        return np.moveaxis(np.stack(np.broadcast_arrays(*(found[key] for key in keys))), 0, -1)

    def _mirrored(self, screw: int) -> Any:
        """What is the same for screws alike on both sides."""
        if np.ndim(self.x) > 1 or np.ndim(self.y) > 1:
            return screw
        return float(self.x[screw]), abs(float(self.y[screw]))

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

"""What every sheet is made from: the joint as stated, judged, and built."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from ..fit.case import Case
from ..fit.screw_seat import ScrewSeat, screw_seat
from ..job.errors import KernelFailure, NeckFitError
from ..job.joint import Job
from ..job.outline import Outline
from ..job.quantity import Units
from ..run.chain import Result
from ..solids.build.assembly import Assembly
from ..solids.build.plan import Plan
from ..solids.build.pocket import pocket_plan
from .sections import along_centreline
from .view import Loop


class Misprint(NeckFitError):
    """A sheet would have said something else than the solids: one sentence says what."""


@dataclass(frozen=True)
class Joint:
    """One joint on its way to the shop. ``units``: what the sheets show."""

    job: Job
    result: Result
    outline: Outline
    units: Units

    @property
    def name(self) -> str:
        """What the shop calls the joint."""
        return self.job.name

    @property
    def values(self) -> Mapping[str, Any]:
        """One value for every parameter [mm, degrees]."""
        return self.result.values

    @property
    def assembly(self) -> Assembly:
        """The solids. Raises KernelFailure where the joint was judged without them."""
        if self.result.assembly is None:
            raise KernelFailure("sheets need the solids; judge the joint with them first.")
        return self.result.assembly  # type: ignore[no-any-return]

    @property
    def parts(self) -> dict[str, Any]:
        """The solids by name, in the body frame."""
        return self.assembly.parts

    @property
    def board(self) -> Any:
        """The fretboard, or the whole neck where that is one given solid."""
        return self.parts.get("fretboard", self.parts["heel"])

    @cached_property
    def board_box(self) -> Any:
        """Tight bounds of ``board``."""
        return tight_box(self.board)

    @cached_property
    def case(self) -> Case:
        """The closed forms of this joint."""
        return Case(self.job.stated)

    @cached_property
    def screws(self) -> ScrewSeat:
        """Where the neck screws seat, enter and end."""
        return screw_seat(self.case)

    @cached_property
    def pocket(self) -> Plan:
        """The pocket's plan in the body frame."""
        return pocket_plan(dict(self.values))

    @cached_property
    def centreline(self) -> dict[str, list[Loop]]:
        """Every part cut along the centreline, in (X, Z) [mm]."""
        unseen = ("rod", "rod_tool")
        return along_centreline(self.parts, [name for name in self.parts if name not in unseen])

    def length(self, key: str) -> float:
        """A value as a plain number [mm or degrees]."""
        return float(self.values[key])

    def limits(self, key: str) -> tuple[float, float] | None:
        """Limit deviations of a parameter from the tolerance set."""
        return self.job.tolerances.get(key)

    def found(self, check_id: str) -> float | None:
        """A check's value as judged, or None where it does not apply or is not known."""
        return self.result.find(check_id).value

    def applies(self, check_id: str) -> bool:
        """Whether a check has a value for this joint."""
        return self.result.find(check_id).value is not None


def tight_box(shape: Any) -> Any:
    """Bounds [mm] of a shape itself: its own may hold the whole surface that a face is a piece of.

    Of a copy, so that what has been triangulated and what has not are read alike.
    """
    return shape.copy().optimalBoundingBox()

"""Room left to lower each pickup."""

from __future__ import annotations

from collections.abc import Callable

from ...job.parameters import ROLES
from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..pickups import Pickup
from ..reading import Reading
from ..reads import SADDLES, together
from ..strings import is_few, least, per_string, place_of_least


def reader(role: str) -> Callable[[Case], Reading]:
    """The closed form for the pickup of ``role``."""

    def read(case: Case) -> Reading:
        """Least room [mm] to lower the poles to the least distance from the outer strings."""
        if not case[f"pickup_{role}.fitted"]:
            return Reading.absent(f"no pickup is fitted in the {role} position")
        found = Pickup(case, role=role)
        rooms = found.to_lower
        detail = {}
        if is_few(rooms):
            detail = {
                "outer strings over the mount": per_string(found.strings),
                "lowest poles over the mount": found.lowest,
            }
        return Reading(value=least(rooms), place=place_of_least(rooms, found.places), detail=detail)

    return read


def check(role: str) -> Check:
    """The demand on the pickup of ``role``."""
    own = ("fitted", "x", "mount", "cavity_depth", "body_height", "spring", "low")
    return Check(
        id=f"pickup_{role}.low",
        title=f"{role} pickup goes low enough",
        unit=Kind.LENGTH,
        gravity=Gravity.DOES_NOT_GO,
        reads=together(
            SADDLES,
            tuple(f"pickup_{role}.{name}" for name in own),
            ("limits.pole_treble_min", "limits.pole_bass_min"),
        ),
        read=reader(role),
        low=0.0,
        measure=f"pickup_{role}_low",
        consequence="The pickup stands at its lowest and the fretted strings still come too close.",
        mending="Route its cavity deeper, choose a shallower pickup, or make the pocket "
        "shallower by {short}.",
    )


CHECKS = tuple(check(role) for role in ROLES)

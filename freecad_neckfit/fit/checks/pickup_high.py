"""Room left to raise each pickup."""

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
        """Least room [mm] to raise the poles to the largest distance from the outer strings."""
        if not case[f"pickup_{role}.fitted"]:
            return Reading.absent(f"no pickup is fitted in the {role} position")
        found = Pickup(case, role=role)
        rooms = found.to_raise
        detail = {}
        if is_few(rooms):
            detail = {
                "outer strings over the mount": per_string(found.strings),
                "highest poles over the mount": found.highest,
            }
        return Reading(value=least(rooms), place=place_of_least(rooms, found.places), detail=detail)

    return read


def check(role: str) -> Check:
    """The demand on the pickup of ``role``."""
    own = ("fitted", "x", "mount", "cavity_depth", "high")
    return Check(
        id=f"pickup_{role}.high",
        title=f"{role} pickup rises high enough",
        unit=Kind.LENGTH,
        gravity=Gravity.PLAYS_BADLY,
        reads=together(
            SADDLES,
            tuple(f"pickup_{role}.{name}" for name in own),
            ("limits.pole_treble_max", "limits.pole_bass_max"),
        ),
        read=reader(role),
        low=0.0,
        measure=f"pickup_{role}_high",
        consequence="The pickup stands at its highest and the strings are still too far away: "
        "it sounds weak.",
        mending="Put higher springs or a spacer under it, or make the pocket deeper by {short}.",
    )


CHECKS = tuple(check(role) for role in ROLES)

"""Side clearance through the owner's year."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Follows, Gravity
from ..reading import Reading
from ..reads import TOP, together
from ..reads_joint import CLIMATE, PLANS
from ..seasons import AS_CUT, reading, seasons, side_change
from ..sides import pocket_sides

JAMS = 0.0
"""Side clearance [mm] below which the heel jams."""


def read(case: Case) -> Reading:
    """Side clearance [mm] in the driest or the dampest month, whichever is worse.

    The heel may close up in a season as long as it does not jam: below 0. The clearance to cut
    by is that of the side checks.
    """
    now = case.once(pocket_sides).value
    changes = tuple(side_change(case, season) for season in case.once(seasons))
    return reading(case, now=now, changes=changes, low=JAMS, high=case["limits.side_max"])


CHECK = Check(
    id="seasons.side",
    title="side clearance through the year",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(PLANS, TOP, CLIMATE),
    read=read,
    low=JAMS,
    high="limits.side_max",
    measure="",
    consequence="The heel jams in damp months or comes loose in dry ones.",
    mending="Change the pocket's width by twice {short}, or match the woods' rings.",
    follows=(Follows(("side.treble", "side.bass"), AS_CUT),),
)

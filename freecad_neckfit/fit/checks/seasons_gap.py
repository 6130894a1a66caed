"""Room under the overhang through the owner's year."""

from __future__ import annotations

from dataclasses import replace

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Excess, Follows, Gravity
from ..reading import Reading
from ..reads import together
from ..reads_joint import CLIMATE
from ..seasons import AS_CUT, gap_change, reading, seasons
from .overhang_gap import CHECK as OVERHANG_GAP
from .overhang_gap import read as overhang_gap


def read(case: Case) -> Reading:
    """Least room [mm] under the overhang in the driest or the dampest month, whichever is worse."""
    gap = overhang_gap(case)
    changes = tuple(gap_change(case, season) for season in case.once(seasons))
    low, high = case["limits.gap_min"], case["limits.gap_max"]
    found = reading(case, now=gap.value, changes=changes, low=low, high=high)
    return replace(found, applies=gap.applies, because=gap.because)


CHECK = Check(
    id="seasons.gap",
    title="room under the overhang through the year",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(OVERHANG_GAP.reads, CLIMATE),
    read=read,
    low="limits.gap_min",
    high="limits.gap_max",
    contact=True,
    measure="",
    consequence="The overhang touches in one season though it is free in another.",
    mending="Leave {short} more room when the joint is cut; that serves the whole year.",
    excess=Excess(
        gravity=Gravity.UGLY,
        consequence="In one season a wide gap shows under the fretboard.",
        mending="Rout {short} deeper, if the strings allow.",
    ),
    follows=(Follows(("overhang.gap",), AS_CUT),),
)

"""Room left to raise the saddles."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, TRAVEL, together
from ..strings import is_few, per_string, place_of_least


def read(case: Case) -> Reading:
    """Least room [mm] up to the highest from each saddle string height that the bridge can set.

    Heights count over the bridge's mount at each saddle; for a fixed radius, over its posts.
    """
    value = case.bridge.to_raise
    above = case.saddles.above
    turned = tuple(-height for height in above)
    detail = {"saddle string height over the mount": per_string(above)} if is_few(above) else {}
    return Reading(value=value, place=place_of_least(turned, case.saddles.places), detail=detail)


CHECK = Check(
    id="saddle.high",
    title="saddles rise high enough",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(SADDLES, TRAVEL),
    read=read,
    low=0.0,
    measure="saddle_high",
    consequence="The saddles stand at their highest and the strings still lie too low: they buzz.",
    mending="Make the pocket deeper by {short}, tip it back less, raise the bridge, or choose "
    "a higher one.",
)

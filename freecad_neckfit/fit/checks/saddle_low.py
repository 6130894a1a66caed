"""Room left to lower the saddles."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, TRAVEL, together
from ..strings import is_few, per_string, place_of_least


def read(case: Case) -> Reading:
    """Least room [mm] from each saddle string height down to the lowest that the bridge can set.

    Heights count over the bridge's mount at each saddle; for a fixed radius, over its posts.
    """
    value = case.bridge.to_lower
    above = case.saddles.above
    turned = above
    detail = {"saddle string height over the mount": per_string(above)} if is_few(above) else {}
    return Reading(value=value, place=place_of_least(turned, case.saddles.places), detail=detail)


CHECK = Check(
    id="saddle.low",
    title="saddles go low enough",
    unit=Kind.LENGTH,
    gravity=Gravity.DOES_NOT_GO,
    reads=together(SADDLES, TRAVEL),
    read=read,
    low=0.0,
    measure="saddle_low",
    consequence="The saddles stand at their lowest and the action is still too high.",
    mending="Make the pocket shallower by {short}, tip it back, set the bridge into a recess, or "
    "choose a lower bridge.",
)

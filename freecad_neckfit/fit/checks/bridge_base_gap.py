"""Floating bridge: the base over its mount."""

from __future__ import annotations

from ...job.quantity import Kind
from ..case import Case
from ..check import Check, Gravity
from ..reading import Reading
from ..reads import SADDLES, together


def read(case: Case) -> Reading:
    """Height [mm] of the base over the mount with the saddles as low as they go.

    That is the most the strings leave to the base, within the base's own travel.
    """
    if case["bridge.make"] != "floating":
        return Reading.absent("the bridge does not float")
    return Reading(value=case.bridge.base)


CHECK = Check(
    id="bridge.base_gap",
    title="room under a floating bridge's base",
    unit=Kind.LENGTH,
    gravity=Gravity.PLAYS_BADLY,
    reads=together(SADDLES, ("bridge.make", "bridge.low", "bridge.base_low", "bridge.base_high")),
    read=read,
    low="limits.base_gap_min",
    measure="",
    consequence="The base touches the body before it has moved as far as it should.",
    mending="Make the pocket shallower by {short}, tip it back, or set the bridge into a recess.",
)

"""Interference of whole parts, of which there must be none; only solids can tell."""

from __future__ import annotations

from ...job.parameters import ROLES
from ...job.quantity import Kind
from ..check import Check, Follows, Gravity

UNDER_BOARD = ("overhang.gap", "overhang.corner_gap", "overhang.binding_gap", "overhang.side_room")
IN_POCKET = ("side.treble", "side.bass", "end.clearance", "corner.entry")
SAME = (
    'The same interference as in "{room}", measured here between the two whole parts; what that '
    "asks for frees them."
)
SHORTER = (
    'The same parts as in "{room}": that tells how far the neck must be lifted, this the shortest '
    "way out, sideways or down. Mend that first."
)


def _clash(
    first: str, second: str, title: str, consequence: str, mending: str, rooms: tuple[str, ...]
) -> Check:
    """``rooms``: the checks that may tell the same interference as a room of less than nothing."""
    lifts = tuple(room for room in rooms if room in UNDER_BOARD)
    return Check(
        id=f"clash.{first}_{second}",
        title=title,
        unit=Kind.LENGTH,
        gravity=Gravity.BREAKS,
        reads=(),
        read=None,
        low=0.0,
        contact=True,
        overlap=True,
        measure=f"clash_{first}_{second}",
        consequence=consequence,
        mending=mending,
        follows=(
            Follows(rooms, SAME, figure="same", mended=True),
            Follows(lifts, SHORTER, figure="deeper", mended=True),
        ),
    )


CHECKS: tuple[Check, ...] = (
    _clash(
        "neck",
        "body",
        "interference of neck and body",
        "The neck does not go into its pocket, or is bent and pried when it is screwed down.",
        "See which room is lacking under the overhang, at the sides or at the end; "
        "{short} must go.",
        UNDER_BOARD + IN_POCKET,
    ),
    _clash(
        "neck",
        "plate",
        "interference of neck and cover plate",
        "The plate holds the neck off its seat, or the screws pry the fretboard off the neck.",
        "Cut the plate back or make it thinner, or raise the neck by {short}.",
        (*UNDER_BOARD, "plate.heel"),
    ),
    *(
        _clash(
            "neck",
            f"pickup_{role}",
            f"interference of neck and {role} pickup",
            "The pickup or its ring stands in the fretboard's way.",
            "Lower or move the pickup by {short}, or shorten the overhang.",
            ("overhang.pickup",),
        )
        for role in ROLES
    ),
)

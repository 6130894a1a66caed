"""Parts that must not be in the same place; only solids can tell."""

from __future__ import annotations

from ...job.parameters import ROLES
from ...job.quantity import Kind
from ..check import Check, Gravity


def _clash(first: str, second: str, title: str, consequence: str, mending: str) -> Check:
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
    )


CHECKS: tuple[Check, ...] = (
    _clash(
        "neck",
        "body",
        "neck and body in the same place",
        "The neck does not go into its pocket, or is bent and pried when it is screwed down.",
        "See which room is lacking under the overhang, at the sides or at the end; "
        "{short} must go.",
    ),
    _clash(
        "neck",
        "plate",
        "neck and cover plate in the same place",
        "The plate holds the neck off its seat, or the screws pry the fretboard off the neck.",
        "Cut the plate back or make it thinner, or raise the neck by {short}.",
    ),
    *(
        _clash(
            "neck",
            f"pickup_{role}",
            f"neck and {role} pickup in the same place",
            "The pickup or its ring stands in the fretboard's way.",
            "Lower or move the pickup by {short}, or shorten the overhang.",
        )
        for role in ROLES
    ),
)

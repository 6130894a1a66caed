"""The command that builds the sample joint."""

from __future__ import annotations

from typing import Any

from .chosen import joints_of
from .command import Command, Selection
from .macro import call


def _run(document: Any, _: Selection) -> None:
    from ..views.look import look_at

    before = set(joints_of(document))
    call("features.acts", "build_sample", document)
    look_at(next(j for j in joints_of(document) if j not in before))


COMMAND = Command(
    name="NeckFit_Sample",
    menu="Build the &sample joint",
    tip="Build and check a whole joint to try things on: body, pocket, neck, cover plate, hardware",
    icon="sample.svg",
    shortcut="N, S",
    run=_run,
    makes_document=True,
)

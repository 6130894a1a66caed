"""The command that gives lost objects their behaviour back."""

from __future__ import annotations

from typing import Any

from ...features.acts import has_lost
from .command import Command, Selection
from .macro import call


def _run(document: Any, _: Selection) -> None:
    call("features.acts", "reattach", document)


COMMAND = Command(
    name="NeckFit_Reattach",
    menu="&Bring lost objects back to life",
    tip="Give their behaviour back to objects that were saved where NeckFit was not installed",
    icon="reattach.svg",
    run=_run,
    possible=lambda document, _: has_lost(document),
)

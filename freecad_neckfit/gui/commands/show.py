"""Toggles: which kinds of findings have a label in the 3D view."""

from __future__ import annotations

from typing import Any

from .chosen import check_of, has_check
from .command import Command, Run, Selection, Test
from .macro import put

KINDS = (
    ("ShowInterference", "Show what &interferes", "i", "Show or hide what interferes"),
    ("ShowGaps", "Show &gaps", "g", "Show or hide gaps and other figures that miss their limits"),
    ("ShowTouching", "Show what to&uches", "u", "Show or hide what touches or is worth a look"),
    ("ShowDoubts", "Show &doubts", "d", "Show or hide what could not be checked"),
    ("ShowFits", "Show what &fits", "f", "Show or hide what fits"),
    ("ShowInformation", "Show plain info&rmation", "r", "Show or hide plain information"),
    ("ShowGapMap", "Show the gap &map", "m", "Colour the overhang by the room below it"),
)
"""Property of the check, words, key after N and V, tip."""


def _turning(name: str) -> Run:
    def run(document: Any, selection: Selection) -> None:
        found = check_of(document, selection)
        put(found, name, not getattr(found, name))

    return run


def _is_on(name: str) -> Test:
    def test(document: Any, selection: Selection) -> bool:
        found = check_of(document, selection)
        return found is not None and bool(getattr(found, name))

    return test


COMMANDS = tuple(
    Command(
        name=f"NeckFit_{name}",
        menu=menu,
        tip=tip,
        icon=f"{name.removeprefix('Show').lower()}.svg",
        shortcut=f"N, V, {key.upper()}",
        run=_turning(name),
        possible=has_check,
        checked=_is_on(name),
    )
    for name, menu, key, tip in KINDS
)

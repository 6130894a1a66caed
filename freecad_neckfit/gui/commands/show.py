"""Toggles: which kinds of findings have a label in the 3D view."""

from __future__ import annotations

from typing import Any

from .chosen import check_of, has_check
from .command import Command, Run, Selection, Test
from .macro import put


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


def toggle(*, name: str, menu: str, tip: str, key: str) -> Command:
    """The command that turns the check's property of its name; ``key``: after N and V."""
    prop = name.removeprefix("NeckFit_")
    return Command(
        name=name,
        menu=menu,
        tip=tip,
        icon=f"{prop.removeprefix('Show').lower()}.svg",
        shortcut=f"N, V, {key}",
        run=_turning(prop),
        possible=has_check,
        checked=_is_on(prop),
    )


COMMANDS = (
    toggle(
        name="NeckFit_ShowInterference",
        menu="Show what &interferes",
        tip="Show or hide what interferes",
        key="I",
    ),
    toggle(
        name="NeckFit_ShowGaps",
        menu="Show &gaps",
        tip="Show or hide gaps and other figures that miss their limits",
        key="G",
    ),
    toggle(
        name="NeckFit_ShowTouching",
        menu="Show what to&uches",
        tip="Show or hide what touches or is worth a look",
        key="U",
    ),
    toggle(
        name="NeckFit_ShowDoubts",
        menu="Show &doubts",
        tip="Show or hide what could not be checked",
        key="D",
    ),
    toggle(
        name="NeckFit_ShowFits",
        menu="Show what &fits",
        tip="Show or hide what fits",
        key="F",
    ),
    toggle(
        name="NeckFit_ShowInformation",
        menu="Show plain info&rmation",
        tip="Show or hide plain information",
        key="R",
    ),
    toggle(
        name="NeckFit_ShowGapMap",
        menu="Show the gap &map",
        tip="Colour the overhang by the room below it",
        key="M",
    ),
)

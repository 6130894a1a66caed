"""The commands that go from finding to finding, worst first."""

from __future__ import annotations

from typing import Any

import FreeCADGui

from .chosen import check_of, has_check
from .command import Command, Run, Selection


def _going(step: int) -> Run:
    def run(document: Any, selection: Selection) -> None:
        found = check_of(document, selection)
        _go(found, step)

    return run


def _go(found: Any, step: int) -> None:
    """Select the label after (or before) the selected one, and bring its place into the middle."""
    from ..annotations.notes import element_of
    from ..views.look import centre_on
    from ..views.selection import selected_findings

    scene = found.ViewObject.Proxy.scene
    notes = [note for note in scene.shown_notes if note.place is not None]
    if not notes:
        return
    ids, chosen = [note.id for note in notes], selected_findings(found)
    at = ids.index(chosen[0]) + step if chosen and chosen[0] in ids else (0 if step > 0 else -1)
    note = notes[at % len(notes)]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(found.Document.Name, found.Name, element_of(note.id))
    centre_on(found.Joint, note.place)


NEXT = Command(
    name="NeckFit_Next",
    menu="Ne&xt finding",
    tip="Select the next finding that has a label, worst first, and bring its place into view",
    icon="next.svg",
    shortcut="N, X",
    run=_going(1),
    possible=has_check,
    step=False,
)
PREVIOUS = Command(
    name="NeckFit_Previous",
    menu="&Previous finding",
    tip="Select the finding before, and bring its place into view",
    icon="previous.svg",
    shortcut="N, P",
    run=_going(-1),
    possible=has_check,
    step=False,
)

"""The command that takes an adopted solid out of a joint again."""

from __future__ import annotations

from typing import Any

from ...features.adopt_given import adopts
from ...features.roles import LINKS, role_of
from .chosen import joint_of
from .command import Command, Selection
from .macro import call


def let_go_of(document: Any, selection: Selection) -> dict[str, Any]:
    """Adopted objects that are meant, by their role: those selected, else the joint's only one.

    Either what stands for a solid in the joint or the solid itself may be selected.
    """
    joint = joint_of(document, selection) or _joint_around(selection)
    if joint is None:
        return {}
    adopted = {role: obj for link, role in LINKS.items() if adopts(obj := getattr(joint, link))}
    chosen = [s.Object for s in selection]
    named = {r: o for r, o in adopted.items() if o in chosen or o.Adopted in chosen}
    return named or (adopted if len(adopted) == 1 else {})


def _joint_around(selection: Selection) -> Any:
    """The joint that adopted a solid which is selected; or None."""
    for chosen in selection:
        for obj in chosen.Object.InList:
            if getattr(obj, "Adopted", None) == chosen.Object:
                return next((o for o in obj.InList if role_of(o) == "joint"), None)
    return None


def _run(document: Any, selection: Selection) -> None:
    for obj in let_go_of(document, selection).values():
        joint = next(o for o in obj.InList if role_of(o) == "joint")
        call("features.acts", "let_go", joint, role_of(obj))


COMMAND = Command(
    name="NeckFit_LetGo",
    menu="&Let go of a solid",
    tip="Take an adopted solid out of the joint and show it again; what was measured stays stated",
    icon="let_go.svg",
    run=_run,
    possible=lambda document, selection: bool(let_go_of(document, selection)),
)

"""Making the document objects of a joint."""

from __future__ import annotations

from importlib import import_module
from typing import Any

from ..job.joint import Job
from .dress import dress
from .extras import SCHEMA
from .migrations import CURRENT
from .roles import LINKS, STATED, role_of
from .seated import SHOWN
from .values import state

PROXIES = {role: f"{role.capitalize()}Proxy" for role in (*STATED, "part", "check")}
"""Role to the name of its proxy's class, which lives in the module named for the role."""
SHAPELESS = ("hardware", "check")
"""Roles whose objects have no shape and no placement."""
LABELS = {
    "RoutedBody": "Routed body",
    "SeatedNeck": "Seated neck",
    "SeatedPlate": "Seated cover plate",
    "CoverPlate": "Cover plate",
}


def make_joint(document: Any, job: Job | None = None, *, name: str = "") -> Any:
    """Add a joint with all its objects to a document and return it; nothing is recomputed yet.

    ``job``: what it states; without it everything is at its default. ``name``: its label.
    """
    stated = job.stated if job is not None else {}
    joint = add(document, "joint", "Joint", name or (job.name if job is not None else "Joint"))
    for link, role in LINKS.items():
        part = add(document, role, link, LABELS.get(link, link))
        state(part, stated)
        setattr(joint, link, part)
    state(joint, stated)
    for part_name, shown in SHOWN.items():
        part = add(document, "part", part_name, LABELS.get(part_name, part_name))
        part.Joint = joint
        part.Parts = list(shown)
        part.setEditorMode("Placement", 1)  # it follows the joint's
    return joint


def add(document: Any, role: str, name: str, label: str) -> Any:
    """Add one object of a role to a document."""
    kind = "App::FeaturePython" if role in SHAPELESS else "Part::FeaturePython"
    obj = document.addObject(kind, name)
    attach(obj, role)
    setattr(obj, SCHEMA, CURRENT)
    obj.Label = label
    dress(obj)
    return obj


def attach(obj: Any, role: str) -> None:
    """Give an object the behaviour of its role."""
    getattr(import_module(f"{__package__}.{role}"), PROXIES[role])(obj)


def reattach(document: Any) -> list[Any]:
    """Give back their behaviour to objects that were saved where NeckFit was not; return them."""
    lost = [o for o in document.Objects if role_of(o) in PROXIES and o.Proxy is None]
    for obj in lost:
        attach(obj, role_of(obj))
        obj.Proxy.onDocumentRestored(obj)
        dress(obj)
    return lost


def parts_of(joint: Any) -> list[Any]:
    """The objects that show the joint's solids, in the order in which they were made."""
    return [o for o in joint.Document.Objects if role_of(o) == "part" and o.Joint is joint]

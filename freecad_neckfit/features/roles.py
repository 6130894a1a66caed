"""Which object of the document states which groups of parameters."""

from __future__ import annotations

from typing import Any

STATED: dict[str, tuple[str, ...]] = {
    "body": ("body", "cavity"),
    "pocket": ("pocket", "seat", "shim"),
    "neck": ("neck", "strings"),
    "plate": ("plate",),
    "hardware": (
        "bridge",
        "pickup_neck",
        "pickup_middle",
        "pickup_bridge",
        "screws",
        "screw",
        "old_pilot",
        "neck_plate",
    ),
    "joint": ("finish", "wood", "climate", "limits", "job", "shop"),
}
"""Role of an object to the groups that it states; the first one's properties bear no prefix."""

LINKS = {
    "Body": "body",
    "Pocket": "pocket",
    "Neck": "neck",
    "CoverPlate": "plate",
    "Hardware": "hardware",
}
"""Property of a joint to the role of the object that it links."""

ROLE = "Role"
"""Hidden property that tells an object's role even where its proxy was lost."""


def role_of(obj: Any) -> str:
    """The role of a document object; empty where it is none of NeckFit's."""
    return str(getattr(obj, ROLE, "") or "")


def camel(words: str) -> str:
    """``floor_fillet`` as FreeCAD names properties: ``FloorFillet``."""
    return "".join(word[:1].upper() + word[1:] for word in words.split("_"))

"""New document objects get their view providers here; the workbench registers ``dress``."""

from __future__ import annotations

from typing import Any

from ...features.roles import role_of
from ..translate import tr

COLOURS = {
    "RoutedBody": (0.72, 0.50, 0.30),
    "SeatedNeck": (0.93, 0.80, 0.58),
    "SeatedPlate": (0.92, 0.90, 0.85),
    "Shim": (0.80, 0.62, 0.42),
    "Bridge": (0.62, 0.62, 0.66),
    "Pickups": (0.20, 0.20, 0.20),
    "Screws": (0.70, 0.70, 0.72),
}
"""Of the shown parts, by the name that they are made with: light wood, metal, dark coils."""


def titles() -> dict[str, str]:
    """What a joint's objects are called when they are made, in the designer's language."""
    return {
        "Body": tr("Body"),
        "Pocket": tr("Pocket"),
        "Neck": tr("Neck"),
        "Cover plate": tr("Cover plate"),
        "Hardware": tr("Hardware"),
        "Routed body": tr("Routed body"),
        "Seated neck": tr("Seated neck"),
        "Seated cover plate": tr("Seated cover plate"),
        "Shim": tr("Shim"),
        "Bridge": tr("Bridge"),
        "Pickups": tr("Pickups"),
        "Screws": tr("Screws"),
        "Check": tr("Check"),
    }


def dress(obj: Any) -> None:
    """Name a new object in the tree and give it its view provider; a check shows its findings."""
    title = titles().get(str(obj.Label).rstrip("0123456789"), "")
    if title and title not in str(obj.Label):
        obj.Label = title
    if role_of(obj) == "check":
        # Only now: a document without a check needs no graphics library.
        from .check import CheckView

        CheckView(obj.ViewObject)
        return
    # FreeCAD's own view: without a proxy of some kind it shows no shape at all.
    obj.ViewObject.Proxy = 0
    colour = COLOURS.get(obj.Name.rstrip("0123456789"))
    if colour is not None and hasattr(obj.ViewObject, "ShapeColor"):
        obj.ViewObject.ShapeColor = colour

"""Properties that are no parameters: links, results and what the house keeping needs."""

from __future__ import annotations

from typing import Any, NamedTuple

from .roles import LINKS, ROLE

READ_ONLY, HIDDEN = 1, 2
"""FreeCAD's editor modes."""
OUTPUT = 8
"""FreeCAD's attribute of a property whose change leaves the object up to date."""
SCHEMA = "SchemaVersion"


class Extra(NamedTuple):
    """One property: FreeCAD's type, its meaning, how editors show it, whether it is a result."""

    name: str
    kind: str
    words: str
    mode: int = 0
    output: bool = False
    default: Any = None


COMMON = (
    Extra(ROLE, "App::PropertyString", "What this object is to NeckFit.", HIDDEN),
    Extra(SCHEMA, "App::PropertyInteger", "Version of the properties.", HIDDEN),
)
JOINT = (
    *(
        Extra(name, "App::PropertyLink", f"The {role} of this joint.")
        for name, role in LINKS.items()
    ),
    Extra("Tolerances", "App::PropertyString", "Limit deviations that were stated.", HIDDEN),
    Extra("Spreads", "App::PropertyString", "Spreads between limits that were stated.", HIDDEN),
    Extra("Options", "App::PropertyString", "Options, as differences from this joint.", HIDDEN),
)
PART = (
    Extra("Joint", "App::PropertyLink", "The joint that this part belongs to."),
    Extra("Parts", "App::PropertyStringList", "Names of the joint's solids shown here.", READ_ONLY),
    Extra(
        "BuiltFrom", "App::PropertyString", "Digest of the values it was built from.", HIDDEN, True
    ),
)
CHECK = (
    Extra("Joint", "App::PropertyLink", "The joint that was checked."),
    Extra("Verdict", "App::PropertyString", "Whether everything fits.", READ_ONLY, True),
    Extra("Stale", "App::PropertyBool", "The joint changed since the check.", READ_ONLY, True),
    Extra("Findings", "App::PropertyString", "All findings, as JSON.", HIDDEN, True),
    Extra("CheckedDigest", "App::PropertyString", "Digest of the values checked.", HIDDEN, True),
    Extra("Interference", "Part::PropertyPartShape", "What neck and body share.", HIDDEN, True),
    Extra("GapMap", "App::PropertyString", "Room under the overhang, as JSON.", HIDDEN, True),
    Extra("ShowInterference", "App::PropertyBool", "Show what interferes.", default=True),
    Extra("ShowGaps", "App::PropertyBool", "Show too small and too large gaps.", default=True),
    Extra("ShowDoubts", "App::PropertyBool", "Show what could not be checked.", default=True),
    Extra("ShowFits", "App::PropertyBool", "Show what fits.", default=False),
    Extra(
        "ShowTouching", "App::PropertyBool", "Show what touches or is worth a look.", default=True
    ),
    Extra("ShowGapMap", "App::PropertyBool", "Show the room under the overhang.", default=False),
    Extra("ShowInformation", "App::PropertyBool", "Show plain information.", default=False),
)
ADOPTED = (
    Extra(
        "Adopted",
        "App::PropertyLinkGlobal",
        "The solid that stands for it; without one it is built from the values.",
    ),
    Extra("AdoptedPath", "App::PropertyString", "Where in the linked object it lies.", HIDDEN),
    Extra(
        "FrameFrom",
        "App::PropertyEnumeration",
        "What the frame follows: picked faces, a coordinate system, the typed placement, or the "
        "place where the solid lies beside the body.",
        default=["placement", "faces", "coordinate system", "where it lies"],
    ),
    Extra("Frame", "App::PropertyPlacement", "The frame in the solid's own coordinates."),
    Extra("CoordinateSystem", "App::PropertyLinkGlobal", "A coordinate system that is the frame."),
    Extra("Measured", "App::PropertyStringList", "Values measured on the solid.", READ_ONLY, True),
    Extra("Remarks", "App::PropertyStringList", "What reading it showed.", READ_ONLY, True),
    Extra("MeasuredFrom", "App::PropertyString", "Digest of what was measured.", HIDDEN, True),
)
BODY = (
    *ADOPTED,
    Extra("TopFace", "App::PropertyString", "The top face, as geometry.", HIDDEN),
    Extra("Centreline", "App::PropertyString", "The centreline, as geometry.", HIDDEN),
    Extra("CentrelineOf", "App::PropertyLinkGlobal", "What the centreline is an edge of.", HIDDEN),
    Extra("FloorFace", "App::PropertyString", "The pocket's floor, as geometry.", HIDDEN),
    Extra("Reversed", "App::PropertyBool", "X points to the other end of the centreline."),
    Extra("HasPocket", "App::PropertyBool", "The solid has its pocket already; it is read."),
    Extra("PocketBehind", "App::PropertyLink", "The pocket whose length is looked at.", HIDDEN),
    Extra("NeckBeside", "App::PropertyLink", "The neck that tells the treble side.", HIDDEN),
    Extra("PocketRead", "App::PropertyString", "The pocket as read, as JSON.", HIDDEN, True),
)
POCKET = (
    Extra("ReadFrom", "App::PropertyLink", "The body whose pocket was read.", HIDDEN),
    Extra("MeasuredFrom", "App::PropertyString", "Digest of what was read.", HIDDEN, True),
    Extra("Measured", "App::PropertyStringList", "Values read from the body.", READ_ONLY, True),
)
OF_ROLE: dict[str, tuple[Extra, ...]] = {
    "joint": JOINT,
    "part": PART,
    "check": CHECK,
    "body": BODY,
    "pocket": POCKET,
    "neck": ADOPTED,
    "plate": ADOPTED,
}


def add(obj: Any, role: str) -> None:
    """Give ``obj`` the properties of its role that are no parameters, where it lacks them."""
    for extra in (*COMMON, *OF_ROLE.get(role, ())):
        if extra.name in obj.PropertiesList:
            continue
        attributes = OUTPUT if extra.output else 0
        obj.addProperty(extra.kind, extra.name, "NeckFit", extra.words, attributes)
        if extra.default is not None:
            setattr(obj, extra.name, extra.default)
        if extra.mode:
            obj.setEditorMode(extra.name, extra.mode)
